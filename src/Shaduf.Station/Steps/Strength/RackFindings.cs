using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the strength of the rack.</summary>
internal static class RackFindings
{
    private const string Members =
        "EN 1993-1-1:2005, 6.2 and 6.3; actions by EN 1990, EN 1991-1-1, EN 1991-1-3, EN 1991-1-4";
    private const string Judged = "limits of the method, judgement";
    private const double MostMPerS = 40;
    private const double OneLineMostMPerS = 32;
    private const double OneLineDeepestM = 3;
    private const string Welds = "EN 1993-1-8:2005, 4.5.3.3";

    /// <summary>The findings.</summary>
    /// <param name="choice">The rack and what else was tried.</param>
    /// <param name="module">The module.</param>
    /// <param name="way">Which way the modules lie.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(RackChoice choice, ModuleCard module, ModuleWay way)
    {
        if (choice.Taken.Strength is not { } strength)
        {
            return Beyond(choice.Taken.Rack);
        }

        var holding = RackHolding.Of(strength, module, way);
        Finding[] all =
        [
            Strength(strength, choice),
            Weld(strength, choice),
            .. RackJointFindings.Of(strength, choice.Advice),
            Sway(strength, choice),
            Moves(strength, choice),
            HoldingFinding.Of(strength, holding, choice),
            Stops(strength, holding),
            Cyclones("rack/wind", strength.Wind, "rack"),
            .. OneLine(strength),
            Hill(strength.Wind),
        ];
        return [Steel(strength), .. strength.Wind.IsKnown ? all : all.Select(NotKnown)];
    }

    // No wind table goes there: an engineer's matter.
    private static IEnumerable<Finding> Beyond(Rack rack) =>
        new[]
        {
            "rack/strength",
            "rack/welds",
            "rack/splices",
            "rack/tube-faces",
            "rack/slender",
            "rack/module-holding",
            "rack/stops-at-wind",
        }.Select(id => new Finding(
            id,
            FindingStatus.Unchecked,
            Invariant(
                $"not checked: a tilt of {rack.Setting.TiltDeg:0.#} deg is beyond the table of wind coefficients, which ends at {MonopitchCanopy.SteepestDeg:0} deg and is not stretched; have an engineer design this rack"
            ),
            null,
            null,
            "",
            "EN 1991-1-4:2005, table 7.6"
        ));

    private static Finding NotKnown(Finding finding) =>
        finding with
        {
            Status = FindingStatus.Unchecked,
            Says = Invariant($"the wind speed is unknown, so this is only a plan: {finding.Says}"),
        };

    /// <summary>Cyclone country: gusts that come again and again break clamps and welds below the speed of a static check.</summary>
    /// <param name="id">Name of the finding.</param>
    /// <param name="wind">The wind.</param>
    /// <param name="what">What an engineer designs there.</param>
    internal static Finding Cyclones(string id, RackWind wind, string what) =>
        wind.BasicMPerS <= MostMPerS
            ? new(
                id,
                FindingStatus.Holds,
                "wind speed within what this program judges",
                wind.BasicMPerS,
                MostMPerS,
                "m/s",
                Judged
            )
            : Finding.HandedOver(
                id,
                wind.BasicMPerS,
                MostMPerS,
                "m/s",
                $"cyclone country: gusts that come again and again break joints and welds below the speed of these checks; have an engineer design this {what}",
                Judged
            );

    // A deep plane on one line rocks in strong gusts.
    private static IEnumerable<Finding> OneLine(RackStrength strength)
    {
        var depthM = strength.Rack.Size.DepthMm / 1000;
        if (strength.IsOneLine && strength.Wind.BasicMPerS > OneLineMostMPerS && depthM > OneLineDeepestM)
        {
            yield return Finding.HandedOver(
                "rack/one-line",
                strength.Wind.BasicMPerS,
                OneLineMostMPerS,
                "m/s",
                Invariant(
                    $"a plane {depthM:0.0} m deep on one line of columns in more than {OneLineMostMPerS:0} m/s is beyond what this program judges: two lines of columns, or have an engineer design this rack"
                ),
                Judged
            );
        }
    }

    // The code's annex goes by the shape of the hill; its largest figure stands for any place on it.
    private static Finding Hill(RackWind wind) =>
        new(
            "rack/hill",
            wind.HillShare < WindPressure.GentleSlopeShare ? FindingStatus.Holds : FindingStatus.Look,
            wind.HillShare switch
            {
                null =>
                    "whether the wind comes up a slope steeper than 1 in 20 is not known: flat ground is taken. On or near a hill, a ridge or an escarpment the wind is up to 1.6 times as fast: give site.hillSlope, and let an engineer decide",
                < WindPressure.GentleSlopeShare => "the ground is too flat to speed the wind up",
                { } slope => Invariant(
                    $"up a slope of {slope * 100:0} % the wind is {wind.HillFactor:0.00} times as fast at the crest, which is taken wherever the racks stand; on a crest, an escarpment or in a gap between hills an engineer decides"
                ),
            },
            wind.HillFactor,
            null,
            "",
            "EN 1991-1-4:2005, 4.3.3 and annex A.3 (from memory), s = 1"
        );

    private static Finding Strength(RackStrength strength, RackChoice choice)
    {
        var (held, worst) = strength.BothDepths.Worst(each => each.Members, use => use.Result.UtilisationShare)!.Value;
        var member = strength.Rack.Skeleton.Members[worst.Member];
        var where = strength.Combinations.Strength[worst.Combination].Name + held.HeldSays;
        return Finding.AtMost(
            "rack/strength",
            worst.Result.UtilisationShare,
            1,
            "",
            Invariant(
                $"{member.Role} {member.Mark} is used most: {worst.Result.UsedSays()} at {strength.Wind.BasicMPerS:0.#} m/s, {where}"
            ) + (worst.Result.Holds ? "" : choice.Advice),
            $"{Members}; {worst.Result.Clause}"
        ) with
        {
            Value = worst.Result.FiniteShare,
        };
    }

    // The least is taken of both, so that what holds with it holds with better: one matter to look at, told once.
    private static Finding Steel(RackStrength strength)
    {
        var (grade, isMeasured) = (strength.Rules.Grade, strength.IsWallMeasured);
        var isMarked = grade != SteelGrade.Unmarked;
        var walls = isMeasured
            ? "walls as measured"
            : "walls a tenth thinner than bought: measure each lot by calliper at a cut end before it is sawn, and send back what is thinner still";
        return new(
            "rack/steel",
            isMarked && isMeasured ? FindingStatus.Holds : FindingStatus.Look,
            Invariant(
                $"{(isMarked ? $"steel {grade.Name} by its certificate" : "steel without a mark or certificate")}, yield {grade.YieldNPerMm2:0} N/mm2 taken; {walls}"
            ),
            grade.YieldNPerMm2,
            null,
            "N/mm2",
            isMarked ? "EN 1993-1-1:2005, table 3.1" : "judgement, no source; EN 10219-2 for walls, from memory"
        );
    }

    private static Finding Weld(RackStrength strength, RackChoice choice)
    {
        var (held, worst) = strength.BothDepths.Worst(each => each.Joints, use => use.RequiredLegMm)!.Value;
        const double MostMm = RackStrength.MostLegMm;
        var share = worst.WithLegShare(strength.Rack.Skeleton, held.Rules, MostMm);
        var says =
            !double.IsFinite(share) ? $"the runs of '{worst.Name}' are too short to carry anything: take a wider tube"
            : worst.IsHopeless
                ? Invariant(
                    $"no leg is enough for '{worst.Name}': with the largest that fits beside these walls, {MostMm:0.0} mm, it is used to {share:0.0} times what it carries"
                )
            : worst.RequiredLegMm > MostMm
                ? Invariant(
                    $"'{worst.Name}' needs a leg of {worst.RequiredLegMm:0.0} mm, which does not fit beside these walls: {MostMm:0.0} mm is the largest, and is used to {share:0.00}"
                )
            : Invariant(
                $"'{worst.Name}' needs the largest leg, {worst.RequiredLegMm:0.0} mm; every weld of the rack has at least {RackSteel.WeldLegMm:0.0} mm (throat {FilletWeld.LeastThroatMm:0} mm)"
            );
        return new(
            "rack/welds",
            worst.RequiredLegMm <= MostMm ? FindingStatus.Holds : FindingStatus.Stop,
            says + (worst.RequiredLegMm <= MostMm ? "" : choice.Advice),
            worst.IsHopeless ? null : worst.RequiredLegMm,
            MostMm,
            "mm",
            $"{Welds}; legs beyond 6 mm on thin walls: judgement, no source"
        );
    }

    private static Finding Sway(RackStrength strength, RackChoice choice) =>
        Finding.AtLeast(
            "rack/sway",
            strength.CriticalFactor ?? 1000,
            RackStrength.LeastCriticalFactor,
            "",
            strength.CriticalFactor < RackStrength.StiffCriticalFactor
                ? Invariant(
                    $"the frame buckles at {strength.CriticalFactor:0.0} times the loads; the moments are raised by {strength.Rules.SecondOrderFactor:0.00} for it"
                ) + (strength.CriticalFactor < RackStrength.LeastCriticalFactor ? choice.Advice : "")
                : "the frame is stiff against buckling: what its movement adds to the moments is left out",
            "EN 1993-1-1:2005, 5.2.1 and 5.2.2(5)B"
        );

    private static Finding Moves(RackStrength strength, RackChoice choice)
    {
        var worst = RackMoves.Of(strength).MaxBy(move => move.Value / move.Limit)!;
        var status =
            worst.Holds ? FindingStatus.Holds
            : worst.IsFirm ? FindingStatus.Stop
            : FindingStatus.Look;
        return new(
            "rack/moves",
            status,
            Invariant(
                $"{worst.What}: {worst.Value:0.0000} of {worst.Limit:0.0000}{(worst.Unit.Length > 0 ? " " + worst.Unit : "")} at {strength.Wind.BasicMPerS:0.#} m/s"
            ) + (status == FindingStatus.Stop ? choice.Advice : ""),
            worst.Value,
            worst.Limit,
            worst.Unit,
            worst.Source
        );
    }

    private static Finding Stops(RackStrength strength, RackHolding holding)
    {
        var (steel, welds) = (strength.SteelStopsMPerS(), strength.WeldsStopMPerS());
        var modules = holding.IsKnown ? strength.Wind.StopsAtMPerS(gust => holding.UseShare(gust) <= 1) : (double?)null;
        var first = new[] { steel, welds, modules ?? RackWind.MostMPerS }.Min();
        return Finding.Told(
            "rack/stops-at-wind",
            first,
            strength.Wind.BasicMPerS,
            "m/s",
            $"the steel holds up to {Speed(steel)}, the welds up to {Speed(welds)}, the modules in their holding up to {(modules is { } known ? Speed(known) : "a speed that only their maker can tell")}; the blocks in the ground have their own, under ground/. Wind speed as mean of ten minutes 10 m above open country; a gust of three seconds is some 1.4 times that",
            "the checks of the rack, with the wind raised until one fails"
        );
    }

    /// <summary>A wind speed in words.</summary>
    internal static string Speed(double mPerS) =>
        mPerS >= RackWind.MostMPerS ? Invariant($"{RackWind.MostMPerS:0} m/s and more")
        : mPerS > 0 ? Invariant($"{mPerS:0.0} m/s")
        : "no wind at all";
}

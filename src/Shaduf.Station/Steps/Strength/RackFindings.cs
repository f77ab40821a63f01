using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the strength of the rack.</summary>
internal static class RackFindings
{
    private const string Members =
        "EN 1993-1-1:2005, 6.2 and 6.3; actions by EN 1990, EN 1991-1-1, EN 1991-1-3, EN 1991-1-4";
    private const double MostMPerS = 40;
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
            Weld(strength),
            .. RackJointFindings.Of(strength, Advice(false, choice)),
            Sway(strength),
            Moves(strength, choice),
            Holding(strength, holding),
            Stops(strength, holding),
            Cyclones(strength.Wind),
            Hill(strength.Wind),
        ];
        return strength.Wind.IsKnown ? all : all.Select(NotKnown);
    }

    // No wind table goes there: an engineer's matter.
    private static IEnumerable<Finding> Beyond(Rack rack) =>
        new[]
        {
            "rack/strength",
            "rack/welds",
            "rack/splices",
            "rack/tube-faces",
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

    // Gusts there break clamps and welds below the speed that a static check gives.
    private static Finding Cyclones(RackWind wind) =>
        new(
            "rack/wind",
            wind.BasicMPerS <= MostMPerS ? FindingStatus.Holds : FindingStatus.Look,
            wind.BasicMPerS <= MostMPerS
                ? "wind speed within what this program judges"
                : "cyclone country: gusts that come again and again break clamps and welds below the speed of these checks; an engineer designs this rack",
            wind.BasicMPerS,
            MostMPerS,
            "m/s",
            "limits of the method, judgement"
        );

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
                $"{member.Role} {member.Mark} is used most: {worst.Result.UtilisationShare:0.00} of what it carries at {strength.Wind.BasicMPerS:0.#} m/s, {where}"
            ) + Advice(worst.Result.Holds, choice),
            $"{Members}; {worst.Result.Clause}"
        );
    }

    private static Finding Weld(RackStrength strength)
    {
        var worst = strength.BothDepths.SelectMany(each => each.Joints).MaxBy(use => use.RequiredLegMm)!;
        return Finding.AtMost(
            "rack/welds",
            worst.RequiredLegMm,
            RackStrength.MostLegMm,
            "mm",
            double.IsFinite(worst.Result.UtilisationShare)
                ? Invariant(
                    $"'{worst.Name}' needs the largest leg, {worst.RequiredLegMm:0.0} mm; every weld of the rack has at least 4.5 mm (throat 3 mm)"
                )
                : Invariant($"the runs of '{worst.Name}' are too short to carry anything: take a wider tube"),
            $"{Welds}; legs beyond 6 mm on thin walls: judgement, no source"
        );
    }

    private static Finding Sway(RackStrength strength) =>
        Finding.AtLeast(
            "rack/sway",
            strength.CriticalFactor ?? 1000,
            RackStrength.LeastCriticalFactor,
            "",
            strength.CriticalFactor < RackStrength.StiffCriticalFactor
                ? Invariant(
                    $"the frame buckles at {strength.CriticalFactor:0.0} times the loads; the moments are raised by {strength.Rules.SecondOrderFactor:0.00} for it"
                )
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
            ) + Advice(status != FindingStatus.Stop, choice),
            worst.Value,
            worst.Limit,
            worst.Unit,
            worst.Source
        );
    }

    private const string Gentler =
        ". A lower tilt, a module whose card allows more, or bearers and clamps at other places that its maker allows: try them in the brief, none was looked at here";

    private static Finding Holding(RackStrength strength, RackHolding holding)
    {
        var use = holding.UseShare(strength.Wind.PeakKNPerM2);
        var (down, up) = (
            holding.PerGustDown * strength.Wind.PeakKNPerM2,
            holding.PerGustUp * strength.Wind.PeakKNPerM2
        );
        var pull = Invariant($"{down:0.00} kN/m2 presses and {up:0.00} kN/m2 lifts at the edges of the plane");
        var clamp = holding.ClampN is { } perGust
            ? Invariant($"; a clamp at the end of a row must hold {perGust * strength.Wind.PeakKNPerM2 / 1000:0.00} kN")
            : "";
        var between = Invariant($"; a module bends between bearers {holding.BetweenMm:0} mm apart");
        return holding.IsKnown
            ? Finding.AtMost(
                "rack/module-holding",
                use,
                1,
                "",
                Invariant(
                    $"{pull}{between}{clamp}; {(holding.IsByLip(strength.Wind.PeakKNPerM2) ? "the channel's lip is used to" : "the module is used to")} {use:0.00} of what {(holding.IsByLip(strength.Wind.PeakKNPerM2) ? "its steel bears" : "its card allows for this way of holding")}"
                ) + (use > 1 ? Gentler : ""),
                "module's card; EN 1991-1-4:2005, table 7.6, zones A to C"
            )
            : new(
                "rack/module-holding",
                use > 1 ? FindingStatus.Stop : FindingStatus.Unchecked,
                $"{pull}{between}{clamp}; the module's card does not say what it bears when held so: ask its maker for the pressures allowed for {(holding.LipPerGust is null ? "clamps at their places" : "edges in channels")}",
                use,
                1,
                "",
                "EN 1991-1-4:2005, table 7.6, zones A to C"
            );
    }

    private static Finding Stops(RackStrength strength, RackHolding holding)
    {
        var (steel, welds) = (strength.SteelStopsMPerS(), strength.WeldsStopMPerS());
        var modules = holding.IsKnown ? strength.Wind.StopsAtMPerS(gust => holding.UseShare(gust) <= 1) : (double?)null;
        var first = new[] { steel, welds, modules ?? RackWind.MostMPerS }.Min();
        return Finding.AtLeast(
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

    private static string Advice(bool holds, RackChoice choice)
    {
        if (holds)
        {
            return "";
        }

        var would = choice.Others.Where(each => each.Holds).Take(3).Select(RackChoice.Says).ToList();
        return would.Count > 0
            ? $". What would hold, the cheapest first: {string.Join("; or ", would)}"
            : ". Nothing that the cards offer holds here: fewer modules in a rack, a lower tilt, heavier sections on the cards, or an engineer's design";
    }
}

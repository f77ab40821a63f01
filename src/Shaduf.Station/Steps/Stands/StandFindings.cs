using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the stand under the tank.</summary>
internal static class StandFindings
{
    private const string Members =
        "EN 1993-1-1:2005, 6.2 and 6.3; actions by EN 1990, EN 1991-1-1, EN 1991-1-4, EN 1998-1 and EN 1998-4";

    /// <summary>The beginning of the names of all findings that decide whether its drawing is released.</summary>
    public const string Prefix = "stand/";

    /// <summary>The findings.</summary>
    /// <param name="stand">The stand; null where none is designed here.</param>
    /// <param name="site">The site.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(StandDesign? stand, SiteBrief site)
    {
        if (stand is null)
        {
            return [];
        }

        var (strength, blocks) = (stand.Strength, stand.Footings.Strength!);
        Finding[] steel =
        [
            Strength(stand),
            Weld(stand),
            .. StandJointFindings.Of(strength, Advice(false, stand)),
            SlenderFindings.Of(
                "stand/slender",
                strength.Stand.Skeleton.Members,
                strength.Slender,
                Advice(false, stand)
            ),
            StandAccidentFinding.Of(strength.Accidents, Advice(strength.Outlasts, stand)),
            Sway(strength),
            Platform(stand),
            Feet(stand),
            Hold(strength),
            Stops(stand),
        ];
        var ground =
            SoilFindings.Soil(site, blocks.Soil).Status == FindingStatus.Stop
                ? "no pressure may be presumed for this ground"
                : null;
        return
        [
            .. NotKnown(steel, stand.Unknown),
            .. NotKnown(Blocks(stand), [.. stand.Unknown, ground]),
            Earthquake(strength),
            .. PlaceFindings
                .Of(site, stand.Footings.Block)
                .Prepend(SoilFindings.Water(blocks.Soil, stand.Footings))
                .Select(finding =>
                    finding with
                    {
                        Id = finding.Id.Replace("ground/", Prefix, StringComparison.Ordinal),
                    }
                ),
            .. StandLimits.Of(stand),
        ];
    }

    private static IEnumerable<Finding> NotKnown(IEnumerable<Finding> findings, IEnumerable<string?> reasons)
    {
        var why = string.Join(" and ", reasons.OfType<string>());
        return why.Length == 0
            ? findings
            : findings.Select(finding =>
                finding with
                {
                    Status = FindingStatus.Unchecked,
                    Says = $"{why}, so this is only a plan: {finding.Says}",
                }
            );
    }

    private static Finding Strength(StandDesign stand)
    {
        var strength = stand.Strength;
        var worst = strength.Members.MaxBy(use => use.Result.UtilisationShare)!;
        var member = strength.Stand.Skeleton.Members[worst.Member];
        return Finding.AtMost(
            "stand/strength",
            worst.Result.UtilisationShare,
            1,
            "",
            Invariant(
                $"{member.Role} {member.Mark} is used most: {worst.Result.UsedSays()}, {strength.Combinations.Strength[worst.Combination].Name}"
            ) + Advice(worst.Result.Holds, stand),
            $"{Members}; {worst.Result.Clause}"
        ) with
        {
            Value = worst.Result.FiniteShare,
        };
    }

    private static Finding Weld(StandDesign stand)
    {
        var strength = stand.Strength;
        var worst = strength.Joints.MaxBy(use => use.RequiredLegMm / strength.MostLegMm(use))!;
        var (name, leg, most) =
            worst.RequiredLegMm / strength.MostLegMm(worst) >= strength.LapLegMm / RackStrength.MostLegMm
                ? (worst.Name, worst.RequiredLegMm, strength.MostLegMm(worst))
                : (StandFrame.LapName, strength.LapLegMm, RackStrength.MostLegMm);
        return Finding.AtMost(
            "stand/welds",
            leg,
            most,
            "mm",
            Invariant($"'{name}' needs a leg of {leg:0.0} mm; every weld has at least 4.5 mm (throat 3 mm)")
                + Advice(leg <= most, stand),
            "EN 1993-1-8:2005, 4.5.3.3; legs beyond 6 mm or 1.2 times the wall: judgement, no source"
        );
    }

    private static Finding Sway(StandStrength strength)
    {
        var buckling = strength.Buckling;
        return Finding.AtLeast(
            "stand/sway",
            Math.Round(buckling.SwayFactor, 1),
            RackStrength.LeastCriticalFactor,
            "",
            buckling.SwayFactor < RackStrength.StiffCriticalFactor
                ? Invariant(
                    $"the full and leaning stand sways out of place at {buckling.SwayFactor:0.0} times its load; all that sways it is raised for that. Below 3 it needs more diagonals"
                )
                : Invariant(
                    $"the full and leaning stand is stiff against swaying: what its movement adds to the forces is left out. Its first bar would buckle between its joints at {buckling.Frame.Value ?? 1000:0.0} times the load, which the members' own checks judge"
                ),
            "EN 1993-1-1:2005, 5.2.1, 5.2.2(5)B and 5.3.2"
        );
    }

    private static Finding Platform(StandDesign stand)
    {
        var worst = stand.Strength.Moves.MaxBy(move => move.ValueMm / move.LimitMm)!;
        return Finding.AtMost(
            "stand/platform",
            worst.ValueMm,
            worst.LimitMm,
            "mm",
            Invariant(
                $"{worst.What}: {worst.ValueMm:0.0} mm; joists stand {stand.Stand.Plan.PitchMm:0} mm apart under a plate of {StandPlan.DeckMm:0} mm, which a flat bottom needs"
            ) + Advice(worst.Holds, stand),
            "L/360 and 3 mm from joist to joist: judgement, no source"
        );
    }

    private static Finding Feet(StandDesign stand)
    {
        var (feet, block) = (stand.Strength.Feet, stand.Footings.Block);
        var room = Math.Max(
            feet.Foot.NarrowestMm / Math.Min(block.LengthMm, block.WidthMm),
            feet.Foot.NeededDepthMm / block.DepthMm
        );
        var share = new[]
        {
            feet.PressShare,
            feet.Bolts.UtilisationShare,
            feet.NeededPlateMm / feet.Foot.ThicknessMm,
            room,
        }.Max();
        return Finding.AtMost(
            "stand/feet",
            share,
            1,
            "",
            Invariant(
                $"base plate {feet.Foot.SideMm:0} x {feet.Foot.SideMm:0} x {feet.Foot.ThicknessMm:0} mm on {StandFoot.BoltCount} bolts {feet.Foot.BoltName} of grade 4.6: concrete under it {feet.PressShare:0.00}, bolts {feet.Bolts.UtilisationShare:0.00}, hardest pulled bolt {Math.Max(0, feet.BoltN) / 1000:0.0} kN, plate needed {feet.NeededPlateMm:0.0} mm; concrete of {feet.ConcreteNPerMm2:0} N/mm2, a block {feet.Foot.NarrowestMm:0} mm wide and {feet.Foot.NeededDepthMm:0} mm deep at least"
            )
                + Advice(feet.Holds, stand)
                + (room <= 1 ? "" : StandFootings.Says(stand.WouldHold())),
            "EN 1993-1-8:2005, 6.2.5; EN 1992-4:2018, 7.2"
        );
    }

    private static Finding Hold(StandStrength strength)
    {
        var hold = StandHold.Of(strength);
        return new(
            "stand/tank-hold",
            FindingStatus.Holds,
            hold.StrapKN > 0
                ? Invariant(
                    $"the wind would tip the empty tank off: straps over it on two sides, each side good for {hold.StrapKN:0.0} kN, fitted before it is left empty overnight; stops at its foot, or {hold.StayKg:0} kg of water left in it, against sliding. An empty tank without straps stays up to {hold.FreeMPerS:0} m/s"
                )
                : "the empty tank stays where it is by its weight; stops at its foot all the same",
            hold.StrapKN,
            null,
            "kN",
            "statics with factors of EN 1990; friction 0.3: judgement"
        );
    }

    private static Finding Stops(StandDesign stand)
    {
        var strength = stand.Strength;
        var (steel, feet) = (strength.SteelStopsMPerS(), strength.FeetStopMPerS());
        return Finding.AtLeast(
            "stand/stops-at-wind",
            Math.Min(steel, feet),
            strength.Wind.BasicMPerS,
            "m/s",
            $"its steel holds up to {RackFindings.Speed(steel)}, its feet and their bolts up to {RackFindings.Speed(feet)}, the worse of full and empty tank; the blocks have their own figure. Wind speed as mean of ten minutes 10 m above open country"
                + Advice(Math.Min(steel, feet) >= strength.Wind.BasicMPerS, stand),
            "the checks of the stand, with the wind raised until one fails"
        );
    }

    // The blocks' own findings, under the stand's name.
    private static IEnumerable<Finding> Blocks(StandDesign stand)
    {
        var (strength, blocks) = (stand.Strength, stand.Footings.Strength!);
        var advice = blocks.Holds && stand.Concrete.Holds ? "" : StandFootings.Says(stand.WouldHold());
        return FootingFindings
            .Of(blocks, stand.BlocksStopMPerS(), strength.Wind.BasicMPerS, advice)
            .Select(finding =>
                finding with
                {
                    Id =
                        finding.Id == "ground/stops-at-wind"
                            ? "stand/blocks-stop-at-wind"
                            : finding.Id.Replace("ground/", Prefix, StringComparison.Ordinal),
                    Says = finding.Says.Replace("column ", "leg ", StringComparison.Ordinal),
                }
            )
            .Append(stand.Concrete.Finding(stand.Footings, advice));
    }

    private static Finding Earthquake(StandStrength strength)
    {
        var quake = strength.Quake;
        if (!quake.IsKnown)
        {
            return new(
                "stand/earthquake",
                FindingStatus.Unchecked,
                Invariant(
                    $"not checked: the acceleration of the ground is unknown; rock at {quake.Quake.GroundRatio / EarthquakeBrief.VillageFactor * 100:0} % of gravity and soft ground are taken so that sections can be chosen. Look it up in the national map, or a world map for 475 years"
                ),
                quake.ShakenRatio,
                StandQuake.MostRatio,
                "g",
                "EN 1998-1:2004"
            );
        }

        if (quake.IsCalm)
        {
            return new(
                "stand/earthquake",
                FindingStatus.Holds,
                "the ground is so quiet that no earthquake need be looked at",
                quake.ShakenRatio,
                StandQuake.CalmRatio,
                "g",
                "EN 1998-1:2004, 3.2.1(5)"
            );
        }

        var full = strength.Shakes[0];
        var wave = ElevatedTank.WaveM(strength.Stand.Plan.Tank.WidthMm / 2000, full.Push.SloshingRatio);
        return Finding.AtMost(
            "stand/earthquake",
            quake.ShakenRatio,
            StandQuake.MostRatio,
            "g",
            Invariant(
                $"{quake.From}, ground {quake.Quake.Ground.Name}: the full tank pushes with {full.Push.ShearKN:0.0} kN and turns the stand with {full.Push.MomentKNm:0} kN m, in the forces of all members, feet and blocks; {full.Tank.Sloshing.SloshingShare * 100:0} % of the water sloshes, with waves of {wave * 1000:0} mm: leave as much below the roof or let it spill"
            ) + (quake.ShakenRatio <= StandQuake.MostRatio ? "" : ". So hard a quake is an engineer's matter"),
            "EN 1998-1:2004, 4.3.3.2, q = 1.5; EN 1998-4:2006, annex A"
        );
    }

    private static string Advice(bool holds, StandDesign stand) =>
        holds ? ""
        : stand.Others.Count > 0 ? $". What would hold: {StandDesign.Says(stand.Others[0])}"
        : ". Nothing that the cards offer holds: a smaller tank, two tanks on two stands, a lower floor, heavier sections on the cards, or an engineer's design";
}

using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on what the method of stands reaches to, and on how one gets up.</summary>
internal static class StandLimits
{
    private const double MostM3 = 60;
    private const double MostFallShare = 0.02;
    private const double SignedM3 = 10;
    private const double SignedM = 6;
    private const string Judged = "limits of the method, judgement";

    /// <summary>The findings.</summary>
    /// <param name="stand">The stands.</param>
    public static IEnumerable<Finding> Of(StandDesign stand)
    {
        var plan = stand.Stand.Plan;
        yield return Fit(plan);
        yield return Finding.AtMost(
            "stand/slope",
            stand.Brief.FallShare * 100,
            MostFallShare * 100,
            "%",
            stand.Brief.FallShare <= MostFallShare
                ? "the ground under the stand is level, or its plinths level it"
                : "the ground falls too much under the stand, whose legs are all of one length: cut a level place into the slope, with a wall and a drain behind it, or have an engineer design legs of different lengths",
            Judged
        );
        yield return Size(plan);
        yield return RackFindings.Cyclones("stand/wind", stand.Strength.Wind, "stand");
        yield return Access(stand);
    }

    private static Finding Size(StandPlan plan)
    {
        var isSigned = plan.Tank.WaterM3 > SignedM3 && plan.FloorMm > SignedM * 1000;
        var finding = Finding.AtMost(
            "stand/limits",
            plan.Tank.WaterM3,
            MostM3,
            "m3",
            Invariant($"one tank of {plan.Tank.WaterM3:0.#} m3 on a stand {plan.FloorMm / 1000:0.0} m high")
                + (
                    plan.Tank.WaterM3 > MostM3 ? ": beyond what this program judges, an engineer designs it"
                    : isSigned ? ": over 10 m3 above 6 m an engineer signs"
                    : ": within what this program judges; an engineer signs where people gather, or a house or school stands within one and a half times its height"
                ),
            Judged
        );
        return isSigned && finding.Status == FindingStatus.Holds
            ? finding with
            {
                Status = FindingStatus.Look,
            }
            : finding;
    }

    private static Finding Fit(StandPlan plan)
    {
        var platform = plan.AskedPlatformMm ?? (plan.WidthMm.RightMm - plan.WidthMm.LeftMm);
        var needed = plan.Tank.WidthMm + (2 * StandPlan.EdgeMm);
        return Finding.AtLeast(
            "stand/fit",
            platform / 1000,
            needed / 1000,
            "m",
            platform >= needed
                ? Invariant(
                    $"the platform reaches {(platform - plan.Tank.WidthMm) / 2:0} mm beyond the tank on each side"
                )
                : Invariant(
                    $"the tank {plan.Tank.Name} is {plan.Tank.WidthMm / 1000:0.00} m wide and the platform {platform / 1000:0.00} m: it would hang over the edge. What would hold: a platform of {Math.Ceiling(needed / 50) * 0.05:0.00} m, or a narrower tank"
                ),
            "25 mm beyond the tank at least: judgement, no source"
        );
    }

    private static Finding Access(StandDesign stand)
    {
        var (access, rail) = (stand.Stand.Access, stand.Stand.Plan.Sections.Rail);
        var section = Steel.MemberSection.OfSquare(rail.SideMm, rail.WallMm);
        var spacing = access.PostSpacingMm / 1000;
        var moment =
            stand.Strength.Combinations.Choices.VariableFactor
            * Steel.GuardPost.MomentKNm(spacing, StandAccess.RailMm / 1000);
        var holds = section.ElasticModulusYMm3 * stand.Strength.Rules.Grade.YieldNPerMm2 / 1e6;
        var move = Steel.GuardPost.MoveMm(spacing, StandAccess.RailMm / 1000, section.Frame.InertiaYMm4);
        var use = Math.Max(moment / holds, move / Steel.GuardPost.MostMoveMm);
        return Finding.AtMost(
            "stand/access",
            use,
            1,
            "",
            Invariant(
                $"guard rail 1.1 m high all round with posts {rail.Name} at most {access.PostSpacingMm / 1000:0.00} m apart ({moment:0.00} of {holds:0.00} kN m, {move:0} of 30 mm), knee rail, toe plate of 100 mm, a gate that closes itself at the ladder; ladder with {access.RungCount} rungs {access.RungSpacingMm:0} mm apart up to the deck, above it only the stiles, {access.HoldMm / 1000:0.0} m of hand hold {StandAccess.LadderWidthMm:0} mm clear to step through"
            )
                + (
                    access.NeedsCage
                        ? Invariant(
                            $": one can fall {access.FallMm / 1000:0.0} m, so it needs a cage from 2.5 m up or an arrester led on it, not both; its lowest 2.5 m are taken off or locked against children"
                        )
                        : "; lock it against children"
                ),
            "EN ISO 14122-3 and 14122-4:2016 (dimensions from memory); national rules on work at height decide"
        );
    }
}

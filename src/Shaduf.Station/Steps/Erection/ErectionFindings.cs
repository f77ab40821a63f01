using Shaduf.Ground;
using Shaduf.Working;
using Shaduf.Workshop;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the days before the concrete holds.</summary>
internal static class ErectionFindings
{
    /// <summary>The findings.</summary>
    /// <param name="erection">The works.</param>
    /// <param name="soil">Kind of soil; null when unknown.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Erection erection, SoilKind? soil) =>
        [Ropes(erection), PropFindings.Of(erection.Props), Pits(erection, soil), Lift(erection), Cure(erection)];

    private static Finding Ropes(Erection erection)
    {
        var finding = Finding.AtMost(
            "build/ropes",
            erection.RopesASide,
            Erection.MostRopes,
            "",
            Invariant(
                $"until the concrete holds, {erection.RopesASide} ropes to each side hold one frame in a wind of {erection.StageMPerS:0.0} m/s (once in {Erection.StageYears:0} years, for up to three days): {erection.RopeKN:0.0} kN in each at {Erection.RopeDeg:0} deg, {GuyRope.UpKN(erection.RopeKN, Erection.RopeDeg):0.0} kN up at its anchor; rope of {erection.BreakingKN:0} kN breaking load"
            )
                + (
                    erection.RopesASide <= Erection.MostRopes
                        ? ""
                        : $". So many ropes are not set right{erection.Advice}"
                ),
            "statics; EN 1991-1-6:2005, table 3.1, from memory; partial factor 1.5; number of ropes: judgement"
        );
        return erection.Wind.IsKnown
            ? finding
            : finding with
            {
                Status = FindingStatus.Unchecked,
                Says = $"the wind speed is unknown, so this is only a plan: {finding.Says}",
            };
    }

    private static Finding Pits(Erection erection, SoilKind? soil)
    {
        var depthM = erection.Footings.Block.DepthMm / 1000;
        var run = soil switch
        {
            SoilKind.Rock => 0,
            SoilKind.Clay => 1,
            _ => 1.5,
        };
        return new(
            "build/pits",
            depthM <= PitSide.UprightM ? FindingStatus.Holds : FindingStatus.Look,
            depthM <= PitSide.UprightM
                ? Invariant(
                    $"the pits are {depthM:0.00} m deep with upright sides: boards over them when nobody works there, spoil 1 m away, out of them in rain"
                )
                : Invariant(
                    $"the pits are {depthM:0.00} m deep with upright sides, and the concrete must touch grown ground: nobody goes in deeper than {PitSide.UprightM:0.0} m unless boards and struts hold the sides; dig from above, or hold the sides with boards that are drawn with the concrete. Without boards the sides would have to lie at {PitSide.SlopeDeg(run):0} deg, and the block would stand in fill"
                ),
            depthM,
            PitSide.UprightM,
            "m",
            "29 CFR 1926 subpart P; 1.2 m: the lower of common national rules"
        );
    }

    private static Finding Lift(Erection erection)
    {
        var (frame, piece) = (Erection.People(erection.FrameKg), erection.Heaviest);
        var pieceBy = Erection.People(piece.MassKg) is { } people
            ? Invariant($"{people} {(people == 1 ? "person" : "people")}")
            : "a hoist";
        var says = frame is { } few
            ? Invariant($"{few} people lift it")
            : Invariant(
                $"too heavy for hands: gear, four slings at 60 deg with {erection.SlingKN:0.0} kN in each, nobody under it; or weld it together in its place"
            );
        return new(
            "build/lift",
            frame is null ? FindingStatus.Look : FindingStatus.Holds,
            Invariant(
                $"one frame without modules weighs {erection.FrameKg:0} kg, {says}. The heaviest piece, {piece.Mark}, weighs {piece.MassKg:0} kg: {pieceBy}"
            ),
            erection.FrameKg,
            null,
            "kg",
            "filter of the UK Health and Safety Executive, not a legal limit; teams from memory; sling makers' tables"
        );
    }

    private static Finding Cure(Erection erection)
    {
        var step = erection.Steps[2];
        var months = Enumerable.Range(0, 12).ToList();
        var slowest = months.MaxBy(month => erection.Days(step, month) ?? 0);
        var cold = months.Count(month => erection.Days(step, month) is null);
        return new(
            "build/cure",
            cold > 0 ? FindingStatus.Look : FindingStatus.Holds,
            Invariant(
                $"{step.Name} wait for {step.StrengthShare:0.00} of the concrete's strength: up to {erection.Days(step, slowest) ?? 0:0} days, by the month"
            ) + (cold > 0 ? Invariant($"; in {cold} months the air is colder than 5 degC: do not cast then") : ""),
            erection.Days(step, slowest),
            null,
            "d",
            "EN 1992-1-1:2004, equations 3.2 and B.10, slow or unknown cement; shares: judgement"
        );
    }
}

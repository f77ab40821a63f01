using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on main and taps as they are laid.</summary>
internal static class PipeChapter
{
    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        var full = design.Works.Main.TankFull;
        yield return new Heading(1, "Main and taps as laid");
        yield return PipeTables.Reaches(design);
        yield return PipeTables.Economic(design);
        yield return PipeTables.Fittings(design);
        yield return new Paragraph($"When the tank is full: {full.Name}. Why: {full.Why}.");
        yield return PipeTables.Laying(design);
        yield return PipeTables.Blocks(design);
        foreach (var block in design.Works.Taps.Heads.Count > 0 ? Taps(design) : [])
        {
            yield return block;
        }
    }

    private static IEnumerable<Block> Taps(Design design)
    {
        yield return new Heading(2, "Taps by gravity");
        yield return new Figure(
            TapTree.Of(design, new(PicturePaper.Full.WidthMm, TapTree.HeightMm(design))).Trimmed(),
            "Pipes to the taps by their length from the tank and their level. Pipes are numbered as in the table."
        );
        yield return PipeTables.TapPipes(design);
        yield return PipeTables.Taps(design);
        if (design.Works.TapStands is { } stands)
        {
            yield return new Paragraph(
                Invariant(
                    $"Each of the {stands.Count} tap stands: apron of {TapStands.ApronM:0.0} x {TapStands.ApronM:0.0} m, {TapStands.SlabM * 1000:0} mm thick, falling 1 in {TapStands.FallNumber:0} to a channel, with a kerb of {TapStands.KerbHeightM * 1000:0} mm; tap 0.5 to 0.6 m over the container's stone; drain of at least {TapStands.DrainMm:0} mm falling 1 in {TapStands.FallNumber:0} to the soakaway, at least 10 m off and 30 m from the source. Waste {stands.WasteLPerDay:0} L a day needs {stands.WallM2:0.0} m2 of wall: {stands.SoakawayText}. Its bottom stays 1.5 m above the water in the ground. Animals drink at a trough of their own, 10 m away."
                )
            );
        }
    }
}

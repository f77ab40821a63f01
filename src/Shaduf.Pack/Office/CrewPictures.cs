using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>The pictures that the crew needs at a step of the method.</summary>
internal static class CrewPictures
{
    // Smaller pits are no help to anybody; judgement, no source.
    private const double SmallestOneToFactor = 500;
    private static readonly PaperSize s_high = new(173, 118);
    private static readonly PaperSize s_low = new(173, 96);

    /// <summary>The pictures.</summary>
    /// <param name="design">The design.</param>
    /// <param name="step">The step's key.</param>
    /// <returns>The pictures in order; none where words do.</returns>
    public static IReadOnlyList<Figure> Of(Design design, string step)
    {
        var works = design.Works;
        return step switch
        {
            "set-out" =>
            [
                new(
                    GuardPlan.Of(works.Guard, design.Choice.Facing.AzimuthDeg, s_high).Trimmed(),
                    "Racks, fence, poles and earth from above, to scale; the arrow points to true north."
                ),
            ],
            "pits" when Pits(works) is { } pits =>
            [
                new(pits, "Pegs A and B in front of the low edge, and the pits by their names."),
            ],
            "steel" =>
            [
                new(RackPlane.Of(works.Rack, s_low).Trimmed(), "Seen from above the plane: marks of the parts."),
                new(RackSide.Of(works.Rack, works.Footings, s_low).Trimmed(), "Seen along the row."),
            ],
            "concrete" => [.. ErectionChapter.Blocks(design).OfType<Figure>()],
            "well" when works.Source is WellBuild well =>
            [
                new(
                    BoreholeSection.Of(design, well.Well, new(173, 88)).Trimmed(),
                    "The borehole with its levels and the pump."
                ),
            ],
            "intake" when works.Source is IntakeBuild intake =>
            [
                new(IntakeSection.Of(intake, s_low).Trimmed(), "Pump and suction pipe at the water."),
            ],
            "main" =>
            [
                new(LongSection.Of(design, PicturePaper.Tall).Trimmed(), "The main from the source to the tank."),
            ],
            "electrics" =>
            [
                new(
                    StringDiagram.Of(design, s_high.WidthMm, 0).Trimmed(),
                    "The first rack's strings; the others likewise. Live in the light: a string's two ends are joined last."
                ),
            ],
            _ => [],
        };
    }

    // Where the names would lie on each other, the table and the sheet of the setting-out do.
    private static Scene? Pits(Works works)
    {
        var (plan, field) = (works.Pits, works.Guard.Field);
        var picture = BookScale
            .From(20)
            .TakeWhile(scale => scale <= SmallestOneToFactor)
            .Select(scale => PitPlanPicture.Of(plan, field, scale))
            .FirstOrDefault(each => each.Size.WidthMm <= s_high.WidthMm && each.Size.HeightMm <= s_high.HeightMm);
        return picture?.TextOverlaps().Count == 0 ? picture : null;
    }
}

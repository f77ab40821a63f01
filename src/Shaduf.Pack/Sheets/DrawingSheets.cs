using Shaduf.Parts;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>A drawing sheet.</summary>
/// <param name="Name">Its name in files, one word.</param>
/// <param name="Scene">The sheet.</param>
/// <param name="OneToFactor">Scale 1:n of its views, by which its DXF is enlarged so that lengths are true.</param>
public sealed record DrawingSheet(string Name, Scene Scene, double OneToFactor);

/// <summary>The drawing sheets of a station, A3.</summary>
public static class DrawingSheets
{
    /// <summary>Names of the sheets, in order.</summary>
    public static IReadOnlyList<string> Names { get; } = ["arrangement", "parts", "sections"];

    private const double GapMm = 4;
    private static readonly PaperSize s_paper = PaperSize.A3Landscape;
    private static readonly PaperSize s_plan = new(236, 150);
    private static readonly PaperSize s_side = new(148, 150);
    private static readonly PaperSize s_model = new(200, 112);
    private const double LeastCellMm = 30;
    private const int MostColumns = 7;

    /// <summary>Composes the sheets.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">What every sheet bears.</param>
    /// <returns>The sheets in order.</returns>
    public static IReadOnlyList<DrawingSheet> Of(Design design, Stamp stamp) =>
        [Arrangement(design, stamp), Parts(design, stamp), Sections(design, stamp)];

    private static DrawingSheet Arrangement(Design design, Stamp stamp)
    {
        var (rack, footings) = (design.Works.Rack, design.Works.Footings);
        var scale = SiteToPaper.FittingOneToFactor(
            Math.Max(RackPlane.LeastOneToFactor(rack, s_plan), RackSide.LeastOneToFactor(rack, footings, s_side)),
            1
        );
        var inside = SheetFrame.Inside(s_paper);
        PaperPoint At(double right, double down) => new(inside.LeftMm + GapMm + right, inside.TopMm + GapMm + down);
        return Sheet(
            design,
            stamp,
            0,
            new(
                "general arrangement of a rack",
                Invariant($"1:{scale:0.##}"),
                [
                    (RackPlane.Of(rack, s_plan, scale).Trimmed(), At(0, 0)),
                    (RackSide.Of(rack, footings, s_side, scale).Trimmed(), At(s_plan.WidthMm, 0)),
                    (RackModelPicture.Of(rack, s_model).Trimmed(), At(0, s_plan.HeightMm + GapMm)),
                ],
                scale
            )
        );
    }

    private static DrawingSheet Parts(Design design, Stamp stamp)
    {
        var rack = design.Works.Rack;
        var inside = SheetFrame.Inside(s_paper);
        var groups = rack.Steel.Groups;
        var heightMm = SheetFrame.TitleBlock(s_paper).TopMm - inside.TopMm - (2 * GapMm);
        var most = (int)(heightMm / LeastCellMm);
        var columns = Math.Clamp((groups.Count + most - 1) / most, 4, MostColumns);
        PaperSize cell = new((inside.WidthMm - (2 * GapMm)) / columns, Math.Min(36, heightMm / most));
        var views = groups
            .Take(most * columns)
            .Select(
                (part, i) =>
                    (
                        PartSketch.Of(part, part.Count * rack.Grid.RackCount, cell),
                        new PaperPoint(
                            inside.LeftMm + GapMm + (i % columns * cell.WidthMm),
                            inside.TopMm + GapMm + (i / columns * cell.HeightMm)
                        )
                    )
            )
            .ToList();
        var left = groups.Count - views.Count;
        var title =
            left > 0
                ? Invariant($"parts; no room for {left} more: see the table of parts in the station book")
                : "parts: long point to long point, short point in brackets, saw angles from a square cut";
        return Sheet(design, stamp, 1, new(title, "not to scale", views, 1));
    }

    private static DrawingSheet Sections(Design design, Stamp stamp)
    {
        var inside = SheetFrame.Inside(s_paper);
        var (x, y, rowMm) = (inside.LeftMm + 8, inside.TopMm + 8, 0.0);
        var views = new List<(Scene, PaperPoint)>();
        foreach (var view in SectionPictures.Of(design.Works.Rack))
        {
            if (x + view.Size.WidthMm > inside.RightMm - 8)
            {
                (x, y, rowMm) = (inside.LeftMm + 8, y + rowMm + 8, 0);
            }

            views.Add((view, new(x, y)));
            (x, rowMm) = (x + view.Size.WidthMm + 12, Math.Max(rowMm, view.Size.HeightMm));
        }

        return Sheet(design, stamp, 2, new("sections of the rack's steel", "1:1", views, 1));
    }

    // What is drawn on a sheet, and how large.
    private sealed record Drawn(
        string Title,
        string Scale,
        IReadOnlyList<(Scene, PaperPoint)> Views,
        double OneToFactor
    );

    private static DrawingSheet Sheet(Design design, Stamp stamp, int index, Drawn drawn)
    {
        var head = design.Brief.Head;
        var block = new SheetTitle(head.Name, drawn.Title, head.Builder, index + 1, Names.Count, drawn.Scale)
        {
            Mark = Invariant($"{stamp.Status}, {stamp.Revision}, {stamp.BriefHash}"),
            Date = Invariant($"{stamp.Dated:yyyy-MM-dd}"),
        };
        return new(Names[index], SheetFrame.Of(s_paper, block, drawn.Views), drawn.OneToFactor);
    }
}

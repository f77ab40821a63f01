using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>What is drawn on a sheet, before it gets its frame.</summary>
/// <param name="Name">Its name in files: letters and hyphens.</param>
/// <param name="Title">What is drawn.</param>
/// <param name="Paper">Size of the sheet.</param>
/// <param name="Scale">Scale in words.</param>
/// <param name="OneToFactor">Scale 1:n of its main view.</param>
/// <param name="Views">The views and where their top left corners go.</param>
internal sealed record SheetDraft(
    string Name,
    string Title,
    PaperSize Paper,
    string Scale,
    double OneToFactor,
    IReadOnlyList<PlacedView> Views
)
{
    // The steps of ISO 5455 down to a plan of a whole site.
    private static readonly double[] s_scales = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000];

    // The smaller sheet where the same scale has room on it.
    private static readonly PaperSize[] s_papers = [PaperSize.A4Landscape, PaperSize.A3Landscape];

    /// <summary>A sheet whose views have one size.</summary>
    /// <param name="name">Its name in files.</param>
    /// <param name="title">What is drawn.</param>
    /// <param name="scale">Scale in words.</param>
    /// <param name="views">The views.</param>
    /// <param name="notes">Notes beside the title block.</param>
    public static SheetDraft Fixed(
        string name,
        string title,
        string scale,
        IReadOnlyList<Scene> views,
        IReadOnlyList<string> notes
    ) => Fitted(name, title, _ => views, notes, [1]) with { Scale = scale };

    /// <summary>A sheet at the largest standard scale at which its views find room.</summary>
    /// <param name="name">Its name in files.</param>
    /// <param name="title">What is drawn.</param>
    /// <param name="views">The views at a scale 1:n.</param>
    /// <param name="notes">Notes beside the title block.</param>
    /// <param name="leastOneToFactor">n below which no trial is worth it.</param>
    public static SheetDraft Scaled(
        string name,
        string title,
        Func<double, IReadOnlyList<Scene>> views,
        IReadOnlyList<string> notes,
        double leastOneToFactor
    ) => Fitted(name, title, views, notes, s_scales.Where(scale => scale >= leastOneToFactor * (1 - 1e-9)));

    private static SheetDraft Fitted(
        string name,
        string title,
        Func<double, IReadOnlyList<Scene>> views,
        IReadOnlyList<string> notes,
        IEnumerable<double> scales
    )
    {
        foreach (var scale in scales)
        {
            var drawn = views(scale);
            foreach (var paper in s_papers)
            {
                if (Shelves.Placed(drawn, notes, paper) is { } placed)
                {
                    return new(name, title, paper, Invariant($"1:{scale:0}"), scale, placed);
                }
            }
        }

        throw new InvalidOperationException($"the views of sheet '{name}' find no room");
    }
}

/// <summary>A view on a sheet.</summary>
/// <param name="Scene">The view, as large as it is.</param>
/// <param name="At">Where its top left corner goes.</param>
internal readonly record struct PlacedView(Scene Scene, PaperPoint At);

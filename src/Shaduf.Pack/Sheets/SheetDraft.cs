using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>What is drawn on a sheet, before it gets its frame.</summary>
/// <param name="Name">Its name in files: letters, figures and hyphens.</param>
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

    // Tables may cost their drawing one step of the scale, no more.
    private const double OneStep = 2.5;

    /// <summary>Sheets whose views have one size: as many as they need.</summary>
    /// <param name="name">Name in files; the second sheet is called name-2.</param>
    /// <param name="title">What is drawn.</param>
    /// <param name="scale">Scale in words.</param>
    /// <param name="views">The views.</param>
    /// <param name="notes">Notes beside the title block of the first.</param>
    public static IEnumerable<SheetDraft> Fixed(
        string name,
        string title,
        string scale,
        IReadOnlyList<Scene> views,
        IReadOnlyList<string> notes
    ) => Paged(name, title, scale, views, (notes, 1));

    /// <summary>
    /// A sheet at the largest standard scale at which its drawing finds room, with tables beside it; those without room follow
    /// on sheets of their own.
    /// </summary>
    /// <param name="name">Its name in files.</param>
    /// <param name="title">What is drawn.</param>
    /// <param name="drawing">The drawing at a scale 1:n.</param>
    /// <param name="tables">Tables and details of one size.</param>
    /// <param name="notes">Notes beside the title block.</param>
    /// <param name="leastOneToFactor">n below which no trial is worth it.</param>
    public static IEnumerable<SheetDraft> Scaled(
        string name,
        string title,
        Func<double, IReadOnlyList<Scene>> drawing,
        IReadOnlyList<Scene> tables,
        IReadOnlyList<string> notes,
        double leastOneToFactor
    )
    {
        var scales = s_scales.Where(scale => scale >= leastOneToFactor * (1 - 1e-9)).ToList();
        var alone =
            scales
                .Select(scale => At(name, title, drawing(scale), notes, scale))
                .FirstOrDefault(draft => draft is not null)
            ?? throw NoRoom(name);
        if (tables.Count == 0)
        {
            return [alone];
        }

        var together = scales
            .Where(scale => scale >= alone.OneToFactor && scale <= alone.OneToFactor * OneStep)
            .Select(scale => At(name, title, [.. drawing(scale), .. tables], notes, scale))
            .FirstOrDefault(draft => draft is not null);
        return together is not null
            ? [together]
            : [alone, .. Paged(name, $"{title}: tables", "not to scale", tables, ([], 2))];
    }

    private static SheetDraft? At(
        string name,
        string title,
        IReadOnlyList<Scene> views,
        IReadOnlyList<string> notes,
        double oneToFactor
    ) =>
        s_papers
            .Select(paper => (Paper: paper, Placed: Shelves.Placed(views, notes, paper)))
            .Where(each => each.Placed is not null)
            .Select(each => new SheetDraft(
                name,
                title,
                each.Paper,
                Invariant($"1:{oneToFactor:0}"),
                oneToFactor,
                each.Placed!
            ))
            .FirstOrDefault();

    private static IEnumerable<SheetDraft> Paged(
        string name,
        string title,
        string scale,
        IReadOnlyList<Scene> views,
        (IReadOnlyList<string> Notes, int Number) first
    )
    {
        var (notes, number) = first;
        for (var from = 0; from < views.Count; number++, notes = [])
        {
            var called = number == 1 ? name : Invariant($"{name}-{number}");
            var draft = Enumerable
                .Range(1, views.Count - from)
                .Reverse()
                .Select(count => (Count: count, Draft: At(called, title, [.. views.Skip(from).Take(count)], notes, 1)))
                .FirstOrDefault(each => each.Draft is not null);
            yield return (draft.Draft ?? throw NoRoom(called)) with
            {
                Scale = scale,
            };
            from += draft.Count;
        }
    }

    private static InvalidOperationException NoRoom(string name) => new($"the views of sheet '{name}' find no room");
}

/// <summary>A view on a sheet.</summary>
/// <param name="Scene">The view, as large as it is.</param>
/// <param name="At">Where its top left corner goes.</param>
internal readonly record struct PlacedView(Scene Scene, PaperPoint At);

using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>A drawing sheet.</summary>
/// <param name="Name">Its name in files, one word.</param>
/// <param name="Scene">The sheet.</param>
/// <param name="OneToFactor">Scale 1:n of its views, by which its DXF is enlarged so that lengths are true.</param>
/// <param name="Title">Its title.</param>
public sealed record DrawingSheet(string Name, Scene Scene, double OneToFactor, string Title);

/// <summary>The drawing sheets of a station.</summary>
public static class DrawingSheets
{
    /// <summary>Composes the sheets, several at a time.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">What every sheet bears.</param>
    /// <returns>The sheets in order.</returns>
    public static IReadOnlyList<DrawingSheet> Of(Design design, Stamp stamp)
    {
        Func<Design, IEnumerable<SheetDraft>>[] all =
        [
            GroundSheets.Site,
            GroundSheets.SettingOut,
            GroundSheets.Footings,
            FenceSheets.Of,
            RackSheets.Arrangement,
            ShopSheets.Frame,
            RackSheets.Columns,
            RackSheets.Parts,
            RackSheets.Sections,
            ShopSheets.Welds,
            ShopSheets.Loading,
            WorksSheets.Propping,
            WorksSheets.Stand,
            WorksSheets.Poles,
            WorksSheets.Source,
            WorksSheets.Taps,
            DiagramSheets.LongSection,
            DiagramSheets.Electric,
            DiagramSheets.Earthing,
        ];
        SheetDraft[] drafts = [.. all.AsParallel().AsOrdered().SelectMany(sheets => sheets(design).ToList())];
        return [.. drafts.Index().AsParallel().AsOrdered().Select(each => Framed(design, stamp, drafts, each.Index))];
    }

    private static DrawingSheet Framed(Design design, Stamp stamp, SheetDraft[] drafts, int index)
    {
        var (head, draft) = (design.Brief.Head, drafts[index]);
        var block = new SheetTitle(head.Name, draft.Title, head.Builder, index + 1, drafts.Length, draft.Scale)
        {
            Mark = Invariant($"{stamp.Status}, {stamp.Revision}, {stamp.BriefHash}"),
            Date = Invariant($"{stamp.Dated:yyyy-MM-dd}"),
        };
        return new(draft.Name, SheetFrame.Of(draft.Paper, block, draft.Views), draft.OneToFactor, draft.Title);
    }
}

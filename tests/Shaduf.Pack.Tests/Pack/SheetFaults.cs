namespace Shaduf.Pack.Tests;

/// <summary>What makes a sheet hard to read.</summary>
internal static class SheetFaults
{
    // Letters keep this far from their box.
    private const double InsetMm = 0.35;

    /// <summary>The faults of a sheet; empty when it can be read.</summary>
    public static IReadOnlyList<string> Of(DrawingSheet sheet)
    {
        var scene = sheet.Scene;
        var (inside, block) = (SheetFrame.Inside(scene.Size).Grown(0.5), SheetFrame.TitleBlock(scene.Size));
        var drawn = scene.Items.TakeWhile(item => !IsBlock(item, block)).Where(IsDrawn).ToList();
        return
        [
            .. scene.TextOverlaps().Select(pair => $"'{pair.First.Item.Text}' on '{pair.Second.Item.Text}'"),
            .. scene
                .Items.Where(item => IsDrawn(item) && !Holds(inside, item.Box))
                .Select(item => $"{item.GetType().Name} {item.Layer.Name} leaves the frame: {item.Box}"),
            .. scene.TextsOutside(inside.Grown(5)).Select(box => $"'{box.Item.Text}' leaves the fields"),
            .. drawn
                .Where(item => item.Box.RightMm > block.LeftMm + 0.1 && item.Box.BottomMm > block.TopMm + 0.1)
                .Select(item => $"{item.GetType().Name} {item.Layer.Name} in the title block: {item.Box}"),
            .. scene.MissingCharacters().Select(each => $"no font has '{each}'"),
            .. Crossed(scene.Items),
        ];
    }

    private static bool IsDrawn(SceneItem item) => item.Layer != Layer.Frame && item.Layer != Layer.Fields;

    private static bool Holds(PaperBox frame, PaperBox box) =>
        frame.Holds(new(box.LeftMm, box.TopMm)) && frame.Holds(new(box.RightMm, box.BottomMm));

    private static bool IsBlock(SceneItem item, PaperBox block) =>
        item is PolyItem poly && poly.Box.LeftMm == block.LeftMm && poly.Box.TopMm == block.TopMm;

    // A line through a text that is neither on a white ground nor on a filled thing between both.
    private static IEnumerable<string> Crossed(IReadOnlyList<SceneItem> items)
    {
        for (var i = 0; i < items.Count; i++)
        {
            if (items[i] is not TextItem { Text.Length: > 0 } text || text.Layer == Layer.Fields)
            {
                continue;
            }

            var (box, around) = (Shrunk(text), text.Box);
            for (var j = 0; j < items.Count; j++)
            {
                if (
                    Meets(items[j].Box, around)
                    && Strokes(items[j]).Any(line => box.IsCrossedBy(line.From, line.To))
                    && !IsHidden(items, j, i)
                )
                {
                    yield return $"{items[j].GetType().Name} {items[j].Layer.Name} through '{text.Text}'";
                }
            }
        }
    }

    private static bool Meets(PaperBox a, PaperBox b) =>
        a.LeftMm <= b.RightMm && b.LeftMm <= a.RightMm && a.TopMm <= b.BottomMm && b.TopMm <= a.BottomMm;

    private static bool IsHidden(IReadOnlyList<SceneItem> items, int line, int at) =>
        line < at
        && items[at] is TextItem text
        && (text.Style.IsOpaque || items.Skip(line + 1).Take(at - line - 1).Any(over => Covers(over, text)));

    private static TextBox Shrunk(TextItem text)
    {
        var corners = text.TextBox.Corners;
        var middle = new PaperPoint(corners.Average(point => point.XMm), corners.Average(point => point.YMm));
        var share = Math.Max(
            0.1,
            1 - (InsetMm * 2 / Math.Min(corners[0].DistanceMm(corners[1]), corners[1].DistanceMm(corners[2])))
        );
        return new(
            text,
            [
                .. corners.Select(point => new PaperPoint(
                    middle.XMm + ((point.XMm - middle.XMm) * share),
                    middle.YMm + ((point.YMm - middle.YMm) * share)
                )),
            ]
        );
    }

    private static bool Covers(SceneItem item, TextItem text) =>
        item switch
        {
            PolyItem { Fill: not null } poly => Holds(poly.Box.Grown(0.5), text.Box),
            CircleItem { Fill: not null } circle => circle.Box.Holds(text.Box.Centre),
            _ => false,
        };

    private static IEnumerable<(PaperPoint From, PaperPoint To)> Strokes(SceneItem item) =>
        item switch
        {
            _ when item.Layer == Layer.Grid || item.Layer == Layer.Hatch => [],
            LineItem line => [(line.From, line.To)],
            PolyItem { IsStroked: true } poly => poly.Points.Zip(
                poly.Points.Skip(1).Concat(poly.IsClosed ? poly.Points.Take(1) : [])
            ),
            CircleItem circle => Chords(circle),
            _ => [],
        };

    private static IEnumerable<(PaperPoint, PaperPoint)> Chords(CircleItem circle)
    {
        PaperPoint At(int i)
        {
            var (sin, cos) = Math.SinCos(i * Math.PI / 12);
            return circle.Centre.Moved(circle.RadiusMm * cos, circle.RadiusMm * sin);
        }

        return Enumerable.Range(0, 24).Select(i => (At(i), At(i + 1)));
    }
}

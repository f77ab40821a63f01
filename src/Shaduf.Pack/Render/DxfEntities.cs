using System.Text;

namespace Shaduf.Pack;

/// <summary>The items of a scene as entities of a DXF file.</summary>
/// <param name="file">The file.</param>
/// <param name="heightMm">Height of the scene, for turning y up [mm].</param>
/// <param name="scale">Enlargement.</param>
internal sealed class DxfEntities(DxfText file, double heightMm, double scale)
{
    public void Add(SceneItem item)
    {
        switch (item)
        {
            case LineItem line:
                Line(line.Layer, line.From, line.To);
                break;
            case PolyItem { IsStroked: true } poly:
                Poly(poly);
                break;
            case CircleItem circle:
                Begin("CIRCLE", circle.Layer, "AcDbCircle");
                At(10, circle.Centre).Number(40, circle.RadiusMm * scale);
                break;
            case ArcItem arc:
                Begin("ARC", arc.Layer, "AcDbCircle");
                At(10, arc.Centre).Number(40, arc.RadiusMm * scale).Pair(100, "AcDbArc");
                file.Number(50, Turn(arc.StartDeg)).Number(51, Turn(arc.StartDeg + arc.SweepDeg));
                break;
            case HatchItem hatch:
                foreach (var (from, to) in HatchLines.Of(hatch))
                {
                    Line(hatch.Layer, from, to);
                }

                break;
            case TextItem text when text.Text.Length > 0:
                Text(text);
                break;
            default:
                break;
        }
    }

    private static double Turn(double deg) => ((deg % 360) + 360) % 360;

    private void Line(Layer layer, PaperPoint from, PaperPoint to)
    {
        Begin("LINE", layer, "AcDbLine");
        At(10, from);
        At(11, to);
    }

    private void Poly(PolyItem poly)
    {
        Begin("LWPOLYLINE", poly.Layer, "AcDbPolyline");
        file.Pair(90, poly.Points.Count).Pair(70, poly.IsClosed ? 1 : 0);
        foreach (var point in poly.Points)
        {
            file.Number(10, point.XMm * scale).Number(20, (heightMm - point.YMm) * scale);
        }
    }

    // Letters as high as the scene's capitals, from the left end of the baseline.
    private void Text(TextItem item)
    {
        var box = TextBox.Of(item);
        var (lower, upper) = (box.Corners[0], box.Corners[3]);
        var share = Lettering.DescentRatio / (Lettering.AscentRatio + Lettering.DescentRatio);
        PaperPoint baseline = new(
            lower.XMm + ((upper.XMm - lower.XMm) * share),
            lower.YMm + ((upper.YMm - lower.YMm) * share)
        );
        Begin("TEXT", item.Layer, "AcDbText");
        At(10, baseline).Number(40, item.Style.SizeMm * Lettering.CapitalRatio * scale).Pair(1, Escaped(item.Text));
        file.Number(50, Turn(item.Style.RotationDeg)).Pair(7, "Standard").Pair(100, "AcDbText");
    }

    private void Begin(string kind, Layer layer, string type) =>
        file.Entity(kind, "AcDbEntity", DxfText.ModelHandle).Pair(8, layer.Name).Pair(100, type);

    private DxfText At(int code, PaperPoint point) =>
        file.Point(code, point.XMm * scale, (heightMm - point.YMm) * scale);

    // Eight-bit file: what lies beyond plain letters goes in as its number; %% and \ would be read as commands.
    private static string Escaped(string text)
    {
        var escaped = new StringBuilder();
        foreach (var unit in text)
        {
            escaped.Append(
                unit switch
                {
                    '\\' => "\\U+005C",
                    '%' => "\\U+0025",
                    < ' ' => " ",
                    > '~' => $"\\U+{(int)unit:X4}",
                    _ => unit.ToString(),
                }
            );
        }

        return escaped.ToString();
    }
}

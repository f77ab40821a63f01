using System.Globalization;
using System.Text;

namespace Shaduf.Pack;

/// <summary>Writes a scene as SVG: millimetres, layers as groups, text as text, nothing fetched from elsewhere.</summary>
public static class SvgRenderer
{
    private const string Families = "'Source Sans 3','Source Sans Pro','DejaVu Sans',sans-serif";

    /// <summary>Writes a picture. The same scene gives the same text.</summary>
    /// <param name="scene">The picture.</param>
    /// <returns>The SVG document. Neighbouring items of one layer share a group with the layer's name.</returns>
    public static string Write(Scene scene)
    {
        var svg = new StringBuilder();
        var (width, height) = (Mm(scene.Size.WidthMm), Mm(scene.Size.HeightMm));
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\"");
        svg.Append(CultureInfo.InvariantCulture, $" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\"");
        svg.Append(" role=\"img\" fill=\"none\" stroke-linejoin=\"round\"");
        svg.Append(CultureInfo.InvariantCulture, $" font-family=\"{Families}\">\n");
        if (scene.Title.Length > 0)
        {
            svg.Append(CultureInfo.InvariantCulture, $"<title>{Escaped(scene.Title)}</title>\n");
        }

        Layer? open = null;
        foreach (var item in scene.Items)
        {
            if (item.Layer != open)
            {
                svg.Append(open is null ? "" : "</g>\n").Append(Group(item.Layer));
                open = item.Layer;
            }

            Append(svg, item);
        }

        return svg.Append(open is null ? "" : "</g>\n").Append("</svg>\n").ToString();
    }

    private static string Group(Layer layer)
    {
        var dash = layer.DashMm.Count == 0 ? "" : $" stroke-dasharray=\"{string.Join(' ', layer.DashMm.Select(Mm))}\"";
        var name = Escaped(layer.Name);
        return $"<g class=\"layer-{name}\" data-layer=\"{name}\" stroke=\"{layer.Colour.Hex}\" stroke-width=\"{Mm(layer.PenWidthMm)}\"{dash}>\n";
    }

    private static void Append(StringBuilder svg, SceneItem item)
    {
        var about = item.About.Length == 0 ? "" : $" data-about=\"{Escaped(item.About)}\"";
        svg.Append(
            item switch
            {
                LineItem line =>
                    $"<line x1=\"{Mm(line.From.XMm)}\" y1=\"{Mm(line.From.YMm)}\" x2=\"{Mm(line.To.XMm)}\" y2=\"{Mm(line.To.YMm)}\"{about}/>\n",
                PolyItem poly => Poly(poly, about),
                CircleItem circle =>
                    $"<circle cx=\"{Mm(circle.Centre.XMm)}\" cy=\"{Mm(circle.Centre.YMm)}\" r=\"{Mm(circle.RadiusMm)}\"{Fill(circle.Fill)}{about}/>\n",
                ArcItem arc => Arc(arc, about),
                HatchItem hatch =>
                    $"<path d=\"{string.Concat(HatchLines.Of(hatch).Select(s => $"M{At(s.From)}L{At(s.To)}"))}\"{about}/>\n",
                TextItem text => Text(text, about),
                _ => throw new ArgumentException($"{item.GetType().Name} cannot be drawn.", nameof(item)),
            }
        );
    }

    private static string Poly(PolyItem poly, string about)
    {
        var tag = poly.IsClosed ? "polygon" : "polyline";
        var stroke = poly.IsStroked ? "" : " stroke=\"none\"";
        return $"<{tag} points=\"{string.Join(' ', poly.Points.Select(At))}\"{Fill(poly.Fill)}{stroke}{about}/>\n";
    }

    private static string Arc(ArcItem arc, string about)
    {
        var (start, end) = (arc.At(arc.StartDeg), arc.At(arc.StartDeg + arc.SweepDeg));
        var radius = Mm(arc.RadiusMm);
        var isLarge = arc.SweepDeg > 180 ? 1 : 0;
        return $"<path d=\"M{At(start)}A{radius} {radius} 0 {isLarge} 0 {At(end)}\"{about}/>\n";
    }

    // The measured width goes along, so that another font in the reader's program cannot run over its neighbours.
    private static string Text(TextItem item, string about)
    {
        var style = item.Style;
        var widthMm = Lettering.WidthMm(item.Text, style.SizeMm, style.Weight);
        var origin = TextBox.Baseline(item, widthMm);
        var ground = style.IsOpaque
            ? $"<polygon points=\"{string.Join(' ', TextBox.Of(item, widthMm).Corners.Select(At))}\" fill=\"#FFFFFF\" stroke=\"none\"/>\n"
            : "";
        var turn =
            style.RotationDeg == 0
                ? ""
                : $" transform=\"rotate({Mm(-style.RotationDeg)} {Mm(item.At.XMm)} {Mm(item.At.YMm)})\"";
        var weight = style.Weight == FontWeight.Bold ? " font-weight=\"700\"" : "";

        if (widthMm == 0)
        {
            return "";
        }

        // Text read from the right starts at its right end.
        var isRight = TextDirection.IsRightToLeft(item.Text);
        var direction = isRight ? " direction=\"rtl\"" : "";
        var x = Mm(origin.XMm + (isRight ? widthMm : 0));
        return $"{ground}<text x=\"{x}\" y=\"{Mm(origin.YMm)}\" font-size=\"{Mm(style.SizeMm)}\"{weight}"
            + $" textLength=\"{Mm(widthMm)}\" lengthAdjust=\"spacingAndGlyphs\" fill=\"{style.Colour.Hex}\" stroke=\"none\""
            + $" xml:space=\"preserve\"{direction}{turn}{about}>{Escaped(item.Text)}</text>\n";
    }

    private static string Fill(Colour? fill) => fill is { } colour ? $" fill=\"{colour.Hex}\"" : "";

    private static string At(PaperPoint point) => $"{Mm(point.XMm)},{Mm(point.YMm)}";

    private static string Mm(double value)
    {
        var text = value.ToString("0.###", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    // Characters that XML 1.0 does not allow become the replacement mark, as they do on paper. HTML takes the same.
    internal static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            escaped.Append(
                rune.Value switch
                {
                    '&' => "&amp;",
                    '<' => "&lt;",
                    '>' => "&gt;",
                    '"' => "&quot;",
                    < 0x20 or 0xFFFE or 0xFFFF => FontFace.ReplacementMark,
                    _ => rune.ToString(),
                }
            );
        }

        return escaped.ToString();
    }
}

using SkiaSharp;

namespace Shaduf.Pack;

/// <summary>Copies the items of a scene on a page of a PDF.</summary>
/// <param name="canvas">The page, in millimetres, y down.</param>
/// <param name="fonts">The document's texts and fonts.</param>
internal sealed class PdfPage(SKCanvas canvas, PdfFonts fonts)
{
    internal void Draw(SceneItem item)
    {
        switch (item)
        {
            case LineItem line:
                Outline(Poly([line.From, line.To], false), null, line.Layer);
                break;
            case PolyItem poly:
                Outline(Poly(poly.Points, poly.IsClosed), poly.Fill, poly.IsStroked ? poly.Layer : null);
                break;
            case CircleItem circle:
                Outline(
                    Path(path => path.AddOval(Rect(circle.Box), SKPathDirection.Clockwise)),
                    circle.Fill,
                    circle.Layer
                );
                break;
            case ArcItem arc:
                var whole = new CircleItem(arc.Layer, arc.Centre, arc.RadiusMm).Box;
                Outline(
                    Path(path => path.AddArc(Rect(whole), -(float)arc.StartDeg, -(float)arc.SweepDeg)),
                    null,
                    arc.Layer
                );
                break;
            case HatchItem hatch:
                Outline(Hatch(hatch), null, hatch.Layer);
                break;
            case TextItem text:
                Text(text);
                break;
            default:
                throw new ArgumentException($"{item.GetType().Name} cannot be drawn.", nameof(item));
        }
    }

    private void Outline(SKPath shape, Colour? fill, Layer? pen)
    {
        using var path = shape;
        if (fill is { } colour)
        {
            using var paint = new SKPaint { IsAntialias = true, Color = Sk(colour) };
            canvas.DrawPath(path, paint);
        }

        if (pen is not null)
        {
            using var paint = new SKPaint
            {
                IsAntialias = true,
                IsStroke = true,
                Color = Sk(pen.Colour),
                StrokeWidth = (float)pen.PenWidthMm,
                StrokeJoin = SKStrokeJoin.Round,
            };
            using var dash =
                pen.DashMm.Count == 0 ? null : SKPathEffect.CreateDash([.. pen.DashMm.Select(mm => (float)mm)], 0);
            paint.PathEffect = dash;
            canvas.DrawPath(path, paint);
        }
    }

    private void Text(TextItem item)
    {
        var shaped = fonts[item];
        var widthMm = shaped.WidthEm * item.Style.SizeMm;
        if (item.Style.IsOpaque)
        {
            Outline(Poly(TextBox.Of(item, widthMm).Corners, true), Palette.White, null);
        }

        canvas.Save();
        canvas.Translate(Sk(item.At));
        canvas.RotateDegrees(-(float)item.Style.RotationDeg);
        var origin = TextBox.Baseline(item, widthMm).Moved(-item.At.XMm, -item.At.YMm);
        using var paint = new SKPaint { IsAntialias = true, Color = Sk(item.Style.Colour) };
        foreach (var run in shaped.Runs)
        {
            using var blob = Blob(run, (float)item.Style.SizeMm);
            canvas.DrawText(blob, (float)origin.XMm, (float)origin.YMm, paint);
        }

        canvas.Restore();
    }

    // Glyphs go with the text that they write, so that joined letters can still be searched for.
    private SKTextBlob Blob(ShapedRun run, float sizeMm)
    {
        using var font = new SKFont(fonts[run.Face], sizeMm)
        {
            Subpixel = true,
            LinearMetrics = true,
            Hinting = SKFontHinting.None,
        };
        using var builder = new SKTextBlobBuilder();
        var buffer = builder.AllocatePositionedTextRun(font, run.Glyphs.Length, run.Text.Length);
        buffer.SetGlyphs(run.Glyphs);
        buffer.SetClusters(run.Clusters);
        buffer.SetText(run.Text);
        buffer.SetPositions([.. run.XEm.Zip(run.YEm, (x, y) => new SKPoint(x * sizeMm, -y * sizeMm))]);
        return builder.Build()!;
    }

    private static SKPath Hatch(HatchItem hatch) =>
        Path(path =>
        {
            foreach (var (from, to) in HatchLines.Of(hatch))
            {
                path.MoveTo(Sk(from));
                path.LineTo(Sk(to));
            }
        });

    private static SKPath Poly(IReadOnlyList<PaperPoint> points, bool isClosed) =>
        Path(path => path.AddPoly([.. points.Select(Sk)], isClosed));

    private static SKPath Path(Action<SKPathBuilder> compose)
    {
        using var builder = new SKPathBuilder();
        compose(builder);
        return builder.Detach();
    }

    private static SKPoint Sk(PaperPoint point) => new((float)point.XMm, (float)point.YMm);

    private static SKColor Sk(Colour colour) => new(colour.Red, colour.Green, colour.Blue);

    private static SKRect Rect(PaperBox box) =>
        new((float)box.LeftMm, (float)box.TopMm, (float)box.RightMm, (float)box.BottomMm);
}

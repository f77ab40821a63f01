using Shaduf.Parts;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>One plate as a sketch: its face with its holes, sizes, number off.</summary>
internal static class PlateSketch
{
    private const double FaceMm = 13;

    /// <summary>Composes the sketch, its face as large as the cell has room.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="count">How many of all assemblies.</param>
    /// <param name="size">Size of the cell.</param>
    public static Scene Of(Plate plate, int count, PaperSize size)
    {
        var builder = new SceneBuilder(size);
        builder.Rectangle(Layer.Thin, size.Box);
        builder.Text(new(3, 6.6), plate.Mark, TextStyle.Body with { Weight = FontWeight.Bold });
        Line(builder, 16, 5.2, Invariant($"{count} plates, {plate.Role}"), size);
        Line(
            builder,
            16,
            9,
            Invariant($"plate {plate.Sizes}, {plate.VolumeMm3 * SteelDensity.KgPerM3 * 1e-9:0.00} kg each"),
            size
        );
        Face(builder, plate);
        var text = FaceMm + 9.0;
        Line(
            builder,
            text,
            15,
            Invariant($"{plate.WidthMm:0} x {plate.LengthMm:0}, {plate.ThicknessMm:0} thick"),
            size
        );
        if (plate.Holes is { } holes)
        {
            Line(
                builder,
                text,
                19,
                Invariant($"4 holes {holes.DiameterMm:0}, {holes.SpacingMm:0} apart both ways,"),
                size
            );
            Line(
                builder,
                text,
                22.4,
                Invariant(
                    $"{(plate.WidthMm - holes.SpacingMm) / 2:0} from the edges, diagonals {holes.SpacingMm * Math.Sqrt(2):0}"
                ),
                size
            );
        }

        return builder.Build($"plate {plate.Mark}");
    }

    private static void Line(SceneBuilder builder, double left, double base1, string text, PaperSize size) =>
        builder.Text(
            new(left, base1),
            Lettering.Shortened(text, size.WidthMm - left - 2, TextStyle.Small),
            TextStyle.Small
        );

    private static void Face(SceneBuilder builder, Plate plate)
    {
        var scale = FaceMm / Math.Max(plate.WidthMm, plate.LengthMm);
        var (wide, high, left, top) = (plate.WidthMm * scale, plate.LengthMm * scale, 5.0, 11.5);
        PaperPoint[] corners =
        [
            new(left, top),
            .. plate.IsTriangle ? Array.Empty<PaperPoint>() : [new PaperPoint(left + wide, top)],
            new(left + wide, top + high),
            new(left, top + high),
        ];
        builder.Polygon(Layer.Outline, corners);
        if (plate.Holes is { } holes)
        {
            foreach (var (x, y) in new[] { (-1, -1), (-1, 1), (1, -1), (1, 1) })
            {
                builder.Circle(
                    Layer.Outline,
                    new(
                        left + (wide / 2) + (x * holes.SpacingMm * scale / 2),
                        top + (high / 2) + (y * holes.SpacingMm * scale / 2)
                    ),
                    Math.Max(0.4, holes.DiameterMm * scale / 2)
                );
            }
        }
    }
}

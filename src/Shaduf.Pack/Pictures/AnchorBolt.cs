namespace Shaduf.Pack;

/// <summary>A bolt that is cast in, from the side: nut and washer at its end, under the plate and on it.</summary>
internal static class AnchorBolt
{
    // ISO 4032 and ISO 7089, rounded: height of a nut, width over its flats, washer.
    private const double NutHighRatio = 0.85;
    private const double NutWideRatio = 1.5;
    private const double WasherWideRatio = 2;
    private const double WasherHighRatio = 0.17;

    /// <summary>Draws the bolt.</summary>
    /// <param name="view">The picture.</param>
    /// <param name="xMm">Its axis [mm].</param>
    /// <param name="boltMm">Its diameter [mm].</param>
    /// <param name="rod">Its lower end, and how long it is [mm].</param>
    /// <param name="plate">Underside and top of the plate [mm].</param>
    public static void Draw(
        SiteView view,
        double xMm,
        double boltMm,
        (double LowMm, double LengthMm) rod,
        (double LowMm, double HighMm) plate
    )
    {
        var half = boltMm / 2;
        view.Rectangle(Layer.Steel, new(xMm - half, rod.LowMm), new(xMm + half, plate.LowMm), Palette.White);
        view.Rectangle(
            Layer.Steel,
            new(xMm - half, plate.HighMm),
            new(xMm + half, rod.LowMm + rod.LengthMm),
            Palette.White
        );
        view.Line(Layer.Centre, new(xMm, rod.LowMm - boltMm), new(xMm, rod.LowMm + rod.LengthMm + boltMm));
        var (nut, washer) = (NutHighRatio * boltMm, WasherHighRatio * boltMm);
        Slab(view, xMm, WasherWideRatio * boltMm, (plate.HighMm, plate.HighMm + washer));
        Slab(view, xMm, NutWideRatio * boltMm, (plate.HighMm + washer, plate.HighMm + washer + nut));
        Slab(view, xMm, WasherWideRatio * boltMm, (plate.LowMm - washer, plate.LowMm));
        Slab(view, xMm, NutWideRatio * boltMm, (plate.LowMm - washer - nut, plate.LowMm - washer));
        Slab(view, xMm, NutWideRatio * boltMm, (rod.LowMm, rod.LowMm + nut));
        Slab(view, xMm, WasherWideRatio * boltMm, (rod.LowMm + nut, rod.LowMm + nut + washer));
    }

    private static void Slab(SiteView view, double xMm, double wideMm, (double LowMm, double HighMm) level) =>
        view.Rectangle(
            Layer.Steel,
            new(xMm - (wideMm / 2), level.LowMm),
            new(xMm + (wideMm / 2), level.HighMm),
            Palette.White
        );
}

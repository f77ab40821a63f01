using Shaduf.Power;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>
/// The lightning section: across the racks through a mast, with the sphere's underside above what is protected, in the
/// plane of the mast and in that of the racks' farther end.
/// </summary>
public static class LightningSection
{
    private const double AheadM = 3;
    private const double BeyondM = 3;
    private const double BelowM = 1.3;
    private const int Points = 60;

    /// <summary>Composes the picture.</summary>
    /// <param name="guard">The guard; it has lightning rods.</param>
    /// <param name="rack">One of the racks, for its columns.</param>
    /// <param name="size">Size of the picture, at least 120 x 80 mm.</param>
    /// <param name="oneToFactor">n of the scale 1:n; left out, a scale of the book's that fits.</param>
    /// <returns>The picture, to scale.</returns>
    public static Scene Of(Guard guard, Rack rack, PaperSize size, double? oneToFactor = null) =>
        Of(guard, rack, Undersides(guard), size, oneToFactor);

    /// <summary>The sphere's underside, which takes its time and is the same at every scale: in the plane of the mast, and at the racks' farther end.</summary>
    /// <param name="guard">The guard; it has lightning rods.</param>
    internal static (IReadOnlyList<SitePoint> AtMast, IReadOnlyList<SitePoint> AtEnd) Undersides(Guard guard)
    {
        var backM = guard.Field.DepthM + GuardField.BehindM;
        return (Underside(guard, guard.Lightning.Rods[0].XM, backM), Underside(guard, FartherEndM(guard), backM));
    }

    /// <summary>Composes the picture with what <see cref="Undersides"/> gave.</summary>
    internal static Scene Of(
        Guard guard,
        Rack rack,
        (IReadOnlyList<SitePoint> AtMast, IReadOnlyList<SitePoint> AtEnd) sphere,
        PaperSize size,
        double? oneToFactor
    )
    {
        var (field, lightning) = (guard.Field, guard.Lightning);
        var backM = field.DepthM + GuardField.BehindM;
        var scale =
            oneToFactor
            ?? Math.Max(
                BookScale.FittingOneToFactor((AheadM + backM + BeyondM) * 1000, size.WidthMm - 46),
                BookScale.FittingOneToFactor((BelowM + lightning.RodM) * 1000, size.HeightMm - 34)
            );
        var view = new SceneBuilder(size).View(new(scale, SitePoint.Metres(-AheadM, lightning.RodM), new(20, 8)));
        var texts = new FreeTexts(view.Builder);
        Protected(view, texts, guard, sphere);
        Ground(view, guard, backM);
        var columns = new RackEnd(rack, rack.TubePlacesMm[0]).ColumnsMm.Select(mm => mm / 1000).ToList();
        for (var each = 0; each < field.RackCount; each++)
        {
            Plane(view, field, each * field.PitchM, columns);
        }

        foreach (var mast in Seen(guard))
        {
            Mast(view, texts, guard, mast);
        }

        Dimensions(view, guard);
        texts.Write();
        string[] ring =
            guard.Earth.RingWireM > 0
                ? [Invariant($"dots in the ground: the ring, {GuardEarth.WireDepthM} m deep")]
                : [];
        view.Under(
            20,
            [
                Invariant(
                    $"1:{scale:0.##}, millimetres; shaded: protected, in the plane of the mast; broken line: the same at the end of the racks"
                ),
                "heights of the racks: to the upper side of the modules",
                .. ring,
            ]
        );
        return view.Builder.Build("lightning section: rods, sphere, racks and what is protected");
    }

    // One mast behind each top edge that has any.
    private static List<GroundPlace> Seen(Guard guard) => [.. guard.Lightning.Rods.DistinctBy(rod => rod.YM)];

    private static double FartherEndM(Guard guard) =>
        guard.Lightning.Rods.Min(rod => rod.XM) > guard.Field.LengthM - guard.Lightning.Rods.Max(rod => rod.XM)
            ? 0
            : guard.Field.LengthM;

    private static void Protected(
        SiteView view,
        FreeTexts texts,
        Guard guard,
        (IReadOnlyList<SitePoint> AtMast, IReadOnlyList<SitePoint> AtEnd) sphere
    )
    {
        var underside = sphere.AtMast;
        view.Builder.Area(
            Layer.Earthing,
            [
                .. underside.Select(view.At),
                view.At(underside[^1] with { YMm = 0 }),
                view.At(underside[0] with { YMm = 0 }),
            ],
            Palette.Leaf.Tint(0.18)
        );
        view.Polyline(Layer.Outline, underside);
        view.Polyline(Layer.Hidden, sphere.AtEnd);
        texts.Beside(
            view.At(underside[Points / 8]).Moved(0, -5),
            Invariant($"sphere of {guard.Lightning.SphereM:0} m, class {guard.Lightning.Protection}")
        );
    }

    private static List<SitePoint> Underside(Guard guard, double xM, double backM)
    {
        // Where the sphere meets a tip it has a corner.
        var steps = Enumerable
            .Range(0, Points + 1)
            .Select(i => -AheadM + (i * (AheadM + backM + BeyondM) / Points))
            .Concat(guard.Lightning.Rods.Select(rod => rod.YM))
            .Order();
        return [.. steps.Select(y => SitePoint.Metres(y, guard.Lightning.ProtectedM(new(xM, y))))];
    }

    private static void Ground(SiteView view, Guard guard, double backM)
    {
        var (left, right) = (view.At(SitePoint.Metres(-AheadM, 0)), view.At(SitePoint.Metres(backM + BeyondM, 0)));
        view.Builder.Hatch(
            HatchPattern.Diagonal,
            [left, right, right.Moved(0, 2.2), left.Moved(0, 2.2)],
            spacingMm: 1.6
        );
        view.Builder.Line(Layer.Ground, left, right);
        if (guard.Earth.RingWireM <= 0)
        {
            return;
        }

        foreach (var y in new[] { -GuardEarth.RingOffM, backM + GuardEarth.RingOffM })
        {
            view.Builder.Circle(Layer.Earthing, view.At(SitePoint.Metres(y, -GuardEarth.WireDepthM)), 1, Palette.Leaf);
        }
    }

    private static void Plane(SiteView view, GuardField field, double nearM, IReadOnlyList<double> columnsM)
    {
        const double thickM = 0.06;
        foreach (var atM in columnsM)
        {
            var topM = field.LowM + ((field.TopM - field.LowM) * atM / field.RackM) - thickM;
            view.Line(Layer.Steel, SitePoint.Metres(nearM + atM, 0), SitePoint.Metres(nearM + atM, topM));
        }

        view.Polygon(
            Layer.Module,
            [
                SitePoint.Metres(nearM, field.LowM - thickM),
                SitePoint.Metres(nearM + field.RackM, field.TopM - thickM),
                SitePoint.Metres(nearM + field.RackM, field.TopM),
                SitePoint.Metres(nearM, field.LowM),
            ],
            Palette.Water.Tint(0.3)
        );
    }

    private static void Mast(SiteView view, FreeTexts texts, Guard guard, GroundPlace mast)
    {
        var rodM = guard.Lightning.RodM;
        var (foot, tip) = (view.At(SitePoint.Metres(mast.YM, 0)), view.At(SitePoint.Metres(mast.YM, rodM)));
        var neck = view.At(SitePoint.Metres(mast.YM, rodM - 1));
        view.Builder.Rectangle(Layer.Outline, new(neck.XMm - 0.5, neck.YMm, foot.XMm + 0.5, foot.YMm), Palette.White);
        view.Builder.Line(Layer.Outline, neck, tip);
        view.Builder.Line(Layer.Earthing, foot, view.At(SitePoint.Metres(mast.YM, -BelowM)));
        texts.Beside(neck.Moved(0, -2), "air rod 1 m");
        foreach (var lamp in guard.Light?.Lamps.Where(lamp => lamp.Place.YM == mast.YM).Take(1) ?? [])
        {
            var at = view.At(SitePoint.Metres(mast.YM, lamp.HeightM));
            view.Builder.Polygon(
                Layer.Sun,
                [at.Moved(-0.6, 0), at.Moved(-3.6, 0.6), at.Moved(-3.6, 1.6), at.Moved(-0.6, 1)],
                Palette.Sun.Tint(0.6)
            );
            texts.Beside(at.Moved(-3.6, 1.2), "lamp");
        }
    }

    private static void Dimensions(SiteView view, Guard guard)
    {
        var field = guard.Field;
        var backM = field.DepthM + GuardField.BehindM;
        view.Dimensions(
            DimensionSide.Right,
            [
                new(SitePoint.Metres(backM + BeyondM, 0), SitePoint.Metres(backM, guard.Lightning.RodM)),
                new(SitePoint.Metres(backM + BeyondM, 0), SitePoint.Metres(field.DepthM, field.TopM)),
            ]
        );
        view.Dimensions(DimensionSide.Left, [new(SitePoint.Metres(-AheadM, 0), SitePoint.Metres(0, field.LowM))]);
        view.DimensionChain(
            DimensionSide.Below,
            [
                SitePoint.Metres(0, -BelowM),
                .. Enumerable
                    .Range(0, field.RackCount)
                    .SelectMany(rack => new[] { rack * field.PitchM, (rack * field.PitchM) + field.RackM })
                    .Skip(1)
                    .Select(y => SitePoint.Metres(y, -BelowM)),
                SitePoint.Metres(backM, -BelowM),
            ]
        );
    }
}

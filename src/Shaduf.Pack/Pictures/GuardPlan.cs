using Shaduf.Power;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The racks from above with poles, earth and fence, and the night light at places over the ground.</summary>
public static class GuardPlan
{
    private const double SymbolMm = 1.4;
    private const double LeftMm = 22;

    // A fence that reaches farther beyond the racks is left to its own sheet; numbers closer than this run into each other.
    private const double FarM = 31;
    private const double NumberMm = 6.5;

    /// <summary>Poles, protected circles, earth electrodes and fence.</summary>
    /// <param name="guard">The guard.</param>
    /// <param name="azimuthDeg">Where the racks look, clockwise from true north [deg].</param>
    /// <param name="size">Size of the picture, at least 120 x 80 mm.</param>
    /// <param name="oneToFactor">n of the scale 1:n; left out, a scale of the book's that fits.</param>
    /// <returns>The picture, to scale.</returns>
    public static Scene Of(Guard guard, double azimuthDeg, PaperSize size, double? oneToFactor = null)
    {
        var (view, scale) = View(Extent(guard), size with { WidthMm = size.WidthMm - NorthArrow.RoomMm }, oneToFactor);
        Racks(view, guard.Field);
        Fence(view, guard);
        EarthPlan.Draw(view, guard, FenceCorners(guard).Count > 0);
        var areShown = guard.Lightning.Rods.Select(rod => Circle(view, guard, rod)).ToList().Contains(true);
        Poles(view, guard);
        Dimensions(view, guard);
        EarthPlan.Number(view, guard);

        // The racks look down on the paper.
        NorthArrow.Draw(view, 180 - azimuthDeg);
        var lines = new List<string> { Invariant($"1:{scale:0.##}, millimetres, seen from above; low edge below") };
        var rods =
            guard.Earth.RingWireM > 0
                ? "earth rod on the ring"
                : Invariant($"earth rod, {2 * GuardEarth.RodM:0} m apart");
        lines.Add(
            Invariant(
                $"filled circle: mast or light column; open circle with its number: {rods}, in a pit of {GuardEarth.PitM * 1000:0} mm"
            )
        );
        lines.Add(
            Invariant(
                $"dotted: bare copper wire 50 mm2, {GuardEarth.WireDepthM} m deep; thin: bonds of copper 16 mm2; square: drive"
            )
        );
        if (areShown)
        {
            lines.Add(
                Invariant(
                    $"broken: as far as one mast alone protects at the height of the top edge, {guard.Field.TopM:0.0} m"
                )
            );
        }

        view.Under(LeftMm, lines);
        return view.Builder.Build("plan of poles, earth and fence");
    }

    /// <summary>Illuminance in lux at places over racks and ground.</summary>
    /// <param name="guard">The guard; it has a night light.</param>
    /// <param name="size">Size of the picture, at least 120 x 80 mm.</param>
    /// <returns>The picture, to scale.</returns>
    public static Scene OfLight(Guard guard, PaperSize size)
    {
        var light = guard.Light!;
        var (xs, ys) = (
            light.Grid.Select(each => each.Place.XM).Distinct().Order().ToList(),
            light.Grid.Select(each => each.Place.YM).Distinct().Order().ToList()
        );
        var (stepX, stepY) = (xs[1] - xs[0], ys[1] - ys[0]);
        var (view, scale) = View((xs[0], ys[0], xs[^1], ys[^1]), size);
        foreach (var each in light.Grid)
        {
            Cell(view, each, stepX, stepY);
        }

        Racks(view, guard.Field, isFilled: false);
        var (everyX, everyY) = (Every(stepX, scale, NumberMm), Every(stepY, scale, NumberMm / 2));
        foreach (
            var each in light.Grid.Where(each =>
                !each.IsShaded
                && xs.IndexOf(each.Place.XM) % everyX == 0
                && ys.IndexOf(each.Place.YM) % everyY == 0
                && light.Lamps.All(lamp =>
                    Math.Abs(lamp.Place.YM - each.Place.YM) * 1000 / scale > 3
                    || Math.Abs(lamp.Place.XM - each.Place.XM) * 1000 / scale > 5
                )
            )
        )
        {
            view.Text(
                SitePoint.Metres(each.Place.XM, each.Place.YM),
                each.Lux >= 9.95 ? Invariant($"{each.Lux:0}") : Invariant($"{each.Lux:0.0}"),
                new TextStyle(2.2).Centred with
                {
                    IsOpaque = IsOnRim(guard.Field, each.Place, scale),
                }
            );
        }

        Poles(view, guard);
        view.Under(
            LeftMm,
            [
                Invariant(
                    $"1:{scale:0.##}; lux on the level, at the height of the modules over the racks; hatched: in the racks' shade"
                ),
                Invariant($"filled circle: lamp; the darker the tint, the more light"),
            ]
        );
        return view.Builder.Build("night light in lux over the racks and the ground around them");
    }

    // A number on a rack's outline gets a white ground.
    private static bool IsOnRim(GuardField field, GroundPlace place, double scale)
    {
        var nearM = 2.5 * scale / 1000;
        return Enumerable
            .Range(0, field.RackCount)
            .Select(rack => place.YM - (rack * field.PitchM))
            .Select(y => Math.Max(Outside(place.XM, field.LengthM), Outside(y, field.RackM)))
            .Any(outsideM => Math.Abs(outsideM) < nearM);
    }

    // How far beyond the nearer end of a stretch; negative inside it.
    private static double Outside(double at, double lengthM) => Math.Max(-at, at - lengthM);

    private static int Every(double stepM, double scale, double leastMm) =>
        Math.Max(1, (int)Math.Ceiling(leastMm / (stepM * 1000 / scale)));

    private static (SiteView View, double Scale) View(
        (double Left, double Low, double Right, double High) extent,
        PaperSize size,
        double? oneToFactor = null
    )
    {
        var scale =
            oneToFactor
            ?? Math.Max(
                BookScale.FittingOneToFactor((extent.Right - extent.Left) * 1000, size.WidthMm - 44),
                BookScale.FittingOneToFactor((extent.High - extent.Low) * 1000, size.HeightMm - 46)
            );
        return (
            new SceneBuilder(size).View(new(scale, SitePoint.Metres(extent.Left, extent.High), new(LeftMm, 6))),
            scale
        );
    }

    // Fence and electrodes, and at least the ground that is lit.
    private static (double Left, double Low, double Right, double High) Extent(Guard guard)
    {
        var (field, sideM) = (guard.Field, GuardLight.AroundM);
        GroundPlace[] places =
        [
            new(-sideM, -sideM),
            new(field.LengthM + sideM, field.DepthM + GuardField.BehindM + GuardEarth.RingOffM + 0.5),
            .. guard.Earth.Rods.SelectMany(rod =>
                new[] { rod with { XM = rod.XM - 0.5 }, rod with { XM = rod.XM + 0.5 } }
            ),
            .. FenceCorners(guard),
        ];
        return (
            places.Min(place => place.XM),
            places.Min(place => place.YM),
            places.Max(place => place.XM),
            places.Max(place => place.YM)
        );
    }

    private static IReadOnlyList<GroundPlace> FenceCorners(Guard guard) =>
        guard.Fence?.CornersNear(guard.Field, FarM) ?? [];

    private static void Racks(SiteView view, GuardField field, bool isFilled = true)
    {
        for (var rack = 0; rack < field.RackCount; rack++)
        {
            view.Rectangle(
                Layer.Module,
                SitePoint.Metres(0, rack * field.PitchM),
                SitePoint.Metres(field.LengthM, (rack * field.PitchM) + field.RackM),
                isFilled ? Palette.Water.Tint(0.12) : null
            );
        }
    }

    private static void Fence(SiteView view, Guard guard)
    {
        SitePoint[] corners = [.. FenceCorners(guard).Select(corner => SitePoint.Metres(corner.XM, corner.YM))];
        _ = corners.Length > 0 ? view.Polygon(Layer.Fence, corners) : view;
    }

    private static void Poles(SiteView view, Guard guard)
    {
        foreach (var pole in guard.Poles)
        {
            view.Builder.Circle(
                Layer.Outline,
                view.At(SitePoint.Metres(pole.Place.XM, pole.Place.YM)),
                SymbolMm,
                pole.HasLamp ? Palette.Sun : Palette.Ink
            );
        }
    }

    // What one rod alone protects at the top edge, as far as it lies in the picture; whether any of it does.
    private static bool Circle(SiteView view, Guard guard, GroundPlace rod)
    {
        var (left, low, right, high) = Extent(guard);
        var lightning = guard.Lightning;
        var atM = Math.Min(lightning.CountedRodM, guard.Field.TopM);
        var reachM = RollingSphere.ReachM(lightning.SphereM, lightning.CountedRodM, atM);
        var (piece, isShown) = (new List<SitePoint>(), false);
        for (var i = 0; i <= 360; i++)
        {
            var angle = i * Math.PI / 180;
            var (x, y) = (rod.XM + (reachM * Math.Cos(angle)), rod.YM + (reachM * Math.Sin(angle)));
            var isIn = x >= left && x <= right && y >= low && y <= high;
            if (isIn)
            {
                piece.Add(SitePoint.Metres(x, y));
            }

            if ((!isIn || i == 360) && piece.Count > 1)
            {
                view.Polyline(Layer.Hidden, piece);
                isShown = true;
            }

            piece = isIn ? piece : [];
        }

        return isShown;
    }

    private static void Dimensions(SiteView view, Guard guard)
    {
        var field = guard.Field;
        var (_, low, right, _) = Extent(guard);
        var poles = guard.Poles.Select(pole => pole.Place.XM).Distinct().Order();
        view.DimensionChain(
            DimensionSide.Below,
            [
                SitePoint.Metres(0, low),
                .. poles.Select(x => SitePoint.Metres(x, low)),
                SitePoint.Metres(field.LengthM, low),
            ]
        );
        view.DimensionChain(
            DimensionSide.Right,
            [
                SitePoint.Metres(right, 0),
                SitePoint.Metres(right, field.DepthM),
                SitePoint.Metres(right, field.DepthM + GuardField.BehindM),
            ],
            withOverall: false
        );
    }

    private static void Cell(SiteView view, LitPlace each, double stepX, double stepY)
    {
        SitePoint[] corners =
        [
            SitePoint.Metres(each.Place.XM - (stepX / 2), each.Place.YM - (stepY / 2)),
            SitePoint.Metres(each.Place.XM + (stepX / 2), each.Place.YM - (stepY / 2)),
            SitePoint.Metres(each.Place.XM + (stepX / 2), each.Place.YM + (stepY / 2)),
            SitePoint.Metres(each.Place.XM - (stepX / 2), each.Place.YM + (stepY / 2)),
        ];
        if (each.IsShaded)
        {
            view.Hatch(HatchPattern.Diagonal, corners);
        }
        else
        {
            view.Builder.Area(
                Layer.Sun,
                [.. corners.Select(view.At)],
                Palette.Sun.Tint(Math.Clamp(0.12 * Math.Log2(1 + each.Lux), 0.02, 0.6))
            );
        }
    }
}

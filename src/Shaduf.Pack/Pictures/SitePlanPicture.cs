using Shaduf.Power;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The station from above, north up: racks, poles, fence, gate, source, tank, routes, shadows at the solstices.</summary>
internal static class SitePlanPicture
{
    private static readonly PaperSize s_room = new(1200, 1200);

    /// <summary>Composes the picture.</summary>
    /// <param name="design">The design.</param>
    /// <param name="plan">The station from above.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    public static Scene Of(Design design, SitePlan plan, double oneToFactor)
    {
        var view = new SceneBuilder(s_room).View(new(oneToFactor, new(0, 0), new(600, 600)));
        var texts = new FreeTexts(view.Builder);
        foreach (var shadow in SolsticeShadow.Of(design.Brief.Site.LatitudeDeg, plan))
        {
            view.Polygon(shadow.Day == "June" ? Layer.Thin : Layer.Hidden, [.. shadow.Corners.Select(At)]);
        }

        view.Builder.About("rack");
        Racks(view, texts, plan);
        foreach (var pole in design.Works.Guard.Poles)
        {
            texts.Avoid(view.At(At(plan.Bearing.At(pole.Place))), 1.2);
        }

        view.Builder.About("guard");
        Fence(view, texts, plan);
        Poles(view, texts, design.Works.Guard, plan.Bearing);
        view.Builder.About("site");
        Near(view, texts, plan);
        view.Builder.About("");
        Routes(view, texts, design, plan);
        Shadows(view, texts, design, plan);
        texts.Write();
        NorthArrow.Draw(view);
        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(
            new(drawn.LeftMm, drawn.BottomMm + 5),
            Invariant(
                $"1:{oneToFactor:0}, north up; shadows of the racks on level ground by solar time: thin June, broken December"
            ),
            TextStyle.Small
        );
        return view.Builder.Build("site plan").Trimmed();
    }

    private static SitePoint At(SitePlace place) => SitePoint.Metres(place.EastM, place.NorthM);

    private static void Racks(SiteView view, FreeTexts texts, SitePlan plan)
    {
        foreach (var (rack, corners) in plan.RackCorners.Index())
        {
            SitePoint[] outline = [.. corners.Select(At)];
            view.Polygon(Layer.Module, outline, Palette.Water.Tint(0.18));
            view.Line(Layer.Outline, outline[0], outline[1]);
            texts.On(
                new(outline.Average(corner => view.At(corner).XMm), outline.Average(corner => view.At(corner).YMm)),
                plan.Field.RackCount == 1 ? "rack" : Invariant($"rack {rack + 1}")
            );
        }
    }

    private static void Fence(SiteView view, FreeTexts texts, SitePlan plan)
    {
        if (plan.Fence.Count == 0)
        {
            return;
        }

        view.Polygon(Layer.Fence, [.. plan.Fence.Select(At)]);
        if (plan.Gate is var (from, to))
        {
            foreach (var post in new[] { from, to })
            {
                view.Builder.Circle(Layer.Outline, view.At(At(post)), 0.8, Palette.Ink);
                texts.Avoid(view.At(At(post)), 1);
            }

            view.Builder.Line(Layer.Steel, view.At(At(from)), view.At(At(to)));
            texts.Beside(
                Middle(view, from, to),
                Invariant($"gate {double.Hypot(to.EastM - from.EastM, to.NorthM - from.NorthM):0.0} m")
            );
        }

        foreach (var (corner, next) in plan.Fence.Zip(plan.Fence.Skip(1).Append(plan.Fence[0])))
        {
            var lengthM = double.Hypot(next.EastM - corner.EastM, next.NorthM - corner.NorthM);
            texts.Beside(Middle(view, corner, next, 0.8), Invariant($"fence {lengthM:0.0} m"));
        }
    }

    private static void Poles(SiteView view, FreeTexts texts, Guard guard, RackBearing bearing)
    {
        foreach (var (i, pole) in guard.Poles.Index())
        {
            var at = view.At(At(bearing.At(pole.Place)));
            view.Builder.Circle(Layer.Outline, at, 1.2, pole.HasLamp ? Palette.Sun : Palette.Ink);
            texts.Beside(at, Invariant($"pole {i + 1}"));
        }
    }

    /// <summary>A pole in words.</summary>
    public static string PoleSays(GuardPole pole, int index) =>
        Invariant(
            $"pole {index + 1}: {(pole.HasRod, pole.HasLamp) switch
        {
            (true, true) => "mast with lamp",
            (true, false) => "mast",
            _ => "light",
        }}, {pole.HeightM:0.0} m high"
        );

    private static void Near(SiteView view, FreeTexts texts, SitePlan plan)
    {
        foreach (var thing in plan.Near)
        {
            var at = view.At(At(Shown(thing.Place)));
            view.Builder.Circle(Layer.Thin, at, 2, Palette.Leaf.Tint(0.2));
            texts.Beside(at.Moved(2, 0), Says(thing));
        }
    }

    // The cable in its trench to the source, the main from there to the tank.
    private static void Routes(SiteView view, FreeTexts texts, Design design, SitePlan plan)
    {
        var (drive, source) = (At(plan.Drive), At(Shown(plan.Source.Place)));
        view.Line(Layer.Electric, drive, source);
        view.Builder.Rectangle(
            Layer.Outline,
            PaperBox.Round([view.At(drive).Moved(-1, -1), view.At(drive).Moved(1, 1)]),
            Palette.White
        );
        texts.Beside(view.At(drive), "drive");
        texts.Beside(
            Middle(view, plan.Drive, Shown(plan.Source.Place)),
            Invariant($"motor cable {design.Works.Guard.WellheadM:0.#} m in its duct")
        );
        var at = view.At(source);
        view.Builder.Circle(Layer.Pipe, at, 1.6, Palette.White).Circle(Layer.Pipe, at, 0.7, Palette.Water);
        texts.Beside(at, Says(plan.Source));
        Main(view, texts, design, plan);
    }

    // Along its route as far as the plan goes; straight, and said so, where the route is not placed.
    private static void Main(SiteView view, FreeTexts texts, Design design, SitePlan plan)
    {
        var mainM = design.Brief.Lift.Route[^1].ChainageM;
        if (plan.Tank is not { } tank)
        {
            var start = view.At(At(Shown(plan.Source.Place)));
            Way(view, texts, start, (0, 1), Invariant($"main {mainM:0} m to the tank, whose place is not told"));
            return;
        }

        var placed = RoutePlaces.Of(design.Brief);
        var sheet = SiteBounds.Of(
            plan,
            IsFar(tank.Place) ? [] : [.. placed.Where(place => !IsFar(place)), .. TankPlaces.Of(design, plan).Middles],
            Shown
        );
        var way = Inside(placed.Count > 0 ? placed : [plan.Source.Place, tank.Place], sheet);
        if (way.Count > 1)
        {
            view.Polyline(placed.Count > 0 ? Layer.Pipe : Layer.Hidden, [.. way.Select(At)]);
        }

        var says = Invariant(
            $"main {mainM:0} m{(placed.Count > 0 ? "" : ", by a way that was not told: the broken line is not its place")}"
        );
        if (!IsFar(tank.Place))
        {
            texts.Beside(way.Count > 1 ? Middle(view, way[^2], way[^1]) : view.At(At(way[0])), says);
            SiteTanks.Draw(view, texts, design, plan);
            return;
        }

        var (from, to) = (way[^1], placed.FirstOrDefault(place => !sheet.Holds(place), tank.Place));
        var (east, north) = (to.EastM - from.EastM, to.NorthM - from.NorthM);
        var lengthM = double.Hypot(east, north);
        Way(view, texts, view.At(At(from)), (east / lengthM, -north / lengthM), $"{says}, to the {Says(tank)}");
    }

    // From its first point as far as the plan goes, cut where it leaves it.
    private static List<SitePlace> Inside(IReadOnlyList<SitePlace> way, SiteBounds sheet)
    {
        List<SitePlace> inside = [Shown(way[0])];
        for (var i = 1; i < way.Count; i++)
        {
            if (sheet.Holds(way[i]))
            {
                inside.Add(way[i]);
                continue;
            }

            // The farthest of 200 steps towards it that is still on the plan.
            var (a, b) = (inside[^1], way[i]);
            inside.AddRange(
                Enumerable
                    .Range(1, 199)
                    .Select(step => step / 200.0)
                    .Select(share => new SitePlace(
                        a.EastM + ((b.EastM - a.EastM) * share),
                        a.NorthM + ((b.NorthM - a.NorthM) * share)
                    ))
                    .TakeWhile(sheet.Holds)
                    .TakeLast(1)
            );
            break;
        }

        return inside;
    }

    // A short piece of the main that points to where it goes.
    private static void Way(
        SiteView view,
        FreeTexts texts,
        PaperPoint start,
        (double Right, double Down) way,
        string says
    )
    {
        var tip = start.Moved(way.Right * 12, way.Down * 12);
        view.Builder.Line(Layer.Pipe, start.Moved(way.Right * 1.6, way.Down * 1.6), tip);
        Arrow(view, tip, way.Right, way.Down);
        texts.Beside(tip, says);
    }

    private static void Arrow(SiteView view, PaperPoint tip, double right, double down) =>
        view.Builder.Polygon(
            Layer.Pipe,
            [tip.Moved(right * 3, down * 3), tip.Moved(-down * 1.2, right * 1.2), tip.Moved(down * 1.2, -right * 1.2)],
            Palette.Water
        );

    // Each shadow is named at its far corner, where nothing else is written.
    private static void Shadows(SiteView view, FreeTexts texts, Design design, SitePlan plan)
    {
        foreach (
            var shadow in SolsticeShadow
                .Of(design.Brief.Site.LatitudeDeg, plan)
                .Where(shadow => shadow.Rack == plan.Field.RackCount - 1)
        )
        {
            var tip = shadow.Corners.MaxBy(corner => Outside(plan, corner));
            texts.Beside(view.At(At(tip)), Invariant($"{shadow.Day[..3]} {shadow.SolarH:0} h"), isNeeded: false);
        }
    }

    // How far a point lies from the middle of the racks [m].
    private static double Outside(SitePlan plan, SitePlace place)
    {
        var middle = plan.Bearing.At(new(plan.Field.LengthM / 2, plan.Field.DepthM / 2));
        return double.Hypot(place.EastM - middle.EastM, place.NorthM - middle.NorthM);
    }

    private static bool IsFar(SitePlace place) => TankPlaces.IsFar(place);

    // Itself, or as far out as the plan goes.
    private static SitePlace Shown(SitePlace place)
    {
        var farM = double.Hypot(place.EastM, place.NorthM);
        return farM <= TankPlaces.FarM
            ? place
            : new(place.EastM * TankPlaces.FarM / farM, place.NorthM * TankPlaces.FarM / farM);
    }

    private static string Says(PlacedThing thing) =>
        !thing.IsTold ? $"{thing.Name}: place not told, drawn at the end of its cable"
        : IsFar(thing.Place)
            ? Invariant($"{thing.Name}, {double.Hypot(thing.Place.EastM, thing.Place.NorthM):0} m from the racks")
        : thing.Name;

    private static PaperPoint Middle(SiteView view, SitePlace from, SitePlace to, double share = 0.5)
    {
        var (a, b) = (view.At(At(from)), view.At(At(to)));
        return new(a.XMm + ((b.XMm - a.XMm) * share), a.YMm + ((b.YMm - a.YMm) * share));
    }
}

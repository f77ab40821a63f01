using Shaduf.Ground;
using Shaduf.Power;
using Shaduf.Shape;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>A body of the station.</summary>
/// <param name="Group">What it belongs to: 'rack 1'.</param>
/// <param name="Name">Its mark or name.</param>
/// <param name="Trade">Whose work it is, which gives its colour: steel, concrete, modules, tank, poles, fence.</param>
/// <param name="Faces">Its faces: millimetres to the east, to the north and up from the middle of the front rack's low edge.</param>
public sealed record ModelBody(string Group, string Name, string Trade, IReadOnlyList<IReadOnlyList<Point>> Faces);

/// <summary>The whole station as bodies.</summary>
public static class StationModel
{
    /// <summary>The bodies: racks, modules, footings, stand where it is released, tank, poles, fence.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The bodies.</returns>
    public static IReadOnlyList<ModelBody> Of(Design design)
    {
        var plan = SitePlan.Of(design);
        return
        [
            .. Racks(design, plan.Bearing),
            .. Footings(design.Works.Pits, plan.Bearing),
            .. Tank(design, plan),
            .. design.Works.Guard.Poles.Select(
                (pole, i) =>
                    new ModelBody(
                        "poles",
                        Invariant($"pole {i + 1}"),
                        "poles",
                        Solid.Post(At(plan.Bearing.At(pole.Place), 0), pole.DiameterM * 1000, pole.HeightM * 1000)
                    )
            ),
            .. design.Works.Guard.Poles.SelectMany((pole, i) => PoleBlocks(design.Works, plan.Bearing, (pole, i))),
            .. design.Works.Guard.Fence is { } fence ? Fence(fence) : [],
        ];
    }

    private static IEnumerable<ModelBody> PoleBlocks(
        Works works,
        RackBearing bearing,
        (GuardPole Pole, int Index) each
    ) =>
        works
            .PoleBlocks.Where(block => block.IsMast == each.Pole.HasRod)
            .Take(1)
            .Select(block => new ModelBody(
                "footings",
                Invariant($"block of pole {each.Index + 1}"),
                "concrete",
                Block(bearing, each.Pole.Place, (block.Block.LengthMm, block.Block.WidthMm), (-block.Block.DepthMm, 0))
            ));

    private static Point At(SitePlace place, double zMm) => new(place.EastM * 1000, place.NorthM * 1000, zMm);

    // A rack's own millimetres on the site.
    private static Point OnSite(RackBearing bearing, Point point) =>
        At(bearing.At(new(point.XMm / 1000, point.YMm / 1000)), point.ZMm);

    private static IReadOnlyList<IReadOnlyList<Point>> Moved(
        RackBearing bearing,
        IReadOnlyList<IReadOnlyList<Point>> faces,
        Point by
    ) => [.. faces.Select(face => (IReadOnlyList<Point>)[.. face.Select(point => OnSite(bearing, point + by))])];

    private static IEnumerable<ModelBody> Racks(Design design, RackBearing bearing)
    {
        var rack = design.Works.Rack;
        var pitchMm = design.Works.Guard.Field.PitchM * 1000;
        var parts = PartSolid.Of(rack).ToList();
        var modules = Modules(rack, design.Choice.Module.Body.ThicknessMm).ToList();
        for (var i = 0; i < rack.Grid.RackCount; i++)
        {
            var by = new Point(0, i * pitchMm, rack.Setting.Ground.ZMm(0, i * pitchMm));
            foreach (var (part, faces) in parts)
            {
                yield return new(Invariant($"rack {i + 1}"), part.Mark, "steel", Moved(bearing, faces, by));
            }

            foreach (var (n, faces) in modules.Index())
            {
                yield return new(
                    Invariant($"modules {i + 1}"),
                    Invariant($"module {n + 1}"),
                    "modules",
                    Moved(bearing, faces, by)
                );
            }
        }
    }

    private static IEnumerable<IReadOnlyList<IReadOnlyList<Point>>> Modules(Rack rack, double thickMm)
    {
        var (setting, lay) = (rack.Setting, rack.Lay);
        var seatMm = rack.Clamping is null ? rack.Sections.Angle.WallMm : rack.Sections.Angle.SideMm;
        return from row in rack.Rows
            from column in Enumerable.Range(0, rack.Grid.Columns)
            let corner = setting.OnSlope(rack.Along.FirstMm + (column * rack.Along.PitchMm), row.FromMm, seatMm)
            select Solid.Box(
                corner,
                new Point(lay.AlongMm, 0, 0),
                setting.UpSlope * lay.UpMm,
                setting.OffPlane * thickMm
            );
    }

    private static IEnumerable<ModelBody> Footings(PitPlan plan, RackBearing bearing)
    {
        foreach (var pit in plan.Pits)
        {
            yield return new(
                "footings",
                pit.Name,
                "concrete",
                Block(
                    bearing,
                    pit.Middle,
                    (plan.Block.LengthMm, plan.Block.WidthMm),
                    (pit.BottomM * 1000, pit.GroundM * 1000)
                )
            );
            if (plan.Block.PlinthHeightMm <= 0)
            {
                continue;
            }

            foreach (var column in pit.Columns)
            {
                var (side, top) = (plan.Block.PlinthSideMm, column.PlinthTopM * 1000);
                yield return new(
                    "footings",
                    $"plinth {pit.Name} {column.Mark}",
                    "concrete",
                    Block(bearing, column.Place, (side, side), (top - plan.Block.PlinthHeightMm, top))
                );
            }
        }
    }

    private static IReadOnlyList<IReadOnlyList<Point>> Block(
        RackBearing bearing,
        GroundPlace middle,
        (double AlongMm, double AcrossMm) size,
        (double LowMm, double HighMm) level
    )
    {
        var corner = new Point(
            (middle.XM * 1000) - (size.AlongMm / 2),
            (middle.YM * 1000) - (size.AcrossMm / 2),
            level.LowMm
        );
        return Moved(
            bearing,
            Solid.Box(corner, new(size.AlongMm, 0, 0), new(0, size.AcrossMm, 0), new(0, 0, level.HighMm - level.LowMm)),
            default
        );
    }

    // The stand only with its drawings; tanks side by side.
    private static IEnumerable<ModelBody> Tank(Design design, SitePlan plan)
    {
        var (card, places) = (design.Choice.Tank, TankPlaces.Of(design, plan));
        var group = places.IsTold ? "tank" : "tank, drawn beside the racks";
        var stands = StandChapter.Withholding(design).Count == 0 ? design.Works.Stand : null;
        var floorMm = stands is null ? design.Brief.Tank.StandM * 1000 : stands.Stand.Plan.FloorMm;
        foreach (var (i, place) in places.Middles.Index())
        {
            var foot = At(place, 0);
            yield return new(
                group,
                Invariant($"tank {i + 1}"),
                "tank",
                TankSolid(card, foot + new Point(0, 0, floorMm))
            );
            if (stands is null)
            {
                continue;
            }

            var half = stands.Stand.Plan.MiddleMm;
            foreach (var body in StandConcrete(stands, foot - new Point(half, half, 0)))
            {
                yield return body with
                {
                    Group = Invariant($"footings of stand {i + 1}"),
                };
            }

            foreach (var part in stands.Stand.Steel.Parts)
            {
                yield return new(
                    Invariant($"stand {i + 1}"),
                    part.Mark,
                    "steel",
                    [
                        .. PartSolid
                            .Of(part)
                            .Select(face =>
                                (IReadOnlyList<Point>)[.. face.Select(point => point + foot - new Point(half, half, 0))]
                            ),
                    ]
                );
            }
        }
    }

    private static IReadOnlyList<IReadOnlyList<Point>> TankSolid(TankCard card, Point foot)
    {
        var (wideMm, highMm) = (card.DiameterM * 1000, card.HeightM * 1000);
        return card.Shape == TankShape.Round
            ? Solid.Post(foot, wideMm, highMm)
            : Solid.Box(
                foot - new Point(wideMm / 2, wideMm / 2, 0),
                new(wideMm, 0, 0),
                new(0, wideMm, 0),
                new(0, 0, highMm)
            );
    }

    // Blocks or strips under the legs, and a plinth under each; the legs' millimetres moved by a corner.
    private static IEnumerable<ModelBody> StandConcrete(StandDesign stands, Point corner)
    {
        var block = stands.Footings.Block;
        ModelBody Box(
            string name,
            Point middle,
            (double AlongMm, double AcrossMm) size,
            (double LowMm, double HighMm) level
        ) =>
            new(
                "",
                name,
                "concrete",
                Solid.Box(
                    corner + new Point(middle.XMm - (size.AlongMm / 2), middle.YMm - (size.AcrossMm / 2), level.LowMm),
                    new(size.AlongMm, 0, 0),
                    new(0, size.AcrossMm, 0),
                    new(0, 0, level.HighMm - level.LowMm)
                )
            );
        foreach (var (n, (xMm, yMm)) in stands.FootingsAtMm.Index())
        {
            var size = (block.LengthMm, block.WidthMm);
            yield return Box(Invariant($"S{n + 1}"), new(xMm, yMm, 0), size, (-block.DepthMm, 0));
        }

        foreach (var (n, foot) in stands.Stand.Skeleton.Feet.Index().Where(_ => block.PlinthHeightMm > 0))
        {
            var size = (block.PlinthSideMm, block.PlinthSideMm);
            yield return Box(Invariant($"plinth of leg {n + 1}"), foot.Ground, size, (0, block.PlinthHeightMm));
        }
    }

    // Posts and struts; the mesh as thin walls along each straight, and the leaves of the gate.
    private static IEnumerable<ModelBody> Fence(StationFence fence)
    {
        foreach (var part in fence.Steel.Parts)
        {
            yield return new("fence", part.Mark, "fence", [.. PartSolid.Of(part)]);
        }

        foreach (var (i, run) in fence.Line.Runs.Index())
        {
            yield return Wall(Invariant($"mesh {i + 1}"), run.From, run.To);
        }

        if (fence.Line.GatePosts is var (from, to))
        {
            yield return Wall("gate", from, to);
        }
    }

    private static ModelBody Wall(string name, FencePoint from, FencePoint to)
    {
        const double meshMm = 5;
        var (start, end) = (At(from), At(to));
        var along = end - start;
        var across = new Point(-along.YMm, along.XMm, 0) * (meshMm / double.Hypot(along.XMm, along.YMm));
        return new("fence", name, "fence", Solid.Box(start, along, across, new(0, 0, StationFence.HeightM * 1000)));

        static Point At(FencePoint point) => new(point.EastM * 1000, point.NorthM * 1000, point.LevelM * 1000);
    }
}

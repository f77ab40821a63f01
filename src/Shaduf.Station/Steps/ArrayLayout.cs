using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Something that may shade the array.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Screens">Its sides.</param>
public sealed record NearThing(string Name, IReadOnlyList<Screen> Screens);

/// <summary>
/// Where racks, fence, poles and whatever else is near stand on the site: metres to the east and north of the middle of the
/// front rack's low edge, and above the ground there.
/// </summary>
/// <param name="Facing">How the modules lie.</param>
/// <param name="Rack">One of the racks.</param>
/// <param name="Things">What may shade the modules.</param>
public sealed record ArrayLayout(PlaneFacing Facing, Rack Rack, IReadOnlyList<NearThing> Things)
{
    /// <summary>
    /// Share of the light that comes through the fence: wire of 3 mm in a mesh of 50 mm leaves 0.88 of light that falls
    /// straight on it, and less at a slant; worked out here.
    /// </summary>
    public const double MeshPassedShare = 0.85;

    private const string FenceName = "the station's fence";

    // How many spots of a bypass group are looked at.
    private const int SpotsInGroup = 3;

    // A module has its cells behind three bypass diodes, side by side, as most have.
    private const int GroupsInModule = 3;

    /// <summary>Sets the station out.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="choice">What was chosen.</param>
    /// <param name="rack">One of the racks.</param>
    /// <param name="guard">The fence and the light.</param>
    /// <returns>The layout.</returns>
    public static ArrayLayout Of(Brief brief, Choice choice, Rack rack, Guard guard)
    {
        var bare = new ArrayLayout(choice.Facing, rack, []);
        return bare with
        {
            Things =
            [
                .. brief.Site.Surrounds.Near.Select(thing => Near(thing, brief.Tank, choice)),
                .. guard.Fence is { } fence ? [Fence(fence)] : (NearThing[])[],
                .. guard.Poles.Count == 0 ? (NearThing[])[] : [bare.Poles(guard)],
                .. bare.Racks(),
            ],
        };
    }

    /// <summary>
    /// What an array not chosen yet would see behind what the brief says stands near: nine spots of a plane of 8 by 4 m. The
    /// station's own tank is not known then.
    /// </summary>
    /// <param name="site">The site.</param>
    /// <param name="facing">How the modules lie.</param>
    /// <returns>The shade; null when nothing is said to stand near.</returns>
    public static NearShade? BeforeTheChoice(SiteBrief site, PlaneFacing facing)
    {
        var near = site.Surrounds.Near.Where(thing => thing is { TopM: not null, WidthM: not null }).ToList();
        if (near.Count == 0)
        {
            return null;
        }

        var (right, back) = (RightOf(facing), BackOf(facing));
        return new(
            facing,
            [
                .. Enumerable
                    .Range(0, 9)
                    .Select(i =>
                        new[]
                        {
                            (right * (((i % 3) - 1) * 3.0))
                                + (back * (2 + (((i / 3) - 1) * 1.5)))
                                + new Spot(0, 0, Rack.UsualLowEdgeMm / 1000),
                        }
                    ),
            ],
            [.. near.Select(thing => Standing(thing, thing.BottomM, thing.TopM!.Value, thing.WidthM!.Value))]
        );
    }

    /// <summary>What was placed without being asked for.</summary>
    public IEnumerable<ChoiceNote> Notes =>
        Things
            .Where(thing => thing.Name == FenceName)
            .Select(_ => new ChoiceNote(
                "fence in the light",
                Invariant(
                    $"{StationFence.HeightM:0.0} m high, mesh that passes {MeshPassedShare * 100:0} % of the light"
                ),
                "wire of 3 mm in a mesh of 50 mm, worked out here; height: common practice, no source"
            ));

    /// <summary>Middle of the rearmost rack: the place from which most is seen.</summary>
    public Spot Eye => OnRack(Rack.Grid.RackCount - 1, 0, Rack.Size.DepthMm / 2000);

    /// <summary>What the racks see of the sky.</summary>
    /// <returns>The shade.</returns>
    public NearShade Shade() =>
        new(
            Facing,
            [
                .. Enumerable
                    .Range(0, Rack.Grid.RackCount)
                    .SelectMany(rack => Enumerable.Range(0, Rack.Grid.Rows).SelectMany(row => Groups(rack, row))),
            ],
            [.. Things.SelectMany(thing => thing.Screens)]
        );

    // Strips of cells along the module's long side: up the slope where it stands, along the row where it lies.
    private IEnumerable<IReadOnlyList<Spot>> Groups(int rack, int row) =>
        Rack.Lay.UpMm >= Rack.Lay.AlongMm ? StandingGroups(rack, row) : LyingGroups(rack, row);

    private IEnumerable<IReadOnlyList<Spot>> LyingGroups(int rack, int row)
    {
        var (lengthM, depthM) = (Rack.Size.InsideLengthMm / 1000, Rack.Size.InsideDepthMm / 1000);
        for (var module = 0; module < Rack.Grid.Columns; module++)
        {
            for (var group = 0; group < GroupsInModule; group++)
            {
                var upM = (row + ((group + 0.5) / GroupsInModule)) / Rack.Grid.Rows * depthM;
                yield return
                [
                    .. Enumerable
                        .Range(0, SpotsInGroup)
                        .Select(i => (((module + ((i + 0.5) / SpotsInGroup)) / Rack.Grid.Columns) - 0.5) * lengthM)
                        .Select(acrossM => OnRack(rack, acrossM, upM)),
                ];
            }
        }
    }

    private IEnumerable<IReadOnlyList<Spot>> StandingGroups(int rack, int row)
    {
        var (lengthM, depthM) = (Rack.Size.InsideLengthMm / 1000, Rack.Size.InsideDepthMm / 1000);
        var count = Rack.Grid.Columns * GroupsInModule;
        for (var group = 0; group < count; group++)
        {
            var acrossM = (((group + 0.5) / count) - 0.5) * lengthM;
            yield return
            [
                .. Enumerable
                    .Range(0, SpotsInGroup)
                    .Select(i => (row + ((i + 0.5) / SpotsInGroup)) / Rack.Grid.Rows * depthM)
                    .Select(upM => OnRack(rack, acrossM, upM)),
            ];
        }
    }

    // To the right as seen from the low edge.
    private static Spot RightOf(PlaneFacing facing) => new(-Cos(facing.AzimuthDeg), Sin(facing.AzimuthDeg), 0);

    private static Spot BackOf(PlaneFacing facing) => new(-Sin(facing.AzimuthDeg), -Cos(facing.AzimuthDeg), 0);

    private Spot Right => RightOf(Facing);

    private Spot Back => BackOf(Facing);

    private Spot UpSlope => (Back * Cos(Facing.TiltDeg)) + new Spot(0, 0, Sin(Facing.TiltDeg));

    private double PitchM => GuardField.Of(Rack).PitchM;

    private Spot OnRack(int rack, double acrossM, double upM) =>
        (Right * acrossM) + (Back * (rack * PitchM)) + (UpSlope * upM) + new Spot(0, 0, Rack.Setting.LowEdgeMm / 1000);

    // Each rack stands in the light of the others; of a rack's own plane a ray that starts on it is free.
    private IEnumerable<NearThing> Racks() =>
        Rack.Grid.RackCount == 1
            ? []
            :
            [
                new(
                    "the other racks",
                    [
                        .. Enumerable
                            .Range(0, Rack.Grid.RackCount)
                            .Select(rack => new Screen(
                                OnRack(rack, -Rack.Size.LengthMm / 2000, 0),
                                Right * (Rack.Size.LengthMm / 1000),
                                UpSlope * (Rack.Size.DepthMm / 1000),
                                0
                            )),
                    ]
                ),
            ];

    // Each side is a screen, the gate's leaves being of mesh too.
    private static NearThing Fence(StationFence fence) =>
        new(
            FenceName,
            [
                .. fence
                    .Line.Corners.Select(corner => new Spot(corner.EastM, corner.NorthM, corner.LevelM))
                    .Zip(
                        fence
                            .Line.Corners.Skip(1)
                            .Append(fence.Line.Corners[0])
                            .Select(corner => new Spot(corner.EastM, corner.NorthM, corner.LevelM)),
                        (from, to) => new Screen(from, to - from, new Spot(0, 0, StationFence.HeightM), MeshPassedShare)
                    ),
            ]
        );

    // Lightning masts and light columns, each square to the line of sight.
    private NearThing Poles(Guard guard) =>
        new(
            "masts and light columns",
            [
                .. guard.Poles.Select(pole =>
                    Screen.Facing(
                        (Right * (pole.Place.XM - (Rack.Size.LengthMm / 2000))) + (Back * pole.Place.YM),
                        default,
                        pole.DiameterM,
                        0,
                        pole.HeightM
                    )
                ),
            ]
        );

    private static NearThing Near(NearBrief thing, TankBrief tank, Choice choice)
    {
        var (bottomM, topM) = thing.TopM is { } given
            ? (thing.BottomM, given)
            : (tank.StandM, tank.StandM + choice.Tank.HeightM);
        return new(thing.Name, [Standing(thing, bottomM, topM, thing.WidthM ?? choice.Tank.DiameterM)]);
    }

    private static Screen Standing(NearBrief thing, double bottomM, double topM, double widthM) =>
        Screen.Facing(
            new Spot(Sin(thing.BearingDeg), Cos(thing.BearingDeg), 0) * thing.DistanceM,
            default,
            widthM,
            bottomM,
            topM
        );

    private static double Sin(double deg) => Math.Sin(deg * Math.PI / 180);

    private static double Cos(double deg) => Math.Cos(deg * Math.PI / 180);
}

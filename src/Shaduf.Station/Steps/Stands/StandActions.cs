using Shaduf.Shape;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The load cases of a stand, each in its place; wind for a gust of 1 kN/m² at the tank's top, shaking for 1 g.</summary>
internal sealed class StandActions
{
    // Places in the list of cases.
    internal const int Weight = 0;
    internal const int Water = 1;
    internal const int People = 2;
    internal const int LeanX = 3;
    internal const int LeanWaterX = 5;
    internal const int Wind = 7;
    internal const int ShakenFull = 11;
    internal const int SloshedFull = 13;
    internal const int ShakenHalf = 15;
    internal const int SloshedHalf = 17;
    internal const int CaseCount = 19;

    /// <summary>Headings of the wind that have cases of their own [deg from x]; the others are these the other way round.</summary>
    internal const int HeadingCount = 4;

    // People on the free platform (EN ISO 14122-2) and one on the tank's roof.
    private const double PeopleKNPerM2 = 2.0;
    private const double OnRoofN = 1000;
    private readonly TankStand stand;
    private readonly SkeletonFrame frame;
    private readonly StandWind wind;
    private readonly StandBed bed;

    private StandActions(TankStand stand, SkeletonFrame frame, StandWind wind)
    {
        (this.stand, this.frame, this.wind) = (stand, frame, wind);
        bed = new(stand, frame);
    }

    private StandPlan Plan => stand.Plan;

    private double JoistMm =>
        frame.Spans.Index().Where(pair => IsJoist(pair.Item)).Sum(pair => frame.Model.LengthMm(pair.Index));

    // From the middle of the joists to the tank's bottom.
    private double DeckMm => StandPlan.DeckMm + (Plan.Sections.Joist.SideMm / 2);

    /// <summary>The cases of a stand, in their places.</summary>
    /// <param name="stand">The stand.</param>
    /// <param name="frame">Its frame.</param>
    /// <param name="wind">How the wind pushes.</param>
    /// <returns>The cases.</returns>
    public static IReadOnlyList<LoadCase> Of(TankStand stand, SkeletonFrame frame, StandWind wind) =>
        [.. new StandActions(stand, frame, wind).All()];

    /// <summary>The water of a state as two masses, shaken along x or y.</summary>
    /// <param name="tank">The tank.</param>
    /// <param name="fillShare">How full it is, above 0 to 1.</param>
    /// <returns>The masses.</returns>
    public static TankSloshing SloshingOf(StandTank tank, double fillShare)
    {
        var depthM = Math.Max(0.1, tank.DepthMm * fillShare / 1000);
        return tank.IsRound
            ? TankSloshing.OfRound(tank.WidthMm / 2000, depthM)
            : TankSloshing.OfRectangular(tank.WidthMm / 1000, depthM);
    }

    /// <summary>Direction of a heading.</summary>
    /// <param name="heading">In eighths of a turn from x.</param>
    internal static Point Way(int heading)
    {
        var (sin, cos) = Math.SinCos(heading * Math.PI / 4);
        return new(cos, sin, 0);
    }

    private IEnumerable<LoadCase> All()
    {
        var tank = Plan.Tank;
        var (waterN, lean) = (
            tank.WaterKg * TankStand.GravityNPerKg,
            SwayImperfection.LeanRad(Math.Max(0.5, Plan.FloorMm / 1000), Plan.RowCount)
        );
        var down = new Point(0, 0, -1);
        Point[] ways = [new(1, 0, 0), new(0, 1, 0)];
        yield return Case("steel and empty tank", [.. Dead(down, 1), .. bed.Even(Along(down, EmptyN))]);
        yield return Case("water", bed.Even(Along(down, waterN)));
        yield return Case("people on the platform and one on the roof", PeopleLoads());
        foreach (var way in ways)
        {
            yield return Case("lean of the empty stand", [.. Dead(way, lean), .. bed.Even(Along(way, lean * EmptyN))]);
        }

        foreach (var way in ways)
        {
            yield return Case("lean of the water", bed.Even(Along(way, lean * waterN)));
        }

        foreach (var heading in Enumerable.Range(0, HeadingCount))
        {
            yield return Blown(Way(heading));
        }

        foreach (var fill in new[] { 1.0, 0.5 })
        {
            var masses = SloshingOf(tank, fill);
            var depth = tank.DepthMm * fill;
            foreach (var way in ways)
            {
                yield return Case(
                    Invariant($"shaken, {fill * 100:0} % full"),
                    [
                        .. Dead(way, 1),
                        .. bed.Pushed(EmptyN, way, DeckMm + (tank.HeightMm / 2)),
                        .. bed.Pushed(
                            fill * waterN * masses.RigidShare,
                            way,
                            DeckMm + (masses.RigidHeightRatio * depth)
                        ),
                    ]
                );
            }

            foreach (var way in ways)
            {
                yield return Case(
                    Invariant($"sloshed, {fill * 100:0} % full"),
                    bed.Pushed(fill * waterN * masses.SloshingShare, way, DeckMm + (masses.SloshingHeightRatio * depth))
                );
            }
        }
    }

    private double EmptyN => Plan.Tank.EmptyKg * TankStand.GravityNPerKg;

    // Steel of the members, and what lies on the joists.
    private IEnumerable<SpreadLoad> Dead(Point way, double share)
    {
        var onJoists = stand.OnJoistsKg * TankStand.GravityNPerKg / JoistMm;
        return frame.Spans.Select(
            (span, i) =>
            {
                var bar = stand.Skeleton.Members[span.Member].Profile.Bar;
                var perMm = (bar.MassKgPerM * TankStand.GravityNPerKg / 1000) + (IsJoist(span) ? onJoists : 0);
                return new SpreadLoad(i, Along(way, share * perMm));
            }
        );
    }

    private IEnumerable<SpreadLoad> PeopleLoads()
    {
        var perMm = PeopleKNPerM2 * Plan.PitchMm * 1e-3;
        return [.. bed.Free.Select(span => new SpreadLoad(span, new(0, 0, -perMm))), .. bed.Even(new(0, 0, -OnRoofN))];
    }

    private LoadCase Blown(Point way)
    {
        var tank = Plan.Tank;
        var tankN = wind.TankCoefficient * tank.WidthMm * tank.HeightMm * 1e-3;
        var platformN = StandWind.PlatformM2 * wind.TowerShare * 1000;
        var legs = stand.Members(TankStand.LegRole).ToHashSet();
        var legMm = Plan.TopMm - StandPlan.FootMm;
        var ladderNPerMm = StandWind.LadderM2PerM * wind.TowerShare / Plan.LegCount;
        return Case(
            "wind",
            [
                .. bed.Pushed(tankN, way, DeckMm + (tank.HeightMm / 2)),
                .. Tower(way),
                .. frame
                    .Spans.Index()
                    .Where(pair => IsJoist(pair.Item))
                    .Select(pair => new SpreadLoad(pair.Index, Along(way, platformN / JoistMm))),
                .. frame
                    .Spans.Index()
                    .Where(pair => legs.Contains(pair.Item.Member))
                    .Select(pair => new SpreadLoad(pair.Index, Along(way, ladderNPerMm * Plan.FloorMm / legMm))),
            ]
        );
    }

    // The push on the whole tower, shared out by what each bar shows to the wind.
    private IEnumerable<SpreadLoad> Tower(Point way)
    {
        var shown = frame.Spans.Select((span, i) => ShownMm2(span, frame.Model.LengthMm(i), way)).ToList();
        var perMm2 = wind.TowerN(way) / shown.Sum();
        return shown.Select((area, i) => new SpreadLoad(i, Along(way, perMm2 * area / frame.Model.LengthMm(i))));
    }

    // A face that the wind blows along shows nothing.
    private double ShownMm2(FrameSpan span, double lengthMm, Point way)
    {
        var member = stand.Skeleton.Members[span.Member];
        if (!StandFace.IsTower(member.Role))
        {
            return 0;
        }

        var axis = (member.To - member.From) * (1 / member.LengthMm);
        var flat = new Point(axis.XMm, axis.YMm, 0);
        var turned =
            flat.LengthMm < 0.01 ? 1 : Math.Sqrt(Math.Max(0, 1 - Math.Pow(flat.DotMm2(way) / flat.LengthMm, 2)));
        return turned * member.Profile.Bar.SideMm * lengthMm;
    }

    private bool IsJoist(FrameSpan span) => stand.Skeleton.Members[span.Member].Role == TankStand.JoistRole;

    private static Force Along(Point way, double n) => new(way.XMm * n, way.YMm * n, way.ZMm * n);

    private static LoadCase Case(string name, IEnumerable<SpreadLoad> spread) =>
        new(name, [], [.. spread.Where(load => load.PerMm != default)], []);
}

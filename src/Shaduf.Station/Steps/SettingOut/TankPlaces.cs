using Shaduf.Ground;
using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>What stands on the site before the tanks do.</summary>
/// <param name="Field">The racks on the ground.</param>
/// <param name="Bearing">How they lie.</param>
/// <param name="Fence">Corners of the fence; none without one.</param>
/// <param name="Posts">Poles and the source, each with the free ground it wants round its middle.</param>
public sealed record SiteTaken(
    GuardField Field,
    RackBearing Bearing,
    IReadOnlyList<SitePlace> Fence,
    IReadOnlyList<SitePlace> Posts
)
{
    // Round a pole or the source; judgement.
    private const double PostM = 1;

    /// <summary>Least free ground between a round footprint and all that stands there [m]; below 0 where it lies on something.</summary>
    /// <param name="middle">Its middle.</param>
    /// <param name="radiusM">Its radius [m].</param>
    public double FreeM(SitePlace middle, double radiusM)
    {
        var at = Bearing.InField(middle);
        var racks = Enumerable
            .Range(0, Field.RackCount)
            .Select(rack =>
                double.Hypot(Beyond(at.XM, Field.LengthM), Beyond(at.YM - (rack * Field.PitchM), Field.RackM))
            );
        var posts = Posts.Select(post => Apart(post, middle) - PostM);
        double[] fence =
            Fence.Count < 3
                ? []
                :
                [
                    Math.Abs(
                        FenceOutline.FreeM(
                            [.. Fence.Select(corner => new FencePoint(corner.EastM, corner.NorthM, 0))],
                            [new(middle.EastM, middle.NorthM, 0)]
                        )
                    ),
                ];
        return racks.Concat(posts).Concat(fence).Min() - radiusM;
    }

    /// <summary>Distance of two places [m].</summary>
    internal static double Apart(SitePlace a, SitePlace b) => double.Hypot(a.EastM - b.EastM, a.NorthM - b.NorthM);

    private static double Beyond(double at, double lengthM) => Math.Max(0, Math.Max(-at, at - lengthM));
}

/// <summary>Where the tanks stand, side by side: site plan and model show them there.</summary>
/// <param name="Middles">Their middles.</param>
/// <param name="RadiusM">Round each of them with its stand and footings [m].</param>
/// <param name="IsTold">Whether the first stands where it was told; else beside the racks, outside their fence.</param>
/// <param name="FreeM">Least free ground between them and all else [m]; below 0 where the told place lies on something.</param>
public sealed record TankPlaces(IReadOnlyList<SitePlace> Middles, double RadiusM, bool IsTold, double FreeM)
{
    /// <summary>What lies farther from the racks is shown on a plan at its edge, and in the model beside the racks [m].</summary>
    public const double FarM = 45;

    // From the fence, or what else stands at that end, to a tank that is drawn beside the racks.
    private const double AsideM = 6;

    // Between the footprints of two tanks: to walk round and to weld.
    private const double BetweenM = 1;
    private const int Ways = 16;

    /// <summary>Whether a place is too far to be shown where it is.</summary>
    /// <param name="place">The place.</param>
    public static bool IsFar(SitePlace place) => double.Hypot(place.EastM, place.NorthM) > FarM;

    /// <summary>Places the tanks of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="plan">The station from above.</param>
    public static TankPlaces Of(Design design, SitePlan plan) =>
        Of(
            new(
                plan.Field,
                plan.Bearing,
                plan.Fence,
                [
                    .. design.Works.Guard.Poles.Select(pole => plan.Bearing.At(pole.Place)),
                    .. plan.Source.IsTold ? [plan.Source.Place] : Array.Empty<SitePlace>(),
                ]
            ),
            plan.Tank is { } tank && !IsFar(tank.Place) ? tank.Place : null,
            design.Choice.TankCount,
            Footprint(design)
        );

    /// <summary>Places tanks: in a row away from the racks where that is free, else round the first.</summary>
    /// <param name="taken">What stands there.</param>
    /// <param name="told">Where the first was told to stand; null for beside the racks.</param>
    /// <param name="count">Tanks, 1 or more.</param>
    /// <param name="radiusM">Radius of one's footprint [m], above 0.</param>
    public static TankPlaces Of(SiteTaken taken, SitePlace? told, int count, double radiusM)
    {
        var stepM = (2 * radiusM) + BetweenM;
        var first = told ?? Beside(taken, radiusM);
        var middle = taken.Bearing.At(new(taken.Field.LengthM / 2, taken.Field.DepthM / 2));
        var away = Math.Atan2(first.EastM - middle.EastM, first.NorthM - middle.NorthM);
        bool IsFree(SitePlace place, IEnumerable<SitePlace> others) =>
            taken.FreeM(place, radiusM) >= 0 && others.All(other => SiteTaken.Apart(other, place) >= stepM - 1e-9);
        var ways = Enumerable
            .Range(0, Ways)
            .Select(i => away + ((i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * 2 * Math.PI / Ways))
            .ToList();
        var row = ways.Select(way => Enumerable.Range(1, count - 1).Select(i => Off(first, way, i * stepM)).ToList())
            .FirstOrDefault(places => places.TrueForAll(place => IsFree(place, [first])));
        List<SitePlace> all = [first, .. row ?? []];
        while (all.Count < count)
        {
            all.Add(
                Enumerable
                    .Range(1, int.MaxValue)
                    .SelectMany(step => ways.Select(way => Off(first, way, step * stepM)))
                    .First(place => IsFree(place, all))
            );
        }

        return new(all, radiusM, told is not null, all.Min(place => taken.FreeM(place, radiusM)));
    }

    private static SitePlace Off(SitePlace from, double way, double offM) =>
        new(from.EastM + (Math.Sin(way) * offM), from.NorthM + (Math.Cos(way) * offM));

    // Beyond the right end of racks, fence and all else, level with their middle.
    private static SitePlace Beside(SiteTaken taken, double radiusM)
    {
        var endM = taken
            .Fence.Concat(taken.Posts)
            .Select(place => taken.Bearing.InField(place).XM)
            .Append(taken.Field.LengthM)
            .Max();
        return taken.Bearing.At(new(endM + AsideM + radiusM, taken.Field.DepthM / 2));
    }

    // Round the tank, and round the platform and the footings of its stand.
    private static double Footprint(Design design)
    {
        var card = design.Choice.Tank;
        var tankM = card.DiameterM / 2 * (card.Shape == TankShape.Round ? 1 : Math.Sqrt(2));
        if (design.Works.Stand is not { } stands)
        {
            return tankM;
        }

        var (plan, block) = (stands.Stand.Plan, stands.Footings.Block);
        double Corner(double xMm, double yMm) => double.Hypot(xMm - plan.MiddleMm, yMm - plan.MiddleMm) / 1000;
        return stands
            .FootingsAtMm.SelectMany(at =>
                new[] { -0.5, 0.5 }.SelectMany(x =>
                    new[] { -0.5, 0.5 }.Select(y => Corner(at.XMm + (x * block.LengthMm), at.YMm + (y * block.WidthMm)))
                )
            )
            .Concat(
                new[] { plan.WidthMm.LeftMm, plan.WidthMm.RightMm }.SelectMany(x =>
                    new[] { plan.DepthMm.FrontMm, plan.DepthMm.BackMm }.Select(y => Corner(x, y))
                )
            )
            .Append(tankM)
            .Max();
    }
}

using Shaduf.Ground;
using Shaduf.Parts;
using Shaduf.Power;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The fence of a station: metres to the east and north of the middle of the front rack's low edge; levels above the ground under that rack's low left corner.</summary>
/// <param name="Line">The fence, post by post.</param>
/// <param name="Steel">Its posts and struts, where they stand.</param>
/// <param name="IsTold">Whether the brief gives its line; else it is a rectangle round the racks.</param>
/// <param name="FreeM">Least free ground between it and racks, masts and light columns [m]; 0 or below where it does not go round them.</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record StationFence(
    FenceLine Line,
    Assembly Steel,
    bool IsTold,
    double FreeM,
    IReadOnlyList<ChoiceNote> Notes
)
{
    /// <summary>Height of the fence [m]; common practice, no source.</summary>
    public const double HeightM = 1.8;

    /// <summary>Widest bay between fence posts [m]; common practice, no source.</summary>
    public const double PostSpacingM = 2.5;

    /// <summary>Width of a gate for a cart or a small truck [m]; common practice, no source.</summary>
    public const double UsualGateM = 3;

    /// <summary>Least free ground between racks and fence, to walk and to work [m]; common practice, no source.</summary>
    public const double LeastFreeM = 1.2;

    private const double UsualMarginM = 3;

    /// <summary>Between the fence and a wire buried along it [m]; common practice, no source.</summary>
    public const double RingFreeM = 0.5;

    // Between a gate post and the corner of its side.
    private const double BesideGateM = 0.5;

    private static readonly string[] s_rectangleSides =
    [
        "before the low edge",
        "at the right end",
        "behind the racks",
        "at the left end",
    ];

    /// <summary>How the racks lie in it.</summary>
    public required RackBearing Bearing { get; init; }

    /// <summary>Its corners in the racks' field, as long as all are near.</summary>
    /// <param name="field">The racks on the ground.</param>
    /// <param name="farM">Beyond the racks [m].</param>
    /// <returns>The corners; none when one lies farther off.</returns>
    public IReadOnlyList<GroundPlace> CornersNear(GuardField field, double farM)
    {
        List<GroundPlace> corners =
        [
            .. Line.Corners.Select(corner => Bearing.InField(new(corner.EastM, corner.NorthM))),
        ];
        return corners.TrueForAll(corner =>
            Math.Abs(corner.XM - (field.LengthM / 2)) < (field.LengthM / 2) + farM
            && Math.Abs(corner.YM - (field.DepthM / 2)) < (field.DepthM / 2) + farM
        )
            ? corners
            : [];
    }

    /// <summary>Free ground between it and a ring round the racks [m]; 0 where they cross, below 0 where the ring lies outside.</summary>
    /// <param name="offM">From the racks to the ring [m].</param>
    /// <param name="lengthM">The ring along the row [m].</param>
    /// <param name="depthM">The ring across it [m].</param>
    public double FreeOf(double offM, double lengthM, double depthM)
    {
        GroundPlace[] ring =
        [
            new(-offM, -offM),
            new(lengthM - offM, -offM),
            new(lengthM - offM, depthM - offM),
            new(-offM, depthM - offM),
        ];
        return FenceOutline.FreeM(
            Line.Corners,
            [.. ring.Select(Bearing.At).Select(place => new FencePoint(place.EastM, place.NorthM, 0))]
        );
    }

    /// <summary>Sides of the fence, from corner to corner, on the plan [m].</summary>
    public IReadOnlyList<double> SidesM => SidesOf(Line.Corners);

    /// <summary>The fence in words: '24.0 x 18.0 m around the racks', or its length and corners.</summary>
    public string Says =>
        IsTold
            ? Invariant($"{Line.RoundM:0.0} m along {Line.Corners.Count} points")
            : Invariant($"{SidesM[0]:0.0} x {SidesM[1]:0.0} m around the racks");

    /// <summary>Sets the fence out.</summary>
    /// <param name="asked">What is asked.</param>
    /// <param name="slope">The ground round the racks.</param>
    /// <param name="poles">Masts and light columns.</param>
    /// <param name="workshop">The saw, for its posts.</param>
    /// <returns>The fence.</returns>
    internal static StationFence Of(
        FenceBrief asked,
        SiteGround slope,
        IReadOnlyList<GuardPole> poles,
        WorkshopBrief workshop
    )
    {
        IReadOnlyList<FencePoint> corners = asked.Line.Count > 0 ? Told(asked.Line, slope) : Rectangle(asked, slope);
        var gate = GateOf(asked.Gate, corners, asked.Line.Count > 0);
        var freeM = Inside(slope, poles).Min(inside => FenceOutline.FreeM(corners, inside));
        var line = Fence.Around(corners, new(PostSpacingM, HeightM), gate);
        return new(line, FenceSteel.Of(line, workshop), asked.Line.Count > 0, freeM, [.. NotesOf(asked, corners, gate)])
        {
            Bearing = slope.Bearing,
        };
    }

    /// <summary>Length of a side that has room for a gate [m].</summary>
    /// <param name="widthM">Width of the gate [m].</param>
    internal static double NeededM(double widthM) => widthM + (2 * BesideGateM);

    // What the fence goes round: the racks together, and each pole.
    private static IEnumerable<IReadOnlyList<FencePoint>> Inside(SiteGround slope, IReadOnlyList<GuardPole> poles) =>
        poles.Select(pole => (IReadOnlyList<FencePoint>)[slope.At(pole.Place)]).Prepend(slope.Rectangle(0, 0));

    private static List<FencePoint> Told(IReadOnlyList<FenceCornerBrief> line, SiteGround slope) =>
        [
            .. line.Select(corner => new FencePoint(
                corner.Place.EastM,
                corner.Place.NorthM,
                corner.LevelM ?? slope.LevelM(corner.Place)
            )),
        ];

    // Behind the last rack the poles stand inside the fence, and the earth's ring with room to dig beside the posts.
    private static IReadOnlyList<FencePoint> Rectangle(FenceBrief asked, SiteGround slope)
    {
        var marginM = asked.MarginM ?? UsualMarginM;
        return slope.Rectangle(marginM, Math.Max(marginM, GuardField.BehindM + GuardEarth.RingOffM + RingFreeM));
    }

    private static List<double> SidesOf(IReadOnlyList<FencePoint> corners) =>
        [
            .. corners.Zip(
                corners.Skip(1).Append(corners[0]),
                (a, b) => double.Hypot(b.EastM - a.EastM, b.NorthM - a.NorthM)
            ),
        ];

    // Where it is asked for, else in the front of a rectangle, else in the longest side; none where no side has room.
    private static FenceGate? GateOf(FenceGateBrief asked, IReadOnlyList<FencePoint> corners, bool isTold)
    {
        var sidesM = SidesOf(corners);
        var widthM = asked.WidthM ?? UsualGateM;
        int[] wished =
        [
            .. asked.Side is { } side && side <= sidesM.Count ? [side - 1] : Array.Empty<int>(),
            .. isTold ? Array.Empty<int>() : [0],
            sidesM.IndexOf(sidesM.Max()),
        ];
        var found = wished.Where(each => sidesM[each] >= NeededM(widthM)).Take(1).ToList();
        return found.Count == 0
            ? null
            : new(
                found[0],
                (NeededM(widthM) / 2) + ((asked.AtShare ?? 0.5) * (sidesM[found[0]] - NeededM(widthM))),
                widthM
            );
    }

    private static IEnumerable<ChoiceNote> NotesOf(FenceBrief asked, IReadOnlyList<FencePoint> corners, FenceGate? gate)
    {
        var isTold = asked.Line.Count > 0;
        if (!isTold && asked.MarginM is null)
        {
            yield return new(
                "free ground inside the fence",
                Invariant($"{UsualMarginM} m"),
                "room to wash modules and to keep the fence's shade away; common practice, no source"
            );
        }

        if (gate is not null && asked.Gate.Side != gate.SideIndex + 1)
        {
            yield return new(
                "gate in the fence",
                isTold
                    ? Invariant($"from point {gate.SideIndex + 1} to {((gate.SideIndex + 1) % corners.Count) + 1}")
                    : s_rectangleSides[gate.SideIndex],
                asked.Gate.Side is { } side ? Invariant($"side {side} is too short for a gate of {gate.WidthM:0.0} m")
                    : isTold ? "the longest side"
                    : gate.SideIndex == 0 ? "where the modules are washed from"
                    : Invariant($"the front is too short for a gate of {gate.WidthM:0.0} m")
            );
        }

        if (isTold && asked.Line.Any(corner => corner.LevelM is null))
        {
            yield return new(
                "levels along the fence",
                "where none is given: on the slope of the ground under the racks",
                "the nearest ground of which something is known; level it before the posts are cut"
            );
        }
    }
}

/// <summary>The ground round the racks: the plane under them, carried on.</summary>
/// <param name="Field">The racks on the ground.</param>
/// <param name="Bearing">How they lie on the site.</param>
/// <param name="Ground">The plane.</param>
internal sealed record SiteGround(GuardField Field, RackBearing Bearing, RackGround Ground)
{
    /// <summary>A point of the ground by its place in the racks' field.</summary>
    public FencePoint At(GroundPlace place)
    {
        var at = Bearing.At(place);
        return new(at.EastM, at.NorthM, LevelM(place));
    }

    /// <summary>Level of the ground above that under the front rack's low left corner [m].</summary>
    public double LevelM(SitePlace place) => LevelM(Bearing.InField(place));

    /// <summary>The rectangle round the racks.</summary>
    /// <param name="marginM">Free ground before them and at their ends [m].</param>
    /// <param name="behindM">Free ground behind them [m].</param>
    public IReadOnlyList<FencePoint> Rectangle(double marginM, double behindM) =>
        [
            At(new(-marginM, -marginM)),
            At(new(Field.LengthM + marginM, -marginM)),
            At(new(Field.LengthM + marginM, Field.DepthM + behindM)),
            At(new(-marginM, Field.DepthM + behindM)),
        ];

    private double LevelM(GroundPlace place) => Ground.ZMm(place.XM * 1000, place.YM * 1000) / 1000;
}

using Shaduf.Shape;

namespace Shaduf.Station;

/// <summary>A prop under a cross tube or rafter; its foot stands on a board on the ground, clear of the pits.</summary>
/// <param name="Head">Where the tube's underside lies on it.</param>
/// <param name="Foot">Where it stands on its board.</param>
public sealed record Prop(Point Head, Point Foot)
{
    /// <summary>Its length [mm].</summary>
    public double LengthMm => (Head - Foot).LengthMm;

    /// <summary>How far it leans from upright [deg].</summary>
    public double LeanDeg =>
        Math.Atan2(double.Hypot(Head.XMm - Foot.XMm, Head.YMm - Foot.YMm), Head.ZMm - Foot.ZMm) * 180 / Math.PI;
}

/// <summary>The props at one cross tube or rafter: under its low and its high end, one to each, or two with their feet apart along the row.</summary>
/// <param name="Low">Towards the low edge.</param>
/// <param name="High">Towards the high edge.</param>
/// <param name="HeadsMm">Places of its columns' heads away from the low edge [mm].</param>
/// <param name="EndsMm">Places of the tube's ends away from the low edge [mm].</param>
public sealed record PropPair(Prop Low, Prop High, IReadOnlyList<double> HeadsMm, (double LowMm, double HighMm) EndsMm)
{
    /// <summary>Whether each stands with a fellow, whose foot lies on the other side of the pit along the row.</summary>
    public bool IsAlong { get; init; }

    /// <summary>Props that meet at a head: one, or two with their feet apart.</summary>
    public int Legs => IsAlong ? 2 : 1;

    /// <summary>Both.</summary>
    public IReadOnlyList<Prop> Both => [Low, High];

    /// <summary>Greatest lean [deg].</summary>
    public double LeanDeg => Math.Max(Low.LeanDeg, High.LeanDeg);

    /// <summary>A load spread along the tube, its middle at a place.</summary>
    /// <param name="middleMm">The place away from the low edge [mm].</param>
    /// <param name="kN">The load [kN].</param>
    /// <returns>It in five equal parts, as far as the nearer end lets them lie apart.</returns>
    public IEnumerable<(double AtMm, double KN)> Spread(double middleMm, double kN)
    {
        var reach = Math.Max(0, Math.Min(middleMm - EndsMm.LowMm, EndsMm.HighMm - middleMm));
        return Enumerable.Range(-2, 5).Select(i => (middleMm + (0.4 * i * reach), kN / 5));
    }

    /// <summary>Forces straight down that the tube's loads put on the props, and the greatest moment in the tube between them.</summary>
    /// <param name="loads">Loads straight down: place away from the low edge [mm] and force [kN].</param>
    /// <returns>Forces [kN] and moment [kNm].</returns>
    /// <source>Statics of a beam on two supports</source>
    public (double LowKN, double HighKN, double MomentKNm) Carry(IReadOnlyList<(double AtMm, double KN)> loads)
    {
        var (from, to) = (Low.Head.YMm, High.Head.YMm);
        var high = loads.Sum(load => load.KN * (load.AtMm - from)) / (to - from);
        var low = loads.Sum(load => load.KN) - high;
        double Moment(double at) =>
            (low * Math.Max(0, at - from))
            + (high * Math.Max(0, at - to))
            - loads.Sum(load => load.KN * Math.Max(0, at - load.AtMm));
        return (
            low,
            high,
            loads.Select(load => load.AtMm).Append(from).Append(to).Max(at => Math.Abs(Moment(at))) / 1000
        );
    }
}

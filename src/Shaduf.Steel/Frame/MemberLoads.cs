namespace Shaduf.Steel;

/// <summary>The loads of one member in its local axes.</summary>
internal sealed class MemberLoads
{
    private readonly double[] released;

    private MemberLoads(PreparedMember member, IEnumerable<SpreadLoad> spread, IEnumerable<PointLoad> points)
    {
        var ends = new double[12];
        foreach (var load in spread)
        {
            var perMm = member.Axes.Local(load.PerMm.XN, load.PerMm.YN, load.PerMm.ZN);
            PerMm = (PerMm.X + perMm.X, PerMm.Y + perMm.Y, PerMm.Z + perMm.Z);
            MemberMatrix.AddSpread(ends, perMm, member.LengthMm);
        }

        Points =
        [
            .. points.Select(load => (load.AtMm, member.Axes.Local(load.Force.XN, load.Force.YN, load.Force.ZN))),
        ];
        foreach (var (atMm, force) in Points)
        {
            MemberMatrix.AddPoint(ends, force, atMm, member.LengthMm);
        }

        released = new double[member.Released.Count];
        for (var i = 0; i < released.Length; i++)
        {
            released[i] = ends[member.Released[i].At];
            member.Released[i].Condense(ends);
        }

        Condensed = ends;
    }

    /// <summary>Even load [N/mm].</summary>
    internal (double X, double Y, double Z) PerMm { get; }

    /// <summary>Forces and their distance from the start [mm, N].</summary>
    internal IReadOnlyList<(double AtMm, (double X, double Y, double Z) Force)> Points { get; }

    /// <summary>End forces that hold the ends still, releases taken out.</summary>
    internal double[] Condensed { get; }

    /// <summary>End forces of the released directions, each before it was taken out.</summary>
    internal ReadOnlySpan<double> Released => released;

    internal static MemberLoads[] Of(LoadCase loads, PreparedMember[] members)
    {
        var spread = loads.Spread.ToLookup(load => load.Member);
        var points = loads.Points.ToLookup(load => load.Member);
        return [.. members.Select((member, i) => new MemberLoads(member, spread[i], points[i]))];
    }
}

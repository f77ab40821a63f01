namespace Shaduf.Steel;

/// <summary>The loads of one member in its local axes.</summary>
internal sealed class MemberLoads
{
    private static readonly MemberLoads None = new();
    private readonly double[] released;

    private MemberLoads() => released = new double[12];

    private MemberLoads(PreparedMember member, Force perMm, IReadOnlyList<PointLoad> points)
    {
        PerMm = member.Axes.Local(perMm.XN, perMm.YN, perMm.ZN);
        Points =
        [
            .. points.Select(load => (load.AtMm, member.Axes.Local(load.Force.XN, load.Force.YN, load.Force.ZN))),
        ];
        MemberMatrix.AddSpread(Condensed, PerMm, member.LengthMm);
        foreach (var (atMm, force) in Points)
        {
            MemberMatrix.AddPoint(Condensed, force, atMm, member.LengthMm);
        }

        released = new double[member.Released.Count];
        for (var i = 0; i < released.Length; i++)
        {
            released[i] = Condensed[member.Released[i].At];
            member.Released[i].Condense(Condensed);
        }
    }

    /// <summary>Whether nothing lies on the member.</summary>
    internal bool IsNone => ReferenceEquals(this, None);

    /// <summary>Even load [N/mm].</summary>
    internal (double X, double Y, double Z) PerMm { get; }

    /// <summary>Forces and their distance from the start [mm, N].</summary>
    internal (double AtMm, (double X, double Y, double Z) Force)[] Points { get; } = [];

    /// <summary>End forces that hold the ends still, releases taken out.</summary>
    internal double[] Condensed { get; } = new double[12];

    /// <summary>End forces of the released directions, each before it was taken out.</summary>
    internal ReadOnlySpan<double> Released => released;

    internal static MemberLoads[] Of(LoadCase loads, PreparedMember[] members)
    {
        var (perMm, points) = (new Force[members.Length], new List<PointLoad>?[members.Length]);
        foreach (var (member, force) in loads.Spread)
        {
            var sum = perMm[member];
            perMm[member] = new(sum.XN + force.XN, sum.YN + force.YN, sum.ZN + force.ZN);
        }

        foreach (var load in loads.Points)
        {
            (points[load.Member] ??= []).Add(load);
        }

        var all = new MemberLoads[members.Length];
        for (var i = 0; i < all.Length; i++)
        {
            all[i] = perMm[i] == default && points[i] is null ? None : new(members[i], perMm[i], points[i] ?? []);
        }

        return all;
    }
}

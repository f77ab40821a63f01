namespace Shaduf.Steel;

/// <summary>A member with all that does not change with the loads.</summary>
/// <param name="Member">The member.</param>
/// <param name="LengthMm">Its length [mm].</param>
/// <param name="Axes">Its axes.</param>
/// <param name="Local">Its stiffness in local axes, releases taken out.</param>
/// <param name="Released">How released directions follow.</param>
/// <param name="StretchN">E·A [N].</param>
/// <param name="BendingYNMm2">E·I about local y [N·mm2].</param>
/// <param name="BendingZNMm2">E·I about local z [N·mm2].</param>
internal sealed record PreparedMember(
    FrameMember Member,
    double LengthMm,
    MemberAxes Axes,
    double[] Local,
    IReadOnlyList<ReleasedRow> Released,
    double StretchN,
    double BendingYNMm2,
    double BendingZNMm2
)
{
    internal static PreparedMember Of(FrameModel model, int index)
    {
        var member = model.Members[index];
        var axes = MemberAxes.Of(member, model.Nodes[member.Start], model.Nodes[member.End]);
        var lengthMm = model.LengthMm(index);
        var local = MemberMatrix.Elastic(member.Section, model, lengthMm);
        var released = MemberMatrix.Release(local, member);
        return new(
            member,
            lengthMm,
            axes,
            local,
            released,
            model.ElasticModulusNPerMm2 * member.Section.AreaMm2,
            model.ElasticModulusNPerMm2 * member.Section.InertiaYMm4,
            model.ElasticModulusNPerMm2 * member.Section.InertiaZMm4
        );
    }

    /// <summary>Puts the stiffness in the axes of the station into room for it.</summary>
    internal void PutStiffness(Span<double> k) => Axes.MatrixToStation(Local, k);

    /// <summary>Puts the geometric stiffness in the axes of the station under a tension [N] into room for it.</summary>
    internal void PutGeometric(double tensionN, Span<double> k)
    {
        PutGeometricLocal(tensionN, k);
        Axes.MatrixToStation(k, k);
    }

    /// <summary>
    /// Puts the geometric stiffness in local axes into room for it. Released directions follow the others as the
    /// elastic member makes them, so that they drop out of it: Cᵀ·k_G·C.
    /// </summary>
    internal void PutGeometricLocal(double tensionN, Span<double> k)
    {
        MemberMatrix.Geometric(tensionN, LengthMm, k);
        if (Released.Count == 0)
        {
            return;
        }

        Span<double> shape = stackalloc double[12];
        Span<double> forces = stackalloc double[12];
        Span<double> shapes = stackalloc double[144];
        for (var j = 0; j < 12; j++)
        {
            shape.Clear();
            shape[j] = 1;
            Follow(shape, []);
            shape.CopyTo(shapes.Slice(j * 12, 12));
        }

        Span<double> condensed = stackalloc double[144];
        for (var j = 0; j < 12; j++)
        {
            MemberMatrix.Times(k, shapes.Slice(j * 12, 12), forces);
            for (var i = 0; i < 12; i++)
            {
                var sum = 0.0;
                for (var s = 0; s < 12; s++)
                {
                    sum += shapes[(i * 12) + s] * forces[s];
                }

                condensed[(i * 12) + j] = sum;
            }
        }

        condensed.CopyTo(k);
    }

    /// <summary>Sets the movements of released directions from the others, the last taken out first.</summary>
    /// <param name="movements">Movements of both ends in local axes.</param>
    /// <param name="held">End force of each released direction before it was taken out; empty without loads.</param>
    internal void Follow(Span<double> movements, ReadOnlySpan<double> held)
    {
        foreach (var row in Released)
        {
            movements[row.At] = 0;
        }

        for (var i = Released.Count - 1; i >= 0; i--)
        {
            movements[Released[i].At] = Released[i].Movement(movements, held.IsEmpty ? 0 : held[i]);
        }
    }

    /// <summary>Movement inside the member that follows its ends: straight along it, cubic across it.</summary>
    /// <param name="share">Place, 0 to 1.</param>
    /// <param name="u">Movements of both ends in local axes.</param>
    internal (double X, double Y, double Z) Bow(double share, ReadOnlySpan<double> u)
    {
        var (s, r) = (share, 1 - share);
        var (start, end) = (r * r * (1 + (2 * s)), s * s * (1 + (2 * r)));
        var (startTurn, endTurn) = (s * r * r * LengthMm, -s * s * r * LengthMm);
        return (
            (r * u[0]) + (s * u[6]),
            (start * u[1]) + (startTurn * u[5]) + (end * u[7]) + (endTurn * u[11]),
            (start * u[2]) - (startTurn * u[4]) + (end * u[8]) - (endTurn * u[10])
        );
    }

    /// <summary>Movement inside the member under its loads with both ends clamped, local axes [mm].</summary>
    /// <source>
    /// Across: w·x²·(L−x)²/24EI and P·b²·x²·(3aL−3ax−bx)/6EIL³; along: w·x·(L−x)/2EA and P·b·x/EAL: standard tables.
    /// </source>
    internal (double XMm, double YMm, double ZMm) ClampedBow(double share, MemberLoads loads)
    {
        var x = share * LengthMm;
        var (slack, even) = (x * (LengthMm - x) / 2, Math.Pow(x * (LengthMm - x), 2) / 24);
        var (along, y, z) = (slack * loads.PerMm.X, even * loads.PerMm.Y, even * loads.PerMm.Z);
        foreach (var (atMm, force) in loads.Points)
        {
            var (a, at) = x <= atMm ? (atMm, x) : (LengthMm - atMm, LengthMm - x);
            var b = LengthMm - a;
            var bow = b * b * at * at * ((3 * a * LengthMm) - (3 * a * at) - (b * at)) / (6 * Math.Pow(LengthMm, 3));
            along += b * at / LengthMm * force.X;
            (y, z) = (y + (bow * force.Y), z + (bow * force.Z));
        }

        return (along / StretchN, y / BendingZNMm2, z / BendingYNMm2);
    }
}

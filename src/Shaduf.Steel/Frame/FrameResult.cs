using Shaduf.Shape;

namespace Shaduf.Steel;

/// <summary>Movement and turning of a node.</summary>
/// <param name="MoveMm">Movement [mm].</param>
/// <param name="TurnXRad">Turning about x [rad].</param>
/// <param name="TurnYRad">Turning about y [rad].</param>
/// <param name="TurnZRad">Turning about z [rad].</param>
public readonly record struct NodeMovement(Point MoveMm, double TurnXRad, double TurnYRad, double TurnZRad);

/// <summary>What a support puts on the frame.</summary>
/// <param name="Node">Index of the node.</param>
/// <param name="Force">Force [N].</param>
/// <param name="Moment">Moment [N·mm].</param>
public sealed record Reaction(int Node, Force Force, Moment Moment);

/// <summary>What a node puts on an end of a member, in the member's local axes.</summary>
/// <param name="Force">Force [N].</param>
/// <param name="Moment">Moment [N·mm].</param>
public readonly record struct MemberEnd(Force Force, Moment Moment);

/// <summary>Forces inside a member at one place, on the face that looks to its end; local axes.</summary>
/// <param name="AtMm">Distance from the start [mm].</param>
/// <param name="TensionN">Axial force, tension above 0 [N].</param>
/// <param name="ShearYN">Shear along y [N].</param>
/// <param name="ShearZN">Shear along z [N].</param>
/// <param name="TorsionNMm">Torque [N·mm].</param>
/// <param name="BendingYNMm">Moment about y [N·mm].</param>
/// <param name="BendingZNMm">Moment about z [N·mm].</param>
public readonly record struct MemberForces(
    double AtMm,
    double TensionN,
    double ShearYN,
    double ShearZN,
    double TorsionNMm,
    double BendingYNMm,
    double BendingZNMm
)
{
    /// <summary>All forces larger or smaller at the same place.</summary>
    /// <param name="forces">The forces.</param>
    /// <param name="factor">By how much.</param>
    /// <returns>The new forces.</returns>
    public static MemberForces operator *(MemberForces forces, double factor) =>
        new(
            forces.AtMm,
            forces.TensionN * factor,
            forces.ShearYN * factor,
            forces.ShearZN * factor,
            forces.TorsionNMm * factor,
            forces.BendingYNMm * factor,
            forces.BendingZNMm * factor
        );
}

/// <summary>A frame under one load case.</summary>
public sealed class FrameResult
{
    private readonly FrameAnalysis frame;
    private readonly LoadCase loads;
    private readonly MemberLoads[] loaded;
    private readonly double[] movements;
    private readonly double[] ends; // twelve a member
    private readonly double[] local; // twelve a member
    private readonly double[]? tensionN; // held in the geometric stiffness; null in first order
    private NodeMovement[]? moved;

    internal FrameResult(
        FrameAnalysis frame,
        LoadCase loads,
        double[] movements,
        MemberLoads[] loaded,
        double[]? tensionN
    )
    {
        (this.frame, this.loads, this.movements, this.loaded) = (frame, loads, movements, loaded);
        this.tensionN = tensionN;
        (local, ends) = (new double[12 * loaded.Length], new double[12 * loaded.Length]);
        for (var i = 0; i < loaded.Length; i++)
        {
            PutLocal(i, local.AsSpan(12 * i, 12));
            PutEnds(i, ends.AsSpan(12 * i, 12));
        }

        Reactions = Equilibrium.Reactions(frame, loads, ends);
    }

    /// <summary>Movement of each node.</summary>
    public IReadOnlyList<NodeMovement> Movements =>
        moved ??= [.. Enumerable.Range(0, frame.Model.Nodes.Count).Select(MovementOf)];

    /// <summary>Reaction at each support, in the order of the model.</summary>
    public IReadOnlyList<Reaction> Reactions { get; }

    /// <summary>
    /// Largest force, or moment about the origin, that is left over when loads and reactions are added up, as a share of
    /// the sum of the loads' sizes. With second order, forces only.
    /// </summary>
    public double ImbalanceShare =>
        Equilibrium.ImbalanceShare(frame.Model, loads, Reactions, isSecondOrder: tensionN is not null);

    /// <summary>What the nodes put on both ends of a member, in its local axes.</summary>
    /// <param name="member">Index of the member.</param>
    /// <returns>Forces and moments at start and end.</returns>
    public (MemberEnd Start, MemberEnd End) EndsOf(int member)
    {
        var p = EndsAt(member);
        return (new(new(p[0], p[1], p[2]), new(p[3], p[4], p[5])), new(new(p[6], p[7], p[8]), new(p[9], p[10], p[11])));
    }

    /// <summary>Forces inside a member. With second order, the axial force on the bow between the ends is in the moments.</summary>
    /// <param name="member">Index of the member.</param>
    /// <param name="atMm">Distance from its start [mm], 0 to its length.</param>
    /// <returns>The forces; at a point load, those just before it.</returns>
    public MemberForces At(int member, double atMm)
    {
        var p = EndsAt(member);
        var w = loaded[member].PerMm;
        var (n, y, z) = (p[0] + (w.X * atMm), p[1] + (w.Y * atMm), p[2] + (w.Z * atMm));
        var half = atMm * atMm / 2;
        var (aboutY, aboutZ) = (-p[4] - (atMm * p[2]) - (w.Z * half), -p[5] + (atMm * p[1]) + (w.Y * half));
        foreach (var (from, force) in loaded[member].Points)
        {
            if (from < atMm)
            {
                (n, y, z) = (n + force.X, y + force.Y, z + force.Z);
                aboutY -= force.Z * (atMm - from);
                aboutZ += force.Y * (atMm - from);
            }
        }

        if (tensionN is not null)
        {
            var (bowY, bowZ) = BowMm(member, atMm);
            aboutY -= tensionN[member] * bowZ;
            aboutZ += tensionN[member] * bowY;
        }

        return new(atMm, -n, -y, -z, -p[3], aboutY, aboutZ);
    }

    /// <summary>Forces at the places where they can be largest: ends, loads, and where a shear goes through zero.</summary>
    /// <param name="member">Index of the member.</param>
    /// <returns>The forces in order from the start.</returns>
    public IReadOnlyList<MemberForces> Extremes(int member)
    {
        var lengthMm = frame.Members[member].LengthMm;
        double[] marks = [0, .. loaded[member].Points.Select(point => point.AtMm).Order(), lengthMm];
        var places = new SortedSet<double>(marks);
        foreach (var (from, to) in marks.Zip(marks.Skip(1)).Where(pair => pair.Second > pair.First))
        {
            var inside = At(member, Math.BitIncrement(from));
            foreach (var zero in ZeroShear(inside, loaded[member].PerMm, from).Where(at => at > from && at < to))
            {
                places.Add(zero);
            }
        }

        return [.. places.Select(place => At(member, place))];
    }

    /// <summary>Movement of a place of a member, in the directions of the station.</summary>
    /// <param name="member">Index of the member.</param>
    /// <param name="share">Place as a share of the length, 0 to 1.</param>
    /// <returns>Movement [mm].</returns>
    public Point MovementMm(int member, double share)
    {
        var prepared = frame.Members[member];
        var (x, y, z) = prepared.Bow(share, LocalAt(member));
        var (bowX, bowY, bowZ) = prepared.ClampedBow(share, loaded[member]);
        return (prepared.Axes.X * (x + bowX)) + (prepared.Axes.Y * (y + bowY)) + (prepared.Axes.Z * (z + bowZ));
    }

    /// <summary>Mean axial force of a member, tension above 0 [N].</summary>
    /// <param name="member">Index of the member.</param>
    /// <returns>Force [N].</returns>
    public double MeanTensionN(int member) => (ends[(12 * member) + 6] - ends[12 * member]) / 2;

    // Movement across the axis against that of the start, local axes.
    private (double YMm, double ZMm) BowMm(int member, double atMm)
    {
        var prepared = frame.Members[member];
        var u = LocalAt(member);
        var (_, y, z) = prepared.Bow(atMm / prepared.LengthMm, u);
        return (y - u[1], z - u[2]);
    }

    private static IEnumerable<double> ZeroShear(MemberForces inside, (double X, double Y, double Z) perMm, double from)
    {
        if (perMm.Y != 0)
        {
            yield return from + (inside.ShearYN / perMm.Y);
        }

        if (perMm.Z != 0)
        {
            yield return from + (inside.ShearZN / perMm.Z);
        }
    }

    private NodeMovement MovementOf(int node)
    {
        var u = movements.AsSpan(node * 6, 6);
        return new(new(u[0], u[1], u[2]), u[3], u[4], u[5]);
    }

    // Movements of both ends in local axes; released directions as the member itself moves.
    private void PutLocal(int index, Span<double> u)
    {
        var member = frame.Members[index];
        Span<double> station = stackalloc double[12];
        movements.AsSpan(member.Member.Start * 6, 6).CopyTo(station);
        movements.AsSpan(member.Member.End * 6, 6).CopyTo(station[6..]);
        member.Axes.ToLocal(station, u);
        member.Follow(u, loaded[index].Released);
    }

    private void PutEnds(int index, Span<double> forces)
    {
        var member = frame.Members[index];
        MemberMatrix.Times(member.Local, LocalAt(index), forces);
        DenseVector.AddTimes(forces, loaded[index].Condensed, 1);
        if (tensionN is not null)
        {
            Span<double> k = stackalloc double[144];
            Span<double> product = stackalloc double[12];
            member.PutGeometricLocal(tensionN[index], k);
            MemberMatrix.Times(k, LocalAt(index), product);
            DenseVector.AddTimes(forces, product, 1);
        }
    }

    private ReadOnlySpan<double> LocalAt(int member) => local.AsSpan(12 * member, 12);

    private ReadOnlySpan<double> EndsAt(int member) => ends.AsSpan(12 * member, 12);
}

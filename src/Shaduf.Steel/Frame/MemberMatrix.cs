using System.Runtime.CompilerServices;

namespace Shaduf.Steel;

/// <summary>
/// Matrices and fixed-end forces of one beam in its local axes; order at each end: movement along x, y, z, turning
/// about x, y, z. A force or moment is what the node puts on the member.
/// </summary>
internal static class MemberMatrix
{
    private const int Size = 12;

    /// <summary>Elastic stiffness of a beam without shear deformation.</summary>
    /// <source>Bernoulli-Euler beam: Przemieniecki, Theory of Matrix Structural Analysis, 1968, without shear.</source>
    internal static double[] Elastic(FrameSection section, FrameModel model, double lengthMm)
    {
        var k = new double[Size * Size];
        Pair(k, 0, model.ElasticModulusNPerMm2 * section.AreaMm2 / lengthMm);
        Pair(k, 3, model.ShearModulusNPerMm2 * section.TorsionConstantMm4 / lengthMm);
        var bend = model.ElasticModulusNPerMm2 / (lengthMm * lengthMm * lengthMm);
        var coefficients = (12.0, 6 * lengthMm, 4 * lengthMm * lengthMm, 2 * lengthMm * lengthMm);
        Bend(k, bend * section.InertiaZMm4, coefficients, (1, 5, 1));
        Bend(k, bend * section.InertiaYMm4, coefficients, (2, 4, -1));
        return k;
    }

    /// <summary>Geometric stiffness of a beam under an axial force, tension above 0 [N].</summary>
    /// <source>Consistent form with cubic shapes: Przemieniecki 1968, chapter 15.</source>
    internal static void Geometric(double tensionN, double lengthMm, Span<double> k)
    {
        k.Clear();
        var coefficients = (36.0, 3 * lengthMm, 4 * lengthMm * lengthMm, -lengthMm * lengthMm);
        Bend(k, tensionN / (30 * lengthMm), coefficients, (1, 5, 1));
        Bend(k, tensionN / (30 * lengthMm), coefficients, (2, 4, -1));
    }

    /// <summary>Adds the end forces that hold a clamped beam under an even load [N/mm].</summary>
    /// <source>w·L/2 and w·L²/12: standard table of clamped beams.</source>
    internal static void AddSpread(Span<double> ends, (double X, double Y, double Z) perMm, double lengthMm)
    {
        AddEnds(ends, perMm, -lengthMm / 2, -lengthMm / 2);
        var moment = lengthMm * lengthMm / 12;
        AddMoments(ends, perMm, -moment, moment);
    }

    /// <summary>Adds the end forces that hold a clamped beam under a force at a distance from its start [N, mm].</summary>
    /// <source>P·b²·(3a + b)/L³ and P·a·b²/L²: standard table of clamped beams.</source>
    internal static void AddPoint(Span<double> ends, (double X, double Y, double Z) force, double atMm, double lengthMm)
    {
        var (a, b) = (atMm / lengthMm, 1 - (atMm / lengthMm));
        ends[0] -= force.X * b;
        ends[6] -= force.X * a;
        AddEnds(ends, (0, force.Y, force.Z), -b * b * ((3 * a) + b), -a * a * (a + (3 * b)));
        AddMoments(ends, force, -a * b * b * lengthMm, a * a * b * lengthMm);
    }

    /// <summary>
    /// Takes released directions out, one after another (static condensation), of a stiffness and of end forces.
    /// </summary>
    /// <returns>How each released direction follows the others; one row a direction.</returns>
    /// <exception cref="MechanismException">The releases leave the member loose.</exception>
    internal static List<ReleasedRow> Release(double[] k, FrameMember member)
    {
        var rows = new List<ReleasedRow>();
        for (var at = 0; at < Size; at++)
        {
            var release = at < 6 ? member.StartRelease : member.EndRelease;
            if (!release.HasFlag((EndRelease)(1 << (at % 6))))
            {
                continue;
            }

            var pivot = k[(at * Size) + at];
            if (!(pivot > 1e-9 * k.Max()))
            {
                throw new MechanismException($"member {member.Mark} is released so far that it is loose");
            }

            var row = k.AsSpan(at * Size, Size).ToArray();
            for (var i = 0; i < Size; i++)
            {
                for (var j = 0; j < Size; j++)
                {
                    k[(i * Size) + j] -= row[i] * row[j] / pivot;
                }
            }

            rows.Add(new(at, row, pivot));
        }

        return rows;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Times(ReadOnlySpan<double> k, ReadOnlySpan<double> vector, Span<double> product)
    {
        for (var i = 0; i < Size; i++)
        {
            var sum = 0.0;
            for (var j = 0; j < Size; j++)
            {
                sum += k[(i * Size) + j] * vector[j];
            }

            product[i] = sum;
        }
    }

    private static void Pair(double[] k, int at, double stiffness)
    {
        k[(at * Size) + at] = k[((at + 6) * Size) + at + 6] = stiffness;
        k[(at * Size) + at + 6] = k[((at + 6) * Size) + at] = -stiffness;
    }

    // One plane of bending: movement v, turning r; the sign is that of the coupling between both.
    private static void Bend(
        Span<double> k,
        double factor,
        (double Move, double Mixed, double Near, double Far) by,
        (int V, int R, int Sign) plane
    )
    {
        var (v, r, sign) = plane;
        ReadOnlySpan<int> at = [v, r, v + 6, r + 6];
        ReadOnlySpan<double> rows =
        [
            by.Move,
            sign * by.Mixed,
            -by.Move,
            sign * by.Mixed,
            sign * by.Mixed,
            by.Near,
            -sign * by.Mixed,
            by.Far,
            -by.Move,
            -sign * by.Mixed,
            by.Move,
            -sign * by.Mixed,
            sign * by.Mixed,
            by.Far,
            -sign * by.Mixed,
            by.Near,
        ];
        for (var i = 0; i < 16; i++)
        {
            k[(at[i / 4] * Size) + at[i % 4]] += factor * rows[i];
        }
    }

    private static void AddEnds(Span<double> ends, (double X, double Y, double Z) load, double start, double end)
    {
        ends[0] += load.X * start;
        ends[1] += load.Y * start;
        ends[2] += load.Z * start;
        ends[6] += load.X * end;
        ends[7] += load.Y * end;
        ends[8] += load.Z * end;
    }

    private static void AddMoments(Span<double> ends, (double X, double Y, double Z) load, double start, double end)
    {
        ends[4] -= load.Z * start;
        ends[5] += load.Y * start;
        ends[10] -= load.Z * end;
        ends[11] += load.Y * end;
    }
}

/// <summary>How one released direction follows the others.</summary>
/// <param name="At">The direction, 0 to 11.</param>
/// <param name="Row">Its row of the stiffness when it was taken out.</param>
/// <param name="Pivot">Its diagonal then.</param>
internal sealed record ReleasedRow(int At, double[] Row, double Pivot)
{
    /// <summary>Takes the direction's end force out and shares it out on the others.</summary>
    internal void Condense(Span<double> ends)
    {
        var share = ends[At] / Pivot;
        for (var i = 0; i < 12; i++)
        {
            ends[i] -= Row[i] * share;
        }
    }

    /// <summary>Movement of the released direction from those of the others and the end force before it was taken out.</summary>
    internal double Movement(ReadOnlySpan<double> movements, double endForce)
    {
        var sum = endForce;
        for (var i = 0; i < 12; i++)
        {
            sum += i == At ? 0 : Row[i] * movements[i];
        }

        return -sum / Pivot;
    }
}

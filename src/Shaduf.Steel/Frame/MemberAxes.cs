using System.Runtime.CompilerServices;
using Shaduf.Shape;

namespace Shaduf.Steel;

/// <summary>The local axes of a member as directions in the station.</summary>
/// <param name="X">From start to end.</param>
/// <param name="Y">Towards the side that the member names.</param>
/// <param name="Z">Right-handed with both.</param>
internal readonly record struct MemberAxes(Point X, Point Y, Point Z)
{
    /// <summary>Axes of a member.</summary>
    /// <exception cref="ArgumentException">It has no length, or its side lies along it.</exception>
    internal static MemberAxes Of(FrameMember member, Point from, Point to)
    {
        var along = to - from;
        var across = Cross(along, member.Towards);
        if (!(along.LengthMm > 1e-6))
        {
            throw new ArgumentException($"member {member.Mark} has no length");
        }

        if (!(across.LengthMm > 1e-9 * along.LengthMm * member.Towards.LengthMm))
        {
            throw new ArgumentException($"member {member.Mark}: the direction that sets its sides lies along it");
        }

        var x = along * (1 / along.LengthMm);
        var z = across * (1 / across.LengthMm);
        return new(x, Cross(z, x), z);
    }

    /// <summary>A vector of the station in local axes.</summary>
    internal (double X, double Y, double Z) Local(double x, double y, double z)
    {
        var vector = new Point(x, y, z);
        return (X.DotMm2(vector), Y.DotMm2(vector), Z.DotMm2(vector));
    }

    /// <summary>Turns the four vectors of a member's ends from the station into local axes.</summary>
    internal void ToLocal(ReadOnlySpan<double> station, Span<double> local)
    {
        for (var at = 0; at < 12; at += 3)
        {
            (local[at], local[at + 1], local[at + 2]) = Local(station[at], station[at + 1], station[at + 2]);
        }
    }

    /// <summary>Turns the four vectors of a member's ends from local axes into the station.</summary>
    internal void ToStation(ReadOnlySpan<double> local, Span<double> station)
    {
        for (var at = 0; at < 12; at += 3)
        {
            var vector = (X * local[at]) + (Y * local[at + 1]) + (Z * local[at + 2]);
            (station[at], station[at + 1], station[at + 2]) = (vector.XMm, vector.YMm, vector.ZMm);
        }
    }

    /// <summary>Turns a 12 x 12 matrix from local axes into the station, in place or beside it: Tᵀ·k·T.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void MatrixToStation(ReadOnlySpan<double> local, Span<double> station)
    {
        Span<double> column = stackalloc double[12];
        Span<double> turned = stackalloc double[12];
        Span<double> half = stackalloc double[144];
        for (var j = 0; j < 12; j++)
        {
            for (var i = 0; i < 12; i++)
            {
                column[i] = local[(i * 12) + j];
            }

            ToStation(column, turned);
            for (var i = 0; i < 12; i++)
            {
                half[(i * 12) + j] = turned[i];
            }
        }

        for (var i = 0; i < 12; i++)
        {
            ToStation(half.Slice(i * 12, 12), station.Slice(i * 12, 12));
        }
    }

    private static Point Cross(Point a, Point b) =>
        new((a.YMm * b.ZMm) - (a.ZMm * b.YMm), (a.ZMm * b.XMm) - (a.XMm * b.ZMm), (a.XMm * b.YMm) - (a.YMm * b.XMm));
}

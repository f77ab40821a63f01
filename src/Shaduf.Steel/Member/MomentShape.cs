using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Equivalent uniform moments C_m of a member about both axes.</summary>
/// <param name="AboutYFactor">C_my, 0.4 to 1.</param>
/// <param name="AboutZFactor">C_mz, 0.4 to 1.</param>
public readonly record struct EquivalentMoments(double AboutYFactor, double AboutZFactor)
{
    /// <summary>A member whose ends move sideways against each other.</summary>
    public static EquivalentMoments Sway { get; } = new(MomentShape.SwayFactor, MomentShape.SwayFactor);

    /// <summary>The moment as it is, all along: the safe side.</summary>
    public static EquivalentMoments Uniform { get; } = new(1, 1);
}

/// <summary>How much of its largest moment a member must be taken to have all along, when it also buckles.</summary>
public static class MomentShape
{
    /// <summary>C_m of a member in a frame that sways.</summary>
    /// <source>EN 1993-1-1:2005, annex B, table B.3</source>
    public const double SwayFactor = 0.9;

    /// <summary>
    /// C_m of a member held at both ends, from the moments at its ends and middle. The column of the table for a
    /// uniform load is used, which is never below that for a point load; for a straight diagram it is 0.6 + 0.4 ψ.
    /// </summary>
    /// <param name="startNMm">Moment at the start [N·mm], any.</param>
    /// <param name="middleNMm">Moment in the middle, signed as at the ends [N·mm], any.</param>
    /// <param name="endNMm">Moment at the end [N·mm], any.</param>
    /// <returns>C_m, 0.4 to 1; 1 without any moment.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a number.</exception>
    /// <source>EN 1993-1-1:2005, annex B, table B.3 (from memory)</source>
    public static double HeldFactor(double startNMm, double middleNMm, double endNMm)
    {
        Within.Require(startNMm, double.MinValue, double.MaxValue, "N·mm");
        Within.Require(middleNMm, double.MinValue, double.MaxValue, "N·mm");
        Within.Require(endNMm, double.MinValue, double.MaxValue, "N·mm");
        var isStart = Math.Abs(startNMm) >= Math.Abs(endNMm);
        var (larger, smaller) = isStart ? (startNMm, endNMm) : (endNMm, startNMm);
        var psi = larger == 0 ? 1 : smaller / larger;
        if (Math.Abs(middleNMm) > Math.Abs(larger))
        {
            var hog = larger / middleNMm;
            return 0.95 + (0.05 * hog * (hog < 0 && psi < 0 ? 1 + (2 * psi) : 1));
        }

        if (larger == 0)
        {
            return 1;
        }

        var sag = middleNMm / larger;
        return sag >= 0
            ? Math.Max(0.4, 0.2 + (0.8 * sag))
            : Math.Max(0.4, (0.1 * (psi < 0 ? 1 - psi : 1)) - (0.8 * sag));
    }
}

using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>What an array keeps of its modules' summed power, cause by cause: 1 keeps everything.</summary>
/// <param name="SoilingShare">Kept after dust and droppings, 0 to 1.</param>
/// <param name="MismatchShare">Kept after unequal modules in a string, 0 to 1.</param>
/// <param name="LightInducedShare">Kept after the loss of the first days in the sun, 0 to 1.</param>
/// <param name="WiringShare">Kept after the direct-current cables, 0 to 1; from the cable calculation once there is one.</param>
/// <param name="TrackingShare">Kept by the drive's search for maximum power, 0 to 1.</param>
/// <param name="AgeShare">Kept after the years in use, 0 to 1; see <see cref="KeptAtAgeShare"/>.</param>
public sealed record ArrayLosses(
    double SoilingShare,
    double MismatchShare,
    double LightInducedShare,
    double WiringShare,
    double TrackingShare,
    double AgeShare
)
{
    /// <summary>Share of the modules' summed power that reaches the drive: the product of all shares.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside 0 to 1, or NaN.</exception>
    public double KeptShare
    {
        get
        {
            Within.Require(SoilingShare, 0, 1, "");
            Within.Require(MismatchShare, 0, 1, "");
            Within.Require(LightInducedShare, 0, 1, "");
            Within.Require(WiringShare, 0, 1, "");
            Within.Require(TrackingShare, 0, 1, "");
            Within.Require(AgeShare, 0, 1, "");
            return SoilingShare * MismatchShare * LightInducedShare * WiringShare * TrackingShare * AgeShare;
        }
    }

    /// <summary>Share kept in a year of use when a module loses the same part of what is left in each year after the first.</summary>
    /// <param name="year">Year of use, counted from 1, 1 to 50.</param>
    /// <param name="lostPerYearShare">Part lost in a year, 0 to 0.1.</param>
    /// <returns>Share kept, above 0 and at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The year or the part is outside its range.</exception>
    /// <source>Definition.</source>
    public static double KeptAtAgeShare(int year, double lostPerYearShare)
    {
        Within.RequireCount(year, 1, 50);
        Within.Require(lostPerYearShare, 0, 0.1, "");
        return Math.Pow(1 - lostPerYearShare, year - 1);
    }
}

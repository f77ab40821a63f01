using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Direct-current power that a drive takes to feed its motor.</summary>
public static class DriveInput
{
    /// <summary>Power at the drive's input: the motor's over the efficiency, and the drive's own use.</summary>
    /// <param name="drive">The drive's data sheet.</param>
    /// <param name="motorW">Power at the drive's output [W], 0 to 1000000; 0 is a drive awake with its motor at rest.</param>
    /// <returns>Power [W].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of the sheet, is outside its range.</exception>
    /// <source>
    /// Definition of efficiency; own use as a constant is common practice, no source. Points of the card: straight lines
    /// between them, the nearest one's beyond; judgement, no source.
    /// </source>
    public static double DcW(DriveSheet drive, double motorW)
    {
        Within.Require(drive.EfficiencyShare, 0.5, 1, "");
        Within.Require(drive.OwnUseW, 0, 1000, "W");
        Within.Require(motorW, 0, 1_000_000, "W");
        return motorW / Efficiency(drive, motorW) + drive.OwnUseW;
    }

    private static double Efficiency(DriveSheet drive, double motorW)
    {
        if (drive.ByOutput.Count == 0)
        {
            return drive.EfficiencyShare;
        }

        OutputEfficiency? below = null;
        OutputEfficiency? above = null;
        foreach (var point in drive.ByOutput)
        {
            Within.Require(point.OutputW, 1, 1_000_000, "W");
            Within.Require(point.EfficiencyShare, 0.3, 1, "");
            below = point.OutputW <= motorW && !(point.OutputW < below?.OutputW) ? point : below;
            above = point.OutputW >= motorW && !(point.OutputW > above?.OutputW) ? point : above;
        }

        return (below, above) switch
        {
            ({ } low, { } high) when high.OutputW > low.OutputW => low.EfficiencyShare
                + (high.EfficiencyShare - low.EfficiencyShare) * (motorW - low.OutputW) / (high.OutputW - low.OutputW),
            ({ } low, _) => low.EfficiencyShare,
            (_, { } high) => high.EfficiencyShare,
            _ => drive.EfficiencyShare,
        };
    }
}

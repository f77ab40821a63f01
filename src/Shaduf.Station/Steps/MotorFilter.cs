using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>The filter between drive and motor cable.</summary>
/// <param name="Need">What the cable asks for; null for a brushless motor, whose controller's maker decides.</param>
/// <param name="Card">The card that serves; null when none is needed or none serves.</param>
/// <param name="CableM">Cable from drive to motor, drop cable included [m].</param>
/// <param name="IsRiseAssumed">Whether the drive's card is silent on its pulses.</param>
public sealed record MotorFilter(FilterNeed? Need, FilterCard? Card, double CableM, bool IsRiseAssumed)
{
    // Of ordinary transistors, when the card is silent; from memory.
    private const double UsualRiseUs = 0.1;

    // Drop when no card serves: planning values; slope filter common practice, no source; sine filter 2 to 5 %, from memory.
    private const double SlopeDropShare = 0.01;
    private const double SineDropShare = 0.05;

    /// <summary>Kind of filter.</summary>
    public FilterKind Kind => Need?.Kind ?? FilterKind.None;

    /// <summary>The kind in words.</summary>
    public string Words =>
        Kind switch
        {
            FilterKind.Slope => "slope filter (dU/dt)",
            FilterKind.Sine => "sine filter",
            _ => "no filter",
        };

    /// <summary>Drop in it at the motor's current as a share of the motor's voltage.</summary>
    public double DropShare =>
        Card?.DropShare
        ?? Kind switch
        {
            FilterKind.Slope => SlopeDropShare,
            FilterKind.Sine => SineDropShare,
            _ => 0,
        };

    /// <summary>The filter for a pump behind a drive.</summary>
    /// <param name="pump">The pump.</param>
    /// <param name="drive">The drive.</param>
    /// <param name="cableM">Cable from drive to motor, drop cable included [m].</param>
    /// <param name="shelf">The cards.</param>
    /// <returns>The filter: of the kind asked for, the smallest that bears current, voltage and cable.</returns>
    public static MotorFilter Of(PumpCard pump, DriveCard drive, double cableM, CardShelf shelf)
    {
        var motor = pump.Motor;
        if (motor.Kind == MotorKind.BrushlessDc)
        {
            return new(null, null, cableM, false);
        }

        var need = OutputFilter.For(
            drive.Sheet.WindowHighV,
            motor.RatedV,
            cableM,
            (drive.Limits.RiseUs ?? UsualRiseUs) * 1e-6,
            drive.Limits.BareM ?? double.PositiveInfinity,
            drive.Limits.SlopeM ?? double.PositiveInfinity
        );
        var card = shelf
            .All<FilterCard>()
            .Where(each =>
                each.Kind == need.Kind
                && each.LargestA >= motor.RatedA
                && each.LargestV >= motor.RatedV
                && each.LongestCableM >= cableM
            )
            .MinBy(each => each.LargestA);
        return new(need, card, cableM, drive.Limits.RiseUs is null);
    }
}

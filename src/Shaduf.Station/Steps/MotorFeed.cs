using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>The way of the power from the drive to the motor: filter and cable, both chosen.</summary>
/// <param name="CableDropShare">Drop in the cable at the motor's rated current as a share of its voltage; the limit where no cable fits.</param>
/// <param name="CableKeptShare">Share of the power into the cable that reaches the motor, at its rated current.</param>
/// <param name="FilterDropShare">Drop in the filter as a share of the motor's voltage.</param>
/// <param name="Serves">Whether there are cards of a cable and, where one is needed, of a filter for such a way.</param>
public sealed record MotorFeed(double CableDropShare, double CableKeptShare, double FilterDropShare, bool Serves)
{
    /// <summary>Filter and cable of a pump behind a drive.</summary>
    /// <param name="pump">The pump.</param>
    /// <param name="drive">The drive.</param>
    /// <param name="lift">The pipes, along which the cable hangs.</param>
    /// <param name="survey">Settled figures.</param>
    /// <param name="shelf">The cards.</param>
    /// <returns>The feed.</returns>
    /// <source>Joule's law at the motor's rated current, taken for every speed: in a pump's motor the current's square falls about as its power does.</source>
    public static MotorFeed Of(PumpCard pump, DriveCard drive, Lift lift, Survey survey, CardShelf shelf)
    {
        var cableM = Electrics.MotorCableM(survey, lift);
        var filter = MotorFilter.Of(pump, drive, cableM, shelf);
        var filterServes = filter.Need is null
            ? !(drive.Limits.BareM < cableM)
            : filter is { Kind: FilterKind.None } or { Card: not null };
        var run = CableRuns.Motor(pump.Motor, lift, survey, shelf);
        if (run.Choice.Fit is not { } fit)
        {
            var limit = run.Duty.LargestDropShare;
            return new(limit, 1 - limit, filter.DropShare, false);
        }

        var motorW = MotorInput.ElectricalW(pump.Motor, pump.Motor.ShaftKW * 1000);
        return new(fit.DropShare, motorW / (motorW + fit.LossW), filter.DropShare, filterServes);
    }
}

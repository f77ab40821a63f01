using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>A switch at the wellhead that stops the pump when a float valve at the far tank has shut.</summary>
/// <param name="StopBar">Pressure at which the pump is stopped [bar].</param>
/// <param name="RestartBar">Pressure below which it may start again [bar].</param>
/// <param name="RoomBar">Pressure between running and closed valve [bar].</param>
public sealed record PressureStop(double StopBar, double RestartBar, double RoomBar)
{
    /// <summary>Least room between running and closed-valve pressure [bar]; 1.0 can be made to work.</summary>
    public const double LeastRoomBar = 1.5;

    private const double MarginBar = 0.5;

    /// <summary>Whether a switch can tell a shut valve from a running pump.</summary>
    public bool CanTell => RoomBar >= LeastRoomBar;

    /// <summary>Setting of the switch: half a bar above the running pressure, so that it trips as early as it may.</summary>
    /// <param name="runningBar">Gauge at the wellhead at full flow [bar], 0 to 1000.</param>
    /// <param name="closedBar">Gauge at the wellhead against a shut valve at full speed [bar], 0 to 1000.</param>
    /// <returns>The setting; ask <see cref="CanTell"/> whether it serves.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>common practice, no source: half a bar away from running and from closed-valve pressure, restart one bar lower</source>
    public static PressureStop Between(double runningBar, double closedBar)
    {
        Within.Require(runningBar, 0, 1000, "bar");
        Within.Require(closedBar, 0, 1000, "bar");
        var stopBar = runningBar + MarginBar;
        return new(stopBar, Math.Max(0, stopBar - 1), closedBar - runningBar);
    }

    /// <summary>Speed at which a pump without flow just gives a head, as a share of the speed of its curve.</summary>
    /// <param name="headM">Head above the water in the well [m], 0 to 12000.</param>
    /// <param name="shutOffM">Head of the pump without flow at the speed of its curve [m], 0.1 to 5000.</param>
    /// <returns>Share of the speed; above 1 it is never reached.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>affinity: H_0 r2</source>
    public static double SpeedRatio(double headM, double shutOffM)
    {
        Within.Require(headM, 0, 12_000, "m");
        Within.Require(shutOffM, 0.1, 5000, "m");
        return Math.Sqrt(headM / shutOffM);
    }
}

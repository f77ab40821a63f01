using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

/// <summary>Invented data sheets.</summary>
internal static class Samples
{
    internal static readonly ModuleSheet Module = new(
        550,
        49.9,
        13.95,
        41.7,
        13.19,
        new(-0.0035, -0.0027, 0.00048),
        45,
        1500,
        25
    );

    internal static readonly DriveSheet Drive = new(800, 250, 750, 45, 25, 9.5, 0.96, 30, MotorKind.ThreePhase);

    internal static readonly MotorSheet Motor = new(3, 400, 7.8, MotorKind.ThreePhase, 0.77, 0.81, 50, 30);

    internal static readonly DriveSheet SmallController = new(200, 60, 180, 20, 14, 12, 0.95, 8, MotorKind.BrushlessDc);

    internal static readonly MotorSheet SmallMotor = new(0.75, 110, 9, MotorKind.BrushlessDc, 0.86, 1, 100, 30);
}

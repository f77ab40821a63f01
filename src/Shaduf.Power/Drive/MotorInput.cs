using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>
/// Electrical power that a motor takes for a shaft power. The card's efficiency fixes the loss at rated load; three
/// tenths of that loss are taken as constant, two tenths as growing with the load and five tenths with its square.
/// </summary>
public static class MotorInput
{
    /// <summary>Power at the motor's terminals.</summary>
    /// <param name="motor">The motor's data sheet.</param>
    /// <param name="shaftW">
    /// Power at the shaft [W], 0 to 1.2 times the rated one; 0 is a motor that turns unloaded, not one at rest.
    /// </param>
    /// <returns>Power [W], above the shaft power.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of the sheet, is outside its range.</exception>
    /// <source>
    /// Definition of efficiency at rated load. Constant, linear and quadratic losses are common practice; their split
    /// 0.3, 0.2, 0.5 is a planning assumption of this program, no source: it keeps the efficiency near its rated value
    /// from half load up and lets it fall below.
    /// </source>
    public static double ElectricalW(MotorSheet motor, double shaftW)
    {
        Within.Require(motor.ShaftKW, 0.05, 500, "kW");
        Within.Require(motor.EfficiencyShare, 0.3, 0.99, "");
        var ratedW = 1000 * motor.ShaftKW;
        Within.Require(shaftW, 0, 1.2 * ratedW, "W");
        var load = shaftW / ratedW;
        var ratedLossW = ratedW * (1 / motor.EfficiencyShare - 1);
        return shaftW + ratedLossW * (ConstantShare + LinearShare * load + QuadraticShare * load * load);
    }

    private const double ConstantShare = 0.3;
    private const double LinearShare = 0.2;
    private const double QuadraticShare = 0.5;
}

using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>
/// Electrical power that a motor takes for a shaft power. The card's efficiency fixes the loss at rated load; three
/// tenths of that loss are taken as constant, two tenths as growing with the load and five tenths with its square. Where
/// the card tells efficiencies at other loads, the loss goes through them.
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
    /// Definition of efficiency. Constant, linear and quadratic losses are common practice; their split 0.3, 0.2, 0.5 puts
    /// the best efficiency at 77 % of load: "usually near 75 %", US Department of Energy fact sheet on motor load and
    /// efficiency. Points of the card: the factor on that loss, straight lines between them; judgement, no source.
    /// </source>
    public static double ElectricalW(MotorSheet motor, double shaftW)
    {
        Within.Require(motor.ShaftKW, 0.05, 500, "kW");
        Within.Require(motor.EfficiencyShare, 0.3, 0.99, "");
        var ratedW = 1000 * motor.ShaftKW;
        Within.Require(shaftW, 0, 1.2 * ratedW, "W");
        var load = shaftW / ratedW;
        var ratedLossW = ratedW * (1 / motor.EfficiencyShare - 1);
        return shaftW + ratedLossW * Shape(load) * Factor(motor, load);
    }

    /// <summary>Load at which the split of losses gives the best efficiency.</summary>
    /// <returns>Load over the rated one.</returns>
    /// <source>where the constant loss equals the quadratic one</source>
    public static double BestLoadRatio() => Math.Sqrt(ConstantShare / QuadraticShare);

    private const double ConstantShare = 0.3;
    private const double LinearShare = 0.2;
    private const double QuadraticShare = 0.5;

    // Loss over that at rated load.
    private static double Shape(double load) => ConstantShare + LinearShare * load + QuadraticShare * load * load;

    // Loss of the card over that of the split: 1 at rated load, the nearest point's beyond the points.
    private static double Factor(MotorSheet motor, double load)
    {
        if (motor.ByLoad.Count == 0)
        {
            return 1;
        }

        (double Load, double Factor)? below = null;
        (double Load, double Factor)? above = null;
        foreach (var point in motor.ByLoad.Append(new(1, motor.EfficiencyShare)))
        {
            var here = (Load: point.LoadRatio, Factor: FactorAt(motor, point));
            below = here.Load <= load && !(here.Load < below?.Load) ? here : below;
            above = here.Load >= load && !(here.Load > above?.Load) ? here : above;
        }

        return (below, above) switch
        {
            ({ } low, { } high) when high.Load > low.Load => low.Factor
                + (high.Factor - low.Factor) * (load - low.Load) / (high.Load - low.Load),
            ({ } low, _) => low.Factor,
            (_, { } high) => high.Factor,
            _ => 1,
        };
    }

    private static double FactorAt(MotorSheet motor, LoadEfficiency point)
    {
        Within.Require(point.LoadRatio, 0.1, 1.2, "");
        Within.Require(point.EfficiencyShare, 0.1, 0.99, "");
        return point.LoadRatio
            * (1 / point.EfficiencyShare - 1)
            / (Shape(point.LoadRatio) * (1 / motor.EfficiencyShare - 1));
    }
}

using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>A length of pipe of one bore, with its fittings.</summary>
/// <param name="BoreM">True inside diameter [m].</param>
/// <param name="RoughnessM">Equivalent sand roughness [m].</param>
/// <param name="LengthM">Length [m].</param>
/// <param name="FittingsCoefficient">Sum of the fittings' K on the velocity in this bore.</param>
public sealed record PipeRun(double BoreM, double RoughnessM, double LengthM, double FittingsCoefficient);

/// <summary>Head lost in a run of pipe, with its intermediates.</summary>
/// <param name="VelocityMPerS">Mean velocity [m/s].</param>
/// <param name="ReynoldsNumber">Reynolds number on the bore.</param>
/// <param name="FrictionFactor">Darcy friction factor; 0 when the water is at rest.</param>
/// <param name="FrictionM">Head lost along the wall [m].</param>
/// <param name="FittingsM">Head lost in the fittings [m].</param>
public sealed record PipeLoss(
    double VelocityMPerS,
    double ReynoldsNumber,
    double FrictionFactor,
    double FrictionM,
    double FittingsM
)
{
    /// <summary>Head lost altogether [m].</summary>
    public double TotalM => FrictionM + FittingsM;
}

/// <summary>Head loss of a full round pipe.</summary>
public static class DarcyWeisbach
{
    private const string Method = "water/darcy-weisbach";
    private const double RestNumber = 1e-9;

    /// <summary>Head lost by friction and in fittings. Below a Reynolds number of 1e-9 the water is at rest.</summary>
    /// <param name="run">Bore 0.005 to 2 [m], roughness 0 to a tenth of the bore [m], length 0 to 100000 [m], fittings 0 to 10000.</param>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="kinematicViscosityM2PerS">Kinematic viscosity [m2/s], 1e-7 to 1e-3.</param>
    /// <returns>The loss [m] and what leads to it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Weisbach 1845, Darcy 1857: h_f = f (L/D) V2/(2g), h_m = K V2/(2g)</source>
    public static PipeLoss Loss(PipeRun run, double flowM3PerS, double kinematicViscosityM2PerS)
    {
        Within.Require(run.BoreM, 0.005, 2, "m");
        Within.Require(run.RoughnessM, 0, 0.1 * run.BoreM, "m");
        Within.Require(run.LengthM, 0, 100_000, "m");
        Within.Require(run.FittingsCoefficient, 0, 10_000, "(K)");
        Within.Require(flowM3PerS, 0, 10, "m3/s");
        Within.Require(kinematicViscosityM2PerS, 1e-7, 1e-3, "m2/s");
        var velocityMPerS = flowM3PerS / (Math.PI / 4 * run.BoreM * run.BoreM);
        var reynoldsNumber = velocityMPerS * run.BoreM / kinematicViscosityM2PerS;
        if (reynoldsNumber < RestNumber)
        {
            return new(velocityMPerS, reynoldsNumber, 0, 0, 0);
        }

        var velocityHeadM = velocityMPerS * velocityMPerS / (2 * Gravity.MPerS2);
        var frictionFactor = FrictionFactor.At(reynoldsNumber, run.RoughnessM / run.BoreM);
        return new(
            velocityMPerS,
            reynoldsNumber,
            frictionFactor,
            frictionFactor * run.LengthM / run.BoreM * velocityHeadM,
            run.FittingsCoefficient * velocityHeadM
        );
    }

    /// <summary>The working of the loss.</summary>
    /// <param name="run">The run, in the ranges of <see cref="Loss"/>.</param>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="kinematicViscosityM2PerS">Kinematic viscosity [m2/s], 1e-7 to 1e-3.</param>
    /// <returns>The lines, in order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Weisbach 1845, Darcy 1857; friction factor: Colebrook 1939</source>
    public static WorkingSheet Show(PipeRun run, double flowM3PerS, double kinematicViscosityM2PerS)
    {
        var loss = Loss(run, flowM3PerS, kinematicViscosityM2PerS);
        var (velocity, bore, twoG) = (loss.VelocityMPerS, run.BoreM, 2 * Gravity.MPerS2);
        return new(
            "Head lost in a pipe",
            [
                Written("V", "Q/((π/4) D²)", $"{flowM3PerS:G5}/((π/4) {bore:G5}²)", velocity, "m/s"),
                Written(
                    "Re",
                    "V D/ν",
                    $"{velocity:G5} × {bore:G5}/{kinematicViscosityM2PerS:G5}",
                    loss.ReynoldsNumber,
                    ""
                ),
                Written(
                    "f",
                    "64/Re to Re 2000; 1/√f = -2 log₁₀(ε/(3.7 D) + 2.51/(Re √f)) from 4000; a line between",
                    $"ε/D = {run.RoughnessM / bore:G5}, Re = {loss.ReynoldsNumber:G5}",
                    loss.FrictionFactor,
                    ""
                ),
                Written(
                    "h_f",
                    "f (L/D) V²/(2g)",
                    $"{loss.FrictionFactor:G5} × ({run.LengthM:G5}/{bore:G5}) × {velocity:G5}²/{twoG:G6}",
                    loss.FrictionM,
                    "m"
                ),
                Written(
                    "h_m",
                    "K V²/(2g)",
                    $"{run.FittingsCoefficient:G5} × {velocity:G5}²/{twoG:G6}",
                    loss.FittingsM,
                    "m"
                ),
                Written("h", "h_f + h_m", $"{loss.FrictionM:G5} + {loss.FittingsM:G5}", loss.TotalM, "m"),
            ]
        );
    }

    private static Line Written(string symbol, string formula, FormattableString numbers, double value, string unit) =>
        new(
            symbol,
            formula,
            numbers.ToString(CultureInfo.InvariantCulture),
            value,
            unit,
            Method,
            "Darcy-Weisbach; Colebrook 1939"
        );
}

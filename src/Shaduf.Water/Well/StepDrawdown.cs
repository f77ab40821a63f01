using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>One step of a step test: the rate held and the fall of the level at its end.</summary>
/// <param name="FlowM3PerS">Rate [m3/s].</param>
/// <param name="DrawdownM">Fall of the level below rest [m].</param>
public readonly record struct PumpedStep(double FlowM3PerS, double DrawdownM);

/// <summary>What the two coefficients of a well rest on.</summary>
public enum DrawdownBasis
{
    /// <summary>Regression over three or more different rates.</summary>
    Steps,

    /// <summary>Fewer than three different rates: well loss taken as 0, aquifer loss as the largest s/Q seen.</summary>
    TooFewSteps,

    /// <summary>
    /// The regression gave a negative coefficient (the well was still developing, or a reading is wrong) and is
    /// refused: well loss taken as 0, aquifer loss as the largest s/Q seen. Test the well again.
    /// </summary>
    RegressionRefused,
}

/// <summary>Drawdown of a pumped well: s = B Q + C Q2.</summary>
/// <param name="AquiferSPerM2">B: aquifer and linear well loss [s/m2].</param>
/// <param name="WellS2PerM5">C: well loss that grows with the square of the rate [s2/m5].</param>
/// <param name="DeterminationCoefficient">r2 of the regression of s/Q on Q [ratio]; 0 when no regression stands behind B and C.</param>
/// <param name="ResidualsM">Measured less computed drawdown of each step [m], in the order given.</param>
/// <param name="Basis">What B and C rest on.</param>
/// <param name="LargestFlowM3PerS">Largest rate tested [m3/s]; beyond it the drawdown is a guess.</param>
/// <source>Jacob 1947, s = BQ + CQ2; regression of s/Q on Q: Bierschenk 1963, Hantush 1964, as in Kruseman and de Ridder 1994, ILRI Publication 47, chapter 14</source>
public sealed record StepDrawdown(
    double AquiferSPerM2,
    double WellS2PerM5,
    double DeterminationCoefficient,
    IReadOnlyList<double> ResidualsM,
    DrawdownBasis Basis,
    double LargestFlowM3PerS
)
{
    /// <summary>The state of the well by Walton's classes; null when no regression stands behind C.</summary>
    public WaltonClass? Walton => Basis == DrawdownBasis.Steps ? WellLossClass.Walton(WellS2PerM5) : null;

    /// <summary>Fall of the pumped level below rest.</summary>
    /// <param name="flowM3PerS">Rate [m3/s], 0 to 10.</param>
    /// <returns>Drawdown [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>Jacob 1947, s = BQ + CQ2</source>
    public double DrawdownM(double flowM3PerS)
    {
        Within.Require(flowM3PerS, 0, 10, "m3/s");
        return (AquiferSPerM2 + (WellS2PerM5 * flowM3PerS)) * flowM3PerS;
    }

    /// <summary>The rate that draws the level down so far; at most 10 m3/s.</summary>
    /// <param name="drawdownM">Fall of the level below rest [m], 0 to 1000.</param>
    /// <returns>Rate [m3/s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>Jacob 1947, s = BQ + CQ2, solved for Q</source>
    public double FlowAtM3PerS(double drawdownM)
    {
        Within.Require(drawdownM, 0, 1000, "m");
        var root = AquiferSPerM2 + Math.Sqrt((AquiferSPerM2 * AquiferSPerM2) + (4 * WellS2PerM5 * drawdownM));
        return root > 0 ? Math.Min(10, 2 * drawdownM / root) : 10;
    }

    /// <summary>A well known by one reading only: a straight line through it.</summary>
    /// <param name="flowM3PerS">Rate [m3/s], 0.000001 to 1.</param>
    /// <param name="drawdownM">Drawdown at that rate [m], 0 to 500.</param>
    /// <returns>The well, with <see cref="DrawdownBasis.TooFewSteps"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>s = (s_1/Q_1) Q; common practice, no source</source>
    public static StepDrawdown FromSingle(double flowM3PerS, double drawdownM) => Fit([new(flowM3PerS, drawdownM)]);

    /// <summary>The two coefficients from the readings of a step test, by least squares of s/Q on Q.</summary>
    /// <param name="steps">One or more steps; rates 0.000001 to 1 [m3/s], drawdowns 0 to 500 [m].</param>
    /// <returns>The well, with what it rests on.</returns>
    /// <exception cref="ArgumentException">No step is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its range, or NaN.</exception>
    /// <source>Hantush-Bierschenk, Kruseman and de Ridder 1994, ILRI Publication 47, section 14.1.1</source>
    public static StepDrawdown Fit(IReadOnlyList<PumpedStep> steps)
    {
        if (steps.Count == 0)
        {
            throw new ArgumentException("a step test needs at least one step", nameof(steps));
        }

        foreach (var step in steps)
        {
            Within.Require(step.FlowM3PerS, 1e-6, 1, "m3/s", nameof(steps));
            Within.Require(step.DrawdownM, 0, 500, "m", nameof(steps));
        }

        if (steps.Select(step => step.FlowM3PerS).Distinct().Count() < 3)
        {
            return Straight(steps, DrawdownBasis.TooFewSteps);
        }

        var meanFlow = steps.Average(step => step.FlowM3PerS);
        var meanSpecific = steps.Average(Specific);
        var flowSpread = steps.Sum(step => Math.Pow(step.FlowM3PerS - meanFlow, 2));
        var specificSpread = steps.Sum(step => Math.Pow(Specific(step) - meanSpecific, 2));
        var common = steps.Sum(step => (step.FlowM3PerS - meanFlow) * (Specific(step) - meanSpecific));

        // A slope that is nothing but rounding is no slope: a straight well must not be refused for its sign.
        var slope = Math.Abs(common / flowSpread * meanFlow) <= 1e-12 * meanSpecific ? 0 : common / flowSpread;
        var intercept = meanSpecific - (slope * meanFlow);
        return slope < 0 || intercept < 0
            ? Straight(steps, DrawdownBasis.RegressionRefused)
            : From(
                steps,
                (intercept, slope),
                specificSpread > 0 ? common * common / (flowSpread * specificSpread) : 1,
                DrawdownBasis.Steps
            );
    }

    /// <summary>The working of the drawdown at a rate.</summary>
    /// <param name="flowM3PerS">Rate [m3/s], 0 to 10.</param>
    /// <returns>The lines, in order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>Jacob 1947, s = BQ + CQ2</source>
    public WorkingSheet Show(double flowM3PerS)
    {
        const string source = "Jacob 1947; Kruseman and de Ridder 1994, ch. 14";
        var (aquiferM, wellM) = (AquiferSPerM2 * flowM3PerS, WellS2PerM5 * flowM3PerS * flowM3PerS);
        return new(
            "Drawdown of the well",
            [
                Written("B Q", "B Q", $"{AquiferSPerM2:G5} × {flowM3PerS:G5}", aquiferM, source),
                Written("C Q²", "C Q²", $"{WellS2PerM5:G5} × {flowM3PerS:G5}²", wellM, source),
                Written("s", "B Q + C Q²", $"{aquiferM:G5} + {wellM:G5}", DrawdownM(flowM3PerS), source),
            ]
        );
    }

    private static Line Written(
        string symbol,
        string formula,
        FormattableString numbers,
        double valueM,
        string source
    ) =>
        new(
            symbol,
            formula,
            numbers.ToString(CultureInfo.InvariantCulture),
            valueM,
            "m",
            "water/step-drawdown",
            source
        );

    private static double Specific(PumpedStep step) => step.DrawdownM / step.FlowM3PerS;

    private static StepDrawdown Straight(IReadOnlyList<PumpedStep> steps, DrawdownBasis basis) =>
        From(steps, (steps.Max(Specific), 0), 0, basis);

    private static StepDrawdown From(
        IReadOnlyList<PumpedStep> steps,
        (double Aquifer, double Well) loss,
        double determination,
        DrawdownBasis basis
    ) =>
        new(
            loss.Aquifer,
            loss.Well,
            determination,
            [
                .. steps.Select(step =>
                    step.DrawdownM - ((loss.Aquifer + (loss.Well * step.FlowM3PerS)) * step.FlowM3PerS)
                ),
            ],
            basis,
            steps.Max(step => step.FlowM3PerS)
        );
}

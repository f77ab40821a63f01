using System.Globalization;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What the tests of a borehole or well say, or what is taken in their place.</summary>
/// <param name="YieldM3PerH">Flow that was tested, or is taken for it [m³/h].</param>
/// <param name="Steps">Drawdown at the end of a step, by flow.</param>
/// <param name="Line">Fall of the level over the time; null when there was no test at constant rate.</param>
/// <param name="StepMin">Length of a step [min].</param>
public sealed record TestedWell(double YieldM3PerH, StepDrawdown Steps, CooperJacob? Line, double StepMin)
{
    /// <summary>Time pumped on a day of full sun [h]; judgement, no source.</summary>
    public const double PumpingH = 8;

    /// <summary>Drawdown at the end of a pumping day, by the flow of the hour.</summary>
    public StepDrawdown Day { get; } =
        Line is null
            ? Steps
            : Steps with
            {
                AquiferSPerM2 =
                    Steps.AquiferSPerM2
                    + DailyPumping.DaySPerM2(Line.SlopeSPerM2, Math.Min(StepMin, PumpingH * 60) * 60, PumpingH * 3600),
            };

    /// <summary>Settles a source's tests.</summary>
    /// <param name="source">The source as the brief has it.</param>
    /// <param name="columnM">Water in the borehole at rest [m].</param>
    /// <param name="taken">Where assumptions are listed.</param>
    /// <returns>The tested well.</returns>
    internal static TestedWell Of(BoreholeBrief source, double columnM, List<Assumption> taken)
    {
        var yieldM3PerH = Yield(source, taken);
        var line = source.ConstantTest is { } test ? CooperJacob.Fit(test.FlowM3PerH / 3600, test.Readings) : null;
        var stepMin = source.StepMin ?? Assumption.DefaultOf("step-time");
        if (line is not null && source.StepMin is null)
        {
            taken.Add(Assumption.Of("step-time"));
        }

        return new(yieldM3PerH, DrawdownOf(source, yieldM3PerH, columnM, taken), line, stepMin);
    }

    // The rate held; else the largest step; else a share of what a drum or the driller says; else a hand pump's flow.
    private static double Yield(BoreholeBrief source, List<Assumption> taken) =>
        source.TestedYieldM3PerH
        ?? source.ConstantTest?.FlowM3PerH
        ?? (source.Steps.Count >= 3 ? source.Steps[^1].FlowM3PerH : (double?)null)
        ?? ShareOf("bucket-test", source.BucketTest?.FlowM3PerH, taken)
        ?? ShareOf("drillers-figure", source.DrillersFigureM3PerH, taken)
        ?? Taken(taken, "yield", Assumption.DefaultOf("yield"), Shown(Assumption.DefaultOf("yield"), "m3/h"));

    private static double? ShareOf(string id, double? figureM3PerH, List<Assumption> taken)
    {
        if (figureM3PerH is not { } figure)
        {
            return null;
        }

        var share = Assumption.DefaultOf(id);
        return Taken(
            taken,
            id,
            share * figure,
            Invariant($"{share * figure:0.##} m3/h: {share * 100:0} % of {figure:0.##} m3/h")
        );
    }

    private static StepDrawdown DrawdownOf(
        BoreholeBrief source,
        double yieldM3PerH,
        double columnM,
        List<Assumption> taken
    )
    {
        if (source.Steps.Count > 0)
        {
            return StepDrawdown.Fit([
                .. source.Steps.Select(step => new PumpedStep(step.FlowM3PerH / 3600, step.DrawdownM)),
            ]);
        }

        if (source.ConstantTest is { } test)
        {
            return StepDrawdown.FromSingle(test.FlowM3PerH / 3600, test.Readings[0].DrawdownM);
        }

        if (source.BucketTest is { DrawdownM: { } dipped } bucket)
        {
            return StepDrawdown.FromSingle(bucket.FlowM3PerH / 3600, dipped);
        }

        var drawdownM = Taken(
            taken,
            "drawdown",
            2.0 / 3 * columnM,
            Shown(2.0 / 3 * columnM, Invariant($"m at {yieldM3PerH:0.##} m3/h"))
        );
        return StepDrawdown.FromSingle(yieldM3PerH / 3600, drawdownM);
    }

    private static double Taken(List<Assumption> taken, string id, double value, string says)
    {
        taken.Add(Assumption.Of(id, says));
        return value;
    }

    private static string Shown(double value, string unit) =>
        string.Create(CultureInfo.InvariantCulture, $"{value:0.##} {unit}");
}

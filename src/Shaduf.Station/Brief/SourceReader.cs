using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the part of the brief about the borehole or well.</summary>
internal static class SourceReader
{
    /// <summary>Reads the source and holds its figures against one another.</summary>
    /// <param name="fields">The mapping <c>source</c>.</param>
    /// <returns>The source.</returns>
    public static SourceBrief Read(FieldMap fields)
    {
        var source = new SourceBrief(
            fields.Known("depth", Measure.LengthM, 1, 700, "Depth."),
            fields.Known("casing", Measure.LengthMm, 50, 4000, "Smallest inside diameter."),
            fields.Known("restLevel", Measure.LengthM, 0, 690, "Depth to the water at rest, on the day of the test."),
            fields.Known(
                "seasonalFall",
                Measure.LengthM,
                0,
                60,
                "How much lower the water stands at the end of the dry season."
            ),
            fields.Known("testedYield", Measure.FlowM3PerH, 0.05, 500, "Constant rate held in the pumping test."),
            fields.Known(
                "drillersFigure",
                Measure.FlowM3PerH,
                0.05,
                500,
                "The driller's airlift figure, when there was no test."
            ),
            fields.Known(
                "yieldShare",
                Measure.Share,
                0.1,
                0.8,
                "Share of the tested rate that may be drawn for years."
            ),
            fields.Items("steps", 0, 10, "The step test, smallest flow first.", Step),
            fields.Chosen("pumpSetting", Measure.LengthM, 1, 690, "Depth of the pump's intake."),
            fields.Known("waterTemperature", Measure.TemperatureDegC, 5, 40, "Temperature of the water.")
        );
        if (fields.AreSound("depth", "restLevel", "pumpSetting"))
        {
            Levels(fields, source);
        }

        if (fields.AreSound("steps"))
        {
            Steps(fields, source.Steps);
        }

        fields.Done();
        return source;
    }

    private static StepBrief Step(FieldMap fields)
    {
        var step = new StepBrief(
            fields.Quantity("flow", Measure.FlowM3PerH, 0.05, 500, "Flow of the step."),
            fields.Quantity("drawdown", Measure.LengthM, 0.01, 300, "Drawdown below the rest level at the step's end.")
        );
        fields.Done();
        return step;
    }

    private static void Levels(FieldMap fields, SourceBrief source)
    {
        if (source is { DepthM: null, RestLevelM: null })
        {
            fields.Complain(
                "restLevel",
                "neither depth nor rest level is known",
                "a dip with a weighted tape gives the rest level: one of the two is needed"
            );
        }

        if (source.RestLevelM >= source.DepthM)
        {
            fields.Complain(
                "restLevel",
                Invariant($"{source.RestLevelM:0.##} m is not above the bottom ({source.DepthM:0.##} m)"),
                Invariant($"less than {source.DepthM:0.##} m is accepted")
            );
        }

        if (source.PumpSettingM >= source.DepthM)
        {
            fields.Complain(
                "pumpSetting",
                Invariant($"{source.PumpSettingM:0.##} m is below the bottom ({source.DepthM:0.##} m)"),
                Invariant($"less than {source.DepthM:0.##} m is accepted")
            );
        }

        if (source.PumpSettingM <= source.RestLevelM)
        {
            fields.Complain(
                "pumpSetting",
                Invariant($"{source.PumpSettingM:0.##} m is above the water at rest ({source.RestLevelM:0.##} m)"),
                "a depth below the rest level is accepted"
            );
        }

        if (
            fields.AreSound("steps", "restLevel")
            && source.Steps.Count > 0
            && source.Steps.Max(step => step.DrawdownM) + (source.RestLevelM ?? 0) > (source.DepthM ?? double.MaxValue)
        )
        {
            fields.Complain(
                $"steps[{source.Steps.Index().MaxBy(step => step.Item.DrawdownM).Index + 1}].drawdown",
                "the deepest drawdown lies below the bottom",
                "drawdowns that end above the bottom are accepted"
            );
        }
    }

    private static void Steps(FieldMap fields, IReadOnlyList<StepBrief> steps)
    {
        for (var i = 1; i < steps.Count; i++)
        {
            if (steps[i].FlowM3PerH <= steps[i - 1].FlowM3PerH)
            {
                fields.Complain(
                    $"steps[{i + 1}].flow",
                    "the flow does not grow",
                    "steps from the smallest flow to the largest are accepted"
                );
            }

            if (steps[i].DrawdownM <= steps[i - 1].DrawdownM)
            {
                fields.Complain(
                    $"steps[{i + 1}].drawdown",
                    Invariant(
                        $"the drawdown does not grow: {steps[i - 1].DrawdownM:0.##} m, then {steps[i].DrawdownM:0.##} m"
                    ),
                    "a drawdown that grows with the flow is accepted"
                );
            }
        }
    }
}

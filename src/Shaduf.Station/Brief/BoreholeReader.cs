using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the part of the brief about the borehole or well.</summary>
internal static class BoreholeReader
{
    /// <summary>Reads the fields of a borehole.</summary>
    /// <param name="fields">The mapping <c>source</c>.</param>
    /// <param name="waterDegC">Temperature of the water [°C].</param>
    /// <returns>The borehole.</returns>
    public static BoreholeBrief Read(FieldMap fields, double? waterDegC)
    {
        var source = new BoreholeBrief(
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
            fields.Items("steps", 0, 10, "The step test, smallest flow first.", TestReader.Step),
            fields.Chosen("pumpSetting", Measure.LengthM, 1, 690, "Depth of the pump's intake."),
            waterDegC
        );
        return Construction(fields, Tests(fields, source));
    }

    /// <summary>Holds the figures of a borehole against one another.</summary>
    /// <param name="fields">The mapping <c>source</c>.</param>
    /// <param name="source">The borehole.</param>
    public static void Check(FieldMap fields, BoreholeBrief source)
    {
        if (fields.AreSound("depth", "restLevel", "pumpSetting"))
        {
            Levels(fields, source);
        }

        if (fields.AreSound("steps"))
        {
            TestReader.CheckSteps(fields, source.Steps);
        }

        if (fields.AreSound("screens", "depth", "constantTest", "testedYield"))
        {
            CheckConstruction(fields, source);
        }
    }

    private static BoreholeBrief Tests(FieldMap fields, BoreholeBrief source) =>
        source with
        {
            StepMin = fields.Known("stepTime", Measure.TimeS, 600, 86_400, "Length of each step.") / 60,
            ConstantTest = TestReader.Constant(fields),
            BucketTest = TestReader.Bucket(fields),
        };

    private static BoreholeBrief Construction(FieldMap fields, BoreholeBrief source) =>
        source with
        {
            Screens = fields.Items("screens", 0, 10, "Screens, from the top down.", Screen),
            SealM = fields.Known("seal", Measure.LengthM, 0, 100, "Depth to which the casing is grouted."),
            LicenceM3PerDay =
                fields.Known("licence", Measure.LitresPerDay, 100, 2e7, "Water a day that the licence allows.") / 1000,
            DryDays = fields.Known("dryDays", Measure.TimeDays, 1, 400, "Days of pumping without recharge."),
        };

    private static ScreenBrief Screen(FieldMap fields)
    {
        var screen = new ScreenBrief(
            fields.Quantity("top", Measure.LengthM, 0, 690, "Depth of its top."),
            fields.Quantity("bottom", Measure.LengthM, 1, 700, "Depth of its bottom.")
        );
        if (fields.AreSound("top", "bottom") && screen.BottomM <= screen.TopM)
        {
            fields.Complain(
                "bottom",
                Invariant($"{screen.BottomM:0.##} m is not below the top"),
                Invariant($"more than {screen.TopM:0.##} m is accepted")
            );
        }

        fields.Done();
        return screen;
    }

    private static void CheckConstruction(FieldMap fields, BoreholeBrief source)
    {
        for (var i = 0; i < source.Screens.Count; i++)
        {
            if (i > 0 && source.Screens[i].TopM < source.Screens[i - 1].BottomM)
            {
                fields.Complain(
                    $"screens[{i + 1}].top",
                    "above the bottom of the screen before it",
                    "screens from the top down are accepted"
                );
            }

            if (source.Screens[i].BottomM > source.DepthM)
            {
                fields.Complain(
                    $"screens[{i + 1}].bottom",
                    Invariant($"{source.Screens[i].BottomM:0.##} m is below the bottom ({source.DepthM:0.##} m)"),
                    Invariant($"at most {source.DepthM:0.##} m is accepted")
                );
            }
        }

        if (source.TestedYieldM3PerH > source.ConstantTest?.FlowM3PerH)
        {
            fields.Complain(
                "testedYield",
                Invariant(
                    $"{source.TestedYieldM3PerH:0.##} m3/h is more than the long test held ({source.ConstantTest.FlowM3PerH:0.##} m3/h)"
                ),
                Invariant($"at most {source.ConstantTest.FlowM3PerH:0.##} m3/h is accepted")
            );
        }
    }

    private static void Levels(FieldMap fields, BoreholeBrief source)
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
}

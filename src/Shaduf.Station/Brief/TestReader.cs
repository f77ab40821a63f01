using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the tests of a borehole or well.</summary>
internal static class TestReader
{
    /// <summary>Reads one step of a step test.</summary>
    /// <param name="fields">Its mapping.</param>
    /// <returns>The step.</returns>
    public static StepBrief Step(FieldMap fields)
    {
        var step = new StepBrief(
            fields.Quantity("flow", Measure.FlowM3PerH, 0.05, 500, "Flow of the step."),
            fields.Quantity("drawdown", Measure.LengthM, 0.01, 300, "Drawdown below the rest level at the step's end.")
        );
        fields.Done();
        return step;
    }

    /// <summary>Holds the steps of a test against one another.</summary>
    /// <param name="fields">The mapping <c>source</c>.</param>
    /// <param name="steps">The steps.</param>
    public static void CheckSteps(FieldMap fields, IReadOnlyList<StepBrief> steps)
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

    /// <summary>Reads the test at constant rate.</summary>
    /// <param name="source">The mapping <c>source</c>.</param>
    /// <returns>The test; null when there is none.</returns>
    public static ConstantTestBrief? Constant(FieldMap source)
    {
        if (source.OptionalMap("constantTest", "Test at constant rate: readings of its later part.") is not { } fields)
        {
            return null;
        }

        var test = new ConstantTestBrief(
            fields.Quantity("flow", Measure.FlowM3PerH, 0.05, 500, "Rate held."),
            fields.Items("readings", 3, 60, "Readings of the level.", Reading)
        );
        for (var i = 1; i < test.Readings.Count && fields.AreSound("readings"); i++)
        {
            if (test.Readings[i].TimeS <= test.Readings[i - 1].TimeS)
            {
                fields.Complain(
                    $"readings[{i + 1}].time",
                    "not after the reading before it",
                    "readings in the order of time are accepted"
                );
            }
        }

        if (
            fields.AreSound("flow", "readings")
            && test.Readings.Count >= 3
            && CooperJacob.Fit(test.FlowM3PerH / 3600, test.Readings) is null
        )
        {
            fields.Complain(
                "readings",
                "the level does not fall with time",
                "readings of a level that falls while the pump runs are accepted"
            );
        }

        fields.Done();
        return test;
    }

    /// <summary>Reads the test with a drum.</summary>
    /// <param name="source">The mapping <c>source</c>.</param>
    /// <returns>The test; null when there is none.</returns>
    public static BucketTestBrief? Bucket(FieldMap source)
    {
        if (
            source.OptionalMap("bucketTest", "Drum and watch on a borrowed pump, when there was no other test.")
            is not { } fields
        )
        {
            return null;
        }

        var test = new BucketTestBrief(
            fields.Quantity("volume", Measure.VolumeM3, 0.005, 10, "Volume of the drum."),
            fields.Quantity("time", Measure.TimeS, 2, 3600, "Time in which it filled, after an hour of pumping."),
            fields.Known("drawdown", Measure.LengthM, 0.01, 300, "Drawdown below the rest level at the end.")
        );
        if (fields.AreSound("volume", "time") && test.FlowM3PerH is < 0.05 or > 500)
        {
            fields.Complain(
                "time",
                Invariant($"the drum filled at {test.FlowM3PerH:0.###} m3/h"),
                "0.05 to 500 m3/h is accepted"
            );
        }

        fields.Done();
        return test;
    }

    private static TimedDrawdown Reading(FieldMap fields)
    {
        var reading = new TimedDrawdown(
            fields.Quantity("time", Measure.TimeS, 60, 3e6, "Time since pumping began."),
            fields.Quantity("drawdown", Measure.LengthM, 0.01, 300, "Drawdown below the rest level.")
        );
        fields.Done();
        return reading;
    }
}

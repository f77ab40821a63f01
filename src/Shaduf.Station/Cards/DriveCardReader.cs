using Shaduf.Power;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the card of a drive.</summary>
internal static class DriveCardReader
{
    public static DriveCard Read(FieldMap fields, CardReader.CardHead head)
    {
        var sheet = new DriveSheet(
            fields.Quantity("largestVoltage", Measure.VoltageV, 20, 2000, "Highest direct voltage at the input."),
            fields.Quantity("windowLow", Measure.VoltageV, 10, 2000, "Lowest voltage of the working window."),
            fields.Quantity("windowHigh", Measure.VoltageV, 10, 2000, "Highest voltage of the working window."),
            fields.Quantity(
                "largestShortCircuit",
                Measure.CurrentA,
                1,
                1000,
                "Largest short-circuit current of the array."
            ),
            fields.Quantity("largestInput", Measure.CurrentA, 1, 1000, "Largest working current at the input."),
            fields.Quantity("largestMotorCurrent", Measure.CurrentA, 0.5, 400, "Largest motor current."),
            fields.Quantity("efficiency", Measure.Share, 0.5, 0.99, "Efficiency at rated power."),
            fields.Quantity("ownUse", Measure.PowerW, 0, 500, "Power it uses itself."),
            fields.OneOf(
                "motor",
                [("three-phase", MotorKind.ThreePhase), ("brushless-dc", MotorKind.BrushlessDc)],
                "Kind of motor it drives."
            )
        )
        {
            ByOutput = fields.Items(
                "outputs",
                0,
                8,
                "Efficiency by power at the output, own use left out; left out: the efficiency at rated power.",
                Output
            ),
        };
        var lowestV = fields.Quantity("motorVoltageLow", Measure.VoltageV, 12, 700, "Lowest rated voltage of a motor.");
        var highestV = fields.Quantity(
            "motorVoltageHigh",
            Measure.VoltageV,
            12,
            700,
            "Highest rated voltage of a motor."
        );
        var limits = new DriveLimits(
            fields.Known("cableBare", Measure.LengthM, 1, 2000, "Longest motor cable without an output filter."),
            fields.Known("cableWithSlopeFilter", Measure.LengthM, 1, 2000, "Longest motor cable with a slope filter."),
            fields.Known("pulseRise", Measure.TimeUs, 0.01, 1000, "Rise time of the output's pulses."),
            fields.Known("impulseWithstand", Measure.ImpulseKV, 0.3, 20, "Impulse voltage that the input withstands.")
        );
        Check(fields, sheet, lowestV, highestV);
        if (limits is { BareM: { } bareM, SlopeM: { } slopeM } && slopeM < bareM)
        {
            fields.Contradiction("cableWithSlopeFilter", "a filter does not shorten the cable that it may feed");
        }

        return new(head.Name, head.About, head.IsPlanningData, sheet, lowestV, highestV, limits);
    }

    private static OutputEfficiency Output(FieldMap fields)
    {
        var point = new OutputEfficiency(
            fields.Quantity("power", Measure.PowerW, 10, 500_000, "Power at the output."),
            fields.Quantity("efficiency", Measure.Share, 0.3, 0.99, "Efficiency there.")
        );
        fields.Done();
        return point;
    }

    // More at the output takes more at the input.
    private static void CheckOutputs(FieldMap fields, DriveSheet sheet)
    {
        var points = sheet.ByOutput.OrderBy(point => point.OutputW).ToList();
        fields.RefuseUnless(
            points
                .Zip(points.Skip(1))
                .All(pair =>
                    pair.First.OutputW < pair.Second.OutputW
                    && pair.First.OutputW / pair.First.EfficiencyShare
                        < pair.Second.OutputW / pair.Second.EfficiencyShare
                ),
            "outputs",
            "a power stands twice, or the drive would take less for more"
        );
    }

    private static void Check(FieldMap fields, DriveSheet sheet, double lowestV, double highestV)
    {
        if (lowestV > highestV)
        {
            fields.Complain("motorVoltageHigh", "below motorVoltageLow", "a voltage not below it is accepted");
        }

        if (!fields.AreSound())
        {
            return;
        }

        CheckOutputs(fields, sheet);
        fields.RefuseUnless(
            sheet.WindowLowV < sheet.WindowHighV && sheet.WindowHighV <= sheet.LargestDcV,
            "windowHigh",
            "the window does not lie between its low end and the highest voltage at the input"
        );
        fields.RefuseUnless(
            sheet.LargestInputA <= sheet.LargestShortCircuitA,
            "largestShortCircuit",
            Invariant(
                $"an array that works at {sheet.LargestInputA:0.#} A short-circuits at more than {sheet.LargestShortCircuitA:0.#} A"
            )
        );
        var neededV = sheet.Drives == MotorKind.ThreePhase ? BusVoltage.FullSpeedV(lowestV, 0) : 0;
        fields.RefuseUnless(
            neededV <= sheet.LargestDcV,
            "motorVoltageLow",
            Invariant(
                $"a motor of {lowestV:0} V needs {neededV:0} V of bus for full speed, and the input takes {sheet.LargestDcV:0} V at most"
            )
        );
    }
}

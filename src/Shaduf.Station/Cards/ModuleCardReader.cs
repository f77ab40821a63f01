using Shaduf.Power;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the card of a module.</summary>
internal static class ModuleCardReader
{
    /// <summary>Reads the card.</summary>
    /// <param name="fields">The card's fields.</param>
    /// <param name="head">What every card has.</param>
    /// <returns>The card; to be used only when the log has no errors.</returns>
    public static ModuleCard Read(FieldMap fields, CardReader.CardHead head)
    {
        var sheet = Sheet(fields);
        var body = Body(fields);
        var holding = HoldingSheet.Read(fields, body);
        var cells = fields.OptionalOneOf<CellKind>(
            "cells",
            [("silicon-p", CellKind.PType), ("silicon-n", CellKind.NType)],
            "Kind of cell; thin film is not taken."
        );
        var series = fields.OptionalCount(
            "cellsInSeries",
            10,
            200,
            "Cells in series; of a half-cut module those of one half.",
            FieldMap.UnknownWord
        );
        if (fields.AreSound())
        {
            foreach (var contradiction in ModuleSheet.Contradictions(sheet))
            {
                fields.Contradiction("power", contradiction);
            }

            fields.RefuseUnless(body.WidthMm <= body.LengthMm, "width", "the short side is longer than the long side");
            if (series is { } count)
            {
                RefuseUnlikelyVoltage(fields, sheet, count);
                fields.RefusedBy("power", () => RefuseUnlikelyIdeality(fields, DeSotoFit.Of(sheet), count));
            }
            else
            {
                fields.RefusedBy("power", () => DeSotoFit.Of(sheet));
            }
        }

        return new(head.Name, head.About, head.IsPlanningData, sheet, body) { Cells = cells, Holding = holding };
    }

    private static ModuleSheet Sheet(FieldMap fields) =>
        new ModuleSheet(
            fields.Quantity("power", Measure.PowerW, 10, 1500, "Power at 1000 W/m2 and 25 degC."),
            fields.Quantity("openCircuit", Measure.VoltageV, 1, 200, "Open-circuit voltage at 25 degC."),
            fields.Quantity("shortCircuit", Measure.CurrentA, 0.1, 40, "Short-circuit current."),
            fields.Quantity("workingVoltage", Measure.VoltageV, 1, 200, "Voltage at maximum power."),
            fields.Quantity("workingCurrent", Measure.CurrentA, 0.1, 40, "Current at maximum power."),
            new(
                fields.Quantity("powerCoefficient", Measure.SharePerK, -0.01, 0, "Change of power with temperature."),
                fields.Quantity(
                    "voltageCoefficient",
                    Measure.SharePerK,
                    -0.01,
                    0,
                    "Change of open-circuit voltage with temperature."
                ),
                fields.Quantity(
                    "currentCoefficient",
                    Measure.SharePerK,
                    0,
                    0.005,
                    "Change of short-circuit current with temperature."
                )
            ),
            fields.Quantity(
                "operatingTemperature",
                Measure.TemperatureDegC,
                35,
                60,
                "Nominal operating cell temperature (NOCT)."
            ),
            fields.Quantity("systemVoltage", Measure.VoltageV, 50, 2000, "Highest system voltage."),
            fields.Quantity("seriesFuse", Measure.CurrentA, 5, 60, "Largest series fuse.")
        );

    private static ModuleBody Body(FieldMap fields) =>
        new ModuleBody(
            fields.Quantity("length", Measure.LengthMm, 200, 3000, "Long side of the frame."),
            fields.Quantity("width", Measure.LengthMm, 200, 1600, "Short side of the frame."),
            fields.Quantity("thickness", Measure.LengthMm, 15, 60, "Depth of the frame."),
            fields.Quantity("edgeToCell", Measure.LengthMm, 3, 80, "From the frame's outer edge to the nearest cell."),
            fields.Quantity("mass", Measure.MassKg, 1, 80, "Mass.")
        );

    private static void RefuseUnlikelyVoltage(FieldMap fields, ModuleSheet sheet, int count)
    {
        var cellV = sheet.OpenCircuitV / count;
        fields.RefuseUnless(
            cellV is >= 0.55 and <= 0.76,
            "cellsInSeries",
            Invariant(
                $"{sheet.OpenCircuitV:0.##} V of {count} cells in series is {cellV:0.00} V a cell, and crystalline silicon gives 0.55 V to 0.76 V; of a half-cut module the cells of one half count"
            )
        );
    }

    // Fits of sound sheets lie between 0.8 and 1.5; 0.7 to 2 is judgement, no source.
    private static void RefuseUnlikelyIdeality(FieldMap fields, ModuleFit fit, int count)
    {
        var ideality = fit.Module.Reference.IdealityV / (count * CellThermalV);
        fields.RefuseUnless(
            ideality is >= 0.7 and <= 2,
            "voltageCoefficient",
            Invariant(
                $"{count} cells in series whose voltage falls like this have an ideality of {ideality:0.00}, and silicon has 0.7 to 2: look at the coefficient and at the count of cells"
            )
        );
    }

    // kT/q at 25 degC.
    private const double CellThermalV = 0.025693;
}

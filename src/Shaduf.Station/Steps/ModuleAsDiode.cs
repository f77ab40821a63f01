using Shaduf.Power;
using Shaduf.Sun;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The chosen module as one diode: what the card's figures make of it, shown and checked.</summary>
internal static class ModuleAsDiode
{
    // Between the card's power coefficient and the one that its other figures make.
    private const double MostGapPerK = 0.0005;

    /// <summary>Whether the card's figures agree with one another.</summary>
    /// <param name="module">The module.</param>
    /// <returns>The finding.</returns>
    public static Finding Finding(ModuleCard module)
    {
        var fit = DeSotoFit.Of(module.Sheet);
        var gapPerK = Math.Abs(fit.PowerPerK - module.Sheet.Coefficients.PowerPerK);
        var fitted = fit.IsExact
            ? "one diode goes through all figures of the card"
            : "one diode goes through the card's figures but for voltage and current at maximum power, whose product it keeps";
        return new(
            "array/module-diode",
            fit.IsExact && gapPerK <= MostGapPerK ? FindingStatus.Holds : FindingStatus.Look,
            Invariant(
                $"{module.Name}: {fitted}; by it a kelvin costs {-fit.PowerPerK * 100:0.00} % of the power, by the card's own coefficient {-module.Sheet.Coefficients.PowerPerK * 100:0.00} %"
            ),
            -fit.PowerPerK * 100,
            -module.Sheet.Coefficients.PowerPerK * 100,
            "%/K",
            "De Soto, Klein, Beckman 2006; a difference of 0.05 %/K is judgement, no source"
        );
    }

    /// <summary>The diode's numbers, and its power on a bright warm hour beside the rule of thumb.</summary>
    /// <param name="module">The module.</param>
    /// <returns>The working.</returns>
    public static WorkingSheet Show(ModuleCard module)
    {
        var (sheet, diode) = (module.Sheet, DeSotoFit.Of(module.Sheet).Module);
        var reference = diode.Reference;
        const double lightWPerM2 = 800;
        const double airDegC = 30;
        var cellDegC = CellTemperature.DegCByNoct(lightWPerM2, airDegC, sheet.NoctDegC);
        Line Number(string symbol, string says, double value, string unit) =>
            new(symbol, says, "from the card", value, unit, "power/de-soto-fit", "De Soto 2006, section 2.2");
        return new(
            $"Module {module.Name} as one diode, at 1000 W/m2 and 25 degC; its power on a bright warm hour",
            [
                Number("I_L", "current of the light", reference.LightA, "A"),
                Number("I_o x 1e12", "saturation current", reference.SaturationA * 1e12, "pA"),
                Number("R_s", "resistance in series", reference.SeriesOhm, "ohm"),
                Number("g_sh", "conductance beside it", reference.ShuntPerOhm, "1/ohm"),
                Number("a", "ideality voltage", reference.IdealityV, "V"),
                new(
                    "T_c",
                    "T_a + (NOCT - 20) G / 800",
                    Invariant($"{airDegC:0} + ({sheet.NoctDegC:0} - 20) x {lightWPerM2:0} / 800"),
                    cellDegC,
                    "degC",
                    "sun/cell-temperature",
                    "module card"
                ),
                new(
                    "P",
                    "most of I x V",
                    Invariant($"{lightWPerM2:0} W/m2, cell at {cellDegC:0.0} degC"),
                    DeSoto.MaximumPowerW(diode, lightWPerM2, cellDegC),
                    "W",
                    "power/single-diode",
                    "De Soto 2006"
                ),
                new(
                    "P by rule of thumb",
                    "P_rated (G/1000) (1 + gamma (T_c - 25))",
                    Invariant(
                        $"{sheet.RatedW:0} x {lightWPerM2 / 1000:0.0} x (1 - {-sheet.Coefficients.PowerPerK:0.0000} x {cellDegC - 25:0.0})"
                    ),
                    sheet.RatedW * lightWPerM2 / 1000 * (1 + (sheet.Coefficients.PowerPerK * (cellDegC - 25))),
                    "W",
                    "power/de-soto",
                    "definition of the power coefficient; not used"
                ),
            ]
        );
    }
}

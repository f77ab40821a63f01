using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Power;

/// <summary>A module's single diode as its data sheet has it.</summary>
/// <param name="Module">The diode at 1000 W/m² and 25 °C.</param>
/// <param name="IsExact">
/// Whether it goes through all figures of the sheet; otherwise through all but voltage and current at maximum power,
/// whose product it keeps.
/// </param>
/// <param name="PowerPerK">Change of maximum power around 25 °C that follows from it [1/K].</param>
public sealed record ModuleFit(DeSotoModule Module, bool IsExact, double PowerPerK);

/// <summary>
/// The single diode of a data sheet. For a given ideality and series resistance the other three numbers follow from
/// short circuit, open circuit and maximum power by a linear system, so that two nested searches, each inside a bracket,
/// find what a search in five unknowns often does not.
/// </summary>
public static class DeSotoFit
{
    /// <summary>Most that the voltage at maximum power may miss the sheet when no exact fit exists [share].</summary>
    public const double MostVoltageMissShare = 0.02;

    private const double WarmerK = 2;
    private const int SeriesCells = 64;
    private const int Halvings = 60;

    // How far around its closed form the ideality is sought.
    private const double IdealityRoomShare = 0.05;

    /// <summary>Fits the diode.</summary>
    /// <param name="sheet">The data sheet, without contradictions (<see cref="ModuleSheet.Contradictions"/>).</param>
    /// <returns>The fit.</returns>
    /// <exception cref="ArgumentException">No single diode has these figures, or the sheet contradicts itself.</exception>
    /// <source>
    /// De Soto, Klein, Beckman, Solar Energy 80, 2006, section 2.2: the five conditions. The nested search, and the fit
    /// without shunt where the five conditions ask for a negative one, are this project's own.
    /// </source>
    public static ModuleFit Of(ModuleSheet sheet)
    {
        if (ModuleSheet.Contradictions(sheet) is [var contradiction, ..])
        {
            throw new ArgumentException(contradiction, nameof(sheet));
        }

        return Sought(sheet, Exact) is { ShuntPerOhm: >= 0 } exact
            ? Judged(sheet, exact, isExact: true)
            : Judged(sheet, Sought(sheet, WithoutShunt) ?? throw Impossible(sheet), isExact: false);
    }

    private static ModuleFit Judged(ModuleSheet sheet, DiodeState diode, bool isExact)
    {
        var module = new DeSotoModule(diode, sheet.ShortCircuitA * sheet.Coefficients.CurrentPerK);
        var point = SingleDiode.Peak(diode);
        if (Math.Abs(point.VoltageV - sheet.MaximumPowerV) > MostVoltageMissShare * sheet.MaximumPowerV)
        {
            throw new ArgumentException(
                Invariant(
                    $"no module has these figures: with this open-circuit voltage, short-circuit current and voltage coefficient {point.PowerW:0.#} W come at {point.VoltageV:0.0} V and {point.CurrentA:0.00} A, not at {sheet.MaximumPowerV} V and {sheet.MaximumPowerA} A"
                ),
                nameof(sheet)
            );
        }

        var warmerW = SingleDiode.Peak(DeSoto.Moved(module, 1, WarmerK)).PowerW;
        return new(module, isExact, ((warmerW / point.PowerW) - 1) / WarmerK);
    }

    private static ArgumentException Impossible(ModuleSheet sheet)
    {
        var mostW = SingleDiode.Peak(Bare(sheet, ClosedIdealityV(sheet), 0)).PowerW;
        return new(
            Invariant(
                $"no module has these figures: with this open-circuit voltage, short-circuit current and voltage coefficient at most {mostW:0.#} W come, not {sheet.MaximumPowerV * sheet.MaximumPowerA:0.#} W"
            ),
            nameof(sheet)
        );
    }

    // The ideality at which the open-circuit voltage moves with temperature as the sheet says. Where there is no diode
    // for an ideality, a smaller one is needed.
    private static DiodeState? Sought(ModuleSheet sheet, Func<ModuleSheet, double, DiodeState?> diodeAt)
    {
        var closedV = ClosedIdealityV(sheet);
        var (low, high) = (closedV * (1 - IdealityRoomShare), closedV * (1 + IdealityRoomShare));
        DiodeState? found = null;
        for (var round = 0; round < Halvings; round++)
        {
            var middle = (low + high) / 2;
            if (diodeAt(sheet, middle) is { } diode && WarmedExcessA(sheet, diode) >= 0)
            {
                (low, found) = (middle, diode);
            }
            else
            {
                high = middle;
            }
        }

        return found is { } last && Math.Abs(WarmedExcessA(sheet, last)) <= 1e-9 * sheet.ShortCircuitA ? found : null;
    }

    // Neglecting the shunt, the fifth condition gives the ideality in closed form.
    private static double ClosedIdealityV(ModuleSheet sheet) =>
        sheet.OpenCircuitV
        * ((1 / DeSoto.ReferenceK) - sheet.Coefficients.VoltagePerK)
        / (DeSoto.SaturationGrowthPerK - sheet.Coefficients.CurrentPerK);

    // Fifth condition: current left at the open-circuit voltage of two kelvin more.
    private static double WarmedExcessA(ModuleSheet sheet, DiodeState diode)
    {
        var module = new DeSotoModule(diode, sheet.ShortCircuitA * sheet.Coefficients.CurrentPerK);
        var warmer = DeSoto.Moved(module, 1, WarmerK);
        var voltageV = sheet.OpenCircuitV * (1 + (WarmerK * sheet.Coefficients.VoltagePerK));
        return warmer.LightA
            - (warmer.SaturationA * (Math.Exp(voltageV / warmer.IdealityV) - 1))
            - (voltageV * warmer.ShuntPerOhm);
    }

    private static DiodeState? Exact(ModuleSheet sheet, double idealityV)
    {
        var mostOhm = (sheet.OpenCircuitV - sheet.MaximumPowerV) / sheet.MaximumPowerA;
        var low = 0.0;
        var (diode, excess) = Through(sheet, idealityV, low);
        for (var cell = 1; cell < SeriesCells; cell++)
        {
            var high = mostOhm * cell / SeriesCells;
            var (next, nextExcess) = Through(sheet, idealityV, high);
            if (excess * nextExcess <= 0 && diode.SaturationA > 0)
            {
                return Halved(sheet, idealityV, (low, high), excess);
            }

            (low, diode, excess) = (high, next, nextExcess);
        }

        return null;
    }

    private static DiodeState? Halved(
        ModuleSheet sheet,
        double idealityV,
        (double Low, double High) seriesOhm,
        double lowExcess
    )
    {
        var (low, high) = seriesOhm;
        for (var round = 0; round < Halvings; round++)
        {
            var middle = (low + high) / 2;
            (low, high) = Through(sheet, idealityV, middle).ExcessA * lowExcess > 0 ? (middle, high) : (low, middle);
        }

        var (diode, _) = Through(sheet, idealityV, low);
        return diode is { SaturationA: > 0, LightA: > 0 } ? diode : null;
    }

    // The diode through short circuit, open circuit and maximum power, linear in the scaled saturation current and the
    // shunt; and by how much its power misses being greatest there (fourth condition).
    private static (DiodeState Diode, double ExcessA) Through(ModuleSheet sheet, double idealityV, double seriesOhm)
    {
        var (openV, shortA, bestV, bestA) = (
            sheet.OpenCircuitV,
            sheet.ShortCircuitA,
            sheet.MaximumPowerV,
            sheet.MaximumPowerA
        );
        var (shortU, bestU) = (shortA * seriesOhm, bestV + (bestA * seriesOhm));
        var (shortGrowth, bestGrowth) = (
            1 - Math.Exp((shortU - openV) / idealityV),
            1 - Math.Exp((bestU - openV) / idealityV)
        );
        var determinant = (shortGrowth * (openV - bestU)) - (bestGrowth * (openV - shortU));
        var scaledA = ((shortA * (openV - bestU)) - (bestA * (openV - shortU))) / determinant;
        var shuntPerOhm = ((shortGrowth * bestA) - (bestGrowth * shortA)) / determinant;
        var saturationA = scaledA * Math.Exp(-openV / idealityV);
        var slopePerOhm = (scaledA / idealityV * (1 - bestGrowth)) + shuntPerOhm;
        return (
            new(scaledA - saturationA + (shuntPerOhm * openV), saturationA, seriesOhm, shuntPerOhm, idealityV),
            bestA - (slopePerOhm * (bestV - (bestA * seriesOhm)))
        );
    }

    // Without shunt, as much series resistance as leaves the sheet's power.
    private static DiodeState? WithoutShunt(ModuleSheet sheet, double idealityV)
    {
        var powerW = sheet.MaximumPowerV * sheet.MaximumPowerA;
        var (low, high) = (0.0, (sheet.OpenCircuitV - sheet.MaximumPowerV) / sheet.MaximumPowerA);
        if (SingleDiode.Peak(Bare(sheet, idealityV, low)).PowerW < powerW)
        {
            return null;
        }

        for (var round = 0; round < Halvings; round++)
        {
            var middle = (low + high) / 2;
            (low, high) =
                SingleDiode.Peak(Bare(sheet, idealityV, middle)).PowerW > powerW ? (middle, high) : (low, middle);
        }

        return Bare(sheet, idealityV, low);
    }

    // The diode through short circuit and open circuit, without shunt.
    private static DiodeState Bare(ModuleSheet sheet, double idealityV, double seriesOhm)
    {
        var scaledA =
            sheet.ShortCircuitA / (1 - Math.Exp(((sheet.ShortCircuitA * seriesOhm) - sheet.OpenCircuitV) / idealityV));
        var saturationA = scaledA * Math.Exp(-sheet.OpenCircuitV / idealityV);
        return new(scaledA - saturationA, saturationA, seriesOhm, 0, idealityV);
    }
}

using System.Collections.Immutable;
using static System.FormattableString;

namespace Shaduf.Power;

/// <summary>How a module's figures move with cell temperature, as shares of the figure at 25 °C (not per cent).</summary>
/// <param name="PowerPerK">Change of maximum power [1/K], -0.006 to 0.</param>
/// <param name="VoltagePerK">Change of open-circuit voltage [1/K], -0.006 to 0.</param>
/// <param name="CurrentPerK">Change of short-circuit current [1/K], 0 to 0.002.</param>
public readonly record struct ModuleCoefficients(double PowerPerK, double VoltagePerK, double CurrentPerK);

/// <summary>One module's data sheet at standard test conditions (1000 W/m², 25 °C of cell, air mass 1.5).</summary>
/// <param name="RatedW">Maximum power [W], 1 to 2000.</param>
/// <param name="OpenCircuitV">Open-circuit voltage [V], 1 to 500.</param>
/// <param name="ShortCircuitA">Short-circuit current [A], 0.1 to 50.</param>
/// <param name="MaximumPowerV">Voltage at maximum power [V], 1 to 500.</param>
/// <param name="MaximumPowerA">Current at maximum power [A], 0.1 to 50.</param>
/// <param name="Coefficients">Temperature coefficients.</param>
/// <param name="NoctDegC">Cell temperature at 800 W/m², 20 °C of air and 1 m/s of wind [°C], 30 to 65.</param>
/// <param name="SystemV">Largest system voltage [V], 50 to 2000.</param>
/// <param name="SeriesFuseA">Largest series fuse [A], 1 to 100.</param>
public sealed record ModuleSheet(
    double RatedW,
    double OpenCircuitV,
    double ShortCircuitA,
    double MaximumPowerV,
    double MaximumPowerA,
    ModuleCoefficients Coefficients,
    double NoctDegC,
    double SystemV,
    double SeriesFuseA
)
{
    /// <summary>Says where a data sheet leaves its ranges or contradicts itself.</summary>
    /// <param name="sheet">The data sheet.</param>
    /// <returns>One plain sentence for each contradiction; empty when the sheet is sound. NaN is a contradiction.</returns>
    /// <source>Definitions of IEC 61215 and IEC 60891; the 1 % of rounding and the fill factors of crystalline silicon
    /// are common practice, no source.</source>
    public static ImmutableArray<string> Contradictions(ModuleSheet sheet)
    {
        var outside = OutsideRanges(sheet).ToImmutableArray();
        return outside.IsEmpty ? [.. AgainstItself(sheet)] : outside;
    }

    private static IEnumerable<string> OutsideRanges(ModuleSheet sheet)
    {
        (string What, double Value, double Lowest, double Highest, string Unit)[] ranges =
        [
            ("the maximum power", sheet.RatedW, 1, 2000, "W"),
            ("the open-circuit voltage", sheet.OpenCircuitV, 1, 500, "V"),
            ("the short-circuit current", sheet.ShortCircuitA, 0.1, 50, "A"),
            ("the voltage at maximum power", sheet.MaximumPowerV, 1, 500, "V"),
            ("the current at maximum power", sheet.MaximumPowerA, 0.1, 50, "A"),
            ("the power coefficient", sheet.Coefficients.PowerPerK, -0.006, 0, "1/K (not per cent)"),
            ("the voltage coefficient", sheet.Coefficients.VoltagePerK, -0.006, 0, "1/K (not per cent)"),
            ("the current coefficient", sheet.Coefficients.CurrentPerK, 0, 0.002, "1/K (not per cent)"),
            ("the nominal operating cell temperature", sheet.NoctDegC, 30, 65, "°C"),
            ("the system voltage", sheet.SystemV, 50, 2000, "V"),
            ("the largest series fuse", sheet.SeriesFuseA, 1, 100, "A"),
        ];
        return ranges
            .Where(range => !(range.Value >= range.Lowest && range.Value <= range.Highest))
            .Select(range =>
                Invariant($"{range.What} is {range.Value}; believable: {range.Lowest} to {range.Highest} {range.Unit}")
            );
    }

    private static IEnumerable<string> AgainstItself(ModuleSheet sheet)
    {
        if (sheet.ShortCircuitA <= sheet.MaximumPowerA)
        {
            yield return Invariant(
                $"the short-circuit current {sheet.ShortCircuitA} A is not above the current at maximum power {sheet.MaximumPowerA} A"
            );
        }

        if (sheet.OpenCircuitV <= sheet.MaximumPowerV)
        {
            yield return Invariant(
                $"the open-circuit voltage {sheet.OpenCircuitV} V is not above the voltage at maximum power {sheet.MaximumPowerV} V"
            );
        }

        var productW = sheet.MaximumPowerV * sheet.MaximumPowerA;
        if (Math.Abs(sheet.RatedW - productW) > 0.01 * sheet.RatedW)
        {
            yield return Invariant(
                $"the maximum power {sheet.RatedW} W is not its voltage times its current, {productW:0.#} W, within 1 %"
            );
        }

        var fillFactor = sheet.RatedW / (sheet.OpenCircuitV * sheet.ShortCircuitA);
        if (fillFactor is < 0.65 or > 0.86)
        {
            yield return Invariant(
                $"the fill factor is {fillFactor:0.000}; crystalline silicon lies between 0.65 and 0.86"
            );
        }

        if (sheet.OpenCircuitV >= sheet.SystemV)
        {
            yield return Invariant(
                $"one module's open-circuit voltage {sheet.OpenCircuitV} V is not below its system voltage {sheet.SystemV} V"
            );
        }
    }
}

using Shaduf.Power;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The calculations of the electrics, written out.</summary>
internal static class ElectricWorking
{
    /// <summary>Strings, drive and protection, then each cable.</summary>
    /// <param name="electrics">The electrics.</param>
    /// <param name="choice">The choice.</param>
    /// <param name="coldDegC">Record low [°C].</param>
    /// <returns>The sheets.</returns>
    public static IEnumerable<WorkingSheet> Show(Electrics electrics, Choice choice, double coldDegC)
    {
        yield return new("Strings and drive", [.. Strings(electrics, choice, coldDegC), .. Drive(electrics, choice)]);
        yield return new("Protection", [.. Protect(electrics, choice)]);
        foreach (var cable in electrics.Cables)
        {
            if (cable.Choice.Fit is { } fit)
            {
                var sheet = CableSize.Show(cable.Duty, fit);
                yield return sheet with
                {
                    Title = $"{sheet.Title}: {cable.Name}",
                };
            }
        }
    }

    private static IEnumerable<Line> Strings(Electrics electrics, Choice choice, double coldDegC)
    {
        var (module, count) = (choice.Module.Sheet, choice.SeriesCount);
        var perK = module.Coefficients.PowerPerK - module.Coefficients.CurrentPerK;
        yield return new(
            "Voc,cold",
            "N Voc (1 + β (Tmin - 25))",
            Invariant(
                $"{count} · {module.OpenCircuitV:0.##} (1 + {module.Coefficients.VoltagePerK:0.00000} ({coldDegC:0.#} - 25))"
            ),
            electrics.ColdV,
            "V",
            "power/string-voltage",
            "IEC 62548, NEC 690.7(A)"
        );
        yield return new(
            "Vmp,hot",
            "N Vmp (1 + (γ - α) (Tc - 25))",
            Invariant($"{count} · {module.MaximumPowerV:0.##} (1 + {perK:0.00000} ({electrics.HotCellDegC:0.#} - 25))"),
            electrics.HotV,
            "V",
            "power/string-voltage",
            "definition of the coefficients"
        );
        yield return new(
            "Vmp,aged",
            "(1 - 0.0025 n) Vmp,hot",
            Invariant($"(1 - 0.0025 · {electrics.AgeYears}) {electrics.HotV:0.0}"),
            electrics.AgedV,
            "V",
            "power/string-voltage",
            "planning assumption, from memory"
        );
        yield return new(
            "I_array",
            "1.25 Np Isc",
            Invariant($"1.25 · {choice.StringCount} · {module.ShortCircuitA:0.##}"),
            electrics.Protection.IsolatorA,
            "A",
            "power/array-current",
            "IEC 62548, NEC 690.8(A)(1)"
        );
    }

    private static IEnumerable<Line> Drive(Electrics electrics, Choice choice)
    {
        var (drive, motor) = (choice.Drive.Sheet, choice.Pump.Motor);
        yield return new(
            "I_drive",
            "I_largest · derating",
            Invariant($"{drive.LargestMotorA:0.##} · {electrics.DeratingShare:0.0000}"),
            drive.LargestMotorA * electrics.DeratingShare,
            "A",
            "power/drive-derating",
            "drive makers' manuals"
        );
        if (motor.Kind != MotorKind.ThreePhase)
        {
            yield break;
        }

        yield return new(
            "Vdc",
            "Vmp,aged (1 - drop)",
            Invariant($"{electrics.AgedV:0.0} (1 - {electrics.DirectDropShare:0.0000})"),
            electrics.AgedV * (1 - electrics.DirectDropShare),
            "V",
            "power/bus-voltage",
            "Ohm's law"
        );
        yield return new(
            "Vdc,full",
            "√2 U (1 + d)",
            Invariant($"√2 · {motor.RatedV:0.#} (1 + {electrics.MotorDropShare:0.0000})"),
            BusVoltage.FullSpeedV(motor.RatedV, electrics.MotorDropShare),
            "V",
            "power/bus-voltage",
            "space-vector modulation"
        );
        if (electrics.Filter.Need is { } need)
        {
            yield return new(
                "l_c",
                "v t_r/2",
                Invariant($"{OutputFilter.WaveMPerS / 1e6:0} m/µs"),
                need.CriticalM,
                "m",
                "power/output-filter",
                "travelling waves"
            );
            yield return new(
                "Û",
                "V_dc (1 + min(1, l/l_c))",
                Invariant($"{drive.WindowHighV:0} (1 + min(1, {electrics.Filter.CableM:0.#}/{need.CriticalM:0.#}))"),
                need.PeakV,
                "V",
                "power/output-filter",
                "travelling waves"
            );
        }
    }

    private static IEnumerable<Line> Protect(Electrics electrics, Choice choice)
    {
        var (module, protection) = (choice.Module.Sheet, electrics.Protection);
        yield return new(
            "I_reverse",
            "(Np - 1) Isc",
            Invariant(
                $"({choice.StringCount} - 1) {module.ShortCircuitA:0.##}, module bears {module.SeriesFuseA:0.#} A"
            ),
            electrics.Fuse.ReverseA,
            "A",
            "power/string-fuse",
            "IEC 62548"
        );
        yield return new(
            "Ucpv",
            "max(Voc,cold, 1.2 N Voc)",
            Invariant($"max({electrics.ColdV:0.0}, 1.2 · {choice.SeriesCount} · {module.OpenCircuitV:0.##})"),
            protection.DirectNeed.LeastContinuousV,
            "V",
            "power/surge-protection",
            "IEC 61643-32"
        );
        yield return new(
            "Up",
            "0.8 Uw",
            Invariant($"0.8 · {protection.DirectWithstandKV:0.#} kV"),
            protection.DirectNeed.MostLetThroughKV,
            "kV",
            "power/surge-protection",
            choice.Drive.Limits.WithstandKV is null ? "IEC 60664-1, table F.1" : "drive card"
        );
        yield return new(
            "S frames",
            "max(I √t/k, least)",
            Invariant(
                $"max({protection.FaultA:0.#} √{Protection.FaultS:0}/{Protection.ApartCoefficient:0}, {protection.FrameEarth.LeastMm2:0.#})"
            ),
            Math.Max(protection.FrameEarth.AdiabaticMm2, protection.FrameEarth.LeastMm2),
            "mm²",
            "power/equipment-earth",
            "IEC 60364-5-54, 543.1.2"
        );
        yield return new(
            "S motor",
            "I √t/k",
            Invariant($"{protection.FaultA:0.#} √{Protection.FaultS:0}/{Protection.CoreCoefficient:0}"),
            protection.MotorEarth.AdiabaticMm2,
            "mm²",
            "power/equipment-earth",
            "IEC 60364-5-54, 543.1.2"
        );
    }
}

using System.Collections.Immutable;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Power;

/// <summary>What a cable does along one stretch of its way.</summary>
/// <param name="Stretch">The stretch.</param>
/// <param name="AmpacityA">Current that it may carry here [A], 0.01 to 10000.</param>
/// <param name="ConductorDegC">Temperature of its conductor at the working current [°C], -40 to 120.</param>
/// <param name="Impedance">Resistance and reactance at that temperature and the duty's frequency.</param>
/// <param name="DropV">Drop [V], 0 to 2000.</param>
/// <param name="LossW">Power turned to heat [W], 0 to 1000000.</param>
public sealed record StretchFit(
    CableStretch Stretch,
    double AmpacityA,
    double ConductorDegC,
    LineImpedance Impedance,
    double DropV,
    double LossW
);

/// <summary>A cable that does its duty, with the figures that prove it.</summary>
/// <param name="Option">The cable.</param>
/// <param name="Stretches">Its figures stretch by stretch.</param>
/// <param name="DropShare">Drop of the whole way as a share of the duty's voltage, 0 to 1.</param>
public sealed record CableFit(CableOption Option, ImmutableArray<StretchFit> Stretches, double DropShare)
{
    /// <summary>Current that it may carry where it lies worst [A].</summary>
    public double AmpacityA => Stretches.Min(each => each.AmpacityA);

    /// <summary>Drop of the whole way [V].</summary>
    public double DropV => Stretches.Sum(each => each.DropV);

    /// <summary>Power turned to heat along the whole way [W].</summary>
    public double LossW => Stretches.Sum(each => each.LossW);
}

/// <summary>A cable that does not do its duty.</summary>
/// <param name="Option">The cable.</param>
/// <param name="Why">The limit that it breaks, in plain words.</param>
public sealed record CableRejection(CableOption Option, string Why);

/// <summary>The smallest cable that does its duty, and why each smaller one does not.</summary>
/// <param name="Fit">The chosen cable; null when none of the options fits.</param>
/// <param name="Rejected">Options smaller than the chosen one, or all of them, smallest first.</param>
public sealed record CableChoice(CableFit? Fit, ImmutableArray<CableRejection> Rejected);

/// <summary>The smallest cable for a current, a length and a largest drop.</summary>
public static class CableSize
{
    /// <summary>Tries the options from the smallest size up and takes the first that holds current and drop.</summary>
    /// <param name="options">Cables that could be bought; of one size, the one named first in the alphabet is tried first.</param>
    /// <param name="duty">What the cable must do.</param>
    /// <returns>The choice; without a fit when no option does the duty.</returns>
    /// <exception cref="ArgumentException">There are no options.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure of the duty or of an option is outside its range.</exception>
    /// <source>IEC 60364-5-52:2009, 523 (current) and 525 (drop).</source>
    public static CableChoice Smallest(IReadOnlyList<CableOption> options, CableDuty duty)
    {
        if (options.Count == 0)
        {
            throw new ArgumentException("There is no cable to choose from.", nameof(options));
        }

        RequireDuty(duty);
        var rejected = ImmutableArray.CreateBuilder<CableRejection>();
        foreach (var option in options.OrderBy(o => o.SizeMm2).ThenBy(o => o.Name, StringComparer.Ordinal))
        {
            Within.Require(option.AmpacityA, 1, 10_000, "A");
            var worst = duty.Stretches.MinBy(stretch => stretch.LayingFactor)!;
            if (option.AmpacityA * worst.LayingFactor < duty.LeastAmpacityA)
            {
                rejected.Add(
                    new(
                        option,
                        Invariant(
                            $"it may carry {option.AmpacityA * worst.LayingFactor:0.#} A {worst.Where}, less than {duty.LeastAmpacityA:0.##} A"
                        )
                    )
                );
                continue;
            }

            var fit = Measure(option, duty);
            if (fit.DropShare <= duty.LargestDropShare)
            {
                return new(fit, rejected.ToImmutable());
            }

            rejected.Add(
                new(
                    option,
                    Invariant(
                        $"it drops {fit.DropV:0.00} V, {100 * fit.DropShare:0.00} %, more than {100 * duty.LargestDropShare:0.##} %"
                    )
                )
            );
        }

        return new(null, rejected.ToImmutable());
    }

    /// <summary>Writes out ampacity, drop and loss of a chosen cable.</summary>
    /// <param name="duty">What the cable must do.</param>
    /// <param name="fit">The cable chosen for it.</param>
    /// <returns>The lines from temperature to drop and loss, stretch by stretch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The cable's size is not in the table of resistances.</exception>
    /// <source>IEC 60228:2004; IEC 60287-1-1, table 1; IEC 60364-5-52:2009, annex G.</source>
    public static WorkingSheet Show(CableDuty duty, CableFit fit) =>
        new(
            $"Current and voltage drop of {fit.Option.Name}",
            [
                .. fit.Stretches.SelectMany(each => Lines(duty, fit.Option, each)),
                Step("ΔU", "sum of the stretches", "", (fit.DropV, "V"), "definition"),
                Step(
                    "ΔU/U",
                    "ΔU/U",
                    Invariant($"{fit.DropV:0.000}/{duty.SystemV:0.#}"),
                    (fit.DropShare, ""),
                    "definition"
                ),
            ]
        );

    private static IEnumerable<Line> Lines(CableDuty duty, CableOption option, StretchFit each)
    {
        var (currentA, stretch, supply) = (duty.CurrentA, each.Stretch, duty.Supply);
        var (ohmPerM, reactanceOhmPerM) = (each.Impedance.ResistanceOhmPerM, each.Impedance.ReactanceOhmPerM);
        var at20OhmPerM = ConductorResistance.OhmPerKm(option.Conductor, option.SizeMm2) / 1000;
        var perK = ConductorResistance.TemperaturePerK(option.Conductor);
        var rise = Invariant($"({duty.LargestConductorDegC:0.#} - {stretch.SurroundingsDegC:0.#})");
        var run = Invariant($"{stretch.LengthM:0.##} · {currentA:0.##}");
        var along = Invariant(
            $"({ohmPerM:0.000000} · {supply.PowerFactor:0.000} + {reactanceOhmPerM:0.0000000} · {VoltageDrop.Sine(supply.PowerFactor):0.000})"
        );
        var (dropFormula, dropNumbers, ways) =
            supply.Kind == CableKind.Dc
                ? ("2 L I r", Invariant($"2 · {run} · {ohmPerM:0.000000}"), 2)
                : ("√3 L I (r cos φ + x sin φ)", $"√3 · {run} {along}", 3);
        yield return Step(
            $"Iz {stretch.Where}",
            "I_card k",
            Invariant($"{option.AmpacityA:0.#} · {stretch.LayingFactor:0.000}"),
            (each.AmpacityA, "A"),
            "IEC 60364-5-52:2009, 523"
        );
        yield return Step(
            "T",
            "Ta + (Tmax - Ta) (I/Iz)²",
            Invariant($"{stretch.SurroundingsDegC:0.#} + {rise} ({currentA:0.##}/{each.AmpacityA:0.#})²"),
            (each.ConductorDegC, "°C"),
            "heat balance behind IEC 60287-1-1"
        );
        yield return Step(
            "r",
            "r20 (1 + α (T - 20))",
            Invariant($"{at20OhmPerM:0.000000} (1 + {perK} ({each.ConductorDegC:0.0} - 20))"),
            (ohmPerM, "Ω/m"),
            "IEC 60228:2004; IEC 60287-1-1, table 1"
        );
        yield return Step("ΔU", dropFormula, dropNumbers, (each.DropV, "V"), "IEC 60364-5-52:2009, annex G");
        yield return Step(
            "P",
            $"{ways} L I² r",
            Invariant($"{ways} · {stretch.LengthM:0.##} · {currentA:0.##}² · {ohmPerM:0.000000}"),
            (each.LossW, "W"),
            "Joule's law"
        );
    }

    private static Line Step(
        string symbol,
        string formula,
        string numbers,
        (double Value, string Unit) result,
        string source
    ) => new(symbol, formula, numbers, result.Value, result.Unit, "power/cable-size", source);

    private static CableFit Measure(CableOption option, CableDuty duty)
    {
        ImmutableArray<StretchFit> stretches = [.. duty.Stretches.Select(stretch => Along(option, duty, stretch))];
        return new(option, stretches, stretches.Sum(each => each.DropV) / duty.SystemV);
    }

    private static StretchFit Along(CableOption option, CableDuty duty, CableStretch stretch)
    {
        var ampacityA = option.AmpacityA * stretch.LayingFactor;
        var conductorDegC = ConductorResistance.WorkingDegC(
            new(stretch.SurroundingsDegC, duty.LargestConductorDegC),
            duty.CurrentA / ampacityA
        );
        var impedance = new LineImpedance(
            ConductorResistance.AtTemperatureOhmPerKm(option.Conductor, option.SizeMm2, conductorDegC) / 1000,
            CableReactance.OhmPerKm(option.SizeMm2, duty.Supply.FrequencyHz) / 1000
        );
        var dropV =
            duty.Supply.Kind == CableKind.Dc
                ? VoltageDrop.DirectV(duty.CurrentA, stretch.LengthM, impedance.ResistanceOhmPerM)
                : VoltageDrop.ThreePhaseV(duty.CurrentA, stretch.LengthM, impedance, duty.Supply.PowerFactor);
        var lossW = VoltageDrop.LossW(duty.Supply.Kind, duty.CurrentA, stretch.LengthM, impedance.ResistanceOhmPerM);
        return new(stretch, ampacityA, conductorDegC, impedance, dropV, lossW);
    }

    private static void RequireDuty(CableDuty duty)
    {
        Within.Require(duty.CurrentA, 0.001, 1000, "A");
        Within.Require(duty.LeastAmpacityA, duty.CurrentA, 1000, "A");
        Within.Require(duty.SystemV, 5, 2000, "V");
        Within.Require(duty.LargestDropShare, 0.001, 0.2, "");
        Within.Require(duty.LargestConductorDegC, 60, 120, "°C");
        Within.RequireCount(duty.Stretches.Length, 1, 100);
        foreach (var stretch in duty.Stretches)
        {
            Within.Require(stretch.LengthM, 0.1, 5000, "m");
            Within.Require(stretch.LayingFactor, 0.001, 2, "");
        }
    }
}

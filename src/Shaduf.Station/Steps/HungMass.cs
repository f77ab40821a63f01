using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>All that hangs from the wellhead [kg].</summary>
/// <param name="PumpKg">Pump and motor.</param>
/// <param name="PipeKg">Riser with its couplings.</param>
/// <param name="WaterKg">Water in the riser, held by the check valve.</param>
/// <param name="CableKg">Motor cable in the borehole.</param>
/// <param name="RopeKg">Safety rope.</param>
public sealed record HungMass(double PumpKg, double PipeKg, double WaterKg, double CableKg, double RopeKg)
{
    // Couplings of threaded pipe; common practice, no source.
    private const double CouplingShare = 0.02;

    /// <summary>Cable of 16 mm² and rope, before they are chosen [kg/m].</summary>
    internal const double CableAndRopeKgPerM = 1.02 + RopeKgPerM;

    // Where no cable card fits.
    private const double HeaviestMm2 = 25;

    // Polypropylene, 12 mm; from memory.
    private const double RopeKgPerM = 0.065;

    /// <summary>What is pulled up when the riser is full [kg]; nothing is taken off for what floats.</summary>
    public double TotalKg => EmptyKg + WaterKg;

    /// <summary>What is lowered, before water enters from below [kg].</summary>
    public double EmptyKg => PumpKg + PipeKg + CableKg + RopeKg;

    /// <summary>Weighs a riser.</summary>
    /// <param name="choice">What was chosen.</param>
    /// <param name="electrics">Cables.</param>
    /// <returns>The masses.</returns>
    public static HungMass Of(Choice choice, Electrics electrics)
    {
        var (riser, lengthM) = (choice.Lift.Foot.Card, choice.Lift.Foot.LengthM);
        return new(
            choice.Pump.MassKg,
            lengthM * riser.MassKgPerM * (1 + (riser.LosesStrengthWhenWarm ? 0 : CouplingShare)),
            lengthM * HangingRiser.WaterKgPerM(riser.BoreMm, choice.Lift.Water.DensityKgPerM3),
            lengthM * CableKgPerM(electrics),
            lengthM * RopeKgPerM
        );
    }

    // A line through first estimates of cables of three cores and earth, within 5 %; from memory.
    private static double CableKgPerM(Electrics electrics) =>
        0.06 + (0.06 * (electrics.Cables.First(cable => cable.Id == "motor-cable").Card?.SizeMm2 ?? HeaviestMm2));

    /// <summary>The working of the masses.</summary>
    /// <param name="choice">What was chosen.</param>
    /// <returns>The working.</returns>
    public WorkingSheet Show(Choice choice)
    {
        const string method = "station/well-build";
        var (riser, lengthM) = (choice.Lift.Foot.Card, choice.Lift.Foot.LengthM);
        return new(
            "What hangs in the borehole",
            [
                new("m_pump", "", choice.Pump.Name, PumpKg, "kg", method, "pump card"),
                new(
                    "m_pipe",
                    "L m'",
                    Invariant($"{lengthM:0.#} m of {riser.Name}, {riser.MassKgPerM:0.00} kg/m"),
                    PipeKg,
                    "kg",
                    method,
                    "pipe card"
                ),
                new(
                    "m_water",
                    "L rho pi d²/4",
                    Invariant($"{lengthM:0.#} m, bore {riser.BoreMm:0.0} mm"),
                    WaterKg,
                    "kg",
                    "water/hanging-riser",
                    ""
                ),
                new("m_cable", "L (0.06 + 0.06 A)", "", CableKg, "kg", method, "first estimate, from memory"),
                new("m_rope", "L 0.065", "", RopeKg, "kg", method, "polypropylene 12 mm, from memory"),
                new("W", "sum g", "", TotalKg * Gravity.MPerS2 / 1000, "kN", "water/hanging-riser", ""),
            ]
        );
    }
}

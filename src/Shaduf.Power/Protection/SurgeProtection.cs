using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>How a lightning rod stands to the array.</summary>
public enum LightningRod
{
    /// <summary>There is none.</summary>
    None,

    /// <summary>There is one, at the separation distance from all metal of the array.</summary>
    Apart,

    /// <summary>There is one, and the array's metal is joined to it: part of the stroke flows over the cables.</summary>
    Bonded,
}

/// <summary>What a building is used for, as far as lightning and its photovoltaic array go.</summary>
public enum SurgeSite
{
    /// <summary>A dwelling.</summary>
    Dwelling,

    /// <summary>A plant on the ground.</summary>
    GroundPlant,

    /// <summary>Service, industrial and farm buildings.</summary>
    FarmBuilding,
}

/// <summary>What the surge arresters of a side must do.</summary>
/// <param name="TypeNumber">Type: 1 (with 2) where part of a stroke flows, else 2.</param>
/// <param name="LeastContinuousV">Least continuous voltage, Ucpv on the direct side, Uc on the motor's [V], 10 to 4000.</param>
/// <param name="MostLetThroughKV">Largest protection level Up: 0.8 of what the equipment withstands [kV], 0.1 to 20.</param>
/// <param name="LeastDischargeKA">Least nominal discharge current, 8/20 [kA], 5 to 5.</param>
/// <param name="LeastImpulseKA">Least impulse current a pole, 10/350 [kA]; 0 for type 2.</param>
/// <param name="IsAtBothEnds">Whether the far end of the cable needs arresters too: it is longer than 10 m.</param>
public sealed record SurgeNeed(
    int TypeNumber,
    double LeastContinuousV,
    double MostLetThroughKV,
    double LeastDischargeKA,
    double LeastImpulseKA,
    bool IsAtBothEnds
);

/// <summary>Surge arresters: which type, for which voltage, where. Their leads are short: 0.5 m together.</summary>
public static class SurgeProtection
{
    /// <summary>Cable beyond which arresters stand at both of its ends [m]; from memory.</summary>
    public const double LongCableM = 10;

    private const double UpShare = 0.8;
    private const double DischargeKA = 5;

    /// <summary>Direct-current side.</summary>
    /// <param name="coldV">Open-circuit voltage of a string at the record low [V], 10 to 2000.</param>
    /// <param name="openCircuitV">Open-circuit voltage of a string at 25 °C [V], 10 to 2000.</param>
    /// <param name="withstandKV">Impulse voltage that the drive's input withstands [kV], 0.3 to 20.</param>
    /// <param name="impulseKA">Impulse current a pole when the rod is bonded to the array [kA], 1 to 50; see <see cref="ImpulseKA"/>.</param>
    /// <param name="rod">How a lightning rod stands to the array.</param>
    /// <param name="cableM">Cable between array and drive [m], 0 to 5000.</param>
    /// <returns>What the arresters must do.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>
    /// IEC 61643-32 and IEC 60364-7-712: type by the rod; Ucpv at least the cold voltage and (from memory) 1.2 times the
    /// one at 25 °C; Up at most 0.8 of the withstand; 5 kA; both ends beyond 10 m (from memory).
    /// </source>
    public static SurgeNeed Direct(
        double coldV,
        double openCircuitV,
        double withstandKV,
        double impulseKA,
        LightningRod rod,
        double cableM
    )
    {
        Within.Require(coldV, 10, 2000, "V");
        Within.Require(openCircuitV, 10, 2000, "V");
        return Need(Math.Max(coldV, 1.2 * openCircuitV), withstandKV, impulseKA, rod, cableM);
    }

    /// <summary>Motor side, behind the filter, where the drive's maker allows arresters there.</summary>
    /// <param name="motorV">Rated voltage of the motor between lines [V], 10 to 1000.</param>
    /// <param name="withstandKV">Impulse voltage that the motor withstands [kV], 0.3 to 20.</param>
    /// <param name="impulseKA">Impulse current a pole when the rod is bonded to the array [kA], 1 to 50.</param>
    /// <param name="rod">How a lightning rod stands to the array.</param>
    /// <param name="cableM">Cable between drive and motor [m], 0 to 5000.</param>
    /// <returns>What the arresters must do.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>
    /// IEC 60364-5-53, 534: Uc at least 1.1 times the voltage that can stand between line and earth; behind a drive on an
    /// unearthed array that is the voltage between lines (common practice, no source); else as <see cref="Direct"/>.
    /// </source>
    public static SurgeNeed Motor(double motorV, double withstandKV, double impulseKA, LightningRod rod, double cableM)
    {
        Within.Require(motorV, 10, 1000, "V");
        return Need(1.1 * motorV, withstandKV, impulseKA, rod, cableM);
    }

    /// <summary>Impulse current a pole by the class of lightning protection, in proportion to the class's first stroke.</summary>
    /// <param name="protection">Class of lightning protection.</param>
    /// <returns>Current [kA], 10/350.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such class.</exception>
    /// <source>
    /// IEC 62305-1: first strokes of 200, 150, 100, 100 kA; 12.5 kA a pole for class I is a planning value from memory
    /// (5 to 12.5 kA).
    /// </source>
    public static double ImpulseKA(LightningClass protection) =>
        protection switch
        {
            LightningClass.I => 12.5,
            LightningClass.II => 12.5 * 150 / 200,
            LightningClass.III or LightningClass.IV => 12.5 * 100 / 200,
            _ => throw new ArgumentOutOfRangeException(nameof(protection), protection, "There is no such class."),
        };

    /// <summary>Length of the direct-current way from which arresters are an obligation.</summary>
    /// <param name="flashesPerKm2Year">Flashes to the ground [1/km²/year], 0.01 to 100.</param>
    /// <param name="site">What the array serves.</param>
    /// <returns>Length [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is outside its range, or there is no such use.</exception>
    /// <source>IEC 60364-7-712:2017: 115, 200 and 450 over the flash density; from memory.</source>
    public static double CriticalLengthM(double flashesPerKm2Year, SurgeSite site)
    {
        Within.Require(flashesPerKm2Year, 0.01, 100, "1/km²/year");
        return site switch
            {
                SurgeSite.Dwelling => 115,
                SurgeSite.GroundPlant => 200,
                SurgeSite.FarmBuilding => 450,
                _ => throw new ArgumentOutOfRangeException(nameof(site), site, "There is no such use."),
            } / flashesPerKm2Year;
    }

    private static SurgeNeed Need(
        double continuousV,
        double withstandKV,
        double impulseKA,
        LightningRod rod,
        double cableM
    )
    {
        Within.Require(withstandKV, 0.3, 20, "kV");
        Within.Require(impulseKA, 1, 50, "kA");
        Within.Require(cableM, 0, 5000, "m");
        var isBonded = rod switch
        {
            LightningRod.None or LightningRod.Apart => false,
            LightningRod.Bonded => true,
            _ => throw new ArgumentOutOfRangeException(nameof(rod), rod, "There is no such case."),
        };
        return new(
            isBonded ? 1 : 2,
            continuousV,
            UpShare * withstandKV,
            DischargeKA,
            isBonded ? impulseKA : 0,
            cableM > LongCableM
        );
    }
}

using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>An earthquake at a place.</summary>
/// <param name="GroundRatio">Acceleration of rock a_g = γ_I a_gR over gravity.</param>
/// <param name="Ground">The ground.</param>
/// <param name="BehaviourFactor">Behaviour factor q of the stand.</param>
public sealed record Quake(double GroundRatio, GroundType Ground, double BehaviourFactor)
{
    /// <summary>Behaviour factor of steel without ductile detailing (EN 1998-1:2004, 6.1.2, from memory).</summary>
    public const double PlainFactor = 1.5;

    /// <summary>Damping of water that sloshes [%] (EN 1998-4:2006, annex A).</summary>
    public const double SloshingPercent = 0.5;

    /// <summary>Design acceleration of the plateau over gravity.</summary>
    public double PlateauRatio => Spectrum.DesignRatio(GroundRatio, Ground, Ground.PlateauS, BehaviourFactor);
}

/// <summary>What a shaken tank does to its stand.</summary>
/// <param name="RigidS">Period of the stand with the water that moves with it [s].</param>
/// <param name="RigidRatio">Design acceleration of stand and rigid water over gravity.</param>
/// <param name="SloshingRatio">Acceleration of the sloshing water over gravity.</param>
/// <param name="RigidKN">Force of stand and rigid water [kN].</param>
/// <param name="SloshingKN">Force of the sloshing water [kN].</param>
/// <param name="MomentKNm">Moment at the foot of the stand [kN·m].</param>
public sealed record TankPush(
    double RigidS,
    double RigidRatio,
    double SloshingRatio,
    double RigidKN,
    double SloshingKN,
    double MomentKNm
)
{
    /// <summary>Shear at the foot: both forces at their largest at the same time [kN].</summary>
    public double ShearKN => RigidKN + SloshingKN;
}

/// <summary>A tank on a stand, shaken sideways: two separate oscillators.</summary>
/// <param name="WaterKg">Water [kg].</param>
/// <param name="StructureKg">Tank, platform and half of the tower [kg].</param>
/// <param name="StiffnessNPerMm">Sideways stiffness at the platform [N/mm].</param>
/// <param name="PlatformM">Height of the tank's bottom above the foot [m].</param>
/// <param name="DepthM">Depth of the water [m].</param>
/// <param name="Sloshing">Its two masses.</param>
public sealed record ElevatedTank(
    double WaterKg,
    double StructureKg,
    double StiffnessNPerMm,
    double PlatformM,
    double DepthM,
    TankSloshing Sloshing
)
{
    private const double GravityMPerS2 = 9.80665;

    /// <summary>Period of the stand with the water that moves with it [s].</summary>
    public double RigidS => 2 * Math.PI * Math.Sqrt((RigidKg + StructureKg) / (1000 * StiffnessNPerMm));

    /// <summary>Whether stand and wave swing so differently that they may be taken apart.</summary>
    /// <source>Period of the wave more than 2.5 times that of the stand: Housner 1963</source>
    public bool IsApart => Sloshing.SloshingS > 2.5 * RigidS;

    private double RigidKg => WaterKg * Sloshing.RigidShare;

    /// <summary>Forces of an earthquake.</summary>
    /// <param name="quake">The earthquake.</param>
    /// <param name="isOnPlateau">Whether a period below the plateau is taken on it: soft ground makes it longer, the safe side.</param>
    /// <returns>The forces: shares of gravity, [kN] and [kN·m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A mass, the stiffness or a length is not above 0, or NaN.</exception>
    /// <source>EN 1998-4:2006, annex A, and EN 1998-1:2004, 4.3.3.2; absolute sum as Malhotra, Wenk and Wieland 2000</source>
    public TankPush Under(Quake quake, bool isOnPlateau)
    {
        Within.Require(WaterKg, 0, 1e6, "kg");
        Within.Require(StructureKg, 1, 1e6, "kg");
        Within.Require(StiffnessNPerMm, 1, 1e9, "N/mm");
        Within.Require(PlatformM, 0.1, 100, "m");
        var period = RigidS;
        var rigidRatio =
            isOnPlateau && period < quake.Ground.PlateauS
                ? quake.PlateauRatio
                : Spectrum.DesignRatio(quake.GroundRatio, quake.Ground, period, quake.BehaviourFactor);
        var sloshingRatio = Spectrum.ElasticRatio(
            quake.GroundRatio,
            quake.Ground,
            Sloshing.SloshingS,
            Quake.SloshingPercent
        );
        double KN(double ratio, double massKg) => ratio * GravityMPerS2 * massKg / 1000;
        var sloshingKN = KN(sloshingRatio, WaterKg * Sloshing.SloshingShare);
        return new(
            period,
            rigidRatio,
            sloshingRatio,
            KN(rigidRatio, RigidKg + StructureKg),
            sloshingKN,
            (KN(rigidRatio, RigidKg) * (PlatformM + (Sloshing.RigidHeightRatio * DepthM)))
                + (KN(rigidRatio, StructureKg) * PlatformM)
                + (sloshingKN * (PlatformM + (Sloshing.SloshingHeightRatio * DepthM)))
        );
    }

    /// <summary>Height of the wave in a round tank.</summary>
    /// <param name="radiusM">Radius R [m], 0.2 to 30.</param>
    /// <param name="sloshingRatio">Acceleration of the sloshing water over gravity, 0 to 5.</param>
    /// <returns>d_max = 0.84 R S_e(T_c)/g [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1998-4:2006, annex A</source>
    public static double WaveM(double radiusM, double sloshingRatio)
    {
        Within.Require(radiusM, 0.2, 30, "m");
        Within.Require(sloshingRatio, 0, 5, "");
        return 0.84 * radiusM * sloshingRatio;
    }

    /// <summary>How much the weight on the leaning stand adds to what shakes it.</summary>
    /// <param name="weightKN">Weight above [kN], 0 to 10,000.</param>
    /// <param name="moveMm">Elastic movement under the design force d_e [mm], 0 to 10,000.</param>
    /// <param name="behaviourFactor">Behaviour factor q, 1 to 8: the stand moves q times as far.</param>
    /// <param name="shearKN">Design force [kN], 0.001 to 10,000.</param>
    /// <param name="heightM">Height [m], 0.1 to 100.</param>
    /// <returns>θ = P q d_e/(V h) as a ratio; up to 0.10 it is left out.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1998-1:2004, 4.4.2.2(2) (from memory)</source>
    public static double DriftRatio(
        double weightKN,
        double moveMm,
        double behaviourFactor,
        double shearKN,
        double heightM
    )
    {
        Within.Require(weightKN, 0, 10_000, "kN");
        Within.Require(moveMm, 0, 10_000, "mm");
        Within.Require(behaviourFactor, 1, 8, "");
        Within.Require(shearKN, 0.001, 10_000, "kN");
        Within.Require(heightM, 0.1, 100, "m");
        return weightKN * behaviourFactor * moveMm / (shearKN * heightM * 1000);
    }
}

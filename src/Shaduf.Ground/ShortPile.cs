using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>A short stiff pile with a free head under a side load, at the end of what the ground resists.</summary>
public static class ShortPile
{
    /// <summary>Factor between what the ground resists at its end and what it may be asked to.</summary>
    /// <source>2.0 to 2.5, judgement</source>
    public const double UsualSafetyFactor = 2;

    /// <summary>Side load that a pile in clay resists at most; the upper 1.5 widths of ground are left out.</summary>
    /// <param name="widthM">Width [m], 0.1 to 5.</param>
    /// <param name="depthM">Depth [m], 0.2 to 20; more than 1.5 widths.</param>
    /// <param name="heightM">Height of the load above ground [m], 0 to 100.</param>
    /// <param name="cohesionKPa">Undrained cohesion [kPa], 5 to 500.</param>
    /// <returns>Load [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, NaN, or no deeper than 1.5 widths.</exception>
    /// <source>Broms 1964, Lateral resistance of piles in cohesive soils; solved for the load</source>
    public static double ClayForceKN(double widthM, double depthM, double heightM, double cohesionKPa)
    {
        Width(widthM);
        Within.Require(depthM, Math.Max(0.2, 1.5 * widthM), 20, "m");
        Within.Require(heightM, 0, 100, "m");
        Within.Require(cohesionKPa, 5, 500, "kPa");
        var below = depthM - (1.5 * widthM);
        var arm = (2 * (heightM + (1.5 * widthM))) + below;

        // f² + 2 arm f = below², the root without a difference of near figures.
        var f = below * below / (arm + Math.Sqrt((arm * arm) + (below * below)));
        return 9 * cohesionKPa * widthM * f;
    }

    /// <summary>Depth at which a pile in clay resists a load at its end.</summary>
    /// <param name="forceKN">Load, its safety factor in it [kN], 0 to 10000.</param>
    /// <param name="momentKNm">Moment at the ground, likewise [kN m], 0 to 100000.</param>
    /// <param name="widthM">Width [m], 0.1 to 5.</param>
    /// <param name="cohesionKPa">Undrained cohesion [kPa], 5 to 500.</param>
    /// <returns>Depth [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Broms 1964, solved for the depth</source>
    public static double ClayDepthM(double forceKN, double momentKNm, double widthM, double cohesionKPa)
    {
        Load(forceKN, momentKNm);
        Width(widthM);
        Within.Require(cohesionKPa, 5, 500, "kPa");
        var perForce = 1 / (9 * cohesionKPa * widthM);
        var f = forceKN * perForce;
        return (1.5 * widthM) + f + Math.Sqrt((2 * f * f) + (4 * momentKNm * perForce) + (6 * widthM * f));
    }

    /// <summary>Side load that a pile in sand resists at most.</summary>
    /// <param name="widthM">Width [m], 0.1 to 5.</param>
    /// <param name="depthM">Depth [m], 0.2 to 20.</param>
    /// <param name="heightM">Height of the load above ground [m], 0 to 100.</param>
    /// <param name="frictionDeg">Angle of friction [deg], 20 to 45.</param>
    /// <param name="weightKNPerM3">Weight of the ground [kN/m3], 5 to 25.</param>
    /// <returns>Load [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Broms 1964, Lateral resistance of piles in cohesionless soils; from memory</source>
    public static double SandForceKN(
        double widthM,
        double depthM,
        double heightM,
        double frictionDeg,
        double weightKNPerM3
    )
    {
        Within.Require(depthM, 0.2, 20, "m");
        Within.Require(heightM, 0, 100, "m");
        return PassiveKNPerM2(widthM, frictionDeg, weightKNPerM3) * Math.Pow(depthM, 3) / (2 * (heightM + depthM));
    }

    /// <summary>Depth at which a pile in sand resists a load at its end.</summary>
    /// <param name="forceKN">Load, its safety factor in it [kN], 0 to 10000.</param>
    /// <param name="momentKNm">Moment at the ground, likewise [kN m], 0 to 100000.</param>
    /// <param name="widthM">Width [m], 0.1 to 5.</param>
    /// <param name="frictionDeg">Angle of friction [deg], 20 to 45.</param>
    /// <param name="weightKNPerM3">Weight of the ground [kN/m3], 5 to 25.</param>
    /// <returns>Depth [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Broms 1964, solved for the depth; from memory</source>
    public static double SandDepthM(
        double forceKN,
        double momentKNm,
        double widthM,
        double frictionDeg,
        double weightKNPerM3
    )
    {
        Load(forceKN, momentKNm);
        var perForce = 2 / PassiveKNPerM2(widthM, frictionDeg, weightKNPerM3);
        return DepressedCubic.PositiveRoot(perForce * forceKN, perForce * momentKNm);
    }

    // Passive pressure on the pile's width for each metre of depth: K_p γ b.
    private static double PassiveKNPerM2(double widthM, double frictionDeg, double weightKNPerM3)
    {
        Width(widthM);
        Within.Require(frictionDeg, 20, 45, "deg");
        Within.Require(weightKNPerM3, 5, 25, "kN/m3");
        var tan = Math.Tan((45 + (frictionDeg / 2)) * Math.PI / 180);
        return tan * tan * weightKNPerM3 * widthM;
    }

    private static void Load(double forceKN, double momentKNm)
    {
        Within.Require(forceKN, 0, 10_000, "kN");
        Within.Require(momentKNm, 0, 100_000, "kN m");
    }

    private static void Width(double widthM) => Within.Require(widthM, 0.1, 5, "m");
}

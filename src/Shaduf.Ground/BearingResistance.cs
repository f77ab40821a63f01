using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>Pressure under a shallow footing at which the ground gives way.</summary>
public static class BearingResistance
{
    /// <summary>Factor on the resistance where loads carry theirs.</summary>
    /// <source>EN 1997-1:2004, table A.5, set R2 (design approach 2)</source>
    public const double ResistanceFactor = 1.4;

    /// <summary>Safety of an allowable pressure, loads without factors.</summary>
    /// <source>Terzaghi's usual 3; common practice</source>
    public const double UsualSafetyFactor = 3;

    /// <summary>Ground that drains: friction, with or without cohesion. No factor for depth; level base and ground.</summary>
    /// <param name="load">The part of the pad that presses, and its load: sides 0.05 to 30 m.</param>
    /// <param name="soil">Strength: friction 1 to 45 deg, cohesion 0 to 500 kPa, weight 3 to 25 kN/m3; below water the weight less that of water.</param>
    /// <param name="surchargeKPa">Pressure of the ground beside the base [kPa], 0 to 200.</param>
    /// <returns>Pressure on that part [kPa]; 0 when the side load shears the pad off.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1997-1:2004, annex D.4</source>
    public static double DrainedKPa(PadLoad load, SoilStrength soil, double surchargeKPa)
    {
        Require(load, surchargeKPa);
        Within.Require(soil.FrictionDeg, 1, 45, "deg");
        Within.Require(soil.CohesionKPa, 0, 500, "kPa");
        Within.Require(soil.WeightKNPerM3, 3, 25, "kN/m3");
        var (cohesion, surcharge, weight) = BearingFactors.En1997(soil.FrictionDeg);
        var angle = soil.FrictionDeg * Math.PI / 180;
        var ratio = load.SidesRatio;
        var shapeQ = 1 + (ratio * Math.Sin(angle));
        var shapeC = ((shapeQ * surcharge) - 1) / (surcharge - 1);
        var upright = load.ForceKN + (load.AreaM2 * soil.CohesionKPa / Math.Tan(angle));
        var left = load.SideKN == 0 ? 1 : 1 - (load.SideKN / upright);
        if (!(left > 0))
        {
            return 0;
        }

        var inclinedQ = Math.Pow(left, load.InclinationFactor);
        var inclinedC = inclinedQ - ((1 - inclinedQ) / (cohesion * Math.Tan(angle)));
        return (soil.CohesionKPa * cohesion * shapeC * inclinedC)
            + (surchargeKPa * surcharge * shapeQ * inclinedQ)
            + (
                0.5
                * soil.WeightKNPerM3
                * Math.Min(load.WidthM, load.LengthM)
                * weight
                * (1 - (0.3 * ratio))
                * inclinedQ
                * left
            );
    }

    /// <summary>Clay that has no time to drain.</summary>
    /// <param name="load">The part of the pad that presses, and its load: sides 0.05 to 30 m.</param>
    /// <param name="cohesionKPa">Undrained strength c_u [kPa], 5 to 500.</param>
    /// <param name="surchargeKPa">Pressure of the ground beside the base [kPa], 0 to 200.</param>
    /// <returns>Pressure on that part [kPa]; 0 when the side load shears the pad off.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1997-1:2004, annex D.3</source>
    public static double UndrainedKPa(PadLoad load, double cohesionKPa, double surchargeKPa)
    {
        Require(load, surchargeKPa);
        Within.Require(cohesionKPa, 5, 500, "kPa");
        var left = 1 - (load.SideKN / (load.AreaM2 * cohesionKPa));
        return left < 0
            ? 0
            : ((Math.PI + 2) * cohesionKPa * (1 + (0.2 * load.SidesRatio)) * 0.5 * (1 + Math.Sqrt(left)))
                + surchargeKPa;
    }

    /// <summary>A long strip under a load straight down, by Terzaghi.</summary>
    /// <param name="factors">Factors for its friction, by Terzaghi.</param>
    /// <param name="soil">Strength.</param>
    /// <param name="surchargeKPa">Pressure of the ground beside the base [kPa], 0 to 200.</param>
    /// <param name="widthM">Width of the strip [m], 0.05 to 30.</param>
    /// <returns>Pressure [kPa].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Terzaghi 1943</source>
    public static double TerzaghiStripKPa(
        BearingFactorSet factors,
        SoilStrength soil,
        double surchargeKPa,
        double widthM
    ) => Terzaghi(factors, soil, surchargeKPa, widthM, (1, 0.5));

    /// <summary>A square pad under a load straight down, by Terzaghi.</summary>
    /// <param name="factors">Factors for its friction, by Terzaghi.</param>
    /// <param name="soil">Strength.</param>
    /// <param name="surchargeKPa">Pressure of the ground beside the base [kPa], 0 to 200.</param>
    /// <param name="widthM">Side of the pad [m], 0.05 to 30.</param>
    /// <returns>Pressure [kPa].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Terzaghi 1943</source>
    public static double TerzaghiSquareKPa(
        BearingFactorSet factors,
        SoilStrength soil,
        double surchargeKPa,
        double widthM
    ) => Terzaghi(factors, soil, surchargeKPa, widthM, (1.3, 0.4));

    private static double Terzaghi(
        BearingFactorSet factors,
        SoilStrength soil,
        double surchargeKPa,
        double widthM,
        (double Cohesion, double Weight) shape
    )
    {
        Within.Require(surchargeKPa, 0, 200, "kPa");
        Within.Require(widthM, 0.05, 30, "m");
        Within.Require(soil.CohesionKPa, 0, 500, "kPa");
        Within.Require(soil.WeightKNPerM3, 3, 25, "kN/m3");
        return (shape.Cohesion * soil.CohesionKPa * factors.CohesionFactor)
            + (surchargeKPa * factors.SurchargeFactor)
            + (shape.Weight * soil.WeightKNPerM3 * widthM * factors.WeightFactor);
    }

    private static void Require(PadLoad load, double surchargeKPa)
    {
        Within.Require(load.WidthM, 0.05, 30, "m");
        Within.Require(load.LengthM, 0.05, 30, "m");
        Within.Require(load.ForceKN, 0, 10_000, "kN");
        Within.Require(load.SideKN, 0, 10_000, "kN");
        Within.Require(surchargeKPa, 0, 200, "kPa");
    }
}

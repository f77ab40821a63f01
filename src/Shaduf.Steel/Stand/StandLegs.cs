using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Forces and stiffness of a braced stand by hand, against which its frame is held.</summary>
public static class StandLegs
{
    /// <summary>Force of the hardest used leg from a moment that turns the whole stand, in the worst direction.</summary>
    /// <param name="momentKNm">Moment at the level looked at [kN·m], 0 to 100,000.</param>
    /// <param name="legCount">Legs, evenly on a circle, 3 to 24.</param>
    /// <param name="radiusM">Radius of the circle; of a square of side s: s/√2 [m], 0.1 to 50.</param>
    /// <returns>N = 2 M/(n r) [kN], up or down.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics</source>
    public static double LegKN(double momentKNm, int legCount, double radiusM)
    {
        Within.Require(momentKNm, 0, 100_000, "kN·m");
        Within.RequireCount(legCount, 3, 24);
        Within.Require(radiusM, 0.1, 50, "m");
        return 2 * momentKNm / (legCount * radiusM);
    }

    /// <summary>Tension of a diagonal when those in compression are not counted.</summary>
    /// <param name="shearKN">Side load on the whole stand [kN], 0 to 10,000.</param>
    /// <param name="legCount">Legs, 3 to 24.</param>
    /// <param name="riseDeg">Angle of the diagonal from the level [deg], 5 to 80.</param>
    /// <returns>T = (2 V/n)/cos θ [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics: 2 V/n in each face, wind along a pair of faces</source>
    public static double DiagonalKN(double shearKN, int legCount, double riseDeg)
    {
        Within.Require(shearKN, 0, 10_000, "kN");
        Within.RequireCount(legCount, 3, 24);
        Within.Require(riseDeg, 5, 80, "deg");
        return 2 * shearKN / legCount / Math.Cos(riseDeg * Math.PI / 180);
    }

    /// <summary>Sideways stiffness of a square stand at its platform, diagonals in tension only; struts left out.</summary>
    /// <param name="heightMm">Height [mm], 500 to 50,000.</param>
    /// <param name="sideMm">Distance of the legs [mm], 300 to 20,000.</param>
    /// <param name="bayCount">Bays of diagonals one over the other, 1 to 50.</param>
    /// <param name="diagonalMm2">Area of a diagonal [mm2], 10 to 100,000.</param>
    /// <param name="legMm2">Area of a leg [mm2], 10 to 100,000.</param>
    /// <returns>K = 2/(Σ L_d/(E A_d cos² θ) + h³/(3 E I)), I = 2 A_leg (s/2)² [N/mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Mechanics; for sizing: the truss of the worked stand is 9 % softer, for its struts shorten too</source>
    public static double StiffnessNPerMm(
        double heightMm,
        double sideMm,
        int bayCount,
        double diagonalMm2,
        double legMm2
    )
    {
        Within.Require(heightMm, 500, 50_000, "mm");
        Within.Require(sideMm, 300, 20_000, "mm");
        Within.RequireCount(bayCount, 1, 50);
        Within.Require(diagonalMm2, 10, 100_000, "mm2");
        Within.Require(legMm2, 10, 100_000, "mm2");
        var lengthMm = Math.Sqrt((sideMm * sideMm) + Math.Pow(heightMm / bayCount, 2));
        var levelShare = sideMm / lengthMm;
        var inertiaMm4 = 2 * legMm2 * sideMm * sideMm / 4;
        var perN =
            (bayCount * lengthMm / (FrameModel.SteelElasticModulusNPerMm2 * diagonalMm2 * levelShare * levelShare))
            + (Math.Pow(heightMm, 3) / (3 * FrameModel.SteelElasticModulusNPerMm2 * inertiaMm4));
        return 2 / perN;
    }

    /// <summary>Critical load factor of a stand by its stiffness: flatters legs that carry sway by bending.</summary>
    /// <param name="stiffnessNPerMm">Sideways stiffness at the platform [N/mm], 0 to 1e9.</param>
    /// <param name="heightM">Height [m], 0.1 to 100.</param>
    /// <param name="weightKN">Design load above [kN], 0.001 to 100,000.</param>
    /// <returns>α_cr = K h/V as a factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1993-1-1:2005, 5.2.1(4)</source>
    public static double CriticalFactor(double stiffnessNPerMm, double heightM, double weightKN)
    {
        Within.Require(stiffnessNPerMm, 0, 1e9, "N/mm");
        Within.Require(heightM, 0.1, 100, "m");
        Within.Require(weightKN, 0.001, 100_000, "kN");
        return stiffnessNPerMm * heightM / weightKN;
    }
}

using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>Depth at which a post or a deep block stands against a side load by the ground at its sides. An allowable method: loads without partial factors.</summary>
public static class PierInSoil
{
    /// <summary>Depth beyond which the ground's resistance is not taken to grow [m]: 12 ft.</summary>
    /// <source>IBC 2018, 1807.3.2.1</source>
    public const double DeepestM = 3.6576;

    // A = 2.34 P/(S1 b) with S1 = S d/3.
    private const double FreeFactor = 2.34 * 3;
    private const double MomentFactor = 1.09;
    private const double HeldFactor = 4.25;

    /// <summary>Depth of a pier that nothing holds at the ground.</summary>
    /// <param name="forceKN">Side load [kN], 0 to 10000.</param>
    /// <param name="momentKNm">Its moment at the ground, load times height [kN m], 0 to 100000.</param>
    /// <param name="widthM">Diameter, or diagonal of a square pier [m], 0.1 to 10.</param>
    /// <param name="lateralKNPerM3">Allowable lateral bearing for each metre of depth [kN/m3], 1 to 500.</param>
    /// <returns>Depth [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>IBC 2018, equation 18-1, with the bearing at a third of the depth put in: a cubic in the depth</source>
    public static double FreeDepthM(double forceKN, double momentKNm, double widthM, double lateralKNPerM3)
    {
        Require(forceKN, momentKNm, widthM, lateralKNPerM3);
        var perForce = FreeFactor / (lateralKNPerM3 * widthM);
        var depthM = DepressedCubic.PositiveRoot(perForce * forceKN, MomentFactor * perForce * momentKNm);
        if (depthM <= DeepestM)
        {
            return depthM;
        }

        var a = perForce * forceKN / DeepestM;
        return (a / 2) + Math.Sqrt((a * a / 4) + (MomentFactor * perForce * momentKNm / DeepestM));
    }

    /// <summary>Depth of a pier that a slab or a pavement holds at the ground.</summary>
    /// <param name="forceKN">Side load [kN], 0 to 10000.</param>
    /// <param name="momentKNm">Its moment at the ground, load times height [kN m], 0 to 100000.</param>
    /// <param name="widthM">Diameter, or diagonal of a square pier [m], 0.1 to 10.</param>
    /// <param name="lateralKNPerM3">Allowable lateral bearing for each metre of depth [kN/m3], 1 to 500.</param>
    /// <returns>Depth [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>IBC 2018, equation 18-2</source>
    public static double HeldDepthM(double forceKN, double momentKNm, double widthM, double lateralKNPerM3)
    {
        Require(forceKN, momentKNm, widthM, lateralKNPerM3);
        var cube = HeldFactor * momentKNm / (lateralKNPerM3 * widthM);
        var depthM = Math.Cbrt(cube);
        return depthM <= DeepestM ? depthM : Math.Sqrt(cube / DeepestM);
    }

    private static void Require(double forceKN, double momentKNm, double widthM, double lateralKNPerM3)
    {
        Within.Require(forceKN, 0, 10_000, "kN");
        Within.Require(momentKNm, 0, 100_000, "kN m");
        Within.Require(widthM, 0.1, 10, "m");
        Within.Require(lateralKNPerM3, 1, 500, "kN/m3");
    }
}

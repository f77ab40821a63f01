using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>The two masses that the water of a shaken tank acts as: one moves with the tank, one sloshes.</summary>
/// <param name="SloshingShare">Share of the water that sloshes m_c/m.</param>
/// <param name="SloshingS">Period of the sloshing T_c [s].</param>
/// <param name="SloshingHeightRatio">Height of the sloshing mass over the depth, pressure on walls and bottom: what a stand feels h_c*/H.</param>
/// <param name="RigidHeightRatio">Height of the rigid mass over the depth, pressure on walls and bottom h_i*/H.</param>
/// <param name="WallSloshingHeightRatio">Height of the sloshing mass over the depth, pressure on walls alone h_c/H.</param>
/// <param name="WallRigidHeightRatio">Height of the rigid mass over the depth, pressure on walls alone h_i/H.</param>
public sealed record TankSloshing(
    double SloshingShare,
    double SloshingS,
    double SloshingHeightRatio,
    double RigidHeightRatio,
    double WallSloshingHeightRatio,
    double WallRigidHeightRatio
)
{
    // First zero of the derivative of the Bessel function J1.
    private const double FirstRoot = 1.841184;
    private const double GravityMPerS2 = 9.80665;

    /// <summary>Share of the water that moves with the tank: what does not slosh, higher waves counted to it, the safe side.</summary>
    public double RigidShare => 1 - SloshingShare;

    /// <summary>The masses in a round tank.</summary>
    /// <param name="radiusM">Radius R [m], 0.2 to 30.</param>
    /// <param name="depthM">Depth of the water H [m], 0.1 to 20.</param>
    /// <returns>The masses: shares, heights over the depth, and the period [s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>First wave by potential theory, EN 1998-4:2006, annex A; heights of the rigid mass by Housner 1963</source>
    public static TankSloshing OfRound(double radiusM, double depthM)
    {
        Within.Require(radiusM, 0.2, 30, "m");
        Within.Require(depthM, 0.1, 20, "m");
        var slender = FirstRoot * depthM / radiusM;
        var swell = slender * Math.Sinh(slender);
        return new(
            2 * Math.Tanh(slender) / (slender * ((FirstRoot * FirstRoot) - 1)),
            2 * Math.PI / Math.Sqrt(FirstRoot * GravityMPerS2 / radiusM * Math.Tanh(slender)),
            1 + ((2 - Math.Cosh(slender)) / swell),
            RigidHeight(2 * radiusM / depthM),
            1 + ((1 - Math.Cosh(slender)) / swell),
            WallRigidHeight(2 * radiusM / depthM)
        );
    }

    /// <summary>The masses in a tank with a rectangular plan, shaken along one of its sides.</summary>
    /// <param name="sideM">Side along the shaking b [m], 0.4 to 60.</param>
    /// <param name="depthM">Depth of the water H [m], 0.1 to 20.</param>
    /// <returns>The masses: shares, heights over the depth, and the period [s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Housner 1963 (from memory): 0.264 tanh(3.16 H/b)/(H/b); heights of its wave by the same theory</source>
    public static TankSloshing OfRectangular(double sideM, double depthM)
    {
        Within.Require(sideM, 0.4, 60, "m");
        Within.Require(depthM, 0.1, 20, "m");
        var slender = 3.16 * depthM / sideM;
        var swell = slender * Math.Sinh(slender);
        return new(
            0.264 * Math.Tanh(slender) * sideM / depthM,
            2 * Math.PI / Math.Sqrt(3.16 * GravityMPerS2 / sideM * Math.Tanh(slender)),
            1 + ((2 - Math.Cosh(slender)) / swell),
            RigidHeight(sideM / depthM),
            1 + ((1 - Math.Cosh(slender)) / swell),
            WallRigidHeight(sideM / depthM)
        );
    }

    /// <summary>Housner's two closed forms for a round tank, for comparison: they may add up to a little more than all the water.</summary>
    /// <param name="diameterM">Diameter D [m], 0.4 to 60.</param>
    /// <param name="depthM">Depth of the water H [m], 0.1 to 20.</param>
    /// <returns>Shares of the water that move with the tank and that slosh.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Housner 1963 (from memory); reproduces IITK-GSDMA 2007, example 1</source>
    public static (double RigidShare, double SloshingShare) HousnerShares(double diameterM, double depthM)
    {
        Within.Require(diameterM, 0.4, 60, "m");
        Within.Require(depthM, 0.1, 20, "m");
        var flat = 0.866 * diameterM / depthM;
        return (Math.Tanh(flat) / flat, 0.23 * Math.Tanh(3.68 * depthM / diameterM) * diameterM / depthM);
    }

    // Housner's form holds for tanks no deeper than 1.33 times their width.
    private static double RigidHeight(double widthRatio) =>
        widthRatio >= 0.75 ? (0.866 * widthRatio / (2 * Math.Tanh(0.866 * widthRatio))) - 0.125 : 0.45;

    private static double WallRigidHeight(double widthRatio) =>
        1 / widthRatio <= 0.75 ? 0.375 : 0.5 - (0.09375 * widthRatio);
}

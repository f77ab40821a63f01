using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>A tube cast into its block: shear and moment pass into the concrete by pressure on the tube's width.</summary>
public static class EmbeddedTube
{
    /// <summary>Largest pressure on the concrete, straight-line distribution over the depth.</summary>
    /// <param name="widthMm">Width of the tube [mm], 20 to 500.</param>
    /// <param name="depthMm">Length of tube in the concrete L_e [mm], 100 to 3,000.</param>
    /// <param name="shearN">Shear at the surface of the concrete [N], 0 to 1,000,000.</param>
    /// <param name="momentNMm">Moment at the surface of the concrete [N·mm], 0 to 1e9.</param>
    /// <returns>V/(b L_e) + 6 (M + V L_e/2)/(b L_e²) [N/mm2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics; a straight-line distribution, safe side</source>
    public static double PressureNPerMm2(double widthMm, double depthMm, double shearN, double momentNMm)
    {
        Require(widthMm, shearN, momentNMm);
        Within.Require(depthMm, 100, 3_000, "mm");
        var face = widthMm * depthMm;
        return (shearN / face) + (6 * (momentNMm + (shearN * depthMm / 2)) / (face * depthMm));
    }

    /// <summary>Depth at which the pressure is a given strength; never below the least depth.</summary>
    /// <param name="widthMm">Width of the tube [mm], 20 to 500.</param>
    /// <param name="shearN">Shear at the surface of the concrete [N], 0 to 1,000,000.</param>
    /// <param name="momentNMm">Moment at the surface of the concrete [N·mm], 0 to 1e9.</param>
    /// <param name="strengthNPerMm2">Strength of the concrete f_cd [N/mm2], 1 to 50.</param>
    /// <returns>Depth L_e [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>The pressure formula solved for L_e: f b L_e² - 4 V L_e - 6 M = 0</source>
    public static double RequiredDepthMm(double widthMm, double shearN, double momentNMm, double strengthNPerMm2)
    {
        Require(widthMm, shearN, momentNMm);
        Within.Require(strengthNPerMm2, 1, 50, "N/mm2");
        var line = strengthNPerMm2 * widthMm;
        var depthMm = ((4 * shearN) + Math.Sqrt((16 * shearN * shearN) + (24 * line * momentNMm))) / (2 * line);
        return Math.Max(depthMm, LeastDepthMm(widthMm));
    }

    /// <summary>Least length of tube in the concrete.</summary>
    /// <param name="widthMm">Width of the tube [mm], 20 to 500.</param>
    /// <returns>The larger of 300 mm and four widths [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>common practice, no source</source>
    public static double LeastDepthMm(double widthMm)
    {
        Within.Require(widthMm, 20, 500, "mm");
        return Math.Max(300, 4 * widthMm);
    }

    /// <summary>Area of a cross bar or foot plate that holds the tube down; bond is not relied on.</summary>
    /// <param name="upliftN">Pull on the tube [N], 0 to 1,000,000.</param>
    /// <param name="strengthNPerMm2">Strength of the concrete f_cd [N/mm2], 1 to 50.</param>
    /// <returns>Area that bears on the concrete [mm2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics: N/f_cd</source>
    public static double CrossBarMm2(double upliftN, double strengthNPerMm2)
    {
        Within.Require(upliftN, 0, 1e6, "N");
        Within.Require(strengthNPerMm2, 1, 50, "N/mm2");
        return upliftN / strengthNPerMm2;
    }

    /// <summary>The working of the pressure on the concrete.</summary>
    /// <param name="widthMm">Width of the tube [mm].</param>
    /// <param name="depthMm">Length of tube in the concrete [mm].</param>
    /// <param name="shearN">Shear at the surface [N].</param>
    /// <param name="momentNMm">Moment at the surface [N·mm].</param>
    /// <param name="strengthNPerMm2">Strength of the concrete f_cd [N/mm2].</param>
    /// <returns>The lines.</returns>
    public static IReadOnlyList<Line> Lines(
        double widthMm,
        double depthMm,
        double shearN,
        double momentNMm,
        double strengthNPerMm2
    )
    {
        var pressure = PressureNPerMm2(widthMm, depthMm, shearN, momentNMm);
        return
        [
            new(
                "σ",
                "V/(b L_e) + 6 (M + V L_e/2)/(b L_e²)",
                Invariant(
                    $"V {shearN / 1000:0.000} kN, M {momentNMm / 1e6:0.000} kNm, b {widthMm:0} mm, L_e {depthMm:0} mm"
                ),
                pressure,
                "N/mm²",
                "steel/embedded-tube",
                "statics"
            ),
            new(
                "share",
                "σ/f_cd",
                Invariant($"{pressure:0.00}/{strengthNPerMm2:0.00}"),
                pressure / strengthNPerMm2,
                "",
                "steel/embedded-tube",
                "EN 1992-1-1:2004, 3.1.6"
            ),
        ];
    }

    private static void Require(double widthMm, double shearN, double momentNMm)
    {
        Within.Require(widthMm, 20, 500, "mm");
        Within.Require(shearN, 0, 1e6, "N");
        Within.Require(momentNMm, 0, 1e9, "N·mm");
    }
}

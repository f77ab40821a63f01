using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Fillet weld all round the end of a tube.</summary>
public static class TubeWeld
{
    /// <summary>
    /// The weld as lines along the outside of the tube. A weld all round needs no allowance for being on one side of
    /// the wall. For a round tube the parts are added at a corner of the square around it: safe side.
    /// </summary>
    /// <param name="tube">The tube.</param>
    /// <param name="cutDeg">Angle of the end's cut, that lengthens the side along z [deg], 0 to 60; 0 for a square cut.</param>
    /// <returns>The weld.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <exception cref="ArgumentException">The section is no tube.</exception>
    /// <source>Elastic properties of lines: A = 2 (b + h), I = h³/6 + b h²/2; round: A = π d, I = π d³/8; EN 1993-1-8:2005, 4.12(3)</source>
    public static WeldGroup Group(MemberSection tube, double cutDeg = 0)
    {
        Within.Require(cutDeg, 0, 60, "deg");
        if (!tube.IsTube)
        {
            throw new ArgumentException($"{tube.Name} is no tube", nameof(tube));
        }

        var (b, h) = (tube.WidthMm, tube.HeightMm / Math.Cos(cutDeg * Math.PI / 180));
        if (tube.Kind == SectionKind.RoundTube)
        {
            // The cut makes an ellipse; the circle is the safe side.
            var inertia = Math.PI * Math.Pow(b, 3) / 8;
            return new(Math.PI * b, inertia, inertia, b / 2, b / 2);
        }

        return Round(b, h);
    }

    /// <summary>Lines round a rectangle.</summary>
    /// <param name="bMm">Its side along y [mm], 1 to 10000.</param>
    /// <param name="hMm">Its side along z [mm], 1 to 10000.</param>
    /// <returns>The weld.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>Elastic properties of lines: A = 2 (b + h), I = h³/6 + b h²/2</source>
    public static WeldGroup Round(double bMm, double hMm)
    {
        Within.Require(bMm, 1, 10_000, "mm");
        Within.Require(hMm, 1, 10_000, "mm");
        return new(2 * (bMm + hMm), Along(hMm, bMm), Along(bMm, hMm), bMm / 2, hMm / 2);
    }

    private static double Along(double h, double b) => (Math.Pow(h, 3) / 6) + (b * h * h / 2);
}

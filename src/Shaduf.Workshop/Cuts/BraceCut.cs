using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>A brace between the face of an upright column and the underside of a level beam.</summary>
/// <param name="RiseDeg">Its angle from the level [deg].</param>
/// <param name="ColumnSawDeg">Saw angle at the column [deg].</param>
/// <param name="BeamSawDeg">Saw angle at the beam [deg].</param>
/// <param name="CentreMm">Length along its axis [mm].</param>
/// <param name="LongMm">Long point to long point [mm].</param>
/// <param name="ShortMm">Length of its short side [mm].</param>
public sealed record BraceCut(
    double RiseDeg,
    double ColumnSawDeg,
    double BeamSawDeg,
    double CentreMm,
    double LongMm,
    double ShortMm
)
{
    /// <summary>The cuts of a brace from its working line, axis to axis.</summary>
    /// <param name="runMm">Level distance of its working points [mm], 50 to 20000.</param>
    /// <param name="riseMm">Upright distance [mm], 50 to 20000.</param>
    /// <param name="columnMm">Width of the column [mm], 0 to 1000.</param>
    /// <param name="beamMm">Depth of the beam [mm], 0 to 1000.</param>
    /// <param name="braceMm">Depth of the brace [mm], 5 to 500.</param>
    /// <returns>Angles and lengths.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <exception cref="ArgumentException">Nothing is left of its short side.</exception>
    /// <source>Trigonometry: set-backs (c/2)/cos a and (h/2)/sin a, ends d/2 times the tangents of both saw angles</source>
    public static BraceCut Of(double runMm, double riseMm, double columnMm, double beamMm, double braceMm)
    {
        Within.Require(runMm, 50, 20_000, "mm");
        Within.Require(riseMm, 50, 20_000, "mm");
        Within.Require(columnMm, 0, 1000, "mm");
        Within.Require(beamMm, 0, 1000, "mm");
        Within.Require(braceMm, 5, 500, "mm");
        var angle = Math.Atan2(riseMm, runMm);
        var (sin, cos) = Math.SinCos(angle);
        var centreMm = double.Hypot(runMm, riseMm) - (columnMm / 2 / cos) - (beamMm / 2 / sin);
        var slantMm = braceMm / 2 * ((sin / cos) + (cos / sin));
        var deg = angle * 180 / Math.PI;
        return centreMm > slantMm
            ? new(deg, deg, 90 - deg, centreMm, centreMm + slantMm, centreMm - slantMm)
            : throw new ArgumentException("nothing is left of the brace between its two cuts", nameof(runMm));
    }
}

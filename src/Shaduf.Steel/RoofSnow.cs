using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Snow on a plane with one slope from which it may slide.</summary>
public static class RoofSnow
{
    /// <summary>Load on the plan of the plane.</summary>
    /// <param name="groundKNPerM2">Snow on the ground s_k [kN/m2], 0 to 20.</param>
    /// <param name="tiltDeg">Tilt [deg], 0 to 90.</param>
    /// <returns>s [kN/m2]; C_e = C_t = 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1991-1-3:2003, 5.2 and table 5.2, μ_1</source>
    public static double OnPlanKNPerM2(double groundKNPerM2, double tiltDeg)
    {
        Within.Require(groundKNPerM2, 0, 20, "kN/m2");
        Within.Require(tiltDeg, 0, 90, "deg");
        var shape = tiltDeg <= 30 ? 0.8 : Math.Max(0, 0.8 * (60 - tiltDeg) / 30);
        return shape * groundKNPerM2;
    }
}

using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Light and heat under which a point of a curve was measured, or to which it is carried.</summary>
/// <param name="IrradianceWPerM2">Light on the plane [W/m²], 50 to 1500.</param>
/// <param name="CellDegC">Cell temperature [°C], -40 to 110.</param>
public readonly record struct TestLight(double IrradianceWPerM2, double CellDegC);

/// <summary>How a module's curve moves: what the first procedure of IEC 60891 needs.</summary>
/// <param name="ShortCircuitA">Short-circuit current as measured [A], 0.1 to 50.</param>
/// <param name="CurrentAPerK">Change of current with temperature [A/K], -0.1 to 0.1.</param>
/// <param name="VoltageVPerK">Change of voltage with temperature [V/K], -5 to 0.</param>
/// <param name="SeriesOhm">Resistance in series [Ω], 0 to 10.</param>
/// <param name="CurveOhmPerK">Curve correction factor [Ω/K], -1 to 1.</param>
public sealed record TestCurve(
    double ShortCircuitA,
    double CurrentAPerK,
    double VoltageVPerK,
    double SeriesOhm,
    double CurveOhmPerK
);

/// <summary>A measured point of a curve of current and voltage.</summary>
/// <param name="CurrentA">Current [A], 0 to 50.</param>
/// <param name="VoltageV">Voltage [V], 0 to 1500.</param>
public readonly record struct TestPoint(double CurrentA, double VoltageV)
{
    /// <summary>Carries the point to other light and temperature.</summary>
    /// <param name="curve">How the module's curve moves.</param>
    /// <param name="from">Light and temperature at which it was measured.</param>
    /// <param name="to">Light and temperature that are wanted.</param>
    /// <returns>The point there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN; light more than 30 % off is carried all the same.</exception>
    /// <source>IEC 60891, procedure 1: I2 = I1 + Isc (G2/G1 - 1) + alpha (T2 - T1); V2 = V1 - Rs (I2 - I1) - kappa I2 (T2 - T1) + beta (T2 - T1); from memory</source>
    public TestPoint Carried(TestCurve curve, TestLight from, TestLight to)
    {
        Within.Require(CurrentA, 0, 50, "A");
        Within.Require(VoltageV, 0, 1500, "V");
        Within.Require(curve.ShortCircuitA, 0.1, 50, "A");
        Within.Require(curve.CurrentAPerK, -0.1, 0.1, "A/K");
        Within.Require(curve.VoltageVPerK, -5, 0, "V/K");
        Within.Require(curve.SeriesOhm, 0, 10, "Ω");
        Within.Require(curve.CurveOhmPerK, -1, 1, "Ω/K");
        foreach (var light in new[] { from, to })
        {
            Within.Require(light.IrradianceWPerM2, 50, 1500, "W/m²");
            Within.Require(light.CellDegC, -40, 110, "°C");
        }

        var warmerK = to.CellDegC - from.CellDegC;
        var currentA =
            CurrentA
            + (curve.ShortCircuitA * ((to.IrradianceWPerM2 / from.IrradianceWPerM2) - 1))
            + (curve.CurrentAPerK * warmerK);
        return new(
            currentA,
            VoltageV
                - (curve.SeriesOhm * (currentA - CurrentA))
                - (curve.CurveOhmPerK * currentA * warmerK)
                + (curve.VoltageVPerK * warmerK)
        );
    }
}

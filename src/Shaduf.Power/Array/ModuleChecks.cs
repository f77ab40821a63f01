using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>How the published figures of a module's single diode and of the array's losses are computed.</summary>
internal static class ModuleChecks
{
    // The module of case P-01, with the five numbers as printed there.
    private static readonly DeSotoModule Printed = new(
        new(9.45232, 3.22460e-10, 0.297814, 1 / 125.798, 1.59128),
        0.005658
    );

    public static IEnumerable<PublishedCheck> All() =>
        [
            .. PointsOf("power/single-diode", Diode),
            .. PointsOf("power/de-soto", row => DeSoto.At(Printed, row["irradianceWPerM2"], row["cellDegC"])),
            new(
                "power/array-losses",
                "kept share",
                row =>
                    new ArrayLosses(
                        row["soilingShare"],
                        row["mismatchShare"],
                        row["lightInducedShare"],
                        row["wiringShare"],
                        row["trackingShare"],
                        row["ageShare"]
                    ).KeptShare
            ),
            new("power/de-soto-fit", "light current", row => Fitted(row).LightA),
            new("power/de-soto-fit", "saturation current", row => Fitted(row).SaturationA),
            new("power/de-soto-fit", "series resistance", row => Fitted(row).SeriesOhm),
            new("power/de-soto-fit", "shunt resistance", row => 1 / Fitted(row).ShuntPerOhm),
            new("power/de-soto-fit", "ideality voltage", row => Fitted(row).IdealityV),
        ];

    private static IEnumerable<PublishedCheck> PointsOf(string method, Func<PublishedCase, DiodeState> diode) =>
        [
            new(method, "short-circuit current", row => SingleDiode.ShortCircuitA(diode(row))),
            new(method, "open-circuit voltage", row => SingleDiode.OpenCircuitV(diode(row))),
            new(method, "voltage at maximum power", row => SingleDiode.MaximumPower(diode(row)).VoltageV),
            new(method, "current at maximum power", row => SingleDiode.MaximumPower(diode(row)).CurrentA),
            new(method, "maximum power", row => SingleDiode.MaximumPower(diode(row)).PowerW),
        ];

    private static DiodeState Diode(PublishedCase row) =>
        new(row["lightA"], row["saturationA"], row["seriesOhm"], 1 / row["shuntOhm"], row["idealityV"]);

    private static DiodeState Fitted(PublishedCase row) =>
        DeSotoFit
            .Of(
                new(
                    row["ratedW"],
                    row["openCircuitV"],
                    row["shortCircuitA"],
                    row["maximumPowerV"],
                    row["maximumPowerA"],
                    new(-0.004, row["voltagePerK"], row["currentPerK"]),
                    NoctDegC: 45,
                    SystemV: 1000,
                    SeriesFuseA: 20
                )
            )
            .Module.Reference;
}

using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>How the published figures of tests on site are computed.</summary>
internal static class ProofChecks
{
    public static IEnumerable<PublishedCheck> All() =>
        [
            new(
                "power/string-of-the-day",
                "short-circuit",
                row => StringOfTheDay.ShortCircuitA(Module(row), row["irradianceWPerM2"], row["cellDegC"])
            ),
            new(
                "power/string-of-the-day",
                "open-circuit",
                row =>
                    StringOfTheDay.OpenCircuitV(
                        Module(row),
                        row["idealityV"],
                        (int)row["seriesCount"],
                        row["irradianceWPerM2"],
                        row["cellDegC"]
                    )
            ),
            new("power/test-point", "carried-current", row => Carried(row).CurrentA),
            new("power/test-point", "carried-power", row => Carried(row).CurrentA * Carried(row).VoltageV),
            new("power/insulation-test", "test-voltage", row => InsulationTest.TestV(row["systemV"])),
        ];

    private static ModuleSheet Module(PublishedCase row) =>
        new(
            double.NaN,
            row["openCircuitV"],
            row["shortCircuitA"],
            double.NaN,
            double.NaN,
            new(double.NaN, row["voltagePerK"], row["currentPerK"]),
            double.NaN,
            double.NaN,
            double.NaN
        );

    private static TestPoint Carried(PublishedCase row) =>
        new TestPoint(row["currentA"], row["voltageV"]).Carried(
            new(row["shortCircuitA"], row["currentAPerK"], row["voltageVPerK"], row["seriesOhm"], row["curveOhmPerK"]),
            new(row["fromWPerM2"], row["fromDegC"]),
            new(row["toWPerM2"], row["toDegC"])
        );
}

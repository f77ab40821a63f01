using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>How each published figure of this trade is computed by the shipped kernels.</summary>
public static class PublishedChecks
{
    /// <summary>One check for each quantity named in the trade's published files.</summary>
    public static IReadOnlyList<PublishedCheck> All { get; } =
    [
        .. ModuleChecks.All(),
        .. OfArray(),
        .. OfFuse(),
        .. OfDrive(),
        .. OfPoints(),
        .. CableChecks.All(),
        .. ProtectionChecks.All(),
        .. GuardChecks.All(),
        .. ProofChecks.All(),
    ];

    // Figures that a kernel does not use stay NaN: a kernel that looked at one would refuse it.
    private static readonly ModuleSheet UnknownModule = new(
        double.NaN,
        double.NaN,
        double.NaN,
        double.NaN,
        double.NaN,
        new(double.NaN, double.NaN, double.NaN),
        double.NaN,
        double.NaN,
        double.NaN
    );

    private static readonly DriveSheet UnknownDrive = new(
        double.NaN,
        double.NaN,
        double.NaN,
        double.NaN,
        double.NaN,
        double.NaN,
        double.NaN,
        double.NaN,
        MotorKind.ThreePhase
    );

    private static readonly MotorSheet UnknownMotor = new(
        double.NaN,
        double.NaN,
        double.NaN,
        MotorKind.ThreePhase,
        double.NaN,
        double.NaN,
        double.NaN,
        double.NaN
    );

    private static IEnumerable<PublishedCheck> OfArray() =>
        [
            new(
                "power/string-voltage",
                "cold open-circuit voltage",
                row => StringVoltage.ColdOpenCircuitV(Module(row), (int)row["count"], row["coldDegC"])
            ),
            new(
                "power/string-voltage",
                "hot maximum-power voltage",
                row => StringVoltage.HotMaximumPowerV(Module(row), (int)row["count"], row["hotCellDegC"])
            ),
            new(
                "power/string-voltage",
                "aged hot maximum-power voltage",
                row =>
                    StringVoltage.AgedHotMaximumPowerV(
                        Module(row),
                        (int)row["count"],
                        row["hotCellDegC"],
                        (int)row["years"]
                    )
            ),
            new(
                "power/string-voltage",
                "most in series",
                row => StringVoltage.MostInSeries(Module(row), row["largestV"], row["coldDegC"])
            ),
            new("power/string-sizing", "most in series", row => Series(row).Most),
            new("power/string-sizing", "fewest in series", row => Series(row).Fewest),
            new(
                "power/string-sizing",
                "most strings",
                row =>
                    StringSizing.MostStrings(
                        Module(row),
                        UnknownDrive with
                        {
                            LargestShortCircuitA = row["largestShortCircuitA"],
                        }
                    )
            ),
            new("power/array-current", "design current", row => ArrayCurrent.DesignA(Module(row), Strings(row))),
            new(
                "power/array-current",
                "NEC current of conductors",
                row => ArrayCurrent.Nec690A(Module(row), Strings(row))
            ),
            new(
                "power/array-current",
                "unfused string cable",
                row => ArrayCurrent.UnfusedStringCableA(Module(row), Strings(row))
            ),
            new(
                "power/generator-fuel",
                "fuel",
                row => GeneratorFuel.LPerH(row["outputKW"], row["ratedKW"]) / row["outputKW"]
            ),
        ];

    private static IEnumerable<PublishedCheck> OfFuse() =>
        [
            Fuse("reverse current", fuse => fuse.ReverseA),
            Fuse("needed", fuse => fuse.Needed ? 1 : 0),
            Fuse("rating above", fuse => fuse.AboveA),
            Fuse("rating at most", fuse => fuse.AtMostA),
        ];

    private static PublishedCheck Fuse(string quantity, Func<StringFuse, double> obtain) =>
        new("power/string-fuse", quantity, row => obtain(StringFuse.For(Module(row), Strings(row))));

    private static IEnumerable<PublishedCheck> OfDrive() =>
        [
            new(
                "power/bus-voltage",
                "full-speed bus voltage",
                row => BusVoltage.FullSpeedV(row["motorV"], row["dropShare"])
            ),
            new(
                "power/bus-voltage",
                "largest frequency",
                row => row["ratedHz"] * BusVoltage.SpeedRatio(row["dcV"], row["motorV"], row["dropShare"])
            ),
            new(
                "power/motor-input",
                "electrical power",
                row =>
                    MotorInput.ElectricalW(
                        UnknownMotor with
                        {
                            ShaftKW = row["shaftKW"],
                            EfficiencyShare = row["efficiencyShare"],
                        },
                        row["shaftW"]
                    )
            ),
            new(
                "power/drive-input",
                "input power",
                row =>
                    DriveInput.DcW(
                        UnknownDrive with
                        {
                            EfficiencyShare = row["efficiencyShare"],
                            OwnUseW = row["ownUseW"],
                        },
                        row["motorW"]
                    )
            ),
            new(
                "power/drive-derating",
                "kept share of current",
                row => DriveDerating.Share(row["elevationM"], row["airDegC"])
            ),
        ];

    private static IEnumerable<PublishedCheck> OfPoints() =>
        [
            new("power/motor-input", "best load", _ => MotorInput.BestLoadRatio()),
            new(
                "power/motor-input",
                "electrical power by points",
                row =>
                    MotorInput.ElectricalW(
                        UnknownMotor with
                        {
                            ShaftKW = row["shaftKW"],
                            EfficiencyShare = row["efficiencyShare"],
                            ByLoad = [new(0.5, row["halfShare"])],
                        },
                        row["shaftW"]
                    )
            ),
            new(
                "power/drive-input",
                "input power by points",
                row =>
                    DriveInput.DcW(
                        UnknownDrive with
                        {
                            EfficiencyShare = row["efficiencyShare"],
                            OwnUseW = row["ownUseW"],
                            ByOutput = [new(row["lowW"], row["lowShare"]), new(row["highW"], row["highShare"])],
                        },
                        row["motorW"]
                    )
            ),
        ];

    private static ModuleSheet Module(PublishedCase row)
    {
        double Given(string name) => row.Inputs.GetValueOrDefault(name, double.NaN);
        return UnknownModule with
        {
            RatedW = Given("ratedW"),
            OpenCircuitV = Given("openCircuitV"),
            ShortCircuitA = Given("shortCircuitA"),
            MaximumPowerV = Given("maximumPowerV"),
            Coefficients = new(Given("powerPerK"), Given("voltagePerK"), Given("currentPerK")),
            SeriesFuseA = Given("seriesFuseA"),
        };
    }

    // The module of case P-14, with a drive that sets no lower limit of its own.
    private static StringRange Series(PublishedCase row) =>
        StringSizing.Series(
            UnknownModule with
            {
                OpenCircuitV = 49.9,
                MaximumPowerV = 41.7,
                Coefficients = new(-0.0035, -0.0027, 0.00048),
                SystemV = 1500,
            },
            UnknownDrive with
            {
                LargestDcV = row["largestDcV"],
                WindowLowV = 0,
            },
            UnknownMotor with
            {
                RatedV = row["motorV"],
            },
            row["coldDegC"],
            row["hotCellDegC"],
            10
        );

    private static int Strings(PublishedCase row) => (int)row["strings"];
}

using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Which shipped kernel computes each quantity of the trade's files of independent figures.</summary>
public static class OracleChecks
{
    private static readonly Margin Met = new(0.1, "%");
    private static readonly OracleTable Diodes = new(typeof(OracleChecks).Assembly, "single_diode.csv");
    private static readonly OracleTable Fits = new(typeof(OracleChecks).Assembly, "desoto_fit.csv");

    /// <summary>One check for each quantity that is compared.</summary>
    public static IReadOnlyList<OracleCheck> All { get; } =
    [
        Diodes.Check("i_l_a", Met, row => Diode(row).LightA),
        Diodes.Check("i_o_a", Met, row => Diode(row).SaturationA),
        Diodes.Check("r_sh_ohm", Met, row => 1 / Diode(row).ShuntPerOhm),
        Diodes.Check("a_v", Met, row => Diode(row).IdealityV),
        Diodes.Check("isc_a", Met, row => SingleDiode.ShortCircuitA(Diode(row))),
        Diodes.Check("voc_v", Met, row => SingleDiode.OpenCircuitV(Diode(row))),
        Diodes.Check("imp_a", Met, row => SingleDiode.MaximumPower(Diode(row)).CurrentA),
        Diodes.Check("vmp_v", Met, row => SingleDiode.MaximumPower(Diode(row)).VoltageV),
        Diodes.Check("pmp_w", Met, row => SingleDiode.MaximumPower(Diode(row)).PowerW),
        Diodes.Check("i_at_half_voc_a", Met, row => CurrentA(Diode(row), 0.5)),
        Diodes.Check("i_at_90pc_voc_a", Met, row => CurrentA(Diode(row), 0.9)),
        Fits.Check("i_l_ref_a", Met, row => Fit(row).Reference.LightA),
        Fits.Check("i_o_ref_a", Met, row => Fit(row).Reference.SaturationA),
        Fits.Check("r_s_ohm", Met, row => Fit(row).Reference.SeriesOhm),
        Fits.Check("r_sh_ref_ohm", Met, row => 1 / Fit(row).Reference.ShuntPerOhm),
        Fits.Check("a_ref_v", Met, row => Fit(row).Reference.IdealityV),
        .. Fitted(1000, 25),
        .. Fitted(800, 50),
        .. Fitted(200, 35),
    ];

    private static DiodeState Diode(CsvRow row)
    {
        var reference = new DiodeState(
            row.Number("i_l_ref_a"),
            row.Number("i_o_ref_a"),
            row.Number("r_s_ohm"),
            1 / row.Number("r_sh_ref_ohm"),
            row.Number("a_ref_v")
        );
        return DeSoto.At(
            new(reference, row.Number("alpha_sc_a_per_k")),
            row.Number("irradiance_w_m2"),
            row.Number("cell_temp_c")
        );
    }

    private static double CurrentA(DiodeState diode, double openShare) =>
        SingleDiode.CurrentA(diode, openShare * SingleDiode.OpenCircuitV(diode));

    private static IEnumerable<OracleCheck> Fitted(double irradianceWPerM2, double cellDegC)
    {
        var at = (CsvRow row) => DeSoto.At(Fit(row), irradianceWPerM2, cellDegC);
        var name = FormattableString.Invariant($"{irradianceWPerM2}_{cellDegC}");
        return
        [
            Fits.Check($"pmp_{name}_w", Met, row => SingleDiode.MaximumPower(at(row)).PowerW),
            Fits.Check($"vmp_{name}_v", Met, row => SingleDiode.MaximumPower(at(row)).VoltageV),
            Fits.Check($"imp_{name}_a", Met, row => SingleDiode.MaximumPower(at(row)).CurrentA),
            Fits.Check($"voc_{name}_v", Met, row => SingleDiode.OpenCircuitV(at(row))),
        ];
    }

    // What a sheet says besides the five conditions does not count here.
    private static DeSotoModule Fit(CsvRow row)
    {
        var (openV, shortA) = (row.Number("voc_v"), row.Number("isc_a"));
        var (voltageV, currentA) = (row.Number("vmp_v"), row.Number("imp_a"));
        var perK = new ModuleCoefficients(
            -0.004,
            row.Number("beta_voc_v_per_k") / openV,
            row.Number("alpha_sc_a_per_k") / shortA
        );
        return DeSotoFit.Of(new(voltageV * currentA, openV, shortA, voltageV, currentA, perK, 45, 1000, 20)).Module;
    }
}

using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Which shipped kernel computes each quantity of the trade's files of independent figures.</summary>
public static class OracleChecks
{
    // 1e-9 of the figure.
    private static readonly Margin Solved = new(1e-7, "%");
    private static readonly OracleTable Pipes = Table("pipe_loss.csv");
    private static readonly OracleTable Surges = Table("surge.csv");

    /// <summary>One check for each quantity that is compared.</summary>
    public static IReadOnlyList<OracleCheck> All { get; } =
    [
        Table("friction_factor.csv")
            .Check(
                "darcy_f",
                Solved,
                row => FrictionFactor.At(row.Number("reynolds"), row.Number("relative_roughness"))
            ),
        Pipes.Check("velocity_m_s", Solved, row => Loss(row).VelocityMPerS),
        Pipes.Check("reynolds", Solved, row => Loss(row).ReynoldsNumber),
        Pipes.Check("darcy_f", Solved, row => Loss(row).FrictionFactor),
        Pipes.Check("friction_loss_m", Solved, row => Loss(row).FrictionM),
        Pipes.Check("fitting_loss_m", Solved, row => Loss(row).FittingsM),
        Pipes.Check("total_loss_m", Solved, row => Loss(row).TotalM),
        Table("pipe_flow_from_head.csv")
            .Check(
                "flow_m3_h",
                Solved,
                row =>
                    3600
                    * PipeFlow.M3PerS(Run(row), row.Number("available_head_m"), row.Number("kinematic_viscosity_m2_s"))
            ),
        Table("hazen_williams.csv")
            .Check(
                "loss_m_10_67",
                Solved,
                row =>
                    HazenWilliams.LossM(
                        row.Number("bore_mm") / 1000,
                        row.Number("length_m"),
                        row.Number("flow_m3_h") / 3600,
                        row.Number("c")
                    )
            ),
        .. OracleDuty.All,
        Surges.Check("wave_speed_m_s", Solved, SpeedMPerS),
        Surges.Check("joukowsky_m", Solved, HardM),
        Surges.Check(
            "joukowsky_kpa",
            Solved,
            row => PressureClass.PressureBar(HardM(row), row.Number("density_kg_m3")) * 100
        ),
        Surges.Check("critical_time_s", Solved, row => WaterHammer.CriticalS(row.Number("length_m"), SpeedMPerS(row))),
        Surges.Check(
            "slow_closing_m",
            Solved,
            row => WaterHammer.SlowClosingM(row.Number("length_m"), VelocityMPerS(row), row.Number("closing_time_s"))
        ),
        Surges.Check(
            "governing_m",
            Solved,
            row =>
                WaterHammer.RiseM(
                    row.Number("length_m"),
                    SpeedMPerS(row),
                    VelocityMPerS(row),
                    row.Number("closing_time_s")
                )
        ),
    ];

    internal static OracleTable Table(string file) => new(typeof(OracleChecks).Assembly, file);

    internal static PipeRun Run(CsvRow row) =>
        new(
            row.Number("bore_mm") / 1000,
            row.Number("roughness_mm") / 1000,
            row.Number("length_m"),
            row.Number("sum_k")
        );

    private static PipeLoss Loss(CsvRow row) =>
        DarcyWeisbach.Loss(Run(row), row.Number("flow_m3_h") / 3600, row.Number("kinematic_viscosity_m2_s"));

    private static double VelocityMPerS(CsvRow row) => row.Number("velocity_m_s");

    private static double SpeedMPerS(CsvRow row) =>
        WaveSpeed.MPerS(
            row.Number("bore_mm") / 1000,
            row.Number("wall_mm") / 1000,
            row.Number("modulus_gpa") * 1e9,
            row.Number("support_factor_c1"),
            new(row.Number("density_kg_m3"), 1e-6, 2339, row.Number("bulk_modulus_pa"))
        );

    private static double HardM(CsvRow row) => WaterHammer.JoukowskyM(SpeedMPerS(row), VelocityMPerS(row));
}

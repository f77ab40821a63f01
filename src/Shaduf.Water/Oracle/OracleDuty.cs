using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Where a pump and its lift meet, beside independent figures.</summary>
internal static class OracleDuty
{
    private const double SPerH = 3600;
    private static readonly Margin Met = new(0.1, "%");
    private static readonly OracleTable Plain = OracleChecks.Table("operating_point.csv");
    private static readonly OracleTable Rough = OracleChecks.Table("operating_point_colebrook.csv");

    internal static IReadOnlyList<OracleCheck> All { get; } =
    [
        Plain.Check("flow_m3_h", Met, row => Point(row, Lift(row)).FlowM3PerS * SPerH),
        Plain.Check("head_m", Met, row => Point(row, Lift(row)).HeadM),
        Plain.Check(
            "hydraulic_power_w",
            Met,
            row => HydraulicPower.W(Point(row, Lift(row)).FlowM3PerS, Point(row, Lift(row)).HeadM, 998.2)
        ),
        Plain.Check("speed_ratio_no_flow", Met, row => OperatingPoint.LeastSpeedRatio(Pump(row), Lift(row))),
        Rough.Check("flow_m3_h", Met, row => Point(row, RoughLift(row)).FlowM3PerS * SPerH),
        Rough.Check("head_m", Met, row => Point(row, RoughLift(row)).HeadM),
        Rough.Check("velocity_m_s", Met, row => RoughLoss(row).VelocityMPerS),
        Rough.Check("darcy_f", Met, row => RoughLoss(row).FrictionFactor),
    ];

    private static OperatingPoint Point(CsvRow row, LiftSystem lift) =>
        OperatingPoint.Solve(Pump(row), lift, row.Number("speed_ratio"));

    // Six points of the file's curve, as a card gives them; the efficiency does not count here.
    private static PumpCurve Pump(CsvRow row)
    {
        var (a0, a1, a2) = (row.Number("a0_m"), row.Number("a1_m_per_m3h"), row.Number("a2_m_per_m3h2"));
        var endM3PerH = 2 * a0 / (-a1 + Math.Sqrt((a1 * a1) - (4 * a0 * a2)));
        return PumpCurve.Fit([
            .. Enumerable
                .Range(0, 6)
                .Select(i => 0.19 * i * endM3PerH)
                .Select(q => new PumpPoint(q / SPerH, a0 + (a1 * q) + (a2 * q * q), q == 0 ? 0 : 0.5)),
        ]);
    }

    // A run without length, of fittings only, stands in for k Q2.
    private static LiftSystem Lift(CsvRow row)
    {
        const double boreM = 0.05;
        var areaM2 = Math.PI / 4 * boreM * boreM;
        var fittings = row.Number("k_m_per_m3h2") * SPerH * SPerH * 2 * Gravity.MPerS2 * areaM2 * areaM2;
        return LiftThrough(row, new(boreM, 0, 0, fittings), 1e-6);
    }

    private static LiftSystem RoughLift(CsvRow row) =>
        LiftThrough(row, OracleChecks.Run(row), row.Number("kinematic_viscosity_m2_s"));

    private static PipeLoss RoughLoss(CsvRow row) =>
        DarcyWeisbach.Loss(
            OracleChecks.Run(row),
            Point(row, RoughLift(row)).FlowM3PerS,
            row.Number("kinematic_viscosity_m2_s")
        );

    private static LiftSystem LiftThrough(CsvRow row, PipeRun run, double viscosityM2PerS)
    {
        var well = new StepDrawdown(
            row.Number("drawdown_b_m_per_m3h") * SPerH,
            row.Number("drawdown_c_m_per_m3h2") * SPerH * SPerH,
            1,
            [],
            DrawdownBasis.Steps,
            1
        );
        return new(row.Number("static_head_m"), well, [run], 0, viscosityM2PerS);
    }
}

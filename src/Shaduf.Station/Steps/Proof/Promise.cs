using Shaduf.Power;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What a design promises for the conditions of a reading, and how uncertain the comparison is.</summary>
/// <param name="design">The design.</param>
/// <param name="measured">The readings.</param>
internal sealed class Promise(Design design, MeasuredBrief measured)
{
    private const double HardlyBar = 0.05;
    private const double LeastPowerWPerM2 = 700;
    private const double FullShare = 0.97;

    private readonly Instruments instruments = measured.Instruments;
    private readonly PumpTable table = TableOfDay(design, measured.RestM);

    private ModuleSheet Sheet => design.Choice.Module.Sheet;

    private LiftSystem System => design.Choice.Lift.System;

    /// <summary>What a string must read.</summary>
    public IEnumerable<ProofItem> OfString(StringReading reading)
    {
        var where = Invariant($"string {reading.Number}");
        var idealityV = DeSotoFit.Of(Sheet).Module.Reference.IdealityV;
        double OpenV(double light, double cell) =>
            StringOfTheDay.OpenCircuitV(Sheet, idealityV, design.Choice.SeriesCount, light, cell);
        double ShortA(double light, double cell) => StringOfTheDay.ShortCircuitA(Sheet, light, cell);
        if (reading.OpenV is { } openV)
        {
            var (promised, off) = At(OpenV, reading.LightWPerM2, reading.CellDegC);
            yield return new(
                ProofKind.OpenVoltage,
                where,
                openV,
                promised,
                "V",
                ProofTolerance.VoltageShare,
                Root(off, instruments.VoltageShare),
                ProofSense.Both
            );
        }

        if (reading.ShortA is { } shortA && reading.LightWPerM2 >= StringOfTheDay.LeastWPerM2)
        {
            var (promised, off) = At(ShortA, reading.LightWPerM2, reading.CellDegC);
            yield return new(
                ProofKind.ShortCurrent,
                where,
                shortA,
                promised,
                "A",
                ProofTolerance.CurrentShare,
                Root(off, instruments.CurrentShare),
                ProofSense.Both
            );
        }

        if (reading.InsulationMohm is { } mohm)
        {
            var systemV = 1.25 * design.Choice.SeriesCount * Sheet.OpenCircuitV;
            yield return Resistance(ProofKind.Insulation, where, mohm, InsulationTest.LeastMohm(systemV), "Mohm");
        }
    }

    /// <summary>What earth and motor must read.</summary>
    public IEnumerable<ProofItem> OfEarth()
    {
        if (measured.EarthOhm is { } ohm)
        {
            yield return Resistance(
                ProofKind.Earth,
                "at the main joint",
                ohm,
                design.Works.Guard.Earth.AimOhm,
                "ohm"
            ) with
            {
                Sense = ProofSense.AtMost,
            };
        }

        if (measured.MotorMohm is { } mohm)
        {
            yield return Resistance(
                ProofKind.MotorInsulation,
                "at the wellhead",
                mohm,
                ProofTolerance.MotorMohm,
                "Mohm"
            );
        }
    }

    /// <summary>What the running pump must read.</summary>
    public IEnumerable<ProofItem> OfRun(PumpReading reading)
    {
        var where = Invariant($"at {reading.PowerW:0} W");
        var powerShare = Root(instruments.VoltageShare, instruments.CurrentShare);
        if (PowerOf(reading, where, powerShare) is { } power)
        {
            yield return power;
        }

        var promised = table.FlowM3PerH(reading.PowerW);
        if (promised > 0)
        {
            var off = Math.Abs(table.FlowM3PerH(reading.PowerW * (1 + powerShare)) - promised) / promised;
            yield return new(
                ProofKind.Flow,
                where,
                reading.FlowM3PerH,
                promised,
                "m3/h",
                ProofTolerance.Pump.FlowLowShare,
                Root(off, instruments.FlowShare),
                ProofSense.AtLeast
            );
        }

        foreach (var item in Levels(reading, where))
        {
            yield return item;
        }
    }

    /// <summary>Time in which the tank takes a volume at the flow that was measured.</summary>
    public IEnumerable<ProofItem> OfTank()
    {
        var flow = measured.Runs.Count > 0 ? measured.Runs.Average(run => run.FlowM3PerH) : 0;
        if (measured.Tank is { } tank && flow > 0)
        {
            yield return new(
                ProofKind.TankTime,
                Invariant($"{tank.VolumeM3:0.##} m3"),
                tank.TimeH,
                tank.VolumeM3 / flow,
                "h",
                ProofTolerance.TimeShare,
                Root(instruments.FlowShare, TankOff(tank)),
                ProofSense.Both
            );
        }
    }

    // Marks of a tank are read to 2 %, a watch to half a minute: judgement, no source.
    private static double TankOff(TankReading tank)
    {
        var (litres, seconds) = (tank.VolumeM3 * 1000, tank.TimeH * 3600);
        return FilledVessel.UncertainShare(litres, 0.02 * litres, seconds, 30);
    }

    // Bright light only, and not where the pump turns as fast as it may and takes no more.
    private ProofItem? PowerOf(PumpReading reading, string where, double powerShare)
    {
        if (reading.LightWPerM2 < LeastPowerWPerM2)
        {
            return null;
        }

        var (promised, off) = At(ArrayW, reading.LightWPerM2, reading.CellDegC);
        return promised >= FullShare * table.FullPowerW
            ? null
            : new(
                ProofKind.ArrayPower,
                where,
                reading.PowerW,
                promised,
                "W",
                ProofTolerance.PowerShare,
                Root(off, powerShare),
                ProofSense.AtLeast
            );
    }

    /// <summary>Whether the pump can take all that the array gives in bright light: only then its power can be judged.</summary>
    public bool IsArrayTheLimit => ArrayW(LeastPowerWPerM2, 25) < FullShare * table.FullPowerW;

    private double ArrayW(double lightWPerM2, double cellDegC) =>
        design.Choice.ModuleCount
        * design.Sizing.Losses.KeptShare
        * DeSoto.MaximumPowerW(DeSotoFit.Of(Sheet).Module, lightWPerM2, cellDegC);

    private IEnumerable<ProofItem> Levels(PumpReading reading, string where)
    {
        var flow = reading.FlowM3PerH / 3600;
        if (reading.LevelM is { } level && measured.RestM is { } rest && design.Source.Drawdown is { } well)
        {
            var promised = Math.Max(well.DrawdownM(flow), 0.05);
            yield return new(
                ProofKind.Drawdown,
                where,
                level - rest,
                promised,
                "m",
                ProofTolerance.DrawdownShare,
                Root(1.4 * instruments.LevelM / promised, instruments.FlowShare),
                ProofSense.AtMost
            );
        }

        if (reading.GaugeBar is { } gauge)
        {
            var promised = Math.Max(GaugeBar(flow), HardlyBar);
            yield return new(
                ProofKind.Gauge,
                where,
                gauge,
                promised,
                "bar",
                ProofTolerance.Pump.HeadHighShare,
                instruments.GaugeBar / promised,
                ProofSense.Both
            );
        }
    }

    // From the ground where the main begins up to the inlet, and the main's own loss; the foot's pipe lies before the gauge.
    private double GaugeBar(double flowM3PerS)
    {
        var lift = design.Brief.Lift;
        var upM = Lift.TopM(lift) - lift.Route[0].ElevationM;
        var lossM = System.Breakdown(flowM3PerS).Runs.Skip(1).Sum(loss => loss.TotalM);
        return System.DensityKgPerM3 * Gravity.MPerS2 * (upM + lossM + System.OutletHeadM) / 1e5;
    }

    private ProofItem Resistance(ProofKind kind, string where, double read, double promised, string unit) =>
        new(kind, where, read, promised, unit, 0, instruments.OhmShare, ProofSense.AtLeast);

    // The promise, and how much the uncertain light and temperature move it.
    private (double Promised, double OffShare) At(Func<double, double, double> of, double light, double cell)
    {
        var promised = of(light, cell);
        var byLight = (of(light * (1 + instruments.LightShare), cell) / promised) - 1;
        var byCell = (of(light, cell + instruments.CellK) / promised) - 1;
        return (promised, Root(byLight, byCell));
    }

    private static double Root(double one, double other) => Math.Sqrt((one * one) + (other * other));

    // The level of the day stands higher than that of the dry season, which the design counts with.
    internal static PumpTable TableOfDay(Design design, double? restM)
    {
        var sizing = design.Sizing;
        if (restM is not { } rest)
        {
            return sizing.Table;
        }

        var lift = sizing.Hydraulics.Lift;
        var higherM = design.Source.RestDryM - rest;
        var system = lift.System with { StaticHeadM = Math.Max(0, lift.System.StaticHeadM - higherM) };
        return (sizing.Hydraulics with { Lift = lift with { System = system } }).Table(
            sizing.Table.HighestRatio > 0 ? sizing.Table.HighestRatio : sizing.VoltageSpeedRatio,
            design.Source.YieldM3PerH
        );
    }
}

using System.Collections.Immutable;
using Shaduf.Power;
using Shaduf.Sun;
using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>What the energy is while it passes a row of the ledger.</summary>
public enum LedgerStage
{
    /// <summary>Light.</summary>
    Light,

    /// <summary>Electricity, and the turning of the motor.</summary>
    Electricity,

    /// <summary>Water under pressure.</summary>
    Water,
}

/// <summary>One step on the energy's way from light on the ground to water in the tank.</summary>
/// <param name="Id">Stable name.</param>
/// <param name="Says">What the energy has come through, for people.</param>
/// <param name="Stage">What it is now.</param>
/// <param name="KWhByMonth">What is left of it after the step, January first [kWh].</param>
public sealed record LedgerRow(string Id, string Says, LedgerStage Stage, ImmutableArray<double> KWhByMonth)
{
    /// <summary>What is left of it in the year [kWh].</summary>
    public double KWh => KWhByMonth.Sum();
}

/// <summary>
/// The energy of the design year from light on the level ground to water lifted into the tank, step by step. Each step
/// keeps a share of what the step before left; the shares multiplied out are the share of the whole way.
/// </summary>
/// <param name="Rows">The steps in order, the first with all of the light.</param>
public sealed record EnergyLedger(IReadOnlyList<LedgerRow> Rows)
{
    /// <summary>Share that a step keeps of what the step before it left; 1 for the first, and where nothing came in.</summary>
    /// <param name="row">Place of the step, from 0.</param>
    /// <returns>The share; above 1 where the step gains, as a tilted plane does.</returns>
    public double KeptShare(int row) => row == 0 || !(Rows[row - 1].KWh > 0) ? 1 : Rows[row].KWh / Rows[row - 1].KWh;

    /// <summary>Share of the light on the level ground that is in the water in the tank.</summary>
    public double WholeShare => Rows[0].KWh > 0 ? Rows[^1].KWh / Rows[0].KWh : 0;

    /// <summary>Writes the ledger of a year.</summary>
    /// <param name="sky">Light on the ground and on the modules.</param>
    /// <param name="sizing">The choice.</param>
    /// <param name="trace">The year run by hour.</param>
    /// <returns>The ledger.</returns>
    /// <source>Energy balance of each step; the shares of soiling and the like multiply the power, hour for hour alike.</source>
    public static EnergyLedger Of(Sky sky, Sizing sizing, YearTrace trace)
    {
        var sums = new Dictionary<string, double[]>();
        void Add(string id, int month, double watts)
        {
            if (!sums.TryGetValue(id, out var months))
            {
                sums.Add(id, months = new double[12]);
            }

            months[month] += watts / 1000;
        }

        var modules = new ArrayHours(sky, sizing);
        var pump = new PumpHours(sizing);
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            var month = YearCalendar.MonthOf(hour);
            foreach (var (id, watts) in modules.At(hour).Concat(pump.At(trace.ArrayW[hour], trace.PumpedM3[hour])))
            {
                Add(id, month, watts);
            }
        }

        return new([.. Steps.Select(step => new LedgerRow(step.Id, step.Says, step.Stage, [.. sums[step.Id]]))]);
    }

    private static readonly IReadOnlyList<(string Id, string Says, LedgerStage Stage)> Steps =
    [
        ("level", "light on level ground of the modules' size", LedgerStage.Light),
        ("plane", "tilt and direction of the modules", LedgerStage.Light),
        ("skyline", "skyline", LedgerStage.Light),
        ("near-shade", "shade of what stands near", LedgerStage.Light),
        ("reflection", "glass: the light that is used", LedgerStage.Light),
        ("rated", "modules at their rated efficiency", LedgerStage.Electricity),
        ("weak-light", "light weaker than 1000 W/m2", LedgerStage.Electricity),
        ("temperature", "cells warmer than 25 degC", LedgerStage.Electricity),
        ("soiling", "dust and droppings", LedgerStage.Electricity),
        ("mismatch", "unequal modules in a string", LedgerStage.Electricity),
        ("first-light", "first days in the sun", LedgerStage.Electricity),
        ("age", "age in the design year", LedgerStage.Electricity),
        ("wiring", "direct-current cables", LedgerStage.Electricity),
        ("tracking", "search for maximum power: offered to the drive", LedgerStage.Electricity),
        ("start", "hours too dull for the pump to lift", LedgerStage.Electricity),
        ("full", "more than the pump can take", LedgerStage.Electricity),
        ("drive", "drive", LedgerStage.Electricity),
        ("motor-cable", "motor cable", LedgerStage.Electricity),
        ("motor", "motor", LedgerStage.Electricity),
        ("pump", "pump", LedgerStage.Water),
        ("pipes", "friction in the pipes, and pressure at the outlet", LedgerStage.Water),
        ("drawdown", "fall of the level at the source: lift into the tank", LedgerStage.Water),
        ("tank-full", "pump stopped by a full tank: water in the tank", LedgerStage.Water),
    ];

    /// <summary>The way from light to the power offered to the drive, hour by hour.</summary>
    private sealed class ArrayHours(Sky sky, Sizing sizing)
    {
        private readonly ModuleTable table = ModuleTable.Build(DeSotoFit.Of(sizing.Choice.Module.Sheet).Module);
        private readonly double count = sizing.Choice.ModuleCount;
        private readonly double areaM2 = sizing.Choice.ModuleCount * sizing.Choice.Module.Body.AreaM2;

        public IEnumerable<(string Id, double Watts)> At(int hour)
        {
            var (light, losses) = (sky.Light, sizing.Losses);
            var (open, cells) = (light.OpenWPerM2[hour], light.EffectiveWPerM2[hour]);
            var pastSkyline = open - light.HorizonLostWPerM2[hour];
            yield return ("level", areaM2 * sky.Year.GlobalWPerM2[hour]);
            yield return ("plane", areaM2 * open);
            yield return ("skyline", areaM2 * pastSkyline);
            yield return ("near-shade", areaM2 * (pastSkyline - light.NearLostWPerM2[hour]));
            yield return ("reflection", areaM2 * cells);
            yield return ("rated", count * sizing.Choice.Module.Sheet.RatedW * cells / 1000);
            yield return ("weak-light", count * table.PowerW(cells, 25));
            var watts = count * sizing.ModuleW[hour];
            yield return ("temperature", watts);
            yield return ("soiling", watts *= losses.SoilingShare);
            yield return ("mismatch", watts *= losses.MismatchShare);
            yield return ("first-light", watts *= losses.LightInducedShare);
            yield return ("age", watts *= losses.AgeShare);
            yield return ("wiring", watts *= losses.WiringShare);
            yield return ("tracking", watts * losses.TrackingShare);
        }
    }

    /// <summary>The way from the power offered to the drive to the water in the tank, hour by hour.</summary>
    private sealed class PumpHours(Sizing sizing)
    {
        private readonly double staticM = sizing.Hydraulics.Lift.System.StaticHeadM;
        private readonly double weightNPerM3 = sizing.Hydraulics.Lift.Water.DensityKgPerM3 * 9.80665;
        private readonly List<(double PowerW, double ShaftW, double PipesM, double DrawdownM)> points =
        [
            .. sizing.Table.Points.Select(point =>
            {
                var head = sizing.Hydraulics.Lift.System.Breakdown(point.Operating.FlowM3PerS);
                return (point.PowerW, point.ShaftW, head.PipesM + head.OutletHeadM, head.DrawdownM);
            }),
        ];

        public IEnumerable<(string Id, double Watts)> At(double offeredW, double pumpedM3)
        {
            var flowM3PerH = sizing.Table.FlowM3PerH(offeredW);
            var (shaftW, pipesM, drawdownM) = flowM3PerH > 0 ? Between(offeredW) : default;
            var motorW = flowM3PerH > 0 ? MotorInput.ElectricalW(sizing.Hydraulics.Pump.Motor, shaftW) : 0;
            var outputW = motorW / sizing.Hydraulics.Feed.CableKeptShare;
            var weightW = weightNPerM3 * flowM3PerH / 3600;
            yield return ("start", flowM3PerH > 0 ? offeredW : 0);
            yield return ("full", flowM3PerH > 0 ? DriveInput.DcW(sizing.Hydraulics.Drive.Sheet, outputW) : 0);
            yield return ("drive", outputW);
            yield return ("motor-cable", motorW);
            yield return ("motor", shaftW);
            yield return ("pump", weightW * (staticM + drawdownM + pipesM));
            yield return ("pipes", weightW * (staticM + drawdownM));
            yield return ("drawdown", weightW * staticM);
            yield return ("tank-full", weightNPerM3 * pumpedM3 / 3600 * staticM);
        }

        // Straight between the table's points, as the table itself reads them.
        private (double ShaftW, double PipesM, double DrawdownM) Between(double offeredW)
        {
            var above = points.FindIndex(point => point.PowerW >= offeredW);
            if (above <= 0)
            {
                var end = above == 0 ? points[0] : points[^1];
                return (end.ShaftW, end.PipesM, end.DrawdownM);
            }

            var (low, high) = (points[above - 1], points[above]);
            var share = (offeredW - low.PowerW) / (high.PowerW - low.PowerW);
            double At(double from, double to) => from + (share * (to - from));
            return (At(low.ShaftW, high.ShaftW), At(low.PipesM, high.PipesM), At(low.DrawdownM, high.DrawdownM));
        }
    }
}

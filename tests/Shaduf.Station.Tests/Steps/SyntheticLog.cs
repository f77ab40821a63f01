using System.Globalization;
using System.Text;
using Shaduf.Power;
using Shaduf.Sun;

namespace Shaduf.Station.Tests;

/// <summary>
/// A log as a station would write it, made from the hours of the design's year with faults put in: what the comparison
/// must find is known. Power comes from the one-diode model hour by hour with the hour's own air, not from the tables and
/// mean hours that the comparison uses.
/// </summary>
internal sealed class SyntheticLog(Design design, int intervalMin)
{
    private static readonly DateTime s_start = new(2026, 1, 5);

    /// <summary>Days of the log.</summary>
    public int Days { get; init; } = 364;

    /// <summary>What dust leaves of the power on a day.</summary>
    public Func<int, double> Clean { get; init; } = _ => 1;

    /// <summary>What wear leaves of the flow on a day.</summary>
    public Func<int, double> Worn { get; init; } = _ => 1;

    /// <summary>Water that leaks out of the tank on a day [m³/h].</summary>
    public Func<int, double> LeakM3PerH { get; init; } = _ => 0;

    /// <summary>Flow that the meter shows while the pump stands [m³/h].</summary>
    public double BackM3PerH { get; init; }

    /// <summary>How much the log's clock is ahead on a day [min].</summary>
    public Func<int, int> AheadMin { get; init; } = _ => 0;

    /// <summary>The heading.</summary>
    public string Heading { get; init; } = "time,flow m3/h,power W,level m,tank m,light W/m2";

    /// <summary>A row's figures as cells: flow, power, level, tank, light.</summary>
    public Func<double[], IEnumerable<string>> Cells { get; init; } =
        row => row.Select(cell => cell.ToString("0.###", CultureInfo.InvariantCulture));

    /// <summary>The rows with their heading.</summary>
    public IEnumerable<string> Lines()
    {
        yield return Heading;
        var (table, tank) = (design.Sizing.Table, design.Choice.Tank);
        var area = tank.VolumeM3 * design.Choice.TankCount / tank.HeightM;
        var restM = design.Source.RestDryM;
        var (levelM, noise, isFull) = (tank.HeightM / 2, 12345u, false);
        var hourW = HourW();
        for (var minute = 0; minute < Days * 1440; minute += intervalMin)
        {
            var (day, hour) = (minute / 1440, (minute / 60 % 24) + (((minute / 1440) + 4) % 365 * 24));
            noise = (noise * 1664525u) + 1013904223u;
            var jitter = 1 + (0.02 * ((noise / (double)uint.MaxValue) - 0.5));
            var light = design.Sky.Light.PlaneWPerM2[hour];
            var power = isFull ? 0 : Math.Min(hourW[hour] * Clean(day) * jitter, table.FullPowerW);
            var flow = power < table.StartPowerW ? 0 : table.FlowM3PerH(power) * Worn(day);
            power = flow > 0 ? power : 0;
            levelM += (flow - design.Demand.HourM3[hour] - LeakM3PerH(day)) * intervalMin / 60 / area;
            isFull = levelM >= tank.HeightM * (isFull ? 0.9 : 1);
            levelM = Math.Clamp(levelM, 0, tank.HeightM);
            var well = restM + (flow > 0 ? design.Source.Drawdown?.DrawdownM(flow / 3600) ?? 0 : 0);
            var at = s_start.AddMinutes(minute + intervalMin + AheadMin(day));
            double[] row = [flow > 0 ? flow : BackM3PerH, power, well, levelM, light];
            yield return $"{at.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)},{string.Join(',', Cells(row))}";
        }
    }

    /// <summary>The log as a file.</summary>
    public Stream Stream(Func<IEnumerable<string>, IEnumerable<string>>? marred = null) =>
        new MemoryStream(Encoding.UTF8.GetBytes(string.Join('\n', (marred ?? (lines => lines))(Lines()))));

    private double[] HourW()
    {
        var module = DeSotoFit.Of(design.Choice.Module.Sheet).Module;
        var kept = design.Choice.ModuleCount * design.Sizing.Losses.KeptShare;
        var (light, year) = (design.Sky.Light, design.Sky.Year);
        return
        [
            .. Enumerable
                .Range(0, YearCalendar.HourCount)
                .Select(hour =>
                    light.EffectiveWPerM2[hour] < 1
                        ? 0
                        : kept
                            * DeSoto.MaximumPowerW(
                                module,
                                light.EffectiveWPerM2[hour],
                                CellTemperature.DegCByNoct(
                                    light.PlaneWPerM2[hour],
                                    year.AirDegC[hour],
                                    design.Choice.Module.Sheet.NoctDegC
                                )
                            )
                ),
        ];
    }
}

using System.Globalization;
using System.Text;
using Shaduf.Station;
using Shaduf.Sun;

namespace Shaduf.Pack;

/// <summary>The year run by hour, as CSV.</summary>
internal static class YearCsv
{
    /// <summary>8,760 rows under a heading; lines that begin with # bear the stamp.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">Status, revision, hash.</param>
    /// <returns>The text.</returns>
    public static string Of(Design design, Stamp stamp)
    {
        var offset = design.Brief.Site.UtcOffsetH;
        var text = new StringBuilder(700_000);
        text.Append("# ").Append(design.Brief.Head.Name).Append(" - ").Append(stamp.Line).Append('\n');
        text.Append(
            CultureInfo.InvariantCulture,
            $"# local standard time UTC{offset:+0.##;-0.##;+0}, end of the hour; weather: {design.Sky.Weather.Says}\n"
        );
        text.Append(
            "hour_ending,air_degC,global_w_m2,plane_w_m2,array_w,pumped_m3,demand_m3,delivered_m3,tank_m3,cells_w_m2\n"
        );
        var (year, light, trace) = (design.Sky.Year, design.Sky.Light, design.Trace);
        var stamps = new DateTime(YearCalendar.Year, 1, 1, 0, 0, 0, DateTimeKind.Unspecified);
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            stamps = stamps.AddHours(1);
            text.Append(
                CultureInfo.InvariantCulture,
                $"{stamps:yyyy-MM-dd'T'HH:mm},{year.AirDegC[hour]:0.0},{year.GlobalWPerM2[hour]:0.0},{light.PlaneWPerM2[hour]:0.0},{trace.ArrayW[hour]:0},{trace.PumpedM3[hour]:0.0000},{design.Demand.HourM3[hour]:0.0000},{trace.DeliveredM3[hour]:0.0000},{trace.LevelM3[hour]:0.000},{light.EffectiveWPerM2[hour]:0.0}\n"
            );
        }

        return text.ToString();
    }
}

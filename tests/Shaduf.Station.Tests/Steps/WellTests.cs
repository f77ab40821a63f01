using System.Text.Json.Nodes;

namespace Shaduf.Station.Tests;

public sealed class WellTests
{
    // s = 0.9 Q + 0.05 Q2 in m and m3/h: 2.0, 4.4, 7.2 m at 2, 4, 6 m3/h.
    private static readonly string[] s_drawdowns = ["2.0 m", "4.4 m", "7.2 m"];

    /// <summary>
    /// Rest 30 m and 2 m of season: 32 m. 65 % of 6 m3/h: 3.9. Drawdown there 3.51 + 0.7605 = 4.2705: level 36.2705 m. With
    /// 2 m of water and 1 m in hand 39.27, so 40 m.
    /// </summary>
    [Fact]
    public void Levels_and_setting_follow_the_calculation_by_hand()
    {
        var well = WellOf();
        Assert.Equal(32, well.RestDryM, 5e-10);
        Assert.Equal(3.9, well.YieldM3PerH, 5e-10);
        Assert.Equal(36.2705, well.PumpingLevelM, 5e-7);
        Assert.Equal(40, well.PumpSettingM, 5e-10);
        Assert.Equal(32 + 0.9 + 0.05, well.LevelM(1), 5e-7);
    }

    [Fact]
    public void A_shallow_borehole_hangs_the_pump_above_its_sump()
    {
        var well = WellOf(source => source["depth"] = "41 m");
        Assert.Equal(38, well.PumpSettingM, 5e-10);
    }

    [Fact]
    public void A_setting_that_is_given_is_taken()
    {
        var well = WellOf(source => source["pumpSetting"] = "55 m");
        Assert.Equal(55, well.PumpSettingM, 5e-10);
        Assert.Empty(well.Notes);
    }

    private static Well WellOf(Action<JsonObject>? change = null)
    {
        var file = SmallDesign.File(brief =>
        {
            var source = brief["source"]!.AsObject();
            source.Remove("pumpSetting");
            for (var i = 0; i < s_drawdowns.Length; i++)
            {
                source["steps"]![i]!["drawdown"] = s_drawdowns[i];
            }

            change?.Invoke(source);
        });
        var survey = Survey.Of(file.Brief);
        return (Well)Source.Of(file.Brief, survey, DemandYear.Of(file.Brief, survey));
    }
}

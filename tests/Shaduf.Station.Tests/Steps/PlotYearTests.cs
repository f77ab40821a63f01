using System.Text.Json.Nodes;

namespace Shaduf.Station.Tests;

public sealed class PlotYearTests
{
    /// <summary>
    /// Tomato planted on the first of January: full leaf from day 70, so all of March but its first eleven days at 1.15. ETo by
    /// Hargreaves at 22 degC; no rain known.
    /// </summary>
    [Fact]
    public void A_planted_plot_follows_the_kernels_by_hand()
    {
        var use = UseOf(plot =>
        {
            plot["crop"] = "tomato";
            plot["planted"] = "1 jan";
            plot.Remove("need");
        });
        var above = Water.FieldRadiation.AboveTheAirMJPerM2Day(8, 105);
        var swing = Math.Pow(5.2 * 3.6 / above / 0.16, 2);
        var reference = 0.0023 * (22 + 17.8) * Math.Sqrt(swing) * 0.408 * above;

        // April: days 90 to 119, of which 90 to 109 in full leaf and the rest falling by 0.35 in 25 days.
        var coefficient = ((20 * 1.15) + Enumerable.Range(0, 10).Sum(day => 1.15 - (0.35 * day / 25))) / 30;
        Assert.Equal(reference * coefficient / 1000 * 200 / 0.9, use.M3PerDay[3], 5e-7);
        Assert.Equal(0, use.M3PerDay[6]);
        Assert.NotNull(use.Working);
    }

    [Fact]
    public void Moisture_and_wind_of_every_month_bring_Penman_and_Monteith()
    {
        var use = UseOf(
            plot =>
            {
                plot["crop"] = "tomato";
                plot["planted"] = "1 jan";
                plot.Remove("need");
            },
            month =>
            {
                month["high"] = "30 degC";
                month["low"] = "14 degC";
            },
            new JsonObject
            {
                ["humidity"] = "30 %",
                ["wind"] = "3 m/s",
                ["rain"] = "100 mm",
            }
        );
        Assert.Contains("Penman-Monteith", use.Working!.Title, StringComparison.Ordinal);
        Assert.Contains("rain 1.77", use.Working.Lines[0].Numbers, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("planted", "31 june", "is not a day of the year")]
    [InlineData("planted", "first of may", "is not a day of the year")]
    [InlineData("crop", "triffid", "is not in the table of crops")]
    [InlineData("crop", "rice", "has no lengths of the stages")]
    public void What_cannot_be_planted_is_said(string field, string value, string problem)
    {
        var trouble = Assert.Throws<BadInputException>(() =>
            UseOf(plot =>
            {
                plot["crop"] = "tomato";
                plot["planted"] = "1 jan";
                plot.Remove("need");
                plot[field] = value;
            })
        );
        Assert.Contains(problem, trouble.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Need_and_planting_together_and_neither_of_them_are_refused()
    {
        var both = Assert.Throws<BadInputException>(() => UseOf(plot => plot["planted"] = "1 jan"));
        Assert.Contains("month by month too", both.Message, StringComparison.Ordinal);
        var none = Assert.Throws<BadInputException>(() => UseOf(plot => plot.Remove("need")));
        Assert.Contains("neither", none.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Herds_drink_by_the_heat_and_levels_give_litres()
    {
        var file = SmallDesign.File(brief =>
        {
            brief["uses"]!["livestock"]![0]!.AsObject().Remove("each");
            brief["site"]!["months"]!["jan"]!["air"] = "27 degC";
            brief["uses"]!["people"]!.AsObject().Remove("each");
            brief["uses"]!["people"]!["level"] = "yard tap";
        });
        var survey = Survey.Of(file.Brief);
        var demand = DemandYear.Of(file.Brief, survey);
        var goats = demand.Uses.Single(use => use.Name == "goat");
        Assert.Equal(40 * 5 / 1000.0, goats.M3PerDay[0], 5e-10);

        // 3 L at 18 degC, 5 L at 27 degC: 3.889 L at 22 degC.
        Assert.Equal(40 * (3 + (2 * 4 / 9.0)) / 1000, goats.M3PerDay[1], 5e-10);
        Assert.Equal(50, survey.LitresOf(file.Brief.Uses.People[0]));
        Assert.Contains(survey.Assumptions, each => each.Id == "goat-litres");
        Assert.Contains(survey.Assumptions, each => each.Id == "level-litres (people)");
    }

    [Fact]
    public void Hours_of_your_own_are_drawn()
    {
        var file = SmallDesign.File(brief =>
        {
            brief["uses"]!["patterns"] = new JsonArray(
                new JsonObject
                {
                    ["name"] = "morning only",
                    ["hours"] = new JsonArray(
                        new JsonObject
                        {
                            ["from"] = 6,
                            ["to"] = 8,
                            ["share"] = "100 %",
                        }
                    ),
                }
            );
            brief["uses"]!["fixed"]![0]!["pattern"] = "morning only";
        });
        var use = DemandYear.Of(file.Brief, Survey.Of(file.Brief)).Uses.Single(each => each.Name == "washing");
        Assert.Equal([0.5, 0.5], use.Pattern.HourShares.Where(share => share > 0));
        Assert.Equal(0.5, use.Pattern.HourShares[6]);
    }

    private static UseYear UseOf(
        Action<JsonObject> plot,
        Action<JsonObject>? month = null,
        JsonObject? fieldMonth = null
    )
    {
        var file = SmallDesign.File(brief =>
        {
            plot(brief["uses"]!["plots"]![0]!.AsObject());
            foreach (var (_, each) in brief["site"]!["months"]!.AsObject())
            {
                month?.Invoke(each!.AsObject());
            }

            if (fieldMonth is not null)
            {
                brief["site"]!["field"] = new JsonObject
                {
                    ["months"] = new JsonObject(
                        BriefReader.Months.Select(name =>
                            KeyValuePair.Create<string, JsonNode?>(name, fieldMonth.DeepClone())
                        )
                    ),
                };
            }
        });
        var name = file.Brief.Uses.Plots[0].Crop;
        return DemandYear.Of(file.Brief, Survey.Of(file.Brief)).Uses.Single(use => use.Name == name);
    }
}

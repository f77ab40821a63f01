using Shaduf.Sun;

namespace Shaduf.Station.Tests;

public sealed class DemandYearTests
{
    [Fact]
    public void The_hours_of_each_month_add_up_to_its_days()
    {
        var file = SmallDesign.File();
        var demand = DemandYear.Of(file.Brief, Survey.Of(file.Brief));
        Assert.Equal(8760, demand.HourM3.Length);
        var hours = demand.HourM3.Index().ToLookup(hour => YearCalendar.MonthOf(hour.Index), hour => hour.Item);
        for (var month = 0; month < 12; month++)
        {
            Assert.Equal(demand.M3PerDay[month] * YearCalendar.DaysInMonth[month], hours[month].Sum(), 5e-10);
        }
    }

    [Fact]
    public void Every_day_of_a_month_is_the_same()
    {
        var file = SmallDesign.File();
        var demand = DemandYear.Of(file.Brief, Survey.Of(file.Brief));
        Assert.Equal(demand.HourM3.AsSpan(0, 24).ToArray(), demand.HourM3.AsSpan(30 * 24, 24).ToArray());
    }

    /// <summary>300 people at 40 L a day and 20 % on top: 14.4 m3 a day (energypedia, Design of Photovoltaic Pumping).</summary>
    [Fact]
    public void A_published_village_asks_for_what_it_says()
    {
        var demand = Alone(uses =>
        {
            uses["people"]!["count"] = 300;
            uses["people"]!["each"] = "40 L/d";
            uses["growth"] = "0 %/year";

            // 20 % on top of what is delivered is a sixth of what is produced.
            uses["losses"] = "16.6666666667 %";
        });
        Assert.All(demand.M3PerDay, each => Assert.Equal(14.4, each, 5e-7));
    }

    /// <summary>1000 people, 2 % a year for 10 years: 1000 x 1.02^10 = 1218.994; at 20 L: 24.380; over 0.9: 27.089 m3/d.</summary>
    [Fact]
    public void Growth_and_losses_follow_the_calculation_by_hand()
    {
        var demand = Alone(uses =>
        {
            uses["people"]!["count"] = 1000;
            uses["growth"] = "2 %/year";
            uses["losses"] = "10 %";
        });
        Assert.All(demand.M3PerDay, each => Assert.Equal(27.0888, each, 5e-5));
    }

    /// <summary>4 mm on 200 m2 at 90 %: 0.8 / 0.9 = 0.889 m3/d in January, nothing in May.</summary>
    [Fact]
    public void A_plot_drinks_by_the_month()
    {
        var file = SmallDesign.File();
        var plot = DemandYear.Of(file.Brief, Survey.Of(file.Brief)).Uses.Single(use => use.Name == "onion");
        Assert.Equal(0.888889, plot.M3PerDay[0], 5e-7);
        Assert.Equal(0, plot.M3PerDay[4]);
    }

    private static DemandYear Alone(Action<System.Text.Json.Nodes.JsonNode> change)
    {
        var file = SmallDesign.File(brief =>
        {
            var uses = brief["uses"]!.AsObject();
            foreach (var other in new[] { "school", "clinic", "livestock", "plots", "fixed" })
            {
                uses.Remove(other);
            }

            change(uses);
        });
        return DemandYear.Of(file.Brief, Survey.Of(file.Brief));
    }
}

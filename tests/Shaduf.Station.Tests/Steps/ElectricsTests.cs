using Shaduf.Power;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>Strings, cables and protection of a design, and of the same design with other strings, cards and lightning.</summary>
public sealed class ElectricsTests
{
    private static readonly Design s_design = ManyStrings.Design;

    [Fact]
    public void What_is_fitted_stands_in_the_bill_with_a_price()
    {
        var bought = s_design.Takeoff.Lines.Select(line => line.Item).ToHashSet();
        var electrics = s_design.Works.Electrics;
        Card?[] fitted =
        [
            electrics.Protection.Isolator,
            electrics.Protection.DirectArrester,
            electrics.Protection.MotorArrester,
            electrics.Protection.EarthCard,
            electrics.Filter.Card,
        ];
        Assert.All(
            fitted,
            card =>
            {
                Assert.NotNull(card);
                Assert.Contains(card.Name, bought);
                Assert.True(s_design.File.Prices.Rates.ContainsKey(card.Name), card.Name);
            }
        );
        Assert.DoesNotContain(
            s_design.Takeoff.Lines,
            line => line.Item.EndsWith("-not-found", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Many_strings_get_fuses_a_combiner_box_and_a_cable_of_their_own()
    {
        var electrics = ManyStrings.Rewired(series: 11, strings: 4);
        Assert.True(electrics.Fuse.Needed);
        var fuse = electrics.Protection.Fuse!;
        Assert.True(fuse.RatedA > electrics.Fuse.AboveA && fuse.RatedA <= electrics.Fuse.AtMostA);
        Assert.Equal(["string-cable", "dc-cable", "motor-cable"], electrics.Cables.Select(cable => cable.Id));
        Assert.True(electrics.Cables[0].Duty.LeastAmpacityA >= fuse.RatedA);
        var choice = ManyStrings.Choice(11, 4);
        var lines = ManyStrings.TakeoffOf(choice, electrics);
        Assert.Equal(8, lines.Single(line => line.Item == fuse.Name).Quantity);
        Assert.Equal(8, lines.Single(line => line.Item == "fuse-holder").Quantity);
        Assert.Equal(1, lines.Single(line => line.Item == "combiner-box").Quantity);
        Assert.Equal(1, lines.Single(line => line.Item == "dc-box").Quantity);
        var says = ManyStrings.Findings(electrics, choice).Single(each => each.Id == "electrics/string-fuses");
        Assert.Equal(FindingStatus.Holds, says.Status);
        Assert.Contains("both poles", says.Says, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "nothing can drive current back")]
    [InlineData(2, "1 other strings drive back")]
    public void Few_strings_need_no_fuses_and_it_is_said_why(int strings, string why)
    {
        var electrics = ManyStrings.Rewired(series: 22 / strings, strings);
        Assert.Null(electrics.Protection.Fuse);
        Assert.Contains(
            why,
            ManyStrings
                .Findings(electrics, ManyStrings.Choice(22 / strings, strings))
                .Single(each => each.Id == "electrics/string-fuses")
                .Says,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Lightning_decides_type_and_earth()
    {
        var none = ManyStrings.Rewired(22, 1, new(LightningRod.None, 12.5)).Protection;
        var bonded = ManyStrings.Rewired(22, 1, new LightningAsk(LightningRod.Bonded, 12.5)).Protection;
        Assert.Equal((2, 1), (none.DirectNeed.TypeNumber, bonded.DirectNeed.TypeNumber));
        Assert.Equal((6, 16), (none.FrameEarth.SizeMm2, bonded.FrameEarth.SizeMm2));
        Assert.Equal("arrester-dc2-1200", none.DirectArrester?.Name);
        Assert.Equal("arrester-dc1-1200", bonded.DirectArrester?.Name);
    }

    [Fact]
    public void What_no_card_serves_stops_the_design_and_stands_in_the_bill_without_a_price()
    {
        var bare = new CardShelf([
            .. s_design.File.Shelf.Cards.Where(card => card is not (IsolatorCard or ArresterCard or FilterCard)),
        ]);
        var electrics = ManyStrings.Rewired(22, 1, shelf: bare);
        var stops = ManyStrings
            .Findings(electrics, s_design.Choice)
            .Where(each => each.Status == FindingStatus.Stop)
            .Select(each => each.Id);
        Assert.Equal(
            ["electrics/isolator", "electrics/output-filter", "electrics/surge-direct", "electrics/surge-motor"],
            stops.Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            ["isolator-not-found", "output-filter-not-found", "surge-direct-not-found", "surge-motor-not-found"],
            ManyStrings
                .TakeoffOf(s_design.Choice, electrics)
                .Select(line => line.Item)
                .Where(item => item.EndsWith("-not-found", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void The_motor_s_way_ends_in_the_well_and_is_as_long_as_cable_and_riser()
    {
        var duty = s_design.Works.Electrics.MotorCable.Duty;
        Assert.Equal("in the well", duty.Stretches[^1].Where);
        Assert.Equal(s_design.Choice.Lift.Foot.LengthM, duty.Stretches[^1].LengthM);
        Assert.Equal(s_design.Survey["motor-cable"] + s_design.Choice.Lift.Foot.LengthM, duty.LengthM, 5e-10);
    }

    [Fact]
    public void The_lowest_frequency_lifts_and_cools()
    {
        var lowest = s_design.Works.Electrics.Lowest;
        Assert.True(lowest.SetHz >= lowest.MotorHz);
        Assert.True(lowest.SetHz >= lowest.NoFlowHz);
        Assert.True(lowest.SetHz >= lowest.CoolingHz);
        Assert.True(lowest.SetHz - Math.Max(lowest.MotorHz, lowest.CoolingHz!.Value) < 0.1 + 1e-9);
    }

    [Fact]
    public void A_far_motor_gets_a_sine_filter_and_a_near_one_a_slope_filter()
    {
        var (pump, drive, shelf) = (s_design.Choice.Pump, s_design.Choice.Drive, s_design.File.Shelf);
        Assert.Equal(FilterKind.Slope, MotorFilter.Of(pump, drive, 60, shelf).Kind);
        Assert.Equal(FilterKind.Sine, MotorFilter.Of(pump, drive, 180, shelf).Kind);
        Assert.True(
            MotorFilter.Of(pump, drive, 180, shelf).DropShare > MotorFilter.Of(pump, drive, 60, shelf).DropShare
        );
        var silent = drive with { Limits = new(null, null, null, null) };
        Assert.True(MotorFilter.Of(pump, silent, 60, shelf).IsRiseAssumed);
    }

    [Fact]
    public void No_figure_of_any_finding_is_missing_a_number()
    {
        foreach (var (series, strings) in new[] { (1, 1), (2, 3), (22, 1), (11, 6), (5, 9) })
        {
            var electrics = ManyStrings.Rewired(series, strings);
            Assert.All(
                ManyStrings.Findings(electrics, ManyStrings.Choice(series, strings)),
                each => Assert.True(double.IsFinite(each.Value ?? 0) && double.IsFinite(each.Limit ?? 0), each.Id)
            );
        }
    }
}

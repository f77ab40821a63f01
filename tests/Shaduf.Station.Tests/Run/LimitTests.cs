using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>A brief that no card can serve still gives a design; it says which limit binds, and by how much.</summary>
public sealed class LimitTests
{
    [Fact]
    public void A_source_that_gives_too_little_binds_by_its_yield()
    {
        var limit = LimitOf(Changed("testedYield: 10.5 m3/h", "testedYield: 2 m3/h"));
        Assert.Equal("yield", limit.Kind);
        Assert.Equal(1.3, limit.Allowed, 5e-10);
        Assert.True(limit.Value > 2, limit.Says);
        Assert.Equal("m3/h", limit.Unit);
    }

    [Fact]
    public void A_tank_too_high_binds_by_the_head()
    {
        var limit = LimitOf(
            Changed("elevation: 1297 m", "elevation: 1397 m", ("tankInlet: 1300.4 m", "tankInlet: 1400.4 m"))
        );
        Assert.Equal("head", limit.Kind);

        // Inlet less wellhead, and the water at the end of the dry season.
        Assert.Equal(1400.4 - 1240 + 41.5 + 3, limit.Value, 5e-7);
        Assert.InRange(limit.Allowed, 150, limit.Value);
        Assert.Equal("m", limit.Unit);
    }

    [Fact]
    public void A_borehole_too_narrow_binds_by_the_casing()
    {
        var limit = LimitOf(Changed("casing: 152 mm", "casing: 100 mm"));
        Assert.Equal("casing", limit.Kind);
        Assert.Equal(100, limit.Allowed, 5e-10);
        Assert.InRange(limit.Value, 105, 120);
        Assert.Equal("mm", limit.Unit);
    }

    [Fact]
    public void A_site_too_high_and_hot_for_every_drive_binds_by_the_drive()
    {
        var limit = LimitOf(
            Changed(
                "elevation: 1240 m\n  utc",
                "elevation: 4000 m\n  utc",
                ("recordHigh: 36 degC", "recordHigh: 50 degC"),
                ("- { chainage: 0 m, elevation: 1240 m }", "- { chainage: 0 m, elevation: 4000 m }")
            ),
            ("sip-1x60", null),
            ("lift-4x60", null)
        );
        Assert.Equal("drive", limit.Kind);
        Assert.Contains("after derating", limit.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Modules_that_no_drive_takes_bind_by_the_drive()
    {
        var limit = LimitOf(
            Specimen.Brief,
            (
                "drive-400-10",
                Specimen.Cards["drive-400-10"].Replace("windowLow: 350 V", "windowLow: 890 V", StringComparison.Ordinal)
            ),
            ("drive-230-10", null),
            ("drive-dc-12", null)
        );
        Assert.Equal("drive", limit.Kind);
        Assert.Contains("window", limit.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void A_demand_beyond_every_pump_binds_by_the_power()
    {
        var limit = LimitOf(Changed("testedYield: 10.5 m3/h", "testedYield: 60 m3/h", ("count: 980", "count: 3000")));
        Assert.Equal("power", limit.Kind);
        Assert.InRange(limit.Allowed, 0.2, 0.9);
        Assert.Equal(0.9, limit.Value, 5e-10);
    }

    [Fact]
    public void A_price_book_without_pumps_binds_by_the_price()
    {
        using var scratch = new Scratch();
        scratch.Write(
            "prices.yaml",
            string.Join(
                '\n',
                Specimen
                    .Prices.Split('\n')
                    .Where(line =>
                        !line.Contains("item: lift-", StringComparison.Ordinal)
                        && !line.Contains("item: sip-", StringComparison.Ordinal)
                    )
            )
        );
        var design = DesignRun.Run(scratch.Read(Specimen.Brief));
        Assert.Equal("price", design.Sizing.Limit!.Kind);
        Assert.False(design.Offer.Complete);
        Assert.Equal(FindingStatus.Look, design.Findings.Single(finding => finding.Id == "money/complete").Status);
    }

    [Fact]
    public void Racks_that_no_string_fills_bind_and_give_a_design()
    {
        // Two or three modules are all that the one drive takes: four rows have no use for them.
        using var scratch = new Scratch();
        var drive = Specimen.Cards["drive-dc-12"];
        scratch.WriteCards(
            (
                "drive-dc-12",
                drive
                    .Replace("largestVoltage: 170 V", "largestVoltage: 125 V", StringComparison.Ordinal)
                    .Replace("windowHigh: 150 V", "windowHigh: 100 V", StringComparison.Ordinal)
            ),
            ("drive-400-10", null),
            ("drive-230-10", null)
        );
        var brief = Changed(
            "rows: choose",
            "rows: 4",
            ("elevation: 1297 m", "elevation: 1262 m"),
            ("elevation: 1284 m", "elevation: 1262 m"),
            ("tankInlet: 1300.4 m", "tankInlet: 1265.4 m"),
            ("motorCable: 25 m", "motorCable: 1 m")
        );
        var sizing = DesignRun.Run(scratch.Read(brief)).Sizing;
        Assert.NotNull(sizing.Limit);
        var verdict = sizing.Verdicts.Single(each => each.Pump.Name == "sip-1x60");
        Assert.Contains("no equal racks", verdict.Outcome, StringComparison.Ordinal);
    }

    [Fact]
    public void A_budget_too_small_stops_with_both_figures()
    {
        using var scratch = new Scratch();
        var design = DesignRun.Run(scratch.Read(Changed("tax: 16 %", "tax: 16 %\n  budget: 20000")));
        var finding = design.Findings.Single(each => each.Id == "money/budget");
        Assert.Equal(FindingStatus.Stop, finding.Status);
        Assert.Equal(20_000, finding.Limit);
        Assert.Equal((double)design.Offer.Total, finding.Value);
        Assert.Equal("Tavo", finding.Unit);
    }

    private static string Changed(string right, string wrong, params IEnumerable<(string Right, string Wrong)> more)
    {
        var text = Specimen.Brief;
        foreach (var (from, to) in more.Prepend((right, wrong)))
        {
            Assert.Contains(from, text, StringComparison.Ordinal);
            text = text.Replace(from, to, StringComparison.Ordinal);
        }

        return text;
    }

    // The limit, once it is also a finding that stops and once every pump card has its reason.
    private static BindingLimit LimitOf(string brief, params IReadOnlyList<(string Name, string? Text)> cards)
    {
        using var scratch = new Scratch();
        scratch.WriteCards(cards);
        var design = DesignRun.Run(scratch.Read(brief));
        var limit = design.Sizing.Limit;
        Assert.NotNull(limit);
        var finding = design.Findings.Single(each => each.Id == "sizing/limit");
        Assert.Equal(FindingStatus.Stop, finding.Status);
        Assert.Contains(limit.Kind, finding.Says, StringComparison.Ordinal);
        Assert.Equal((limit.Value, limit.Allowed, limit.Unit), (finding.Value, finding.Limit, finding.Unit));
        Assert.All(design.Sizing.Verdicts, verdict => Assert.NotEmpty(verdict.Outcome));
        return limit;
    }
}

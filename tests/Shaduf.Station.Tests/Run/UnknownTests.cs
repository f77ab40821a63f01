using System.Text.Json.Nodes;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>What the user does not know is taken by a stated default, listed, and named by the results that lean on it.</summary>
public sealed class UnknownTests
{
    private const string Smallest = """
        cards: cards
        prices: prices.yaml
        station: { name: Smallest }
        site:
          latitude: 8
          longitude: 20
          elevation: 400 m
          utcOffset: 1 h
          months: { jan: {}, feb: {}, mar: {}, apr: {}, may: {}, jun: {}, jul: {}, aug: {}, sep: {}, oct: {}, nov: {}, dec: {} }
        uses:
          people: { count: 40 }
        source:
          restLevel: 20 m
        lift:
          route: [{ chainage: 0 m, elevation: 400 m }, { chainage: 100 m, elevation: 404 m }]
          tankInlet: 407 m
        """;

    [Fact]
    public void The_smallest_brief_designs_and_lists_what_was_assumed()
    {
        var design = DesignOf(Smallest);
        Sound.Assert(design);
        Assert.Equal(
            [
                "albedo",
                "array-ageing",
                "array-first-light",
                "array-mismatch",
                "array-soiling",
                "array-tracking",
                "array-wiring",
                "blockage",
                "casing",
                "contingency",
                "cover",
                "crew-people",
                "defects",
                "depth",
                "design-years",
                "discount",
                "drawdown",
                "drive-life",
                "edge",
                "end-trim",
                "fittings",
                "flash-density",
                "frost",
                "fuel-rise",
                "goods-wait",
                "groundwater",
                "growth",
                "hill-slope",
                "horizon",
                "kerf",
                "life-years",
                "losses",
                "markup",
                "month-air",
                "month-clearness",
                "motor-cable",
                "near",
                "overhead",
                "peak-day",
                "people-litres",
                "pipe-temperature",
                "pump-life",
                "record-high",
                "record-low",
                "reserve",
                "retention",
                "seasonal-fall",
                "snow",
                "soil",
                "soil-resistivity",
                "solar-care",
                "steel-grade",
                "steel-wait",
                "string-cable",
                "tank-restart",
                "target",
                "tax",
                "terrain",
                "transport",
                "validity",
                "wall",
                "water-temperature",
                "wind",
                "work-hours",
                "yield",
                "yield-share",
            ],
            design.Survey.Assumptions.Select(assumption => assumption.Id).Order(StringComparer.Ordinal)
        );
        Assert.All(
            design.Survey.Assumptions,
            assumption =>
            {
                Assert.NotEmpty(assumption.Taken);
                Assert.NotEmpty(assumption.Field);
                Assert.NotEmpty(assumption.HowToFind);
                Assert.NotEmpty(assumption.Source);
            }
        );
    }

    /// <summary>A field that says 'unknown' or 'choose' is a field left out.</summary>
    [Fact]
    public void Unknown_and_left_out_are_the_same()
    {
        var leftOut = YamlJson.Of(Smallest);
        var unknown = YamlJson.Of(Smallest);
        using var scratch = new Scratch();
        var words = 0;
        foreach (var field in SchemaField.Of(StationFile.Schema()).Where(field => field.Values[0] is null))
        {
            foreach (var word in new[] { "unknown", "choose" })
            {
                var tried = unknown.DeepClone();
                field.Put(tried, word);
                try
                {
                    scratch.Read(tried.ToJsonString());
                }
                catch (BadInputException)
                {
                    continue;
                }

                // A free text may be any word.
                if (field.Path[0] is not "station" && field.Name is not "site.sunFrom")
                {
                    (unknown, words) = (tried, words + 1);
                }

                break;
            }
        }

        Assert.True(words > 60, $"{words} fields take a word");
        var one = DesignOf(leftOut.ToJsonString());
        var other = DesignOf(unknown.ToJsonString());
        Assert.Equal(
            one.Survey.Assumptions.Select(each => each.ToString()),
            other.Survey.Assumptions.Select(each => each.ToString())
        );
        Assert.Equal(one.Offer.Total, other.Offer.Total);
        Assert.Equal(one.Findings.Select(Short), other.Findings.Select(Short));
    }

    [Fact]
    public void Findings_name_what_they_lean_on_and_are_no_better_than_it_allows()
    {
        var design = DesignOf(Smallest);
        var listed = design.Survey.Assumptions.ToDictionary(assumption => assumption.Id);
        var worst = design.Findings.Single(finding => finding.Id == "water/worst-month");
        Assert.Equal(
            [
                "albedo",
                "array-ageing",
                "array-first-light",
                "array-mismatch",
                "array-soiling",
                "array-tracking",
                "array-wiring",
                "design-years",
                "drawdown",
                "fittings",
                "growth",
                "horizon",
                "losses",
                "month-air",
                "month-clearness",
                "people-litres",
                "seasonal-fall",
                "tank-restart",
                "target",
                "yield",
                "yield-share",
            ],
            worst.LeansOn.Order(StringComparer.Ordinal)
        );
        Assert.Equal(FindingStatus.Unchecked, listed["yield"].Best);
        Assert.True(worst.Status >= FindingStatus.Unchecked);
        Assert.All(
            design.Survey.Assumptions.Where(assumption => assumption.LeanedOnBy.Count > 0),
            assumption =>
                Assert.All(
                    design.Findings.Where(finding => assumption.IsLeanedOnBy(finding.Id)),
                    finding =>
                    {
                        Assert.Contains(assumption.Id, finding.LeansOn);
                        Assert.True(finding.Status >= assumption.Best, finding.Id);
                    }
                )
        );
    }

    /// <summary>Every name in the table of defaults leads to findings that exist, so that no lean is lost by a misspelling.</summary>
    [Fact]
    public void Every_lean_leads_to_a_finding()
    {
        var whole = SmallStation.Brief();
        whole["money"]!["budget"] = 1;
        whole["site"]!["recordHigh"] = "55 degC";
        whole["guard"]!["lightning"] = "none";
        whole["source"]!["testedYield"] = "0.06 m3/h";
        whole["source"]!["steps"] = new JsonArray();
        var ids = new[] { whole.ToJsonString(), Smallest, Specimen.Brief }
            .Select(DesignOf)
            .Append(Examples.DesignOf("plain-school"))
            .SelectMany(design => design.Findings)
            .Concat(ManyStrings.Findings(ManyStrings.Rewired(11, 4), ManyStrings.Choice(11, 4)))
            .Select(finding => finding.Id)
            .ToHashSet();
        var starts = DesignOf(Smallest).Survey.Assumptions.SelectMany(assumption => assumption.LeanedOnBy).Distinct();
        Assert.All(starts, start => Assert.Contains(ids, id => id.StartsWith(start, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_cold_or_a_hot_climate_is_not_forgotten_when_the_records_are_unknown()
    {
        var brief = YamlJson.Of(Smallest);
        foreach (var (_, month) in brief["site"]!["months"]!.AsObject())
        {
            month!["air"] = "-3 degC";
        }

        brief["site"]!["months"]!["jul"]!["air"] = "20 degC";
        Assert.Equal(-18, DesignOf(brief.ToJsonString()).Survey["record-low"]);
        foreach (var (_, month) in brief["site"]!["months"]!.AsObject())
        {
            month!["air"] = "33 degC";
        }

        Assert.Equal(43, DesignOf(brief.ToJsonString()).Survey["record-high"]);
    }

    [Fact]
    public void An_existing_tank_must_be_named_and_counted()
    {
        using var scratch = new Scratch();
        Assert.Equal(
            [
                "17:7: tank.card: missing for an existing tank; the card of the tank that stands there is needed",
                "17:7: tank.count: missing for an existing tank; how many tanks stand there is needed",
            ],
            scratch.Errors(Smallest + "\ntank: { existing: yes }")
        );
    }

    private static string Short(Finding finding) =>
        $"{finding.Id} {finding.Status} {finding.Value} {string.Join(' ', finding.LeansOn)}";

    private static Design DesignOf(string text)
    {
        using var scratch = new Scratch();
        return DesignRun.Run(scratch.Read(text));
    }
}

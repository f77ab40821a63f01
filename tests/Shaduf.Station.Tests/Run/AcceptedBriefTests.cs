using System.Text.Json.Nodes;
using CsCheck;
using static System.FormattableString;

namespace Shaduf.Station.Tests;

/// <summary>Every brief that is accepted gives a design: findings may stop it, but nothing breaks.</summary>
public sealed class AcceptedBriefTests
{
    private static readonly IReadOnlyList<SchemaField> s_brief = SchemaField.Of(StationFile.Schema());

    private static readonly Dictionary<string, IReadOnlyList<SchemaField>> s_cards = StationFile
        .CardSchemas()
        .ToDictionary(card => card.Kind, card => SchemaField.Of(card.Schema));

    private static readonly string[] s_cardNames = [.. Specimen.Cards.Keys.Order(StringComparer.Ordinal)];

    // Which field, and which of its values: both taken modulo what there is.
    private static readonly Gen<(int Field, int Value)> s_change = Gen.Select(Gen.Int[0, 9999], Gen.Int[0, 99]);

    [Fact]
    public void Any_fields_at_the_ends_of_their_ranges_give_a_design() =>
        s_change
            .Array[20]
            .Sampled(
                changes =>
                {
                    using var scratch = new Scratch();
                    var brief = SmallStation.Brief();
                    StationFile? accepted = null;
                    foreach (var (fieldIndex, valueIndex) in changes)
                    {
                        var field = s_brief[fieldIndex % s_brief.Count];
                        var changed = brief.DeepClone();
                        field.Put(changed, field.Values[valueIndex % field.Values.Count]);
                        if (Tried(scratch, changed) is { } file)
                        {
                            (accepted, brief) = (file, changed);
                        }
                    }

                    Sound.Assert(DesignOf(accepted, brief.ToJsonString()));
                },
                count: 16,
                huntShare: 1 / 12.0
            );

    [Fact]
    public void Any_cards_at_the_ends_of_their_ranges_give_a_design() =>
        Gen.Select(Gen.Int[0, s_cardNames.Length - 1], s_change)
            .Array[12]
            .Sampled(
                changes =>
                {
                    using var scratch = new Scratch();
                    scratch.WriteCards();
                    var brief = SmallStation.OfFreeChoice();
                    StationFile? accepted = null;
                    var log = new List<string>();
                    foreach (var (cardIndex, (fieldIndex, valueIndex)) in changes)
                    {
                        var path = scratch.PathOf($"cards/{s_cardNames[cardIndex]}.yaml");
                        var before = File.ReadAllText(path);
                        var card = YamlJson.Of(before);
                        var fields = s_cards[(string)card["card"]!];
                        var field = fields[fieldIndex % fields.Count];
                        field.Put(card, field.Values[valueIndex % field.Values.Count]);
                        File.WriteAllText(path, card.ToJsonString());
                        if (Tried(scratch, brief) is { } file)
                        {
                            accepted = file;
                            log.Add(card.ToJsonString());
                        }
                        else
                        {
                            File.WriteAllText(path, before);
                        }
                    }

                    Sound.Assert(DesignOf(accepted, string.Join('\n', log)));
                },
                count: 10,
                huntShare: 1 / 20.0
            );

    [Theory]
    [InlineData(-65)]
    [InlineData(-30)]
    [InlineData(0)]
    [InlineData(23.44)]
    [InlineData(50)]
    [InlineData(65)]
    public void The_dullest_and_the_brightest_sky_that_are_accepted_give_a_design(double latitudeDeg)
    {
        var brightest = Math.Abs(latitudeDeg) <= 50 ? 0.7899 : 0.7599;
        foreach (var (share, tilt) in new[] { (0.0551, "10 deg"), (brightest, "60 deg") })
        {
            using var scratch = new Scratch();
            var brief = SmallStation.Brief();
            brief["site"]!["latitude"] = latitudeDeg;
            brief["array"]!["tilt"] = tilt;
            brief["array"]!["albedo"] = "90 %";
            foreach (var (month, above) in Sky.AboveTheAirKWhPerM2Day(latitudeDeg).Index())
            {
                brief["site"]!["months"]![BriefReader.Months[month]]!["sun"] = Invariant(
                    $"{share * above:0.000000} kWh/m2/d"
                );
            }

            Sound.Assert(DesignRun.Run(scratch.Read(brief.ToJsonString())));
        }
    }

    [Fact]
    public void An_island_beyond_the_date_line_gives_a_design()
    {
        using var scratch = new Scratch();
        var brief = SmallStation.Brief();
        brief["site"]!["longitude"] = "-175.2 deg";
        brief["site"]!["utcOffset"] = "13 h";
        Sound.Assert(DesignRun.Run(scratch.Read(brief.ToJsonString())));
    }

    [Fact]
    public void A_tank_far_above_every_pump_and_a_source_far_larger_than_the_pipe_give_a_design()
    {
        using var scratch = new Scratch();
        var brief = SmallStation.Brief();
        brief["source"]!["testedYield"] = "500 m3/h";
        brief["source"]!["yieldShare"] = "80 %";
        brief["lift"]!["main"] = "pe-32-pn16";
        brief["lift"]!["route"]![1]!["elevation"] = "900 m";
        brief["lift"]!["tankInlet"] = "905 m";
        Sound.Assert(DesignRun.Run(scratch.Read(brief.ToJsonString())));
    }

    [Fact]
    public void A_lightning_mast_of_sixty_metres_gives_a_design()
    {
        using var scratch = new Scratch();
        var brief = SmallStation.Brief();
        brief["guard"]!["lightning"] = "I";
        brief["guard"]!["rodHeight"] = "60 m";
        Sound.Assert(DesignRun.Run(scratch.Read(brief.ToJsonString())));
    }

    [Fact]
    public void Two_low_rows_that_nothing_serves_give_a_design_though_one_row_could_not_be_braced()
    {
        using var scratch = new Scratch();
        var brief = SmallStation.Brief();
        brief["source"]!["steps"]![0]!["flow"] = "0.05 m3/h";
        brief["array"]!["tilt"] = "15 deg";
        foreach (var (field, value) in new[] { ("lowEdge", "0.3 m"), ("tube", "SHS60x3"), ("column", "SHS100x4") })
        {
            brief["rack"]![field] = value;
        }

        brief["rack"]!["rows"] = 2;
        brief["rack"]!["columns"] = 12;
        Sound.Assert(DesignRun.Run(scratch.Read(brief.ToJsonString())));
    }

    [Fact]
    public void A_cable_that_no_pump_works_behind_gives_a_design_on_racks_that_can_be_made()
    {
        using var scratch = new Scratch();
        var brief = SmallStation.Brief();
        brief["array"]!["motorCable"] = "2000 m";
        brief["rack"]!["lowEdge"] = "0.3 m";
        brief["uses"]!.AsObject().Remove("plots");
        brief["rack"]!.AsObject().Remove("mix");
        var design = DesignRun.Run(scratch.Read(brief.ToJsonString()));
        Sound.Assert(design);
        Assert.NotNull(design.Sizing.Limit);
    }

    [Fact]
    public void Modules_that_fill_no_rack_as_asked_give_a_design_with_its_advice_on_props()
    {
        using var scratch = new Scratch();
        var brief = SmallStation.Brief();
        brief["array"]!["inSeries"] = 100;
        brief["rack"]!["footingSide"] = "2000 mm";
        brief["source"]!["dryDays"] = "1 days";
        Sound.Assert(DesignRun.Run(scratch.Read(brief.ToJsonString())));
    }

    private static StationFile? Tried(Scratch scratch, JsonNode brief)
    {
        try
        {
            return scratch.Read(brief.ToJsonString());
        }
        catch (BadInputException)
        {
            return null;
        }
    }

    private static Design DesignOf(StationFile? file, string says)
    {
        Assert.NotNull(file);
        try
        {
            return DesignRun.Run(file);
        }
        catch (Exception trouble)
        {
            throw new InvalidOperationException($"no design of an accepted file: {says}", trouble);
        }
    }
}

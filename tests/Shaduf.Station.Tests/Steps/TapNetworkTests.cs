using System.Text.Json.Nodes;
using Shaduf.Water;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>A tree of pipes to the taps: read with its faults told in place, sized at least cost, broken where it presses too hard.</summary>
public sealed class TapNetworkTests
{
    private const string Tree = """
        {
          "junctions": [ { "name": "fork", "elevation": "396 m" } ],
          "pipes": [
            { "from": "tank", "to": "fork", "length": "150 m", "pipe": "choose" },
            { "from": "fork", "to": "school", "length": "90 m", "pipe": "choose" },
            { "from": "plot", "to": "fork", "length": "60 m", "pipe": "choose" }
          ],
          "points": [
            { "name": "school", "elevation": "392 m", "flow": "0.25 L/s" },
            { "name": "plot", "elevation": "390 m", "flow": "0.4 L/s", "needs": "8 m", "manifold": "yes" }
          ]
        }
        """;

    [Fact]
    public void Each_tap_has_its_head_and_a_manifold_gets_no_stand()
    {
        var design = Of();
        var taps = design.Works.Taps;
        Assert.Equal(["fork", "school", "plot"], taps.Heads.Select(head => head.Name));
        Assert.All(taps.Taps, tap => Assert.True(tap.ResidualM >= tap.Point.NeedM - 1e-9));
        Assert.Equal(taps.Heads[0].FlowM3PerS, taps.Heads[1].FlowM3PerS + taps.Heads[2].FlowM3PerS, 12);
        Assert.Equal(1, design.Takeoff.Lines.Single(line => line.Item == "tap-stand").Quantity);
        Assert.All(Found(design, "taps/1-open", "taps/2-open"), each => Assert.Equal(FindingStatus.Holds, each.Status));
    }

    /// <summary>Every set of the shelf's tap pipes is tried: none that leaves the heads costs less.</summary>
    [Fact]
    public void No_other_set_of_pipes_that_holds_costs_less()
    {
        var design = Of();
        var heads = design.Works.Taps.Heads;
        var nu = WaterState.At(design.Survey["water-temperature"]).KinematicViscosityM2PerS;
        var cards = design.File.Shelf.All<PipeCard>().Where(card => card.Uses.Contains(PipeUse.Tap)).ToList();
        decimal Cost(IEnumerable<PipeCard> set) =>
            set.Zip(heads, (card, head) => design.File.Prices.Rates[card.Name].Amount * (decimal)head.Point.LengthM)
                .Sum();
        bool Holds(PipeCard[] set)
        {
            var lossM = set.Zip(
                    heads,
                    (card, head) =>
                        1.1
                        * DarcyWeisbach
                            .Loss(
                                new(card.BoreMm / 1000, card.RoughnessMm / 1000, head.Point.LengthM, 0),
                                head.FlowM3PerS,
                                nu
                            )
                            .TotalM
                )
                .ToList();
            var forkM = design.Works.Taps.SourceM - lossM[0];
            return forkM >= 396
                && forkM - lossM[1] >= 392 + 5
                && forkM - lossM[2] >= 390 + 8
                && set.Zip(heads, (card, head) => Lift.SpeedMPerS(card, head.FlowM3PerS * 3600)).All(v => v <= 3);
        }

        var sets = from a in cards from b in cards from c in cards select new[] { a, b, c };
        Assert.Equal(sets.Where(Holds).Min(Cost), Cost(heads.Select(head => head.Pipe)));
    }

    [Fact]
    public void A_tap_far_below_the_tank_gets_a_break_pressure_tank()
    {
        var design = Of(taps => taps["points"]![0]!["elevation"] = "330 m");
        var heads = design.Works.Taps.Heads;
        var tank = Assert.Single(heads, head => head.Point.Kind == TapPointKind.BreakPressureTank);
        var school = heads.Single(head => head.Name == "school");
        Assert.Equal(tank.Point.LevelM, school.RestM, 5e-10);
        Assert.True(school.StaticM <= 56 && school.ResidualM >= 5);
        Assert.Equal(90, tank.Point.LengthM + school.Point.LengthM, 5e-10);
        Assert.Contains(design.Takeoff.Lines, line => line is { Item: "break-pressure-tank", Quantity: 1 });
    }

    [Fact]
    public void The_flat_form_is_a_tree_of_one_fork()
    {
        var heads = SmallDesign.Of().Works.Taps.Heads;
        Assert.Equal([(-1, 100.0), (0, 30.0)], heads.Select(head => (head.Point.UpstreamIndex, head.Point.LengthM)));
        Assert.Equal(["pe-63-pn16", "pe-32-pn16"], heads.Select(head => head.Pipe.Name));
    }

    [Theory]
    [InlineData(
        "pipes",
        "{ \"from\": \"school\", \"to\": \"plot\", \"length\": \"9 m\" }",
        "taps.pipes[4].to: closes a loop"
    )]
    [InlineData(
        "junctions",
        "{ \"name\": \"well\", \"elevation\": \"396 m\" }",
        "taps.junctions[2].name: 'well' has no way"
    )]
    [InlineData("pipes", "{ \"from\": \"frok\", \"to\": \"plot\", \"length\": \"9 m\" }", "did you mean 'fork'?")]
    [InlineData("points", "{ \"name\": \"fork\", \"elevation\": \"3 m\", \"flow\": \"1 L/s\" }", "'fork' stands twice")]
    [InlineData(
        "points",
        "{ \"name\": \"x\", \"elevation\": \"3 m\", \"flow\": \"1 L/s\", \"branch\": \"3 m\" }",
        "taps.points[3].branch: stands beside 'pipes'"
    )]
    public void A_network_that_is_no_tree_is_refused_with_its_place(string list, string entry, string problem)
    {
        var refused = Assert.Throws<BadInputException>(() =>
            Of(taps => taps[list]!.AsArray().Add(JsonNode.Parse(entry)))
        );
        Assert.Contains(
            refused.Errors,
            error => error.ToString().Contains(problem, StringComparison.Ordinal) && error.Line > 0
        );
    }

    private static Design Of(Action<JsonNode>? change = null) =>
        SmallDesign.Of(brief =>
        {
            var taps = JsonNode.Parse(Tree)!;
            change?.Invoke(taps);
            brief["taps"] = taps;
        });

    private static IEnumerable<Finding> Found(Design design, params string[] ids) =>
        ids.Select(id => design.Findings.Single(finding => finding.Id == id));
}

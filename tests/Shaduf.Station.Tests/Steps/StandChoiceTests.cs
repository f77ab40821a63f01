using System.Text.Json.Nodes;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>The stand of the tank is as high as the taps need it and no higher.</summary>
public sealed class StandChoiceTests
{
    /// <summary>
    /// The ground at the tank is 406 m, the tap at 404 m wants 8 m: 6 m of stand without losses. Half metres: more than 6 m,
    /// at which the losses leave less than 8 m.
    /// </summary>
    [Fact]
    public void The_least_half_metre_that_leaves_every_tap_its_head_is_chosen()
    {
        var stand = StandChoice.Of(SmallDesign.File(brief => Thirsty(brief, "420 m")));
        var heightM = stand.File.Brief.Tank.StandM;
        Assert.Equal(0, heightM % 0.5, 12);
        Assert.True(heightM > 6);
        Assert.True(Residual(stand.File, heightM) >= 8);
        Assert.True(Residual(stand.File, heightM - 0.5) < 8);
        Assert.Contains("'school' governs", stand.Notes.Single().Why, StringComparison.Ordinal);
        var lines = stand.Workings.Single().Lines;
        Assert.InRange(lines.Single(line => line.Symbol == "S_needed").Value, heightM - 0.5, heightM);
    }

    [Fact]
    public void The_design_stands_on_the_chosen_height()
    {
        var design = SmallDesign.Of(brief => Thirsty(brief, "420 m"));
        var finding = design.Findings.Single(each => each.Id == "tank/stand");
        Assert.Equal(FindingStatus.Holds, finding.Status);
        Assert.Equal(design.Brief.Tank.StandM, finding.Value);
        Assert.Contains(design.Notes, note => note.What == "height of the tank's stand");
        Assert.Contains(design.Workings, sheet => sheet.Title.Contains("'school' needs", StringComparison.Ordinal));
    }

    [Fact]
    public void An_inlet_that_is_too_low_is_told_with_the_tap_that_governs()
    {
        var design = SmallDesign.Of(brief => Thirsty(brief, "409 m"));
        Assert.Equal(3, design.Brief.Tank.StandM, 5e-10);
        var note = design.Notes.Single(each => each.What == "height of the tank's stand");
        Assert.Contains("'school' wants 8 m", note.Why, StringComparison.Ordinal);
        Assert.Contains("3 m over the ground at most", note.Why, StringComparison.Ordinal);
        Assert.Equal(FindingStatus.Stop, design.Findings.Single(each => each.Id == "taps/1-open").Status);
    }

    [Fact]
    public void A_height_that_the_brief_gives_and_that_of_a_standing_tank_are_left_alone()
    {
        Assert.Empty(StandChoice.Of(SmallDesign.File()).Notes);
        var standing = SmallDesign.File(brief =>
        {
            Thirsty(brief, "420 m");
            brief["tank"]!["existing"] = "yes";
        });
        Assert.Empty(StandChoice.Of(standing).Notes);
        Assert.Contains(Survey.Of(standing.Brief).Assumptions, each => each.Id == "stand");
    }

    private static double Residual(StationFile file, double standM)
    {
        var brief = file.Brief with { Tank = file.Brief.Tank with { GivenStandM = standM } };
        var network = TapNetwork.Of(
            brief,
            Survey.Of(brief),
            file.Shelf,
            file.Shelf.Find<TankCard>(brief.Tank.Card!)!.HeightM,
            item => file.Prices.Rates.GetValueOrDefault(item)?.Amount
        );
        return network.Taps.Single().ResidualM;
    }

    // The school's tap nearly as high as the tank, its pipes left to choose.
    private static void Thirsty(JsonNode brief, string inlet)
    {
        brief["lift"]!["tankInlet"] = inlet;
        brief["tank"]!.AsObject().Remove("stand");
        brief["taps"]!.AsObject().Remove("mainPipe");
        var tap = brief["taps"]!["points"]![0]!.AsObject();
        tap.Remove("pipe");
        tap["elevation"] = "404 m";
        tap["needs"] = "8 m";
    }
}

using CsCheck;
using Shaduf.Steel;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>A light column of 4 m in the wind: forces by hand, each of its checks, and the speed at which it stops.</summary>
public sealed class LightColumnStrengthTests
{
    private static readonly LightSail s_sail = new(0.5, 40, true);

    /// <summary>1.5 q (1.2 d h + 1.8 A) and its lever; 1.35 of the weight, the box 0.3 m out.</summary>
    [Fact]
    public void Its_foot_carries_wind_on_tube_and_sail_and_the_weight_on_its_bracket()
    {
        var column = Column(4, LightColumnSize.All[2], 26);
        var foot = column.ForcesAt(1, 0);
        var (tubeN, sailN) = (1.2 * 1000 * 0.1143 * 4, 1.8 * 1000 * 0.5);
        Assert.Equal(1.5 * (tubeN + sailN), foot.ShearZN, 1e-6);
        Assert.Equal((1.5 * ((tubeN * 2) + (sailN * 4)) * 1000) + (1.35 * 9.81 * 40 * 300), foot.BendingYNMm, 1e-3);
        Assert.Equal(1.5 * sailN * 0.25 * Math.Sqrt(0.5) * 1000, foot.TorsionNMm, 1e-3);
        Assert.Equal(1.35 * 9.81 * (40 + (4 * column.Column.Pole.Section.MassKgPerM)), -foot.TensionN, 1e-6);
        Assert.Equal(0, column.ForcesAt(1, 4000).ShearZN - (1.5 * sailN), 1e-6);
    }

    [Fact]
    public void Each_of_tube_weld_plate_and_bolts_is_checked_and_the_worst_decides()
    {
        var column = Column(4, LightColumnSize.All[2], 26);
        var checks = column.Checks(column.Wind.PeakKNPerM2);
        Assert.Equal(6, checks.Count);
        Assert.All(
            checks,
            check => Assert.True(check.Result.UtilisationShare > 0 && check.Lines.Count > 0, check.What)
        );
        Assert.Equal(
            checks.Max(check => check.Result.UtilisationShare),
            column.Worst(column.Wind.PeakKNPerM2).Result.UtilisationShare
        );

        // The bolt on the diagonal by hand: M/(√2 s) - N/4.
        var foot = column.ForcesAt(column.Wind.PeakKNPerM2, 0);
        var pullN = (foot.BendingYNMm / (Math.Sqrt(2) * 220)) + (foot.TensionN / 4);
        var bolt = checks.Single(check => check.What.StartsWith("bolts M20", StringComparison.Ordinal));
        Assert.Equal(pullN / Bolt.TensionN(BoltSize.Of("M20"), BoltGrade.Of("4.6")), bolt.Lines[2].Value, 1e-6);
    }

    [Fact]
    public void The_lightest_that_holds_is_chosen_and_one_size_less_does_not()
    {
        var chosen = Chosen(4, 26);
        Assert.True(chosen.Holds);
        var at = LightColumnSize.All.ToList().IndexOf(chosen.Column.Size);
        Assert.All(LightColumnSize.All.Take(at), less => Assert.False(Column(4, less, 26).Holds));
        Assert.InRange(chosen.StopsMPerS(), 26, RackWind.MostMPerS);
    }

    [Fact]
    public void Where_none_holds_it_says_stop_with_the_speed_up_to_which_it_does()
    {
        var none = Chosen(12, 60);
        Assert.False(none.Holds);
        Assert.Equal(LightColumnSize.All[^1], none.Column.Size);
        var found = LightColumnFindings.Of(none).ToList();
        Assert.Equal([FindingStatus.Stop, FindingStatus.Look], found.Select(finding => finding.Status));
        Assert.Contains("hang the lamp lower", found[0].Says);
        Assert.InRange(none.StopsMPerS(), 10, 60);
        Assert.Contains(LightColumnFindings.Show(none), sheet => sheet.Title.Contains("splice 5"));
    }

    [Fact]
    public void A_card_without_sail_and_mass_makes_it_look_and_an_unknown_wind_a_plan()
    {
        var chosen = Chosen(4, 26);
        Assert.Equal(FindingStatus.Holds, LightColumnFindings.Of(chosen).First().Status);
        var reckoned = chosen with { Sail = s_sail with { IsGiven = false } };
        Assert.Equal(FindingStatus.Look, LightColumnFindings.Of(reckoned).First().Status);
        var unknown = chosen with { Wind = chosen.Wind with { IsKnown = false } };
        Assert.All(LightColumnFindings.Of(unknown), finding => Assert.Equal(FindingStatus.Unchecked, finding.Status));
    }

    /// <summary>A mast of 6 m whose lamp hangs at 4 m: 1.5 q (1.2 d h²/2 + 1.8 A h_A); above the lamp the tube alone.</summary>
    [Fact]
    public void A_mast_carries_its_lamp_where_it_hangs_and_nothing_above_it()
    {
        var mast = LightColumnStrength.Choose(
            new(6000, true, s_sail, 4000, Wind(6, 26)),
            SmallDesign.File().Brief.Rack,
            NationalChoices.Recommended
        );
        Assert.True(mast.Holds);
        var (foot, above) = (mast.ForcesAt(1, 0), mast.ForcesAt(1, 5000));
        var (tubeN, sailN) = (1.2 * mast.Column.Size.DiameterMm * 6, 1.8 * 1000 * 0.5);
        Assert.Equal((1.5 * ((tubeN * 3) + (sailN * 4)) * 1000) + (1.35 * 9.81 * 40 * 300), foot.BendingYNMm, 1e-3);
        Assert.Equal(1.5 * tubeN / 6, above.ShearZN, 1e-6);
        Assert.Equal(0, above.TorsionNMm);
        Assert.Equal(["guard/poles", "guard/mast-wind"], LightColumnFindings.Of(mast).Select(each => each.Id));
        Assert.Contains("lightning mast Y2", LightColumnFindings.Of(mast).First().Says);
        var bare = LightColumnStrength.Choose(
            new(6000, true, null, 0, Wind(6, 26)),
            SmallDesign.File().Brief.Rack,
            NationalChoices.Recommended
        );
        Assert.True(bare.Column.Pole.MassKg <= mast.Column.Pole.MassKg);
        Assert.Equal(1.5 * 1.2 * bare.Column.Size.DiameterMm * 6, bare.ForcesAt(1, 0).ShearZN, 1e-6);
    }

    [Fact]
    public void More_wind_or_more_sail_never_uses_it_less() =>
        Gen.Select(Gen.Double[2, 12], Gen.Int[0, LightColumnSize.All.Count - 1], Gen.Double[0, 3], Gen.Double[0.02, 5])
            .Sample(
                (heightM, size, gust, areaM2) =>
                {
                    var column = Column(heightM, LightColumnSize.All[size], 26) with { Sail = new(areaM2, 40, true) };
                    var more = column with { Sail = new(areaM2 * 1.2, 40, true) };
                    double Use(LightColumnStrength of, double at) => of.Worst(at).Result.UtilisationShare;
                    return Use(column, gust * 1.2) >= Use(column, gust) - 1e-9
                        && Use(more, gust) >= Use(column, gust) - 1e-9;
                }
            );

    private static RackWind Wind(double heightM, double mPerS)
    {
        var brief = SmallDesign.File().Brief;
        var site = brief.Site with { Wind = new(mPerS, 600, 50, "invented") };
        return RackWind.Of(site, Survey.Of(brief), heightM * 1000);
    }

    private static LightColumnStrength Chosen(double heightM, double mPerS) =>
        LightColumnStrength.Choose(
            new(heightM * 1000, false, s_sail, heightM * 1000, Wind(heightM, mPerS)),
            SmallDesign.File().Brief.Rack,
            NationalChoices.Recommended
        );

    private static LightColumnStrength Column(double heightM, LightColumnSize size, double mPerS) =>
        new(LightColumn.Of(heightM * 1000, size), s_sail, Wind(heightM, mPerS), SteelGrade.Unmarked, false);
}

using Shaduf.Steel;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>What happens to a full stand when a diagonal is lost or a beast leans on a leg.</summary>
public sealed class StandAccidentTests
{
    private static readonly StandDesign s_stands = Examples.DesignOf("plain-school").Works.Stand!;

    [Fact]
    public void A_stand_that_holds_outlasts_the_loss_of_a_diagonal_and_a_beast()
    {
        var accidents = s_stands.Strength.Accidents;
        Assert.Equal(2, accidents.Count);
        Assert.All(accidents, each => Assert.InRange(each.Use.UtilisationShare, 0.01, 1));
        var finding = StandAccidentFinding.Of(accidents, "");
        Assert.Equal(FindingStatus.Holds, finding.Status);
        Assert.Equal(accidents.Max(each => each.Use.UtilisationShare), finding.Value!.Value, 1e-12);
        Assert.Contains("bollards", finding.Says);
        Assert.True(s_stands.Strength.Outlasts);
        Assert.EndsWith(
            ". What would hold: this",
            StandAccidentFinding
                .Of([new("lost", "L1", "leg", new(1.2, "6.2"), "G + W")], ". What would hold: this")
                .Says,
            StringComparison.Ordinal
        );
    }

    /// <summary>Rungs climb to the deck; above it the stiles alone go on, with room to step through.</summary>
    [Fact]
    public void No_rung_bars_the_opening_above_the_deck()
    {
        var (access, plan) = (s_stands.Stand.Access, s_stands.Stand.Plan);
        var stiles = s_stands.Stand.Steel.Parts.Where(part => part.Role == StandAccess.StileRole).ToList();
        Assert.Equal(plan.FloorMm, access.RungCount * access.RungSpacingMm, 1e-9);
        Assert.InRange(access.RungSpacingMm, 225, 300);
        Assert.All(stiles, stile => Assert.Equal(plan.FloorMm + StandAccess.RailMm, stile.LengthMm, 1e-6));
        var clear = Math.Abs(stiles[1].Shape.Start.XMm - stiles[0].Shape.Start.XMm) - plan.Sections.Rail.SideMm;
        Assert.Equal(500, clear, 1e-6);
        Assert.True(clear <= StandAccess.GateMm);
    }

    [Fact]
    public void A_leg_too_thin_to_be_reckoned_with_is_told_in_words()
    {
        var refused = new CheckResult(double.PositiveInfinity, "class 4");
        var finding = StandAccidentFinding.Of([new("diagonal X1 lost", "L1", "leg", refused, "G + W")], "");
        Assert.Equal(FindingStatus.Stop, finding.Status);
        Assert.Null(finding.Value);
        Assert.Contains("L1 is then used most: its wall is too thin", finding.Says);
        Assert.Equal("refused", refused.ShareText);
    }

    [Fact]
    public void What_is_lost_carries_nothing_and_its_fellow_more()
    {
        var strength = s_stands.Strength;
        var with = s_stands.Stand.Members(TankStand.DiagonalRole).First();
        var hand = new double[StandActions.CaseCount];
        hand[StandActions.Wind] = 1;
        double Pull(FrameCases cases, int member) =>
            cases.Frame.SpansOf(member).Max(span => Math.Abs(cases.At(span, 0, hand).TensionN));
        var without = StandAccidents.Without(strength, with);
        var fellow = StandAccidents.PartnerOf(s_stands.Stand.Skeleton, with);
        Assert.True(Pull(without, with) < 0.01 * Pull(strength.Cases, with));
        Assert.True(Pull(without, fellow) > Pull(strength.Cases, fellow));
        Assert.True(without.ImbalanceShare < 1e-6);
    }

    /// <summary>By hand: 1.5 kN on a leg that turns freely at its foot and at the ring above bends it by a b P/L, and its real ends hold it.</summary>
    [Fact]
    public void A_beast_uses_a_leg_no_more_than_if_its_ends_turned_freely()
    {
        var (plan, strength) = (s_stands.Stand.Plan, s_stands.Strength);
        var length = plan.LevelsMm[1] - StandPlan.FootMm;
        var at = Math.Min(StandAccidents.CattleMm - StandPlan.FootMm, length);
        var legs = s_stands.Stand.Members(TankStand.LegRole).ToHashSet();
        var section = strength.Rules.Section(s_stands.Stand.Skeleton.Members[legs.First()]);
        var free =
            StandAccidents.CattleN
            * at
            * (length - at)
            / (length * section.ElasticModulusYMm3 * strength.Rules.Grade.YieldNPerMm2);
        var still = strength
            .Rules.Uses(strength.Cases, [strength.Combinations.Service[0]], 0)
            .Where(use => legs.Contains(use.Member))
            .Max(use => use.Result.UtilisationShare);
        Assert.InRange(strength.Accidents[^1].Use.UtilisationShare - still, 0.2 * free, 1.5 * free);
    }
}

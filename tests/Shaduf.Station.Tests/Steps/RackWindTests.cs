using CsCheck;
using Shaduf.Steel;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>What stands under the modules, a hill before them, and the depth at which their columns are held.</summary>
public sealed class RackWindTests
{
    private static readonly StationFile s_file = SmallDesign.File();
    private static readonly ModuleCard s_module = s_file.Shelf.Find<ModuleCard>("module-410")!;

    /// <summary>Table 7.6 at 10 deg: -0.9 free, -1.4 blocked.</summary>
    [Theory]
    [InlineData(null, -0.9)]
    [InlineData(0.5, -1.15)]
    [InlineData(1.0, -1.4)]
    public void What_stands_below_the_modules_lifts_them_more(double? blockageShare, double coefficient)
    {
        var brief = s_file.Brief with { Rack = s_file.Brief.Rack with { BlockageShare = blockageShare } };
        Assert.Equal(coefficient, Checked(brief, 10).Canopy.Force.UpCoefficient, 1e-9);
        Assert.Equal(
            blockageShare is null,
            Survey.Of(brief).Assumptions.Any(assumption => assumption.Id == "blockage")
        );
    }

    /// <summary>At 30 deg the free plane lifts more than the blocked one: the worse of both is taken.</summary>
    [Fact]
    public void The_free_plane_is_looked_at_beside_the_blocked_one()
    {
        var brief = s_file.Brief with { Rack = s_file.Brief.Rack with { BlockageShare = 1 } };
        Assert.Equal(-1.8, Checked(brief, 30).Canopy.Force.UpCoefficient, 1e-9);
    }

    /// <summary>c_0 = 1 + 2 · 0.2, turbulence over c_0: (1 + 7/(1.4 ln(z/z0))) (1.4 c_r)².</summary>
    [Fact]
    public void A_hill_speeds_the_wind_up_and_lowers_the_speed_at_which_a_rack_stops()
    {
        var flat = Checked(s_file.Brief, 15);
        var hill = Checked(s_file.Brief with { Site = s_file.Brief.Site with { HillSlopeShare = 0.2 } }, 15);
        Assert.Equal(1.4, hill.Wind.HillFactor, 1e-12);
        var log = Math.Log(Math.Max(2, hill.Wind.HeightM) / 0.05);
        var exposure = (1 + (7 / (1.4 * log))) * Math.Pow(1.4 * 0.19 * log, 2);
        Assert.Equal(exposure * 0.625 * 26 * 26 / 1000, hill.Wind.PeakKNPerM2, 1e-9);
        Assert.True(hill.SteelStopsMPerS() < flat.SteelStopsMPerS());
    }

    [Theory]
    [InlineData(null, FindingStatus.Look, "not known")]
    [InlineData(0.02, FindingStatus.Holds, "too flat")]
    [InlineData(0.25, FindingStatus.Look, "1.50 times")]
    [InlineData(0.9, FindingStatus.Look, "1.60 times")]
    public void A_hill_is_told_and_handed_over(double? slopeShare, FindingStatus status, string says)
    {
        var brief = s_file.Brief with { Site = s_file.Brief.Site with { HillSlopeShare = slopeShare } };
        var tried = new RackTried(Checked(brief, 15).Rack, Checked(brief, 15), 0);
        var finding = RackFindings
            .Of(new(tried, [], []), s_module, ModuleWay.Portrait)
            .Single(each => each.Id == "rack/hill");
        Assert.Equal(status, finding.Status);
        Assert.Contains(says, finding.Says);
        Assert.Equal(status == FindingStatus.Look, finding.Says.Contains("engineer"));
    }

    [Fact]
    public void A_slope_is_never_gentler_than_a_lesser_one() =>
        Gen.Select(Gen.Double[0, 2], Gen.Double[0, 2])
            .Sample(
                (a, b) =>
                    WindPressure.LargestHillFactor(Math.Max(a, b)) >= WindPressure.LargestHillFactor(Math.Min(a, b))
            );

    [Fact]
    public void The_worse_of_two_depths_counts()
    {
        var strength = Checked(s_file.Brief, 15);
        var shallow = strength.AtSurface;
        Assert.Equal((RackStrength.FixityMm, 0), (strength.HeldAtMm, shallow.HeldAtMm));
        Assert.Same(shallow, shallow.AtSurface);
        var most = strength.BothDepths.SelectMany(each => each.Members).Max(use => use.Result.UtilisationShare);
        Assert.Equal(most, strength.Governing(member => member.Role).Max(pair => pair.Use.Result.UtilisationShare));
        Assert.Equal(strength.HoldsItself && shallow.HoldsItself, strength.Holds);
        Assert.True(
            strength.SteelStopsMPerS()
                <= strength.Wind.StopsAtMPerS(gust =>
                    strength.Rules.Uses(strength.Cases, strength.Combinations.Blown, gust).All(use => use.Result.Holds)
                )
        );

        // What comes to the ground in all is the same but for the weight of the columns between both depths.
        var column = strength.Rack.Sections.Column;
        var betweenKN = strength.Rack.Skeleton.Feet.Count * 0.3 * column.MassKgPerM * 9.81 / 1000;
        foreach (var combination in strength.Combinations.Service.Select(each => each.Name))
        {
            Assert.Equal(DownKN(strength, combination), DownKN(shallow, combination) + betweenKN, 1e-3);
        }
    }

    /// <summary>
    /// Stubs under the holder, left out of its stiffness: with them the holder bends less and carries less by itself, so
    /// that leaving them out is on the safe side. Measured on the customary rack.
    /// </summary>
    [Fact]
    public void Stubs_that_are_not_counted_in_the_stiffness_are_on_the_safe_side()
    {
        var strength = Checked(s_file.Brief, 15);
        var rack = strength.Rack;
        var holder = rack.Skeleton.Members.ToList().FindIndex(member => member.Profile.MakeUp == MakeUp.DoubleChannel);
        var member = rack.Skeleton.Members[holder];
        var cuts = rack.TubePlacesMm.SelectMany(x =>
            new[] { -1, 1 }.Select(side => (holder, x - member.From.XMm + (side * SlideInDeck.StubMm)))
        );
        var frame = SkeletonFrame.Of(
            rack.Skeleton,
            each => strength.Rules.Section(each).Frame,
            strength.HeldAtMm,
            [.. RackActions.Cuts(rack), .. cuts]
        );
        var tube = strength.Rules.Section(rack.Skeleton.Members.First(each => each.Mark == "T1")).Frame;
        var stiff = frame with { Model = frame.Model with { Members = [.. frame.Model.Members.Select(Stiffened)] } };
        var (without, with) = (Under(frame), Under(stiff));
        Assert.InRange(with.BowMm, 0.5 * without.BowMm, without.BowMm);
        Assert.InRange(with.Moment, 0.3 * without.Moment, without.Moment);

        FrameMember Stiffened(FrameMember span, int i)
        {
            if (i >= frame.Spans.Count || frame.Spans[i].Member != holder)
            {
                return span;
            }

            var middle = member.From.XMm + ((frame.Spans[i].FromMm + frame.Spans[i].ToMm) / 2);
            return rack.TubePlacesMm.Any(x => Math.Abs(x - middle) < SlideInDeck.StubMm)
                ? span with
                {
                    Section = span.Section with
                    {
                        InertiaYMm4 = span.Section.InertiaYMm4 + tube.InertiaYMm4,
                        InertiaZMm4 = span.Section.InertiaZMm4 + tube.InertiaZMm4,
                    },
                }
                : span;
        }

        // Moment that the holder itself carries: all of it, or its share by stiffness where a stub lies under it.
        (double BowMm, double Moment) Under(SkeletonFrame of)
        {
            var load = new LoadCase("lift", [], [.. new PlaneLoad(rack, of).Even(1e-3, new(0, 0, 1))], []);
            var cases = FrameCases.Of(of, [load]);
            var own = strength.Rules.Section(member).Frame.InertiaYMm4;
            return (
                of.SpansOf(holder).Max(span => cases.MovementMm(span, 0.5, [1]).LengthMm),
                of.SpansOf(holder)
                    .Max(span =>
                        own
                        / of.Model.Members[span].Section.InertiaYMm4
                        * Enumerable.Range(0, 5).Max(place => Math.Abs(cases.At(span, place, [1]).BendingYNMm))
                    )
            );
        }
    }

    [Fact]
    public void A_module_is_twisted_by_what_its_corners_move()
    {
        var strength = Checked(s_file.Brief, 15);
        var twist = RackMoves.Of(strength).Single(move => move.What.StartsWith("twist", StringComparison.Ordinal));
        Assert.InRange(twist.Value, 0.1, 100);
        Assert.Equal((10, "mm", false), (twist.Limit, twist.Unit, twist.IsFirm));
        Assert.Equal(RackMoves.Firm(strength), RackMoves.Of(strength).Where(move => move.IsFirm));
    }

    [Theory]
    [InlineData(RackType.SlideIn, "edges in channels")]
    [InlineData(RackType.ClampedRails, "clamps at their places")]
    public void Clamped_modules_are_not_told_of_lips(RackType type, string asks)
    {
        var form = new RackForm(type, 2, 0, "SHS100x4", "SHS100x4", null);
        var brief = s_file.Brief with { Rack = s_file.Brief.Rack with { Angle = null } };
        var rack = Rack.Of(brief.Rack, s_module, new(2, 6, 1), 15, s_file.Shelf, form)!;
        var strength = RackStrength.Of(rack, brief, Survey.Of(brief), s_file.Shelf)!;
        var choice = new RackChoice(new(rack, strength, 0), [], []);
        Finding Of(ModuleCard module) =>
            RackFindings.Of(choice, module, ModuleWay.Portrait).Single(each => each.Id == "rack/module-holding");
        var silent = Of(s_module with { Holding = HoldingSheet.Unknown });
        Assert.Contains(asks, silent.Says);
        var limit = new HoldingLimit(null, null, 3600, 2400);
        var told = Of(s_module with { Holding = new(limit, limit, limit, limit) });
        Assert.Contains("bends between bearers", told.Says);
        Assert.False(type == RackType.ClampedRails && told.Says.Contains("lip"), told.Says);
    }

    private static double DownKN(RackStrength strength, string combination) =>
        FootLoad
            .Of(strength, strength.Combinations.Service, strength.Wind.PeakKNPerM2)
            .Where(load => load.Combination == combination)
            .Sum(load => load.DownKN);

    private static RackStrength Checked(Brief brief, double tiltDeg)
    {
        var rack = Rack.Of(brief.Rack with { Angle = null }, s_module, new(2, 7, 1), tiltDeg, s_file.Shelf)!;
        return RackStrength.Of(rack, brief, Survey.Of(brief), s_file.Shelf)!;
    }
}

using CsCheck;
using Shaduf.Ground;
using Shaduf.Parts;
using Shaduf.Steel;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>Splices, faces of tubes and the hold of columns in their concrete.</summary>
public sealed class RackJointTests
{
    private static readonly StationFile s_file = SmallDesign.File();
    private static readonly ModuleCard s_module = s_file.Shelf.Find<ModuleCard>("module-410")!;

    [Fact]
    public void Rails_on_cross_tubes_and_channels_across_tubes_press_their_walls()
    {
        foreach (
            var (type, name) in new[]
            {
                (RackType.SlideIn, "cross tube to channel"),
                (RackType.ClampedRails, "rail to cross tube"),
            }
        )
        {
            var strength = CustomRack.Strength(CustomRack.Brief with { Type = type, Lines = 2 });
            var across = strength.Faces.Where(use => use.IsAcross).ToList();
            Assert.Contains(across, use => use.Name == name);
            Assert.All(
                across,
                use => Assert.True(use.UseShare is > 0 and < 5, $"{use.Name} {use.UseShare} {use.WhyNot}")
            );
        }
    }

    [Fact]
    public void Every_splice_lies_on_its_member_and_bends_less_than_the_member_elsewhere()
    {
        var strength = Checked(new(RackType.ClampedRails, 2, 0, "SHS80x3", "SHS80x3", "SHS60x3"), 6.5);
        var skeleton = strength.Rack.Skeleton;
        Assert.NotEmpty(strength.Splices);
        Assert.All(
            strength.Splices,
            use =>
            {
                Assert.InRange(use.Place.AtMm, 500, skeleton.Members[use.Place.Member].LengthMm - 500);
                Assert.InRange(use.MomentShare, 0, 0.7);
            }
        );
        Assert.Equal(
            strength.Rack.Steel.Parts.Sum(part => part.SplicesMm.Count),
            RackSplices.PlacesOf(strength.Rack).Count
        );
        var finding = RackJointFindings.Of(strength, "").Single(each => each.Id == "rack/splices");
        Assert.Equal(FindingStatus.Holds, finding.Status);
        Assert.Contains(
            RackJointFindings.Show(strength),
            sheet => sheet.Title.StartsWith("Splice of", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Good_places_further_apart_than_a_piece_are_told()
    {
        // 2 m of truck between tubes 4 m apart: no piece reaches from one good place to the next.
        var strength = Checked(new(RackType.ClampedRails, 2, 2, "SHS80x3", "SHS80x3", "SHS60x3"), 2);
        Assert.Contains("R1", RackSplices.Anywhere(strength.Rack));
        var finding = RackJointFindings.Of(strength, "").Single(each => each.Id == "rack/splices");
        Assert.NotEqual(FindingStatus.Holds, finding.Status);
        Assert.Contains("further apart than a piece of R1", finding.Says);
    }

    [Fact]
    public void Places_are_good_or_whole_bars_are_laid() =>
        Gen.Select(Gen.Double[4000, 14_000], Gen.Int[2, 6], Gen.Double[2000, 6000])
            .Sample(
                (lengthMm, tubes, longestMm) =>
                {
                    double[] held =
                    [
                        .. Enumerable.Range(0, tubes).Select(i => 1100 + (i * (lengthMm - 2200) / (tubes - 1))),
                    ];
                    var splices = SplicePlaces.Of(lengthMm, held, longestMm);
                    Assert.True(
                        SplicePlaces.AreGood(splices, lengthMm, held)
                            || splices.SequenceEqual(Part.Splices(lengthMm, longestMm))
                    );
                }
            );

    [Fact]
    public void A_column_wider_than_the_tube_gets_a_plate_and_a_brace_is_no_wider_than_its_columns()
    {
        var oneLine = Checked(new(RackType.SlideIn, 1, 0, "SHS60x3", "SHS100x4", null), 6.5);
        var capped = oneLine.Rack.Skeleton.Joints.Where(joint => joint.HasCap).ToList();
        Assert.Equal(oneLine.Rack.Skeleton.Feet.Count, capped.Count);
        Assert.Contains(oneLine.Faces, use => use.Name == capped[0].Name && use.UseShare is not null);
        Assert.Contains(oneLine.Rack.Steel.Seams, seam => seam.Name == "cap plates to columns");

        var twoLines = Checked(new(RackType.SlideIn, 2, 0, "SHS80x3", "SHS60x3", null), 6.5);
        Assert.DoesNotContain(twoLines.Rack.Skeleton.Joints, joint => joint.HasCap);
        Assert.All(
            twoLines.Rack.Steel.Parts.Where(part => part.Mark[0] == 'D'),
            brace => Assert.Equal("SHS60x3", brace.Section.Name)
        );
        Assert.All(twoLines.Faces, use => Assert.NotNull(use.UseShare));
    }

    [Fact]
    public void A_face_that_does_not_hold_stops_the_rack()
    {
        var strength = Checked(new(RackType.SlideIn, 1, 0, "SHS60x3", "SHS100x4", null), 6.5);
        var worst = strength.Faces.Max(use => use.UseShare)!.Value;
        Assert.True(worst > 1);
        Assert.False(strength.Holds);
        var finding = RackJointFindings.Of(strength, ". Advice").Single(each => each.Id == "rack/tube-faces");
        Assert.Equal((FindingStatus.Stop, worst), (finding.Status, finding.Value!.Value));
        Assert.EndsWith(". Advice", finding.Says);
        Assert.True(strength.WeldsStopMPerS() < strength.Wind.BasicMPerS);
    }

    /// <summary>The pressure by hand, and the pull on the pieces across the foot.</summary>
    [Fact]
    public void Columns_hold_in_their_concrete_by_pressure_and_by_the_pieces_across_their_feet()
    {
        var strength = Checked(new(RackType.SlideIn, 1, 0, "SHS60x3", "SHS100x4", null), 6.5);
        var hold = ColumnHold.Of(strength, Footings.BlockOf(600, 1200, 100), NominalMix.Named("1:2:4"));
        Assert.Equal((100, 1100, 250), (hold.WidthMm, hold.DepthMm, hold.BesideMm));

        // 0.85 · 0.8 · 15/1.5; two pieces of 100 x 60 mm.
        Assert.Equal(6.8, hold.StrengthNPerMm2, 1e-9);
        Assert.Equal(12_000, hold.CrossMm2, 1e-9);
        var (v, m) = (hold.Turning.SideKN * 1e3, hold.Turning.MomentKNm * 1e6);
        Assert.Equal((v / 110_000) + (6 * (m + (v * 550)) / 121e6), hold.PressureNPerMm2, 1e-9);
        Assert.Equal(hold.PullN / 6.8, hold.NeededMm2, 1e-6);
        Assert.True(hold.Pulling.DownKN < 0);

        var thin = hold with { DepthMm = 250 };
        Assert.Equal(FindingStatus.Stop, thin.Findings(true).First().Status);
        var close = hold with { BesideMm = 60 };
        Assert.Equal(FindingStatus.Look, close.Findings(true).First().Status);
        var none = hold with { CrossMm2 = 0 };
        Assert.Equal(FindingStatus.Stop, none.Findings(true).Last().Status);
        Assert.All(hold.Findings(false), finding => Assert.Equal(FindingStatus.Unchecked, finding.Status));
        Assert.Equal(hold.NeededMm2, hold.Show().Lines[^1].Value, 1e-9);
    }

    private static RackStrength Checked(RackForm form, double truckM)
    {
        var brief = s_file.Brief with { Rack = s_file.Brief.Rack with { Angle = null, Crew = new(truckM, true) } };
        var rack = Rack.Of(brief.Rack, s_module, new(2, 8, 1), 15, s_file.Shelf, form)!;
        return RackStrength.Of(rack, brief, Survey.Of(brief), s_file.Shelf)!;
    }
}

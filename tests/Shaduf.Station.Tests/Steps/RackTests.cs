using Shaduf.Parts;
using Shaduf.Steel;

namespace Shaduf.Station.Tests;

/// <summary>
/// A customary rack: two rows of seven modules of 2.2 m x 1.1 m x 35 mm; inside 4.4 m x 7.7 m, three cross tubes, stubs of
/// 250 mm (common practice, no source).
/// </summary>
public sealed class RackTests
{
    private const double TiltDeg = 15;
    private static readonly Rack s_rack = RackOf(TiltDeg);

    [Fact]
    public void The_inside_holds_the_modules_and_the_stated_clearances()
    {
        Assert.Equal(7700, s_rack.Size.InsideLengthMm, 5e-10);
        Assert.Equal(4400, s_rack.Size.InsideDepthMm - (2 * SlideInDeck.SlopeClearanceMm), 5e-10);
        Assert.Equal(7700 + (2 * s_rack.Sections.Channel!.WebMm), s_rack.Size.LengthMm, 5e-10);
    }

    [Fact]
    public void Tubes_stand_one_module_width_from_both_ends_and_at_the_centre()
    {
        var web = s_rack.Sections.Channel!.WebMm;
        Assert.Equal(3, s_rack.TubePlacesMm.Count);
        Assert.Equal(1100, s_rack.TubePlacesMm[0] - web, 5e-10);
        Assert.Equal(s_rack.Size.LengthMm / 2, s_rack.TubePlacesMm[1], 5e-10);
        Assert.Equal(1100, s_rack.Size.LengthMm - web - s_rack.TubePlacesMm[2], 5e-10);
        Assert.Equal(3, s_rack.Steel.Parts.Count(part => part.Mark == "T1"));
    }

    [Fact]
    public void A_stub_of_250_mm_stands_on_each_side_of_every_crossing()
    {
        var stubs = s_rack.Steel.Parts.Where(part => part.Mark == "S1").ToList();
        Assert.Equal(6, stubs.Count);
        Assert.All(stubs, stub => Assert.Equal(250, stub.LengthMm, 5e-10));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(15)]
    [InlineData(35)]
    public void A_column_is_cut_at_the_tilt(double tiltDeg)
    {
        var rack = RackOf(tiltDeg);
        var tilt = tiltDeg * Math.PI / 180;
        var (side, tube) = (rack.Sections.Column.SideMm, rack.Sections.Tube.SideMm);
        var column = rack.Steel.Groups.Single(group => group.Mark == "C1");
        Assert.Equal(3, column.Count);
        Assert.Equal(side * Math.Tan(tilt), column.Shape.LongPointMm - column.Shape.ShortPointMm, 5e-7);
        Assert.Equal(tiltDeg, column.Shape.EndDeg, 5e-7);

        // From 100 mm above the bottom of a 1.2 m footing to the underside of the tube at half the slope.
        // The column is wider than the tube: a plate lies between them.
        var capMm = Rack.CapMm / Math.Cos(tilt);
        Assert.Equal((3, Rack.CapMm), (rack.Steel.Plates[0].Count, rack.Steel.Plates[0].ThicknessMm));
        var meanMm = 1100 + 1000 + (rack.Size.DepthMm / 2 * Math.Sin(tilt)) - (tube * Math.Cos(tilt)) - capMm;
        Assert.Equal(meanMm, (column.Shape.LongPointMm + column.Shape.ShortPointMm) / 2, 5e-7);
    }

    /// <summary>A strut's axis runs from the joint on the column to the tube's axis: its ends lie on the face and on the underside.</summary>
    [Fact]
    public void Struts_end_on_the_face_of_the_column_and_under_the_tube()
    {
        var tilt = TiltDeg * Math.PI / 180;
        foreach (var strut in s_rack.Steel.Parts.Where(part => part.Mark is "B1" or "B2"))
        {
            var column = s_rack.Steel.Parts.First(part => part.Mark == "C1");
            var offMm = Math.Abs(strut.Shape.Start.YMm - column.Shape.Start.YMm);
            Assert.Equal(s_rack.Sections.Column.SideMm / 2, offMm, 5e-7);
            var end = strut.Shape.End;
            var aboveMm = (end.ZMm - s_rack.Setting.LowEdgeMm) * Math.Cos(tilt) - (end.YMm * Math.Sin(tilt));
            Assert.Equal(-s_rack.Sections.Tube.SideMm, aboveMm, 5e-7);
            Assert.True(end.ZMm > strut.Shape.Start.ZMm);
        }
    }

    [Fact]
    public void Masses_are_lengths_by_mass_of_a_metre()
    {
        var byHand = s_rack.Steel.Parts.Sum(part =>
            (part.Shape.LongPointMm + part.Shape.ShortPointMm) / 2000 * part.Section.MassKgPerM
        );
        Assert.Equal(byHand, s_rack.Steel.MassKg, 5e-10);
        Assert.Equal(byHand, s_rack.Steel.Groups.Sum(group => group.MassKg), 5e-10);
        Assert.Equal(14 * 27.5, s_rack.ModuleMassKg, 5e-10);

        // 100 x 100 x 4 mm cold formed: 11.7 kg/m (EN 10219-2, table of sections).
        Assert.Equal(11.7, s_rack.Sections.Column.MassKgPerM, 5e-2);
    }

    [Fact]
    public void Parts_with_one_mark_are_alike()
    {
        Assert.Equal(
            ["B1", "B2", "C1", "F1", "F2", "F3", "F4", "K1", "S1", "S2", "T1"],
            s_rack.Steel.Groups.Select(group => group.Mark)
        );
        Assert.Equal(s_rack.Steel.Parts.Count, s_rack.Steel.Groups.Sum(group => group.Count));
    }

    [Fact]
    public void Splices_of_the_two_angles_of_a_channel_are_staggered()
    {
        var sides = s_rack.Steel.Parts.Where(part => part.Mark == "F1").ToList();
        Assert.Equal(4, sides.Count);
        Assert.True(sides.Select(part => part.SplicesMm.Single()).Distinct().Count() == 2);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(15)]
    [InlineData(35)]
    public void The_skeleton_stands_and_each_foot_takes_its_share(double tiltDeg)
    {
        var frame = SkeletonFrame.Of(RackOf(tiltDeg).Skeleton, _ => new(1000, 1e6, 1e6, 1e6), 300, []);
        var own = frame.Spans.Select((_, i) => new SpreadLoad(i, new(0, 0, -0.1))).ToList();
        var result = FrameAnalysis.Of(frame.Model).Solve(new("own", [], own, []));
        Assert.InRange(result.ImbalanceShare, 0, 1e-6);
        Assert.Equal(3, result.Reactions.Count);
        Assert.All(result.Reactions, foot => Assert.True(foot.Force.ZN > 0));
    }

    private static Rack RackOf(double tiltDeg)
    {
        var file = SmallDesign.File();
        var brief = file.Brief.Rack with { RowClearanceMm = 0, DepthClearanceMm = 0, Angle = null };
        var module = file.Shelf.Find<ModuleCard>("module-410")!;
        var body = new ModuleBody(2200, 1100, 35, 25, 27.5);
        return Rack.Of(brief, module with { Body = body }, new(2, 7, 1), tiltDeg, file.Shelf)!;
    }
}

using CsCheck;
using Shaduf.Ground;
using Shaduf.Power;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station.Tests;

/// <summary>The fence on the site: line, gate, steel, quantities, findings.</summary>
public sealed class StationFenceTests
{
    private static readonly GuardField s_field = new(12, 3, 9, 2, 1, 2);
    private static readonly RackBearing s_bearing = new(200, 12);

    private static StationFence Of(FenceBrief asked, RackGround ground = default) =>
        StationFence.Of(asked, new(s_field, s_bearing, ground), [], WorkshopBrief.Unknown);

    private static FenceCornerBrief Corner(double bearingDeg, double distanceM, double? levelM = null) =>
        new(SitePlace.By(bearingDeg, distanceM), levelM);

    [Fact]
    public void A_rectangle_keeps_its_margin_and_its_gate_in_front()
    {
        var fence = Of(new(2, [], FenceGateBrief.Unsaid));
        Assert.Equal([16, 17, 16, 17], fence.SidesM, (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(2, fence.FreeM, 1e-9);
        Assert.Equal(0, fence.Line.Gate!.SideIndex);
        Assert.Equal(8, fence.Line.Gate.MiddleM, 1e-9);
        Assert.All(FenceFindings.Of(fence), finding => Assert.Equal(FindingStatus.Holds, finding.Status));
    }

    [Fact]
    public void The_gate_stands_where_it_is_asked_or_where_it_has_room()
    {
        Assert.Equal(1.5 + 0.5, Of(new(2, [], new(3, 0, 3))).Line.Gate!.MiddleM, 1e-9);
        Assert.Equal(2, Of(new(2, [], new(3, 0, 3))).Line.Gate!.SideIndex);
        FenceCornerBrief[] slim = [Corner(20, 60), Corner(110, 30), Corner(200, 40), Corner(290, 20)];
        Assert.Equal(0, Of(new(null, slim, FenceGateBrief.Unsaid)).Line.Gate!.SideIndex);
        var narrow = Of(new(null, [Corner(0, 3), Corner(120, 3), Corner(240, 3)], new(1, null, 6)));
        Assert.Null(narrow.Line.Gate);
        Assert.Contains(
            FenceFindings.Of(narrow),
            finding => finding is { Id: "guard/fence-gate", Status: FindingStatus.Stop }
        );
    }

    [Fact]
    public void A_fence_that_leaves_the_racks_out_or_runs_through_them_is_stopped()
    {
        FindingStatus Line(params FenceCornerBrief[] line) =>
            FenceFindings
                .Of(Of(new(null, line, FenceGateBrief.Unsaid)))
                .Single(each => each.Id == "guard/fence-line")
                .Status;
        Assert.Equal(FindingStatus.Stop, Line(Corner(20, 40), Corner(25, 60), Corner(30, 40)));
        Assert.Equal(FindingStatus.Stop, Line(Corner(20, 5), Corner(140, 5), Corner(260, 5)));
        Assert.Equal(FindingStatus.Holds, Line(Corner(20, 60), Corner(140, 60), Corner(260, 60)));
    }

    [Fact]
    public void Ground_without_levels_carries_on_the_slope_under_the_racks()
    {
        var fence = Of(new(3, [], FenceGateBrief.Unsaid), new(0.1, -0.05));
        var (left, right) = (fence.Line.Corners[0], fence.Line.Corners[1]);
        Assert.Equal(-0.1 * 18, right.LevelM - left.LevelM, 1e-9);
        Assert.Equal(FindingStatus.Look, FenceFindings.Of(fence).Single(each => each.Id == "guard/fence-gate").Status);
    }

    /// <summary>Any line that the brief accepts, on any slope: steel for every post and strut, and sound findings.</summary>
    [Fact]
    public void Any_line_gives_steel_for_each_of_its_posts() =>
        Gen.Select(
                Gen.Select(Gen.Double[3, 300], Gen.Double[-50, 50]).Array[3, 40],
                Gen.Double[0.9, 6],
                Gen.Double[0, 1]
            )
            .Sample(
                (points, widthM, share) =>
                {
                    var line = points
                        .Select((point, i) => Corner(360.0 * i / points.Length, point.Item1, point.Item2))
                        .ToList();
                    if (Sides(line).Any(sideM => sideM < 1))
                    {
                        return;
                    }

                    var fence = Of(new(null, line, new(null, share, widthM)));
                    Assert.Equal(
                        fence.Line.Posts.Count + fence.Line.StrutCount + fence.Line.Rails.Count,
                        fence.Steel.Parts.Count
                    );
                    Assert.Equal(fence.Steel.Parts.Count, fence.Steel.Groups.Sum(group => group.Count));

                    // On a slope that is too steep to build on, a strut may be all but nought.
                    var isBuilt = fence.Line.Runs.All(run => run.SlopeDeg <= FenceRun.SteepestDeg);
                    Assert.All(fence.Steel.Parts, part => Assert.InRange(part.LengthMm, isBuilt ? 400 : 1, 5400));
                    foreach (var (post, part) in fence.Line.Posts.Zip(fence.Steel.Parts))
                    {
                        Assert.Equal(post.Foot.EastM * 1000, part.Shape.Start.XMm, 1e-3);
                        Assert.Equal(
                            (post.Foot.LevelM - fence.Line.Form.HoleOf(post.Kind).DepthM) * 1000,
                            part.Shape.Start.ZMm,
                            1e-3
                        );
                    }

                    Assert.All(
                        FenceFindings.Of(fence),
                        finding => Assert.True(finding.Value is null || double.IsFinite(finding.Value.Value))
                    );
                },
                iter: Math.Max(40, Check.Iter / 4)
            );

    /// <summary>On level ground and on any slope that is built: the whole foot of each strut, the tube's thickness included, lies in its hole with concrete round it.</summary>
    [Fact]
    public void Each_strut_ends_in_its_hole() =>
        Gen.Select(Gen.Double[4, 30], Gen.Double[4, 30], Gen.Double[-0.9, 0.9])
            .Sample(
                (longM, wideM, slopeRatio) =>
                {
                    var line = new[] { (0.0, 0.0), (longM, 0.0), (longM, wideM), (0.0, wideM) }
                        .Select(at => new FenceCornerBrief(new(at.Item1, at.Item2), at.Item1 * slopeRatio))
                        .ToList();
                    var fence = Of(new(null, line, FenceGateBrief.Unsaid));
                    var form = fence.Line.Form;
                    var struts = fence.Steel.Parts.Where(part => part.Role == FenceSteel.StrutRole).ToList();
                    foreach (
                        var ((foot, to), strut) in fence
                            .Line.Posts.SelectMany(post => post.StrutsTo.Select(to => (post.Foot, to)))
                            .Zip(struts)
                    )
                    {
                        var planM = double.Hypot(to.EastM - foot.EastM, to.NorthM - foot.NorthM);
                        var riseRatio = (to.LevelM - foot.LevelM) / planM;
                        var holeM = form.StrutHoleAtM / double.Hypot(1, riseRatio);
                        var end = strut.Shape.End * 0.001;
                        var endM = double.Hypot(end.XMm - foot.EastM, end.YMm - foot.NorthM);
                        var deepM = foot.LevelM + (riseRatio * endM) - end.ZMm;
                        Assert.InRange(endM + 0.024, holeM - 0.225 + 0.02, holeM + 0.225 - 0.02);
                        Assert.InRange(deepM, 0.12, form.StrutHole.DepthM - 0.05);
                    }
                }
            );

    [Fact]
    public void The_field_and_the_site_are_the_same_place()
    {
        var place = new GroundPlace(3.25, -4.5);
        var back = s_bearing.InField(s_bearing.At(place));
        Assert.Equal(place.XM, back.XM, 1e-9);
        Assert.Equal(place.YM, back.YM, 1e-9);
    }

    [Fact]
    public void Mesh_wire_and_concrete_are_taken_off_the_posts()
    {
        var design = Examples.DesignOf("hilltop-village");
        var line = design.Works.Guard.Fence!.Line;
        double Of(string item) =>
            design
                .Takeoff.Lines.Where(each => each.Item == item && each.Section == Money.BillSection.FenceAndGate)
                .Sum(each => each.Quantity);
        Assert.Equal(line.MeshM, Of("fence-mesh"), 1e-9);
        Assert.Equal(line.WireM, Of("fence-wire"), 1e-9);
        Assert.True(Of("cement-50kg") >= line.ConcreteM3 * design.Works.Footings.PerM3.BagCount);
        Assert.Equal(1, Of("fence-gate"));
        var tubes = design.Takeoff.BarPlans.Where(plan => plan.Section.Name is "CHS60.3x3.2" or "CHS48.3x3.2");
        Assert.Equal(
            line.Posts.Count + line.StrutCount + line.Rails.Count,
            tubes.Sum(plan => plan.Plan.Bars.Sum(bar => bar.Pieces.Count(piece => piece.Mark[0] == 'N')))
        );
        Assert.Contains(line.Runs, run => run.SlopeM > run.PlanM + 0.01);
    }

    private static IEnumerable<double> Sides(List<FenceCornerBrief> line) =>
        line.Zip(
            line.Skip(1).Append(line[0]),
            (a, b) => double.Hypot(b.Place.EastM - a.Place.EastM, b.Place.NorthM - a.Place.NorthM)
        );
}

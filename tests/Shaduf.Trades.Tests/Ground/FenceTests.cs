using CsCheck;
using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class FenceTests
{
    private static readonly FenceForm s_form = new(3, 1.8);

    // Points round a middle, each at its own distance and level: the line never crosses itself.
    private static readonly Gen<FencePoint[]> s_line = Gen.Select(Gen.Double[20, 150], Gen.Double[-12, 12])
        .Array[3, 12]
        .Select(points =>
            points
                .Select(
                    (point, i) =>
                    {
                        var (sin, cos) = Math.SinCos(2 * Math.PI * i / points.Length);
                        return new FencePoint(point.Item1 * sin, point.Item1 * cos, point.Item2);
                    }
                )
                .ToArray()
        );

    [Fact]
    public void A_run_of_whole_bays_gets_no_bay_more()
    {
        var fence = Fence.Around(Square(18), s_form, null);
        Assert.Equal(24, fence.BayCount);
        Assert.Equal(24, fence.Posts.Count);
        Assert.Equal(72 * 1.03, fence.MeshM, 1e-9);
        Assert.Equal(8, fence.StrutCount);
        Assert.Null(fence.GatePosts);
    }

    [Fact]
    public void Any_line_on_any_slope_has_bays_and_strained_lengths_within_their_limits() =>
        Gen.Select(s_line, Gen.Double[2.5, 5], Gen.Double[0.9, 2.25], Gen.Double[0, 1])
            .Sample(
                (line, spacingM, heightM, share) =>
                {
                    var sideM = double.Hypot(line[1].EastM - line[0].EastM, line[1].NorthM - line[0].NorthM);
                    var gate = new FenceGate(0, 2 + (share * (sideM - 4)), 3);
                    var fence = Fence.Around(line, new(spacingM, heightM), gate);
                    Assert.All(
                        fence.Runs,
                        run => Assert.All(run.BaysM, bayM => Assert.InRange(bayM, 0.01, spacingM * (1 + 1e-9)))
                    );
                    Assert.Equal(fence.BayCount + 1, fence.Posts.Count);
                    Assert.Equal(2, fence.CountOf(FencePostKind.Gate));
                    Assert.InRange(LongestStrainM(fence), 0, 69);
                    Assert.InRange(fence.StrutCount, 0, 2 * fence.StrainedCount);
                    Assert.Equal(Round(line), fence.RoundM, 1e-6);
                    Assert.All(
                        fence.Runs,
                        run => Assert.Equal(run.SlopeDeg is > 20 and <= 45 ? run.PlanM : run.SlopeM, run.MeshM, 1e-9)
                    );
                    Assert.All(fence.Posts, post => Assert.True(post.LengthM >= heightM + 0.6 - 1e-9));
                }
            );

    /// <summary>Whatever the length of a side and the place of the gate: no strut's hole meets another hole, and each strained post is held on both sides.</summary>
    [Fact]
    public void Holes_of_struts_keep_off_all_others() =>
        Gen.Select(Gen.Double[5, 30], Gen.Double[4, 30], Gen.Double[0, 1], Gen.Double[0.9, 2.25])
            .Sample(
                (longM, wideM, share, heightM) =>
                {
                    FencePoint[] corners = [new(0, 0, 0), new(longM, 0, 0), new(longM, wideM, 0), new(0, wideM, 0)];
                    var form = new FenceForm(2.5, heightM);
                    var fence = Fence.Around(corners, form, new(0, 2 + (share * (longM - 4)), 3));
                    (FencePoint At, double HalfM)[] posts =
                    [
                        .. fence.Posts.Select(post => (post.Foot, form.HoleOf(post.Kind).LengthM / 2)),
                    ];
                    (FencePoint At, double HalfM)[] struts =
                    [
                        .. fence.Posts.SelectMany(post =>
                            post.StrutsTo.Select(to =>
                                (Along(post.Foot, to, form.StrutHoleAtM), form.StrutHole.LengthM / 2)
                            )
                        ),
                    ];
                    foreach (var (i, strut) in struts.Index())
                    {
                        Assert.All(
                            posts.Concat(struts[..i]),
                            other => Assert.True(ApartM(strut.At, other.At) >= strut.HalfM + other.HalfM - 1e-6)
                        );
                    }

                    var held =
                        fence.StrutCount
                        + fence.Rails.Sum(rail => (IsStrained(rail.From) ? 1 : 0) + (IsStrained(rail.To) ? 1 : 0));
                    Assert.Equal((2 * fence.StrainedCount) - 2, held);
                }
            );

    [Fact]
    public void A_short_straight_beside_the_gate_gets_rails_and_no_struts()
    {
        var fence = Fence.Around(
            [new(0, 0, 0), new(8.4, 0, 0), new(8.4, 7.7, 0), new(0, 7.7, 0)],
            new(2.5, 1.8),
            new(0, 4.2, 3)
        );
        Assert.Equal([2, 2], [fence.Runs[0].BayCount, fence.Runs[^1].BayCount]);
        Assert.Equal(4, fence.Rails.Count);
        Assert.Equal(6, fence.StrutCount);
        Assert.All(fence.Posts.Where(post => post.Kind == FencePostKind.Gate), post => Assert.Empty(post.StrutsTo));
    }

    [Fact]
    public void Bays_at_the_ends_widen_where_equal_ones_are_too_short_for_a_strut()
    {
        var run = Fence.Around(Square(5.2), new(2.5, 1.8), null).Runs[0];
        Assert.Equal([1.875, 1.45, 1.875], run.BaysM.Select(bayM => Math.Round(bayM, 9)));
    }

    [Fact]
    public void A_long_straight_gets_strainers_and_a_slight_bend_no_strut()
    {
        var fence = Fence.Around(
            [new(0, 0, 0), new(100, 0, 0), new(200, 10, 0), new(200, 100, 0), new(0, 100, 0)],
            s_form,
            null
        );
        Assert.Equal(4, fence.CountOf(FencePostKind.Corner));
        Assert.True(fence.CountOf(FencePostKind.Strainer) >= 2 + 1 + 1 + 2 - 1);
        Assert.InRange(LongestStrainM(fence), 0, 69);
    }

    [Fact]
    public void Steep_ground_is_stepped_with_longer_posts()
    {
        FencePoint[] line = [new(0, 0, 0), new(30, 0, 15), new(30, 10, 15), new(0, 10, 0)];
        var fence = Fence.Around(line, s_form, null);
        var steep = fence.Runs[0];
        Assert.True(steep.IsStepped);
        Assert.Equal(30, steep.MeshM, 1e-9);
        Assert.Equal(10, steep.BayCount);
        Assert.Equal(1.5, steep.StepM, 1e-9);
        Assert.Equal(1.8 + 0.6 + 1.5, fence.Posts[1].LengthM, 1e-9);
        Assert.False(fence.Runs[1].IsStepped);
    }

    [Fact]
    public void Refuses_nan_and_what_is_no_ring()
    {
        Assert.Throws<ArgumentException>(() => Fence.Around([new(0, 0, 0), new(9, 0, 0)], s_form, null));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Fence.Around([new(0, 0, 0), new(9, 0, 0), new(9, double.NaN, 0)], s_form, null)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Fence.Around([new(0, 0, 0), new(9, 0, 0), new(9, 9, double.NaN)], s_form, null)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => Fence.Around(Square(9), new(double.NaN, 1.8), null));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fence.Around(Square(9), s_form, new(0, 1.5, 3)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fence.Around(Square(9), s_form, new(4, 4, 3)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fence.Around(Square(0), s_form, null));
    }

    [Fact]
    public void A_line_that_crosses_itself_is_found_with_its_place()
    {
        var bow = FenceOutline.Crossing([new(0, 0, 0), new(10, 10, 0), new(10, 0, 0), new(0, 10, 0)])!;
        Assert.Equal((0, 2), (bow.FirstIndex, bow.SecondIndex));
        Assert.Equal(5, bow.EastM, 1e-9);
        Assert.Equal(5, bow.NorthM, 1e-9);
        Assert.Null(FenceOutline.Crossing(Square(9)));

        // A side that lies back on the one before it, and a corner that touches a far side.
        Assert.NotNull(FenceOutline.Crossing([new(0, 0, 0), new(10, 0, 0), new(4, 0, 0), new(5, 9, 0)]));
        Assert.NotNull(FenceOutline.Crossing([new(0, 0, 0), new(10, 0, 0), new(10, 9, 0), new(5, 0, 0), new(0, 9, 0)]));
    }

    [Fact]
    public void A_line_round_a_middle_crosses_itself_nowhere_and_holds_its_middle() =>
        s_line.Sample(line =>
        {
            Assert.Null(FenceOutline.Crossing(line));
            Assert.True(FenceOutline.FreeM(line, [new(0, 0, 0)]) > 0);
        });

    [Fact]
    public void Free_ground_is_the_least_distance_and_below_nought_outside()
    {
        FencePoint[] rack = [new(3, 3, 0), new(7, 3, 0), new(7, 5, 0), new(3, 5, 0)];
        Assert.Equal(3, FenceOutline.FreeM(Square(12), rack), 1e-9);
        Assert.Equal(0, FenceOutline.FreeM(Square(4), rack), 1e-9);
        Assert.Equal(-2, FenceOutline.FreeM(Square(3), [new(5, 1, 0)]), 1e-9);
    }

    private static bool IsStrained(FencePost post) => post.Kind != FencePostKind.Intermediate;

    private static FencePoint Along(FencePoint from, FencePoint to, double atM)
    {
        var share = atM / ApartM(from, to);
        return new(
            from.EastM + ((to.EastM - from.EastM) * share),
            from.NorthM + ((to.NorthM - from.NorthM) * share),
            from.LevelM + ((to.LevelM - from.LevelM) * share)
        );
    }

    private static double ApartM(FencePoint a, FencePoint b) =>
        double.Hypot(double.Hypot(b.EastM - a.EastM, b.NorthM - a.NorthM), b.LevelM - a.LevelM);

    private static FencePoint[] Square(double sideM) =>
        [new(0, 0, 0), new(sideM, 0, 0), new(sideM, sideM, 0), new(0, sideM, 0)];

    private static double Round(FencePoint[] line) =>
        line.Zip(line.Skip(1).Append(line[0]), (a, b) => double.Hypot(b.EastM - a.EastM, b.NorthM - a.NorthM)).Sum();

    private static double LongestStrainM(FenceLine fence)
    {
        double[] bays = [.. fence.Runs.SelectMany(run => run.BaysM)];
        var (since, longest) = (0.0, 0.0);
        for (var i = 1; i < fence.Posts.Count; i++)
        {
            since += bays[i - 1];
            longest = Math.Max(longest, since);
            since = fence.Posts[i].Kind == FencePostKind.Intermediate ? since : 0;
        }

        return longest;
    }
}

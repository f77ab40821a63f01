using CsCheck;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class OneLineTests
{
    // The same cantilever by the frame.
    [Fact]
    public void The_head_moves_as_the_frame_says() =>
        Gen.Select(Gen.Double[100, 5e3], Gen.Double[0, 2e4], Gen.Double[500, 4000], Gen.Double[1e5, 2e7])
            .Sample(
                (horizontal, plane, length, inertia) =>
                {
                    var frame = FrameAnalysis.Of(
                        new(
                            [new(0, 0, 0), new(0, 0, length)],
                            [new("C1", 0, 1, new(2000, inertia, inertia, inertia), new(1, 0, 0))],
                            [new(0, FrameFix.Clamped)]
                        )
                    );
                    var at = frame
                        .Solve(new("wind", [new(1, new(horizontal, 0, 0), new(0, plane * 1000, 0))], [], []))
                        .Movements[1];
                    var head = OneLine.Head(horizontal, plane, length, inertia);
                    Near.Share(head.HeadMm, at.MoveMm.XMm, 1e-6);
                    Near.Share(head.TurnRad, at.TurnYRad, 1e-6);
                }
            );

    [Fact]
    public void The_plane_rocks_slower_than_a_mass_without_size() =>
        Gen.Select(Gen.Double[50, 1000], Gen.Double[1, 6], Gen.Double[500, 4000], Gen.Double[1e6, 2e7])
            .Sample(
                (mass, slope, length, inertia) =>
                {
                    var point = Math.Sqrt(3 * 210_000 * inertia * 1e3 / (Math.Pow(length, 3) * mass)) / (2 * Math.PI);
                    var first = OneLine.FirstHz(mass, slope, length, inertia);
                    Assert.InRange(first, 0, point);
                }
            );

    [Fact]
    public void A_small_plane_rocks_like_a_mass_without_size()
    {
        var point = Math.Sqrt(3 * 210_000 * 5e6 * 1e3 / (Math.Pow(3000, 3) * 300)) / (2 * Math.PI);
        Near.Share(point, OneLine.FirstHz(300, 0.5, 3000, 5e6), 0.02);
    }

    [Fact]
    public void The_column_asked_for_turns_as_much_as_is_allowed() =>
        Gen.Select(Gen.Double[100, 5e3], Gen.Double[100, 2e4], Gen.Double[500, 4000])
            .Sample(
                (horizontal, plane, length) =>
                {
                    var inertia = OneLine.RequiredMm4(horizontal, plane, length, 0.01);
                    Near.Share(0.01, OneLine.Head(horizontal, plane, length, inertia).TurnRad, 1e-9);
                }
            );

    [Fact]
    public void Two_lines_balance_force_and_couple() =>
        Gen.Select(Gen.Double[-5e4, 5e4], Gen.Double[0, 45], Gen.Double[1, 6])
            .Sample(
                (force, tilt, slope) =>
                {
                    var (windward, leeward) = OneLine.TwoLines(force, tilt);
                    var cosine = Math.Cos(tilt * Math.PI / 180);
                    Assert.Equal(force * cosine, windward + leeward, 1e-6);
                    Assert.Equal(force * slope / 4, (windward - leeward) * slope / 4 * cosine, 1e-6);
                }
            );

    // The worked rack at 26 m/s: 120 x 5 holds by strength and is refused by stiffness; 150 x 6.3 is at the limit.
    [Fact]
    public void The_worked_rack_is_refused_for_its_stiffness()
    {
        var soft = new OneLineFigures(
            4.4,
            26,
            20_416,
            OneLine.Head(2202, 9359, 2231, 4_854_700),
            2231,
            OneLine.FirstHz(363.4, 4.4, 2231, 4_854_700)
        );
        Assert.Equal(3, soft.Against.Count);
        Assert.Contains(soft.Against, why => why.Contains("0.0259 rad", StringComparison.Ordinal));
        var stiff = soft with { Head = OneLine.Head(2202, 9359, 2231, 20e6), FirstHz = 6 };
        Assert.Empty(stiff.Against);
        Assert.Equal(2, (stiff with { BasicMPerS = 40, ColumnNm = 48_322 }).Against.Count);
    }

    [Fact]
    public void A_low_edge_below_ground_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => OneLine.CentreM(1, 6, 30));
}

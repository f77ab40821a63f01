using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class GravityTreeTests
{
    private static readonly Gen<(GravityTree Tree, double[] LossM)> Trees = Gen.Int[1, 40]
        .SelectMany(count =>
            Gen.Select(
                Gen.Select(Gen.Int[-1, 38], Gen.Double[0, 100], Gen.Double[0, 0.01]).Array[count],
                Gen.Double[0, 5].Array[count],
                (pipes, lossM) =>
                    (
                        new GravityTree([
                            .. pipes.Select(
                                (pipe, i) => new TreePipe(Math.Min(pipe.Item1, i - 1), pipe.Item2, null, pipe.Item3)
                            ),
                        ]),
                        lossM
                    )
            )
        );

    [Fact]
    public void What_comes_to_a_junction_leaves_it() =>
        Trees.Sample(
            (tree, _) =>
            {
                var flows = tree.FlowsM3PerS();
                for (var i = 0; i < flows.Count; i++)
                {
                    var leaving = tree.Pipes.Select((pipe, k) => pipe.UpstreamIndex == i ? flows[k] : 0).Sum();
                    Assert.Equal(flows[i], leaving + tree.Pipes[i].DrawM3PerS, 12);
                }

                var roots = tree.Pipes.Select((pipe, k) => pipe.UpstreamIndex < 0 ? flows[k] : 0).Sum();
                Assert.Equal(tree.Pipes.Sum(pipe => pipe.DrawM3PerS), roots, 12);
            }
        );

    [Fact]
    public void The_grade_line_never_rises_along_the_water_and_is_a_number() =>
        Trees.Sample(
            (tree, lossM) =>
            {
                var levels = tree.GradeLevelsM(120, lossM);
                Assert.All(
                    levels.Select((level, i) => (level, tree.Pipes[i].UpstreamIndex)),
                    each =>
                        Assert.True(
                            double.IsFinite(each.level)
                                && each.level <= (each.UpstreamIndex < 0 ? 120 : levels[each.UpstreamIndex])
                        )
                );
                Assert.All(tree.RestLevelsM(120), level => Assert.Equal(120, level));
            }
        );

    [Fact]
    public void Below_a_break_pressure_tank_its_own_level_presses()
    {
        var tree = new GravityTree([new(-1, 60, null, 0, BreaksPressure: true), new(0, 20, 5, 0.001)]);
        Assert.Equal([100, 60], tree.RestLevelsM(100));
        Assert.Equal([97, 58], tree.GradeLevelsM(100, [3, 2]));
    }

    [Fact]
    public void A_pipe_before_the_one_that_feeds_it_is_refused() =>
        Assert.Throws<ArgumentException>(() => new GravityTree([new(0, 1, 1, 1)]).FlowsM3PerS());
}

using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class LeastCostTreeTests
{
    private sealed record Case(GravityTree Tree, double SourceM, IReadOnlyList<IReadOnlyList<PipeOption>> Options);

    private static readonly Gen<PipeOption> Option = Gen.Select(
        Gen.Int[0, 9000],
        Gen.Int[1, 400],
        (lossMm, cost) => new PipeOption(lossMm / 1000.0, cost)
    );

    private static readonly Gen<Case> Cases = Gen.Int[1, 6]
        .SelectMany(count =>
            Gen.Select(
                Gen.Select(Gen.Int[-1, 4], Gen.Int[0, 20], Gen.Int[-3, 8], Gen.Int[0, 9]).Array[count],
                Option.Array[1, 4].Array[count],
                Gen.Int[15, 40],
                (pipes, options, sourceM) =>
                    new Case(
                        new([
                            .. pipes.Select(
                                (pipe, i) =>
                                    new TreePipe(
                                        Math.Min(pipe.Item1, i - 1),
                                        pipe.Item2,
                                        pipe.Item3 < 0 ? null : pipe.Item3,
                                        0.001,
                                        BreaksPressure: pipe.Item4 == 0
                                    )
                            ),
                        ]),
                        sourceM,
                        options
                    )
            )
        );

    [Fact]
    public void Costs_what_the_cheapest_of_all_combinations_costs() =>
        Cases.Sample(
            each =>
            {
                var chosen = LeastCostTree.Choose(each.Tree, each.SourceM, each.Options);
                var best = Combinations(each.Options).Where(set => Holds(each, set)).Select(set => Cost(each, set));
                Assert.Equal(best.Cast<decimal?>().Min(), chosen.Serves ? chosen.Cost : null);
                Assert.True(
                    !chosen.Serves
                        || (Holds(each, chosen.OptionIndices) && Cost(each, chosen.OptionIndices) == chosen.Cost)
                );
            },
            iter: 20_000
        );

    [Fact]
    public void A_long_chain_with_many_sizes_is_settled_too()
    {
        var tree = new GravityTree([
            .. Enumerable.Range(0, 40).Select(i => new TreePipe(i - 1, 100 - i, i == 39 ? 5 : 0, i == 39 ? 0.001 : 0)),
        ]);
        var options = Enumerable
            .Range(0, 40)
            .Select(i =>
                (IReadOnlyList<PipeOption>)
                    [.. Enumerable.Range(1, 7).Select(k => new PipeOption((5.03 + (0.1 * i)) / (k * k), (k * 13) + i))]
            )
            .ToList();
        var chosen = LeastCostTree.Choose(tree, 110, options);
        Assert.True(chosen.Serves && Holds(new(tree, 110, options), chosen.OptionIndices));
    }

    [Fact]
    public void A_pipe_without_an_option_is_refused() =>
        Assert.Throws<ArgumentException>(() =>
            LeastCostTree.Choose(
                new([new(-1, 0, 1, 1)]),
                5,
                [
                    [],
                ]
            )
        );

    private static IEnumerable<int[]> Combinations(IReadOnlyList<IReadOnlyList<PipeOption>> options) =>
        options.Aggregate(
            (IEnumerable<int[]>)
                [
                    [],
                ],
            (sets, each) => sets.SelectMany(set => Enumerable.Range(0, each.Count).Select(o => (int[])[.. set, o]))
        );

    // By levels in metres and not by costs in steps: another way than the one under test.
    private static bool Holds(Case each, IReadOnlyList<int> set)
    {
        var lossM = set.Select((o, i) => each.Options[i][o].LossM).ToList();
        var levels = each.Tree.GradeLevelsM(each.SourceM, lossM);
        return each
            .Tree.Pipes.Zip(levels)
            .All(pair =>
                (pair.First.NeedM is not { } need || pair.Second >= pair.First.LevelM + need - 1e-6)
                && (!pair.First.BreaksPressure || pair.Second >= pair.First.LevelM - 1e-6)
            );
    }

    private static decimal Cost(Case each, IReadOnlyList<int> set) =>
        set.Select((o, i) => each.Options[i][o].Cost).Sum();
}

using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What acts on a rack at the same time.</summary>
/// <param name="Strength">For steel and welds.</param>
/// <param name="Ground">For the footings: least weight with the wind.</param>
/// <param name="Service">Without partial factors: for movements.</param>
/// <source>EN 1990:2002, expression 6.10, tables A1.1, A1.2(A), A1.2(B); ψ_0 of a person 0</source>
public sealed record RackCombinations(
    IReadOnlyList<Combination> Strength,
    IReadOnlyList<Combination> Ground,
    IReadOnlyList<Combination> Service
)
{
    /// <summary>Those for steel and welds in which the wind acts.</summary>
    public IReadOnlyList<Combination> Blown { get; } =
    [.. Strength.Where(each => each.WindFactors.Any(factor => factor != 0))];

    /// <summary>The factors behind them.</summary>
    public NationalChoices Choices { get; init; } = NationalChoices.Recommended;

    /// <summary>The combinations of a rack's actions.</summary>
    /// <param name="actions">The actions.</param>
    /// <param name="bearers">The members that carry the modules: the only ones that the wind on the edges is for.</param>
    /// <param name="choices">What the country's annex sets.</param>
    /// <returns>The combinations.</returns>
    public static RackCombinations Of(
        IReadOnlyList<RackAction> actions,
        IReadOnlySet<int> bearers,
        NationalChoices choices
    )
    {
        var build = new Builder(actions, bearers, choices);
        return new(
            [.. build.Still(), .. build.Down(), .. build.OtherWinds()],
            [.. build.Ground()],
            [.. build.Service()]
        )
        {
            Choices = choices,
        };
    }

    private sealed class Builder(IReadOnlyList<RackAction> actions, IReadOnlySet<int> bearers, NationalChoices choices)
    {
        private double Heavy => choices.PermanentFactor;

        private double Variable => choices.VariableFactor;

        private double LeastWeight => choices.LeastWeightFactor;

        // As the sheets name them: 1.35 G, 1.5 W.
        private string G => Invariant($"{Heavy:0.###} G");

        private string LeastG => Invariant($"{LeastWeight:0.###} G");

        private string Q(string action, double beside = 1) => Invariant($"{Variable * beside:0.###} {action}");

        private bool HasSnow => actions.Any(action => action.Kind == RackActionKind.Snow);

        internal IEnumerable<Combination> Still()
        {
            foreach (var lean in Leans())
            {
                var still = HasSnow
                    ? Of($"{G} + {Q("S")}, {lean.Name}", Heavy, (lean, Heavy), (Snow(), Variable))
                    : Of($"{G}, {lean.Name}", Heavy, (lean, Heavy));
                yield return still with
                {
                    IsPressing = true,
                };
            }

            foreach (var person in All(RackActionKind.Person))
            {
                yield return Of($"{G} + {Q("Q")}, {person.Name}", Heavy, (person, Variable));
            }
        }

        internal IEnumerable<Combination> Down()
        {
            foreach (var wind in All(RackActionKind.WindDown))
            {
                var blown = HasSnow
                    ? Of(
                        $"{G} + {Q("W")} + {Q("S", choices.SnowBesideFactor)}, {wind.Name}",
                        Heavy,
                        (wind, Variable),
                        (Snow(), Variable * choices.SnowBesideFactor)
                    )
                    : Of(
                        $"{G} + {Q("W")}, {wind.Name}",
                        Heavy,
                        (wind, Variable),
                        (LeanWith(wind), Heavy * Sense(wind))
                    );
                yield return blown with
                {
                    IsPressing = !wind.IsUneven,
                };
                if (HasSnow)
                {
                    yield return Of(
                        $"{G} + {Q("S")} + {Q("W", choices.WindBesideFactor)}, {wind.Name}",
                        Heavy,
                        (wind, Variable * choices.WindBesideFactor),
                        (Snow(), Variable)
                    );
                }
            }
        }

        internal IEnumerable<Combination> OtherWinds()
        {
            foreach (var wind in All(RackActionKind.WindUp))
            {
                yield return Of($"1.0 G + {Q("W")}, {wind.Name}", 1, (wind, Variable));
            }

            foreach (var wind in All(RackActionKind.WindAlong))
            {
                yield return Of(
                    $"{G} + {Q("W")}, {wind.Name}",
                    Heavy,
                    (wind, Variable),
                    (LeanWith(wind), Heavy * Sense(wind))
                );
            }

            foreach (var wind in All(RackActionKind.WindOnEdges))
            {
                yield return Of($"{G} + {Q("W")}, {wind.Name}", Heavy, (wind, Variable)) with
                {
                    Members = bearers,
                };
                yield return Of($"1.0 G + {Q("W")}, {wind.Name}", 1, (wind, Variable)) with
                {
                    Members = bearers,
                };
            }
        }

        internal IEnumerable<Combination> Ground()
        {
            foreach (var wind in WholeWinds())
            {
                yield return Of($"{LeastG} + {Q("W")}, {wind.Name}", LeastWeight, (wind, Variable));
                yield return Of($"{G} + {Q("W")}, {wind.Name}", Heavy, (wind, Variable));
            }
        }

        internal IEnumerable<Combination> Service()
        {
            foreach (var wind in WholeWinds())
            {
                yield return Of($"G + W, {wind.Name}", 1, (wind, 1));
            }

            yield return HasSnow ? Of("G + S", 1, (Snow(), 1)) : Of("G", 1);
        }

        private IEnumerable<RackAction> WholeWinds() =>
            actions.Where(action => action.IsWind && action.Kind != RackActionKind.WindOnEdges);

        private IEnumerable<RackAction> All(RackActionKind kind) => actions.Where(action => action.Kind == kind);

        private IEnumerable<RackAction> Leans() => All(RackActionKind.Lean);

        private RackAction Snow() => All(RackActionKind.Snow).Single();

        // Columns lean the way the wind blows.
        private RackAction LeanWith(RackAction wind) =>
            wind.Kind == RackActionKind.WindAlong ? Leans().Last() : Leans().First();

        private static double Sense(RackAction wind) => wind.Sense;

        private Combination Of(string name, double weight, params (RackAction Action, double Factor)[] others)
        {
            var (still, blown) = (new double[actions.Count], new double[actions.Count]);
            for (var i = 0; i < actions.Count; i++)
            {
                still[i] = actions[i].Kind == RackActionKind.Weight ? weight : 0;
                foreach (var (_, factor) in others.Where(other => ReferenceEquals(other.Action, actions[i])))
                {
                    (actions[i].IsWind ? blown : still)[i] += factor;
                }
            }

            return new(name, still, blown);
        }
    }
}

using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What acts on a stand at the same time.</summary>
/// <param name="Strength">For steel, welds and feet.</param>
/// <param name="Ground">For the blocks, with partial factors.</param>
/// <param name="Service">Without partial factors.</param>
/// <source>EN 1990:2002, expression 6.10; water 1.35 as permanent, 0 where it helps; ψ_0 of wind 0.6; EN 1998-1:2004, 4.3.3.5: E_x + 0.3 E_y</source>
public sealed record StandCombinations(
    IReadOnlyList<Combination> Strength,
    IReadOnlyList<Combination> Ground,
    IReadOnlyList<Combination> Service
)
{
    /// <summary>Those for steel in which the wind acts.</summary>
    public IReadOnlyList<Combination> Blown { get; } =
    [.. Strength.Where(each => each.WindFactors.Any(factor => factor != 0))];

    /// <summary>Headings of the wind, from the right round by the back.</summary>
    private static readonly string[] s_headings =
    [
        "to the right",
        "to the back right",
        "to the back",
        "to the back left",
        "to the left",
        "to the front left",
        "to the front",
        "to the front right",
    ];

    private const double OtherWayShare = 0.3;

    // ψ_1 of the wind, EN 1990:2002, table A1.1.
    private const double LostWindShare = 0.2;

    /// <summary>What acts on the full stand once a bar of it is lost, without partial factors.</summary>
    public IReadOnlyList<Combination> Lost { get; private init; } = [];

    /// <summary>The factors behind them.</summary>
    public NationalChoices Choices { get; init; } = NationalChoices.Recommended;

    /// <summary>Loads without wind and shaking, for the critical factor: heaviest, leaning.</summary>
    /// <param name="choices">What the country's annex sets.</param>
    internal static IReadOnlyList<Combination> Pressing(NationalChoices choices) =>
        [
            .. new[] { 0, 2 }.Select(heading => new Combination(
                Invariant($"{choices.PermanentFactor:0.###} (G + W), leaning {s_headings[heading]}"),
                Still(choices.PermanentFactor, choices.PermanentFactor, 0, Lean(heading, 1)),
                new double[StandActions.CaseCount]
            )
            {
                IsPressing = true,
            }),
        ];

    /// <summary>The combinations.</summary>
    /// <param name="swayFactor">What loads that sway the stand are multiplied by for the second order.</param>
    /// <param name="shakes">Full along x and y, then half full; null where the ground is calm.</param>
    /// <param name="choices">What the country's annex sets.</param>
    /// <returns>The combinations.</returns>
    internal static StandCombinations Of(double swayFactor, IReadOnlyList<StandShake>? shakes, NationalChoices choices)
    {
        var (heavy, variable, least) = (choices.PermanentFactor, choices.VariableFactor, choices.LeastWeightFactor);
        var beside = variable * choices.WindBesideFactor;
        var (full, wind) = (Invariant($"{heavy:0.###} (G + W)"), Invariant($"{variable:0.###} V"));
        var headings = Enumerable.Range(0, s_headings.Length).ToList();
        var shaken = shakes is null ? [] : Shaken(shakes, swayFactor).ToList();
        Combination Blown(string name, int heading, (double Dead, double Water, double People) still, double blown) =>
            new(
                $"{name}, wind {s_headings[heading]}",
                Still(still.Dead, still.Water, still.People, Lean(heading, swayFactor)),
                Wind(heading, swayFactor * blown)
            )
            {
                IsPressing = still.Water > 0,
            };
        return new(
            [
                .. Pressing(choices),
                .. headings.Select(h => Blown($"{full} + {wind}", h, (heavy, heavy, 0), variable)),
                .. headings.Select(h =>
                    Blown(
                        Invariant($"{full} + {variable:0.###} Q + {beside:0.###} V"),
                        h,
                        (heavy, heavy, variable),
                        beside
                    )
                ),
                .. headings.Select(h => Blown($"G + {wind}, empty", h, (1, 0, 0), variable)),
                .. shaken,
            ],
            [
                .. headings.Select(h =>
                    Blown(Invariant($"{least:0.###} G + {wind}, empty"), h, (least, 0, 0), variable)
                ),
                .. headings.Select(h => Blown($"{full} + {wind}", h, (heavy, heavy, 0), variable)),
                .. shaken,
            ],
            [
                new("G + W", Still(1, 1, 0, []), new double[StandActions.CaseCount]),
                .. headings.Select(h => Blown("G + W + V", h, (1, 1, 0), 1)),
                .. headings.Select(h => Blown("G + V, empty", h, (1, 0, 0), 1)),
                .. shaken,
            ]
        )
        {
            Choices = choices,
            Lost = [.. headings.Select(h => Blown("G + W + 0.2 V", h, (1, 1, 0), LostWindShare))],
        };
    }

    // The main way and 0.3 of the other, each both ways.
    private static IEnumerable<Combination> Shaken(IReadOnlyList<StandShake> shakes, double swayFactor)
    {
        foreach (var (state, water, place, name) in new[] { (0, 1.0, 0, "full"), (2, 0.5, 4, "half full") })
        {
            foreach (var (x, y) in Ways())
            {
                var still = Still(1, water, 0, []);
                foreach (var (axis, share) in new[] { (0, x), (1, y) })
                {
                    var push = shakes[state + axis].Push;
                    still[StandActions.ShakenFull + place + axis] = swayFactor * share * push.RigidRatio;
                    still[StandActions.SloshedFull + place + axis] = swayFactor * share * push.SloshingRatio;
                }

                yield return new(
                    $"G + W {Signed(x)}E_x {Signed(y)}E_y, {name}",
                    still,
                    new double[StandActions.CaseCount]
                );
            }
        }
    }

    private static string Signed(double share) =>
        (share < 0 ? "− " : "+ ") + (Math.Abs(share) < 1 ? FormattableString.Invariant($"{Math.Abs(share):0.0} ") : "");

    private static IEnumerable<(double X, double Y)> Ways() =>
        from main in new[] { 1, -1 }
        from other in new[] { OtherWayShare, -OtherWayShare }
        from isX in new[] { true, false }
        select isX ? ((double)main, other) : (other, main);

    private static double[] Still(double dead, double water, double people, IEnumerable<(int Case, double Factor)> lean)
    {
        var factors = new double[StandActions.CaseCount];
        (factors[StandActions.Weight], factors[StandActions.Water], factors[StandActions.People]) = (
            dead,
            water,
            people
        );
        foreach (var (at, factor) in lean)
        {
            factors[at] = factor * (at < StandActions.LeanWaterX ? dead : water);
        }

        return factors;
    }

    // The stand leans the way the wind blows; the factors of weight and water are multiplied in above.
    private static IEnumerable<(int Case, double Factor)> Lean(int heading, double swayFactor)
    {
        var way = StandActions.Way(heading);
        foreach (var at in new[] { StandActions.LeanX, StandActions.LeanWaterX })
        {
            yield return (at, way.XMm * swayFactor);
            yield return (at + 1, way.YMm * swayFactor);
        }
    }

    private static double[] Wind(int heading, double factor)
    {
        var factors = new double[StandActions.CaseCount];
        var isBack = heading >= StandActions.HeadingCount;
        factors[StandActions.Wind + (heading % StandActions.HeadingCount)] = isBack ? -factor : factor;
        return factors;
    }
}

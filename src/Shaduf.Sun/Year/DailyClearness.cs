using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>
/// Sequences of daily clearness (global over extraterrestrial irradiation) as a Markov chain: a library of ten classes
/// by the month's mean clearness, each with ten states and the shares of steps between them.
/// </summary>
public static class DailyClearness
{
    /// <summary>Number of classes in the library.</summary>
    public const int ClassCount = 10;

    /// <summary>Lowest monthly mean clearness that a sequence is made for.</summary>
    public const double LowestMeanRatio = 0.05;

    /// <summary>Highest monthly mean clearness that a sequence is made for.</summary>
    public const double HighestMeanRatio = 0.80;

    private const int StateCount = 10;
    private const int MostDraws = 1000;
    private const double DrawToleranceShare = 0.05;

    private static readonly ClearnessClass[] Classes = ReadClasses();

    /// <summary>Today's clearness from yesterday's.</summary>
    /// <param name="monthMeanRatio">The month's mean clearness, 0.05 to 0.80; it picks the class.</param>
    /// <param name="yesterdayRatio">Yesterday's clearness, 0 to 1; beyond the class's ends it counts as the end state.</param>
    /// <param name="drawShare">A random number, 0 to 1.</param>
    /// <returns>Clearness, between the class's lowest and highest day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Aguiar, Collares-Pereira, Conde, Solar Energy 40(3), 1988</source>
    public static double NextRatio(double monthMeanRatio, double yesterdayRatio, double drawShare)
    {
        Within.Require(yesterdayRatio, 0, 1, "");
        Within.Require(drawShare, 0, 1, "");
        var library = ClassOf(monthMeanRatio);
        var state = (int)Math.Clamp((yesterdayRatio - library.LowestDayRatio) / library.StepRatio, 0, StateCount - 1);
        var steps = library.Steps[state];
        var remaining = drawShare * steps.Sum();
        var reachedState = 0.0;
        for (var j = 0; j < StateCount; j++)
        {
            if (steps[j] == 0)
            {
                continue;
            }

            reachedState = j + Math.Min(1, remaining / steps[j]);
            if (remaining <= steps[j])
            {
                break;
            }

            remaining -= steps[j];
        }

        return library.LowestDayRatio + (library.StepRatio * reachedState);
    }

    /// <summary>Mean clearness to which an endless sequence of one class settles.</summary>
    /// <param name="classNumber">Class, 1 to 10.</param>
    /// <returns>Mean clearness.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The class is outside its range.</exception>
    /// <source>Stationary distribution of the class's matrix, clearness uniform inside a state</source>
    public static double StationaryMeanRatio(int classNumber)
    {
        Within.RequireCount(classNumber, 1, ClassCount);
        var library = Classes[classNumber - 1];
        var shares = Enumerable.Repeat(1.0 / StateCount, StateCount).ToArray();
        const int steps = 500; // Ample: no class remembers more than 0.4 of yesterday.
        for (var step = 0; step < steps; step++)
        {
            var next = new double[StateCount];
            for (var from = 0; from < StateCount; from++)
            {
                var sum = library.Steps[from].Sum();
                for (var to = 0; to < StateCount; to++)
                {
                    next[to] += shares[from] * library.Steps[from][to] / sum;
                }
            }

            shares = next;
        }

        return library.LowestDayRatio
            + (library.StepRatio * shares.Select((share, state) => share * (state + 0.5)).Sum());
    }

    /// <summary>
    /// A month of daily clearness whose weighted mean is exactly the one asked: months are drawn until one comes within
    /// 5 % (the best of 1,000 otherwise), then its days are scaled, none beyond the class's lowest and highest day.
    /// </summary>
    /// <param name="meanRatio">The month's mean clearness, 0.05 to 0.80.</param>
    /// <param name="dayBeforeRatio">Clearness of the day before, 0 to 1.</param>
    /// <param name="dayWeights">Weight of each day: its extraterrestrial irradiation, any unit.</param>
    /// <param name="random">Where the random numbers come from.</param>
    internal static double[] Month(
        double meanRatio,
        double dayBeforeRatio,
        ReadOnlySpan<double> dayWeights,
        SplitMix64 random
    )
    {
        var best = new double[dayWeights.Length];
        var bestGap = double.PositiveInfinity;
        for (var draw = 0; draw < MostDraws && bestGap > DrawToleranceShare * meanRatio; draw++)
        {
            var days = new double[dayWeights.Length];
            var yesterdayRatio = dayBeforeRatio;
            for (var day = 0; day < days.Length; day++)
            {
                yesterdayRatio = days[day] = NextRatio(meanRatio, yesterdayRatio, random.NextShare());
            }

            var gap = Math.Abs(WeightedMean(days, dayWeights) - meanRatio);
            if (gap < bestGap)
            {
                (best, bestGap) = (days, gap);
            }
        }

        var library = ClassOf(meanRatio);
        Span<double> lowest = stackalloc double[best.Length];
        Span<double> highest = stackalloc double[best.Length];
        lowest.Fill(library.LowestDayRatio);
        highest.Fill(library.HighestDayRatio);
        HeldScale.To(best, dayWeights, meanRatio, lowest, highest);
        return best;
    }

    private static double WeightedMean(double[] days, ReadOnlySpan<double> dayWeights)
    {
        var (sum, weightSum) = (0.0, 0.0);
        for (var day = 0; day < days.Length; day++)
        {
            sum += days[day] * dayWeights[day];
            weightSum += dayWeights[day];
        }

        return sum / weightSum;
    }

    private static ClearnessClass ClassOf(double monthMeanRatio)
    {
        Within.Require(monthMeanRatio, LowestMeanRatio, HighestMeanRatio, "");
        return Array.Find(Classes, library => monthMeanRatio <= library.HighestMeanRatio)!;
    }

    private static ClearnessClass[] ReadClasses()
    {
        var home = typeof(DailyClearness).Assembly;
        var steps = Csv.Embedded(home, "DailyClearnessStep.csv").ToLookup(row => row["class"]);
        return
        [
            .. Csv.Embedded(home, "DailyClearnessClass.csv")
                .Select(row => new ClearnessClass(
                    row.Number("highest_mean_ratio"),
                    row.Number("lowest_day_ratio"),
                    row.Number("highest_day_ratio"),
                    [.. steps[row["class"]].Select(Steps)]
                )),
        ];

        static double[] Steps(CsvRow row) =>
            [
                .. Enumerable
                    .Range(1, StateCount)
                    .Select(to =>
                        row.Number(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"to{to}"))
                    ),
            ];
    }

    private sealed record ClearnessClass(
        double HighestMeanRatio,
        double LowestDayRatio,
        double HighestDayRatio,
        double[][] Steps
    )
    {
        internal double StepRatio => (HighestDayRatio - LowestDayRatio) / StateCount;
    }
}

using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>The trend of a series by the middle of all slopes between its points, and whether chance could make it.</summary>
/// <param name="ChangeRatio">Change of the series from one step to the next [its own unit].</param>
/// <param name="ScoreNumber">Pairs that rise less pairs that fall.</param>
/// <param name="ChanceShare">How often a series without a trend scores as far from zero, 0 to 1.</param>
public sealed record SenSlope(double ChangeRatio, int ScoreNumber, double ChanceShare)
{
    private const int MostPoints = 5000;

    /// <summary>The trend of a series; points may be missing, as each bears its step.</summary>
    /// <param name="stepNumber">Step of each point, rising, -1000000 to 1000000 each; 2 to 5000 of them.</param>
    /// <param name="valueRatio">Value of each point, -1000000 to 1000000 each.</param>
    /// <returns>The trend.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Too few points, or a figure outside its range, or NaN, or steps that do not rise.</exception>
    /// <source>
    /// Sen, Journal of the American Statistical Association 63, 1968: middle of all slopes; Mann 1945 and Kendall 1975: score,
    /// variance n(n - 1)(2n + 5)/18 less that of ties, one taken off the score for continuity
    /// </source>
    public static SenSlope Of(IReadOnlyList<double> stepNumber, IReadOnlyList<double> valueRatio)
    {
        Within.RequireCount(stepNumber.Count, 2, MostPoints);
        Within.RequireCount(valueRatio.Count, stepNumber.Count, stepNumber.Count);
        var (slopes, score) = (new List<double>(stepNumber.Count * (stepNumber.Count - 1) / 2), 0);
        for (var j = 0; j < stepNumber.Count; j++)
        {
            Within.Require(stepNumber[j], j == 0 ? -1e6 : Math.BitIncrement(stepNumber[j - 1]), 1e6, "steps");
            Within.Require(valueRatio[j], -1e6, 1e6, "of the series");
            for (var i = 0; i < j; i++)
            {
                slopes.Add((valueRatio[j] - valueRatio[i]) / (stepNumber[j] - stepNumber[i]));
                score += Math.Sign(valueRatio[j] - valueRatio[i]);
            }
        }

        slopes.Sort();
        var middle = (slopes[(slopes.Count - 1) / 2] + slopes[slopes.Count / 2]) / 2;
        return new(middle, score, Chance(score, Variance(valueRatio)));
    }

    private static double Variance(IReadOnlyList<double> valueRatio)
    {
        static double Of(double n) => n * (n - 1) * ((2 * n) + 5) / 18;
        return Of(valueRatio.Count) - valueRatio.CountBy(value => value).Sum(tied => Of(tied.Value));
    }

    private static double Chance(int score, double variance) =>
        variance <= 0 || score == 0 ? 1 : Math.Min(1, 2 * UpperTail((Math.Abs(score) - 1) / Math.Sqrt(variance)));

    // Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.17: good to 7.5e-8.
    private static double UpperTail(double z)
    {
        var t = 1 / (1 + (0.2316419 * z));
        var sum =
            t * (0.319381530 + (t * (-0.356563782 + (t * (1.781477937 + (t * (-1.821255978 + (t * 1.330274429))))))));
        return Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI) * sum;
    }
}

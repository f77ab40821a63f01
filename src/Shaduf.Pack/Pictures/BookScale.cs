using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>Scales of pictures in a book: the steps of a scale rule (1, 2, 2.5, 5, 7.5), finer than those of drawing sheets.</summary>
internal static class BookScale
{
    private static readonly double[] Steps = [1, 1.25, 2, 2.5, 5, 7.5];

    /// <summary>All scales from one on, ever smaller pictures.</summary>
    /// <param name="oneToFactor">n of the scale 1:n from which they begin, 1 to 1e6.</param>
    public static IEnumerable<double> From(double oneToFactor)
    {
        Within.Require(oneToFactor, 1, 1e6, "");
        return Enumerable
            .Range(0, 10)
            .SelectMany(decade => Steps.Select(step => step * Math.Pow(10, decade)))
            .Where(scale => scale >= oneToFactor);
    }

    /// <summary>The largest picture that fits.</summary>
    /// <param name="siteMm">Length on the site [mm], above 0 to 1e9.</param>
    /// <param name="roomMm">Room on the paper [mm], 1 to 1000.</param>
    /// <returns>n of the scale 1:n.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    public static double FittingOneToFactor(double siteMm, double roomMm)
    {
        Within.Require(siteMm, double.Epsilon, 1e9, "mm");
        Within.Require(roomMm, 1, 1000, "mm");
        var decade = Math.Pow(10, Math.Floor(Math.Log10(siteMm / roomMm)));
        return Steps.Append(10).Select(step => step * decade).First(scale => siteMm / scale <= roomMm * (1 + 1e-9));
    }
}

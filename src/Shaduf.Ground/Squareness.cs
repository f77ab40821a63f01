using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>Whether four points set out as a rectangle are one.</summary>
public static class Squareness
{
    /// <summary>How far an angle is from square, by the two diagonals.</summary>
    /// <param name="lengthM">One side [m], 0.1 to 1000.</param>
    /// <param name="widthM">The other side [m], 0.1 to 1000.</param>
    /// <param name="firstM">One diagonal [m], 0.1 to 2000.</param>
    /// <param name="secondM">The other diagonal [m], 0.1 to 2000.</param>
    /// <returns>Error of the angle [deg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <exception cref="ArgumentException">No four-sided figure has these diagonals.</exception>
    /// <source>Law of cosines: d1² - d2² = 4 a b sin(error)</source>
    public static double ErrorDeg(double lengthM, double widthM, double firstM, double secondM)
    {
        Within.Require(lengthM, 0.1, 1000, "m");
        Within.Require(widthM, 0.1, 1000, "m");
        Within.Require(firstM, 0.1, 2000, "m");
        Within.Require(secondM, 0.1, 2000, "m");
        var sine = ((firstM * firstM) - (secondM * secondM)) / (4 * lengthM * widthM);
        return Math.Abs(sine) <= 1
            ? Math.Asin(sine) * 180 / Math.PI
            : throw new ArgumentException("no figure of these sides has these diagonals", nameof(secondM));
    }

    /// <summary>Largest difference of two diagonals at which a rectangle is accepted.</summary>
    /// <param name="diagonalM">A diagonal [m], 0.1 to 2000.</param>
    /// <returns>Difference [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>5 mm or a thousandth of the diagonal, whichever is larger; judgement</source>
    public static double MostDifferenceMm(double diagonalM)
    {
        Within.Require(diagonalM, 0.1, 2000, "m");
        return Math.Max(5, diagonalM);
    }
}

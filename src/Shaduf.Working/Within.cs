using System.Runtime.CompilerServices;

namespace Shaduf.Working;

/// <summary>Guards of a kernel's arguments, written so that NaN fails.</summary>
public static class Within
{
    /// <summary>Refuses a value unless it lies inside a closed range.</summary>
    /// <param name="value">The argument.</param>
    /// <param name="lowest">Smallest value accepted.</param>
    /// <param name="highest">Largest value accepted; may be infinite.</param>
    /// <param name="unit">Unit shown in the message.</param>
    /// <param name="name">The argument's name; filled in by the compiler.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range, or NaN.</exception>
    public static void Require(
        double value,
        double lowest,
        double highest,
        string unit,
        [CallerArgumentExpression(nameof(value))] string name = ""
    )
    {
        // Not 'value < lowest || value > highest': both are false for NaN.
        if (!(value >= lowest && value <= highest))
        {
            throw new ArgumentOutOfRangeException(
                name,
                value,
                string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"{name} is {value} {unit}; accepted: {lowest} to {highest} {unit}"
                )
            );
        }
    }

    /// <summary>Refuses a count unless it lies inside a closed range.</summary>
    /// <param name="count">The argument.</param>
    /// <param name="lowest">Smallest count accepted.</param>
    /// <param name="highest">Largest count accepted.</param>
    /// <param name="name">The argument's name; filled in by the compiler.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is outside the range.</exception>
    public static void RequireCount(
        int count,
        int lowest,
        int highest,
        [CallerArgumentExpression(nameof(count))] string name = ""
    )
    {
        if (count < lowest || count > highest)
        {
            throw new ArgumentOutOfRangeException(
                name,
                count,
                string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"{name} is {count}; accepted: {lowest} to {highest}"
                )
            );
        }
    }
}

namespace Shaduf.Sun;

/// <summary>Scales values to a mean without letting any pass its own ends.</summary>
internal static class HeldScale
{
    /// <summary>
    /// Multiplies the values by one factor so that their weighted mean is the one asked. A value that would pass an end
    /// is held there and the rest scaled anew, until none passes.
    /// </summary>
    /// <param name="values">The values; scaled in place.</param>
    /// <param name="weights">Their weights, any unit.</param>
    /// <param name="mean">The weighted mean wanted.</param>
    /// <param name="lowest">Lowest accepted value of each.</param>
    /// <param name="highest">Highest accepted value of each.</param>
    /// <exception cref="ArithmeticException">No values between their ends have the mean.</exception>
    internal static void To(
        Span<double> values,
        ReadOnlySpan<double> weights,
        double mean,
        ReadOnlySpan<double> lowest,
        ReadOnlySpan<double> highest
    )
    {
        Span<bool> held = stackalloc bool[values.Length];
        for (var round = 0; round <= values.Length; round++)
        {
            var (heldSum, freeSum, weightSum) = (0.0, 0.0, 0.0);
            for (var i = 0; i < values.Length; i++)
            {
                weightSum += weights[i];
                heldSum += held[i] ? values[i] * weights[i] : 0;
                freeSum += held[i] ? 0 : values[i] * weights[i];
            }

            var factor = ((mean * weightSum) - heldSum) / freeSum;
            var holdsMore = false;
            for (var i = 0; i < values.Length; i++)
            {
                var scaled = values[i] * factor;
                if (!held[i] && !(scaled >= lowest[i] && scaled <= highest[i]))
                {
                    values[i] = factor > 1 ? highest[i] : lowest[i];
                    holdsMore = held[i] = true;
                }
            }

            if (!holdsMore)
            {
                for (var i = 0; i < values.Length; i++)
                {
                    values[i] *= held[i] ? 1 : factor;
                }

                return;
            }
        }

        throw new ArithmeticException($"No values between their ends have the mean {mean}.");
    }
}

using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>An axis of a chart.</summary>
/// <param name="Title">What it shows and in which unit: <c>water, m³ a day</c>.</param>
public sealed record ChartAxis(string Title)
{
    /// <summary>Where the axis starts, in its unit; chosen from the data when left out.</summary>
    public double? From { get; init; }

    /// <summary>Where the axis ends, in its unit; chosen from the data when left out.</summary>
    public double? To { get; init; }

    /// <summary>Distance of its ticks, in its unit; a round figure when left out. Doubled until the labels fit.</summary>
    public double? Step { get; init; }
}

/// <summary>An axis with its ticks.</summary>
/// <param name="From">Where it starts.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Step">Distance of its ticks.</param>
internal sealed record Ticks(double From, double To, double Step)
{
    private const int MostTicks = 1000;

    internal double Span => To - From;

    internal IReadOnlyList<double> Values =>
        [.. Enumerable.Range(0, (int)Math.Floor((Span / Step) + 1e-6) + 1).Select(i => From + (i * Step))];

    internal string Label(double value)
    {
        var decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(Step) - 1e-9), 0, 9);
        while (decimals < 9 && Math.Abs(Math.Round(Step, decimals) - Step) > Step * 1e-9)
        {
            decimals++;
        }

        var text = value.ToString("F" + decimals, CultureInfo.InvariantCulture);
        return text.Trim('-', '0', '.').Length == 0 ? text.TrimStart('-') : text;
    }

    /// <summary>Round ticks over data, no more than fit.</summary>
    /// <param name="axis">What is wished.</param>
    /// <param name="lowest">Smallest figure shown.</param>
    /// <param name="highest">Largest figure shown.</param>
    /// <param name="atMost">Most steps that fit.</param>
    internal static Ticks Over(ChartAxis axis, double lowest, double highest, int atMost)
    {
        Within.Require(lowest, axis.From ?? -1e12, 1e12, axis.Title);
        Within.Require(highest, lowest, axis.To ?? 1e12, axis.Title);
        var from = axis.From ?? lowest;
        var to = Math.Max(axis.To ?? highest, from);
        if (to == from)
        {
            to = from + Math.Max(1, Math.Abs(from) * 0.1);
        }

        var step = axis.Step ?? RoundStep((to - from) / Math.Max(1, atMost));
        if (axis.Step is not null)
        {
            Within.Require(step, (to - from) / MostTicks, to - from, axis.Title);
            while ((to - from) / step > Math.Max(1, atMost) + 1e-9)
            {
                step *= 2;
            }
        }

        return new(
            axis.From ?? (Math.Floor((from / step) + 1e-9) * step),
            axis.To ?? (Math.Ceiling((to / step) - 1e-9) * step),
            step
        );
    }

    // The next of 1, 2, 5, 10, 20, 50 ...
    private static double RoundStep(double least)
    {
        var decade = Math.Pow(10, Math.Floor(Math.Log10(least)));
        var part = least / decade;
        return decade
            * (
                part <= 1 + 1e-9 ? 1
                : part <= 2 + 1e-9 ? 2
                : part <= 5 + 1e-9 ? 5
                : 10
            );
    }
}

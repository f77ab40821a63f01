using System.Globalization;

namespace Shaduf.Desk;

/// <summary>The units in which a person reads and types at the desk; the brief keeps what was typed.</summary>
public sealed class DeskUnits
{
    private sealed record Pair(string Metric, string Us, double Factor, double Offset = 0);

    // By the words that the brief takes; definitions of the international foot, inch, pound and the US gallon.
    private static readonly IReadOnlyList<Pair> s_pairs =
    [
        new("m", "ft", 1 / 0.3048),
        new("mm", "in", 1 / 25.4),
        new("cm", "in", 1 / 2.54),
        new("m3/h", "gpm", 1000 / 3.785411784 / 60),
        new("L/s", "gpm", 60 / 3.785411784),
        new("L/min", "gpm", 1 / 3.785411784),
        new("m3/d", "gal/d", 1000 / 3.785411784),
        new("L/d", "gal/d", 1 / 3.785411784),
        new("m3", "gal", 1000 / 3.785411784),
        new("L", "gal", 1 / 3.785411784),
        new("degC", "degF", 1.8, 32),
        new("m/s", "mph", 3600 / 1609.344),
        new("kg", "lb", 1 / 0.45359237),
    ];

    /// <summary>Told when the units have changed.</summary>
    public event EventHandler? Changed;

    /// <summary>Whether feet, gallons and Fahrenheit are shown.</summary>
    public bool IsUs { get; private set; }

    /// <summary>Turns to the other units.</summary>
    public void Turn(bool us)
    {
        IsUs = us;
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>A value of the brief as the person reads it: <c>38 m</c> is <c>124.7 ft</c>.</summary>
    /// <param name="value">The value as it stands in the brief.</param>
    /// <returns>The same value where it has no other unit.</returns>
    public string? Shown(string? value)
    {
        if (value is null || value.LastIndexOf(' ') is not (> 0 and var gap))
        {
            return value;
        }

        var unit = value[(gap + 1)..];
        return
            s_pairs.FirstOrDefault(each => (IsUs ? each.Metric : each.Us) == unit) is { } pair
            && double.TryParse(value[..gap], NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            && double.IsFinite(number)
            ? Text(IsUs ? (number * pair.Factor) + pair.Offset : (number - pair.Offset) / pair.Factor)
                + " "
                + (IsUs ? pair.Us : pair.Metric)
            : value;
    }

    /// <summary>A figure of the design as the person reads it.</summary>
    /// <param name="value">The figure.</param>
    /// <param name="unit">Its metric unit, as the brief writes it.</param>
    /// <param name="decimals">Decimals of the metric figure.</param>
    /// <returns>Number and unit.</returns>
    public string Figure(double value, string unit, int decimals)
    {
        var pair = IsUs ? s_pairs.FirstOrDefault(each => each.Metric == unit) : null;
        return pair is null
            ? value.ToString($"#,0.{new string('0', decimals)}", CultureInfo.InvariantCulture) + " " + Nice(unit)
            : Text((value * pair.Factor) + pair.Offset) + " " + pair.Us;
    }

    /// <summary>The unit in which a figure is shown.</summary>
    public string Unit(string unit) =>
        (IsUs ? s_pairs.FirstOrDefault(each => each.Metric == unit)?.Us : null) ?? Nice(unit);

    // Four digits say all that a person types.
    private static string Text(double value)
    {
        var digits = value == 0 ? 0 : 3 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return value.ToString($"0.{new string('#', Math.Clamp(digits, 0, 4))}", CultureInfo.InvariantCulture);
    }

    private static string Nice(string unit) =>
        unit.Replace("m3", "m³", StringComparison.Ordinal).Replace("m2", "m²", StringComparison.Ordinal);
}

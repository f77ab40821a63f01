using System.Reflection;
using System.Text;

namespace Shaduf.Working;

/// <summary>How one quantity of a method is computed from the inputs of a published row.</summary>
/// <param name="Method">Method name, as in docs/methods: <c>water/friction-factor</c>.</param>
/// <param name="Quantity">The quantity's name in the published file.</param>
/// <param name="Obtain">Computes the figure by the shipped kernel.</param>
public sealed record PublishedCheck(string Method, string Quantity, Func<PublishedCase, double> Obtain);

/// <summary>A published figure beside the figure obtained.</summary>
/// <param name="Case">The published row.</param>
/// <param name="Obtained">What the shipped kernel gives; NaN when it threw.</param>
/// <param name="Trouble">Why nothing was obtained; empty when something was.</param>
public sealed record Verdict(PublishedCase Case, double Obtained, string Trouble)
{
    /// <summary>Whether the figure obtained lies within the row's tolerance of the published one.</summary>
    public bool Agrees => Math.Abs(Obtained - Case.Expected) <= Case.Tolerance;
}

/// <summary>Holds a trade's kernels against the published rows that lie beside them.</summary>
public static class Published
{
    /// <summary>Reads every <c>*.published.csv</c> embedded in a trade's assembly.</summary>
    /// <param name="trade">The trade's assembly.</param>
    /// <returns>All rows, in order of file name.</returns>
    /// <exception cref="FormatException">A row is not of the form that <see cref="PublishedCase.Read"/> states.</exception>
    public static IReadOnlyList<PublishedCase> Cases(Assembly trade) =>
        [
            .. trade
                .GetManifestResourceNames()
                .Where(name => name.EndsWith(Ending, StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
                .SelectMany(name => PublishedCase.Read(MethodName(trade, name), Text(trade, name))),
        ];

    /// <summary>Computes every published row of a trade.</summary>
    /// <param name="trade">The trade's assembly.</param>
    /// <param name="checks">One check for each quantity that the rows name.</param>
    /// <returns>A verdict for each row, in order of file name.</returns>
    public static IReadOnlyList<Verdict> Verify(Assembly trade, IReadOnlyList<PublishedCheck> checks)
    {
        var byQuantity = checks.ToDictionary(check => (check.Method, check.Quantity));
        return [.. Cases(trade).Select(row => Verify(row, byQuantity))];
    }

    private const string Ending = ".published.csv";

    private static Verdict Verify(
        PublishedCase row,
        Dictionary<(string Method, string Quantity), PublishedCheck> checks
    )
    {
        if (!checks.TryGetValue((row.Method, row.Quantity), out var check))
        {
            return new(row, double.NaN, $"no check computes '{row.Quantity}' of {row.Method}");
        }

        try
        {
            return new(row, check.Obtain(row), "");
        }
        catch (Exception trouble) when (trouble is ArgumentException or KeyNotFoundException or ArithmeticException)
        {
            return new(row, double.NaN, trouble.Message);
        }
    }

    // Resource 'Pipe/FrictionFactor.published.csv' of Shaduf.Water is the method 'water/friction-factor'.
    private static string MethodName(Assembly trade, string resource)
    {
        var stem = resource[..^Ending.Length].Split('/')[^1];
        var name = new StringBuilder();
        foreach (var c in stem)
        {
            if (char.IsUpper(c) && name.Length > 0)
            {
                name.Append('-');
            }

            name.Append(char.ToLowerInvariant(c));
        }

        var tradeName = trade.GetName().Name!.Split('.')[^1].ToLowerInvariant();
        return $"{tradeName}/{name}";
    }

    private static string Text(Assembly trade, string resource)
    {
        using var reader = new StreamReader(trade.GetManifestResourceStream(resource)!, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}

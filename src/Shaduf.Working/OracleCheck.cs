namespace Shaduf.Working;

/// <summary>How far an obtained figure may lie from an independent one.</summary>
/// <param name="Most">Largest deviation accepted, in the unit.</param>
/// <param name="Unit">Unit of the deviation; % is of the independent figure.</param>
/// <param name="Least">With %: a smaller figure counts as this.</param>
/// <param name="Greatest">With %: a greater figure counts as this.</param>
public sealed record Margin(double Most, string Unit, double Least = 0, double Greatest = double.PositiveInfinity)
{
    // A figure that is none is infinitely far off.
    internal double Deviation(double expected, double obtained)
    {
        var apart = Math.Abs(obtained - expected);
        return double.IsNaN(apart) ? double.PositiveInfinity
            : Unit != "%" || apart == 0 ? apart
            : 100 * apart / Math.Clamp(Math.Abs(expected), Least, Greatest);
    }
}

/// <summary>One quantity of a file of independent figures and how the shipped kernels obtain it.</summary>
/// <param name="File">Name of the embedded file.</param>
/// <param name="Quantity">The quantity's name in the file, or what is compared.</param>
/// <param name="Margin">How far the figures may lie apart.</param>
/// <param name="Compare">Gives the figure expected and the one obtained, row by row.</param>
public sealed record OracleCheck(
    string File,
    string Quantity,
    Margin Margin,
    Func<IEnumerable<(double Expected, double Obtained)>> Compare
)
{
    /// <summary>Computes every row.</summary>
    /// <returns>How many rows there are and how far the worst is off.</returns>
    public OracleVerdict Verify()
    {
        try
        {
            double[] deviations = [.. Compare().Select(row => Margin.Deviation(row.Expected, row.Obtained))];
            return new(this, deviations.Length, deviations.DefaultIfEmpty(double.PositiveInfinity).Max(), "");
        }
        catch (Exception trouble) when (trouble is ArgumentException or FormatException or ArithmeticException)
        {
            return new(this, 0, double.PositiveInfinity, trouble.Message);
        }
    }
}

/// <summary>A quantity of a file of independent figures beside what was obtained.</summary>
/// <param name="Check">What was compared.</param>
/// <param name="Count">Number of figures compared.</param>
/// <param name="Largest">Largest deviation, in the margin's unit; infinite when nothing was obtained.</param>
/// <param name="Trouble">Why nothing was obtained; empty when something was.</param>
public sealed record OracleVerdict(OracleCheck Check, int Count, double Largest, string Trouble)
{
    /// <summary>Whether every figure lies within the margin; false where there is none.</summary>
    public bool Agrees => Largest <= Check.Margin.Most;
}

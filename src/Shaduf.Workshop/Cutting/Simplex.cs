namespace Shaduf.Workshop;

/// <summary>A column of the master problem.</summary>
/// <param name="Price">Its price.</param>
/// <param name="Entries">Its figures by row; rows without are nought.</param>
/// <param name="Pattern">The pattern that it stands for; null for what is cut too much, or for bars left in the yard.</param>
internal sealed record SimplexColumn(double Price, (int Row, double Value)[] Entries, Pattern? Pattern);

/// <summary>
/// The revised simplex method with an inverse kept in full: least price with at least so many pieces of each kind and at
/// most so many scarce bars.
/// </summary>
internal sealed class Simplex
{
    private const double Hair = 1e-9;
    private readonly int kinds;
    private readonly double[][] inverse;
    private readonly double[] values;
    private readonly SimplexColumn[] basis;

    /// <summary>Begins with nothing cut and every scarce bar left.</summary>
    /// <param name="kinds">Rows of pieces, 'at least'; the others are bars, 'at most'.</param>
    /// <param name="rights">Right sides, not below 0.</param>
    public Simplex(int kinds, double[] rights)
    {
        this.kinds = kinds;
        values = [.. rights];
        basis = [.. rights.Select((_, row) => Spare(row))];
        inverse = [.. rights.Select((_, row) => new double[rights.Length])];
        for (var row = 0; row < rights.Length; row++)
        {
            inverse[row][row] = basis[row].Entries[0].Value;
        }
    }

    public int Rows => values.Length;

    /// <summary>Takes a column that stands in one row of pieces alone into the first basis.</summary>
    public void Begin(int row, SimplexColumn column)
    {
        basis[row] = column;
        inverse[row][row] = 1 / column.Entries[0].Value;
        values[row] /= column.Entries[0].Value;
    }

    /// <summary>Price of one more at each right side.</summary>
    public double[] Duals()
    {
        var duals = new double[Rows];
        for (var row = 0; row < Rows; row++)
        {
            if (basis[row].Price != 0)
            {
                for (var i = 0; i < Rows; i++)
                {
                    duals[i] += basis[row].Price * inverse[row][i];
                }
            }
        }

        return duals;
    }

    /// <summary>Cutting too much, or leaving a bar, where that is cheaper; null where it is not.</summary>
    public SimplexColumn? Slack(double[] duals)
    {
        for (var row = 0; row < Rows; row++)
        {
            if (row < kinds ? duals[row] < -Hair : duals[row] > Hair)
            {
                return Spare(row);
            }
        }

        return null;
    }

    /// <summary>Takes a column into the basis in place of the one that it drives out first.</summary>
    /// <returns>Whether one was driven out.</returns>
    public bool Enter(SimplexColumn column)
    {
        var turned = Turned(column);
        var (least, leaves) = (double.PositiveInfinity, -1);
        for (var row = 0; row < Rows; row++)
        {
            if (turned[row] > Hair && values[row] / turned[row] < least - 1e-12)
            {
                (least, leaves) = (values[row] / turned[row], row);
            }
        }

        if (leaves < 0)
        {
            return false;
        }

        Pivot(leaves, turned, Math.Max(0, least));
        basis[leaves] = column;
        return true;
    }

    /// <summary>The patterns of the basis, and how often each is run.</summary>
    public IReadOnlyList<(Pattern, double)> Use() =>
        [
            .. basis
                .Zip(values)
                .Where(each => each.First.Pattern is not null && each.Second > 1e-7)
                .Select(each => (each.First.Pattern!, each.Second)),
        ];

    private double[] Turned(SimplexColumn column)
    {
        var turned = new double[Rows];
        for (var row = 0; row < Rows; row++)
        {
            foreach (var (i, value) in column.Entries)
            {
                turned[row] += inverse[row][i] * value;
            }
        }

        return turned;
    }

    private void Pivot(int leaves, double[] turned, double step)
    {
        var lead = inverse[leaves];
        for (var i = 0; i < Rows; i++)
        {
            lead[i] /= turned[leaves];
        }

        for (var row = 0; row < Rows; row++)
        {
            if (row != leaves && turned[row] != 0)
            {
                var factor = turned[row];
                var each = inverse[row];
                for (var i = 0; i < each.Length; i++)
                {
                    each[i] -= factor * lead[i];
                }

                values[row] = Math.Max(0, values[row] - (factor * step));
            }
        }

        values[leaves] = step;
    }

    private SimplexColumn Spare(int row) => new(0, [(row, row < kinds ? -1 : 1)], null);
}

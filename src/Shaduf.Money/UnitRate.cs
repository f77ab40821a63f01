using Shaduf.Working;

namespace Shaduf.Money;

/// <summary>What a part of a unit rate pays for.</summary>
public enum RateKind
{
    /// <summary>Work.</summary>
    Labour,

    /// <summary>Tools and machines.</summary>
    Plant,

    /// <summary>What is built in or used up.</summary>
    Material,
}

/// <summary>One line of a build-up.</summary>
/// <param name="Kind">What it pays for.</param>
/// <param name="Item">The item that is used.</param>
/// <param name="Quantity">How much of it goes into all the units that the build-up makes.</param>
/// <param name="UnitRate">Price of one unit of the item.</param>
public sealed record RateLine(RateKind Kind, string Item, decimal Quantity, decimal UnitRate)
{
    /// <summary>Quantity times rate, not rounded.</summary>
    public decimal Amount => Quantity * UnitRate;
}

/// <summary>What is added to the lines of a build-up: a share, a sum, or both.</summary>
/// <param name="Name">What it is for.</param>
/// <param name="Share">Share of what it stands on, 0 to 9.</param>
/// <param name="Sum">A sum beside the share, for all the units that the build-up makes.</param>
public sealed record RateAddition(string Name, double Share, decimal Sum = 0);

/// <summary>On what the shares of a build-up stand.</summary>
public enum ShareBase
{
    /// <summary>Each on all that stands before it.</summary>
    RunningTotal,

    /// <summary>All on the sum of the lines.</summary>
    Lines,
}

/// <summary>A unit rate built up from labour, plant and material.</summary>
/// <param name="Lines">Its lines.</param>
/// <param name="MadeUnits">Units that the lines together make.</param>
/// <param name="Additions">What is added, with its amount.</param>
/// <param name="Whole">Cost of all the units made, not rounded.</param>
public sealed record UnitRate(
    IReadOnlyList<RateLine> Lines,
    decimal MadeUnits,
    IReadOnlyList<(RateAddition Addition, decimal Amount)> Additions,
    decimal Whole
)
{
    /// <summary>Cost of one unit, not rounded.</summary>
    public decimal PerUnit => Whole / MadeUnits;

    /// <summary>Cost of one kind of line, all units together.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>The sum.</returns>
    public decimal Of(RateKind kind) => Lines.Where(line => line.Kind == kind).Sum(line => line.Amount);

    /// <summary>Builds a rate up.</summary>
    /// <param name="lines">Labour, plant, material; none negative.</param>
    /// <param name="madeUnits">Units that they make, above zero.</param>
    /// <param name="additions">Sundries, tools, water, in the order in which they are added.</param>
    /// <param name="on">On what their shares stand.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentException">No line, a negative quantity, rate or sum, or nothing made.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share outside its range, or NaN.</exception>
    /// <source>sum of quantity times rate, and shares on the running total or on one subtotal; rate analyses after IS 7272 and common practice</source>
    public static UnitRate Of(
        IReadOnlyList<RateLine> lines,
        decimal madeUnits,
        IReadOnlyList<RateAddition> additions,
        ShareBase on = ShareBase.RunningTotal
    )
    {
        if (lines.Count == 0 || madeUnits <= 0)
        {
            throw new ArgumentException("A build-up needs a line, and something that it makes.", nameof(lines));
        }

        if (lines.Any(line => line.Quantity < 0 || line.UnitRate < 0) || additions.Any(each => each.Sum < 0))
        {
            throw new ArgumentException("A quantity, rate or sum is negative.", nameof(lines));
        }

        var ground = lines.Sum(line => line.Amount);
        var running = ground;
        var added = new List<(RateAddition, decimal)>();
        foreach (var addition in additions)
        {
            Within.Require(addition.Share, 0, 9, "");
            var amount = ((on == ShareBase.Lines ? ground : running) * (decimal)addition.Share) + addition.Sum;
            running += amount;
            added.Add((addition, amount));
        }

        return new(lines, madeUnits, added, running);
    }
}

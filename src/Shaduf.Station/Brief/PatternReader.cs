using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads draw patterns: the brief's own, and the names that uses call them by.</summary>
/// <param name="own">The brief's own patterns.</param>
internal sealed class PatternReader(IReadOnlyList<DrawPattern> own)
{
    /// <summary>Reads the brief's own patterns.</summary>
    /// <param name="uses">The mapping <c>uses</c>.</param>
    /// <returns>The patterns.</returns>
    public static IReadOnlyList<DrawPattern> Own(FieldMap uses) =>
        [.. uses.Items("patterns", 0, 10, "Hours of draw of your own.", Read).OfType<DrawPattern>()];

    /// <summary>Reads the name of a pattern.</summary>
    /// <param name="fields">The use.</param>
    /// <param name="usual">The pattern when it is left out.</param>
    /// <returns>The name.</returns>
    public string Name(FieldMap fields, string usual)
    {
        IReadOnlyList<string> names = [.. DrawPattern.Names, .. own.Select(pattern => pattern.Name)];
        var listed = string.Join(", ", DrawPattern.Names);
        var name =
            fields.OptionalText("pattern", $"Hours of draw: {listed}, or one of uses.patterns; left out: {usual}.", 40)
            ?? usual;
        if (fields.AreSound("pattern") && !names.Contains(name))
        {
            fields.Complain("pattern", $"'{name}' is not a draw pattern", Nearest.Or(name, names));
        }

        return name;
    }

    private static DrawPattern? Read(FieldMap fields)
    {
        var name = fields.Text("name", "Its name.", 40);
        var spells = fields.Items("hours", 1, 24, "Spells of draw; their shares make 100 %.", Spell);
        var shares = new double[24];
        foreach (var (fromH, toH, share) in spells.Where(spell => spell.ToH > spell.FromH))
        {
            for (var hour = fromH; hour < toH; hour++)
            {
                shares[hour] += share / (toH - fromH);
            }
        }

        if (fields.AreSound("name") && DrawPattern.Names.Contains(name))
        {
            fields.Complain("name", $"'{name}' stands in the table of patterns", "another name is accepted");
        }

        if (fields.AreSound("hours") && Math.Abs(shares.Sum() - 1) > 1e-6)
        {
            fields.Complain(
                "hours",
                Invariant($"the shares make {shares.Sum() * 100:0.##} %"),
                "shares that make 100 % are accepted"
            );
        }

        fields.Done();
        return fields.AreSound("name", "hours") ? new(name, [.. shares]) : null;
    }

    private static (int FromH, int ToH, double Share) Spell(FieldMap fields)
    {
        var fromH = fields.Count("from", 0, 23, "Full hour at which the spell begins.");
        var toH = fields.Count("to", 1, 24, "Full hour at which it ends.");
        if (fields.AreSound("from", "to") && toH <= fromH)
        {
            fields.Complain("to", $"{toH} is not after {fromH}", $"{fromH + 1} to 24 is accepted");
        }

        var share = fields.Quantity("share", Measure.Share, 0, 1, "Share of the day's water.");
        fields.Done();
        return (fromH, toH, share);
    }
}

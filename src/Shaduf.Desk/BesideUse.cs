using Shaduf.Station;

namespace Shaduf.Desk;

/// <summary>What a file beside the brief is for, and how the brief names it.</summary>
/// <param name="Word">The use as a form sends it.</param>
/// <param name="Label">As a person reads it.</param>
/// <param name="Named">The brief that names the file.</param>
internal sealed record BesideUse(string Word, string Label, Func<BriefText, string, BriefText> Named)
{
    /// <summary>All uses.</summary>
    public static IReadOnlyList<BesideUse> All { get; } =
    [
        new("card", "A card", WithCard),
        new("prices", "The price book", (brief, file) => brief.With("prices", file)),
        new("weather", "The weather record", (brief, file) => brief.Without("site.months").With("site.weather", file)),
        new(
            "readings",
            "Readings from the site book",
            (brief, file) => brief.Without("measured").With("measuredFrom", file)
        ),
        new("beside", "Kept beside the brief", (brief, _) => brief),
    ];

    /// <summary>What is wrong with a file for this use, as far as the file alone tells it; empty when nothing is.</summary>
    public IReadOnlyList<string> Faults(string name, string text)
    {
        if (Word != "card")
        {
            return [];
        }

        try
        {
            CardShelf.ReadText(text, name);
            return [];
        }
        catch (BadInputException bad)
        {
            return [.. bad.Errors.Select(error => $"{error}")];
        }
    }

    private static BriefText WithCard(BriefText brief, string file) =>
        Enumerable.Range(1, brief.ItemCount("ownCards")).Any(i => brief.Value($"ownCards[{i}].file") == file)
            ? brief
            : brief.WithItem("ownCards", [("file", file)]);
}

using System.Globalization;
using System.Text;
using Shaduf.Station;
using Shaduf.Store;

namespace Shaduf.Desk;

/// <summary>The price book of a station's own: a copy of the one it used, changed rate by rate, remarks kept.</summary>
internal static class RateSheet
{
    private const string OwnName = "prices.yaml";
    private const decimal Largest = 1e12m;

    /// <summary>What is wrong with a rate as it was typed; null when nothing is.</summary>
    public static string? Fault(string typed) =>
        decimal.TryParse(typed, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var rate)
        && rate <= Largest
            ? null
            : $"'{(typed.Length > 40 ? typed[..40] + "…" : typed)}' is no rate: a number with a point as its decimal mark, 0 to {Largest:0}, is accepted. The old rate stays.";

    /// <summary>Writes a rate into the station's own price book, which is made when it has none, as one edit.</summary>
    /// <returns>What the person must know; null when it was written, or when the bench tells it.</returns>
    public static async Task<string?> SetAsync(Workbench bench, (string Name, string Unit) item, string rate)
    {
        if (bench.Brief?.Value("prices") is { } named && !named.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase))
        {
            return $"The rates stand in {named}: change them there and take the file in again.";
        }

        await bench.ChangeAsync(
            async brief =>
            {
                var book = BriefText.Of(
                    await bench.TextOfAsync(brief.Value("prices"))
                        ?? await File.ReadAllTextAsync(StationFile.ShippedPrices),
                    OwnName
                );
                var changed = Written(book, item, rate);
                var file = new StationAttachment(OwnName, Encoding.UTF8.GetBytes(changed.Text));
                return (brief.With("prices", OwnName), [FileChange.Put(file)]);
            },
            $"rate of {item.Name}"
        );
        return null;
    }

    private static BriefText Written(BriefText book, (string Name, string Unit) item, string rate)
    {
        var at = Enumerable
            .Range(1, book.ItemCount("rates"))
            .FirstOrDefault(i => book.Value($"rates[{i}].item") == item.Name);
        return at > 0
            ? book.With($"rates[{at}].rate", rate)
            : book.WithItem("rates", [("item", item.Name), ("unit", item.Unit), ("rate", rate)]);
    }
}

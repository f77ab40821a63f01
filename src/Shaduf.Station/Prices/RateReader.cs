using System.Globalization;
using Shaduf.Money;

namespace Shaduf.Station;

/// <summary>A line of a build-up as the price book gives it.</summary>
/// <param name="Kind">What it pays for.</param>
/// <param name="Item">The item used.</param>
/// <param name="Quantity">How much of it.</param>
/// <param name="Path">Its place inside the rate.</param>
internal sealed record GivenPart(RateKind Kind, string Item, decimal Quantity, string Path);

/// <summary>A rate as the price book gives it, before currencies and build-ups are settled.</summary>
internal sealed record GivenRate(string Item, string Unit, decimal? Amount, string Remark)
{
    /// <summary>Its currency; null for the book's.</summary>
    public string? Currency { get; init; }

    /// <summary>Supplier, empty when nobody is named.</summary>
    public string Supplier { get; init; } = "";

    /// <summary>Its own date.</summary>
    public string? Date { get; init; }

    /// <summary>Units in one piece as sold.</summary>
    public decimal? SoldUnits { get; init; }

    /// <summary>Units that the parts make.</summary>
    public decimal MadeUnits { get; init; } = 1;

    /// <summary>Share added for small things.</summary>
    public double SundriesShare { get; init; }

    /// <summary>Parts of its build-up; none for a rate quoted as a whole.</summary>
    public IReadOnlyList<GivenPart> Parts { get; init; } = [];
}

/// <summary>Reads one rate of a price book.</summary>
internal static class RateReader
{
    private const int MostParts = 40;

    private static IReadOnlyList<(string Word, RateKind Kind, string About)> Kinds { get; } =
    [
        ("labour", RateKind.Labour, "Work that the rate is built up from."),
        ("plant", RateKind.Plant, "Tools and machines that the rate is built up from."),
        ("material", RateKind.Material, "Material that the rate is built up from."),
    ];

    /// <summary>Reads a rate.</summary>
    /// <param name="fields">Its mapping.</param>
    /// <param name="units">Units that a rate may be for.</param>
    /// <returns>The rate.</returns>
    public static GivenRate Read(FieldMap fields, IReadOnlyList<(string Word, string Unit)> units)
    {
        var rate = new GivenRate(
            fields.Text("item", "Name of the item: a card's name, or one of the general items.", 40),
            units[
                fields.OneOf("unit", [.. units.Select((unit, i) => (unit.Word, i))], "Unit that the rate is for.")
            ].Unit,
            (decimal?)
                fields.OptionalNumber(
                    "rate",
                    0,
                    1e9,
                    "Price of one unit; left out where it is built up; unknown: the item is listed as not priced."
                ),
            fields.OptionalText("remark", "Place, or what is included.", 120) ?? ""
        )
        {
            Currency = fields.OptionalText("currency", "Currency of the rate; left out: the book's.", 12),
            Supplier = fields.OptionalText("supplier", "Who sells it.", 60) ?? "",
            Date = fields
                .OptionalDate("date", "Date of the rate; left out: the book's.")
                ?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            SoldUnits = (decimal?)
                fields.OptionalNumber("sold", 1e-3, 1e6, "Units in one piece as it is sold: 100 for a coil of 100 m."),
            MadeUnits = (decimal)(
                fields.OptionalNumber("makes", 1e-3, 1e6, "Units that the build-up makes; left out: one.") ?? 1
            ),
            SundriesShare =
                fields.Known("sundries", Measure.Share, 0, 1, "Small things, as a share of the build-up's lines.") ?? 0,
            Parts = [.. Kinds.SelectMany(kind => Parts(fields, kind))],
        };
        if (fields.AreSound())
        {
            Check(fields, rate);
        }

        fields.Done();
        return rate;
    }

    private static IEnumerable<GivenPart> Parts(FieldMap fields, (string Word, RateKind Kind, string About) kind) =>
        fields
            .Items(
                kind.Word,
                0,
                MostParts,
                kind.About,
                part =>
                {
                    var given = (
                        Item: part.Text("item", "An item of this price book.", 40),
                        Quantity: (decimal)part.Number("quantity", 1e-6, 1e6, "How much of it.")
                    );
                    part.Done();
                    return given;
                }
            )
            .Select((part, i) => new GivenPart(kind.Kind, part.Item, part.Quantity, $"{kind.Word}[{i + 1}].item"));

    private static void Check(FieldMap fields, GivenRate rate)
    {
        if (rate.Amount is not null && rate.Parts.Count > 0)
        {
            fields.Complain(
                "rate",
                $"'{rate.Item}' has a rate and a build-up",
                "'rate: ...', or a build-up of labour, plant and material, is accepted"
            );
        }

        if (rate.Amount == 0 && rate.Remark.Length == 0)
        {
            fields.Complain(
                "rate",
                $"'{rate.Item}' costs nothing",
                "0 is accepted beside a remark that says who gives it; an item without a rate is left out"
            );
        }
    }
}

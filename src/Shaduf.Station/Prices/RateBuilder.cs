using Shaduf.Money;

namespace Shaduf.Station;

/// <summary>Settles the rates of a price book: other currencies by their dated exchange, build-ups from the book's own rates.</summary>
internal static class RateBuilder
{
    /// <summary>The rates in the book's currency.</summary>
    /// <param name="top">The price book, for complaints.</param>
    /// <param name="given">The rates as given.</param>
    /// <param name="currency">The book's currency.</param>
    /// <param name="exchanges">Other currencies.</param>
    /// <returns>The rates in the book's order; one that cannot be settled is left out, and complained of.</returns>
    public static IReadOnlyList<Rate> Of(
        FieldMap top,
        IReadOnlyList<GivenRate> given,
        string currency,
        IReadOnlyList<Exchange> exchanges
    )
    {
        var settled = new Dictionary<string, Rate>();
        foreach (var (i, rate) in given.Index().Where(each => each.Item.Amount is not null))
        {
            if (Quoted(top, i, rate, currency, exchanges) is { } quoted)
            {
                settled.TryAdd(rate.Item, quoted);
            }
        }

        Build(top, given, settled);
        return [.. given.Select(rate => settled.GetValueOrDefault(rate.Item)).OfType<Rate>()];
    }

    private static Rate? Quoted(
        FieldMap top,
        int at,
        GivenRate rate,
        string currency,
        IReadOnlyList<Exchange> exchanges
    )
    {
        var amount = rate.Amount!.Value;
        if (rate.Currency is not { } other || other == currency)
        {
            return Plain(rate, amount);
        }

        if (exchanges.FirstOrDefault(exchange => exchange.Currency == other) is { } exchange)
        {
            return Plain(rate, amount * exchange.Amount) with { Quoted = new(amount, other, exchange) };
        }

        top.Complain(
            $"rates[{at + 1}].currency",
            $"'{rate.Item}' is priced in {other}, the book in {currency}",
            $"{currency}, or a dated exchange of {other} in 'exchange', is accepted"
        );
        return null;
    }

    // A build-up may use others: each round settles those whose parts are all there.
    private static void Build(FieldMap top, IReadOnlyList<GivenRate> given, Dictionary<string, Rate> settled)
    {
        var open = given.Index().Where(each => each.Item.Parts.Count > 0).ToList();
        while (open.Count > 0)
        {
            var ready = open.Where(each => each.Item.Parts.All(part => settled.ContainsKey(part.Item))).ToList();
            if (ready.Count == 0)
            {
                Complain(top, open, given, settled);
                return;
            }

            foreach (var (_, rate) in ready)
            {
                settled.TryAdd(rate.Item, Built(rate, settled));
            }

            open = [.. open.Except(ready)];
        }
    }

    private static void Complain(
        FieldMap top,
        List<(int Index, GivenRate Item)> open,
        IReadOnlyList<GivenRate> given,
        Dictionary<string, Rate> settled
    )
    {
        foreach (var (i, rate) in open)
        {
            foreach (var part in rate.Parts.Where(part => !settled.ContainsKey(part.Item)))
            {
                var isThere = given.Any(other => other.Item == part.Item);
                top.Complain(
                    $"rates[{i + 1}].{part.Path}",
                    isThere
                        ? $"'{rate.Item}' is built up from '{part.Item}', which waits for it or has no rate itself"
                        : $"the book has no rate for '{part.Item}'",
                    isThere
                        ? "build-ups that do not go round in a ring are accepted"
                        : Nearest.Or(part.Item, [.. given.Select(other => other.Item)])
                );
            }
        }
    }

    private static Rate Built(GivenRate rate, Dictionary<string, Rate> settled)
    {
        var build = UnitRate.Of(
            [
                .. rate.Parts.Select(part => new RateLine(
                    part.Kind,
                    part.Item,
                    part.Quantity,
                    settled[part.Item].Amount
                )),
            ],
            rate.MadeUnits,
            rate.SundriesShare > 0 ? [new("sundries", rate.SundriesShare)] : []
        );
        return Plain(rate, build.PerUnit) with { BuildUp = build };
    }

    // A rate has four decimals at most, as a spreadsheet shows it.
    private static Rate Plain(GivenRate rate, decimal amount) =>
        new(rate.Item, rate.Unit, Math.Round(amount, 4, MidpointRounding.AwayFromZero), rate.Remark)
        {
            Supplier = rate.Supplier,
            Date = rate.Date,
            SoldUnits = rate.SoldUnits,
        };
}

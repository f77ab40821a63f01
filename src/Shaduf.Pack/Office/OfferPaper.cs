using Shaduf.Money;
using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The offer in the client's own words: what is built, the water by month, the price, how it is paid.</summary>
public static class OfferPaper
{
    /// <summary>Lays the offer out.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">What every page bears.</param>
    /// <returns>The pages in order.</returns>
    public static IReadOnlyList<Scene> Pages(Design design, Stamp stamp)
    {
        var style = new PageStyle(PaperSize.A4Upright, PageMargins.House, design.Brief.Head.Name, "offer", stamp.Mark);
        return Flow.Lay([.. Blocks(design, stamp)], style);
    }

    private static IEnumerable<Block> Blocks(Design design, Stamp stamp) =>
        [
            .. Head(design, stamp),
            .. Notices(design),
            new Heading(2, "What you get"),
            new Bullets([.. Works(design).Select(RichText.From)]),
            .. Water(design),
            new PageBreak(),
            .. Price(design),
            .. Payment(design, stamp),
            .. Conditions(design),
            Signatures(),
        ];

    private static IEnumerable<Block> Head(Design design, Stamp stamp)
    {
        var head = design.Brief.Head;
        yield return new Heading(1, $"Offer: {head.Name}");
        yield return new Paragraph(
            Invariant(
                $"{(head.Client.Length > 0 ? $"To {head.Client}. " : "")}{(head.Builder.Length > 0 ? $"From {head.Builder}. " : "")}{head.Place}. {stamp.Dated:d MMMM yyyy}, stands until {stamp.Dated.AddDays((int)design.Survey["validity"]):d MMMM yyyy}."
            )
        );
    }

    private static IEnumerable<Block> Notices(Design design)
    {
        if (!design.Offer.Complete)
        {
            yield return new Notice(
                FindingStatus.Stop,
                $"This is no offer yet: no price is known for {string.Join(", ", design.Offer.Unpriced)}. The sums leave them out."
            )
            {
                Word = "INCOMPLETE",
            };
        }

        foreach (var notice in Standing.Notices(design, isForClient: true))
        {
            yield return notice;
        }
    }

    private static IEnumerable<string> Works(Design design)
    {
        var (choice, works) = (design.Choice, design.Works);
        yield return Invariant(
            $"{choice.ModuleCount} solar modules of {choice.Module.Sheet.RatedW:0} W on {RackTables.RacksText(works.Rack.Grid)} of painted steel, in concrete."
        );
        yield return works.Source is WellBuild
            ? Invariant(
                $"A pump hung {choice.Lift.Foot.LengthM:0} m deep in your borehole, with its pipe, cable, cover and slab, and what stops it when the water is low."
            )
            : "A pump beside the water, with its suction pipe, footing and what stops it when the water is low.";
        yield return Invariant($"{choice.Lift.MainM:0} m of buried pipe up to the tank, tested and flushed.");
        yield return design.Brief.Tank.IsExisting
            ? "Your tank is used as it stands."
            : Invariant(
                $"{(choice.TankCount == 1 ? Invariant($"A tank of {choice.TankM3:0.#} m3") : Invariant($"{choice.TankCount} tanks, {choice.TankM3:0.#} m3 together"))}{OnStands(works.Stand?.Count ?? 0)}."
            );
        if (works.TapStands is { } taps)
        {
            yield return Invariant(
                $"{(taps.Count == 1 ? "A tap stand" : Invariant($"{taps.Count} tap stands"))} with apron and soakaway, and {works.TapTrench.LengthM:0} m of pipe to {(taps.Count == 1 ? "it" : "them")}."
            );
        }

        if (works.Guard.Fence is not null)
        {
            yield return "A fence with a gate around the modules.";
        }

        if (works.Guard.Light is { } light)
        {
            yield return Invariant($"{light.Lamps.Count} night {(light.Lamps.Count == 1 ? "light" : "lights")}.");
        }

        yield return "Earthing, tests in your presence, disinfection, teaching of those who run it, spare parts and a book.";
    }

    private static string OnStands(int count) =>
        count switch
        {
            0 => "",
            1 => ", on a stand of steel",
            _ => Invariant($", on {count} stands of steel"),
        };

    private static IEnumerable<Block> Water(Design design)
    {
        yield return new Heading(2, "The water we promise");
        yield return new Figure(
            Charts.Water(design, new(173, 48)),
            "Water asked for, water you receive, and what could be pumped with a larger tank, month by month."
        );
        yield return new Table(
            [new("month", 1.2), .. YearCalendarNames.Months.Select(Column)],
            [
                TableRow.Of([
                    "you need, m3 a day",
                    .. design.Months.Select(month => Invariant($"{month.DemandM3PerDay:0.0}")),
                ]),
                TableRow.Of([
                    "you receive, m3 a day",
                    .. design.Months.Select(month => Invariant($"{month.SupplyM3PerDay:0.0}")),
                ]),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
        };
        yield return new Paragraph(
            Invariant(
                $"The promise holds for a common year of sun at your place, for the borehole or water as it was told to us, and for the use in the year {design.Survey["design-years"]:0} from now. In the worst month, {YearCalendarNames.Months[design.Year.WorstMonth]}, {design.Year.WorstShare * 100:0} % of the need is met. Whether the water may be drunk is for a laboratory and the health authority to say."
            )
        );
    }

    private static TableColumn Column(string month) => new(month[..3], 0.6, HorizontalAnchor.Right);

    // Each section with its part of what is added, so that the lines come to the price; the last takes what rounding leaves.
    internal static IReadOnlyList<(string Name, decimal Price)> Lines(Design design)
    {
        var (bill, offer) = (design.Bill, design.Offer);
        var net = offer.Total - offer.Tax - offer.Provisional;
        var cost = bill.Direct + bill.Preliminaries;
        var sections = bill
            .Lines.Where(line => line.Quantity.Section != BillSection.ProvisionalSums)
            .GroupBy(line => line.Quantity.Section)
            .Select(section => (section.Key, Sum: section.Sum(line => line.Amount ?? 0)))
            .ToList();
        var left = net;
        var lines = new List<(string, decimal)>();
        foreach (var (i, (section, sum)) in sections.Index())
        {
            var price =
                i + 1 == sections.Count || cost == 0
                    ? left
                    : Math.Round(net * sum / cost, bill.MinorDigits, MidpointRounding.AwayFromZero);
            left -= price;
            lines.Add(($"{(char)section}  {BillTables.SectionName(section)}", price));
        }

        return offer.Provisional > 0
            ?
            [
                .. lines,
                (
                    $"{(char)BillSection.ProvisionalSums}  {BillTables.SectionName(BillSection.ProvisionalSums)}",
                    offer.Provisional
                ),
            ]
            : lines;
    }

    private static IEnumerable<Block> Price(Design design)
    {
        var offer = design.Offer;
        yield return new Heading(2, "The price");
        yield return new Table(
            [new("", 4), new(offer.Currency, 1.4, HorizontalAnchor.Right)],
            [
                .. Lines(design).Select(line => TableRow.Of(line.Name, Invariant($"{line.Price:#,0.00}"))),
                TableRow.Of(Invariant($"tax, {design.Survey["tax"] * 100:0.#} %"), Invariant($"{offer.Tax:#,0.00}")),
                TableRow.Total("price, all in", Invariant($"{offer.Total:#,0.00}")),
            ]
        )
        {
            Caption =
                "The letters are the sections of the bill; every line of it, with its origin, is in quantities.xlsx, and how they come to these prices in its sheet Offer",
        };
        foreach (var sum in design.Brief.Money.Provisional)
        {
            yield return new Paragraph(
                Invariant(
                    $"Provisional sum of {sum.Sum:#,0.00} {offer.Currency} for {sum.For}: it is spent on your word only, by what the work costs, without profit; what is not spent is not paid."
                )
            );
        }
    }

    private static IEnumerable<Block> Payment(Design design, Stamp stamp)
    {
        var (payment, offer) = (design.Office.Payment, design.Offer);
        yield return new Heading(2, "How it is paid");
        yield return new Table(
            [
                new("when", 4),
                new("share", 0.8, HorizontalAnchor.Right),
                new(offer.Currency, 1.4, HorizontalAnchor.Right),
            ],
            [
                .. payment.Payments.Select(each =>
                    TableRow.Of(
                        each.Stage.Name,
                        Invariant($"{each.Stage.Share * 100:0.#} %"),
                        Invariant($"{each.Due:#,0.00}")
                    )
                ),
                TableRow.Of("at handover, half of what you kept back", "", Invariant($"{payment.AtCompletion:#,0.00}")),
                TableRow.Of(
                    Invariant($"{design.Survey["defects"]:0} days after handover, the rest of it"),
                    "",
                    Invariant($"{payment.AtEnd:#,0.00}")
                ),
                TableRow.Total("all of it", "", Invariant($"{offer.Total:#,0.00}")),
            ]
        )
        {
            Caption = Invariant(
                $"You keep back {design.Survey["retention"] * 100:0.#} % of each payment until the station has stood its time"
            ),
        };
        if (design.Brief.Money.Payment.Credit is { } credit)
        {
            var each = (double)offer.Total * Instalment.PaidShare(credit.InterestPerYear / 12, credit.Months);
            yield return new Paragraph(
                Invariant(
                    $"Or by the month: {credit.Months} instalments of {each:#,0.00} {offer.Currency} at {credit.InterestPerYear * 100:0.#} % a year, {each * credit.Months:#,0.00} {offer.Currency} in all."
                )
            );
        }

        yield return new Paragraph(
            Invariant(
                $"Work may begin on {design.Programme.Start:d MMMM yyyy}; with {design.Programme.PeopleCount} people the station is handed over on {design.Programme.Finish:d MMMM yyyy}, if the order comes by {stamp.Dated.AddDays((int)design.Survey["validity"]):d MMMM yyyy} and goods arrive in their time."
            )
        );
    }

    private static IEnumerable<Block> Conditions(Design design)
    {
        var beyond = design.Offer.Provisional > 0 ? " beyond the provisional sums" : "";
        yield return new Heading(2, "What is not in it");
        yield return new Bullets([
            $"Rock, ground water in the pits, buried pipes and cables that nobody told of{beyond}; they are paid by what they cost, agreed before the work.",
            "Licences to draw water and to build, land, and the water test of the laboratory: these are yours.",
            $"Prices are of {design.File.Prices.Date}; after the date above they are asked for again.",
        ]);
    }

    private static Table Signatures() =>
        new([new("client"), new("builder")], [TableRow.Of("\n\nname, date, signature", "\n\nname, date, signature")]);
}

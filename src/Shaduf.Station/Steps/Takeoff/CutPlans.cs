using Shaduf.Money;
using Shaduf.Parts;
using Shaduf.Workshop;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The bars that one section is cut from.</summary>
/// <param name="Section">The section.</param>
/// <param name="Plan">Which piece comes from which bar.</param>
public sealed record SectionPlan(Section Section, CutPlan Plan)
{
    /// <summary>The parts that are cut from them: numbers and marks.</summary>
    public required string Marks { get; init; }

    /// <summary>Bars to buy by length, the longest first.</summary>
    public IEnumerable<(double LengthMm, int Count)> Bought =>
        Plan
            .Bars.Where(bar => !bar.Stock.IsOffcut)
            .CountBy(bar => bar.Stock.LengthMm)
            .OrderByDescending(bar => bar.Key)
            .Select(bar => (bar.Key, bar.Value));

    /// <summary>Share of the bought bars of a length that is built in: the rest is cut away or left over.</summary>
    /// <param name="lengthMm">Length of the bars [mm].</param>
    /// <returns>Share.</returns>
    public double BuiltInShare(double lengthMm) =>
        Plan
            .Bars.Where(bar => !bar.Stock.IsOffcut && bar.Stock.LengthMm == lengthMm)
            .Average(bar => bar.Pieces.Sum(piece => piece.LengthMm) / lengthMm);

    /// <summary>Offcuts of the yard that are used.</summary>
    public int OffcutCount => Plan.Bars.Count(bar => bar.Stock.IsOffcut);

    /// <summary>Key of a bar's rate in the price book.</summary>
    /// <param name="lengthMm">Length of the bar [mm].</param>
    /// <returns>The section's name, and the length where it is not the card's.</returns>
    public string ItemOf(double lengthMm) =>
        lengthMm == Section.BarMm ? Section.Name : new OtherBarBrief(Section.Name, lengthMm).Item;
}

/// <summary>Which piece of all steel is cut from which bar.</summary>
public static class CutPlans
{
    /// <summary>The plans that are cut by: least price, proved where it can be.</summary>
    /// <param name="lots">All steel.</param>
    /// <param name="workshop">The saw and the yard.</param>
    /// <param name="prices">The price book.</param>
    /// <param name="cheapest">The cheapest plan of a section's order: worked out, or remembered.</param>
    /// <returns>One for each section.</returns>
    internal static IReadOnlyList<SectionPlan> Of(
        IReadOnlyList<SteelLot> lots,
        WorkshopBrief workshop,
        PriceBook prices,
        Func<Section, CutOrder, CutPlan> cheapest
    ) =>
        Plans(
            Cuttable(lots, workshop),
            (kept, section) => cheapest(section, Order(kept, section, workshop, Stock(section, workshop, prices)))
        );

    /// <summary>What of the steel cannot be cut from any bar that can be bought, in sentences; none when all can.</summary>
    /// <param name="lots">All steel.</param>
    /// <param name="workshop">The saw.</param>
    internal static IReadOnlyList<string> Troubles(IReadOnlyList<SteelLot> lots, WorkshopBrief workshop) =>
        [.. Sections(lots).SelectMany(section => Order(lots, section, workshop, [new(section.BarMm, 1)]).Troubles())];

    /// <summary>Quick plans from the cards' bars alone, to compare racks with.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="workshop">The saw.</param>
    /// <returns>One for each section.</returns>
    internal static IReadOnlyList<SectionPlan> Quick(Rack rack, WorkshopBrief workshop) =>
        Quick([SteelLot.Of(rack)], workshop);

    private static List<SectionPlan> Quick(IReadOnlyList<SteelLot> lots, WorkshopBrief workshop) =>
        Plans(
            Cuttable(lots, workshop),
            (kept, section) => CutPlan.FirstFit(Order(kept, section, workshop, [new(section.BarMm, 1)]))
        );

    private static IEnumerable<Section> Sections(IReadOnlyList<SteelLot> lots) =>
        lots.SelectMany(lot => lot.Steel.Groups.Select(part => part.Section)).Distinct();

    // The lots without the parts that no bar gives: those are told by a finding that stops.
    private static IReadOnlyList<SteelLot> Cuttable(IReadOnlyList<SteelLot> lots, WorkshopBrief workshop) =>
        Troubles(lots, workshop).Count == 0
            ? lots
            :
            [
                .. lots.Select(lot =>
                    lot with
                    {
                        Steel = lot.Steel with
                        {
                            Parts = [.. lot.Steel.Parts.Where(part => IsCuttable(part, workshop))],
                        },
                    }
                ),
            ];

    private static bool IsCuttable(Part part, WorkshopBrief workshop) =>
        !Troubles([new("", new("", [part], []), 1)], workshop).Any();

    private static List<SectionPlan> Plans(
        IReadOnlyList<SteelLot> lots,
        Func<IReadOnlyList<SteelLot>, Section, CutPlan> plan
    ) =>
        [
            .. lots.SelectMany(lot => lot.Steel.Groups.Select(part => (Part: part, lot.Count)))
                .GroupBy(group => group.Part.Section)
                .OrderBy(group => group.Key.Name, StringComparer.Ordinal)
                .Select(group => new SectionPlan(group.Key, plan(lots, group.Key))
                {
                    Marks = string.Join(", ", group.Select(each => $"{each.Part.Count * each.Count} {each.Part.Mark}")),
                }),
        ];

    private static CutOrder Order(
        IReadOnlyList<SteelLot> lots,
        Section section,
        WorkshopBrief workshop,
        IReadOnlyList<BarStock> stock
    ) =>
        new(
            [
                .. lots.SelectMany(lot =>
                    lot.Steel.Groups.Where(group => group.Section == section)
                        .SelectMany(group => Pieces(group, lot.Count))
                ),
            ],
            stock,
            workshop.KerfMm,
            workshop.EndTrimMm
        );

    // A card's bar without a rate is bought all the same; the bill says that it is not priced. Other lengths must have one.
    private static IReadOnlyList<BarStock> Stock(Section section, WorkshopBrief workshop, PriceBook prices)
    {
        decimal? Rate(string item) =>
            prices.Rates.TryGetValue(item, out var rate) && rate.Amount > 0 ? rate.Amount : null;
        var others = workshop
            .OtherBars.Where(bar => bar.Section == section.Name && Rate(section.Name) is not null)
            .Where(bar => Rate(bar.Item) is not null && bar.LengthMm != section.BarMm)
            .DistinctBy(bar => bar.LengthMm)
            .Select(bar => new BarStock(bar.LengthMm, Rate(bar.Item)!.Value));
        var offcuts = workshop
            .Offcuts.Where(offcut => offcut.Section == section.Name && offcut.LengthMm > workshop.EndTrimMm)
            .GroupBy(offcut => offcut.LengthMm)
            .Select(alike => new BarStock(alike.Key, 0, alike.Sum(offcut => offcut.Count)));
        return [new(section.BarMm, Rate(section.Name) ?? 1), .. others, .. offcuts];
    }

    /// <summary>What is painted on a piece: spliced parts are cut as pieces, F1 becomes F1a, F1b.</summary>
    /// <param name="part">The part.</param>
    /// <param name="index">Number of the piece from the start, from 0.</param>
    /// <returns>The mark.</returns>
    public static string PieceMark(PartGroup part, int index) =>
        part.PiecesMm.Count == 1 ? part.Mark : $"{part.Mark}{(char)('a' + index)}";

    // Only the outer ends of a part are cut at its angles.
    private static IEnumerable<CutPart> Pieces(PartGroup part, int count) =>
        part.PiecesMm.Select(
            (mm, i) =>
                new CutPart(
                    PieceMark(part, i),
                    Part.WholeMm(mm + (i == part.PiecesMm.Count - 1 ? BeyondMm(part) : 0)),
                    part.Count * count
                )
                {
                    StartDeg = i == 0 ? part.Shape.StartDeg : 0,
                    EndDeg = i == part.PiecesMm.Count - 1 ? part.Shape.EndDeg : 0,
                    IsTrapezoid = IsTrapezoid(part),
                    NestWidthMm = part.Section.Outline == Outline.SquareTube && IsPlane(part) ? part.Section.SideMm : 0,
                }
        );

    // Ends that lean one after the other: from its first to its last point the part is longer than any of its edges.
    private static double BeyondMm(PartGroup part) => part.AlongBarMm - part.Shape.LongPointMm;

    private static bool IsTrapezoid(PartGroup part) => Math.Abs(Slant(part) - Lean(part, 1)) < 0.1;

    // Both cuts lean in one plane: long and short point then differ by what the angles say.
    private static bool IsPlane(PartGroup part) => IsTrapezoid(part) || Math.Abs(Slant(part) - Lean(part, -1)) < 0.1;

    private static double Slant(PartGroup part) => part.Shape.LongPointMm - part.Shape.ShortPointMm;

    private static double Lean(PartGroup part, int sign) =>
        part.Section.SideMm
        * Math.Abs(
            Math.Tan(part.Shape.StartDeg * Math.PI / 180) + (sign * Math.Tan(part.Shape.EndDeg * Math.PI / 180))
        );

    /// <summary>What the plan of a section is worth, in words.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>Whether it is proved, or how far it may be from the least.</returns>
    public static string Proof(CutPlan plan) =>
        plan.IsProven
            ? "proved: no plan of square cuts is cheaper"
            : Invariant($"at most {plan.GapCost / plan.Cost * 100:0.0} % dearer than the cheapest plan");
}

using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The concrete of a slab at the source.</summary>
internal static class SlabTakeoff
{
    private const double AggregateWasteShare = 0.10;

    /// <summary>Cement, sand, stone and labour of a slab.</summary>
    /// <param name="slab">The slab.</param>
    /// <param name="what">What it is: 'slab round the wellhead'.</param>
    /// <returns>The quantities.</returns>
    public static IEnumerable<QuantityLine> Of(ApronBuild slab, string what)
    {
        var origin = Invariant(
            $"{what} {slab.SideM:0.0} x {slab.SideM:0.0} x {slab.ThickM:0.00} m: {slab.ConcreteM3:0.000} m3 + 5 %"
        );
        yield return Line(
            "cement-50kg",
            $"cement for the slab, bags of 50 kg, mix {slab.Mix}",
            "nr",
            Math.Ceiling(slab.Quantities.BagCount),
            origin
        ) with
        {
            NetQuantity = slab.Quantities.BagCount / (1 + Footings.WasteShare),
        };
        yield return Line(
            "sand",
            "sand for the slab",
            "m3",
            slab.Quantities.SandM3 * (1 + AggregateWasteShare),
            $"{origin}, and 10 % of sand"
        ) with
        {
            NetQuantity = slab.Quantities.SandM3 / (1 + Footings.WasteShare),
        };
        yield return Line(
            "stone",
            "broken stone 20 mm for the slab",
            "m3",
            slab.Quantities.StoneM3 * (1 + AggregateWasteShare),
            $"{origin}, and 10 % of stone"
        ) with
        {
            NetQuantity = slab.Quantities.StoneM3 / (1 + Footings.WasteShare),
        };
        yield return Labour.Days("apron", slab.ConcreteM3, what);
    }

    private static QuantityLine Line(string item, string what, string unit, double quantity, string origin) =>
        new(item, BillSection.SourceAndPump, what, unit, quantity, origin);
}

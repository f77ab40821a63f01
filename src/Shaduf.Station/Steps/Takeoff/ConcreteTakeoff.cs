using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Concrete outside the footings, of the same mix.</summary>
internal static class ConcreteTakeoff
{
    /// <summary>Cement, sand, stone and labour.</summary>
    /// <param name="section">Section of the bill.</param>
    /// <param name="what">What is cast.</param>
    /// <param name="concreteM3">Concrete, waste not counted [m³].</param>
    /// <param name="footings">The footings, for their mix.</param>
    /// <param name="origin">Where the volume comes from.</param>
    /// <returns>The lines.</returns>
    public static IEnumerable<QuantityLine> Of(
        BillSection section,
        string what,
        double concreteM3,
        Footings footings,
        string origin
    )
    {
        var row = section switch
        {
            BillSection.TapsAndDrainage => "tap-concrete",
            BillSection.Ground => "concrete",
            BillSection.LightAndEarthing => "pole-concrete",
            _ => "block-concrete",
        };
        return
        [
            .. Materials(section, what, concreteM3, footings, origin),
            Labour.Days(row, concreteM3, Invariant($"{concreteM3:0.00} m3")),
        ];
    }

    /// <summary>Cement, sand and stone.</summary>
    /// <param name="section">Section of the bill.</param>
    /// <param name="what">What is cast.</param>
    /// <param name="concreteM3">Concrete, waste not counted [m³].</param>
    /// <param name="footings">The footings, for their mix.</param>
    /// <param name="origin">Where the volume comes from.</param>
    /// <returns>The lines.</returns>
    public static IEnumerable<QuantityLine> Materials(
        BillSection section,
        string what,
        double concreteM3,
        Footings footings,
        string origin
    )
    {
        var ordered = concreteM3 * (1 + Footings.WasteShare);
        var aggregate = ordered * (1 + RackTakeoff.AggregateWasteShare);
        QuantityLine Line((string Item, string Unit) item, string says, double net, double quantity, string also) =>
            new(item.Item, section, $"{says} for {what}", item.Unit, quantity, origin + also) { NetQuantity = net };
        return
        [
            Line(
                ("cement-50kg", "nr"),
                $"cement, bags of 50 kg, mix {footings.Mix.Name},",
                concreteM3 * footings.PerM3.BagCount,
                Math.Ceiling(ordered * footings.PerM3.BagCount),
                ""
            ),
            Line(
                ("sand", "m3"),
                "sand",
                concreteM3 * footings.PerM3.SandM3,
                aggregate * footings.PerM3.SandM3,
                ", and 10 % of sand"
            ),
            Line(
                ("stone", "m3"),
                "broken stone 20 mm",
                concreteM3 * footings.PerM3.StoneM3,
                aggregate * footings.PerM3.StoneM3,
                ", and 10 % of stone"
            ),
        ];
    }
}

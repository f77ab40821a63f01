using Shaduf.Ground;
using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Mesh, wires, gate, concrete and labour of the fence; its tubes are bought by the cut plans.</summary>
internal static class FenceTakeoff
{
    public static IEnumerable<QuantityLine> Of(Guard guard, Footings footings)
    {
        if (guard.Fence is not { Line: var line } fence)
        {
            return [];
        }

        var posts = Invariant(
            $"{line.Posts.Count} posts, {line.StrutCount} struts and {line.Rails.Count} rails, fence {fence.Says}, bays of at most {line.Form.SpacingM:0.0} m"
        );
        return
        [
            .. Wires(line, fence.Says),
            .. ConcreteTakeoff.Materials(
                BillSection.FenceAndGate,
                "fence posts and struts",
                line.ConcreteM3,
                footings,
                Invariant($"{posts}: {line.ConcreteM3:0.00} m3 + 5 %")
            ),
            Labour.Days("posts", line.Posts.Count + line.StrutCount, posts),
        ];
    }

    private static IEnumerable<QuantityLine> Wires(FenceLine line, string says)
    {
        var netM = line.MeshM / FenceLine.MeshFactor;
        QuantityLine Line(string item, string what, string unit, double quantity, double net, string origin) =>
            new(item, BillSection.FenceAndGate, what, unit, quantity, origin) { NetQuantity = net };
        yield return Line(
            "fence-mesh",
            Invariant($"chain-link mesh {line.Form.HeightM:0.0} m high, 50 mm, wire 3.55 mm"),
            "m",
            line.MeshM,
            netM,
            Invariant($"{netM:0.0} m of fence {says}, and 3 % for tension and joints")
        );
        yield return Line(
            "fence-wire",
            "line wire 3.55 mm, galvanised",
            "m",
            line.WireM,
            netM * line.Form.WireCount,
            Invariant($"{line.Form.WireCount} wires along {netM:0.0} m, and 5 %")
        );
        yield return Line(
            "fence-tie",
            "tie wire 2 mm, galvanised",
            "kg",
            line.TieKg,
            line.TieKg,
            Invariant($"0.1 kg for 10 m2 of {netM * line.Form.HeightM:0.0} m2 of mesh")
        );
        yield return Line(
            "stretcher-bar",
            Invariant($"stretcher bar 25 x 5 x {line.Form.HeightM * 1000:0} mm with stirrups every 300 mm"),
            "nr",
            line.StretcherCount,
            line.StretcherCount,
            "one at a gate post, two at a corner or strainer"
        );
        if (line.Gate is { } gate)
        {
            yield return Line(
                "fence-gate",
                Invariant($"gate of two leaves, {gate.WidthM:0.0} m between its posts, with hinges, bolts and lock"),
                "nr",
                1,
                1,
                "one"
            );
        }
    }
}

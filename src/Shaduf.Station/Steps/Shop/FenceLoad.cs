using Shaduf.Parts;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What of the fence goes on the truck.</summary>
internal static class FenceLoad
{
    /// <summary>A roll of mesh [m]; from memory.</summary>
    public const double RollM = 25;

    private const double MeshMm = 50;
    private const double WireMm = 3.55;

    // Two ways of wire through each square metre, bends not counted.
    private static readonly double s_meshKgPerM2 =
        2000 / MeshMm * Math.PI / 4 * WireMm * WireMm * SteelDensity.KgPerM3 * 1e-6;

    /// <summary>Tubes, mesh and gate.</summary>
    /// <param name="fence">The fence.</param>
    public static IEnumerable<LoadItem> Of(StationFence fence)
    {
        var heightM = fence.Line.Form.HeightM;
        foreach (var part in fence.Steel.Groups)
        {
            yield return new(
                Invariant($"{part.Mark} {part.Role}"),
                part.Count,
                part.MassKg / part.Count,
                part.AlongBarMm,
                part.Role switch
                {
                    FenceSteel.RailRole => "welded to its posts on site",
                    FenceSteel.StrutRole => "set in concrete, head welded on site",
                    _ => "set in concrete on site",
                }
            );
        }

        yield return new(
            Invariant($"mesh of the fence, rolls of {RollM:0} m"),
            (int)Math.Ceiling((fence.Line.MeshM / RollM) - 1e-9),
            RollM * heightM * s_meshKgPerM2,
            heightM * 1000,
            "tied on site"
        );
        if (fence.Line.Gate is { } gate)
        {
            var leafM = gate.WidthM / 2;
            var tubesM = (2 * (leafM + heightM)) + double.Hypot(leafM, heightM);
            yield return new(
                "leaf of the gate",
                2,
                (tubesM * fence.Steel.Parts.Min(part => part.Section.MassKgPerM)) + (leafM * heightM * s_meshKgPerM2),
                Math.Max(leafM, heightM) * 1000,
                "bought as it is, hung on site"
            );
        }
    }
}

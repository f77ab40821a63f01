using Shaduf.Parts;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The stands on the truck.</summary>
internal static class StandLoad
{
    /// <summary>The pieces of all stands.</summary>
    /// <param name="stands">The stands.</param>
    public static IEnumerable<LoadItem> Of(StandDesign stands)
    {
        var (steel, count) = (stands.Stand.Steel, stands.Count);
        foreach (var part in steel.Groups)
        {
            yield return LoadingList.InPieces(
                steel,
                part,
                part.Role == TankStand.LegRole ? Leg(stands.Stand, part, count) : Loose(part, count)
            );
        }

        var (plates, access) = (stands.Stand.Plates, stands.Stand.Access);
        yield return new(
            Invariant(
                $"stand deck and toe plate, sheets of {StandPlan.DeckMm:0} mm, {plates.DeckM2:0.0} m2 of deck a stand"
            ),
            count,
            plates.DeckKg,
            0,
            "laid and stitched on site"
        );
        yield return new(
            "stand rungs",
            count * access.RungCount,
            access.RungKg / access.RungCount,
            StandAccess.LadderWidthMm,
            "welded between the stiles"
        );
    }

    // A leg bears its share of what the shop welds on.
    private static LoadItem Leg(TankStand stand, PartGroup part, int count)
    {
        var plates = stand.Plates.Pieces;
        var platesKg = plates.Sum(plate => plate.Count * plate.VolumeMm3) * SteelDensity.KgPerM3 * 1e-9;
        return Loose(part, count) with
        {
            What = $"stand {part.Mark} {part.Role} with plates {string.Join(", ", plates.Select(plate => plate.Mark))}",
            EachKg = (part.MassKg / part.Count) + (platesKg / stand.Plates.LegCount),
            Welding = "plates welded in the shop, the rest to it on site",
        };
    }

    private static LoadItem Loose(PartGroup part, int count) =>
        new(
            $"stand {part.Mark} {part.Role}",
            part.Count * count,
            part.MassKg / part.Count,
            part.AlongBarMm,
            part.Role == TankStand.DiagonalRole
                ? "welded to its gussets and bolted where it crosses, on site"
                : "welded on site"
        );
}

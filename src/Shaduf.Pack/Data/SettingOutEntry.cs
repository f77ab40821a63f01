using Shaduf.Station;
using static Shaduf.Pack.DesignEntries;

namespace Shaduf.Pack;

/// <summary>The pits of the racks from two pegs; lengths in metres, x along the row from its left end, y behind the low edge.</summary>
/// <param name="PegAxM">Peg A along the row.</param>
/// <param name="PegAyM">Peg A behind the low edge; below 0 before it.</param>
/// <param name="PegBxM">Peg B along the row.</param>
/// <param name="PegByM">Peg B behind the low edge.</param>
/// <param name="RowBearingDeg">Bearing of the row from true north.</param>
/// <param name="Pits">The pits.</param>
/// <param name="Diagonals">Distances that are alike two by two.</param>
public sealed record SettingOutEntry(
    double PegAxM,
    double PegAyM,
    double PegBxM,
    double PegByM,
    double RowBearingDeg,
    IReadOnlyList<PitEntry> Pits,
    IReadOnlyList<DiagonalEntry> Diagonals
)
{
    /// <summary>Footings and legs of one stand from the axis of its leg 1; null where none is designed, or it is withheld.</summary>
    public StandSettingOutEntry? Stand { get; init; }

    internal static SettingOutEntry Of(Design design)
    {
        var plan = design.Works.Pits;
        return new(
            plan.A.XM,
            plan.A.YM,
            plan.B.XM,
            plan.B.YM,
            R(SitePlan.Of(design).Bearing.RowDeg),
            [
                .. plan.Pits.Select(pit => new PitEntry(
                    pit.Name,
                    R(pit.Middle.XM),
                    R(pit.Middle.YM),
                    R(pit.FromAM),
                    R(pit.FromBM),
                    R(pit.GroundM),
                    R(pit.BottomM)
                )),
            ],
            [.. plan.Diagonals.Select(line => new DiagonalEntry(line.From, line.To, R(line.LengthM)))]
        )
        {
            Stand =
                design.Works.Stand is { } stands && !StandRelease.IsWithheld(design)
                    ? StandSettingOutEntry.Of(StandPits.Of(stands))
                    : null,
        };
    }
}

/// <summary>The footings of a stand on the ground; lengths in metres from the axis of leg 1, x along its front row, y behind it.</summary>
/// <param name="Footings">Middles of the footings.</param>
/// <param name="Legs">Axes of the legs.</param>
/// <param name="Diagonals">Distances that are alike.</param>
public sealed record StandSettingOutEntry(
    IReadOnlyList<StandPlaceEntry> Footings,
    IReadOnlyList<StandPlaceEntry> Legs,
    IReadOnlyList<DiagonalEntry> Diagonals
)
{
    internal static StandSettingOutEntry Of(StandPits pits) =>
        new(
            [.. pits.Footings.Select(StandPlaceEntry.Of)],
            [.. pits.Legs.Select(StandPlaceEntry.Of)],
            [.. pits.Diagonals.Select(line => new DiagonalEntry(line.From, line.To, R(line.LengthM)))]
        );
}

/// <summary>A place of a stand.</summary>
public sealed record StandPlaceEntry(string Place, double XM, double YM, double FromFirstM)
{
    internal static StandPlaceEntry Of(StandPlace place) =>
        new(place.Name, R(place.AlongM), R(place.OffM), R(place.FromFirstM));
}

/// <summary>A pit.</summary>
public sealed record PitEntry(
    string Pit,
    double XM,
    double YM,
    double FromAM,
    double FromBM,
    double GroundM,
    double BottomM
);

/// <summary>A distance between two pits.</summary>
public sealed record DiagonalEntry(string From, string To, double LengthM);

/// <summary>What goes on the truck.</summary>
/// <param name="PayloadKg">Payload that is reckoned with.</param>
/// <param name="Trips">Trips.</param>
/// <param name="Items">The pieces in the order of loading.</param>
public sealed record LoadingEntry(double PayloadKg, int Trips, IReadOnlyList<LoadEntry> Items)
{
    internal static LoadingEntry Of(Design design)
    {
        var list = LoadingList.Of(design);
        return new(
            list.PayloadKg,
            list.TripCount,
            [
                .. list.Items.Select(item => new LoadEntry(
                    item.Trip,
                    item.What,
                    item.Count,
                    R(item.EachKg),
                    R(item.LengthMm),
                    item.Welding
                )),
            ]
        );
    }
}

/// <summary>Pieces that are loaded alike.</summary>
public sealed record LoadEntry(int Trip, string What, int Count, double EachKg, double LengthMm, string Welding);

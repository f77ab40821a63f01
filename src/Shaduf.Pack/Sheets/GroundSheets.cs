using System.Globalization;
using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The sheets of the ground: where things stand, and what is dug for them.</summary>
internal static class GroundSheets
{
    /// <summary>The station from above.</summary>
    public static IEnumerable<SheetDraft> Site(Design design)
    {
        var plan = SitePlan.Of(design);
        var table = SheetTexts.Table(
            "Places, from the middle of the front rack's low edge",
            ["what", "bearing deg", "distance m", "east m", "north m"],
            [.. Placed(design, plan).Select(PlaceRow)],
            150
        );
        Scene[] beside =
        [
            .. RoutePlaces.Of(design.Brief) is { Count: > 0 } way
                ? [RoutePlanPicture.Of(design.Brief.Lift.Route, way)]
                : Array.Empty<Scene>(),
            .. table,
        ];
        IReadOnlyList<SheetDraft> With(IReadOnlyList<Scene> also) =>
            [
                .. SheetDraft.Scaled(
                    "site",
                    "site plan",
                    scale => [SitePlanPicture.Of(design, plan, scale)],
                    also,
                    [.. SiteNotes(design, plan)],
                    plan.Field.LengthM * 1000 / 380
                ),
            ];

        // The plan is crowded: what stands beside it may not make it smaller.
        var (together, alone) = (With(beside), With([]));
        return together[0].OneToFactor > alone[0].OneToFactor
            ? alone.Concat(SheetDraft.Fixed("site-2", "site plan: places and way of the main", "as noted", beside, []))
            : together;
    }

    /// <summary>The pits from two pegs.</summary>
    public static IEnumerable<SheetDraft> SettingOut(Design design)
    {
        var (plan, field) = (design.Works.Pits, design.Works.Guard.Field);
        var table = SheetTexts.Table(
            "Middles of the pits: tapes held level, metres",
            ["pit", "along", "off A-B", "from A", "from B", "from the last", "ground", "bottom"],
            [.. plan.Pits.Select(pit => PitRow(plan, pit))],
            120
        );
        var diagonals = SheetTexts.Table(
            "Diagonals: alike two by two",
            ["from", "to", "m"],
            [.. plan.Diagonals.Select(line => (IReadOnlyList<string>)[line.From, line.To, Metres(line.LengthM)])],
            120
        );
        return SheetDraft.Scaled(
            "setting-out",
            "setting-out plan: pits from two pegs",
            scale => [PitPlanPicture.Of(plan, field, scale)],
            [.. table, .. plan.Diagonals.Count > 0 ? diagonals : [], .. StandTables(design)],
            [.. PegNotes(design, plan), .. StandNotes(design)],
            plan.BaseM * 1000 / 380
        );
    }

    /// <summary>One footing and the levels of all.</summary>
    public static IEnumerable<SheetDraft> Footings(Design design)
    {
        var (rack, plan, footings) = (design.Works.Rack, design.Works.Pits, design.Works.Footings);
        var table = SheetTexts.Table(
            "Levels in metres; 0 is the ground under the front rack's low left corner",
            ["pit", "bottom", "ground", "column", "its foot", "top of plinth"],
            [.. plan.Pits.SelectMany(pit => pit.Columns.Select(column => LevelRow(pit, column)))],
            150
        );
        return SheetDraft.Scaled(
            "footings",
            "footings and plinths with pit levels",
            scale => [FootingPicture.Side(rack, plan, scale), FootingPicture.Above(rack, plan, scale)],
            [.. table],
            [.. FootingNotes(footings), .. ConcreteNote(design)],
            footings.Block.DepthMm / 180
        );
    }

    private static StandPits? StandOf(Design design) =>
        design.Works.Stand is { } stands && !StandRelease.IsWithheld(design) ? StandPits.Of(stands) : null;

    private static IEnumerable<Scene> StandTables(Design design)
    {
        if (StandOf(design) is not { } stand)
        {
            return [];
        }

        IReadOnlyList<string> Row(StandPlace place) =>
            [place.Name, Metres(place.AlongM), Metres(place.OffM), Metres(place.FromFirstM)];
        return
        [
            .. SheetTexts.Table(
                "Stand: middles of its footings S and axes of its legs, from leg 1, metres",
                ["place", "along the front", "behind it", "from leg 1"],
                [.. stand.Footings.Concat(stand.Legs).Select(Row)],
                120
            ),
            .. SheetTexts.Table(
                "Stand: diagonals",
                ["from", "to", "m"],
                [.. stand.Diagonals.Select(line => (IReadOnlyList<string>)[line.From, line.To, Metres(line.LengthM)])],
                120
            ),
        ];
    }

    private static IEnumerable<string> StandNotes(Design design)
    {
        if (StandOf(design) is { } stand)
        {
            yield return Invariant(
                $"{(stand.Count == 1 ? "Stand of the tank" : $"{stand.Count} stands of the tanks, each")}: peg the axis of leg 1 and the line of its front row, then set all else out from these by right angles of 3-4-5 and check with the diagonals. Footings {stand.Block.LengthMm:0} along the front x {stand.Block.WidthMm:0} across, {stand.Block.DepthMm:0} deep, plinths {stand.Block.PlinthSideMm:0} square and {stand.Block.PlinthHeightMm:0} high under each leg, all plinths to one level."
            );
        }
        else if (StandRelease.IsWithheld(design))
        {
            yield return "The stand is WITHHELD and not set out here: dig nothing for it until nothing of it stops or is unchecked.";
        }
    }

    // No figure reads -0.000.
    internal static string Metres(double m, int places = 3) =>
        (Math.Round(m, places) + 0.0).ToString(places == 2 ? "0.00" : "0.000", CultureInfo.InvariantCulture);

    private static IEnumerable<PlacedThing> Placed(Design design, SitePlan plan) =>
        [
            plan.Source,
            .. Bends(design),
            .. plan.Tank is { } tank ? [tank] : Array.Empty<PlacedThing>(),
            .. TankPlaces.Of(design, plan) is { IsTold: true } all
                ? all.Middles.Skip(1).Select((at, i) => new PlacedThing(Invariant($"tank {i + 2}"), at, true))
                : [],
            new("drive", plan.Drive, true),
            .. design.Works.Guard.Poles.Select(
                (pole, i) => new PlacedThing(SitePlanPicture.PoleSays(pole, i), plan.Bearing.At(pole.Place), true)
            ),
            new("peg A", plan.Bearing.At(design.Works.Pits.A), true),
            new("peg B", plan.Bearing.At(design.Works.Pits.B), true),
            .. plan.Fence.Select((corner, i) => new PlacedThing(Invariant($"fence corner {i + 1}"), corner, true)),
            .. plan.Near,
        ];

    // Points of the main between its ends, where all of them are told.
    private static IEnumerable<PlacedThing> Bends(Design design) =>
        RoutePlaces
            .Of(design.Brief)
            .Zip(design.Brief.Lift.Route)
            .Skip(1)
            .SkipLast(1)
            .Select(each => new PlacedThing(Invariant($"main at {each.Second.ChainageM:0} m"), each.First, true));

    private static IReadOnlyList<string> PlaceRow(PlacedThing thing)
    {
        var (east, north) = (thing.Place.EastM, thing.Place.NorthM);
        var bearing = ((Math.Atan2(east, north) * 180 / Math.PI) + 360) % 360;
        return thing.IsTold
            ?
            [
                thing.Name,
                Invariant($"{bearing:0.0}"),
                Metres(double.Hypot(east, north), 2),
                Metres(east, 2),
                Metres(north, 2),
            ]
            : [thing.Name, "not told", "", "", ""];
    }

    private static IEnumerable<string> SiteNotes(Design design, SitePlan plan)
    {
        yield return Invariant(
            $"The modules look to {plan.Bearing.AzimuthDeg:0.#} deg, the row runs from its left end to {plan.Bearing.RowDeg:0.#} deg, clockwise from true north. Compass reading = true bearing - magnetic declination (east positive); stay 5 m from steel."
        );
        yield return "Walk the line of each trench with the owner before digging: other pipes and cables are not on this plan.";
        if (!plan.Source.IsTold || plan.Tank is null)
        {
            yield return Invariant(
                $"Nobody told where {(plan.Source.IsTold ? "the tank stands" : plan.Tank is null ? $"the {plan.Source.Name} and the tank are" : $"the {plan.Source.Name} is")}: measure bearing and distance from the middle of the front rack's low edge, write them on this sheet and tell the office before anything is dug for pipe or cable."
            );
        }
    }

    private static IReadOnlyList<string> PitRow(PitPlan plan, Pit pit) =>
        [
            pit.Name,
            Metres(pit.Middle.XM - plan.A.XM),
            Metres(pit.Middle.YM - plan.A.YM),
            Metres(pit.FromAM),
            Metres(pit.FromBM),
            pit.FromLastM is { } m ? Metres(m) : "",
            Metres(pit.GroundM),
            Metres(pit.BottomM),
        ];

    private static IEnumerable<string> PegNotes(Design design, PitPlan plan)
    {
        var bearing = new RackBearing(design.Choice.Facing.AzimuthDeg, design.Works.Guard.Field.LengthM);
        var flattest = plan.Pits.MinBy(pit => pit.CrossingDeg)!;
        yield return Invariant(
            $"Peg A to peg B: {plan.BaseM:0.000} m, to {bearing.RowDeg:0.#} deg from true north. The low edge lies {-plan.A.YM:0.000} m behind the line A-B, the left end of the racks {Math.Abs(plan.A.XM):0.000} m from A {(plan.A.XM > 0 ? "away from" : "towards")} B. Thin lines: tapes to {flattest.Name}, {flattest.FromAM:0.000} m from A and {flattest.FromBM:0.000} m from B."
        );
        yield return "Drive both pegs where they can stay until the columns are up. Two people read every distance; check with the third distance, then with the diagonals: accept a difference of 5 mm or a thousandth.";
        yield return Invariant(
            $"Pits {plan.Block.LengthMm:0} along the row x {plan.Block.WidthMm:0} across, {plan.Block.DepthMm:0} deep from the ground at their middle. Levels in metres by water hose from a bench peg; 0 is the ground under the front rack's low left corner."
        );
        if (plan.LeastCrossingDeg < Ground.PegPlace.LeastCrossingDeg)
        {
            yield return Invariant(
                $"At {flattest.Name} the tapes cross at {plan.LeastCrossingDeg:0} deg only: set the far rows out from two pits of the first row instead."
            );
        }
    }

    private static IReadOnlyList<string> LevelRow(Pit pit, StandingColumn column) =>
        [
            pit.Name,
            Metres(pit.BottomM),
            Metres(pit.GroundM),
            column.Mark,
            Metres(column.FootM),
            Metres(column.PlinthTopM),
        ];

    // What must be known before a footing without bars is cast.
    private static IEnumerable<string> ConcreteNote(Design design) =>
        design
            .Findings.Where(finding => finding.Id == "ground/concrete" && finding.Status != FindingStatus.Holds)
            .Select(finding => $"No bars are drawn. {char.ToUpperInvariant(finding.Says[0])}{finding.Says[1..]}.");

    private static IEnumerable<string> FootingNotes(Footings footings)
    {
        yield return Invariant(
            $"{footings.Count} footings, {Station.Footings.Says(footings.Form, footings.Block)}; plinth {footings.Block.PlinthSideMm:0} square, {footings.Block.PlinthHeightMm:0} high. Concrete {footings.ConcreteName}, {footings.ConcreteM3 / footings.Count:0.000} m3 each, {footings.ConcreteM3:0.00} m3 in all; digging {footings.ExcavationM3:0.00} m3."
        );
        yield return "HOLD before concrete: size, depth, ground as assumed, dry; columns plumb, at their level and propped. Nobody enters a pit deeper than 1.2 m without support or slope. Keep the concrete moist for 7 days; no wind load before the age that the engineer's book states.";
    }
}

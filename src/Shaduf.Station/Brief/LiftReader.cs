using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the part of the brief about the way of the pipe.</summary>
internal static class LiftReader
{
    // A tank on the tallest stand and its shell.
    private const double TallestInletM = 30;

    private static IReadOnlyList<(string Word, (bool IsGiven, TankFullStop Way) Value)> Stops { get; } =
    [
        (FieldMap.ChooseWord, default),
        ("signal cable", (true, TankFullStop.SignalCable)),
        ("pressure stop", (true, TankFullStop.PressureStop)),
    ];

    private static IReadOnlyList<(string Word, bool Value)> YesNo { get; } = [("yes", true), ("no", false)];

    public static LiftBrief Read(FieldMap fields)
    {
        var route = fields.Items(
            "route",
            2,
            200,
            "Ground points along the pipe, the wellhead or the pump's place on the bank first, the tank last.",
            point => RoutePoint(point)
        );
        var inletM = fields.Quantity(
            "tankInlet",
            Measure.LengthM,
            -430,
            5500,
            "Level of the tank's inlet above sea level."
        );
        CheckRoute(fields, route, inletM);
        var fittings = Fittings(fields, "Fittings of the pumped main and wellhead.");
        var lift = new LiftBrief(
            route,
            inletM,
            BriefReader.Name(fields, "main", "Card of the pumped main."),
            BriefReader.Name(fields, "riser", "Card of the pipe in the borehole."),
            fittings
        )
        {
            Pump = BriefReader.Name(fields, "pump", "Card of the pump with its motor."),
            Drive = BriefReader.Name(fields, "drive", "Card of the drive."),
            TankFull = TankFull(fields),
            CoverM = fields.Known("cover", Measure.LengthM, 0.3, 2.5, "Ground over the crown of the buried pipes."),
            ShowsHazenWilliams = HazenWilliams(fields),
        };
        fields.Done();
        return lift;
    }

    /// <summary>Reads <c>fittings</c>, each kind once.</summary>
    /// <param name="fields">The mapping that holds them.</param>
    /// <param name="about">What they are.</param>
    /// <returns>The fittings.</returns>
    public static IReadOnlyList<FittingBrief> Fittings(FieldMap fields, string about)
    {
        var fittings = fields.Items("fittings", 0, 20, about, Fitting);
        for (var i = 1; i < fittings.Count && fields.AreSound("fittings"); i++)
        {
            if (fittings.Take(i).Any(before => before.Kind == fittings[i].Kind))
            {
                fields.Complain(
                    $"fittings[{i + 1}].kind",
                    $"'{fittings[i].Kind}' stands twice",
                    "one line for each kind, with its count, is accepted"
                );
            }
        }

        return fittings;
    }

    private static TankFullStop? TankFull(FieldMap fields) =>
        fields.OptionalOneOf(
            "tankFull",
            Stops,
            "How the pump stops when the tank is full: a float switch with a signal cable, or a float valve with a pressure stop."
        )
            is (true, var way)
            ? way
            : null;

    private static bool HazenWilliams(FieldMap fields) =>
        fields.OptionalOneOf(
            "hazenWilliams",
            YesNo,
            "Whether the loss by the old rule of Hazen and Williams is shown beside the one designed by."
        ) ?? false;

    private static void CheckRoute(FieldMap fields, IReadOnlyList<RoutePoint> route, double inletM)
    {
        for (var i = 1; i < route.Count && fields.AreSound("route"); i++)
        {
            if (route[i].ChainageM <= route[i - 1].ChainageM)
            {
                fields.Complain(
                    $"route[{i + 1}].chainage",
                    Invariant($"{route[i].ChainageM:0.##} m is not beyond the point before it"),
                    Invariant($"more than {route[i - 1].ChainageM:0.##} m is accepted")
                );
            }
        }

        if (
            fields.AreSound("route", "tankInlet")
            && route.Count > 1
            && !(inletM >= route[^1].ElevationM && inletM <= route[^1].ElevationM + TallestInletM)
        )
        {
            var (groundM, side) = (route[^1].ElevationM, inletM < route[^1].ElevationM ? "below" : "far above");
            fields.Complain(
                "tankInlet",
                Invariant($"{inletM:0.##} m is {side} the ground at the tank ({groundM:0.##} m)"),
                Invariant($"{groundM:0.##} to {groundM + TallestInletM:0.##} m is accepted")
            );
        }
    }

    private static RoutePoint RoutePoint(FieldMap fields)
    {
        var point = new RoutePoint(
            fields.Quantity("chainage", Measure.LengthM, 0, 50_000, "Distance along the pipe from the wellhead."),
            fields.Quantity("elevation", Measure.LengthM, -430, 5000, "Ground level above sea level."),
            fields.Known("bend", Measure.AngleDeg, 0, 120, "Change of direction there, on the map.")
        )
        {
            Place = Place(fields),
        };
        fields.Done();
        return point;
    }

    private static SitePlace? Place(FieldMap fields)
    {
        var bearingDeg = fields.Known(
            "bearing",
            Measure.AngleDeg,
            0,
            360,
            "Direction to it from the middle of the front rack's low edge, clockwise from true north; with distance, for the site plan."
        );
        var distanceM = fields.Known(
            "distance",
            Measure.LengthM,
            0,
            60_000,
            "To it, level, from the middle of the front rack's low edge."
        );
        if ((bearingDeg is null) != (distanceM is null) && fields.AreSound("bearing", "distance"))
        {
            fields.Complain(
                bearingDeg is null ? "bearing" : "distance",
                "missing",
                "bearing and distance together, or neither, are accepted"
            );
        }

        return bearingDeg is { } deg && distanceM is { } m ? SitePlace.By(deg, m) : null;
    }

    private static FittingBrief Fitting(FieldMap fields)
    {
        var fitting = new FittingBrief(
            fields.Text("kind", $"Kind of fitting: {string.Join(", ", FittingLoss.Names)}.", 40),
            fields.Count("count", 1, 100, "How many.")
        );
        if (fields.AreSound("kind") && !FittingLoss.Names.Contains(fitting.Kind))
        {
            fields.Complain(
                "kind",
                $"'{fitting.Kind}' is not in the table",
                Nearest.Or(fitting.Kind, FittingLoss.Names)
            );
        }

        fields.Done();
        return fitting;
    }
}

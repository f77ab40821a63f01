using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the part of the brief about the way of the pipe.</summary>
internal static class LiftReader
{
    // A tank on the tallest stand and its shell.
    private const double TallestInletM = 30;

    public static LiftBrief Read(FieldMap fields)
    {
        var route = fields.Items(
            "route",
            2,
            200,
            "Ground points along the pipe, the wellhead first, the tank last.",
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
        var fittings = fields.Items("fittings", 0, 20, "Fittings of the pumped main and wellhead.", Fitting);
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

        var lift = new LiftBrief(
            route,
            inletM,
            BriefReader.Name(fields, "main", "Card of the pumped main."),
            BriefReader.Name(fields, "riser", "Card of the pipe in the borehole."),
            fittings
        );
        fields.Done();
        return lift;
    }

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
            fields.Quantity("elevation", Measure.LengthM, -430, 5000, "Ground level above sea level.")
        );
        fields.Done();
        return point;
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

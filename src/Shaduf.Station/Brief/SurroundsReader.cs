using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Something that stands near the array, measured from the middle of the front rack's low edge.</summary>
/// <param name="Name">What it is.</param>
/// <param name="BearingDeg">Direction to its middle, clockwise from true north [deg].</param>
/// <param name="DistanceM">Distance to its middle [m].</param>
/// <param name="BottomM">Height of its lower end above the array's ground [m].</param>
/// <param name="TopM">Height of its top above the array's ground [m]; null for the station's tank as designed.</param>
/// <param name="WidthM">Width across the line of sight [m]; null for the station's tank as designed.</param>
public sealed record NearBrief(
    string Name,
    double BearingDeg,
    double DistanceM,
    double BottomM,
    double? TopM,
    double? WidthM
);

/// <summary>The skyline and what stands near.</summary>
/// <param name="Horizon">Points of the skyline; none when unknown.</param>
/// <param name="Near">What stands near; none when unknown or nothing.</param>
public sealed record SurroundsBrief(IReadOnlyList<HorizonPoint> Horizon, IReadOnlyList<NearBrief> Near);

/// <summary>Reads the part of the brief about skyline and shade.</summary>
internal static class SurroundsReader
{
    /// <summary>Name of the thing whose sizes the design knows.</summary>
    public const string TankWord = "tank";

    public static SurroundsBrief Read(FieldMap site)
    {
        var horizon = site.Items(
            "horizon",
            0,
            72,
            "The skyline seen from the array's place, straight between its points; one point is the same all round.",
            Point
        );
        for (var i = 1; i < horizon.Count && site.AreSound("horizon"); i++)
        {
            if (horizon.Take(i).Any(before => (before.AzimuthDeg - horizon[i].AzimuthDeg) % 360 == 0))
            {
                site.Complain(
                    $"horizon[{i + 1}].azimuth",
                    Invariant($"{horizon[i].AzimuthDeg:0.#} deg stands twice"),
                    "each direction once is accepted"
                );
            }
        }

        return new(horizon, site.Items("near", 0, 20, "What stands near the array and may shade it.", Thing));
    }

    private static HorizonPoint Point(FieldMap fields)
    {
        var point = new HorizonPoint(
            fields.Quantity("azimuth", Measure.AngleDeg, 0, 360, "Direction, clockwise from true north."),
            fields.Quantity("elevation", Measure.AngleDeg, 0, 80, "Height of the skyline there.")
        );
        fields.Done();
        return point;
    }

    private static NearBrief Thing(FieldMap fields)
    {
        var name = fields.Text("name", "What it is; 'tank' takes height and width from the design.", 24);
        var thing = new NearBrief(
            name,
            fields.Quantity("bearing", Measure.AngleDeg, 0, 360, "Direction to its middle, clockwise from true north."),
            fields.Quantity(
                "distance",
                Measure.LengthM,
                1,
                500,
                "To its middle, from the middle of the front rack's low edge."
            ),
            fields.Known(
                "bottom",
                Measure.LengthM,
                0,
                100,
                "Height of its lower end; left out: it stands on the ground."
            ) ?? 0,
            fields.Known("height", Measure.LengthM, 0.1, 150, "Height of its top above the array's ground."),
            fields.Known("width", Measure.LengthM, 0.02, 300, "Width across the line of sight.")
        );
        if (name != TankWord && fields.AreSound("height", "width") && (thing.TopM is null || thing.WidthM is null))
        {
            fields.Complain(
                thing.TopM is null ? "height" : "width",
                "missing",
                $"height and width of everything but the '{TankWord}' are needed"
            );
        }

        if (thing.TopM <= thing.BottomM && fields.AreSound("bottom", "height"))
        {
            fields.Complain(
                "bottom",
                Invariant($"{thing.BottomM:0.##} m is not below the top"),
                Invariant($"less than {thing.TopM:0.##} m is accepted")
            );
        }

        fields.Done();
        return thing;
    }
}

using System.Globalization;
using Shaduf.Sun;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads a watered plot: its need month by month, or its crop with the day of planting.</summary>
internal static class PlotReader
{
    private const int MostSeasonDays = 365;
    private static readonly string[] s_stages = ["start", "growth", "full", "late"];

    /// <summary>Reads a plot.</summary>
    /// <param name="fields">Its mapping.</param>
    /// <param name="patterns">Reader of draw patterns.</param>
    /// <returns>The plot.</returns>
    public static PlotBrief Read(FieldMap fields, PatternReader patterns)
    {
        var crop = fields.Text(
            "crop",
            $"What grows there; with 'planted', one of {string.Join(", ", CropCurve.Names)}, or with 'coefficients'.",
            40
        );
        var areaM2 = fields.Quantity("area", Measure.AreaM2, 1, 5e6, "Area.");
        var plot = new PlotBrief(
            crop,
            areaM2,
            Need(fields),
            Planting(fields, crop),
            Reaching(fields),
            patterns.Name(fields, "morning-evening irrigation")
        );
        if (fields.AreSound("need", "planted") && plot is { NeedMmPerDay.Count: 0, Planting: null })
        {
            fields.Complain(
                "planted",
                "neither the crop's need nor its day of planting is given",
                "'planted: 15 oct', or 'need' with a figure for each month, is needed"
            );
        }
        else if (fields.AreSound("need", "planted") && plot is { NeedMmPerDay.Count: > 0, Planting: not null })
        {
            fields.Complain("planted", "the need is given month by month too", "one of the two is accepted");
        }

        fields.Done();
        return plot;
    }

    private static IReadOnlyList<double> Need(FieldMap fields)
    {
        if (fields.OptionalMap("need", "Water that the crop needs from irrigation in each month.") is not { } need)
        {
            return [];
        }

        IReadOnlyList<double> months =
        [
            .. BriefReader.Months.Select(month => need.Quantity(month, Measure.MmPerDay, 0, 20, "Need in this month.")),
        ];
        need.Done();
        return months;
    }

    private static double? Reaching(FieldMap fields)
    {
        var method = fields.OptionalOneOf(
            "method",
            [.. IrrigationMethod.All.Select((each, i) => (each.Name, i))],
            "How the water is brought to the roots."
        );
        var given = fields.Known("efficiency", Measure.Share, 0.3, 1, "Share of the water that reaches the roots.");
        return given ?? (method is { } index ? IrrigationMethod.All[index].ReachingShare : null);
    }

    private static PlantingBrief? Planting(FieldMap fields, string crop)
    {
        var planted = fields.OptionalText("planted", "Day of planting or sowing, as '15 oct'.", 12);
        var stages = Stages(fields.OptionalMap("stages", "Lengths of the four stages, when yours are known."));
        var coefficients = Coefficients(
            crop,
            fields.OptionalMap("coefficients", "Crop coefficients of a crop that is not in the table.")
        );
        var leaching = fields.Known(
            "leaching",
            Measure.Share,
            0,
            0.5,
            "Share of the water that must pass through the roots to carry salt away."
        );
        if (planted is null || planted == FieldMap.UnknownWord || !fields.AreSound("crop", "stages", "coefficients"))
        {
            return null;
        }

        if (DayOf(planted) is not { } day)
        {
            fields.Complain("planted", $"'{planted}' is not a day of the year", "a day as '15 oct' is accepted");
            return null;
        }

        if (coefficients is null && !CropCurve.Names.Contains(crop))
        {
            fields.Complain(
                "crop",
                $"'{crop}' is not in the table of crops",
                $"{Nearest.Or(crop, CropCurve.Names)}, or a field 'coefficients', is accepted"
            );
            return null;
        }

        var curve = coefficients ?? CropCurve.Named(crop);
        curve = stages is null ? curve : curve with { StageDays = stages };
        if (curve.SeasonDays is < 1 or > MostSeasonDays)
        {
            fields.Complain(
                "stages",
                curve.StageDays.Count == 0
                    ? $"the table has no lengths of the stages of '{crop}'"
                    : Invariant($"the four stages make {curve.SeasonDays} days"),
                Invariant($"'start', 'growth', 'full' and 'late' that make 1 to {MostSeasonDays} days are accepted")
            );
            return null;
        }

        return new(curve, day, leaching);
    }

    private static int[]? Stages(FieldMap? fields)
    {
        int[]? days = fields is null
            ? null
            :
            [
                .. s_stages.Select(stage =>
                    (int)Math.Round(fields.Quantity(stage, Measure.TimeDays, 0, MostSeasonDays, $"Stage '{stage}'."))
                ),
            ];
        fields?.Done();
        return days;
    }

    private static CropCurve? Coefficients(string crop, FieldMap? fields)
    {
        const double most = 1.5;
        var curve = fields is null
            ? null
            : new CropCurve(
                crop,
                fields.Number("start", 0, most, "In the first stage."),
                fields.Number("full", 0, most, "In full leaf."),
                fields.Number("end", 0, most, "On the last day."),
                fields.Quantity("height", Measure.LengthM, 0.1, 10, "Height of the grown plant."),
                []
            );
        fields?.Done();
        return curve;
    }

    // '15 oct' or '15 October'; the 29th of February is no day of the design's year.
    private static int? DayOf(string text)
    {
        var parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (
            parts.Length != 2
            || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var day)
            || parts[1].Length < 3
        )
        {
            return null;
        }

        var month = YearCalendarNames
            .Months.Index()
            .Where(each => each.Item.StartsWith(parts[1], StringComparison.OrdinalIgnoreCase))
            .Select(each => each.Index)
            .DefaultIfEmpty(-1)
            .First();
        return month >= 0 && day >= 1 && day <= YearCalendar.DaysInMonth[month]
            ? YearCalendar.DaysInMonth.Take(month).Sum() + day - 1
            : null;
    }
}

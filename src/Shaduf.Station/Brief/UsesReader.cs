using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>Reads the part of the brief that says who drinks.</summary>
internal static class UsesReader
{
    private const string EachAbout = "Water for each a day.";

    private static IReadOnlyList<(string Word, TargetSpan Value)> TargetSpans { get; } =
    [("worst month", TargetSpan.WorstMonth), ("year", TargetSpan.Year)];

    /// <summary>Reads the uses.</summary>
    /// <param name="fields">The mapping <c>uses</c>.</param>
    /// <returns>The uses.</returns>
    public static UsesBrief Read(FieldMap fields)
    {
        var uses = new UsesBrief(
            fields.Known("designYears", Measure.TimeYears, 0, 40, "Years ahead that the station is sized for."),
            fields.Known("growth", Measure.SharePerYear, -0.05, 0.15, "Growth of people, pupils and patients a year."),
            fields.Known("losses", Measure.Share, 0, 0.6, "Share of the water produced that is lost on the way."),
            fields.Known("target", Measure.Share, 0.3, 1, "Share of the demand that must be met."),
            Heads(fields.OptionalMap("people", "People who fetch or receive water."), "two-peak village"),
            Heads(fields.OptionalMap("school", "Day pupils."), "school"),
            Clinic(fields.OptionalMap("clinic", "A clinic.")),
            fields.Items("livestock", 0, 20, "Herds.", Herd),
            fields.Items("plots", 0, 30, "Watered plots.", Plot),
            fields.Items("fixed", 0, 20, "Uses that are the same every day.", Fixed)
        )
        {
            TargetSpan =
                fields.OptionalOneOf(
                    "targetOver",
                    TargetSpans,
                    "Over what the target is measured; left out: the worst month."
                ) ?? TargetSpan.WorstMonth,
        };
        RefuseNoUse(fields, uses);
        fields.Done();
        return uses;
    }

    private static void RefuseNoUse(FieldMap fields, UsesBrief uses)
    {
        if (
            fields.AreSound("people", "school", "clinic", "livestock", "plots", "fixed")
            && uses is { People: null, School: null, Clinic: null }
            && uses.Livestock.Count + uses.Plots.Count + uses.Fixed.Count == 0
        )
        {
            fields.Complain(
                "people",
                "nobody uses any water",
                "at least one of people, school, clinic, livestock, plots, fixed is needed"
            );
        }
    }

    private static HeadsBrief? Heads(FieldMap? fields, string pattern)
    {
        if (fields is null)
        {
            return null;
        }

        var heads = new HeadsBrief(
            fields.Count("count", 1, 200_000, "How many today."),
            fields.Known("each", Measure.LitresPerDay, 1, 500, EachAbout),
            Pattern(fields, pattern)
        );
        fields.Done();
        return heads;
    }

    private static ClinicBrief? Clinic(FieldMap? fields)
    {
        if (fields is null)
        {
            return null;
        }

        var clinic = new ClinicBrief(
            fields.Count("outpatients", 0, 10_000, "Out-patients a day."),
            fields.Known("eachOutpatient", Measure.LitresPerDay, 1, 100, EachAbout),
            fields.Count("beds", 0, 1000, "Beds."),
            fields.Known("eachBed", Measure.LitresPerDay, 5, 400, EachAbout)
        );
        fields.Done();
        return clinic;
    }

    private static HerdBrief Herd(FieldMap fields)
    {
        var herd = new HerdBrief(
            fields.Text("animal", $"Kind of animal; {string.Join(", ", Assumption.Animals)} have a default use.", 30),
            fields.Count("count", 1, 100_000, "How many."),
            fields.Known("each", Measure.LitresPerDay, 0.05, 200, EachAbout)
        );
        if (fields.AreSound("animal", "each") && herd.EachLPerDay is null && !Assumption.Animals.Contains(herd.Animal))
        {
            fields.Complain(
                "animal",
                $"no default use is known for '{herd.Animal}'",
                $"{string.Join(", ", Assumption.Animals)}, or a field 'each', is accepted"
            );
        }

        fields.Done();
        return herd;
    }

    private static PlotBrief Plot(FieldMap fields)
    {
        var need = fields.Map("need", "Water that the crop needs from irrigation in each month.");
        var plot = new PlotBrief(
            fields.Text("crop", "What grows there.", 40),
            fields.Quantity("area", Measure.AreaM2, 1, 5e6, "Area."),
            [
                .. BriefReader.Months.Select(month =>
                    need.Quantity(month, Measure.MmPerDay, 0, 20, "Need in this month.")
                ),
            ],
            fields.Known("efficiency", Measure.Share, 0.3, 1, "Share of the water that reaches the roots."),
            Pattern(fields, "morning-evening irrigation")
        );
        need.Done();
        fields.Done();
        return plot;
    }

    private static FixedUseBrief Fixed(FieldMap fields)
    {
        var use = new FixedUseBrief(
            fields.Text("name", "What it is.", 40),
            fields.Quantity("water", Measure.LitresPerDay, 1, 5e6, "Water a day."),
            Pattern(fields, "daytime-even")
        );
        fields.Done();
        return use;
    }

    private static string Pattern(FieldMap fields, string usual)
    {
        var names = DrawPattern.Names;
        var pattern =
            fields.OptionalText("pattern", $"Hours of draw: {string.Join(", ", names)}; left out: {usual}.", 40)
            ?? usual;
        if (fields.AreSound("pattern") && !names.Contains(pattern))
        {
            fields.Complain("pattern", $"'{pattern}' is not a draw pattern", Nearest.Or(pattern, names));
        }

        return pattern;
    }
}

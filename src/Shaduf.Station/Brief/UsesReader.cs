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
        var own = PatternReader.Own(fields);
        var patterns = new PatternReader(own);
        var uses = new UsesBrief(
            fields.Known("designYears", Measure.TimeYears, 0, 40, "Years ahead that the station is sized for."),
            fields.Known("growth", Measure.SharePerYear, -0.05, 0.15, "Growth of people, pupils and patients a year."),
            fields.Known("losses", Measure.Share, 0, 0.6, "Share of the water produced that is lost on the way."),
            fields.Known("target", Measure.Share, 0.3, 1, "Share of the demand that must be met."),
            fields.Known("peakDay", Measure.Share, 1, 2, "Water of the year's peak day, against its month's mean day."),
            [
                .. fields.OptionalMap("people", "People who fetch or receive water.") is { } people
                    ? [People(people, "people", patterns)]
                    : (IEnumerable<HeadsBrief>)[],
                .. fields.Items(
                    "groups",
                    0,
                    10,
                    "More people, at other levels of supply.",
                    group => People(group, group.Text("name", "What they are called.", 40), patterns)
                ),
            ],
            fields.OptionalMap("school", "A school.") is { } school
                ? Heads(school, "school", ServiceLevel.ForPupils, patterns)
                : null,
            Clinic(fields.OptionalMap("clinic", "A clinic."), patterns),
            fields.Items("livestock", 0, 20, "Herds.", herd => Herd(herd, patterns)),
            fields.Items("plots", 0, 30, "Watered plots.", plot => PlotReader.Read(plot, patterns)),
            fields.Items("fixed", 0, 20, "Uses that are the same every day.", use => Fixed(use, patterns)),
            own
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
            fields.AreSound("people", "groups", "school", "clinic", "livestock", "plots", "fixed")
            && uses is { People.Count: 0, School: null, Clinic: null }
            && uses.Livestock.Count + uses.Plots.Count + uses.Fixed.Count == 0
        )
        {
            fields.Complain(
                "people",
                "nobody uses any water",
                "at least one of people, groups, school, clinic, livestock, plots, fixed is needed"
            );
        }
    }

    private static HeadsBrief People(FieldMap fields, string name, PatternReader patterns) =>
        Heads(fields, name, ServiceLevel.ForPeople, patterns);

    private static HeadsBrief Heads(
        FieldMap fields,
        string name,
        IReadOnlyList<ServiceLevel> levels,
        PatternReader patterns
    )
    {
        var level = fields.OptionalOneOf(
            "level",
            [.. levels.Select((each, i) => (each.Name, i))],
            "Level of supply; gives the water for each where 'each' does not."
        );
        var arePupils = levels == ServiceLevel.ForPupils;
        var heads = new HeadsBrief(
            name,
            fields.Count("count", 1, 200_000, "How many today."),
            level is { } index ? levels[index].Name : null,
            fields.Known("each", Measure.LitresPerDay, 1, 500, EachAbout),
            patterns.Name(fields, arePupils ? "school" : "two-peak village"),
            arePupils
        );
        fields.Done();
        return heads;
    }

    private static ClinicBrief? Clinic(FieldMap? fields, PatternReader patterns)
    {
        if (fields is null)
        {
            return null;
        }

        var clinic = new ClinicBrief(
            fields.Count("outpatients", 0, 10_000, "Out-patients a day."),
            fields.Known("eachOutpatient", Measure.LitresPerDay, 1, 100, EachAbout),
            fields.Count("beds", 0, 1000, "Beds."),
            fields.Known("eachBed", Measure.LitresPerDay, 5, 400, EachAbout),
            patterns.Name(fields, "daytime-even")
        );
        fields.Done();
        return clinic;
    }

    private static HerdBrief Herd(FieldMap fields, PatternReader patterns)
    {
        var known = string.Join(", ", Livestock.Animals);
        var herd = new HerdBrief(
            fields.Text("animal", $"Kind of animal; {known} have a default use.", 30),
            fields.Count("count", 1, 100_000, "How many."),
            fields.Known("each", Measure.LitresPerDay, 0.05, 200, "Water for each a day, all year."),
            patterns.Name(fields, "livestock")
        );
        if (fields.AreSound("animal", "each") && herd.EachLPerDay is null && !Livestock.Animals.Contains(herd.Animal))
        {
            fields.Complain(
                "animal",
                $"no default use is known for '{herd.Animal}'",
                $"{known}, or a field 'each', is accepted"
            );
        }

        fields.Done();
        return herd;
    }

    private static FixedUseBrief Fixed(FieldMap fields, PatternReader patterns)
    {
        var use = new FixedUseBrief(
            fields.Text("name", "What it is.", 40),
            fields.Quantity("water", Measure.LitresPerDay, 1, 5e6, "Water a day."),
            patterns.Name(fields, "daytime-even")
        );
        fields.Done();
        return use;
    }
}

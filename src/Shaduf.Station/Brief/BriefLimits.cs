using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What no design can be made from, although each field is right by itself.</summary>
internal static class BriefLimits
{
    // Beyond what any source accepted here could give in a day.
    private const double LargestDemandM3PerDay = 20_000;

    /// <summary>Notes a demand that is none or absurd, and a rack that cannot be made.</summary>
    /// <param name="fields">The brief's top mapping.</param>
    /// <param name="brief">The brief.</param>
    /// <param name="shelf">The cards.</param>
    public static void Check(FieldMap fields, Brief brief, CardShelf shelf)
    {
        if (fields.AreSound("uses", "site", "source"))
        {
            Demand(fields, brief);
        }

        if (fields.AreSound("rack", "array", "cards"))
        {
            Channel(fields, brief, shelf);
        }
    }

    private static void Demand(FieldMap fields, Brief brief)
    {
        var uses = DemandYear.UsesOf(brief, Survey.Of(brief)).ToList();
        var largest = Enumerable.Range(0, 12).Max(month => uses.Sum(use => use.M3PerDay[month]));
        if (!(largest > 0 && largest <= LargestDemandM3PerDay))
        {
            fields.Complain(
                "uses",
                largest > 0
                    ? Invariant($"{largest:0} m3 a day are asked for in the design year")
                    : "nobody uses any water in any month",
                Invariant($"more than 0 and at most {LargestDemandM3PerDay:0} m3 a day is accepted")
            );
        }
    }

    private static void Channel(FieldMap fields, Brief brief, CardShelf shelf)
    {
        var modules = brief.Array.Module is { } name ? [shelf.Find<ModuleCard>(name)!] : shelf.All<ModuleCard>();
        var fitting = modules.Where(module => RackSections.Of(brief.Rack, module, shelf) is not null).ToList();
        if (fitting.Count == 0)
        {
            fields.Complain(
                "rack.angle",
                $"no angle makes a channel for {string.Join(", ", modules.Select(module => module.Name))}",
                "an angle card with a leg of about the module's thickness is accepted"
            );
        }
        else if (
            fitting.Select(module => Obstacle(brief, module, shelf)).FirstOrDefault(one => one is not null) is { } why
        )
        {
            fields.Complain(
                "rack.lowEdge",
                $"so near to the ground, with so many rows, so little tilt or such thick tubes, the columns cannot be braced: {why}",
                "a higher low edge, fewer rows, a steeper tilt or thinner tubes are accepted"
            );
        }
    }

    // What stands in the way of making the rack; null when nothing does.
    private static string? Obstacle(Brief brief, ModuleCard module, CardShelf shelf)
    {
        double[] tiltsDeg = brief.Array.TiltDeg is { } tilt
            ? [tilt]
            : [FacingSearch.LeastTiltDeg, FacingSearch.MostTiltDeg];
        int[] rows = brief.Rack.Rows is { } given ? [given] : [1, 2];
        try
        {
            foreach (var (tiltDeg, count) in tiltsDeg.SelectMany(tiltDeg => rows.Select(count => (tiltDeg, count))))
            {
                Rack.Of(brief.Rack, module, new(count, 3, 1), tiltDeg, shelf);
            }

            return null;
        }
        catch (ArgumentException error)
        {
            return error.Message;
        }
    }
}

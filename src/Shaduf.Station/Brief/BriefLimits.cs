using Shaduf.Steel;
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
        var farthest = modules.Min(module => RackClamping.FarthestMm(module, brief.Rack.Way));
        if (brief.Rack is { Type: RackType.ClampedRails, RailsAtMm: { } railsAt } && railsAt > farthest)
        {
            fields.Complain(
                "rack.railsAt",
                Invariant($"{railsAt:0} mm from both ends of the module its two rails meet"),
                Invariant($"at most {farthest:0} mm is accepted")
            );
        }
        else if (fitting.Count == 0)
        {
            fields.Complain(
                "rack.angle",
                $"no angle makes a channel for {string.Join(", ", modules.Select(module => module.Name))}: {WhyNone(brief, modules[0], shelf)}",
                $"{Legs(brief, modules[0])}, or 'rack.type: clamped-rails' is accepted"
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

    // Why each angle makes none, in few words: an error is one line.
    private static string WhyNone(Brief brief, ModuleCard module, CardShelf shelf)
    {
        var tried = shelf
            .All<SectionCard>()
            .Where(card => card.Shape == SectionShape.EqualAngle && (brief.Rack.Angle ?? card.Name) == card.Name)
            .Select(card =>
                (
                    card.Name,
                    Channel: SlideInChannel.Of(
                        card.SizeMm,
                        card.WallMm,
                        module.Body.ThicknessMm,
                        brief.Rack.DepthClearanceMm ?? RackSections.UsualDepthClearanceMm
                    )
                )
            )
            .ToList();
        IEnumerable<string> Group(string what, Func<SlideInChannel, double> byMm)
        {
            var such = tried.Where(each => byMm(each.Channel) > 0).ToList();
            if (such.Count > 0)
            {
                yield return what
                    + string.Join(", ", such.Select(each => Invariant($"{each.Name} by {byMm(each.Channel):0.#} mm")));
            }
        }

        return tried.Count == 0
            ? "there is no card of an equal angle"
            : string.Join(
                ", ",
                [
                    .. Group(
                        Invariant($"too short to lap {SlideInChannel.LeastLapMm:0} mm for the weld are "),
                        channel => (SlideInChannel.LeastLapMm - channel.LapMm) / 2
                    ),
                    .. Group(
                        "too long to end above the other flat leg are ",
                        channel => channel.LegMm - channel.LongestLegMm
                    ),
                ]
            );
    }

    private static string Legs(Brief brief, ModuleCard module)
    {
        var clearanceMm = brief.Rack.DepthClearanceMm ?? RackSections.UsualDepthClearanceMm;
        var fitting = new[] { 3.0, 4 }
            .Select(wall => (Wall: wall, Legs: SlideInChannel.Legs(wall, module.Body.ThicknessMm, clearanceMm)))
            .Where(each => each.Legs.ShortestMm <= each.Legs.LongestMm)
            .Select(each =>
                Invariant($"{each.Legs.ShortestMm:0.#} to {each.Legs.LongestMm:0.#} mm at {each.Wall:0} mm thickness")
            )
            .ToList();
        return fitting.Count > 0 ? $"an angle card with legs of {string.Join(" or ", fitting)}" : "a thicker module";
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

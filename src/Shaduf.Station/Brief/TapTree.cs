namespace Shaduf.Station;

/// <summary>Puts the pipes to the taps in the order in which the water meets them, and tells loops and orphans.</summary>
internal static class TapTree
{
    /// <summary>The pipes from the tank outwards, each turned away from it.</summary>
    /// <param name="fields">The taps of the brief, for places.</param>
    /// <param name="junctions">Places where pipes meet.</param>
    /// <param name="pipes">Pipes in any order and direction.</param>
    /// <param name="taps">The taps.</param>
    /// <returns>The pipes in order; what is wrong is noted.</returns>
    public static IReadOnlyList<TapPipeBrief> FromTank(
        FieldMap fields,
        IReadOnlyList<JunctionBrief> junctions,
        IReadOnlyList<TapPipeBrief> pipes,
        IReadOnlyList<TapBrief> taps
    )
    {
        var points = new Dictionary<string, string> { [TapsBrief.TankName] = "" };
        var named = junctions
            .Select((junction, i) => (junction.Name, Field: $"junctions[{i + 1}].name"))
            .Concat(taps.Select((tap, i) => (tap.Name, Field: $"points[{i + 1}].name")));
        foreach (var (name, field) in named)
        {
            if (!points.TryAdd(name, field))
            {
                fields.Complain(field, $"'{name}' stands twice", "names that differ are accepted");
            }
        }

        for (var i = 0; i < pipes.Count; i++)
        {
            CheckEnd(fields, points, $"pipes[{i + 1}].from", pipes[i].From);
            CheckEnd(fields, points, $"pipes[{i + 1}].to", pipes[i].To);
        }

        return fields.AreSound("junctions", "points", "pipes") ? Ordered(fields, points, pipes) : [];
    }

    private static void CheckEnd(FieldMap fields, Dictionary<string, string> points, string field, string name)
    {
        if (!points.ContainsKey(name))
        {
            fields.Complain(field, $"there is no point named '{name}'", Nearest.Or(name, [.. points.Keys]));
        }
    }

    // Outwards from the tank, ring by ring; a pipe between two points already reached closes a loop.
    private static List<TapPipeBrief> Ordered(
        FieldMap fields,
        Dictionary<string, string> points,
        IReadOnlyList<TapPipeBrief> pipes
    )
    {
        var reached = new HashSet<string> { TapsBrief.TankName };
        var left = pipes.Select((pipe, i) => (Pipe: pipe, Field: $"pipes[{i + 1}].to")).ToList();
        var ordered = new List<TapPipeBrief>();
        while (
            left.FindIndex(each => reached.Contains(each.Pipe.From) || reached.Contains(each.Pipe.To))
                is var at
                    and >= 0
        )
        {
            var (pipe, field) = left[at];
            left.RemoveAt(at);
            var away = reached.Contains(pipe.From) ? pipe : pipe with { From = pipe.To, To = pipe.From };
            if (reached.Add(away.To))
            {
                ordered.Add(away);
            }
            else
            {
                fields.Complain(
                    field,
                    $"closes a loop: '{pipe.From}' and '{pipe.To}' are joined already",
                    "a network that branches and never joins again is accepted"
                );
            }
        }

        Orphans(fields, points.Where(point => !reached.Contains(point.Key)));
        return ordered;
    }

    private static void Orphans(FieldMap fields, IEnumerable<KeyValuePair<string, string>> points)
    {
        foreach (var (name, field) in points)
        {
            fields.Complain(field, $"'{name}' has no way to the tank", "a pipe that joins it is needed");
        }
    }
}

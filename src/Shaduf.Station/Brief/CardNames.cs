using Shaduf.Ground;

namespace Shaduf.Station;

/// <summary>Holds every card that a brief names against the shelf.</summary>
internal static class CardNames
{
    /// <summary>Notes each name that is on no card, with the nearest that is, and each kind of card that is missing.</summary>
    /// <param name="top">The brief's nodes, for places.</param>
    /// <param name="brief">The brief.</param>
    /// <param name="shelf">The cards.</param>
    /// <param name="log">Where errors go.</param>
    public static void Check(YamlMap top, Brief brief, CardShelf shelf, FieldLog log)
    {
        var check = new Checker(top, shelf, log);
        check.One<ModuleCard>(brief.Array.Module, "module", _ => true, "array", "module");
        check.One<PipeCard>(brief.Lift.Main, "main pipe", pipe => pipe.Uses.Contains(PipeUse.Main), "lift", "main");
        check.One<PipeCard>(brief.Lift.Riser, "riser pipe", pipe => pipe.Uses.Contains(PipeUse.Riser), "lift", "riser");
        check.One<TankCard>(brief.Tank.Card, "tank", _ => true, "tank", "card");
        check.One<SectionCard>(
            brief.Rack.Angle,
            "equal angle",
            card => card.Shape == SectionShape.EqualAngle,
            "rack",
            "angle"
        );
        check.One<SectionCard>(
            brief.Rack.Tube,
            "square tube",
            card => card.Shape == SectionShape.SquareHollow,
            "rack",
            "tube"
        );
        check.One<SectionCard>(
            brief.Rack.Column,
            "square tube",
            card => card.Shape == SectionShape.SquareHollow,
            "rack",
            "column"
        );
        check.One<LightCard>(brief.Guard.Light, "light", _ => true, "guard", "light");
        check.One<PipeCard>(
            brief.Taps?.MainPipe,
            "tap pipe",
            pipe => pipe.Uses.Contains(PipeUse.Tap),
            "taps",
            "mainPipe"
        );
        foreach (var (tap, i) in (brief.Taps?.Taps ?? []).Select((tap, i) => (tap, i)))
        {
            check.One<PipeCard>(
                tap.Pipe,
                "tap pipe",
                pipe => pipe.Uses.Contains(PipeUse.Tap),
                "taps",
                "points",
                i,
                "pipe"
            );
        }

        if (brief.Rack.Mix is { } mix && NominalMix.Table.All(known => known.Name != mix))
        {
            log.Add(
                Checker.Place(top, "rack", "mix"),
                "rack.mix",
                $"'{mix}' is not in the table",
                $"{string.Join(", ", NominalMix.Table.Select(known => known.Name))} are accepted"
            );
        }

        check.Any(shelf.All<PumpCard>().Count, "pump");
        check.Any(shelf.All<ModuleCard>().Count, "module");
        check.Any(shelf.All<TankCard>().Count, "tank");
        check.Any(shelf.All<PipeCard>().Count(pipe => pipe.Uses.Contains(PipeUse.Main)), "main pipe");
        check.Any(shelf.All<PipeCard>().Count(pipe => pipe.Uses.Contains(PipeUse.Riser)), "riser pipe");
        check.Any(shelf.All<CableCard>().Count(cable => cable.Use == CableUse.String), "string cable");
        check.Any(shelf.All<CableCard>().Count(cable => cable.Use == CableUse.Motor), "motor cable");
        check.Any(shelf.All<SectionCard>().Count(section => section.Shape == SectionShape.EqualAngle), "equal angle");
        check.Any(
            shelf.All<SectionCard>().Count(section => section.Shape == SectionShape.SquareHollow),
            "square hollow section"
        );
    }

    private sealed class Checker(YamlMap top, CardShelf shelf, FieldLog log)
    {
        public void One<T>(string? name, string kind, Func<T, bool> fits, params object[] path)
            where T : Card
        {
            if (string.IsNullOrEmpty(name) || (shelf.Find<T>(name) is { } card && fits(card)))
            {
                return;
            }

            var known = shelf.All<T>().Where(fits).Select(card => card.Name).ToList();
            var nearest = Nearest.Of(name, known);
            log.Add(
                Place(top, path),
                Shown(path),
                $"there is no card of a {kind} named '{name}'",
                nearest is null ? $"{string.Join(", ", known)} are accepted" : $"did you mean '{nearest}'?"
            );
        }

        public void Any(int count, string kind)
        {
            if (count == 0)
            {
                log.Add(
                    Place(top, "cards"),
                    "cards",
                    $"there is no card of a {kind}",
                    "at least one card of each kind is needed"
                );
            }
        }

        public static FilePlace Place(YamlNode node, params object[] path)
        {
            foreach (var step in path)
            {
                node = (step, node) switch
                {
                    (string name, YamlMap map) when map.Entries.TryGetValue(name, out var entry) => entry.Value,
                    (int index, YamlList list) => list.Items[index],
                    _ => node,
                };
            }

            return node.Place;
        }

        private static string Shown(object[] path) =>
            string.Concat(
                path.Select(
                    (step, i) =>
                        step is int index ? $"[{index + 1}]"
                        : i == 0 ? step
                        : $".{step}"
                )
            );
    }
}

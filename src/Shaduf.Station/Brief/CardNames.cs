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
        check.One<ModuleCard>(brief.Array.Module, "module", _ => true, "array.module");
        check.One<PipeCard>(brief.Lift.Main, "main pipe", pipe => pipe.Uses.Contains(PipeUse.Main), "lift.main");
        check.One<PipeCard>(brief.Lift.Riser, "riser pipe", pipe => pipe.Uses.Contains(PipeUse.Riser), "lift.riser");
        check.One<PipeCard>(
            (brief.Source as SurfaceBrief)?.Suction.Pipe,
            "suction pipe",
            pipe => pipe.Uses.Contains(PipeUse.Suction),
            "source.surface.suction.pipe"
        );
        check.One<TankCard>(brief.Tank.Card, "tank", _ => true, "tank.card");
        check.One<SectionCard>(brief.Rack.Angle, "equal angle", IsAngle, "rack.angle");
        check.One<SectionCard>(
            brief.Rack.Rail,
            "square tube or equal angle",
            card => IsAngle(card) || IsSquare(card),
            "rack.rail"
        );
        check.One<SectionCard>(brief.Rack.Tube, "square tube", IsSquare, "rack.tube");
        var stand = brief.Tank.Stand;
        check.One<SectionCard>(stand.Leg, "square tube", IsSquare, "tank.standing.leg");
        check.One<SectionCard>(stand.Diagonal, "equal angle", IsAngle, "tank.standing.diagonal");
        check.One<SectionCard>(stand.Horizontal, "square tube", IsSquare, "tank.standing.horizontal");
        check.One<SectionCard>(stand.Beam, "square tube", IsSquare, "tank.standing.beam");
        check.One<SectionCard>(stand.Joist, "square tube", IsSquare, "tank.standing.joist");
        check.One<SectionCard>(brief.Rack.Column, "square tube", IsSquare, "rack.column");
        foreach (var (i, name) in Sections(brief.Rack.Workshop))
        {
            check.One<SectionCard>(name, "section", _ => true, i);
        }

        check.One<LightCard>(brief.Guard.Light.Card, "light", _ => true, "guard.light");
        foreach (var pipe in brief.Taps?.Pipes ?? [])
        {
            check.One<PipeCard>(pipe.Pipe, "tap pipe", card => card.Uses.Contains(PipeUse.Tap), pipe.Field);
        }

        if (brief.Taps is not null)
        {
            check.Any(shelf.All<PipeCard>().Count(pipe => pipe.Uses.Contains(PipeUse.Tap)), "tap pipe");
        }

        if (brief.Rack.Mix is { } mix && NominalMix.Table.All(known => known.Name != mix))
        {
            log.Add(
                top.At("rack.mix").Place,
                "rack.mix",
                $"'{mix}' is not in the table",
                Nearest.Or(mix, [.. NominalMix.Table.Select(known => known.Name)])
            );
        }

        CheckMachines(check, brief, shelf);
        CheckKinds(check, shelf, brief.Source is SurfaceBrief);
    }

    // The pump suits the source and the drive its motor.
    private static void CheckMachines(Checker check, Brief brief, CardShelf shelf)
    {
        var isSurface = brief.Source is SurfaceBrief;
        check.One<PumpCard>(
            brief.Lift.Pump,
            isSurface ? "surface pump" : "submersible pump",
            pump => pump.Body is SurfaceBody == isSurface,
            "lift.pump"
        );
        var motors = shelf
            .All<PumpCard>()
            .Where(pump => pump.Body is SurfaceBody == isSurface && (brief.Lift.Pump ?? pump.Name) == pump.Name)
            .Select(pump => pump.Motor.Kind)
            .ToHashSet();
        check.One<DriveCard>(
            brief.Lift.Drive,
            brief.Lift.Pump is { } pump ? $"drive for the motor of {pump}" : "drive for any of the pumps",
            drive => motors.Contains(drive.Sheet.Drives),
            "lift.drive"
        );
    }

    private static void CheckKinds(Checker check, CardShelf shelf, bool isSurface)
    {
        var (pump, pipe, use) = isSurface
            ? ("surface pump", "suction pipe", PipeUse.Suction)
            : ("submersible pump", "riser pipe", PipeUse.Riser);
        var pumps = shelf.All<PumpCard>().Where(card => card.Body is SurfaceBody == isSurface).ToList();
        check.Any(pumps.Count, pump);
        check.Any(
            pumps.Count(card => shelf.All<DriveCard>().Any(drive => drive.Sheet.Drives == card.Motor.Kind)),
            "drive for any of the pumps"
        );
        check.Any(shelf.All<ModuleCard>().Count, "module");
        check.Any(shelf.All<TankCard>().Count, "tank");
        check.Any(shelf.All<PipeCard>().Count(pipe => pipe.Uses.Contains(PipeUse.Main)), "main pipe");
        check.Any(shelf.All<PipeCard>().Count(card => card.Uses.Contains(use)), pipe);
        check.Any(shelf.All<CableCard>().Count(cable => cable.Use == CableUse.String), "string cable");
        check.Any(shelf.All<CableCard>().Count(cable => cable.Use == CableUse.Motor), "motor cable");
        check.Any(shelf.All<SectionCard>().Count(IsAngle), "equal angle");
        check.Any(shelf.All<SectionCard>().Count(IsSquare), "square hollow section");
    }

    private static IEnumerable<(string Field, string Section)> Sections(WorkshopBrief workshop) =>
        [
            .. workshop.Offcuts.Select((offcut, i) => ($"workshop.offcuts[{i + 1}].section", offcut.Section)),
            .. workshop.OtherBars.Select((bar, i) => ($"workshop.otherBars[{i + 1}].section", bar.Section)),
        ];

    private static bool IsAngle(SectionCard card) => card.Shape == SectionShape.EqualAngle;

    private static bool IsSquare(SectionCard card) => card.Shape == SectionShape.SquareHollow;

    private sealed class Checker(YamlMap top, CardShelf shelf, FieldLog log)
    {
        public void One<T>(string? name, string kind, Func<T, bool> fits, string field)
            where T : Card
        {
            if (string.IsNullOrEmpty(name) || (shelf.Find<T>(name) is { } found && fits(found)))
            {
                return;
            }

            var known = shelf.All<T>().Where(fits).Select(card => card.Name).ToList();
            log.Add(
                top.At(field).Place,
                field,
                $"there is no card of a {kind} named '{name}'",
                known.Count == 0 ? "the folder of cards has none" : Nearest.Or(name, known)
            );
        }

        public void Any(int count, string kind)
        {
            if (count == 0)
            {
                log.Add(
                    top.At("cards").Place,
                    "cards",
                    $"there is no card of a {kind}",
                    "at least one card of each kind is needed"
                );
            }
        }
    }
}

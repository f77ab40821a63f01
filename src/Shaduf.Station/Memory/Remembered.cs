using Shaduf.Working;
using Shaduf.Workshop;

namespace Shaduf.Station;

/// <summary>The steps that cost most, run only when what they are given has changed.</summary>
internal static class Remembered
{
    private static readonly object s_noStand = new();

    public static Sky SkyOf(Brief brief, Survey survey, DemandYear demand, StepMemory? memory)
    {
        var seen = BriefParts.ForSky(brief);
        var isOpen = seen.Array is { TiltDeg: null } or { AzimuthDeg: null };
        return memory.Recall(
            "sky",
            new([seen, survey.Climate, isOpen ? demand.M3PerDay : null], []),
            survey,
            figures => Sky.Of(seen, figures, demand)
        );
    }

    // While the choice is held nothing else is looked for where a rack does not hold.
    public static RackChoice RackOf(SizingGround ground, Choice choice)
    {
        var seen = ground with
        {
            Brief = BriefParts.ForRacks(ground.Brief),
            Demand = null!,
            Source = null!,
            Sky = null!,
        };
        return ground.Memory.Recall(
            "rack",
            new(
                [seen.Brief, choice.Module.Name, choice.Grid, choice.Facing.TiltDeg],
                [ground.Shelf, ground.Prices.Book]
            ),
            ground.Survey,
            figures => RackChoice.Of(seen with { Survey = figures }, choice.Module, choice.Grid, choice.Facing.TiltDeg)
        );
    }

    public static StandDesign? StandOf(SizingGround ground, Choice choice)
    {
        var seen = BriefParts.ForStand(ground.Brief);
        return ground.Memory.Recall(
            "stand",
            new([seen, choice.Tank.Name, choice.TankCount], [ground.Shelf]),
            ground.Survey,
            figures => StandDesign.Of(new(seen, figures, ground.Shelf), choice.Tank, choice.TankCount)
        );
    }

    public static IReadOnlyList<Finding> RackFindings(StepMemory? memory, Design design)
    {
        var (choice, module, way) = (design.Works.RackChoice, design.Choice.Module, design.Brief.Rack.Way);
        return memory.Recall(
            "rack findings",
            new([way], [choice, module]),
            design.Survey,
            _ => Station.RackFindings.Of(choice, module, way).ToList()
        );
    }

    public static IReadOnlyList<Finding> StandFindings(StepMemory? memory, Design design) =>
        memory.Recall(
            "stand findings",
            new([design.Brief.Site], [design.Works.Stand ?? s_noStand]),
            design.Survey,
            _ => Station.StandFindings.Of(design.Works.Stand, design.Brief.Site).ToList()
        );

    // A section whose pieces and bars have not changed is not sawn anew.
    public static Takeoff TakeoffOf(StationFile file, Survey survey, Choice choice, Works works, StepMemory? memory) =>
        Takeoff.Of(
            (file.Brief, survey),
            choice,
            works,
            CutPlans.Of(
                works.SawnLots,
                file.Brief.Rack.Workshop,
                file.Prices,
                (section, order) =>
                    memory.Recall($"bars of {section.Name}", new([order], []), survey, _ => CutPlan.Cheapest(order))
            )
        );
}

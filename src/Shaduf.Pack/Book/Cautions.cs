using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>What must be said wherever people can be hurt.</summary>
internal static class Cautions
{
    private static readonly (string Title, string[] Points)[] All =
    [
        (
            "Steel, wind and footings",
            [
                "This version does not check strength. A rack is a sail: wind lifts light racks out of the ground. Have frame, welds, module holding and footings checked for the wind of the place by an engineer; the national code decides.",
                "Prop and guy the frame until the concrete has its age. Nobody stands under a lifted frame. Stop work in wind.",
                "Close and weld no tube that holds water or fuel vapour; remove zinc and paint before welding; keep a fire watch.",
            ]
        ),
        (
            "Tank",
            [
                "A cubic metre of water weighs a tonne. A tank on a stand needs a licensed structural design; no stand is designed here.",
                "Never enter a tank alone or without ventilation.",
            ]
        ),
        (
            "Electricity",
            [
                "Modules are live whenever there is light. A direct-current arc does not go out by itself: never open a connector under load. Isolate, prove dead, lock.",
                "Drives hold a deadly voltage for minutes after they are switched off.",
                "Isolators, surge protection, earthing system and protective conductors are decided by the local wiring rules and a licensed electrician.",
            ]
        ),
        (
            "Lightning and earth",
            [
                "A computed earth resistance can be wrong by a factor of three: measure it in the dry season.",
                "Leave mast, tank, array and wellhead when thunder is heard.",
            ]
        ),
        (
            "Digging and lifting",
            [
                "Pits and trenches deeper than 1.2 m need support or a slope before anyone goes in. Nobody enters a borehole or an unaired well.",
                "Lower the pump with gear made for it; nobody works under a hung load.",
            ]
        ),
        (
            "Water",
            [
                "The promise holds for the weather, the levels and the yield stated here. Without a pumping test by a competent person the yield is not proved.",
                "Whether the water may be drunk is decided by laboratory analysis and the health authority. Disinfect well, pipes and tank before use.",
                "Licences to abstract, drill and build are the client's to get; local law stands above every figure here.",
            ]
        ),
        (
            "Figures",
            [
                "Cards marked as planning data are our own generic figures: replace them by the supplier's data sheets before ordering.",
                "Figures marked 'from memory' or 'common practice, no source' are defaults, not requirements.",
            ]
        ),
    ];

    public static IEnumerable<Block> Blocks()
    {
        yield return new Heading(1, "Cautions");
        foreach (var (title, points) in All)
        {
            yield return new Heading(3, title);
            yield return new Bullets([.. points.Select(RichText.From)]);
        }
    }
}

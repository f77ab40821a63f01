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
                "A rack is a sail: wind lifts light racks out of the ground. Frame, welds, module holding and footings are checked by the rules named in the findings, for the soil and the water that the brief tells; nobody has seen the pit yet. Have all of it checked for the wind of the place by an engineer; the national code decides.",
                "Prop and guy the frame until the concrete has its age. Nobody stands under a lifted frame. Stop work in wind.",
                "Close and weld no tube that holds water or fuel vapour; remove zinc and paint before welding; keep a fire watch.",
            ]
        ),
        (
            "Tank",
            [
                "A cubic metre of water weighs a tonne. A tank on a stand needs a licensed structural design: what this book says of a stand is for that engineer to check and sign. Where no drawing of it is released, none may be built.",
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
                "A rod lowers the chance of damage; nothing prevents lightning. The local code (IEC 62305 series, BS 7430) and a licensed electrician decide; classes I and II, schools, clinics and towers above 20 m are a lightning-protection specialist's.",
                "A computed earth resistance can be wrong by a factor of three: measure it in the dry season.",
                "Step and touch voltage kill beside masts and buried wires: keep people and animals 3 m away, or lay 15 cm of gravel.",
                "Leave mast, tank, array and wellhead when the flash is seen less than 30 s before its thunder, or when any thunder is heard; go on half an hour after the last.",
                "Batteries: fuse at the pole, tools insulated, no ring on the hand; lithium is never charged below 0 degC.",
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

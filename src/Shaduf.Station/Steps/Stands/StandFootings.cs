using Shaduf.Ground;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Footings of a stand: blocks under its legs, and where these grow silly a strip under each row of legs, which ties them.</summary>
public static class StandFootings
{
    // Blocks under a leg: wider than under a column of a rack, for a full tank is tonnes. Judgement.
    private const double WidestMm = 2500;
    private const double StepMm = 50;

    // A block larger than that is dear: strips are looked at too. Judgement, no source.
    private const double LargestM3 = 1.5;

    // A strip must save a fifth of the concrete of blocks: its trench is longer. Judgement, no source.
    private const double StripFactor = 1.25;
    private const double TrenchStepMm = 100;
    private const double LeastEndMm = 200;
    private const double MostEndMm = 1000;
    private const double UsualSideMm = 1000;
    private const double UsualDepthMm = 1000;

    /// <summary>The footings as the brief gives them, or the least that hold.</summary>
    /// <param name="ground">Brief, survey and cards.</param>
    /// <param name="strength">The checked stand.</param>
    /// <param name="count">Stands.</param>
    public static Footings Of(StandSite ground, StandStrength strength, int count)
    {
        var (brief, rack) = (ground.Brief.Tank.Stand, ground.Brief.Rack);
        var (soil, plinth) = (FootingGround.Of(ground.Brief.Site), PlinthOf(strength.Feet.Foot));
        var least = Least(strength, soil, brief.FootingSideMm, brief.FootingDepthMm);
        var taken =
            least
            ?? new(
                FootingForm.Block,
                Footings.BlockOf(brief.FootingSideMm ?? UsualSideMm, brief.FootingDepthMm ?? UsualDepthMm, plinth)
            );
        var (mix, concrete) = (Footings.MixOf(rack), Footings.ConcreteOf(rack));
        var isOpen = brief.FootingSideMm is null || brief.FootingDepthMm is null;
        return new(
            taken.Block,
            count * GroupsOf(strength, taken.Form).Count,
            mix,
            mix.PerM3(NominalMix.UsualDryVolumeFactor, NominalMix.UsualCementKgPerM3),
            isOpen ? [Note(taken, least is not null, strength, soil)] : []
        )
        {
            Form = taken.Form,
            ConcreteName = concrete.Name,
            CylinderNPerMm2 = concrete.CylinderNPerMm2,
            Strength = Any(strength, soil, taken.Form) with { Block = taken.Block },
        };
    }

    /// <summary>The footings with the least concrete that hold without bars; null where none does.</summary>
    /// <param name="strength">The checked stand.</param>
    /// <param name="soil">The ground.</param>
    /// <param name="sideMm">Side of a block, where that is given [mm].</param>
    /// <param name="depthMm">Its depth, where that is given [mm].</param>
    internal static FootingOption? Least(StandStrength strength, FootingGround soil, double? sideMm, double? depthMm)
    {
        var block = Least(strength, soil, FootingForm.Block, Blocks(strength, sideMm, depthMm));
        return block?.Block.ConcreteM3 <= LargestM3 || sideMm is not null || depthMm is not null
            ? block
            : new[] { block, Least(strength, soil, FootingForm.Strip, Strips(strength)) }
                .OfType<FootingOption>()
                .MinBy(option =>
                    (option.Form == FootingForm.Strip ? StripFactor : 1)
                    * GroupsOf(strength, option.Form).Count
                    * option.Block.ConcreteM3
                );
    }

    /// <summary>What the legs put on their footings.</summary>
    /// <param name="strength">The checked stand.</param>
    /// <param name="combinations">The combinations.</param>
    /// <param name="gustKNPerM2">Gust [kN/m²].</param>
    /// <param name="form">Shape of the footings.</param>
    internal static IReadOnlyList<FootLoad> LoadsOf(
        StandStrength strength,
        IReadOnlyList<Steel.Combination> combinations,
        double gustKNPerM2,
        FootingForm form
    ) =>
        [
            .. from combination in combinations
            let legs = FootLoad.Of(strength.Cases, [combination], gustKNPerM2, -StandPlan.FootMm)
            from places in GroupsOf(strength, form)
            select FootLoad.Together([
                .. places.Select(place =>
                    (legs[place.Foot] with { Column = Invariant($"{place.Foot + 1}") }, place.AlongM, place.AcrossM)
                ),
            ]),
        ];

    /// <summary>The legs of each footing.</summary>
    /// <param name="strength">The checked stand.</param>
    /// <param name="form">Shape of the footings.</param>
    public static IReadOnlyList<IReadOnlyList<FootPlace>> GroupsOf(StandStrength strength, FootingForm form) =>
        FootGroups.Of(strength.Stand.Skeleton, form);

    /// <summary>Advice in words.</summary>
    /// <param name="least">What would hold; null for nothing.</param>
    internal static string Says(FootingOption? least) =>
        least is null
            ? Invariant(
                $". No square block up to {WidestMm:0} mm wide and {FootingChoice.DeepestMm:0} mm deep and no strip under a row of legs holds without bars: more legs, one slab with bars under all of them, or better ground, by an engineer"
            )
            : $". What would hold, of the same mix: {In(least)} (leave footingSide and footingDepth of the stand to choose)";

    private static string In(FootingOption option) =>
        option.Form == FootingForm.Block
            ? $"blocks of {Footings.Says(option.Form, option.Block)}"
            : Footings.Says(option.Form, option.Block).Replace("columns", "legs", StringComparison.Ordinal);

    private static FootingStrength Any(StandStrength strength, FootingGround soil, FootingForm form) =>
        new(
            soil,
            Footings.BlockOf(UsualSideMm, UsualDepthMm, PlinthOf(strength.Feet.Foot)),
            LoadsOf(strength, strength.Combinations.Ground, strength.Wind.PeakKNPerM2, form),
            LoadsOf(strength, strength.Combinations.Service, strength.Wind.PeakKNPerM2, form)
        )
        {
            National = strength.Combinations.Choices,
        };

    private static FootingOption? Least(
        StandStrength strength,
        FootingGround soil,
        FootingForm form,
        IEnumerable<FootingBlock> blocks
    )
    {
        var (any, pressKN) = (Any(strength, soil, form), PressKN(strength));
        return blocks
            .OrderBy(block => block.ConcreteM3)
            .ThenBy(block => block.DepthMm)
            .Select(block => any with { Block = block })
            .Where(each => each.Holds && StandConcrete.Of(strength, each, form, pressKN).Holds)
            .Select(each => new FootingOption(form, each.Block))
            .FirstOrDefault();
    }

    /// <summary>The concrete of a stand's footings.</summary>
    /// <param name="strength">The checked stand.</param>
    /// <param name="footings">The footings.</param>
    public static StandConcrete ConcreteOf(StandStrength strength, Footings footings) =>
        StandConcrete.Of(strength, footings.Strength!, footings.Form, PressKN(strength));

    // The hardest pressed leg.
    private static double PressKN(StandStrength strength) =>
        LoadsOf(strength, strength.Combinations.Ground, strength.Wind.PeakKNPerM2, FootingForm.Block)
            .Max(load => load.DownKN);

    // The plinth is 50 mm wider than the base plate on each side.
    private static double PlinthOf(StandFoot foot) => foot.SideMm - 50;

    private static IEnumerable<FootingBlock> Blocks(StandStrength strength, double? sideMm, double? depthMm)
    {
        var foot = strength.Feet.Foot;
        return from side in FootingChoice.Steps(sideMm, foot.NarrowestMm, WidestMm, StepMm)
            from depth in FootingChoice.Steps(depthMm, foot.ShallowestMm, FootingChoice.DeepestMm, StepMm)
            select Footings.BlockOf(side, depth, PlinthOf(foot));
    }

    private static IEnumerable<FootingBlock> Strips(StandStrength strength)
    {
        var (foot, plan) = (strength.Feet.Foot, strength.Stand.Plan);
        double Whole(double mm) => Math.Ceiling(mm / TrenchStepMm) * TrenchStepMm;
        return from width in FootingChoice.Steps(null, Whole(foot.NarrowestMm), WidestMm, TrenchStepMm)
            from end in FootingChoice.Steps(null, Math.Max(LeastEndMm, foot.EdgeMm), MostEndMm, 2 * TrenchStepMm)
            from depth in FootingChoice.Steps(null, Whole(foot.ShallowestMm), FootingChoice.DeepestMm, TrenchStepMm)
            select Footings.BlockOf(width, depth, PlinthOf(foot)) with
            {
                LengthMm = Whole(plan.SideMm + foot.SpacingMm + (2 * end)),
                PlinthCount = plan.LegCount - plan.RowCount,
            };
    }

    private static ChoiceNote Note(FootingOption taken, bool holds, StandStrength strength, FootingGround soil) =>
        new(
            taken.Form == FootingForm.Block ? "footing block of the stand" : "footing of the stand",
            taken.Form == FootingForm.Block ? Footings.Says(taken.Form, taken.Block) : In(taken),
            (holds, taken.Form) switch
            {
                (true, FootingForm.Block) => Invariant(
                    $"the least concrete without bars that holds at {strength.Wind.BasicMPerS:0.#} m/s, with the tank empty and full, in {soil.Name}, dug by hand: no margin is added to what the factors hold"
                ),
                (true, _) => Invariant(
                    $"square blocks that hold at {strength.Wind.BasicMPerS:0.#} m/s in {soil.Name} would take more than {LargestM3:0.0} m3 each; strips that tie the legs of a row hold with a fifth less concrete and more, and without bars"
                ),
                _ => Invariant(
                    $"a customary block, no source, which does not hold: no square block up to {WidestMm:0} mm wide and no strip under a row of legs does without bars in {soil.Name}"
                ),
            }
        );
}

using Shaduf.Ground;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What a stand is designed from.</summary>
/// <param name="Brief">The brief, its heights settled.</param>
/// <param name="Survey">Its settled figures.</param>
/// <param name="Shelf">The cards.</param>
public sealed record StandSite(Brief Brief, Survey Survey, CardShelf Shelf);

/// <summary>The stands under the tanks, which are all alike.</summary>
/// <param name="Count">Stands: one for each tank.</param>
/// <param name="Brief">What the brief gives of them.</param>
/// <param name="Strength">One stand, checked.</param>
/// <param name="Footings">Blocks under all legs, checked.</param>
/// <param name="Others">What would hold where the stand does not; empty where it holds.</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record StandDesign(
    int Count,
    StandBrief Brief,
    StandStrength Strength,
    Footings Footings,
    IReadOnlyList<StandStrength> Others,
    IReadOnlyList<ChoiceNote> Notes
)
{
    // Blocks under a leg: wider than under a column of a rack, for a full tank is tonnes. Judgement.
    internal const double WidestMm = 2500;
    private const double UsualSideMm = 1000;
    private const double UsualDepthMm = 1000;

    /// <summary>One stand.</summary>
    public TankStand Stand => Strength.Stand;

    /// <summary>Steel of all stands with plates and rungs [kg].</summary>
    public double MassKg => Count * Stand.MassKg;

    /// <summary>Designs the stands.</summary>
    /// <param name="ground">Brief, survey and cards.</param>
    /// <param name="card">The tank.</param>
    /// <param name="count">Tanks.</param>
    /// <returns>The stands; null where none of steel is asked for, or the cards have nothing to build one of.</returns>
    public static StandDesign? Of(StandSite ground, TankCard card, int count)
    {
        var brief = ground.Brief.Tank;
        if (!IsAsked(brief))
        {
            return null;
        }

        var tank = StandTank.Of(card);
        var taken = Lightest(ground, tank, brief.Stand);
        if (taken is null)
        {
            return null;
        }

        var search = new StandSearch(ground, tank, brief.Stand);
        var strength = search.Finished(taken);
        var footings = FootingsOf(ground, strength, count);
        var open = brief.Stand with
        {
            LegCount = null,
            BayCount = null,
            Leg = null,
            Diagonal = null,
            Horizontal = null,
            Beam = null,
            Joist = null,
        };
        StandStrength? other =
            strength.Holds || open == brief.Stand ? null
            : Lightest(ground, tank, open) is { Holds: true } would ? would
            : null;
        return new(
            count,
            brief.Stand,
            strength,
            footings,
            other is null ? [] : [other],
            [.. NotesOf(strength, brief.Stand), .. footings.Notes]
        );
    }

    /// <summary>Whether a brief asks for a stand of steel that is built here.</summary>
    /// <param name="tank">The tank of the brief.</param>
    public static bool IsAsked(TankBrief tank) =>
        tank is { IsExisting: false, Stand.Kind: StandKind.Steel } && tank.StandM * 1000 >= StandPlan.LowestMm;

    /// <summary>A stand in few words.</summary>
    /// <param name="strength">The stand.</param>
    public static string Says(StandStrength strength)
    {
        var (plan, stand) = (strength.Stand.Plan, strength.Stand);
        var sections = plan.Sections;
        return Invariant(
            $"{plan.LegCount} legs {sections.Leg.Name}, {plan.BayCount} {(plan.BayCount == 1 ? "bay" : "bays")} of diagonals {sections.Diagonal.Name}, horizontals {sections.Horizontal.Name}, row beams {sections.Beam.Name}, joists {sections.Joist.Name} {plan.PitchMm:0} mm apart ({stand.MassKg:0} kg of steel)"
        );
    }

    /// <summary>Blocks of a stand's legs, as the brief gives them or the least that hold.</summary>
    internal static Footings FootingsOf(StandSite ground, StandStrength strength, int count)
    {
        var (brief, rack) = (ground.Brief.Tank.Stand, ground.Brief.Rack);
        var soil = FootingGround.Of(ground.Brief.Site);
        var foot = strength.Feet.Foot;
        var any = new FootingStrength(
            soil,
            Footings.BlockOf(UsualSideMm, UsualDepthMm, PlinthOf(foot)),
            LoadsOf(strength, strength.Combinations.Ground, strength.Wind.PeakKNPerM2),
            LoadsOf(strength, strength.Combinations.Service, strength.Wind.PeakKNPerM2)
        )
        {
            National = strength.Combinations.Choices,
        };
        var pit = PitOf(foot, brief.FootingSideMm, brief.FootingDepthMm);
        var least = FootingChoice.Least(any, pit);
        var block =
            least
            ?? Footings.BlockOf(
                brief.FootingSideMm ?? UsualSideMm,
                brief.FootingDepthMm ?? UsualDepthMm,
                PlinthOf(foot)
            );
        var mix = Footings.MixOf(rack);
        var concrete = Footings.ConcreteOf(rack);
        var isOpen = brief.FootingSideMm is null || brief.FootingDepthMm is null;
        return new(
            block,
            count * strength.Stand.Plan.LegCount,
            mix,
            mix.PerM3(NominalMix.UsualDryVolumeFactor, NominalMix.UsualCementKgPerM3),
            isOpen ? [Note(block, least is not null, strength, soil)] : []
        )
        {
            ConcreteName = concrete.Name,
            CylinderNPerMm2 = concrete.CylinderNPerMm2,
            Strength = any with { Block = block },
        };
    }

    /// <summary>What the legs put on their blocks.</summary>
    internal static IReadOnlyList<FootLoad> LoadsOf(
        StandStrength strength,
        IReadOnlyList<Steel.Combination> combinations,
        double gustKNPerM2
    ) => FootLoad.Of(strength.Cases, combinations, gustKNPerM2, -StandPlan.FootMm);

    /// <summary>The blocks in a gust [kN/m²].</summary>
    internal FootingStrength BlocksIn(double gustKNPerM2) =>
        Footings.Strength! with
        {
            Ground = LoadsOf(Strength, Strength.Combinations.Ground, gustKNPerM2),
            Service = LoadsOf(Strength, Strength.Combinations.Service, gustKNPerM2),
        };

    /// <summary>Basic wind speed up to which the blocks hold [m/s].</summary>
    public double BlocksStopMPerS() => Strength.StopsAtMPerS(gust => BlocksIn(gust).Holds);

    /// <summary>Advice in words.</summary>
    internal static string Says(FootingBlock? block) =>
        block is null
            ? Invariant(
                $". No square block up to {WidestMm:0} mm wide and {FootingChoice.DeepestMm:0} mm deep holds: more legs, a strip or a raft under all of them, or better ground by an engineer"
            )
            : Invariant(
                $". What would hold, of the same mix: blocks of {block.LengthMm:0} x {block.WidthMm:0} mm, {block.DepthMm:0} mm deep"
            );

    /// <summary>The blocks of this stand that would hold, whatever the brief gives; null where none does.</summary>
    internal FootingBlock? WouldHold() =>
        FootingChoice.Least(Footings.Strength!, PitOf(Strength.Feet.Foot, null, null));

    private static FootingPit PitOf(StandFoot foot, double? sideMm, double? depthMm) =>
        new(PlinthOf(foot), foot.NarrowestMm, WidestMm, sideMm, depthMm) { ShallowestMm = foot.ShallowestMm };

    // The plinth is 50 mm wider than the base plate on each side.
    private static double PlinthOf(StandFoot foot) => foot.SideMm - 50;

    private static StandStrength? Lightest(StandSite ground, StandTank tank, StandBrief brief)
    {
        var search = new StandSearch(ground, tank, brief);
        if (!search.CanBuild)
        {
            return null;
        }

        StandStrength? last = null;
        foreach (var legs in search.LegCounts)
        {
            var tried = search.Sized(legs);
            last = tried ?? last;
            if (tried is { Holds: true })
            {
                break;
            }
        }

        return last;
    }

    private static IEnumerable<ChoiceNote> NotesOf(StandStrength strength, StandBrief brief)
    {
        var plan = strength.Stand.Plan;
        if (brief.LegCount is null)
        {
            yield return new(
                "legs of the stand",
                Invariant($"{plan.LegCount}"),
                strength.Holds
                    ? "the fewest that hold with the cards at hand: each leg needs a block"
                    : "nothing that the brief leaves open holds: it must not be built so"
            );
        }

        yield return new(
            "sections of the stand",
            Says(strength),
            strength.Holds
                ? "the lightest on the cards that hold; one size less of any group that the brief leaves open does not, or there is none"
                : "these do not hold: see the findings for what would"
        );
        if (brief.BayCount is null)
        {
            yield return new(
                "bays of the stand",
                Invariant($"{plan.BayCount}"),
                "one for each one and a half distances of the legs; common practice, no source"
            );
        }

        yield return new(
            "joists under the tank",
            Invariant($"{plan.JoistXMm.Count}, {plan.PitchMm:0} mm apart"),
            plan.Tank.IsRound
                ? "a flat bottom needs full support: 300 mm apart at most under a plate of 5 mm; common practice, no source"
                : "a joist under each joint line of the panels and 300 mm apart at most under a plate of 5 mm; common practice, no source"
        );
    }

    private static ChoiceNote Note(FootingBlock block, bool holds, StandStrength strength, FootingGround soil) =>
        new(
            "footing block of the stand",
            Invariant($"{block.LengthMm:0} x {block.WidthMm:0} x {block.DepthMm:0} mm"),
            holds
                ? Invariant(
                    $"the least concrete that holds at {strength.Wind.BasicMPerS:0.#} m/s, with the tank empty and full, in {soil.Name}"
                )
                : Invariant(
                    $"a customary block, no source, which does not hold: none up to {WidestMm:0} mm wide does in {soil.Name}"
                )
        );
}

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
    /// <summary>One stand.</summary>
    public TankStand Stand => Strength.Stand;

    /// <summary>Steel of all stands with plates and rungs [kg].</summary>
    public double MassKg => Count * Stand.MassKg;

    /// <summary>What nobody knows of what acts on them, in words; empty where all is known.</summary>
    public IReadOnlyList<string> Unknown =>
        [
            .. new[]
            {
                Strength.Wind.IsKnown ? null : "the wind speed is unknown",
                Strength.Quake.IsKnown ? null : "the earthquake is unknown",
                Stand.Plan.Tank.MassKg is null ? "the tank's card does not say what it weighs" : null,
            }.OfType<string>(),
        ];

    /// <summary>Outer surface of all parts and plates of all stands [m²].</summary>
    public double PaintM2 =>
        Count
        * (
            Stand.Plates.PaintM2 + Stand.Steel.Parts.Sum(part => part.LengthMm / 1000 * part.Section.PerimeterMm / 1000)
        );

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
        var footings = StandFootings.Of(ground, strength, count);
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
            (strength.Holds && strength.Outlasts) || open == brief.Stand ? null
            : Lightest(ground, tank, open) is { Holds: true, Outlasts: true } would ? would
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

    /// <summary>The blocks in a gust [kN/m²].</summary>
    internal FootingStrength BlocksIn(double gustKNPerM2) =>
        Footings.Strength! with
        {
            Ground = StandFootings.LoadsOf(Strength, Strength.Combinations.Ground, gustKNPerM2, Footings.Form),
            Service = StandFootings.LoadsOf(Strength, Strength.Combinations.Service, gustKNPerM2, Footings.Form),
        };

    /// <summary>Basic wind speed up to which the blocks hold [m/s].</summary>
    public double BlocksStopMPerS() => Strength.StopsAtMPerS(gust => BlocksIn(gust).Holds);

    /// <summary>What the concrete of the footings does without bars.</summary>
    public StandConcrete Concrete => StandFootings.ConcreteOf(Strength, Footings);

    /// <summary>Middles of the footings of one stand, along and across [mm].</summary>
    public IReadOnlyList<(double XMm, double YMm)> FootingsAtMm =>
        [
            .. StandFootings
                .GroupsOf(Strength, Footings.Form)
                .Select(legs => legs.Select(leg => Stand.Skeleton.Feet[leg.Foot].Ground).ToList())
                .Select(at =>
                    (
                        (at.Min(leg => leg.XMm) + at.Max(leg => leg.XMm)) / 2,
                        (at.Min(leg => leg.YMm) + at.Max(leg => leg.YMm)) / 2
                    )
                ),
        ];

    /// <summary>The footings of this stand that would hold, whatever the brief gives; null where none does.</summary>
    internal FootingOption? WouldHold() => StandFootings.Least(Strength, Footings.Strength!.Soil, null, null);

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
            if (tried is { Holds: true, Outlasts: true })
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
}

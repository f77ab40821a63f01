using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Tries stands under one tank.</summary>
internal sealed class StandSearch
{
    private const double JustBeyond = 1.01;

    private readonly StandSite ground;
    private readonly StandTank tank;
    private readonly StandBrief brief;
    private readonly List<string> tubes = [];
    private readonly List<string> angles;
    private readonly Dictionary<string, (double Modulus, double SideMm)> strength;

    /// <summary>A search for a tank.</summary>
    /// <param name="ground">Brief, survey and cards.</param>
    /// <param name="tank">The tank.</param>
    /// <param name="brief">What the brief gives of the stand.</param>
    public StandSearch(StandSite ground, StandTank tank, StandBrief brief)
    {
        (this.ground, this.tank, this.brief) = (ground, tank, brief);
        var cards = ground.Shelf.All<SectionCard>().OrderBy(card => RackSections.SectionOf(card).MassKgPerM).ToList();
        var square = cards.Where(card => card.Shape == SectionShape.SquareHollow && card.WallMm >= 2.5).ToList();
        strength = square.ToDictionary(
            card => card.Name,
            card => (MemberSection.OfSquare(card.SizeMm, card.WallMm).ElasticModulusYMm3, card.SizeMm)
        );

        // A heavier tube that is no stronger is never the lightest that holds.
        foreach (var name in square.Select(card => card.Name))
        {
            if (tubes.Count == 0 || strength[name].Modulus > strength[tubes[^1]].Modulus)
            {
                tubes.Add(name);
            }
        }

        angles =
        [
            .. cards.Where(card => card.Shape == SectionShape.EqualAngle && card.WallMm >= 4).Select(card => card.Name),
        ];
    }

    /// <summary>Numbers of legs that may be taken, the fewest first; 5 and 7 only where they are asked for: their front row carries what 4 and 6 do.</summary>
    public IReadOnlyList<int> LegCounts => brief.LegCount is { } given ? [given] : [4, 6, 8];

    /// <summary>Whether the cards have tubes and angles at all.</summary>
    public bool CanBuild => tubes.Count > 0 && angles.Count > 0;

    /// <summary>The lightest sections that hold with so many legs, or the heaviest where none does; null where none can be built.</summary>
    /// <param name="legCount">Legs.</param>
    public StandStrength? Sized(int legCount)
    {
        var at = new StandForm(
            legCount,
            brief.BayCount,
            brief.Leg ?? tubes[0],
            brief.Diagonal ?? angles[0],
            brief.Horizontal ?? tubes[0],
            brief.Beam ?? tubes[0],
            brief.Joist ?? tubes[0]
        );
        var tried = Tried(at);
        while (tried is { Holds: false } && Raised(at, tried) is { } next && Tried(next) is { } heavier)
        {
            (at, tried) = (next, heavier);
        }

        return tried?.Holds == true ? Hardened(Lowered(at, tried)) : tried;
    }

    // What an accident would break is raised, a size at a time, as far as the brief leaves it open.
    private StandStrength Hardened((StandForm Form, StandStrength Holding) lowered)
    {
        var (form, holding) = lowered;
        while (
            !holding.Outlasts
            && Harder(form, holding) is var next
            && next != form
            && Tried(next) is { Holds: true } heavier
        )
        {
            (form, holding) = (next, heavier);
        }

        return holding;
    }

    private StandForm Harder(StandForm form, StandStrength holding)
    {
        var broken = holding.Accidents.Where(each => !each.Use.Holds).ToList();
        double Short(string role) => broken.Exists(each => each.Role == role) ? JustBeyond : 0;
        return form with
        {
            Leg = Above(form.Leg, brief.Leg, Short(TankStand.LegRole)),
            Diagonal = Next(form.Diagonal, Most(Short(TankStand.DiagonalRole), Short(TankStand.PlanRole))),
            Horizontal = Above(form.Horizontal, brief.Horizontal, Short(TankStand.HorizontalRole)),
            Beam = Above(form.Beam, brief.Beam, Short(TankStand.BeamRole)),
            Joist = Above(form.Joist, brief.Joist, Short(TankStand.JoistRole)),
        };
    }

    /// <summary>A stand with its welds and plates as large as they have to be.</summary>
    /// <param name="tried">The stand, checked with the least welds.</param>
    public StandStrength Finished(StandStrength tried)
    {
        var stand = tried.Stand.WithLegs(tried.LegsMm());
        return StandStrength.Of(stand.On(tried.Feet.Foot), ground.Brief, ground.Survey, ground.Shelf);
    }

    // How far each group is used beyond what it holds: above 1 it is raised.
    private (double Leg, double Diagonal, double Horizontal, double Beam, double Joist) Needs(
        StandForm form,
        StandStrength tried
    )
    {
        double Used(string role) =>
            tried
                .Members.Where(use => tried.Stand.Skeleton.Members[use.Member].Role == role)
                .Select(use => use.Result.UtilisationShare)
                .DefaultIfEmpty(0)
                .Max();
        double Weld(string name) =>
            Short(tried.Joints.Any(use => use.Name == name && use.RequiredLegMm > tried.MostLegMm(use)));
        double Face(string name) => Short(tried.Faces.Any(use => use.Name == name && use.UseShare is not <= 1));
        double Splice(string role) =>
            Short(
                tried.Splices.Any(use =>
                    use.UseShare > 1 && tried.Stand.Skeleton.Members[use.Place.Member].Role == role
                )
            );
        double Slender(string role) =>
            Short(tried.Slender.Any(use => use.UseShare > 1 && tried.Stand.Skeleton.Members[use.Member].Role == role));
        double Moved(int move) => tried.Moves[move].ValueMm / tried.Moves[move].LimitMm;
        var isSoft = Short(tried.Buckling.SwayFactor < RackStrength.LeastCriticalFactor);
        var feet = Short(!tried.Feet.Holds);

        // A leg as wide as its beam stands on the beam's walls; a narrower one on its face alone.
        var head = Face(StandFrame.HeadName);
        var isNarrow = strength[form.Leg].SideMm < strength[form.Beam].SideMm && brief.Leg is null;
        return (
            Most(
                Used(TankStand.LegRole),
                Weld(StandFrame.HeadName),
                Face(StandFrame.RingName),
                isNarrow ? head : 0,
                Splice(TankStand.LegRole),
                Slender(TankStand.LegRole),
                isSoft,
                feet
            ),
            Most(
                Used(TankStand.DiagonalRole),
                Used(TankStand.PlanRole),
                Splice(TankStand.DiagonalRole),
                Slender(TankStand.DiagonalRole),
                Slender(TankStand.PlanRole),
                isSoft
            ),
            Most(
                Used(TankStand.HorizontalRole),
                Weld(StandFrame.RingName),
                Splice(TankStand.HorizontalRole),
                Slender(TankStand.HorizontalRole)
            ),
            Most(Used(TankStand.BeamRole), isNarrow ? 0 : head, Splice(TankStand.BeamRole), Moved(2)),
            Most(Used(TankStand.JoistRole), Weld("joist to row beam"), Splice(TankStand.JoistRole), Moved(0), Moved(1))
        );
    }

    // One size up for each group that does not hold; by as much as it lacks.
    private StandForm? Raised(StandForm form, StandStrength tried)
    {
        var needs = Needs(form, tried);
        var next = form with
        {
            Leg = Above(form.Leg, brief.Leg, needs.Leg),
            Diagonal = Next(form.Diagonal, needs.Diagonal),
            Horizontal = Above(form.Horizontal, brief.Horizontal, needs.Horizontal),
            Beam = Above(form.Beam, brief.Beam, needs.Beam),
            Joist = Above(form.Joist, brief.Joist, needs.Joist),
        };
        return next == form ? null : next;
    }

    private static double Short(bool isShort) => isShort ? JustBeyond : 0;

    private static double Most(params double[] shares) => shares.Max();

    private string Above(string name, string? given, double times)
    {
        var heavier = tubes.SkipWhile(each => each != name).Skip(1).ToList();
        if (times <= 1 || given is not null || heavier.Count == 0)
        {
            return name;
        }

        var wanted = strength[name].Modulus * Math.Min(times, 8) * 0.9;
        return heavier.Find(each => strength[each].Modulus >= wanted) ?? heavier[^1];
    }

    private string Next(string name, double times) =>
        times <= 1 || brief.Diagonal is not null
            ? name
            : angles.SkipWhile(each => each != name).Skip(1).FirstOrDefault() ?? name;

    // One size less of each group at a time, while it holds.
    private (StandForm Form, StandStrength Holding) Lowered(StandForm form, StandStrength holding)
    {
        var groups = new (string? Given, Func<StandForm, string> Of, Func<StandForm, string, StandForm> With)[]
        {
            (brief.Joist, each => each.Joist, (each, name) => each with { Joist = name }),
            (brief.Beam, each => each.Beam, (each, name) => each with { Beam = name }),
            (brief.Leg, each => each.Leg, (each, name) => each with { Leg = name }),
            (brief.Horizontal, each => each.Horizontal, (each, name) => each with { Horizontal = name }),
            (brief.Diagonal, each => each.Diagonal, (each, name) => each with { Diagonal = name }),
        };
        foreach (var (given, of, with) in groups)
        {
            while (
                given is null
                && tubes.Concat(angles).TakeWhile(each => each != of(form)).LastOrDefault() is { } less
                && tubes.Contains(less) == tubes.Contains(of(form))
                && Tried(with(form, less)) is { Holds: true } lighter
            )
            {
                (form, holding) = (with(form, less), lighter);
            }
        }

        return (form, holding);
    }

    // None where a part cannot be made so: legs without length, horizontals wider than their legs.
    private StandStrength? Tried(StandForm form)
    {
        var sections = StandSections.Of(form, ground.Shelf, ground.Brief.Rack);
        if (sections.Horizontal.SideMm > sections.Leg.SideMm)
        {
            sections = StandSections.Of(
                form with
                {
                    Leg = Wide(sections.Horizontal.SideMm),
                },
                ground.Shelf,
                ground.Brief.Rack
            );
        }

        var plan = new StandPlan(
            tank,
            ground.Brief.Tank.StandM * 1000,
            form.LegCount,
            sections,
            form.BayCount,
            brief.PlatformM * 1000
        );
        return plan.HasLegs
            ? StandStrength.Of(
                new StandFrame(plan, ground.Brief.Rack.Crew).Built(),
                ground.Brief,
                ground.Survey,
                ground.Shelf
            )
            : null;
    }

    private string Wide(double sideMm) => tubes.First(each => strength[each].SideMm >= sideMm);
}

using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>A stand loaded, analysed and checked.</summary>
/// <param name="Stand">The stand.</param>
/// <param name="Wind">The wind, at the tank's top.</param>
/// <param name="Drag">How it pushes.</param>
/// <param name="Quake">The earthquake.</param>
/// <param name="Cases">The frame, solved under each action.</param>
/// <param name="Shakes">Full along x and y, then half full.</param>
/// <param name="Combinations">What acts together.</param>
/// <param name="Rules">Sections and steel.</param>
/// <param name="Buckling">Factors on the full and leaning stand at which it sways out of place and at which its first bar buckles.</param>
/// <param name="ConcreteNPerMm2">Strength of a cylinder of the concrete under its feet [N/mm²].</param>
public sealed record StandStrength(
    TankStand Stand,
    RackWind Wind,
    StandWind Drag,
    StandQuake Quake,
    FrameCases Cases,
    IReadOnlyList<StandShake> Shakes,
    StandCombinations Combinations,
    MemberRules Rules,
    StandBuckling Buckling,
    double ConcreteNPerMm2
)
{
    /// <summary>How far each member is used at the wind that is checked.</summary>
    public IReadOnlyList<MemberUse> Members { get; } = Rules.Uses(Cases, Combinations.Strength, Wind.PeakKNPerM2);

    /// <summary>How far the welds are used at the wind that is checked.</summary>
    public IReadOnlyList<JointUse> Joints { get; } =
        JointUse.All(Cases, Combinations.Strength, Wind.PeakKNPerM2, Rules);

    /// <summary>How far the faces of tubes are used on which other tubes end.</summary>
    public IReadOnlyList<TubeFaceUse> Faces { get; } =
        TubeFaceUse.All(Cases, Combinations.Strength, Wind.PeakKNPerM2, Rules);

    /// <summary>How far the butt welds of its splices are used.</summary>
    public IReadOnlyList<SpliceUse> Splices { get; } =
        SpliceUse.All(
            Cases,
            Combinations.Strength,
            Wind.PeakKNPerM2,
            Rules,
            RackSplices.PlacesOf(Stand.Steel, Stand.Skeleton)
        );

    /// <summary>How slender its legs, horizontals and braces are.</summary>
    public IReadOnlyList<SlenderUse> Slender { get; } =
    [
        .. from member in Enumerable.Range(0, Stand.Skeleton.Members.Count)
        let at = Stand.Skeleton.Members[member]
        where at.Role == TankStand.LegRole || StandFace.IsTower(at.Role) || at.Role == TankStand.PlanRole
        select new SlenderUse(
            member,
            at.Role == TankStand.LegRole ? MemberDuty.Column : MemberDuty.Brace,
            Rules.Lengths(member).AboutYMm,
            Rules.Section(at).LeastGyrationMm
        ),
    ];

    /// <summary>Sags and other movements.</summary>
    public IReadOnlyList<StandMove> Moves { get; } = [.. StandMove.Of(Stand, Cases, Combinations.Service[0])];

    /// <summary>The feet with plates as thick as they have to be.</summary>
    public StandFeet Feet { get; } =
        StandFeet.Of(Stand, Cases, Combinations.Strength, (Rules, ConcreteNPerMm2), Wind.PeakKNPerM2);

    /// <summary>What accidents do to it.</summary>
    public IReadOnlyList<StandAccident> Accidents => accidents ??= StandAccidents.Of(this);

    /// <summary>Whether it outlasts every one of them.</summary>
    public bool Outlasts => Accidents.All(each => each.Use.Holds);

    private IReadOnlyList<StandAccident>? accidents;

    /// <summary>Leg of the weld that the hardest used diagonal needs on its gusset [mm].</summary>
    public double LapLegMm
    {
        get
        {
            var force = Members
                .Where(use => Stand.Skeleton.Members[use.Member].Role == TankStand.DiagonalRole)
                .Max(use => HardestN(use.Member));
            var runMm = FilletWeld.EffectiveMm(StandFrame.LapMm, 4);
            return FilletWeld.LegMm(FilletWeld.RequiredThroatMm(Rules.Grade, force / (2 * runMm), Rules.Factors));
        }
    }

    /// <summary>Whether steel, welds, stability, platform and feet hold at the wind and the earthquake that are checked.</summary>
    public bool Holds =>
        Members.All(use => use.Result.Holds)
        && Joints.All(use =>
            use.RequiredLegMm <= RackStrength.MostLegMm && double.IsFinite(use.Result.UtilisationShare)
        )
        && LapLegMm <= RackStrength.MostLegMm
        && Faces.All(use => use.UseShare <= 1)
        && Splices.All(use => use.UseShare <= 1)
        && Slender.All(use => use.UseShare <= 1)
        && Buckling.SwayFactor >= RackStrength.LeastCriticalFactor
        && Moves.All(move => move.Holds)
        && Feet.Holds;

    /// <summary>Loads, analyses and checks a stand.</summary>
    /// <param name="stand">The stand.</param>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">The survey.</param>
    /// <param name="shelf">The cards.</param>
    /// <returns>The checked stand.</returns>
    /// <exception cref="MechanismException">The frame can move without resistance; the message names the part.</exception>
    public static StandStrength Of(TankStand stand, Brief brief, Survey survey, CardShelf shelf)
    {
        var wind = RackWind.Of(brief.Site, survey, stand.Plan.FloorMm + stand.Plan.Tank.HeightMm);
        var drag = StandWind.Of(stand, wind);
        var sections = new StandProfiles(shelf, brief.Rack.IsWallMeasured);
        var frame = SkeletonFrame.Of(stand.Skeleton, member => sections[member].Frame, 0, StandBed.Cuts(stand));
        var cases = FrameCases.Of(frame, StandActions.Of(stand, frame, drag));
        var quake = StandQuake.Of(brief.Site, survey);
        var stiffness = new[] { 0, 1 }.Select(axis => StiffnessNPerMm(stand, cases, axis)).ToArray();
        var shakes = ShakesOf(stand, stiffness, quake);
        var national = brief.Site.National;
        var buckling = StandBuckling.Of(stand, cases, stiffness.Min(), national);
        var sway =
            buckling.SwayFactor >= RackStrength.LeastCriticalFactor
                ? SwayImperfection.AmplifyingFactor(buckling.SwayFactor)
                : 1;
        return new(
            stand,
            wind,
            drag,
            quake,
            cases,
            shakes,
            StandCombinations.Of(sway, quake.IsCalm ? null : shakes, national),
            new(member => sections[member], RackStrength.GradeOf(brief.Rack.Steel), LengthsOf(stand.Skeleton))
            {
                Factors = national.Steel,
            },
            buckling,
            Footings.ConcreteOf(brief.Rack).CylinderNPerMm2
        );
    }

    /// <summary>What each action comes to at the feet, without partial factors.</summary>
    public IEnumerable<StandTotal> Totals() =>
        new[]
        {
            ("steel and empty tank", StandActions.Weight, 1.0),
            ("water, full to the overflow", StandActions.Water, 1.0),
            ("people on the platform", StandActions.People, 1.0),
            ("wind along the rows", StandActions.Wind, Wind.PeakKNPerM2),
            ("wind on the diagonal", StandActions.Wind + 1, Wind.PeakKNPerM2),
            ("wind across the rows", StandActions.Wind + 2, Wind.PeakKNPerM2),
        }.Select(action => StandTotal.Of(this, action.Item1, action.Item2, action.Item3));

    /// <summary>Basic wind speed up to which something holds [m/s].</summary>
    /// <param name="holds">Whether it holds in a gust [kN/m²].</param>
    public double StopsAtMPerS(Func<double, bool> holds) => Wind.StopsAtMPerS(holds);

    /// <summary>Basic wind speed up to which the members, and the faces of the tubes at their ends, hold [m/s].</summary>
    public double SteelStopsMPerS() =>
        StopsAtMPerS(gust =>
            Rules.Hold(Cases, Combinations.Blown, gust)
            && TubeFaceUse.All(Cases, Combinations.Blown, gust, Rules).All(use => use.UseShare is null or <= 1)
        );

    /// <summary>The largest forces in its members at the wind that is checked.</summary>
    /// <param name="name">What makes members alike.</param>
    /// <returns>One envelope for each name, in the order of the skeleton.</returns>
    public IReadOnlyList<ForceEnvelope> Forces(Func<Member, string> name) =>
        ForceEnvelope.All(Cases, Combinations.Strength, Wind.PeakKNPerM2, Rules.SecondOrderFactor, name);

    /// <summary>Basic wind speed up to which plates, bolts and anchors of the feet hold [m/s].</summary>
    public double FeetStopMPerS() => StopsAtMPerS(gust => Feet.With(Cases, Combinations.Blown, gust).Holds);

    /// <summary>Largest leg of a weld: 6 mm, or 1.2 times the thinner of both walls where that is more [mm]; judgement, no source.</summary>
    /// <param name="use">The weld.</param>
    public double MostLegMm(JointUse use)
    {
        var joint = Stand.Skeleton.Joints[use.Joint];
        var wall = new[] { joint.First, joint.Second }.Min(member => Stand.Skeleton.Members[member].Profile.Bar.WallMm);
        return Math.Max(RackStrength.MostLegMm, 1.2 * wall);
    }

    /// <summary>Leg that each weld gets: what it needs, in steps of half a millimetre, never less than the least.</summary>
    /// <returns>Legs by the joints' name [mm].</returns>
    public IReadOnlyDictionary<string, double> LegsMm() =>
        Joints
            .Select(use => (use.Name, Leg: use.RequiredLegMm, Most: MostLegMm(use)))
            .Append((StandFrame.LapName, LapLegMm, RackStrength.MostLegMm))
            .ToDictionary(
                use => use.Item1,
                use => Math.Min(use.Item3, Math.Max(RackSteel.WeldLegMm, Math.Ceiling(use.Item2 * 2) / 2))
            );

    /// <summary>Largest force along a member, pull or push [N].</summary>
    /// <param name="member">Index of the member.</param>
    public double HardestN(int member) =>
        (
            from combination in Combinations.Strength
            let factors = combination.EachFactor(Wind.PeakKNPerM2)
            from span in Cases.Frame.SpansOf(member)
            select Math.Abs(Cases.At(span, 0, factors).TensionN)
        ).Max();

    private static IReadOnlyList<StandShake> ShakesOf(TankStand stand, double[] stiffness, StandQuake quake)
    {
        var tank = stand.Plan.Tank;
        var structureKg = tank.EmptyKg + stand.MassKg - (TowerKg(stand) / 2);
        return
        [
            .. from fill in new[] { 1.0, 0.5 }
            from axis in new[] { 0, 1 }
            let elevated = new ElevatedTank(
                fill * tank.WaterKg,
                structureKg,
                stiffness[axis],
                (stand.Plan.FloorMm - StandPlan.FootMm) / 1000,
                fill * tank.DepthMm / 1000,
                StandActions.SloshingOf(tank, fill)
            )
            select new StandShake(elevated, elevated.Under(quake.Quake, true)),
        ];
    }

    /// <summary>Steel of legs, diagonals and horizontals [kg].</summary>
    /// <param name="stand">The stand.</param>
    public static double TowerKg(TankStand stand) =>
        stand.Steel.Parts.Where(part => StandFace.IsTower(part.Role)).Sum(part => part.MassKg);

    // From the lean of the water: its force over the movement of the joists' middle.
    private static double StiffnessNPerMm(TankStand stand, FrameCases cases, int axis)
    {
        var factors = new double[StandActions.CaseCount];
        var at = StandActions.LeanWaterX + axis;
        factors[at] = 1;
        var feet = Enumerable.Range(0, stand.Skeleton.Feet.Count).Select(foot => cases.Foot(foot, factors).Force);
        var force = feet.Sum(each => axis == 0 ? each.XN : each.YN);
        var joist = stand.Members(TankStand.JoistRole).ElementAt(stand.Members(TankStand.JoistRole).Count() / 2);
        var spans = cases.Frame.SpansOf(joist).ToList();
        var move = cases.MovementMm(spans[spans.Count / 2], 0, factors);
        return Math.Abs(force / (axis == 0 ? move.XMm : move.YMm));
    }

    // Each member buckles between its joints: the braces hold them.
    private static Func<int, BucklingLengths> LengthsOf(Skeleton skeleton)
    {
        var lengths = skeleton.Members.Select((_, i) => RackStrength.BetweenJoints(skeleton, i)).ToList();
        return member => new(lengths[member], lengths[member], lengths[member]);
    }
}

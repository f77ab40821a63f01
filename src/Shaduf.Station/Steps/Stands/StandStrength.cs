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
public sealed record StandStrength(
    TankStand Stand,
    RackWind Wind,
    StandWind Drag,
    StandQuake Quake,
    FrameCases Cases,
    IReadOnlyList<StandShake> Shakes,
    StandCombinations Combinations,
    MemberRules Rules,
    StandBuckling Buckling
)
{
    /// <summary>How far each member is used at the wind that is checked.</summary>
    public IReadOnlyList<MemberUse> Members { get; } = Rules.Uses(Cases, Combinations.Strength, Wind.PeakKNPerM2);

    /// <summary>How far the welds are used at the wind that is checked.</summary>
    public IReadOnlyList<JointUse> Joints { get; } =
        JointUse.All(Cases, Combinations.Strength, Wind.PeakKNPerM2, Rules);

    /// <summary>Sags and other movements.</summary>
    public IReadOnlyList<StandMove> Moves { get; } = [.. StandMove.Of(Stand, Cases, Combinations.Service[0])];

    /// <summary>The feet with plates as thick as they have to be.</summary>
    public StandFeet Feet { get; } = StandFeet.Of(Stand, Cases, Combinations.Strength, Rules.Grade, Wind.PeakKNPerM2);

    /// <summary>Leg of the weld that the hardest used diagonal needs on its gusset [mm].</summary>
    public double LapLegMm
    {
        get
        {
            var force = Members
                .Where(use => Stand.Skeleton.Members[use.Member].Role == TankStand.DiagonalRole)
                .Max(use => HardestN(use.Member));
            var runMm = FilletWeld.EffectiveMm(StandFrame.LapMm, 4);
            return FilletWeld.LegMm(FilletWeld.RequiredThroatMm(Rules.Grade, force / (2 * runMm)));
        }
    }

    /// <summary>Whether steel, welds, stability, platform and feet hold at the wind and the earthquake that are checked.</summary>
    public bool Holds =>
        Members.All(use => use.Result.Holds)
        && Joints.All(use =>
            use.RequiredLegMm <= RackStrength.MostLegMm && double.IsFinite(use.Result.UtilisationShare)
        )
        && LapLegMm <= RackStrength.MostLegMm
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
        var buckling = StandBuckling.Of(stand, cases, stiffness.Min());
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
            StandCombinations.Of(sway, quake.IsCalm ? null : shakes),
            new(member => sections[member], RackStrength.GradeOf(brief.Rack.Steel), LengthsOf(stand.Skeleton)),
            buckling
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

    /// <summary>Basic wind speed up to which the members hold [m/s].</summary>
    public double SteelStopsMPerS() =>
        StopsAtMPerS(gust => Rules.Uses(Cases, Combinations.Blown, gust).All(use => use.Result.Holds));

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

/// <summary>Sections of a stand's members as frame and checks see them.</summary>
/// <param name="shelf">The cards.</param>
/// <param name="isMeasured">Whether the walls were measured or certified; if not, they are taken 10 % thin.</param>
internal sealed class StandProfiles(CardShelf shelf, bool isMeasured)
{
    private readonly Dictionary<Parts.Section, MemberSection> known = [];

    /// <summary>The section of a member, thinned where the walls are not known.</summary>
    /// <param name="member">The member.</param>
    public MemberSection this[Member member]
    {
        get
        {
            var bar = member.Profile.Bar;
            if (!known.TryGetValue(bar, out var section))
            {
                section = RackProfiles.Single(bar, shelf);
                known[bar] = section = isMeasured ? section : section.Thinned();
            }

            return section;
        }
    }
}

/// <summary>What an action comes to at the feet of a stand.</summary>
/// <param name="Name">The action.</param>
/// <param name="DownKN">Force down [kN].</param>
/// <param name="SideKN">Force sideways [kN].</param>
/// <param name="TurningKNm">Moment that turns the stand, about the middle of its feet [kN·m].</param>
public readonly record struct StandTotal(string Name, double DownKN, double SideKN, double TurningKNm)
{
    internal static StandTotal Of(StandStrength strength, string name, int at, double factor)
    {
        var factors = new double[StandActions.CaseCount];
        factors[at] = factor;
        var (down, x, y, aboutX, aboutY) = (0.0, 0.0, 0.0, 0.0, 0.0);
        foreach (var (i, foot) in strength.Stand.Skeleton.Feet.Index())
        {
            var ground = strength.Cases.Foot(i, factors);
            down += ground.Force.ZN / 1000;
            x += ground.Force.XN / 1000;
            y += ground.Force.YN / 1000;
            var middle = strength.Stand.Plan.MiddleMm;
            aboutX += (ground.Moment.XNMm + (ground.Force.ZN * (foot.Ground.YMm - middle))) * 1e-6;
            aboutY += (ground.Moment.YNMm - (ground.Force.ZN * (foot.Ground.XMm - middle))) * 1e-6;
        }

        return new(name, down, double.Hypot(x, y), double.Hypot(aboutX, aboutY));
    }
}

/// <summary>At which factors on its full load a stand buckles.</summary>
/// <param name="SwayFactor">The whole stand sways out of place: K h/V, or the frame's own factor where that is small.</param>
/// <param name="Frame">The frame's own factor, at which the first bar buckles between its joints: the members' checks judge that; found when it is asked for.</param>
public sealed record StandBuckling(double SwayFactor, Lazy<double?> Frame)
{
    /// <summary>The factors of a stand.</summary>
    /// <param name="stand">The stand.</param>
    /// <param name="cases">Its solved frame.</param>
    /// <param name="stiffnessNPerMm">Its sideways stiffness at the platform, the softer way [N/mm].</param>
    /// <source>EN 1993-1-1:2005, 5.2.1(4); by the frame below 10, for K h/V flatters legs that bend</source>
    internal static StandBuckling Of(TankStand stand, FrameCases cases, double stiffnessNPerMm)
    {
        var frame = new Lazy<double?>(() =>
            StandCombinations.Pressing.Select(each => cases.CriticalFactor(each.EachFactor(0))).Min()
        );
        var factors = StandCombinations.Pressing[0].EachFactor(0);
        var weightN = Enumerable.Range(0, stand.Skeleton.Feet.Count).Sum(foot => cases.Foot(foot, factors).Force.ZN);
        var sway = StandLegs.CriticalFactor(
            stiffnessNPerMm,
            (stand.Plan.FloorMm - StandPlan.FootMm) / 1000,
            weightN / 1000
        );
        return new(sway >= RackStrength.StiffCriticalFactor ? sway : Math.Min(sway, frame.Value ?? sway), frame);
    }
}

using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Base plates, bolts and concrete under the legs.</summary>
/// <param name="Foot">The foot, its plate as thick as it has to be.</param>
/// <param name="LegMm">Side of a leg [mm].</param>
/// <param name="WallMm">Wall of a leg [mm].</param>
/// <param name="Rules">Steel of the plate, partial factors.</param>
/// <param name="Pulled">Forces of the foot whose bolts are pulled hardest: pull above 0, N and N·mm.</param>
/// <param name="PressShare">How far the concrete under the plates is used.</param>
/// <param name="Bolts">How far the bolts are used in pull and shear.</param>
public sealed record StandFeet(
    StandFoot Foot,
    double LegMm,
    double WallMm,
    MemberRules Rules,
    MemberForces Pulled,
    double PressShare,
    CheckResult Bolts
)
{
    /// <summary>Strength of the concrete's cylinder [N/mm²].</summary>
    public required double ConcreteNPerMm2 { get; init; }

    /// <summary>Grade of a bolt without mark on its head.</summary>
    public static BoltGrade PlainGrade { get; } = BoltGrade.Of("4.6");

    /// <summary>Whether they hold.</summary>
    public bool Holds => PressShare <= 1 && Bolts.Holds && NeededPlateMm <= Foot.ThicknessMm;

    /// <summary>Pull of the hardest pulled bolt; below 0 when none is pulled [N].</summary>
    public double BoltN => PullOf(Foot, Pulled);

    /// <summary>Thickness of plate that it needs [mm].</summary>
    public double NeededPlateMm =>
        BasePlate.ThicknessMm(Rules.Grade, Math.Max(0, BoltN), Foot.LeverMm(LegMm), BreadthMm, Rules.Factors);

    /// <summary>Pressure that the concrete bears [N/mm²].</summary>
    public double BearingNPerMm2 => BasePlate.BearingNPerMm2(ConcreteNPerMm2, Rules.Factors);

    /// <summary>Breadth of plate that bends with one bolt [mm].</summary>
    public double BreadthMm => BasePlate.BendingBreadthMm(Foot.LeverMm(LegMm), Foot.Bolt.WasherMm, Foot.SideMm / 2);

    /// <summary>The feet of a stand.</summary>
    /// <param name="stand">The stand.</param>
    /// <param name="cases">The solved frame.</param>
    /// <param name="combinations">What acts together.</param>
    /// <param name="made">Steel of the plates and partial factors; strength of the concrete's cylinder [N/mm²].</param>
    /// <param name="gustKNPerM2">Gust [kN/m²].</param>
    /// <returns>The feet.</returns>
    public static StandFeet Of(
        TankStand stand,
        FrameCases cases,
        IReadOnlyList<Combination> combinations,
        (MemberRules Rules, double ConcreteNPerMm2) made,
        double gustKNPerM2
    )
    {
        var leg = stand.Plan.Sections.Leg;
        var none = new MemberForces(0, 0, 0, 0, 0, 0, 0);
        StandFeet? feet = null;
        foreach (var foot in StandFoot.All(leg.SideMm))
        {
            feet = new StandFeet(foot, leg.SideMm, leg.WallMm, made.Rules, none, 0, new(0, ""))
            {
                ConcreteNPerMm2 = made.ConcreteNPerMm2,
            }.With(cases, combinations, gustKNPerM2);
            if (feet.Holds)
            {
                break;
            }
        }

        return feet!;
    }

    /// <summary>The same feet under other loads.</summary>
    /// <param name="cases">The solved frame.</param>
    /// <param name="combinations">What acts together.</param>
    /// <param name="gustKNPerM2">Gust [kN/m²].</param>
    /// <returns>The feet, their plates as they are.</returns>
    public StandFeet With(FrameCases cases, IReadOnlyList<Combination> combinations, double gustKNPerM2)
    {
        var all = (
            from combination in combinations
            let factors = combination.EachFactor(gustKNPerM2)
            from foot in Enumerable.Range(0, cases.Frame.Skeleton.Feet.Count)
            select ForcesOf(cases.Foot(foot, factors))
        ).ToList();
        return this with
        {
            Pulled = all.MaxBy(forces => PullOf(Foot, forces))!,
            PressShare = all.Max(PressOf),
            Bolts = all.Select(BoltsOf).MaxBy(result => result.UtilisationShare)!,
        };
    }

    private static MemberForces ForcesOf(Reaction ground) =>
        new(0, -ground.Force.ZN, ground.Force.XN, ground.Force.YN, 0, ground.Moment.XNMm, ground.Moment.YNMm);

    private static double PullOf(StandFoot foot, MemberForces forces) =>
        BasePlate.BoltTensionN(foot.SpacingMm, -forces.TensionN, forces.BendingYNMm, forces.BendingZNMm);

    // The moment as a couple of the leg's walls, each with half of the area.
    private double PressOf(MemberForces forces)
    {
        var bearing = BearingNPerMm2;
        var spread = BasePlate.SpreadMm(Rules.Grade, Foot.ThicknessMm, bearing, Rules.Factors);
        var moment = Math.Abs(forces.BendingYNMm) + Math.Abs(forces.BendingZNMm);
        var pressed = Math.Max(0, -forces.TensionN) + (2 * moment / LegMm);
        return pressed / (bearing * BasePlate.PressedMm2(LegMm, WallMm, Foot.SideMm, spread));
    }

    private CheckResult BoltsOf(MemberForces forces)
    {
        var (bolt, spacing) = (Foot.Bolt, Foot.SpacingMm);
        var shear =
            Math.Sqrt((forces.ShearYN * forces.ShearYN) + (forces.ShearZN * forces.ShearZN)) / StandFoot.BoltCount;
        var pull = Math.Max(0, PullOf(Foot, forces));
        var edge = Foot.EdgeMm;
        var counted = CastInAnchor.CountedDepthMm(Foot.InConcreteMm - Rack.PlinthHeightMm, edge, spacing);
        var cone =
            CastInAnchor.ConeN(ConcreteNPerMm2, counted, Rules.Factors)
            * CastInAnchor.GroupFactor(CastInAnchor.FourConesMm2(counted, spacing, edge), counted, edge);
        double Used(double share) => Math.Min(10, share);
        return CastInAnchor.Together(
            Used(pull / CastInAnchor.SteelTensionN(bolt, PlainGrade)),
            Used(shear / CastInAnchor.SteelShearN(bolt, PlainGrade)),
            Used(Math.Max(0, forces.TensionN) / cone),
            0
        );
    }
}

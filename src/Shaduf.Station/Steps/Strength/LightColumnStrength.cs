using Shaduf.Ground;
using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>One check of a light column.</summary>
/// <param name="What">What is checked.</param>
/// <param name="Result">What it came to.</param>
/// <param name="Lines">Its working.</param>
public sealed record LightColumnCheck(string What, CheckResult Result, IReadOnlyList<Line> Lines);

/// <summary>A light column or lightning mast that is asked for.</summary>
/// <param name="HeightMm">From the ground to the lamp, or to the tip of a mast [mm].</param>
/// <param name="IsMast">Whether it is a lightning mast; its rod is taken as wide as the tube.</param>
/// <param name="Sail">What hangs on it; null for nothing.</param>
/// <param name="SailAtMm">Height at which that hangs [mm].</param>
/// <param name="Wind">The wind at its top.</param>
public sealed record LightColumnNeed(double HeightMm, bool IsMast, LightSail? Sail, double SailAtMm, RackWind Wind);

/// <summary>
/// A light column in the wind: its tube, its weld to the plate, the plate and the four bolts, which are cast into a block
/// of the mix 1:2:4. The gussets are not counted.
/// </summary>
/// <param name="Column">The column.</param>
/// <param name="Sail">What hangs on it.</param>
/// <param name="Wind">The wind at its top.</param>
/// <param name="Grade">Steel of tube and plate.</param>
/// <param name="IsWallMeasured">Whether the wall was measured; if not it is taken 10 % thin.</param>
public sealed record LightColumnStrength(
    LightColumn Column,
    LightSail Sail,
    RackWind Wind,
    SteelGrade Grade,
    bool IsWallMeasured
)
{
    private const double GravityNPerKg = 9.81;

    // EN 1991-1-4, 7.9 for thin tubes and 7.4.3 for a flat sail on a pole, a quarter of its width off the middle.
    private const double TubeCoefficient = 1.2;
    private const double SailCoefficient = 1.8;
    private const double OffMiddleShare = 0.25;

    // Battery box on its bracket: judgement. Cylinder of a mix 1:2:4.
    private const double BracketMm = 300;
    private const double CylinderNPerMm2 = 12;
    private const string Bolts = "4.6";

    /// <summary>Use of the tube beyond which nothing else is looked at.</summary>
    public const double HopelessShare = 10;

    /// <summary>Height at which lamp, box and modules hang [mm].</summary>
    public double SailAtMm { get; init; } = Column.HeightMm;

    /// <summary>Whether it is a lightning mast.</summary>
    public bool IsMast { get; init; }

    /// <summary>What it is, in words.</summary>
    public string Name => IsMast ? "lightning mast" : "light column";

    /// <summary>What the country's annex sets.</summary>
    public NationalChoices National { get; init; } = NationalChoices.Recommended;

    private double WindFactor => National.VariableFactor;

    private double WeightFactor => National.PermanentFactor;

    private SteelFactors Factors => National.Steel;

    /// <summary>Its section as it is taken.</summary>
    public MemberSection Section { get; } =
        IsWallMeasured
            ? MemberSection.OfRound(Column.Size.DiameterMm, Column.Size.WallMm)
            : MemberSection.OfRound(Column.Size.DiameterMm, Column.Size.WallMm).Thinned();

    private double HeightMm => Column.HeightMm;

    private BoltSize Bolt => BoltSize.Of(Invariant($"M{Column.Foot.BoltMm:0}"));

    /// <summary>Whether it holds the wind that it is checked for.</summary>
    public bool Holds => Worst(Wind.PeakKNPerM2).Result.Holds;

    /// <summary>The lightest column that holds; the heaviest where none does.</summary>
    /// <param name="need">What is asked for.</param>
    /// <param name="rack">Steel and walls as for the racks.</param>
    /// <param name="national">What the country's annex sets.</param>
    /// <returns>The column with its check.</returns>
    public static LightColumnStrength Choose(LightColumnNeed need, RackBrief rack, NationalChoices national)
    {
        var all = LightColumnSize
            .All.Select(size => new LightColumnStrength(
                LightColumn.Of(need.HeightMm, size, need.IsMast, rack.Workshop),
                need.Sail ?? LightSail.None,
                need.Wind,
                RackStrength.GradeOf(rack.Steel),
                rack.IsWallMeasured
            )
            {
                National = national,
                IsMast = need.IsMast,
                SailAtMm = need.SailAtMm,
            })
            .ToList();
        return all.Find(each => each.Holds) ?? all[^1];
    }

    /// <summary>Design forces at a height, wind square to a side of the plate.</summary>
    /// <param name="gustKNPerM2">Gust [kN/m2].</param>
    /// <param name="atMm">Height above the plate [mm].</param>
    /// <returns>The forces; z is up the wind.</returns>
    public MemberForces ForcesAt(double gustKNPerM2, double atMm)
    {
        var (aboveM, gust) = ((HeightMm - atMm) / 1000, gustKNPerM2 * 1000);
        var onTubeN = TubeCoefficient * gust * Column.Size.DiameterMm / 1000 * aboveM;

        // Above the lamp only the tube is left.
        var (sailAboveM, hangs) = (Math.Max(0, SailAtMm - atMm) / 1000, atMm <= SailAtMm ? 1 : 0);
        var (onSailN, massKg) = (hangs * SailCoefficient * gust * Sail.AreaM2, hangs * Sail.MassKg);
        return new(
            atMm,
            -WeightFactor * GravityNPerKg * (massKg + (Column.Pole.Section.MassKgPerM * aboveM)),
            0,
            WindFactor * (onTubeN + onSailN),
            WindFactor * onSailN * OffMiddleShare * Math.Sqrt(Sail.AreaM2) * 1000,
            (WindFactor * ((onTubeN * aboveM / 2) + (onSailN * sailAboveM)) * 1000)
                + (WeightFactor * GravityNPerKg * massKg * BracketMm),
            0
        );
    }

    /// <summary>Its checks in a gust.</summary>
    /// <param name="gustKNPerM2">Gust [kN/m2].</param>
    /// <returns>The checks: tube, buckling, weld, plate, bolts, bolts in the concrete, splices.</returns>
    public IReadOnlyList<LightColumnCheck> Checks(double gustKNPerM2)
    {
        var foot = ForcesAt(gustKNPerM2, 0);
        var tube = CrossSectionCheck.Utilisation(Section, Grade, foot, Factors);
        if (tube.UtilisationShare > HopelessShare)
        {
            return [new("tube at the plate", tube with { UtilisationShare = double.PositiveInfinity }, [])];
        }

        var sway = RackStrength.CantileverFactor * HeightMm;
        var lengths = new BucklingLengths(sway, sway, sway);
        var weld = TubeWeld.Group(Section);
        var throatMm = FilletWeld.ThroatMm(Column.Size.WeldLegMm);
        return
        [
            new("tube at the plate", tube, CrossSectionCheck.Lines(Section, Grade, foot, Factors)),
            new(
                "tube against buckling",
                MemberBuckling.Utilisation(Section, Grade, foot, lengths, MemberRules.Moments, Factors),
                MemberBuckling.Lines(Section, Grade, foot, lengths, MemberRules.Moments, Factors)
            ),
            new(
                "weld to the plate",
                weld.Utilisation(foot, Grade, throatMm, Factors),
                weld.Lines(foot, Grade, throatMm, Factors)
            ),
            Plate(foot),
            OfBolts(foot),
            InConcrete(foot),
            .. Column.Pole.SplicesMm.Select(atMm => Splice(ForcesAt(gustKNPerM2, atMm))),
        ];
    }

    /// <summary>The check that is used most.</summary>
    /// <param name="gustKNPerM2">Gust [kN/m2].</param>
    public LightColumnCheck Worst(double gustKNPerM2) =>
        Checks(gustKNPerM2).MaxBy(check => check.Result.UtilisationShare)!;

    /// <summary>Basic wind speed up to which it holds [m/s].</summary>
    public double StopsMPerS() => Wind.StopsAtMPerS(gust => Worst(gust).Result.Holds);

    // One bolt alone takes the wind across the diagonal; the plate bends from the bolt to the weld's toe.
    private LightColumnCheck Plate(MemberForces foot)
    {
        var (plate, half) = (Column.Foot, Column.Foot.BoltSpacingMm / 2);
        var toeMm = (Column.Size.DiameterMm / 2) + Column.Size.WeldLegMm;
        var diagonal = foot with
        {
            BendingYNMm = foot.BendingYNMm / Math.Sqrt(2),
            BendingZNMm = foot.BendingYNMm / Math.Sqrt(2),
        };
        var ways = new[] { (foot, half - toeMm), (diagonal, (half * Math.Sqrt(2)) - toeMm) }.Select(way =>
        {
            var (forces, lever) = (way.Item1, Math.Max(5, way.Item2));
            var breadth = BasePlate.BendingBreadthMm(lever, Bolt.WasherMm, plate.SideMm / 2);
            return (Forces: forces, Lever: lever, Breadth: breadth, Needed: Thickness(forces, lever, breadth));
        });
        var (forces, leverMm, breadthMm, neededMm) = ways.MaxBy(way => way.Needed);
        return new(
            "base plate",
            new(Math.Pow(neededMm / plate.ThicknessMm, 2), "plastic bending of a plate"),
            BasePlate.Lines(Grade, plate.BoltSpacingMm, forces, leverMm, breadthMm, Factors)
        );
    }

    private double Thickness(MemberForces forces, double leverMm, double breadthMm) =>
        BasePlate.ThicknessMm(Grade, Math.Max(0, TensionN(forces)), leverMm, breadthMm, Factors);

    private double TensionN(MemberForces forces) =>
        BasePlate.BoltTensionN(
            Column.Foot.BoltSpacingMm,
            -forces.TensionN,
            Math.Abs(forces.BendingYNMm),
            Math.Abs(forces.BendingZNMm)
        );

    // Pull of the one bolt on the diagonal, and side load by quarters with the torque.
    private (double PullN, double SideN) OnBolt(MemberForces foot)
    {
        var share = foot.BendingYNMm / Math.Sqrt(2);
        var pullN = TensionN(foot with { BendingYNMm = share, BendingZNMm = share });
        var armMm = Column.Foot.BoltSpacingMm / Math.Sqrt(2);
        return (
            Math.Max(0, pullN),
            (foot.ShearZN / PoleFoot.BoltCount) + (foot.TorsionNMm / (PoleFoot.BoltCount * armMm))
        );
    }

    private LightColumnCheck OfBolts(MemberForces foot)
    {
        var (pullN, sideN) = OnBolt(foot);
        var grade = BoltGrade.Of(Bolts);
        return new(
            $"bolts {Bolt.Name} of class {Bolts}",
            Steel.Bolt.Utilisation(Bolt, grade, pullN, sideN, Factors),
            Steel.Bolt.Lines(Bolt, grade, pullN, sideN, Factors)
        );
    }

    // The two pulled bolts and their cone in the small block; a nut with its washer is the head.
    private LightColumnCheck InConcrete(MemberForces foot)
    {
        var (pullN, sideN) = OnBolt(foot);
        var (grade, spacing) = (BoltGrade.Of(Bolts), Column.Foot.BoltSpacingMm);
        var edgeMm = (Column.Size.BlockMm - spacing) / 2;
        var depthMm = CastInAnchor.CountedDepthMm(Column.Foot.BoltInConcreteMm, edgeMm, spacing);
        var group = CastInAnchor.GroupFactor(CastInAnchor.FourConesMm2(depthMm, spacing, edgeMm), depthMm, edgeMm) / 2;
        var pairN = Math.Max(0, 2 * TensionN(foot));
        var headMm2 = Math.PI / 4 * ((Bolt.WasherMm * Bolt.WasherMm) - (Bolt.DiameterMm * Bolt.DiameterMm));
        var concrete = Math.Max(
            pairN / (group * CastInAnchor.ConeN(CylinderNPerMm2, depthMm, Factors)),
            pullN / CastInAnchor.PullOutN(CylinderNPerMm2, headMm2, Factors)
        );
        var (tension, shear) = (
            pullN / CastInAnchor.SteelTensionN(Bolt, grade),
            sideN / CastInAnchor.SteelShearN(Bolt, grade)
        );
        return new(
            Invariant($"bolts in a block of {Column.Size.BlockMm:0} x {Column.Size.BlockMm:0} mm"),
            CastInAnchor.Together(Math.Min(10, tension), Math.Min(10, shear), Math.Min(10, concrete), 0),
            CastInAnchor.Lines(Bolt, grade, (pullN, pairN), CylinderNPerMm2, (depthMm, group), Factors)
        );
    }

    private LightColumnCheck Splice(MemberForces forces)
    {
        var group = WeldGroup.Butt(Section);
        var force = group.ForceNPerMm(forces);
        return new(
            Invariant($"splice {forces.AtMm / 1000:0.00} m above the plate"),
            new(force / (Section.WallMm * FilletWeld.StrengthNPerMm2(Grade, Factors)), "EN 1993-1-8:2005, 4.7"),
            group.ForceLines(forces)
        );
    }
}

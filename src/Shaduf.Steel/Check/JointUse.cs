namespace Shaduf.Steel;

/// <summary>How far the welds of joints that are alike are used.</summary>
/// <param name="Name">Name of the joints.</param>
/// <param name="Result">The worst condition with the leg that they have.</param>
/// <param name="Joint">Index of the worst joint in the skeleton.</param>
/// <param name="Combination">Index of the combination.</param>
/// <param name="Forces">Forces on its weld; x square to the welded face, y along its width.</param>
/// <param name="RequiredLegMm">Leg that would do [mm], never below the least one; <see cref="HopelessLegMm"/> where none does.</param>
public sealed record JointUse(
    string Name,
    CheckResult Result,
    int Joint,
    int Combination,
    MemberForces Forces,
    double RequiredLegMm
)
{
    /// <summary>Leg beyond which none is looked for [mm].</summary>
    public const double HopelessLegMm = 20;

    /// <summary>Whether no leg that is looked for is enough.</summary>
    public bool IsHopeless => RequiredLegMm >= HopelessLegMm;

    /// <summary>How far the worst weld would be used with another leg; infinite where its runs are too short to carry.</summary>
    /// <param name="skeleton">The skeleton.</param>
    /// <param name="rules">Sections and steel.</param>
    /// <param name="legMm">Leg [mm].</param>
    /// <returns>The share.</returns>
    public double WithLegShare(Skeleton skeleton, MemberRules rules, double legMm) =>
        Group(skeleton, Joint, rules, legMm)
            ?.Utilisation(Forces, rules.Grade, FilletWeld.ThroatMm(legMm), rules.Factors)
            .UtilisationShare
        ?? double.PositiveInfinity;

    /// <summary>How far the welds of a frame are used, joints of one name together.</summary>
    /// <param name="cases">The solved frame.</param>
    /// <param name="combinations">The combinations; those for some members only are left out.</param>
    /// <param name="gustRatio">Gust over that for which the wind cases are kept.</param>
    /// <param name="rules">Sections and steel.</param>
    /// <returns>One use for each name, in the order of the skeleton.</returns>
    /// <source>EN 1993-1-8:2005, 4.5.3.3</source>
    public static IReadOnlyList<JointUse> All(
        FrameCases cases,
        IReadOnlyList<Combination> combinations,
        double gustRatio,
        MemberRules rules
    )
    {
        var joints = cases.Frame.Skeleton.Joints;
        var factors = combinations.Select(each => each.EachFactor(gustRatio)).ToList();
        var uses = new List<JointUse>();
        foreach (
            var alike in Enumerable
                .Range(0, joints.Count)
                .Where(i => joints[i].Weld is not null)
                .GroupBy(i => joints[i].Name)
        )
        {
            var all =
                from joint in alike
                let lines = Group(cases.Frame.Skeleton, joint, rules)
                from combination in Enumerable.Range(0, combinations.Count)
                where combinations[combination].Members is null
                select Of(cases, joint, lines, (combination, factors[combination]), rules);
            var worst = all.MaxBy(use => use.Result.UtilisationShare)!;
            uses.Add(worst with { RequiredLegMm = EnoughMm(cases.Frame.Skeleton, worst, rules) });
        }

        return uses;
    }

    /// <summary>The weld of a joint as lines.</summary>
    /// <param name="skeleton">The skeleton.</param>
    /// <param name="joint">Index of a welded joint.</param>
    /// <param name="rules">Sections.</param>
    /// <returns>The lines; null where two runs are too short to carry.</returns>
    public static WeldGroup? Group(Skeleton skeleton, int joint, MemberRules rules) =>
        Group(skeleton, joint, rules, skeleton.Joints[joint].Weld!.LegMm);

    private static WeldGroup? Group(Skeleton skeleton, int joint, MemberRules rules, double legMm)
    {
        var (weld, second) = (skeleton.Joints[joint].Weld!, skeleton.Members[skeleton.Joints[joint].Second]);
        if (weld.Pattern == WeldPattern.AllRound && skeleton.Joints[joint].HasCap)
        {
            return TubeWeld.Round(weld.WidthMm, weld.HeightMm);
        }

        if (weld.Pattern == WeldPattern.AllRound)
        {
            // A longer cut has more weld: beyond 60 deg the one at 60 deg is taken, the safe side.
            var cutDeg = Math.Acos(weld.WidthMm / weld.HeightMm) * 180 / Math.PI;
            return TubeWeld.Group(rules.Section(second), Math.Min(60, cutDeg));
        }

        var throatMm = FilletWeld.ThroatMm(legMm);
        return weld.WidthMm - (2 * throatMm) >= Math.Max(30, 6 * throatMm)
            ? LineWeld.Pair(weld.WidthMm - (2 * throatMm), weld.HeightMm)
            : null;
    }

    // A larger leg shortens the part of a run that carries: the leg that is enough for what it leaves of its own run.
    private static double EnoughMm(Skeleton skeleton, JointUse use, MemberRules rules)
    {
        const double NearMm = 0.005;
        var leastMm = FilletWeld.LegMm(FilletWeld.LeastThroatMm);
        var legMm = leastMm;
        while (Group(skeleton, use.Joint, rules, legMm) is { } group)
        {
            var neededMm =
                Math.Sqrt(2) * group.ForceNPerMm(use.Forces) / FilletWeld.StrengthNPerMm2(rules.Grade, rules.Factors);
            if (neededMm <= legMm + NearMm)
            {
                return neededMm <= leastMm ? leastMm : neededMm + (2 * NearMm);
            }

            if (neededMm > HopelessLegMm)
            {
                break;
            }

            legMm = neededMm;
        }

        return HopelessLegMm;
    }

    private static JointUse Of(
        FrameCases cases,
        int index,
        WeldGroup? group,
        (int Index, double[] Factors) combination,
        MemberRules rules
    )
    {
        var skeleton = cases.Frame.Skeleton;
        var joint = skeleton.Joints[index];
        var at = cases.AtJoint(index, skeleton.Members[joint.First].Profile.Bar.SideMm / 2, combination.Factors);
        var forces = OnWeld(at, joint.Weld!, rules.SecondOrderFactor);
        if (group is null)
        {
            return new(
                joint.Name,
                new(double.PositiveInfinity, "EN 1993-1-8:2005, 4.5.1(2): too short to carry"),
                index,
                combination.Index,
                forces,
                0
            );
        }

        var result = group.Utilisation(forces, rules.Grade, FilletWeld.ThroatMm(joint.Weld!.LegMm), rules.Factors);
        return new(joint.Name, result, index, combination.Index, forces, 0);
    }

    private static MemberForces OnWeld(JointForces at, JointWeld weld, double secondOrderFactor)
    {
        var (x, y, z) = Axes(at, weld);
        double Force(Shape.Point way) => (way.XMm * at.Force.XN) + (way.YMm * at.Force.YN) + (way.ZMm * at.Force.ZN);
        double About(Shape.Point way) =>
            ((way.XMm * at.Moment.XNMm) + (way.YMm * at.Moment.YNMm) + (way.ZMm * at.Moment.ZNMm)) * secondOrderFactor;
        return new(0, Force(x), Force(y), Force(z), About(x), About(y), About(z));
    }

    // x square to the face, y along the weld's width, brought into the face.
    private static (Shape.Point X, Shape.Point Y, Shape.Point Z) Axes(JointForces at, JointWeld weld)
    {
        var x = at.Normal;
        var inFace = weld.Along - (x * x.DotMm2(weld.Along));
        var y = inFace * (1 / inFace.LengthMm);
        return (
            x,
            y,
            new((x.YMm * y.ZMm) - (x.ZMm * y.YMm), (x.ZMm * y.XMm) - (x.XMm * y.ZMm), (x.XMm * y.YMm) - (x.YMm * y.XMm))
        );
    }
}

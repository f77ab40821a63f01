using Shaduf.Shape;
using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>How far the walls of tubes are used on which other tubes end, or across which bars lie; joints of one name together.</summary>
/// <param name="Name">Name of the joints.</param>
/// <param name="Joint">Index of the worst joint in the skeleton.</param>
/// <param name="Combination">Index of the combination.</param>
/// <param name="Strength">What the joint carries; null where the formulas do not reach.</param>
/// <param name="WhyNot">Why the formulas do not reach; empty where they do.</param>
/// <param name="AxialN">Force along the branch [N].</param>
/// <param name="InPlaneNMm">Moment in the plane of both tubes [N·mm].</param>
/// <param name="OutOfPlaneNMm">Moment across that plane, torque of the branch added as a vector [N·mm].</param>
public sealed record TubeFaceUse(
    string Name,
    int Joint,
    int Combination,
    TubeJointStrength? Strength,
    string WhyNot,
    double AxialN,
    double InPlaneNMm,
    double OutOfPlaneNMm
)
{
    /// <summary>Index of the member whose walls are pressed.</summary>
    public int Pressed { get; init; }

    /// <summary>Whether a bar lies across the tube; else a tube ends on it.</summary>
    public bool IsAcross { get; init; }

    /// <summary>Use of the face; null where the formulas do not reach.</summary>
    public double? UseShare => Strength?.Utilisation(AxialN, InPlaneNMm, OutOfPlaneNMm).UtilisationShare;

    /// <summary>The working; nothing where the formulas do not reach.</summary>
    public IReadOnlyList<Line> Lines => Strength?.Lines(AxialN, InPlaneNMm, OutOfPlaneNMm) ?? [];

    /// <summary>The faces of a frame: every welded joint at which a square tube ends on another, or a bar lies across one.</summary>
    /// <param name="cases">The solved frame.</param>
    /// <param name="combinations">The combinations; those for some members only are left out.</param>
    /// <param name="gustRatio">Gust over that for which the wind cases are kept.</param>
    /// <param name="rules">Sections and steel.</param>
    /// <returns>One use for each name and reason, in the order of the skeleton.</returns>
    /// <source>EN 1993-1-8:2005, 7.5; torque of the branch counted as a moment across the plane: judgement, safe side</source>
    public static IReadOnlyList<TubeFaceUse> All(
        FrameCases cases,
        IReadOnlyList<Combination> combinations,
        double gustRatio,
        MemberRules rules
    )
    {
        var skeleton = cases.Frame.Skeleton;
        var acting = Enumerable
            .Range(0, combinations.Count)
            .Where(i => combinations[i].Members is null)
            .Select(i => (Index: i, Factors: combinations[i].EachFactor(gustRatio)))
            .ToList();
        return
        [
            .. from joint in Enumerable.Range(0, skeleton.Joints.Count)
            from face in FacesOf(cases, joint, rules)
            let worst = acting.Select(face.Under).MaxBy(use => use.UseShare ?? 0)!
            group worst by (worst.Name, worst.WhyNot) into alike
            select alike.MaxBy(use => use.UseShare ?? 0)!,
        ];
    }

    // A bar that lies across a tube presses its side walls, and where it is a tube itself its own as well.
    private static IEnumerable<Face> FacesOf(FrameCases cases, int joint, MemberRules rules)
    {
        var skeleton = cases.Frame.Skeleton;
        var (at, (chord, branch)) = (skeleton.Joints[joint], Of(skeleton, joint));
        if (at is not { Kind: JointKind.Welded, Weld: { } weld } || !IsSquare(chord))
        {
            yield break;
        }

        var ends = Math.Min((at.AtSecond - branch.From).LengthMm, (at.AtSecond - branch.To).LengthMm) < 1;
        if (ends && IsSquare(branch))
        {
            yield return new(cases, joint, rules, null);
        }
        else if (!ends)
        {
            yield return new(cases, joint, rules, (at.First, weld.HeightMm));
            if (IsSquare(branch))
            {
                yield return new(cases, joint, rules, (at.Second, chord.Profile.Bar.SideMm));
            }
        }
    }

    private static bool IsSquare(Member member) =>
        member.Profile.MakeUp == MakeUp.Single && member.Profile.Bar.Outline == Parts.Outline.SquareTube;

    private static (Member Chord, Member Branch) Of(Skeleton skeleton, int joint) =>
        (skeleton.Members[skeleton.Joints[joint].First], skeleton.Members[skeleton.Joints[joint].Second]);

    /// <summary>One face with the directions in which its forces are split.</summary>
    private sealed class Face
    {
        private readonly FrameCases cases;
        private readonly MemberRules rules;
        private readonly int joint;
        private readonly MemberSection chord;
        private readonly MemberSection branch;
        private readonly Point along;
        private readonly Point across;
        private readonly double betweenDeg;
        private readonly List<(int Span, int Place)> beside;
        private readonly double halfMm;
        private readonly int pressedMember;
        private readonly double? breadthMm;

        internal Face(FrameCases cases, int joint, MemberRules rules, (int Pressed, double BreadthMm)? lies)
        {
            (this.cases, this.joint, this.rules, breadthMm) = (cases, joint, rules, lies?.BreadthMm);
            var skeleton = cases.Frame.Skeleton;
            var (goesOn, ends) = Of(skeleton, joint);
            pressedMember = lies?.Pressed ?? skeleton.Joints[joint].First;
            halfMm = rules.Section(goesOn).HeightMm / 2;
            (chord, branch) = (rules.Section(goesOn), rules.Section(ends));
            if (lies is { } bar)
            {
                // Pressed square to both: along the line from the one's axis to the other's.
                var pressed = skeleton.Members[bar.Pressed];
                var (from, to) = (skeleton.Joints[joint].AtFirst, skeleton.Joints[joint].AtSecond);
                (chord, branch) = (rules.Section(pressed), rules.Section(ends));
                along = (to - from) * (1 / (to - from).LengthMm);
                across = Cross(along, (pressed.To - pressed.From) * (1 / pressed.LengthMm));
                betweenDeg = 90;
                beside = [.. Beside(cases.Frame, bar.Pressed, bar.Pressed == skeleton.Joints[joint].First ? from : to)];
                return;
            }

            if (skeleton.Joints[joint].HasCap)
            {
                // The plate passes all on over the tube's full width: a branch as wide as the tube, as long as the plate,
                // with as much of its wall as such a tube could have round its corners.
                var wallMm = Math.Min(branch.WallMm, chord.WidthMm / 6);
                branch = MemberSection.OfRectangle(branch.HeightMm, chord.WidthMm, wallMm);
            }

            along = (ends.To - ends.From) * (1 / ends.LengthMm);
            var axis = (goesOn.To - goesOn.From) * (1 / goesOn.LengthMm);
            betweenDeg = Math.Acos(Math.Min(1, Math.Abs(along.DotMm2(axis)))) * 180 / Math.PI;
            across = Cross(along, axis);
            across = across.LengthMm > 1e-9 ? across * (1 / across.LengthMm) : ends.Width * (1 / ends.Width.LengthMm);
            beside = [.. Beside(cases.Frame, skeleton.Joints[joint].First, skeleton.Joints[joint].AtFirst)];
        }

        internal TubeFaceUse Under((int Index, double[] Factors) combination)
        {
            var at = cases.AtJoint(joint, halfMm, combination.Factors);
            var force = new Point(at.Force.XN, at.Force.YN, at.Force.ZN);
            var moment = new Point(at.Moment.XNMm, at.Moment.YNMm, at.Moment.ZNMm) * rules.SecondOrderFactor;
            var inPlane = moment.DotMm2(across);
            var whyNot =
                betweenDeg < 30
                    ? FormattableString.Invariant($"the tubes meet at {betweenDeg:0} deg; covered are 30 to 90")
                    : "";
            var strength =
                whyNot.Length > 0 ? null
                : breadthMm is { } breadth
                    ? TubeJoint.Across(chord, breadth, rules.Grade, PressedShare(combination.Factors), rules.Factors)
                : TubeJoint.Of(
                    chord,
                    branch,
                    rules.Grade,
                    Math.Min(90, betweenDeg),
                    PressedShare(combination.Factors),
                    rules.Factors
                );
            whyNot = strength?.WhyNot ?? whyNot;
            return new(
                cases.Frame.Skeleton.Joints[joint].Name,
                joint,
                combination.Index,
                whyNot.Length > 0 ? null : strength,
                whyNot,
                Math.Abs(force.DotMm2(along)),
                Math.Abs(inPlane),
                Math.Sqrt(Math.Max(0, moment.DotMm2(moment) - (inPlane * inPlane)))
            )
            {
                Pressed = pressedMember,
                IsAcross = breadthMm is not null,
            };
        }

        // Largest compression in the chord beside the joint, over its yield.
        private double PressedShare(double[] factors)
        {
            var most = 0.0;
            foreach (var (span, place) in beside)
            {
                var forces = cases.At(span, place, factors);
                var bending =
                    (Math.Abs(forces.BendingYNMm) / chord.ElasticModulusYMm3)
                    + (Math.Abs(forces.BendingZNMm) / chord.ElasticModulusZMm3);
                most = Math.Max(most, (bending * rules.SecondOrderFactor) - (forces.TensionN / chord.Frame.AreaMm2));
            }

            return Math.Min(1, most / rules.Grade.YieldNPerMm2);
        }

        private static IEnumerable<(int Span, int Place)> Beside(SkeletonFrame frame, int member, Point at)
        {
            var atMm = (at - frame.Skeleton.Members[member].From).LengthMm;
            foreach (var span in frame.SpansOf(member))
            {
                if (Math.Abs(frame.Spans[span].FromMm - atMm) <= SkeletonFrame.NearestMm)
                {
                    yield return (span, 0);
                }

                if (Math.Abs(frame.Spans[span].ToMm - atMm) <= SkeletonFrame.NearestMm)
                {
                    yield return (span, FrameCases.PlaceShares.Count - 1);
                }
            }
        }

        private static Point Cross(Point a, Point b) =>
            new(
                (a.YMm * b.ZMm) - (a.ZMm * b.YMm),
                (a.ZMm * b.XMm) - (a.XMm * b.ZMm),
                (a.XMm * b.YMm) - (a.YMm * b.XMm)
            );
    }
}

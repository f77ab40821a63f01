using Shaduf.Shape;

namespace Shaduf.Steel;

/// <summary>Force and moment that a joint passes on, in the directions of the station, at a place between both axes.</summary>
/// <param name="At">The place.</param>
/// <param name="Normal">Direction from the first axis to the second, length 1.</param>
/// <param name="Force">Force on the second member [N].</param>
/// <param name="Moment">Moment on the second member about the place [N·mm].</param>
public readonly record struct JointForces(Point At, Point Normal, Force Force, Moment Moment);

/// <summary>
/// A frame under several load cases, each solved once. The frame is linear: what a combination does is the sum of what
/// the cases do, so that a thousand combinations cost no further solving.
/// </summary>
public sealed class FrameCases
{
    /// <summary>Places of each span at which forces are kept, as shares of its length.</summary>
    public static IReadOnlyList<double> PlaceShares { get; } = [0, 0.25, 0.5, 0.75, 1];

    private const int Kept = 6;
    private readonly double[][] forces;
    private readonly double[][] links;
    private readonly FrameResult[] results;
    private readonly int[][] endingSpans; // at each joint

    private FrameCases(SkeletonFrame frame, FrameAnalysis analysis, IReadOnlyList<LoadCase> cases)
    {
        (Frame, Analysis, Cases) = (frame, analysis, cases);
        results = [.. cases.Select(analysis.Solve)];
        endingSpans = [.. frame.Skeleton.Joints.Select((_, i) => EndingSpans(i))];
        forces = [.. results.Select(ForcesOf)];
        links = [.. results.Select(LinksOf)];
    }

    /// <summary>The frame.</summary>
    public SkeletonFrame Frame { get; }

    /// <summary>The frame made ready.</summary>
    public FrameAnalysis Analysis { get; }

    /// <summary>The load cases.</summary>
    public IReadOnlyList<LoadCase> Cases { get; }

    /// <summary>Largest imbalance of any case, as a share of its loads.</summary>
    public double ImbalanceShare => results.Max(result => result.ImbalanceShare);

    /// <summary>Solves a frame under load cases.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="cases">The cases, at least one.</param>
    /// <returns>The solved cases.</returns>
    /// <exception cref="MechanismException">The frame can move without resistance; the message names the part.</exception>
    public static FrameCases Of(SkeletonFrame frame, IReadOnlyList<LoadCase> cases) =>
        new(frame, FrameAnalysis.Of(frame.Model), cases);

    /// <summary>Forces inside a span under a combination.</summary>
    /// <param name="span">Index of the span.</param>
    /// <param name="place">Index into <see cref="PlaceShares"/>.</param>
    /// <param name="factors">Factor of each case.</param>
    /// <returns>The forces.</returns>
    public MemberForces At(int span, int place, ReadOnlySpan<double> factors)
    {
        var at = ((span * PlaceShares.Count) + place) * Kept;
        Span<double> sum = stackalloc double[Kept];
        Add(sum, forces, at, factors);
        var atMm = PlaceShares[place] * Frame.Model.LengthMm(span);
        return new(atMm, sum[0], sum[1], sum[2], sum[3], sum[4], sum[5]);
    }

    /// <summary>Forces at any place of a span under each case, to be summed under many combinations.</summary>
    /// <param name="span">Index of the span.</param>
    /// <param name="atMm">Distance from its start [mm].</param>
    /// <returns>The forces.</returns>
    public FramePlace PlaceAt(int span, double atMm) => new([.. results.Select(result => result.At(span, atMm))]);

    /// <summary>What a joint with a link passes on to its second member under a combination.</summary>
    /// <param name="joint">Index of the joint.</param>
    /// <param name="faceMm">Distance of the welded face from the first axis [mm].</param>
    /// <param name="factors">Factor of each case.</param>
    /// <returns>The forces at the face.</returns>
    public JointForces AtJoint(int joint, double faceMm, ReadOnlySpan<double> factors)
    {
        Span<double> sum = stackalloc double[Kept];
        Add(sum, links, joint * Kept, factors);
        var (from, to) = Frame.Links[joint] >= 0 ? Ends(Frame.Links[joint]) : Ends(endingSpans[joint][0]);
        var along = to - from;
        var normal = along * (1 / along.LengthMm);
        var face = Frame.Links[joint] >= 0 ? from + (normal * Math.Min(faceMm, along.LengthMm)) : to;
        var force = new Force(sum[0], sum[1], sum[2]);

        // Kept at the second axis; brought to the face. Where the axes meet, at the node.
        var arm = Frame.Links[joint] >= 0 ? to - face : new Point(0, 0, 0);
        var moment = new Moment(
            sum[3] + (arm.YMm * force.ZN) - (arm.ZMm * force.YN),
            sum[4] + (arm.ZMm * force.XN) - (arm.XMm * force.ZN),
            sum[5] + (arm.XMm * force.YN) - (arm.YMm * force.XN)
        );
        return new(face, normal, force, moment);
    }

    /// <summary>What the ground puts on a foot under a combination.</summary>
    /// <param name="foot">Index of the foot.</param>
    /// <param name="factors">Factor of each case.</param>
    /// <returns>Force and moment at the depth where the foot is held.</returns>
    public Reaction Foot(int foot, ReadOnlySpan<double> factors)
    {
        var (x, y, z, mx, my, mz) = (0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < results.Length; i++)
        {
            var each = results[i].Reactions[foot];
            x += factors[i] * each.Force.XN;
            y += factors[i] * each.Force.YN;
            z += factors[i] * each.Force.ZN;
            mx += factors[i] * each.Moment.XNMm;
            my += factors[i] * each.Moment.YNMm;
            mz += factors[i] * each.Moment.ZNMm;
        }

        return new(results[0].Reactions[foot].Node, new(x, y, z), new(mx, my, mz));
    }

    /// <summary>Movement of a place of a span under a combination, in the directions of the station.</summary>
    /// <param name="span">Index of the span.</param>
    /// <param name="share">Place as a share of its length, 0 to 1.</param>
    /// <param name="factors">Factor of each case.</param>
    /// <returns>Movement [mm].</returns>
    public Point MovementMm(int span, double share, ReadOnlySpan<double> factors)
    {
        var sum = new Point(0, 0, 0);
        for (var i = 0; i < results.Length; i++)
        {
            if (factors[i] != 0)
            {
                sum += results[i].MovementMm(span, share) * factors[i];
            }
        }

        return sum;
    }

    /// <summary>Factor on a combination at which the frame buckles.</summary>
    /// <param name="factors">Factor of each case.</param>
    /// <returns>α_cr; null when nothing buckles.</returns>
    /// <source>EN 1993-1-1:2005, 5.2.1</source>
    public double? CriticalFactor(ReadOnlySpan<double> factors)
    {
        var tensionN = new double[Analysis.Members.Length];
        for (var member = 0; member < tensionN.Length; member++)
        {
            for (var i = 0; i < results.Length; i++)
            {
                tensionN[member] += factors[i] * results[i].MeanTensionN(member);
            }
        }

        return Analysis.CriticalFactor(tensionN);
    }

    private static void Add(Span<double> sum, double[][] kept, int at, ReadOnlySpan<double> factors)
    {
        for (var i = 0; i < kept.Length; i++)
        {
            var factor = factors[i];
            if (factor == 0)
            {
                continue;
            }

            var row = kept[i].AsSpan(at, Kept);
            for (var j = 0; j < Kept; j++)
            {
                sum[j] += factor * row[j];
            }
        }
    }

    private double[] ForcesOf(FrameResult result)
    {
        var kept = new double[Frame.Spans.Count * PlaceShares.Count * Kept];
        var at = 0;
        for (var span = 0; span < Frame.Spans.Count; span++)
        {
            var lengthMm = Frame.Model.LengthMm(span);
            foreach (var share in PlaceShares)
            {
                var inside = result.At(span, share * lengthMm);
                kept[at++] = inside.TensionN;
                kept[at++] = inside.ShearYN;
                kept[at++] = inside.ShearZN;
                kept[at++] = inside.TorsionNMm;
                kept[at++] = inside.BendingYNMm;
                kept[at++] = inside.BendingZNMm;
            }
        }

        return kept;
    }

    // What each joint puts on its second member: by its link, or by the ends of the spans that meet there.
    private double[] LinksOf(FrameResult result)
    {
        var kept = new double[Frame.Links.Count * Kept];
        for (var joint = 0; joint < Frame.Links.Count; joint++)
        {
            var sum = kept.AsSpan(joint * Kept, Kept);
            if (Frame.Links[joint] is >= 0 and var link)
            {
                Put(sum, link, result.EndsOf(link).End, -1);
                continue;
            }

            var node = Frame.NodeOf(joint);
            foreach (var span in endingSpans[joint])
            {
                var (start, end) = result.EndsOf(span);
                Put(sum, span, Frame.Model.Members[span].Start == node ? start : end, 1);
            }
        }

        return kept;
    }

    private void Put(Span<double> sum, int member, MemberEnd end, int sign)
    {
        var axes = Analysis.Members[member].Axes;
        var f = (axes.X * end.Force.XN) + (axes.Y * end.Force.YN) + (axes.Z * end.Force.ZN);
        var m = (axes.X * end.Moment.XNMm) + (axes.Y * end.Moment.YNMm) + (axes.Z * end.Moment.ZNMm);
        ReadOnlySpan<double> all = [f.XMm, f.YMm, f.ZMm, m.XMm, m.YMm, m.ZMm];
        for (var i = 0; i < Kept; i++)
        {
            sum[i] += sign * all[i];
        }
    }

    private (Point From, Point To) Ends(int member) =>
        (Frame.Model.Nodes[Frame.Model.Members[member].Start], Frame.Model.Nodes[Frame.Model.Members[member].End]);

    private int[] EndingSpans(int joint)
    {
        var node = Frame.NodeOf(joint);
        return
        [
            .. Frame
                .SpansOf(Frame.Skeleton.Joints[joint].Second)
                .Where(span => Frame.Model.Members[span].Start == node || Frame.Model.Members[span].End == node),
        ];
    }
}

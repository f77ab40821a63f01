using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>A closed fence of posts, struts, mesh and wires along any line, on level or sloping ground, with one gate or none.</summary>
public static class Fence
{
    // A bend of less needs no strut.
    private const double CornerDeg = 15;

    // Longest mesh and wire between two posts that struts hold.
    private const double LongestStrainM = 69;

    /// <summary>
    /// The fence, post by post. Each straight between corners and gate posts has bays of equal width, none wider than the
    /// spacing; where a strut's hole would meet that of the next post, the bays at its ends are as wide as that takes. Struts
    /// hold the posts at corners, at the gate, and so many between them that no strained length is longer than 69 m; a bay too
    /// short for a strut gets a rail, and its posts hold each other.
    /// </summary>
    /// <param name="corners">The points of the line in order, three at least, each side 1 m long at least.</param>
    /// <param name="form">How it is made.</param>
    /// <param name="gate">The gate, half a metre clear of the corners at least; null for none.</param>
    /// <returns>The fence.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Spacing, height, a point or the gate is outside its range, or NaN.</exception>
    /// <exception cref="ArgumentException">There are fewer than three corners.</exception>
    /// <source>Post spacing, line wires, straining length of 69 m, holes of strained posts and struts: public drawings and specifications of chain-link fences; turn of 15 deg, struts at 45 deg, hole between: common practice, no source</source>
    public static FenceLine Around(IReadOnlyList<FencePoint> corners, FenceForm form, FenceGate? gate)
    {
        Require(corners, form, gate);
        var runs = Runs(corners, form, gate).ToList();
        var (posts, rails) = Held(Posts(runs, form, gate is null), runs, form);
        return new(form, corners, gate, runs, posts, rails);
    }

    private static void Require(IReadOnlyList<FencePoint> corners, FenceForm form, FenceGate? gate)
    {
        if (corners.Count < 3)
        {
            throw new ArgumentException("A fence needs three corners.", nameof(corners));
        }

        Within.Require(form.HeightM, 0.9, 2.25, "m");
        Within.Require(form.SpacingM, form.LeastSpacingM, 5, "m");
        foreach (var (i, corner) in corners.Index())
        {
            Within.Require(corner.LevelM, -1000, 1000, "m");
            Within.Require(corner.PlanM(Next(corners, i)), 1, 5000, "m", "side");
        }

        if (gate is not null)
        {
            Within.RequireCount(gate.SideIndex, 0, corners.Count - 1);
            Within.Require(gate.WidthM, 0.8, 8, "m");
            var sideM = corners[gate.SideIndex].PlanM(Next(corners, gate.SideIndex));
            var leastM = (gate.WidthM / 2) + 0.5 - 1e-6;
            Within.Require(gate.MiddleM, leastM, sideM - leastM, "m");
        }
    }

    private static FencePoint Next(IReadOnlyList<FencePoint> corners, int index) =>
        corners[(index + 1) % corners.Count];

    // From the gate round to the gate; from the first corner where there is none.
    private static IEnumerable<FenceRun> Runs(IReadOnlyList<FencePoint> corners, FenceForm form, FenceGate? gate)
    {
        var first = gate?.SideIndex ?? 0;
        var (from, to) = (corners[first], Next(corners, first));
        FencePoint Gatepost(int sign) => from.Toward(to, (gate!.MiddleM + (sign * gate.WidthM / 2)) / from.PlanM(to));
        yield return Run(first, gate is null ? from : Gatepost(1), to, form);
        for (var i = 1; i < corners.Count; i++)
        {
            var side = (first + i) % corners.Count;
            yield return Run(side, corners[side], Next(corners, side), form);
        }

        if (gate is not null)
        {
            yield return Run(first, from, Gatepost(-1), form);
        }
    }

    // A run that is a whole number of bays but for rounding does not get a bay more.
    private static FenceRun Run(int side, FencePoint from, FencePoint to, FenceForm form)
    {
        var run = new FenceRun(side, from, to, 1);
        var count = BaysIn(run.MeshM, form);
        return run.MeshM / count >= form.ClearBayM || run.MeshM < 2 * form.ClearBayM
            ? run with
            {
                BayCount = count,
            }
            : run with
            {
                BayCount = 2 + BaysIn(run.MeshM - (2 * form.ClearBayM), form),
                EndBayM = form.ClearBayM,
            };
    }

    private static int BaysIn(double lengthM, FenceForm form) =>
        (int)Math.Max(1, Math.Ceiling((lengthM / form.SpacingM) - 1e-9));

    private static List<FencePost> Posts(List<FenceRun> runs, FenceForm form, bool isRing)
    {
        var posts = new List<FencePost>();
        for (var i = 0; i < runs.Count; i++)
        {
            var (run, before) = (
                runs[i],
                i > 0 ? runs[i - 1]
                : isRing ? runs[^1]
                : null
            );
            posts.Add(Post(Bend(before, run, i == 0), run.From, (before, run), form));
            var atM = 0.0;
            foreach (var bayM in run.BaysM.SkipLast(1))
            {
                atM += bayM;
                var at = run.From.Toward(run.To, atM / run.MeshM);
                posts.Add(Post(FencePostKind.Intermediate, at, (run, run), form));
            }
        }

        if (!isRing)
        {
            posts.Add(Post(FencePostKind.Gate, runs[^1].To, (runs[^1], null), form));
        }

        return Strained(posts, runs, form);
    }

    // The line begins and ends at a post that struts hold.
    private static FencePostKind Bend(FenceRun? before, FenceRun after, bool isFirst) =>
        before is null ? FencePostKind.Gate
        : TurnDeg(before, after) > CornerDeg ? FencePostKind.Corner
        : isFirst ? FencePostKind.Strainer
        : FencePostKind.Intermediate;

    private static double TurnDeg(FenceRun before, FenceRun after)
    {
        var (a, b) = (Direction(before), Direction(after));
        var cos = (a.East * b.East) + (a.North * b.North) + (a.Up * b.Up);
        return Math.Acos(Math.Clamp(cos, -1, 1)) * 180 / Math.PI;
    }

    private static (double East, double North, double Up) Direction(FenceRun run) =>
        (
            (run.To.EastM - run.From.EastM) / run.SlopeM,
            (run.To.NorthM - run.From.NorthM) / run.SlopeM,
            run.RiseM / run.SlopeM
        );

    private static FencePost Post(
        FencePostKind kind,
        FencePoint foot,
        (FenceRun? Before, FenceRun? After) beside,
        FenceForm form
    ) =>
        new(
            kind,
            foot,
            form.HeightM + form.HoleOf(kind).DepthM + Math.Max(beside.Before?.StepM ?? 0, beside.After?.StepM ?? 0),
            []
        );

    // Beside a post that is strained: a strut into a bay with room for it, else a rail across the bay.
    private static (List<FencePost> Posts, List<FenceRail> Rails) Held(
        List<FencePost> posts,
        List<FenceRun> runs,
        FenceForm form
    )
    {
        List<int> railed = [];
        foreach (var (i, bayM) in runs.SelectMany(run => run.BaysM).Index())
        {
            var (here, next) = (i, (i + 1) % posts.Count);
            var strained = new[] { (At: here, To: next), (At: next, To: here) }
                .Where(each => posts[each.At].Kind != FencePostKind.Intermediate)
                .ToList();
            if (strained.Count > 0 && bayM < (strained.Count == 1 ? form.ClearBayM : form.BothStrutsM) - 1e-9)
            {
                railed.Add(here);
                continue;
            }

            foreach (var (at, to) in strained)
            {
                posts[at] = posts[at] with { StrutsTo = [.. posts[at].StrutsTo, posts[to].Foot] };
            }
        }

        return (posts, [.. railed.Select(i => new FenceRail(posts[i], posts[(i + 1) % posts.Count]))]);
    }

    // A post between becomes a strainer before the strained length grows too long.
    private static List<FencePost> Strained(List<FencePost> posts, List<FenceRun> runs, FenceForm form)
    {
        double[] baysM = [.. runs.SelectMany(run => run.BaysM)];
        var ofPost = runs.SelectMany(run => Enumerable.Repeat(run, run.BayCount)).ToList();
        var sinceM = 0.0;
        for (var i = 1; i < posts.Count; i++)
        {
            sinceM += baysM[i - 1];
            if (posts[i].Kind != FencePostKind.Intermediate)
            {
                sinceM = 0;
            }
            else if (sinceM + baysM[i] > LongestStrainM)
            {
                posts[i] = Post(FencePostKind.Strainer, posts[i].Foot, (ofPost[i - 1], ofPost[i]), form);
                sinceM = 0;
            }
        }

        return posts;
    }
}

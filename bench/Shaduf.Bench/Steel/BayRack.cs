using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Bench.Steel;

/// <summary>A rack of any length: posts in two lines, rails along them, rafters across; five members a bay, all welded.</summary>
public sealed class BayRack
{
    private const double PitchMm = 1100;
    private static readonly MemberSection Tube = MemberSection.OfSquare(60, 3);
    private static readonly Profile Bar = new(
        MakeUp.Single,
        new("SHS 60x3", Outline.SquareTube, 60, 3, 5.19, 230, 6000, 5980)
    );

    private readonly List<Member> members = [];
    private readonly List<Joint> joints = [];
    private readonly List<Foot> feet = [];

    public BayRack(int bayCount)
    {
        for (var bay = 0; bay < bayCount; bay++)
        {
            AddBay(bay * PitchMm);
        }
    }

    /// <summary>Twelve combinations of the six cases: weight alone, leaning, and with each wind, light and heavy.</summary>
    public static IReadOnlyList<Combination> Combinations { get; } =
    [
        .. from weight in new[] { 1.0, 1.35 }
        from other in Enumerable.Range(0, 6)
        select new Combination(
            FormattableString.Invariant($"{weight:0.00} G + {other}"),
            [weight, .. Factors(other, 1, 1.35, 2)],
            [0, .. Factors(other, 3, 1.5, 5)]
        ),
    ];

    /// <summary>Members of the rack.</summary>
    public int MemberCount => members.Count;

    /// <summary>The whole way from the skeleton to the use of each member and each weld.</summary>
    public double WorstUse()
    {
        var frame = SkeletonFrame.Of(new(members, joints, feet), _ => Tube.Frame, 300, []);
        var cases = FrameCases.Of(frame, [.. Cases(frame)]);
        var critical = cases.CriticalFactor(Combinations[^1].EachFactor(1));
        var rules = new MemberRules(_ => Tube, SteelGrade.Of("S235"), _ => new(2500, 2500, 2500));
        var worst = rules.Uses(cases, Combinations, 1).Max(use => use.Result.UtilisationShare);
        var weld = JointUse.All(cases, Combinations, 1, rules).Max(use => use.Result.UtilisationShare);
        return Math.Max(worst, weld) + (critical ?? 0);
    }

    private static IEnumerable<double> Factors(int other, int from, double factor, int to) =>
        Enumerable.Range(1, 5).Select(each => each == other && each >= from && each <= to ? factor : 0);

    private static IEnumerable<LoadCase> Cases(SkeletonFrame frame)
    {
        Force[] pushes =
        [
            new(0, 0, -0.8),
            new(0, 0.004, 0),
            new(0.004, 0, 0),
            new(0, 0.3, -0.9),
            new(0, -0.3, 1.1),
            new(0.2, 0, 0),
        ];
        return pushes.Select(push => new LoadCase(
            "case",
            [],
            [.. frame.Spans.Select((_, span) => new SpreadLoad(span, push))],
            []
        ));
    }

    private void AddBay(double xMm)
    {
        var (front, back) = (new Point(xMm, 0, 800), new Point(xMm, 2000, 1400));
        var first = members.Count;
        members.AddRange([
            new("F", "front post", Bar, front with { ZMm = -500 }, front, new(1, 0, 0)),
            new("B", "back post", Bar, back with { ZMm = -500 }, back, new(1, 0, 0)),
            new("R", "rafter", Bar, front, back, new(1, 0, 0)),
            new("L", "front rail", Bar, front, front with { XMm = xMm + PitchMm }, new(0, 1, 0)),
            new("H", "back rail", Bar, back, back with { XMm = xMm + PitchMm }, new(0, 1, 0)),
        ]);
        Join(first, first + 2, front);
        Join(first + 1, first + 2, back);
        Join(first, first + 3, front);
        Join(first + 1, first + 4, back);
        if (first > 0)
        {
            Join(first, first - 2, front);
            Join(first + 1, first - 1, back);
        }

        feet.AddRange([new(first, front with { ZMm = 0 }), new(first + 1, back with { ZMm = 0 })]);
    }

    private void Join(int goesOn, int ends, Point at)
    {
        var weld = new JointWeld(WeldPattern.AllRound, 4.5, 60, 60, new(0.3, 0.5, 0.8));
        joints.Add(new(members[ends].Role, JointKind.Welded, goesOn, at, ends, at) { Weld = weld });
    }
}

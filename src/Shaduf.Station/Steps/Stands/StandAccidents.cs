using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Something that happens to a stand beyond what is reckoned with every year.</summary>
/// <param name="What">What happens, in words.</param>
/// <param name="Mark">Mark of the member that is used most then.</param>
/// <param name="Role">What that member is.</param>
/// <param name="Use">Its use.</param>
/// <param name="Combination">What acts then.</param>
public sealed record StandAccident(string What, string Mark, string Role, CheckResult Use, string Combination);

/// <summary>Accidents that a full stand must outlast: a diagonal lost, cattle leaning on a leg.</summary>
internal static class StandAccidents
{
    /// <summary>Push of a beast against a leg [N]; judgement, no source.</summary>
    public const double CattleN = 1500;

    /// <summary>Its height over the ground [mm]; judgement, no source.</summary>
    public const double CattleMm = 1200;

    // What is left of a lost bar in the frame, which would not be solved as another one without it.
    private const double LeftShare = 1e-4;

    /// <summary>The accidents of a stand: in each bay, along and across the rows, the diagonal that is used most is lost; each leg is leant on.</summary>
    /// <param name="strength">The checked stand.</param>
    /// <returns>The accidents, the worst diagonal first and the worst leg last.</returns>
    /// <source>EN 1990:2002, 6.4.3.3, all factors 1.0, a fifth of the wind; which accidents: judgement, no source</source>
    public static IReadOnlyList<StandAccident> Of(StandStrength strength)
    {
        var members = strength.Stand.Skeleton.Members;
        return
        [
            Enumerable
                .Range(0, members.Count)
                .Where(i => members[i].Role == TankStand.DiagonalRole)
                .GroupBy(i => (Level: Math.Round(members[i].From.ZMm), IsAcross: IsAcross(members[i])))
                .Select(alike => alike.MaxBy(i => strength.Members[i].Result.UtilisationShare))
                .Select(lost => Lost(strength, lost))
                .MaxBy(each => each.Use.UtilisationShare)!,
            Leant(strength),
        ];
    }

    private static bool IsAcross(Member member) =>
        Math.Abs(member.To.YMm - member.From.YMm) > Math.Abs(member.To.XMm - member.From.XMm);

    // The other diagonal of the pair is no longer held where they crossed.
    private static StandAccident Lost(StandStrength strength, int lost)
    {
        var (skeleton, rules) = (strength.Stand.Skeleton, strength.Rules);
        var partner = PartnerOf(skeleton, lost);
        var fullMm = skeleton.Members[partner].LengthMm;
        var left = rules with
        {
            Lengths = member => member == partner ? new(fullMm, fullMm, fullMm) : rules.Lengths(member),
        };
        return Worst(
            strength,
            $"diagonal {skeleton.Members[lost].Mark} lost",
            left.Uses(Without(strength, lost), strength.Combinations.Lost, strength.Wind.PeakKNPerM2),
            strength.Combinations.Lost,
            use => use.Member != lost
        );
    }

    /// <summary>The stand under its actions without one member.</summary>
    /// <param name="strength">The checked stand.</param>
    /// <param name="lost">Index of the member.</param>
    internal static FrameCases Without(StandStrength strength, int lost)
    {
        var (stand, rules) = (strength.Stand, strength.Rules);
        var gone = stand.Skeleton.Members[lost];
        var frame = SkeletonFrame.Of(
            stand.Skeleton,
            member => ReferenceEquals(member, gone) ? Left(rules.Section(member).Frame) : rules.Section(member).Frame,
            0,
            StandBed.Cuts(stand)
        );
        return FrameCases.Of(frame, StandActions.Of(stand, frame, strength.Drag));
    }

    private static FrameSection Left(FrameSection section) =>
        new(
            section.AreaMm2 * LeftShare,
            section.InertiaYMm4 * LeftShare,
            section.InertiaZMm4 * LeftShare,
            section.TorsionConstantMm4 * LeftShare
        );

    /// <summary>The diagonal that crosses another.</summary>
    /// <param name="skeleton">The stand.</param>
    /// <param name="lost">Index of the other.</param>
    internal static int PartnerOf(Skeleton skeleton, int lost)
    {
        var crossing = skeleton.Joints.First(joint =>
            joint.Name == StandFrame.CrossingName && (joint.First == lost || joint.Second == lost)
        );
        return crossing.First == lost ? crossing.Second : crossing.First;
    }

    private static StandAccident Leant(StandStrength strength)
    {
        var (stand, rules) = (strength.Stand, strength.Rules);
        var atMm = Math.Min(CattleMm - StandPlan.FootMm, stand.Plan.LevelsMm[1] - StandPlan.FootMm);
        var legs = stand.Members(TankStand.LegRole).ToList();
        var frame = SkeletonFrame.Of(
            stand.Skeleton,
            member => rules.Section(member).Frame,
            0,
            [.. StandBed.Cuts(stand), .. legs.Select(leg => (leg, atMm))]
        );
        Force[] pushes = [new(CattleN, 0, 0), new(-CattleN, 0, 0), new(0, CattleN, 0), new(0, -CattleN, 0)];
        var leant = (from leg in legs from push in pushes select (Leg: leg, Push: push)).ToList();
        var still = StandActions.Of(stand, frame, strength.Drag).Take(2).ToList();
        var combinations = leant
            .Select(
                (each, i) =>
                    Acting("G + W, a beast leaning", 2 + leant.Count, 2 + i) with
                    {
                        Members = new HashSet<int> { each.Leg },
                    }
            )
            .Prepend(Acting("G + W", 2 + leant.Count, null))
            .ToList();
        var cases = FrameCases.Of(
            frame,
            [
                .. still,
                .. leant.Select(each => new LoadCase(
                    "a beast leaning",
                    [],
                    [],
                    [At(frame, each.Leg, atMm, each.Push)]
                )),
            ]
        );
        return Worst(
            strength,
            FormattableString.Invariant(
                $"a beast leaning with {CattleN / 1000:0.0} kN on a leg {CattleMm / 1000:0.0} m up"
            ),
            rules.Uses(cases, combinations, 0),
            combinations,
            use => strength.Stand.Skeleton.Members[use.Member].Role == TankStand.LegRole
        );
    }

    private static Combination Acting(string name, int count, int? leaning)
    {
        var factors = new double[count];
        (factors[StandActions.Weight], factors[StandActions.Water]) = (1, 1);
        if (leaning is { } at)
        {
            factors[at] = 1;
        }

        return new(name, factors, new double[count]);
    }

    private static PointLoad At(SkeletonFrame frame, int leg, double atMm, Force push)
    {
        var (span, mm) = frame.Place(leg, atMm);
        return new(span, mm, push);
    }

    private static StandAccident Worst(
        StandStrength strength,
        string what,
        IReadOnlyList<MemberUse> uses,
        IReadOnlyList<Combination> combinations,
        Func<MemberUse, bool> counts
    )
    {
        var worst = uses.Where(counts).MaxBy(use => use.Result.UtilisationShare)!;
        var member = strength.Stand.Skeleton.Members[worst.Member];
        return new(what, member.Mark, member.Role, worst.Result, combinations[worst.Combination].Name);
    }
}

using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>A rack loaded, analysed and checked.</summary>
/// <param name="Rack">The rack.</param>
/// <param name="Wind">The wind.</param>
/// <param name="Canopy">Coefficients of the plane.</param>
/// <param name="Actions">The actions; wind for a gust of 1 kN/m2.</param>
/// <param name="Cases">The frame, solved under each action.</param>
/// <param name="Combinations">What acts together.</param>
/// <param name="Rules">Sections and steel.</param>
/// <param name="CriticalFactor">Least factor on a combination at which the frame buckles; null when nothing buckles.</param>
public sealed record RackStrength(
    Rack Rack,
    RackWind Wind,
    MonopitchCanopy Canopy,
    IReadOnlyList<RackAction> Actions,
    FrameCases Cases,
    RackCombinations Combinations,
    MemberRules Rules,
    double? CriticalFactor
)
{
    /// <summary>Depth below the ground at which a column is taken as held [mm].</summary>
    /// <source>0.3 m in firm soil: judgement, no source</source>
    public const double FixityMm = 300;

    /// <summary>Depth at which a rack's columns are held [mm]: no deeper than they go into their blocks.</summary>
    /// <param name="rack">The rack.</param>
    public static double HeldMm(Rack rack) => Math.Min(FixityMm, rack.Setting.EmbedMm);

    /// <summary>Whether walls were measured, and are taken as bought; else they are taken a tenth thinner.</summary>
    public bool IsWallMeasured { get; private init; }

    /// <summary>Depth at which this frame's columns are held [mm].</summary>
    public double HeldAtMm { get; private init; } = HeldMm(Rack);

    /// <summary>The same rack held at the surface of the ground; itself where it is that one.</summary>
    public RackStrength AtSurface => atSurface ??= shallow?.Invoke() ?? this;

    /// <summary>The rack at both depths at which its columns may be held: the worse counts for steel and welds.</summary>
    /// <source>judgement, no source: firm ground or concrete above it may hold a column higher than is taken</source>
    public IEnumerable<RackStrength> BothDepths => ReferenceEquals(AtSurface, this) ? [this] : [this, AtSurface];

    /// <summary>How its columns are held, to be added to a combination's name; empty for the depth usually taken.</summary>
    public string HeldSays => shallow is null ? ", columns held at the ground" : "";

    private RackStrength? atSurface;
    private Func<RackStrength>? shallow;

    /// <summary>Factor on a column's length above that depth for buckling: a cantilever.</summary>
    /// <source>2.0 in theory, 2.1 for a foot that gives a little; judgement</source>
    public const double CantileverFactor = 2.1;

    /// <summary>Least critical factor at which the moments may be raised by the short formula.</summary>
    public const double LeastCriticalFactor = 3;

    /// <summary>Critical factor from which the second order is left out.</summary>
    public const double StiffCriticalFactor = 10;

    /// <summary>How far each member is used at the wind that is checked.</summary>
    public IReadOnlyList<MemberUse> Members { get; } = Rules.Uses(Cases, Combinations.Strength, Wind.PeakKNPerM2);

    /// <summary>How far the welds are used at the wind that is checked.</summary>
    public IReadOnlyList<JointUse> Joints { get; } =
        JointUse.All(Cases, Combinations.Strength, Wind.PeakKNPerM2, Rules);

    /// <summary>How far the butt welds of its splices are used.</summary>
    public IReadOnlyList<SpliceUse> Splices => splices ??= SplicesAt(Combinations.Strength, Wind.PeakKNPerM2);

    /// <summary>How far the faces of tubes are used on which other tubes end.</summary>
    public IReadOnlyList<TubeFaceUse> Faces =>
        faces ??= TubeFaceUse.All(Cases, Combinations.Strength, Wind.PeakKNPerM2, Rules);

    /// <summary>How slender its columns, struts and braces are.</summary>
    public IReadOnlyList<SlenderUse> Slender =>
        slender ??= RackSlender.Of(this, Hardest(Cases, Combinations, Wind.PeakKNPerM2));

    private IReadOnlyList<SlenderUse>? slender;
    private IReadOnlyList<SpliceUse>? splices;
    private IReadOnlyList<TubeFaceUse>? faces;

    /// <summary>What the country's annex sets.</summary>
    public NationalChoices National => Combinations.Choices;

    /// <summary>Whether the columns stand on one line, so that each carries the wind's moment by itself.</summary>
    public bool IsOneLine => Rack.Form.Lines == 1;

    /// <summary>Largest leg of a weld on walls of 3 to 4 mm [mm].</summary>
    /// <source>judgement, no source: beyond it the wall beside the weld governs</source>
    public const double MostLegMm = 6;

    /// <summary>Whether steel, welds and stability hold at the wind that is checked, however deep the columns are held.</summary>
    public bool Holds => HoldsItself && (ReferenceEquals(AtSurface, this) || AtSurface.HoldsItself);

    /// <summary>Whether they hold with the columns held at the depth of this frame.</summary>
    public bool HoldsItself =>
        Members.All(use => use.Result.Holds)
        && Joints.All(use => use.RequiredLegMm <= MostLegMm && double.IsFinite(use.Result.UtilisationShare))
        && !(CriticalFactor < LeastCriticalFactor)
        && Slender.All(use => use.UseShare <= 1)
        && Splices.All(use => use.UseShare <= 1)
        && Faces.All(use => use.UseShare is null or <= 1)
        && RackMoves.Firm(this).All(move => move.Holds);

    /// <summary>How far it is used in each kind of check, its columns held at the depth of this frame.</summary>
    internal IEnumerable<double> Shares =>
        [
            .. Members
                .GroupBy(use => Rack.Skeleton.Members[use.Member].Role)
                .Select(alike => alike.Max(use => use.Result.UtilisationShare)),
            .. Joints.Select(use => use.RequiredLegMm / MostLegMm),
            LeastCriticalFactor / (CriticalFactor ?? double.PositiveInfinity),
            Slender.Max(use => use.UseShare),
            .. Splices.Select(use => use.UseShare),
            .. Faces.Select(use => use.UseShare ?? 0),
            .. RackMoves.Firm(this).Select(move => move.Value / move.Limit),
        ];

    /// <summary>Loads, analyses and checks a rack.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">The survey.</param>
    /// <param name="shelf">The cards.</param>
    /// <returns>The checked rack; null where the tilt is beyond the table of wind coefficients.</returns>
    /// <exception cref="MechanismException">The frame can move without resistance; the message names the part.</exception>
    public static RackStrength? Of(Rack rack, Brief brief, Survey survey, CardShelf shelf) =>
        Of(rack, brief, survey, shelf, HeldMm(rack));

    private static RackStrength? Of(Rack rack, Brief brief, Survey survey, CardShelf shelf, double heldMm)
    {
        if (rack.Setting.TiltDeg > MonopitchCanopy.SteepestDeg)
        {
            return null;
        }

        var wind = RackWind.Of(brief.Site, survey, rack.Size.TopEdgeMm);
        var canopy = MonopitchCanopy.Of(rack.Setting.TiltDeg, survey["blockage"]);
        var profiles = new RackProfiles(rack.Sections, shelf, brief.Rack.IsWallMeasured);
        var frame = SkeletonFrame.Of(rack.Skeleton, member => profiles[member].Frame, heldMm, RackActions.Cuts(rack));
        var actions = RackActions.Of(rack, frame, canopy, survey["snow"]);
        var cases = FrameCases.Of(frame, [.. actions.Select(action => action.Load)]);
        var combinations = RackCombinations.Of(
            actions,
            rack.Rows.SelectMany(row => new[] { row.Low, row.High }).ToHashSet(),
            brief.Site.National
        );
        var critical = Critical(cases, combinations, wind.PeakKNPerM2);
        var raised = critical is >= LeastCriticalFactor and < StiffCriticalFactor
            ? SwayImperfection.AmplifyingFactor(critical.Value)
            : 1;
        var rules = new MemberRules(member => profiles[member], GradeOf(brief.Rack.Steel), Lengths(frame), raised)
        {
            Factors = brief.Site.National.Steel,
        };
        return new(rack, wind, canopy, actions, cases, combinations, rules, critical)
        {
            HeldAtMm = heldMm,
            IsWallMeasured = brief.Rack.IsWallMeasured,
            shallow = heldMm > 0 ? () => Of(rack, brief, survey, shelf, 0)! : null,
        };
    }

    /// <summary>Basic wind speed up to which the members hold [m/s].</summary>
    public double SteelStopsMPerS() =>
        BothDepths.Min(each => Wind.StopsAtMPerS(gust => each.Rules.Hold(each.Cases, each.Combinations.Blown, gust)));

    /// <summary>Basic wind speed up to which welds, splices and the faces of tubes hold [m/s].</summary>
    public double WeldsStopMPerS() => BothDepths.Min(each => Wind.StopsAtMPerS(each.WeldsHold));

    private bool WeldsHold(double gust) =>
        JointUse.All(Cases, Combinations.Blown, gust, Rules).All(use => use.Result.Holds)
        && TubeFaceUse.All(Cases, Combinations.Blown, gust, Rules).All(use => use.UseShare is null or <= 1)
        && SplicesAt(Combinations.Blown, gust).All(use => use.UseShare <= 1);

    private IReadOnlyList<SpliceUse> SplicesAt(IReadOnlyList<Combination> combinations, double gust) =>
        SpliceUse.All(Cases, combinations, gust, Rules, RackSplices.PlacesOf(Rack));

    /// <summary>The member of each kind that is used most, at the depth of its columns at which it is.</summary>
    /// <param name="kind">What makes members alike.</param>
    /// <returns>Their uses, in the order of the skeleton.</returns>
    public IEnumerable<(RackStrength Held, MemberUse Use)> Governing(Func<Member, string> kind) =>
        BothDepths
            .SelectMany(each => each.Members.Select(use => (Held: each, Use: use)))
            .GroupBy(pair => kind(Rack.Skeleton.Members[pair.Use.Member]))
            .Select(alike => alike.MaxBy(pair => pair.Use.Result.UtilisationShare));

    /// <summary>The largest forces in its members at the wind that is checked.</summary>
    /// <param name="name">What makes members alike.</param>
    /// <returns>One envelope for each name, in the order of the skeleton.</returns>
    public IReadOnlyList<ForceEnvelope> Forces(Func<Member, string> name) =>
        ForceEnvelope.All(Cases, Combinations.Strength, Wind.PeakKNPerM2, Rules.SecondOrderFactor, name);

    /// <summary>Leg that each weld gets: what it needs, in steps of half a millimetre, never less than the least.</summary>
    /// <returns>Legs by the joints' name [mm].</returns>
    public IReadOnlyDictionary<string, double> LegsMm() =>
        BothDepths
            .SelectMany(each => each.Joints)
            .GroupBy(use => use.Name)
            .ToDictionary(
                alike => alike.Key,
                alike =>
                    Math.Min(
                        MostLegMm,
                        Math.Max(
                            RackSteel.WeldLegMm,
                            Math.Ceiling(Math.Round(alike.Max(use => use.RequiredLegMm), 9) * 2) / 2
                        )
                    )
            );

    // The combination that presses hardest on the feet buckles the frame first.
    private static double? Critical(FrameCases cases, RackCombinations combinations, double gust) =>
        Hardest(cases, combinations, gust) is { } hardest ? cases.CriticalFactor(hardest.EachFactor(gust)) : null;

    private static Combination? Hardest(FrameCases cases, RackCombinations combinations, double gust) =>
        combinations
            .Strength.Where(each => each.IsPressing)
            .MaxBy(each =>
                Enumerable
                    .Range(0, cases.Frame.Skeleton.Feet.Count)
                    .Sum(foot => cases.Foot(foot, each.EachFactor(gust)).Force.ZN)
            );

    /// <summary>The steel as the checks take it.</summary>
    /// <param name="steel">As the merchant states it.</param>
    public static SteelGrade GradeOf(SteelBrief steel) =>
        steel == SteelBrief.Unmarked ? SteelGrade.Unmarked : SteelGrade.Of(steel.ToString());

    // A column is a cantilever; any other member buckles between its joints.
    private static Func<int, BucklingLengths> Lengths(SkeletonFrame frame)
    {
        var feet = frame.Skeleton.Feet.Select(foot => foot.Member).ToHashSet();
        var lengths = frame
            .Skeleton.Members.Select(
                (_, i) =>
                {
                    var spans = frame.SpansOf(i).Select(span => frame.Spans[span]).ToList();
                    if (feet.Contains(i))
                    {
                        var sway = CantileverFactor * (spans[^1].ToMm - spans[0].FromMm);
                        return new BucklingLengths(sway, sway, sway);
                    }

                    var between = BetweenJoints(frame.Skeleton, i);
                    return new(between, between, between);
                }
            )
            .ToList();
        return member => lengths[member];
    }

    /// <summary>Longest distance between two neighbouring joints of a member [mm].</summary>
    internal static double BetweenJoints(Skeleton skeleton, int member)
    {
        var from = skeleton.Members[member].From;
        double[] places =
        [
            .. skeleton.Joints.Where(joint => joint.First == member).Select(joint => (joint.AtFirst - from).LengthMm),
            .. skeleton.Joints.Where(joint => joint.Second == member).Select(joint => (joint.AtSecond - from).LengthMm),
        ];
        var inOrder = places.Append(0).Append(skeleton.Members[member].LengthMm).Order().ToList();
        return inOrder.Zip(inOrder.Skip(1), (a, b) => b - a).Max();
    }
}

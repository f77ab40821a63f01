using Shaduf.Steel;
using Shaduf.Water;
using Shaduf.Workshop;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What a prop and the tube on it bear when they bear most.</summary>
/// <param name="Prop">The prop.</param>
/// <param name="UprightKN">Force straight down on the props of this end of the tube together, with partial factors [kN].</param>
/// <param name="ServedKN">The same without partial factors [kN].</param>
/// <param name="MomentKNm">Moment in the tube between the props, with partial factors [kNm].</param>
/// <param name="IsAlong">Whether the feet lie apart along the row, so that they push against each other and not along the tube.</param>
public sealed record PropForce(Prop Prop, double UprightKN, double ServedKN, double MomentKNm, bool IsAlong)
{
    /// <summary>Force along the props of this end together [kN].</summary>
    public double AlongKN => UprightKN / Math.Cos(Prop.LeanDeg * Math.PI / 180);

    /// <summary>Push of their feet away from the pit, on one side of it [kN].</summary>
    public double PushKN => UprightKN * Math.Tan(Prop.LeanDeg * Math.PI / 180) / (IsAlong ? 2 : 1);

    /// <summary>What of it presses along the tube [kN].</summary>
    public double InTubeKN => IsAlong ? 0 : PushKN;
}

/// <summary>The props that carry a frame over its open pits: a pair under each cross tube or rafter, beyond the pits.</summary>
/// <param name="Works">The works.</param>
/// <param name="Strength">The checked rack.</param>
/// <param name="GroundKPa">Pressure that may be put on the ground under a footing [kPa].</param>
/// <param name="BoardMm">Side of the square board under each prop [mm].</param>
public sealed record Propping(Erection Works, RackStrength Strength, double GroundKPa, double BoardMm)
{
    /// <summary>Diameter of the usual prop, a scaffold tube [mm].</summary>
    public const double TubeMm = 48.3;

    /// <summary>Its wall [mm].</summary>
    public const double TubeWallMm = 3.2;

    /// <summary>Greatest lean of a prop from upright [deg].</summary>
    /// <source>judgement, no source: flatter, its foot slides</source>
    public const double MostLeanDeg = 45;

    /// <summary>Most props at one end of a tube.</summary>
    /// <source>judgement, no source: more do not share alike</source>
    public const int MostASide = 3;

    /// <summary>Pull of a rope that is only taken tight [kN].</summary>
    /// <source>judgement, no source: a turnbuckle or a windlass of rope turned by hand</source>
    public const double TightKN = 0.2;

    /// <summary>Share of the ground's pressure that may be put on its surface.</summary>
    /// <source>judgement, no source: topsoil, not the ground at the depth of a footing</source>
    public const double SurfaceShare = 0.5;

    /// <summary>What a stake of 1.2 m holds in firm soil [kN]; from memory, 1 to 2.</summary>
    public const double StakeKN = 1;

    private const double WeightFactor = 1.35;

    // The middle support of two equal spans bears a quarter more than its share.
    private const double ContinuityFactor = 1.25;

    private static readonly MemberSection s_tube = MemberSection.OfRound(TubeMm, TubeWallMm).Thinned();
    private static readonly IReadOnlyList<double> s_boardsMm = [300, 400, 500, PropPlaces.WidestBoardMm];

    /// <summary>The props, from the left end of the rack.</summary>
    public IReadOnlyList<PropPair> Pairs { get; } = PropPlaces.Of(Works.Rack, Works.Footings, BoardMm);

    /// <summary>The props with the smallest boards on which they hold; with the widest where they hold on none.</summary>
    /// <param name="works">The works.</param>
    /// <param name="strength">The checked rack.</param>
    /// <param name="groundKPa">Pressure that may be put on the ground under a footing [kPa].</param>
    public static Propping Of(Erection works, RackStrength strength, double groundKPa)
    {
        var tried = s_boardsMm.Select(board => new Propping(works, strength, groundKPa, board));
        return tried.FirstOrDefault(props => props.Holds) ?? tried.Last();
    }

    /// <summary>Whether the feet lie apart along the row.</summary>
    public bool IsAlong => Pairs[0].IsAlong;

    /// <summary>The prop that is used most, and what it bears.</summary>
    public PropForce Worst => Forces.MaxBy(force => force.AlongKN / ResistanceKN(force.Prop))!;

    /// <summary>Resistance of one usual prop against buckling: unmarked steel, its wall a tenth thin [kN].</summary>
    /// <param name="prop">The prop, pinned at head and foot.</param>
    /// <returns>Resistance [kN].</returns>
    /// <source>EN 1993-1-1:2005, equations 6.47 to 6.50</source>
    public static double ResistanceKN(Prop prop) =>
        FlexuralBuckling.ReductionFactor(SlendernessRatio(prop), s_tube.Curve)
        * s_tube.Frame.AreaMm2
        * SteelGrade.Unmarked.YieldNPerMm2
        / SteelFactors.Recommended.BucklingFactor
        / 1000;

    /// <summary>Relative slenderness of one usual prop.</summary>
    /// <param name="prop">The prop.</param>
    public static double SlendernessRatio(Prop prop) =>
        FlexuralBuckling.SlendernessRatio(prop.LengthMm, s_tube.GyrationYMm, SteelGrade.Unmarked.YieldNPerMm2);

    /// <summary>Props at each end of a tube: so many that none buckles and the boards carry each, three to a side at most.</summary>
    public int ASide =>
        Pairs[0].Legs
        * (int)
            Math.Clamp(
                Math.Ceiling(
                    (
                        Math.Max(
                            Worst.AlongKN / ResistanceKN(Worst.Prop),
                            MostServedKN / (SurfaceKPa * Math.Pow(BoardMm / 1000, 2))
                        ) / Pairs[0].Legs
                    ) - 1e-9
                ),
                1,
                MostOf(BoardMm)
            );

    // More props than one at a place only on the widest boards.
    private static int MostOf(double boardMm) => boardMm < PropPlaces.WidestBoardMm ? 1 : MostASide;

    /// <summary>Force along the prop that bears most [kN].</summary>
    public double MostAlongKN => Worst.AlongKN / ASide;

    /// <summary>What lies on them.</summary>
    public string TubeRole => Tube.Role;

    /// <summary>How long they are, in words.</summary>
    public string LengthsSay
    {
        get
        {
            var lengths = Pairs.SelectMany(pair => pair.Both).Select(prop => prop.LengthMm / 1000).ToList();
            return Invariant($"{lengths.Min():0.00} to {lengths.Max():0.00} m long");
        }
    }

    /// <summary>All props.</summary>
    public int Count => 2 * ASide * Pairs.Count;

    /// <summary>Whether props, boards, the tube on them and their lean all hold.</summary>
    public bool Holds =>
        UseShare <= 1 && TubeUseShare <= 1 && PressureKPa <= SurfaceKPa + 1e-9 && LeanDeg <= MostLeanDeg + 1e-9;

    /// <summary>Use of a prop.</summary>
    public double UseShare => Worst.AlongKN / ASide / ResistanceKN(Worst.Prop);

    /// <summary>Greatest force straight down on the board of one prop, without partial factors [kN].</summary>
    public double BoardKN => MostServedKN / ASide;

    /// <summary>Pressure that may be put on the surface of the ground [kPa].</summary>
    public double SurfaceKPa => SurfaceShare * GroundKPa;

    /// <summary>Pressure under a board [kPa].</summary>
    public double PressureKPa => BoardKN / Math.Pow(BoardMm / 1000, 2);

    /// <summary>Greatest push of the feet of one end's props [kN].</summary>
    public double PushKN => Forces.Max(force => force.PushKN);

    /// <summary>Greatest moment in a tube between its props [kNm].</summary>
    public double MostMomentKNm => Forces.Max(force => force.MomentKNm);

    /// <summary>Stakes behind the feet of one end of a tube, on one side of the pit.</summary>
    public int StakesASide => Math.Max(ASide / Pairs[0].Legs, (int)Math.Ceiling((PushKN / StakeKN) - 1e-9));

    /// <summary>Greatest lean of a prop [deg].</summary>
    public double LeanDeg => Forces.Max(force => force.Prop.LeanDeg);

    /// <summary>Use of the cross tube or rafter that lies on the props, by the first fibre that yields.</summary>
    /// <source>EN 1993-1-1:2005, equation 6.1 for the elastic stress</source>
    public double TubeUseShare
    {
        get
        {
            var tube = Strength.Rules.Section(Tube);
            var yield = Strength.Rules.Grade.YieldNPerMm2 / Strength.Rules.Factors.SectionFactor;
            return Forces.Max(force =>
                ((force.MomentKNm * 1e6 / tube.ElasticModulusYMm3) + (force.InTubeKN * 1000 / tube.Frame.AreaMm2))
                / yield
            );
        }
    }

    /// <summary>Force straight down on all props by the frame's weight, without partial factors [kN].</summary>
    public double WeightKN => Works.FrameKg * Gravity.MPerS2 / 1000;

    /// <summary>Share of what the frame bears that comes on the pair of props that bears most.</summary>
    public double PairShare
    {
        get
        {
            var (places, lengthMm) = (Works.Rack.TubePlacesMm, Works.Rack.Size.LengthMm);
            double Edge(int i) =>
                i == 0 ? 0
                : i == places.Count ? lengthMm
                : (places[i - 1] + places[i]) / 2;
            return Math.Min(
                1,
                ContinuityFactor * Enumerable.Range(0, places.Count).Max(i => Edge(i + 1) - Edge(i)) / lengthMm
            );
        }
    }

    private Member Tube => Works.Rack.Skeleton.Members.First(member => member.Mark == PropPlaces.TubeMark);

    private double MostServedKN => Forces.Max(force => force.ServedKN);

    private IReadOnlyList<PropForce> Forces =>
        field ??= [
            .. from pair in Pairs
            from ropes in RopesOn(pair)
            let most = pair.Carry([.. ropes, .. Still(pair, WeightFactor, Erection.UnfavourableFactor)])
            let served = pair.Carry([
                .. ropes.Select(rope => (rope.AtMm, rope.KN / Erection.UnfavourableFactor)),
                .. Still(pair, 1, 1),
            ])
            from force in (PropForce[])
                [
                    new(pair.Low, most.LowKN, served.LowKN, most.MomentKNm, pair.IsAlong),
                    new(pair.High, most.HighKN, served.HighKN, most.MomentKNm, pair.IsAlong),
                ]
            select force,
        ];

    // Weight, wind from above and all ropes taken tight, spread about the middle of the frame's mass.
    private IEnumerable<(double AtMm, double KN)> Still(PropPair pair, double weightFactor, double windFactor)
    {
        var tight = 4 * Works.RopesASide * GuyRope.UpKN(TightKN, Erection.RopeDeg);
        var all = (weightFactor * (WeightKN + tight)) + (windFactor * Works.PressKN);
        return pair.Spread(Works.CentreMm.YMm, PairShare * all);
    }

    // All ropes of an end on the heads of the tube there; or of a long side, shared by the tubes, on its head of that side.
    private IEnumerable<IReadOnlyList<(double AtMm, double KN)>> RopesOn(PropPair pair)
    {
        var down = GuyRope.UpKN(Works.RopeKN, Erection.RopeDeg);
        var heads = pair.HeadsMm;
        var here = Math.Ceiling((double)Works.RopesASide / Pairs.Count);
        return
        [
            [.. heads.Select(head => (head, Works.RopesASide * down / heads.Count))],
            [(heads[0], here * down)],
            [(heads[^1], here * down)],
        ];
    }
}

using Shaduf.Ground;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the place of footings: how deep it freezes, and ditches or edges near them.</summary>
internal static class PlaceFindings
{
    // Ground freezes to a hand's breadth or two where the coldest month stays mild: judgement, no source.
    private const double MildDegC = 5;

    // Where nobody knows the record low: judgement, as low and as near the equator as this it does not freeze.
    private const double WarmLatitudeDeg = 25;
    private const double WarmElevationM = 1500;

    private const double SteepestShare = 0.2;

    // Nearer than twice the width of a footing the ground may give way towards an edge: judgement.
    private const double EdgeRatio = 2;

    /// <summary>The findings.</summary>
    /// <param name="site">The site.</param>
    /// <param name="block">One footing.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(SiteBrief site, FootingBlock block) =>
        [Frost(site, block), Edge(site, block)];

    /// <summary>The finding on the fall of the ground under a rack.</summary>
    /// <param name="ground">The ground.</param>
    /// <returns>The finding.</returns>
    public static Finding Slope(RackGround ground)
    {
        var fall = double.Hypot(ground.AlongShare, ground.BackShare);
        return Finding.AtMost(
            "ground/slope",
            fall * 100,
            SteepestShare * 100,
            "%",
            fall == 0 ? "the ground under the racks is level, by the brief"
                : fall <= SteepestShare ? Invariant($"the ground under a rack falls {fall * 100:0} %")
                : Invariant(
                    $"the ground under a rack falls {fall * 100:0} %: steeper than 1 in 5 the ground itself may slide, and its lower side holds a footing less than is presumed. Cut level terraces with a wall and a drain, or have a geotechnical design made"
                ),
            "limits of the method, judgement"
        );
    }

    private static Finding Frost(SiteBrief site, FootingBlock block)
    {
        const string Source =
            "footings below the frost: common practice; where it freezes little: judgement, no source";
        var baseM = block.DepthMm / 1000;
        if (site.FrostM is { } frost)
        {
            return Finding.AtLeast(
                "ground/frost",
                baseM,
                frost,
                "m",
                frost == 0 ? "the ground never freezes"
                    : baseM >= frost
                        ? Invariant(
                            $"the ground freezes {frost:0.00} m deep, and the footings stand {baseM:0.00} m deep"
                        )
                    : Invariant(
                        $"the ground freezes {frost:0.00} m deep, and frost lifts footings that stand only {baseM:0.00} m deep: at least {frost:0.00} m, their sides smooth"
                    ),
                Source
            );
        }

        var (status, says) = Guessed(site, baseM);
        return new("ground/frost", status, says, null, null, "", Source);
    }

    private static (FindingStatus Status, string Says) Guessed(SiteBrief site, double baseM)
    {
        var means = site.Months.Select(month => month.MeanDegC).ToList();
        var coldest = means.Contains(null) ? null : means.Min();
        return (site.RecordLowDegC, coldest) switch
        {
            (>= 0, _) => (FindingStatus.Holds, "it never freezes there"),
            (null, _) when Math.Abs(site.LatitudeDeg) < WarmLatitudeDeg && site.ElevationM < WarmElevationM => (
                FindingStatus.Look,
                "the coldest air on record is unknown; so near the equator and so low the ground is taken as never frozen: ask the neighbours"
            ),
            (_, >= MildDegC) => (
                FindingStatus.Look,
                Invariant(
                    $"it freezes in some nights, but the coldest month's mean is {coldest:0.#} degC: frost is taken to stay well above the footings' base at {baseM:0.00} m. Ask how deep pipes lie there, and write frostDepth"
                )
            ),
            _ => (
                FindingStatus.Unchecked,
                "it freezes there, and nobody knows how deep: frost lifts footings that do not reach below it. Ask how deep pipes lie there, and write frostDepth"
            ),
        };
    }

    private static Finding Edge(SiteBrief site, FootingBlock block)
    {
        const string Source = "EN 1997-1:2004, 6.5.2.2 asks for it; twice the width: judgement, no source";
        var neededM = EdgeRatio * Math.Min(block.LengthMm, block.WidthMm) / 1000;
        return site.EdgeM is { } edge
            ? Finding.AtLeast(
                "ground/edge",
                edge,
                neededM,
                "m",
                edge >= neededM
                    ? Invariant($"the nearest ditch or edge is {edge:0.0} m from a footing")
                    : Invariant(
                        $"a ditch, bank or edge {edge:0.0} m from a footing: the ground may give way towards it, and what is presumed of level ground does not count. Keep {neededM:0.0} m, twice the width of a footing, or have a geotechnical design made"
                    ),
                Source
            )
            : new(
                "ground/edge",
                FindingStatus.Look,
                Invariant(
                    $"nobody said how near a ditch, bank or edge is: none is taken within {neededM:0.0} m of a footing. Walk round the pegs, and write nearestEdge"
                ),
                null,
                neededM,
                "m",
                Source
            );
    }
}

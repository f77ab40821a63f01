using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>One tap stand as built: apron, post and soakaway.</summary>
/// <param name="Count">How many.</param>
/// <param name="ConcreteM3">Concrete of one [m³].</param>
/// <param name="WasteLPerDay">Waste water of one [L/d].</param>
/// <param name="WallM2">Wall of its soakaway [m²].</param>
/// <param name="PitM">Depth of a round pit below its inlet [m]; 0 when a trench is dug.</param>
/// <param name="TrenchM">Length of a soakage trench [m]; 0 when a pit is dug.</param>
/// <param name="DigM3">Digging of the soakaway of one [m³].</param>
/// <param name="StoneM3">Stone that fills it [m³].</param>
public sealed record TapStands(
    int Count,
    double ConcreteM3,
    double WasteLPerDay,
    double WallM2,
    double PitM,
    double TrenchM,
    double DigM3,
    double StoneM3
)
{
    /// <summary>Side of the apron [m].</summary>
    public const double ApronM = 2.0;

    /// <summary>Thickness of the apron [m].</summary>
    public const double SlabM = 0.10;

    /// <summary>Diameter of a pit [m].</summary>
    public const double PitDiameterM = 1.2;

    /// <summary>Width of a soakage trench, and depth of its wall below the inlet [m].</summary>
    public const double SoakM = 0.6;

    // Kerb and post of concrete, depth of the drain, spill and rain on the apron; judgement and common practice, no source.
    /// <summary>Width of the kerb round the apron [m].</summary>
    public const double KerbWidthM = 0.10;

    /// <summary>Height of the kerb above the apron [m].</summary>
    public const double KerbHeightM = 0.075;

    /// <summary>Side of the post that holds the tap [m].</summary>
    public const double PostM = 0.30;

    /// <summary>Height of the post [m].</summary>
    public const double PostHeightM = 1.2;

    /// <summary>Height of the tap above the apron [m].</summary>
    public const double TapM = 0.60;

    /// <summary>Bore of the taps and of the pipe up the post [mm].</summary>
    public const double TapMm = 20;

    /// <summary>Outside diameter of the drain, least [mm].</summary>
    public const double DrainMm = 63;

    /// <summary>Fall of apron and drain, one in so many.</summary>
    public const double FallNumber = 50;

    /// <summary>Depth of the drain's inlet to the soakaway [m].</summary>
    public const double InletM = 0.4;

    private const double KerbM2 = KerbWidthM * KerbHeightM;
    private const double PostM3 = PostM * PostM * PostHeightM;
    private const double WasteShare = 0.10;
    private const double RainMmPerDay = 10;
    private const double DeepestPitM = 2.0;

    /// <summary>The tap stands of a brief.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="demand">The demand.</param>
    /// <returns>The stands; null without taps.</returns>
    public static TapStands? Of(Brief brief, DemandYear demand)
    {
        var count = brief.Taps?.Taps.Count(tap => !tap.IsManifold) ?? 0;
        if (count == 0)
        {
            return null;
        }

        var wasteLPerDay = (WasteShare * demand.DrinkingM3PerDay * 1000 / count) + (RainMmPerDay * ApronM * ApronM);
        var wallM2 = Soakaway.WallM2(wasteLPerDay, PipeGround.Of(brief.Site.Soil).SoakageMmPerDay);
        var pitM = Soakaway.PitDepthM(wallM2, PitDiameterM);
        var isPit = pitM <= DeepestPitM;
        var trenchM = isPit ? 0 : Soakaway.TrenchM(wallM2, SoakM);
        var soakM2 = isPit ? Math.PI / 4 * PitDiameterM * PitDiameterM : SoakM * trenchM;
        var depthM = isPit ? pitM : SoakM;
        return new(
            count,
            (ApronM * ApronM * SlabM) + (4 * ApronM * KerbM2) + PostM3,
            wasteLPerDay,
            wallM2,
            isPit ? pitM : 0,
            trenchM,
            soakM2 * (depthM + InletM),
            soakM2 * depthM
        );
    }

    /// <summary>The soakaway in words.</summary>
    public string SoakawayText =>
        PitM > 0
            ? Invariant($"pit of {PitDiameterM:0.0} m, {PitM:0.0} m deep below the inlet")
            : Invariant($"trench {SoakM:0.0} m wide, {SoakM:0.0} m deep below the inlet, {TrenchM:0.0} m long");

    /// <summary>Finding of the drainage.</summary>
    /// <returns>The finding.</returns>
    public Finding Drainage() =>
        new(
            "taps/drainage",
            FindingStatus.Look,
            $"soakaway of each stand, by soil and not by a soakage test: {SoakawayText}; 10 m from the stand, 30 m from the source, bottom 1.5 m above the water in the ground",
            WallM2,
            null,
            "m2 of wall",
            "WHO 1992, table 5.4 (from memory); waste 10 % of the draw and 10 mm of rain on the apron: judgement"
        );
}

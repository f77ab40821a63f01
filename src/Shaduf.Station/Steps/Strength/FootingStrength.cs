using Shaduf.Ground;

namespace Shaduf.Station;

/// <summary>
/// A block under each column, checked. It stands against turning over by the pressure of the ground at its sides, or by
/// its weight alone; either is enough, and the one that is used less is taken.
/// </summary>
/// <param name="Soil">The soil.</param>
/// <param name="Block">The block.</param>
/// <param name="Ground">Loads with partial factors: least or greatest weight with the wind.</param>
/// <param name="Service">Loads without partial factors.</param>
public sealed record FootingStrength(
    SoilClass Soil,
    FootingBlock Block,
    IReadOnlyList<FootLoad> Ground,
    IReadOnlyList<FootLoad> Service
)
{
    // What is taken of untested ground for Broms: judgement.
    internal const double ClayKPa = 40;
    internal const double SandDeg = 30;
    internal const double SandKNPerM3 = 17;

    private double SideM => Block.WidthMm / 1000;

    private double DepthM => Block.DepthMm / 1000;

    /// <summary>Weight of a block in dry ground [kN].</summary>
    public double WeightKN => Uplift.WeightKN(Block.ConcreteM3, 0);

    /// <summary>Weight of a block with water up to the ground [kN].</summary>
    public double DrownedKN => Uplift.WeightKN(Block.ConcreteM3, Block.BlockM3 / Block.ConcreteM3);

    /// <summary>The load that pulls hardest.</summary>
    public FootLoad Pulling => Ground.MinBy(load => load.DownKN)!;

    /// <summary>Pull of the wind that the weight of the rack does not hold [kN].</summary>
    public double PullKN => Math.Max(0, -Pulling.DownKN);

    /// <summary>The load for which a block must go deepest.</summary>
    public FootLoad Turning => Service.MaxBy(NeededM)!;

    /// <summary>Depth that a block of this side needs to stand by its sides [m].</summary>
    public double NeededDepthM => Service.Max(NeededM);

    /// <summary>How far a block is used when it stands by its sides.</summary>
    public double SidesShare => NeededDepthM / DepthM;

    /// <summary>How far a block is used when it stands by its weight; infinite when nothing presses it down.</summary>
    public double WeightShare => Math.Max(Ground.Max(TippingShare), Service.Max(OffMiddleShare));

    /// <summary>Whether it stands by its sides.</summary>
    public bool IsHeldBySides => SidesShare <= 1 || SidesShare <= WeightShare;

    /// <summary>How far a block is used against turning over.</summary>
    public double TurningShare => SidesShare <= 1 ? SidesShare : Math.Min(SidesShare, WeightShare);

    /// <summary>Largest pressure under a block [kPa]: straight down where its sides take the moment, off the middle where its weight does.</summary>
    public double BearingKPa => Service.Max(IsHeldBySides || WeightShare > 1 ? StraightKPa : OffMiddleKPa);

    /// <summary>Whether it holds.</summary>
    public bool Holds =>
        PullKN <= Uplift.HoldingFactor * WeightKN && TurningShare <= 1 && BearingKPa <= Soil.BearingKPa;

    /// <summary>A block under the columns of a rack in a gust.</summary>
    /// <param name="rack">The analysed rack.</param>
    /// <param name="soil">The soil.</param>
    /// <param name="block">The block.</param>
    /// <param name="gustKNPerM2">Gust [kN/m2].</param>
    /// <returns>The checked block.</returns>
    public static FootingStrength Of(RackStrength rack, SoilClass soil, FootingBlock block, double gustKNPerM2) =>
        new(
            soil,
            block,
            FootLoad.Of(rack, rack.Combinations.Ground, gustKNPerM2),
            FootLoad.Of(rack, rack.Combinations.Service, gustKNPerM2)
        );

    /// <summary>The class of a kind of soil: the firmer rock is not presumed, and untested ground is the weakest.</summary>
    /// <param name="soil">Kind of soil; null when unknown.</param>
    /// <returns>The class.</returns>
    public static SoilClass ClassOf(SoilKind? soil) =>
        SoilClass.Of(
            soil switch
            {
                SoilKind.Rock => 2,
                SoilKind.Gravel => 3,
                SoilKind.Sand => 4,
                _ => 5,
            }
        );

    /// <summary>Depth by Broms with a safety of 2, for comparison [m]; null in rock.</summary>
    public double? BromsDepthM()
    {
        const double Safety = ShortPile.UsualSafetyFactor;
        return Soil.Number switch
        {
            <= 2 => null,
            5 => Service.Max(load =>
                ShortPile.ClayDepthM(Safety * load.SideKN, Safety * load.MomentKNm, SideM, ClayKPa)
            ),
            _ => Service.Max(load =>
                ShortPile.SandDepthM(Safety * load.SideKN, Safety * load.MomentKNm, SideM, SandDeg, SandKNPerM3)
            ),
        };
    }

    private double NeededM(FootLoad load) =>
        PierInSoil.FreeDepthM(load.SideKN, load.MomentKNm, SideM * Math.Sqrt(2), Soil.LateralKNPerM3);

    // Moment about the toe over what the least weight holds against it.
    private double TippingShare(FootLoad load)
    {
        var downKN = load.DownKN + (Uplift.HoldingFactor * WeightKN);
        var (along, across) = load.AtKNm(DepthM);
        return downKN > 0 ? Math.Max(along, across) / (downKN * SideM / 2) : double.PositiveInfinity;
    }

    // EN 1997-1, 6.5.4: no further off the middle than a third of the side.
    private double OffMiddleShare(FootLoad load)
    {
        var downKN = load.DownKN + WeightKN;
        var (along, across) = load.AtKNm(DepthM);
        return downKN > 0 ? Math.Max(along, across) / (downKN * SideM / 3) : double.PositiveInfinity;
    }

    private double StraightKPa(FootLoad load) => Math.Max(0, load.DownKN + WeightKN) / (SideM * SideM);

    private double OffMiddleKPa(FootLoad load)
    {
        var downKN = load.DownKN + WeightKN;
        var (along, across) = load.AtKNm(DepthM);
        return EccentricBearing.MeyerhofKPa(downKN, along / downKN, across / downKN, SideM, SideM);
    }
}

using Shaduf.Ground;

namespace Shaduf.Station;

/// <summary>Pressure under a footing against what the ground bears.</summary>
/// <param name="Load">The load.</param>
/// <param name="PressureKPa">Pressure [kPa].</param>
/// <param name="BearsKPa">What the ground bears [kPa].</param>
/// <param name="IsTested">Whether that is reckoned from a tested strength; else it is presumed or a report's.</param>
public sealed record BearingUse(FootLoad Load, double PressureKPa, double BearsKPa, bool IsTested)
{
    /// <summary>How far the ground is used.</summary>
    public double UseShare => PressureKPa == 0 ? 0 : PressureKPa / BearsKPa;
}

/// <summary>
/// A footing under each column, or under several, checked. It stands against turning over by the pressure of the ground
/// at its sides, or by its weight alone; either is enough, and the one that is used less is taken.
/// </summary>
/// <param name="Soil">The ground.</param>
/// <param name="Block">The footing: its length along the row, its width across.</param>
/// <param name="Ground">Loads with partial factors: least or greatest weight with the wind.</param>
/// <param name="Service">Loads without partial factors.</param>
public sealed record FootingStrength(
    FootingGround Soil,
    FootingBlock Block,
    IReadOnlyList<FootLoad> Ground,
    IReadOnlyList<FootLoad> Service
)
{
    // What is taken of untested ground for Broms: judgement.
    internal const double ClayKPa = 40;
    internal const double SandDeg = 30;
    internal const double SandKNPerM3 = 17;

    /// <summary>What the country's annex sets.</summary>
    public Steel.NationalChoices National { get; init; } = Steel.NationalChoices.Recommended;

    /// <summary>Weight of a footing that may be counted on against the wind, with its partial factor [kN].</summary>
    public double HeldKN => National.LeastWeightFactor * WeightKN;

    private double AlongM => Block.LengthMm / 1000;

    private double AcrossM => Block.WidthMm / 1000;

    private double SideM => Math.Min(AlongM, AcrossM);

    private double DepthM => Block.DepthMm / 1000;

    private double AreaM2 => AlongM * AcrossM;

    private double DryKN => Uplift.WeightKN(Block.ConcreteM3, 0);

    /// <summary>Weight of a footing that may be counted on, what stands in water lighter [kN].</summary>
    public double WeightKN => Uplift.WeightKN(Block.ConcreteM3, Soil.DrownedShare(Block));

    /// <summary>Weight of a footing with water up to the ground [kN].</summary>
    public double DrownedKN => Uplift.WeightKN(Block.ConcreteM3, Block.BlockM3 / Block.ConcreteM3);

    /// <summary>The load that pulls hardest.</summary>
    public FootLoad Pulling => Ground.MinBy(load => load.DownKN)!;

    /// <summary>Pull of the wind that the weight of what stands on it does not hold [kN].</summary>
    public double PullKN => Math.Max(0, -Pulling.DownKN);

    /// <summary>The load for which a footing must go deepest.</summary>
    public FootLoad Turning => Service.MaxBy(NeededM)!;

    /// <summary>Depth that a footing of this side needs to stand by its sides [m].</summary>
    public double NeededDepthM => Service.Max(NeededM);

    /// <summary>How far a footing is used when it stands by its sides.</summary>
    public double SidesShare => NeededDepthM / DepthM;

    /// <summary>The load that turns it hardest about its edge.</summary>
    public FootLoad Tipped => Ground.MaxBy(TippingShare)!;

    /// <summary>How far a footing is used when it stands by its weight; infinite when nothing presses it down.</summary>
    public double WeightShare => Math.Max(Ground.Max(TippingShare), Service.Max(OffMiddleShare));

    /// <summary>Whether it stands by its sides.</summary>
    public bool IsHeldBySides => SidesShare <= 1 || SidesShare <= WeightShare;

    /// <summary>How far a footing is used against turning over.</summary>
    public double TurningShare => SidesShare <= 1 ? SidesShare : Math.Min(SidesShare, WeightShare);

    /// <summary>The load that pushes it along hardest.</summary>
    public FootLoad Pushed => Slid.MaxBy(SlidingShareOf)!;

    /// <summary>How far base and sides are used against being pushed along, where the weight stands against turning over.</summary>
    public double SlidingShare => Slid.Max(SlidingShareOf);

    /// <summary>What base and sides hold against being pushed along under the load that pushes hardest [kN].</summary>
    public double SlideHeldKN => SlideKN(Pushed);

    /// <summary>The largest use of the ground under it.</summary>
    public BearingUse Bearing => Uses().MaxBy(use => use.UseShare)!;

    /// <summary>Whether it holds.</summary>
    public bool Holds =>
        DepthM >= Soil.FrostM
        && PullKN <= HeldKN
        && TurningShare <= 1
        && (SidesShare <= 1 || SlidingShare <= 1)
        && Uses().All(use => use.UseShare <= 1);

    /// <summary>How far it is used by what uses it most.</summary>
    public double UseShare =>
        new[]
        {
            PullKN / (Uplift.HoldingFactor * WeightKN),
            TurningShare,
            SidesShare <= 1 ? 0 : SlidingShare,
            Bearing.UseShare,
        }.Max();

    /// <summary>Footings under the columns of a rack in a gust.</summary>
    /// <param name="rack">The analysed rack.</param>
    /// <param name="soil">The ground.</param>
    /// <param name="block">One footing.</param>
    /// <param name="gustKNPerM2">Gust [kN/m2].</param>
    /// <param name="form">Shape of the footings.</param>
    /// <returns>The checked footings.</returns>
    public static FootingStrength Of(
        RackStrength rack,
        FootingGround soil,
        FootingBlock block,
        double gustKNPerM2,
        FootingForm form = FootingForm.Block
    )
    {
        var groups = FootGroups.Of(rack.Rack.Skeleton, form);
        return new(
            soil,
            block,
            FootLoad.Of(rack, rack.Combinations.Ground, gustKNPerM2, groups),
            FootLoad.Of(rack, rack.Combinations.Service, gustKNPerM2, groups)
        )
        {
            National = rack.National,
        };
    }

    /// <summary>Depth by Broms with a safety of 2, for comparison [m]; null in rock, and where the depth itself is by Broms.</summary>
    public double? BromsDepthM()
    {
        const double Safety = ShortPile.UsualSafetyFactor;
        return Soil switch
        {
            { IsTested: true } or { Class.Number: <= 2 } => null,
            { Class.Number: 5 } => Service.Max(load =>
                ShortPile.ClayDepthM(Safety * load.SideKN, Safety * load.MomentKNm, SideM, ClayKPa)
            ),
            _ => Service.Max(load =>
                ShortPile.SandDepthM(Safety * load.SideKN, Safety * load.MomentKNm, SideM, SandDeg, SandKNPerM3)
            ),
        };
    }

    /// <summary>Largest design pressure straight under it [kPa], for the concrete.</summary>
    public double DesignKPa =>
        Ground.Max(load => Math.Max(0, load.DownKN) + (National.PermanentFactor * DryKN)) / AreaM2;

    /// <summary>Largest design pressure under it, off its middle where its weight takes the moment [kPa].</summary>
    public double PeakKPa
    {
        get
        {
            var (upright, weightKN) = (IsHeldUpright, National.PermanentFactor * DryKN);
            return Ground.Max(load =>
                load.DownKN + weightKN <= 0 ? 0
                : PartOf(load, weightKN, upright) is { } part ? (load.DownKN + weightKN) / (part.WidthM * part.LengthM)
                : double.PositiveInfinity
            );
        }
    }

    private bool IsHeldUpright => IsHeldBySides || WeightShare > 1;

    private double NeededM(FootLoad load) => Soil.SideDepthM(load, SideM);

    // Moment about the edge over what the least weight holds against it.
    private double TippingShare(FootLoad load) => OverturningShare(load, load.DownKN + HeldKN, 2);

    // EN 1997-1, 6.5.4: no further off the middle than a third of the side.
    private double OffMiddleShare(FootLoad load) => OverturningShare(load, load.DownKN + WeightKN, 3);

    private double OverturningShare(FootLoad load, double downKN, double part)
    {
        var (along, across) = load.AtKNm(DepthM);
        return downKN > 0
            ? Math.Max(along / (downKN * AcrossM / part), across / (downKN * AlongM / part))
            : double.PositiveInfinity;
    }

    // Loads that go with the resistance: with partial factors where the strength was tested.
    private IReadOnlyList<FootLoad> Slid => Soil.IsTested ? Ground : Service;

    private double SlidingShareOf(FootLoad load) => load.SideKN == 0 ? 0 : load.SideKN / SlideKN(load);

    // The base, and the presumed pressure on one side, which is allowed as it is.
    private double SlideKN(FootLoad load)
    {
        var downKN = Math.Max(0, load.DownKN + HeldKN);
        var sides = Soil.LateralKNPerM3 * DepthM * DepthM * SideM / 2;
        return sides
            + (Soil.IsTested ? Soil.TestedSlideKN(downKN, AreaM2) : Sliding.PresumedKN(downKN, AreaM2, Soil.Class));
    }

    private IEnumerable<BearingUse> Uses()
    {
        var upright = IsHeldUpright;
        if (Soil.ReportKPa is not null || !Soil.IsTested || Soil.IsFelt)
        {
            foreach (var load in Service)
            {
                yield return new(load, PressureKPa(load, DryKN, upright), Soil.AllowedKPa, false);
            }
        }

        if (Soil.IsTested && Soil.ReportKPa is null)
        {
            foreach (var load in Ground)
            {
                // The weight of the footing itself: as it is, and as it may be.
                foreach (var factor in new[] { 1, National.PermanentFactor })
                {
                    yield return Tested(load, factor * DryKN, upright);
                }
            }
        }
    }

    private BearingUse Tested(FootLoad load, double weightKN, bool upright)
    {
        var downKN = load.DownKN + weightKN;
        if (!(downKN > 0))
        {
            return new(load, 0, 0, true);
        }

        if (PartOf(load, weightKN, upright) is not var (width, length))
        {
            return new(load, double.PositiveInfinity, 0, true);
        }

        var part = new PadLoad(
            width,
            length,
            downKN,
            upright ? 0 : Math.Abs(load.AcrossKN),
            upright ? 0 : Math.Abs(load.AlongKN)
        );
        return new(load, downKN / part.AreaM2, Soil.ResistanceKPa(part, DepthM), true);
    }

    // The part of the base whose middle is under the load; null when next to nothing is left.
    private (double WidthM, double LengthM)? PartOf(FootLoad load, double weightKN, bool upright)
    {
        var downKN = load.DownKN + weightKN;
        var (along, across) = upright ? (0, 0) : load.AtKNm(DepthM);
        var (width, length) = (AcrossM - (2 * along / downKN), AlongM - (2 * across / downKN));
        return width < 0.05 || length < 0.05 ? null : (width, length);
    }

    private double PressureKPa(FootLoad load, double weightKN, bool upright)
    {
        var downKN = load.DownKN + weightKN;
        if (upright)
        {
            return Math.Max(0, downKN) / AreaM2;
        }

        var (along, across) = load.AtKNm(DepthM);
        return EccentricBearing.MeyerhofKPa(downKN, along / downKN, across / downKN, AcrossM, AlongM);
    }
}

using Shaduf.Ground;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The ground that footings stand in: what was tested of it, else what may be presumed.</summary>
/// <param name="Class">Class with presumed values.</param>
/// <param name="WaterM">Depth of the highest water below the ground [m]; null when unknown.</param>
public sealed record FootingGround(SoilClass Class, double? WaterM)
{
    /// <summary>A picket pushed in further than this is in loose ground [mm].</summary>
    public const double LooseMm = 200;

    // Friction and weights of loose round sand, the low end of the table; saturated with a void ratio of 0.8.
    private const double LooseDeg = 27;
    private const double LooseKNPerM3 = 14.5;
    private const double LooseDrownedKNPerM3 = LooseKNPerM3 + ((0.8 / 1.8) - 1) * SoilStrength.WaterKNPerM3;

    /// <summary>How deep it freezes [m]; 0 where it does not, or nobody said.</summary>
    public double FrostM { get; init; }

    /// <summary>Friction and cohesion where they were tested.</summary>
    public SoilStrength? Grain { get; init; }

    /// <summary>Undrained strength of clay where it was tested [kPa].</summary>
    public double? ClayKPa { get; init; }

    /// <summary>Allowable pressure of a soil report [kPa].</summary>
    public double? ReportKPa { get; init; }

    /// <summary>Whether a picket found it loose.</summary>
    public bool IsLoose { get; init; }

    /// <summary>Whether its strength is only felt, with a thumb or a picket: the presumed values are kept to as well.</summary>
    public bool IsFelt { get; init; }

    /// <summary>Factor on the presumed lateral bearing: 2 for what may lean by a finger's width, as light columns may.</summary>
    /// <source>IBC 2018, 1806.3.4</source>
    public double LateralFactor { get; init; } = 1;

    /// <summary>Presumed pressure at the sides for each metre of depth [kN/m3].</summary>
    public double LateralKNPerM3 => LateralFactor * Class.LateralKNPerM3;

    /// <summary>How it was tested, in words; empty when it was not.</summary>
    public string Test { get; init; } = "";

    /// <summary>Weight of the moist ground [kN/m3].</summary>
    public double WeightKNPerM3 { get; init; } = Class.Number == 5 ? 18 : 17;

    /// <summary>Its weight below water [kN/m3].</summary>
    public double DrownedKNPerM3 { get; init; } = (Class.Number == 5 ? 18 : 17) - SoilStrength.WaterKNPerM3;

    /// <summary>Whether a strength was tested.</summary>
    public bool IsTested => Grain is not null || ClayKPa is not null;

    /// <summary>What it is.</summary>
    public string Name => Test.Length > 0 ? $"{Class.Name}; {Test}" : Class.Name;

    /// <summary>Pressure that may be put on it without a test of its strength [kPa]: the report's, else the presumed.</summary>
    public double AllowedKPa => ReportKPa ?? Class.BearingKPa;

    /// <summary>The ground of a site.</summary>
    /// <param name="site">The site.</param>
    /// <returns>The ground.</returns>
    public static FootingGround Of(SiteBrief site)
    {
        var ground = new FootingGround(ClassOf(site.Soil), site.GroundwaterM) { FrostM = site.FrostM ?? 0 };
        return site.SoilTest is { } test ? ground.Tested(test) : ground;
    }

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

    /// <summary>Share of a block's concrete that stands in water; all that is below ground where no one knows.</summary>
    /// <param name="block">The block.</param>
    /// <returns>The share.</returns>
    public double DrownedShare(FootingBlock block)
    {
        var depthM = block.DepthMm / 1000;
        var wet = WaterM is { } water ? Math.Max(0, depthM - water) / depthM : 1;
        return wet * block.BlockM3 / block.ConcreteM3;
    }

    /// <summary>Pressure of the ground beside a base [kPa]; water that no one knows is taken at the base.</summary>
    /// <param name="depthM">Depth of the base [m].</param>
    /// <returns>Pressure [kPa].</returns>
    public double SurchargeKPa(double depthM)
    {
        var dryM = Math.Min(depthM, WaterM ?? depthM);
        return (WeightKNPerM3 * dryM) + (DrownedKNPerM3 * (depthM - dryM));
    }

    /// <summary>Weight of the ground under a base [kN/m3]: below water where it comes within a width of it, or no one knows.</summary>
    /// <param name="depthM">Depth of the base [m].</param>
    /// <param name="widthM">Width of the base [m].</param>
    /// <returns>Weight [kN/m3].</returns>
    public double BelowKNPerM3(double depthM, double widthM) =>
        WaterM >= depthM + widthM ? WeightKNPerM3 : DrownedKNPerM3;

    /// <summary>
    /// Depth at which a block stands against a side load [m]: by Broms with a safety of 2 where the strength was tested,
    /// else by the presumed lateral bearing; the deeper where it was only felt.
    /// </summary>
    /// <param name="load">The load, without partial factors.</param>
    /// <param name="widthM">Smaller side of the block [m].</param>
    /// <returns>Depth [m].</returns>
    public double SideDepthM(FootLoad load, double widthM)
    {
        var presumed =
            IsTested && !IsFelt
                ? 0
                : PierInSoil.FreeDepthM(load.SideKN, load.MomentKNm, widthM * Math.Sqrt(2), LateralKNPerM3);
        var grain = Grain is { } tested
            ? SideFriction.TopsoilM
                + Broms(load, (f, m) => ShortPile.SandDepthM(f, m, widthM, tested.FrictionDeg, SidesKNPerM3))
            : 0;
        var clay = ClayKPa is { } cohesion ? Broms(load, (f, m) => ShortPile.ClayDepthM(f, m, widthM, cohesion)) : 0;
        return Math.Max(presumed, Math.Max(grain, clay));
    }

    /// <summary>Pressure at which the ground gives way under a part of a base, divided by the factor on resistance [kPa]; only where the strength was tested.</summary>
    /// <param name="load">The part and its load, with partial factors.</param>
    /// <param name="depthM">Depth of the base [m].</param>
    /// <returns>Design resistance [kPa].</returns>
    /// <source>EN 1997-1:2004, annex D and table A.5, design approach 2</source>
    public double ResistanceKPa(PadLoad load, double depthM)
    {
        var surcharge = SurchargeKPa(depthM);
        var below = BelowKNPerM3(depthM, Math.Min(load.WidthM, load.LengthM));
        var least = double.PositiveInfinity;
        if (Grain is { } grain)
        {
            var strength = (IsLoose ? grain.Local : grain) with { WeightKNPerM3 = below };
            least = BearingResistance.DrainedKPa(load, strength, surcharge);
        }

        if (ClayKPa is { } clay)
        {
            least = Math.Min(least, BearingResistance.UndrainedKPa(load, clay, surcharge));
        }

        return least / BearingResistance.ResistanceFactor;
    }

    /// <summary>Side load that the base holds where the strength was tested, with its factor [kN].</summary>
    /// <param name="downKN">Force straight down [kN].</param>
    /// <param name="areaM2">The base [m2].</param>
    /// <returns>Design resistance [kN].</returns>
    public double TestedSlideKN(double downKN, double areaM2) =>
        Math.Min(
            Grain is { } grain ? Sliding.DrainedKN(downKN, grain.FrictionDeg) : double.PositiveInfinity,
            ClayKPa is { } clay ? Sliding.UndrainedKN(downKN, areaM2, clay) : double.PositiveInfinity
        ) / Sliding.ResistanceFactor;

    // Beside a block; below water where it is not known to be deeper.
    private double SidesKNPerM3 => WaterM is { } water && water >= PierInSoil.DeepestM ? WeightKNPerM3 : DrownedKNPerM3;

    private static double Broms(FootLoad load, Func<double, double, double> depth) =>
        depth(ShortPile.UsualSafetyFactor * load.SideKN, ShortPile.UsualSafetyFactor * load.MomentKNm);

    private FootingGround Tested(SoilTestBrief test)
    {
        var isLoose = test.PicketMm > LooseMm;
        var weight = test.WeightKNPerM3 ?? (isLoose ? LooseKNPerM3 : WeightKNPerM3);
        var friction = test.FrictionDeg ?? (isLoose ? LooseDeg : null);
        var clay = test.UndrainedKPa ?? (test.Thumb is { } thumb ? OfThumbKPa(thumb) : null);
        return this with
        {
            Grain = friction is { } deg ? new(deg, test.CohesionKPa ?? 0, weight) : null,
            ClayKPa = clay,
            ReportKPa = test.BearingKPa,
            IsLoose = isLoose,
            IsFelt = test is { FrictionDeg: null, UndrainedKPa: null } && (friction ?? clay) is not null,
            WeightKNPerM3 = weight,
            DrownedKNPerM3 =
                isLoose && test.WeightKNPerM3 is null ? LooseDrownedKNPerM3 : weight - SoilStrength.WaterKNPerM3,
            Test = string.Join(", ", Words(test, friction, clay)),
        };
    }

    private static IEnumerable<string> Words(SoilTestBrief test, double? friction, double? clay)
    {
        if (friction is not null)
        {
            yield return test.FrictionDeg is null
                ? Invariant($"loose, for a picket went in {test.PicketMm:0} mm: friction {friction:0.#} deg taken")
                : Invariant($"friction {friction:0.#} deg, cohesion {test.CohesionKPa ?? 0:0.#} kPa by test");
        }

        if (clay is not null)
        {
            yield return test.UndrainedKPa is null
                ? Invariant(
                    $"{test.Thumb!.Value.ToString().ToLowerInvariant()} under a thumb: {clay:0.#} kPa undrained taken"
                )
                : Invariant($"{clay:0.#} kPa undrained by test");
        }

        if (test.BearingKPa is { } report)
        {
            yield return Invariant($"{report:0} kPa allowed by a soil report");
        }
    }

    // The low ends of soft, firm and stiff clay; from memory.
    private static double OfThumbKPa(ThumbTest thumb) =>
        thumb switch
        {
            ThumbTest.Soft => 20,
            ThumbTest.Firm => 40,
            _ => 75,
        };
}

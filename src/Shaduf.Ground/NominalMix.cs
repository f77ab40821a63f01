using System.Reflection;
using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>What goes into a volume of finished concrete.</summary>
/// <param name="CementM3">Cement, loose [m3].</param>
/// <param name="CementKg">Cement [kg].</param>
/// <param name="BagCount">Bags of 50 kg, not rounded.</param>
/// <param name="SandM3">Sand, loose and dry [m3].</param>
/// <param name="StoneM3">Stone, loose [m3].</param>
/// <param name="WaterLitres">Water, the damp of the sand included [L].</param>
public sealed record MixQuantities(
    double CementM3,
    double CementKg,
    double BagCount,
    double SandM3,
    double StoneM3,
    double WaterLitres
)
{
    /// <summary>The same parts for another volume, with an allowance for waste.</summary>
    /// <param name="volumeFactor">How many times these quantities: m3 of concrete when these are for 1 m3, 0 to 10000.</param>
    /// <param name="wasteShare">Allowance for waste, 0 to 0.5; 0.05 is usual.</param>
    /// <returns>The quantities.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Proportion; allowance for waste common practice, no source</source>
    public MixQuantities Times(double volumeFactor, double wasteShare)
    {
        Within.Require(volumeFactor, 0, 10_000, "");
        Within.Require(wasteShare, 0, 0.5, "");
        var factor = volumeFactor * (1 + wasteShare);
        return new(
            CementM3 * factor,
            CementKg * factor,
            BagCount * factor,
            SandM3 * factor,
            StoneM3 * factor,
            WaterLitres * factor
        );
    }
}

/// <summary>A concrete mix by volume, 1 part of cement to parts of sand and stone.</summary>
/// <param name="Name">The mix as the trade writes it: <c>1:2:4</c>.</param>
/// <param name="Grade">Grade that the mix stands for: <c>M15</c>; empty when none.</param>
/// <param name="SandPartsRatio">Parts of sand to one of cement, by volume, 0.5 to 8.</param>
/// <param name="StonePartsRatio">Parts of stone to one of cement, by volume, 1 to 16.</param>
/// <param name="WaterCementRatio">Water to cement by mass, 0.35 to 0.70.</param>
public sealed record NominalMix(
    string Name,
    string Grade,
    double SandPartsRatio,
    double StonePartsRatio,
    double WaterCementRatio
)
{
    /// <summary>Strength of a cube that the grade stands for, at 28 days [N/mm2].</summary>
    /// <exception cref="FormatException">The mix has no grade.</exception>
    /// <source>IS 456:2000, table 2: the number of the grade</source>
    public double CubeNPerMm2 => double.Parse(Grade.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Usual volume of dry parts to one of finished concrete.</summary>
    /// <source>common practice, 1.52 to 1.57; no source</source>
    public const double UsualDryVolumeFactor = 1.54;

    /// <summary>Usual mass of a cubic metre of loose cement [kg/m3].</summary>
    /// <source>common practice, 1440; some quantity tables use 1450; no source</source>
    public const double UsualCementKgPerM3 = 1440;

    /// <summary>Mass of a bag of cement [kg].</summary>
    public const double BagKg = 50;

    /// <summary>The mixes of the table beside this file, weakest first.</summary>
    public static IReadOnlyList<NominalMix> Table { get; } =
    [
        .. Csv.Embedded(Assembly.GetExecutingAssembly(), "NominalMix.csv")
            .Select(row => new NominalMix(
                row["name"],
                row["grade"],
                row.Number("sand_parts"),
                row.Number("stone_parts"),
                row.Number("water_cement_ratio")
            )),
    ];

    /// <summary>A mix of the table by its name.</summary>
    /// <param name="name">The mix as the trade writes it: <c>1:2:4</c>.</param>
    /// <returns>The mix.</returns>
    /// <exception cref="ArgumentException">The table has no mix of that name.</exception>
    public static NominalMix Named(string name) =>
        Table.FirstOrDefault(mix => mix.Name == name)
        ?? throw new ArgumentException(
            $"There is no mix '{name}'; accepted: {string.Join(", ", Table.Select(mix => mix.Name))}.",
            nameof(name)
        );

    /// <summary>What a cubic metre of finished concrete takes, nothing added for waste.</summary>
    /// <param name="dryVolumeFactor">Volume of dry parts to one of finished concrete, 1.4 to 1.7.</param>
    /// <param name="cementKgPerM3">Mass of loose cement [kg/m3], 1200 to 1600.</param>
    /// <returns>The quantities for 1 m3.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure or a part of the mix is outside its range, or NaN.</exception>
    /// <source>Nominal mix by volume: dry volume shared in the ratio of the parts; common practice, no source</source>
    public MixQuantities PerM3(double dryVolumeFactor, double cementKgPerM3)
    {
        Within.Require(dryVolumeFactor, 1.4, 1.7, "");
        Within.Require(cementKgPerM3, 1200, 1600, "kg/m3");
        Within.Require(SandPartsRatio, 0.5, 8, "");
        Within.Require(StonePartsRatio, 1, 16, "");
        Within.Require(WaterCementRatio, 0.35, 0.70, "");
        var cementM3 = dryVolumeFactor / (1 + SandPartsRatio + StonePartsRatio);
        var cementKg = cementM3 * cementKgPerM3;
        return new(
            cementM3,
            cementKg,
            cementKg / BagKg,
            cementM3 * SandPartsRatio,
            cementM3 * StonePartsRatio,
            cementKg * WaterCementRatio
        );
    }
}

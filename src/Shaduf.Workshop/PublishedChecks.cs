using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>Which shipped kernel computes each quantity of the trade's published rows.</summary>
public static class PublishedChecks
{
    private const double MPerIn = 0.0254;
    private const double MPerFt = 0.3048;
    private const double KgPerLb = 0.45359237;

    /// <summary>One check for each quantity that the published files of the trade name.</summary>
    public static IReadOnlyList<PublishedCheck> All { get; } =
    [
        new("workshop/bar-plan", "ffd-bars", row => Plan(row).BarCount),
        new("workshop/bar-plan", "length-bound", row => Plan(row).LengthBoundCount),
        new("workshop/fillet-weld", "deposit", row => FilletWeld.DepositKgPerM(row["legMm"], row["overrunShare"])),
        new(
            "workshop/fillet-weld",
            "deposit-two",
            row =>
                row["length1M"] * FilletWeld.DepositKgPerM(row["leg1Mm"], row["overrunShare"])
                + row["length2M"] * FilletWeld.DepositKgPerM(row["leg2Mm"], row["overrunShare"])
        ),
        new("workshop/fillet-weld", "deposit-lb-ft", DepositLbPerFt),
        new(
            "workshop/electrodes",
            "mass-for-loss",
            row => Electrodes.MassKg(row["depositKg"], efficiencyShare: 1 - row["lossShare"])
        ),
        new("workshop/paint-coat", "spread", row => PaintCoat.SpreadM2PerLitre(row["solidsShare"], row["filmUm"])),
        new(
            "workshop/paint-coat",
            "litres",
            row =>
                row["coatCount"] * PaintCoat.Litres(row["areaM2"], row["solidsShare"], row["filmUm"], row["lossShare"])
        ),
        .. PublishedLifting.All,
    ];

    private static double DepositLbPerFt(PublishedCase row)
    {
        var volumeM3PerM =
            FilletWeld.DepositKgPerM(row["legIn"] * MPerIn * 1000, overrunShare: 0) / FilletWeld.DensityKgPerM3;
        var densityKgPerM3 = row["densityLbPerIn3"] * KgPerLb / (MPerIn * MPerIn * MPerIn);
        return volumeM3PerM * densityKgPerM3 * MPerFt / KgPerLb;
    }

    private static BarPlan Plan(PublishedCase row)
    {
        var kinds = Enumerable
            .Range(1, row.Inputs.Count)
            .Select(kind => kind.ToString(CultureInfo.InvariantCulture))
            .TakeWhile(kind => row.Inputs.ContainsKey($"length{kind}Mm"));
        return BarPlan.FirstFitDecreasing(
            [.. kinds.Select(kind => new CutPart(kind, row[$"length{kind}Mm"], (int)row[$"part{kind}Count"]))],
            row["barMm"],
            kerfMm: 0,
            endTrimMm: 0
        );
    }
}

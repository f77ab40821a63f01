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
        new("workshop/cut-plan", "first-fit", row => CutPlan.FirstFit(Order(row)).BarCount),
        new("workshop/cut-plan", "bars", row => Proven(row).BarCount),
        new("workshop/cut-plan", "least-price", row => (double)Proven(row).Cost),
        new("workshop/cut-plan", "nested", row => CutPlan.Cheapest(Order(row)).Bars.Max(bar => bar.Pieces[^1].ToMm)),
        new("workshop/cut-plan", "nested-bars", row => CutPlan.Cheapest(Order(row)).BarCount),
        new("workshop/plane-cut", "slant", row => PlaneCut.SlantMm(row["widthMm"], row["sawDeg"])),
        new(
            "workshop/plane-cut",
            "unequal",
            row => PlaneCut.UnequalMitreDeg(row["ownMm"], row["otherMm"], row["includedDeg"])
        ),
        new(
            "workshop/plane-cut",
            "corner",
            row => PlaneCut.OffsetMm(row["alongVRatio"], row["alongWRatio"], row["vMm"], row["wMm"])
        ),
        new("workshop/plane-cut", "table", row => PlaneCut.TableDeg(row["alongVRatio"])),
        new("workshop/plane-cut", "blade", row => PlaneCut.BladeDeg(row["alongVRatio"], row["alongWRatio"])),
        new("workshop/plane-cut", "corner-table", row => PlaneCut.TableDeg(Lean(row).Sin)),
        new("workshop/plane-cut", "corner-blade", row => PlaneCut.BladeDeg(Lean(row).Sin, Lean(row).Cos)),
        new(
            "workshop/plane-cut",
            "round",
            row => PlaneCut.RoundOrdinateMm(row["diameterMm"], row["sawDeg"], row["aroundDeg"])
        ),
        new(
            "workshop/saddle",
            "reach",
            row => Saddle.ReachMm(row["headerMm"], row["branchMm"], row["angleDeg"], 0, row["aroundDeg"])
        ),
        new("workshop/saddle", "depth", row => Saddle.DepthMm(row["headerMm"], row["branchMm"], row["angleDeg"])),
        new("workshop/brace-cut", "rise", row => Brace(row).RiseDeg),
        new("workshop/brace-cut", "beam-saw", row => Brace(row).BeamSawDeg),
        new("workshop/brace-cut", "centre", row => Brace(row).CentreMm),
        new("workshop/brace-cut", "long", row => Brace(row).LongMm),
        new("workshop/brace-cut", "short", row => Brace(row).ShortMm),
        new("workshop/vents", "hole", row => Vents.HoleMm(row["innerMm2"], (int)row["holeCount"])),
        new("workshop/electrodes", "core", row => Electrodes.CoreKg(row["coreMm"], row["lengthMm"], row["stubMm"])),
        new(
            "workshop/electrodes",
            "rods",
            row =>
                Electrodes.RodCount(
                    row["depositKg"],
                    Electrodes.CoreKg(row["coreMm"], row["lengthMm"], row["stubMm"]),
                    row["recoveryShare"]
                )
        ),
        new(
            "workshop/electrodes",
            "time",
            row => Electrodes.TimeH(row["depositKg"], row["rateKgPerH"], row["arcShare"])
        ),
        new(
            "workshop/paint-coat",
            "wet",
            row => PaintCoat.WetFilmUm(row["solidsShare"], row["filmUm"], row["thinnerShare"])
        ),
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

    private static (double Sin, double Cos) Lean(PublishedCase row) => Math.SinCos(row["leanDeg"] * Math.PI / 180);

    private static BraceCut Brace(PublishedCase row) =>
        BraceCut.Of(row["runMm"], row["riseMm"], row["columnMm"], row["beamMm"], row["braceMm"]);

    private static double DepositLbPerFt(PublishedCase row)
    {
        var volumeM3PerM =
            FilletWeld.DepositKgPerM(row["legIn"] * MPerIn * 1000, overrunShare: 0) / FilletWeld.DensityKgPerM3;
        var densityKgPerM3 = row["densityLbPerIn3"] * KgPerLb / (MPerIn * MPerIn * MPerIn);
        return volumeM3PerM * densityKgPerM3 * MPerFt / KgPerLb;
    }

    // The least price counts only when it is proved.
    private static CutPlan Proven(PublishedCase row)
    {
        var plan = CutPlan.Cheapest(Order(row));
        return plan.IsProven
            ? plan
            : throw new InvalidOperationException($"not proved: {plan.GapCost} may be too dear");
    }

    private static CutOrder Order(PublishedCase row)
    {
        string[] Numbered(string name) =>
            [
                .. Enumerable
                    .Range(1, row.Inputs.Count)
                    .Select(kind => kind.ToString(CultureInfo.InvariantCulture))
                    .TakeWhile(kind => row.Inputs.ContainsKey($"{name}{kind}Mm")),
            ];
        return new(
            [
                .. Numbered("length")
                    .Select(kind => new CutPart(kind, row[$"length{kind}Mm"], (int)row[$"part{kind}Count"])
                    {
                        StartDeg = row.Inputs.GetValueOrDefault("mitreDeg"),
                        EndDeg = row.Inputs.GetValueOrDefault("mitreDeg"),
                        NestWidthMm = row.Inputs.GetValueOrDefault("widthMm"),
                    }),
            ],
            [.. Numbered("bar").Select(bar => new BarStock(row[$"bar{bar}Mm"], (decimal)row[$"bar{bar}Price"]))],
            row.Inputs.GetValueOrDefault("kerfMm"),
            EndTrimMm: 0
        );
    }
}

using Shaduf.Parts;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Templates of steep cuts, welds, paint, and what galvanising would ask instead.</summary>
internal static class FinishTables
{
    // Beyond this most saws cannot hold the tube: judgement.
    private const double SteepDeg = 45;

    /// <summary>The blocks.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        var (rack, stand) = (design.Works.Rack, design.Works.Stand);
        var lots = design.Works.SteelLots;
        (string Name, double AreaM2)[] painted =
        [
            ("racks", SteelFinish.AreaM2(rack)),
            .. stand is null ? [] : new[] { ("stands", stand.PaintM2) },
        ];
        return [.. Templates(lots), .. Welds(design, lots), .. Paint(lots, painted)];
    }

    private static IEnumerable<Block> Templates(IReadOnlyList<SteelLot> lots)
    {
        var steep = lots.SelectMany(lot => lot.Steel.Groups)
            .Where(part => part.Section.Outline == Outline.SquareTube)
            .SelectMany(part =>
                new[] { ("start", part.Shape.StartDeg), ("end", part.Shape.EndDeg) }.Select(end =>
                    (part.Mark, part.Section, End: end.Item1, Deg: Math.Round(end.Item2, 1))
                )
            )
            .Where(end => end.Deg > SteepDeg)
            .GroupBy(end => (end.Section.SideMm, end.Deg))
            .ToList();
        if (steep.Count == 0)
        {
            yield break;
        }

        yield return new Heading(2, "Templates of steep cuts");
        yield return new Paragraph(
            Invariant(
                $"Ends of more than {SteepDeg:0} deg from square, which most saws cannot hold: wrap the strip round the tube with its upper line at the long point and the seam on the short side, mark along the thick line, cut by grinder. {CutTemplate.Caution}"
            )
        );
        foreach (var end in steep)
        {
            var names = string.Join(", ", end.Select(each => $"{each.Mark} {each.End}"));
            if (!CutTemplate.Fits(end.Key.SideMm, end.Key.Deg))
            {
                yield return new Paragraph(
                    Invariant(
                        $"{names}, {end.Key.SideMm:0} mm tube, {end.Key.Deg:0.0} deg from square: no page is long enough for its template. Square a line all round at the long point; on the opposite face go {CutTemplate.SlantMm(end.Key.SideMm, end.Key.Deg):0} mm back and square a second one; join both over the two sides with a straight edge."
                    )
                );
                continue;
            }

            yield return new Figure(
                CutTemplate.Square(
                    Invariant($"{names}: {end.Key.SideMm:0} mm tube, {end.Key.Deg:0.0} deg from square"),
                    end.Key.SideMm,
                    end.Key.Deg
                ),
                "1:1; folds broken"
            );
        }
    }

    private static IEnumerable<Block> Welds(Design design, IReadOnlyList<SteelLot> lots)
    {
        yield return new Heading(2, "Welds");
        foreach (var lot in lots)
        {
            yield return Welds(design, lot);
        }

        var rods = SteelFinish.Rods([.. lots.SelectMany(lot => SteelFinish.Welds(lot.Steel, lot.Count))]);
        yield return new Paragraph(
            $"Electrodes of all steel, a fifth of overrun and {SteelFinish.DepositShare * 100:0} % of the mass bought counted: "
                + string.Join(
                    "; ",
                    rods.Select(rod =>
                        Invariant($"{rod.RodMm:0.0} mm: {rod.MassKg:0.0} kg ({rod.Rods:0} rods of 350 mm)")
                    )
                )
                + Invariant(
                    $"; the bill counts whole packets of {SteelFinish.PacketKg:0.#} kg for racks and stands apart. Dry rods; zinc, paint, oil and water off 50 mm each side; a vent in every closed tube before it is welded all round; someone watches for fire during the work and half an hour after. Take modules and drive off before welding on a rack that stands; never weld on a stand with water in its tank."
                )
        );
    }

    private static Table Welds(Design design, SteelLot lot)
    {
        var welds = SteelFinish.Welds(lot.Steel, lot.Count);
        return new Table(
            [
                new("weld", 2.4),
                new("leg z, mm", 0.8, HorizontalAnchor.Right),
                new("run, mm", 0.8, HorizontalAnchor.Right),
                new("runs", 0.6, HorizontalAnchor.Right),
                new("where", 0.7),
                new("rod, mm", 0.7, HorizontalAnchor.Right),
                new("weld metal, kg", 0.9, HorizontalAnchor.Right),
            ],
            [
                .. welds.Select(weld =>
                    TableRow.Of(
                        weld.Seam.Name,
                        Invariant($"{weld.Seam.LegMm:0.#}"),
                        Invariant($"{weld.Seam.LengthMm:0}"),
                        Invariant($"{weld.Count}"),
                        weld.Seam.IsOnSite ? "site" : "shop",
                        Invariant($"{weld.RodMm:0.0}"),
                        Invariant($"{weld.DepositKg:0.00}")
                    )
                ),
                TableRow.Total(
                    $"all {lot.Name}",
                    "",
                    "",
                    "",
                    "",
                    "",
                    Invariant($"{welds.Sum(weld => weld.DepositKg):0.00}")
                ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption =
                $"Welds of the {lot.Name}: fillets by leg z; manual metal arc, quality ISO 5817 C, all seen by a competent person{StandRelease.After(design, lot)}",
        };
    }

    private static IEnumerable<Block> Paint(
        IReadOnlyList<SteelLot> lots,
        IEnumerable<(string Name, double AreaM2)> painted
    )
    {
        yield return new Heading(2, "Paint, or zinc instead");
        foreach (var (name, areaM2) in painted)
        {
            yield return Coats(name, areaM2);
        }

        var vents = string.Join(
            "; ",
            SteelFinish
                .VentsOf(lots.Select(lot => lot.Steel))
                .Select(vent => Invariant($"{vent.Section.Name}: {vent.HoleMm:0} mm"))
        );
        yield return new Paragraph(
            $"Clean to bright metal by power brush, a stripe coat on welds and edges first. Steel that is dipped in zinc instead (ISO 1461) is not painted and not welded afterwards: splices and site welds become bolts, or are made good with zinc paint. Every closed tube then needs two holes at each end, at opposite corners, of at least {vents} (a quarter of the inside in all; from memory, the galvaniser decides): a closed tube bursts in the bath."
        );
    }

    private static Table Coats(string name, double areaM2) =>
        new(
            [
                new("paint", 2.4),
                new("coats", 0.6, HorizontalAnchor.Right),
                new("dry film of a coat, um", 1, HorizontalAnchor.Right),
                new("wet film, um", 1, HorizontalAnchor.Right),
                new("litres", 0.7, HorizontalAnchor.Right),
                new("to buy, L", 0.7, HorizontalAnchor.Right),
            ],
            [
                .. SteelFinish
                    .Coats(areaM2)
                    .Select(coat =>
                        TableRow.Of(
                            coat.Name,
                            Invariant($"{coat.Coats}"),
                            Invariant($"{coat.FilmUm:0}"),
                            Invariant($"{coat.WetUm:0}"),
                            Invariant($"{coat.Litres:0.0}"),
                            Invariant($"{Math.Ceiling(coat.Litres):0}")
                        )
                    ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = Invariant(
                $"{areaM2:0.0} m2 of the {name}' steel; solids {SteelFinish.SolidsShare * 100:0} % by volume, {SteelFinish.LossShare * 100:0} % lost by brush on small sections; measure the wet film with a comb"
            ),
        };
}

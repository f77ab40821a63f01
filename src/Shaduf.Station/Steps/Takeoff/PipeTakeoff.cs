using Shaduf.Money;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The pumped main and the pipes to the taps, as they are laid.</summary>
internal static class PipeTakeoff
{
    // Bought beyond the net quantity: common practice, no source.
    private const double PipeWasteShare = 0.03;

    // Posts along the route: every 200 m, at its ends and at each fitting; common practice, no source.
    private const double PostM = 200;

    /// <summary>Pipe, fittings along the route, trench, blocks, test.</summary>
    public static IEnumerable<QuantityLine> Main(Choice choice, Works works)
    {
        var main = works.Main;
        return
        [
            .. Pipes(choice.Lift.Lay),
            .. AlongRoute(main, choice.Lift.Lay),
            .. main.TankFull.Lines(),
            .. Trench(main.Trench, BillSection.PipesAndTank, "route of the main"),
            .. Blocks(main.Blocks, works.Footings),
            Labour.Days("pipe", choice.Lift.MainM, "route of the main"),
            Labour.Days("pipe-test", 1, "the main filled, tested, flushed, disinfected"),
        ];
    }

    /// <summary>What disinfects the station once, in whole tenths of a kilogram.</summary>
    /// <param name="doses">The doses.</param>
    public static QuantityLine Chlorine(IReadOnlyList<Disinfection> doses)
    {
        var netKg = doses.Sum(dose => dose.ProductG) / 1000;
        return new(
            "chlorine",
            BillSection.PipesAndTank,
            "hypochlorite of 65 %, fresh, that disinfects the station once",
            "kg",
            Math.Ceiling(netKg * 10) / 10,
            string.Join("; ", doses.Select(dose => Invariant($"{dose.What}: {dose.ProductG:0} g")))
        )
        {
            NetQuantity = netKg,
        };
    }

    private static IEnumerable<QuantityLine> Pipes(MainLay lay)
    {
        foreach (var pipe in lay.Reaches.GroupBy(reach => reach.Pipe))
        {
            var metres = pipe.Sum(reach => reach.LengthM);
            yield return new(
                pipe.Key.Name,
                BillSection.PipesAndTank,
                $"pumped main: {pipe.Key.About}",
                "m",
                metres * (1 + PipeWasteShare),
                Invariant($"route and rise to the inlet {metres:0.#} m + 3 %")
            )
            {
                NetQuantity = metres,
            };
        }
    }

    private static IEnumerable<QuantityLine> AlongRoute(MainWorks main, MainLay lay)
    {
        const BillSection section = BillSection.PipesAndTank;
        yield return new("pipe-fittings", section, "fittings and bends of the main", "set", 1, "fittings of the brief");
        // The air valve at the wellhead is among its fittings.
        var along = main.Marks.Where(mark => mark.At.ChainageM > 0).ToList();
        foreach (var kind in along.GroupBy(mark => mark.Fitting).OrderBy(group => group.Key))
        {
            var (item, says) = Named(kind.Key);
            yield return new(
                item,
                section,
                says,
                "nr",
                kind.Count(),
                "at " + string.Join(", ", kind.Select(mark => Invariant($"{mark.At.ChainageM:0} m")))
            );
        }

        var posts = Math.Floor(lay.Reaches[^1].ToM / PostM) + 2 + along.Count;
        yield return new("marker-post", section, "marker post", "nr", posts, "every 200 m, ends and fittings");
    }

    /// <summary>Pipes, break-pressure tanks and stands of the taps.</summary>
    public static IEnumerable<QuantityLine> Taps(Works works) =>
        works.Taps.Heads.Count == 0
            ? []
            :
            [
                .. TapPipes(works.Taps),
                .. Breaks(works.Taps),
                .. Trench(works.TapTrench, BillSection.TapsAndDrainage, "pipes to the taps"),
                Labour.Days("tap-pipe", works.TapTrench.LengthM, "pipes to the taps"),
                .. works.TapStands is { } stands ? Stands(stands, works.Footings) : [],
            ];

    private static IEnumerable<QuantityLine> TapPipes(TapNetwork taps)
    {
        var pipes = taps.Heads.GroupBy(head => head.Pipe).OrderBy(group => group.Key.Name, StringComparer.Ordinal);
        foreach (var pipe in pipes)
        {
            var metres = pipe.Sum(head => head.Point.LengthM);
            if (metres > 0)
            {
                yield return new(
                    pipe.Key.Name,
                    BillSection.TapsAndDrainage,
                    $"pipe to the taps: {pipe.Key.About}",
                    "m",
                    metres * (1 + PipeWasteShare),
                    Invariant($"pipes to the taps {metres:0.#} m + 3 %")
                )
                {
                    NetQuantity = metres,
                };
            }
        }
    }

    private static IEnumerable<QuantityLine> Breaks(TapNetwork taps)
    {
        var breaks = taps.Heads.Count(head => head.Point.Kind == TapPointKind.BreakPressureTank);
        if (breaks > 0)
        {
            yield return new(
                "break-pressure-tank",
                BillSection.TapsAndDrainage,
                "break-pressure tank with float valve, overflow and lid",
                "nr",
                breaks,
                "head at rest"
            );
            yield return Labour.Days("break-tank", breaks, "head at rest");
        }
    }

    private static (string Item, string Says) Named(RouteFitting fitting) =>
        fitting switch
        {
            RouteFitting.AirValve => ("line-air-valve", "air valve, double acting, with isolating cock and box"),
            RouteFitting.Washout => ("washout", "washout: tee, valve, box and outlet"),
            _ => ("line-valve", "line valve with box"),
        };

    private static IEnumerable<QuantityLine> Trench(Trenches trench, BillSection section, string origin)
    {
        QuantityLine Line(string item, string says, string unit, double quantity, string from) =>
            new(item, section, says, unit, quantity, from);
        if (trench.LengthM <= 0)
        {
            return [];
        }

        var tape = Line(
            "marker-tape",
            "warning tape with tracing wire, 0.3 m over the crown",
            "m",
            trench.LengthM * (1 + PipeWasteShare),
            Invariant($"{origin} {trench.LengthM:0.#} m + 3 %")
        ) with
        {
            NetQuantity = trench.LengthM,
        };
        var sand = Line(
            "sand",
            "sand for the pipe's bed and surround",
            "m3",
            trench.SandM3,
            "stony ground, or nobody looked"
        );
        return [tape, .. trench.SandM3 > 0 ? [sand] : Array.Empty<QuantityLine>(), .. Digging(trench, section, origin)];
    }

    private static QuantityLine[] Digging(Trenches trench, BillSection section, string origin)
    {
        var taps = section == BillSection.TapsAndDrainage ? "tap-" : "";
        return
        [
            Labour.Days(
                $"{taps}trench-dig",
                trench.DigM3,
                Invariant($"{origin}: up to {trench.WidthM:0.00} m wide and {trench.DepthM:0.00} m deep")
            ),
            Labour.Days(
                $"{taps}trench-fill",
                trench.FillM3 + trench.SandM3,
                Invariant($"{origin}; {trench.SurplusM3:0.0} m3 loose are left to spread")
            ),
        ];
    }

    private static IEnumerable<QuantityLine> Blocks(IReadOnlyList<Block> blocks, Footings footings)
    {
        var concreteM3 = blocks.Sum(block => block.ConcreteM3);
        return ConcreteTakeoff.Of(
            BillSection.PipesAndTank,
            "thrust blocks",
            concreteM3,
            footings,
            Invariant($"{blocks.Count} thrust blocks: {concreteM3:0.00} m3 + 5 %")
        );
    }

    private static IEnumerable<QuantityLine> Stands(TapStands stands, Footings footings) =>
        [
            new(
                "tap-stand",
                BillSection.TapsAndDrainage,
                "tap stand: post fittings, two taps, stopcock and box, drain pipe",
                "nr",
                stands.Count,
                "taps of the brief"
            ),
            .. Aprons(stands.Count, stands.Count * stands.ConcreteM3, footings),
            new(
                "stone",
                BillSection.TapsAndDrainage,
                "stone that fills the soakaways",
                "m3",
                stands.Count * stands.StoneM3,
                Invariant($"{stands.Count} of: {stands.SoakawayText}")
            ),
            Labour.Days("soakaway", stands.Count * stands.DigM3, stands.SoakawayText),
            Labour.Days("tap", stands.Count, "taps of the brief"),
        ];

    private static IEnumerable<QuantityLine> Aprons(int count, double concreteM3, Footings footings) =>
        ConcreteTakeoff.Of(
            BillSection.TapsAndDrainage,
            "aprons and posts",
            concreteM3,
            footings,
            Invariant($"{count} aprons of 2 x 2 m with kerb and post: {concreteM3:0.00} m3 + 5 %")
        );
}

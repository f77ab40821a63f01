using Shaduf.Station;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Tables of the main and of the taps.</summary>
internal static class PipeTables
{
    private static readonly HorizontalAnchor Right = HorizontalAnchor.Right;

    public static Table Reaches(Design design) =>
        new(
            [
                new("pipe", 1.4),
                new("from, m", 0.8, Right),
                new("to, m", 0.8, Right),
                new("length, m", 0.9, Right),
                new("most needed, bar", 1.1, Right),
                new("carries, bar", 1, Right),
            ],
            [.. design.Choice.Lift.Lay.Reaches.Select(reach => Row(reach, design.Works.Main.Profile.WorstOf(reach)))]
        )
        {
            Caption =
                "Pressure class of the main by reach. Needed: running and a hard stop, or the pump against a shut valve, whichever is more; carried: the class at the water's temperature",
        };

    private static TableRow Row(MainReach reach, MainPoint worst) =>
        TableRow.Of(
            reach.Pipe.Name,
            Invariant($"{reach.FromM:0}"),
            Invariant($"{reach.ToM:0}"),
            Invariant($"{reach.LengthM:0.0}"),
            Invariant($"{worst.NeededBar:0.0}"),
            Invariant($"{worst.AllowedBar:0.0}")
        );

    public static Table Fittings(Design design) =>
        new(
            [new("fitting"), new("at, m", 0.6, Right), new("level, m", 0.7, Right), new("why", 2)],
            [
                .. design.Works.Main.Marks.Select(mark =>
                    TableRow.Of(
                        mark.Fitting switch
                        {
                            RouteFitting.AirValve => "air valve",
                            RouteFitting.Washout => "washout",
                            _ => "line valve",
                        },
                        Invariant($"{mark.At.ChainageM:0}"),
                        Invariant($"{mark.At.LevelM:0.0}"),
                        mark.Why
                    )
                ),
            ]
        )
        {
            Caption = "Fittings along the main",
        };

    public static Table Economic(Design design)
    {
        var costs = design.Works.EconomicMain.Mains;
        var leastCost = costs.Min(each => each.Cost);
        return new(
            [
                new("main", 1.6),
                new("water, m/s", 0.8, Right),
                new("cost of the main", 1, Right),
                new("modules", 0.7, Right),
                new("whole cost", 1, Right),
                new("", 0.9),
            ],
            [.. costs.Select(each => Row(each, leastCost))]
        )
        {
            Caption =
                $"Diameter of the main against the whole cost, in {design.Offer.Currency}: with each main the chosen pump's cheapest array, tank and drive that meet the target. A wider main costs pipe, a narrower one costs array",
        };
    }

    private static TableRow Row(MainCost each, double? leastCost) =>
        TableRow.Of(
            each.Main.Name,
            Invariant($"{each.SpeedMPerS:0.00}"),
            each.PipeCost is { } pipe ? Invariant($"{pipe:#,0}") : "no rate",
            each.Cost is null ? "-" : Invariant($"{each.ModuleCount}"),
            each.Cost is { } cost ? Invariant($"{cost:#,0}") : "-",
            each.Cost is null ? "falls short"
                : each.Cost == leastCost ? "cheapest"
                : ""
        );

    public static Table Laying(Design design) =>
        new(
            [new("figure", 1.4), new("value", 0.9, Right), new("remark", 2.2)],
            [.. TrenchRows(design), .. TestRows(design.Works.Main.Test), .. FlushRows(design.Works.Main.Test)]
        )
        {
            Caption = "The main as laid, tested with water and never with air, and flushed",
        };

    private static TableRow Row(string figure, FormattableString value, string remark) =>
        TableRow.Of(figure, Invariant(value), remark);

    private static TableRow[] TrenchRows(Design design)
    {
        var trench = design.Works.Main.Trench;
        return
        [
            Row(
                "trench",
                $"{trench.WidthM:0.00} x {trench.DepthM:0.00} m",
                Invariant($"{design.Works.CoverM:0.00} m over the crown; {trench.LengthM:0} m long")
            ),
            Row("dug", $"{trench.DigM3:0.0} m3", "as it lies"),
            Row(
                "sand bought",
                $"{trench.SandM3:0.0} m3",
                trench.SandM3 > 0
                    ? "0.10 m under the pipe and over the crown"
                    : "none: the dug soil, free of stones over 22 mm, lies around the pipe"
            ),
            Row("filled back", $"{trench.FillM3:0.0} m3", "rammed in layers, joints left bare until tested"),
            Row("left over", $"{trench.SurplusM3:0.0} m3", "loose, to spread"),
        ];
    }

    private static TableRow[] TestRows(MainTest test)
    {
        return
        [
            Row(
                "test pressure",
                $"{test.TestBar:0.0} bar",
                Invariant($"at the lowest point; largest pressure in use {test.DesignBar:0.0} bar")
            ),
            Row("water in the main", $"{test.VolumeL:0} L", "fill from the low end, air out at every high point"),
            Row("pumped in", $"{test.AddedL:0.0} L", "about, to reach the test pressure; more: air or a leak"),
            Row(
                "let down after an hour",
                $"{test.LetDownBar:0.0} bar",
                Invariant(
                    $"at most {test.MostReleasedL:0.0} L may come out; then half an hour with at most 0.03 bar of fall"
                )
            ),
        ];
    }

    private static TableRow[] FlushRows(MainTest test)
    {
        var flushMin = test.FlushM3 * 1000 / test.FlushLPerS / 60;
        return
        [
            Row(
                "flush",
                $"{test.FlushLPerS:0.0} L/s",
                Invariant($"for {flushMin:0} min, {test.FlushM3:0.0} m3 to waste: three volumes at 0.75 m/s")
            ),
            Row(
                "disinfect",
                $"{test.ChlorineKg * 1000:0} g",
                "hypochlorite of 65 % for 50 mg/L, left a day; run out away from streams and crops"
            ),
        ];
    }

    public static Table Blocks(Design design) =>
        new(
            [
                new("thrust block at", 1.8),
                new("at, m", 0.6, Right),
                new("force, kN", 0.8, Right),
                new("face against the ground, m", 1.3, Right),
                new("concrete, m3", 0.9, Right),
            ],
            [
                .. design.Works.Main.Blocks.Select(block =>
                    TableRow.Of(
                        block.What,
                        Invariant($"{block.ChainageM:0}"),
                        Invariant($"{block.ForceKN:0.00}"),
                        Invariant($"{block.SideM:0.00} x {block.SideM:0.00}"),
                        Invariant($"{block.ConcreteM3:0.000}")
                    )
                ),
            ]
        )
        {
            Caption =
                "Thrust blocks for the test pressure, cast against undisturbed ground, the pipe wrapped and the joints free. Pipe welded into one string needs none at its bends",
        };

    public static Table TapPipes(Design design)
    {
        var heads = design.Works.Taps.Heads;
        return new(
            [
                new("nr", 0.4, Right),
                new("from", 1.2),
                new("to", 1.3),
                new("pipe", 1.1),
                new("length, m", 0.8, Right),
                new("flow, L/s", 0.8, Right),
                new("water, m/s", 0.8, Right),
                new("loss, m", 0.7, Right),
            ],
            [.. heads.Select((head, i) => Row(head, i + 1, heads))]
        )
        {
            Caption = "Pipes to the taps, all taps open",
        };
    }

    private static TableRow Row(TapHead head, int number, IReadOnlyList<TapHead> heads) =>
        TableRow.Of(
            Invariant($"{number}"),
            head.Point.UpstreamIndex < 0 ? TapsBrief.TankName : heads[head.Point.UpstreamIndex].Name,
            head.Name,
            head.Pipe.Name,
            Invariant($"{head.Point.LengthM:0.0}"),
            Invariant($"{head.FlowM3PerS * 1000:0.00}"),
            Invariant($"{head.SpeedMPerS:0.00}"),
            Invariant($"{head.LossM:0.00}")
        );

    public static Table Taps(Design design) =>
        new(
            [
                new("tap", 2),
                new("wanted, m", 0.8, Right),
                new("all open, m", 0.9, Right),
                new("at rest, m", 0.9, Right),
            ],
            [
                .. design.Works.Taps.Taps.Select(tap =>
                    TableRow.Of(
                        tap.Name,
                        Invariant($"{tap.Point.NeedM:0.0}"),
                        Invariant($"{tap.ResidualM:0.0}"),
                        Invariant($"{tap.StaticM:0.0}")
                    )
                ),
            ]
        )
        {
            Caption =
                "Head at the taps: in the peak hour, with all open and the tank nearly empty, and at rest with the tank full",
        };
}

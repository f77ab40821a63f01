using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The crew's sheet of concrete: what is cast, how it is mixed, how long it waits, what is written down.</summary>
internal static class CrewConcrete
{
    // A box of 300 x 300 x 386 mm.
    private const double BoxL = 34.7;

    // Lines of the log of pours.
    private const int MostLogged = 24;

    /// <summary>The blocks.</summary>
    /// <param name="design">The design.</param>
    /// <param name="step">The step of the method.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design, MethodStep step)
    {
        var footings = design.Works.Footings;
        yield return new Heading(1, "Concrete");
        yield return Casts(design);
        foreach (var hold in MethodChapter.Hold(step))
        {
            yield return hold;
        }

        yield return new Bullets(
            [
                RichText.From(step.Do[^1]),
                "Rammed in layers of 200 mm; plumb, distances and tilt measured again an hour after.",
                "Sacks on it, wet for seven days. Date and hour of each pour written down.",
            ],
            BulletMark.CheckBox
        );
        foreach (var days in ErectionChapter.Blocks(design).OfType<Table>())
        {
            yield return days;
        }

        string[] pits = [.. design.Works.Pits.Pits.Select(pit => pit.Name)];
        yield return new Table(
            [new("pit", 0.6), new("dug and seen, name", 1.6), new("poured, day and hour", 1.6), new("bags", 0.7)],
            [
                .. (pits.Length <= MostLogged ? pits : Enumerable.Repeat("", MostLogged)).Select(pit =>
                    TableRow.Of(pit, "", "", "")
                ),
            ]
        )
        {
            Caption = pits.Length <= MostLogged ? "" : "A line for each pour; write down which pits",
        };
    }

    private static Table Casts(Design design)
    {
        var (footings, works) = (design.Works.Footings, design.Works);
        (string What, int Count, double EachM3)[] casts =
        [
            ("footing of a rack, with plinth", footings.Count, footings.Block.ConcreteM3),
            .. works.Stand is { } stand
                ? [("block of a stand", stand.Footings.Count, stand.Footings.Block.ConcreteM3)]
                : Array.Empty<(string, int, double)>(),
            .. works.PoleBlocks.Select(pole => ($"block of a {pole.Name}", works.CountOf(pole), pole.Block.ConcreteM3)),
        ];
        return new Table(
            [
                new("cast", 2.4),
                new("number", 0.7, HorizontalAnchor.Right),
                new("m3 each", 0.8, HorizontalAnchor.Right),
                new("bags each", 0.8, HorizontalAnchor.Right),
                new("boxes of sand", 0.9, HorizontalAnchor.Right),
                new("boxes of stone", 0.9, HorizontalAnchor.Right),
            ],
            [
                .. casts.Select(cast =>
                    TableRow.Of(
                        cast.What,
                        Invariant($"{cast.Count}"),
                        Invariant($"{cast.EachM3:0.000}"),
                        Invariant($"{cast.EachM3 * footings.PerM3.BagCount:0.0}"),
                        Invariant($"{cast.EachM3 * footings.PerM3.SandM3 * 1000 / BoxL:0.0}"),
                        Invariant($"{cast.EachM3 * footings.PerM3.StoneM3 * 1000 / BoxL:0.0}")
                    )
                ),
            ]
        )
        {
            Caption = Invariant(
                $"Mix {footings.Mix.Name}; a gauge box of 300 x 300 x 386 mm holds 34.7 L, as a bag of cement"
            ),
        };
    }
}

using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Method and safety: the steps, the points that are signed, lifts, hazards, tools.</summary>
internal static class MethodChapter
{
    /// <summary>The blocks.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        var method = MethodStatement.Of(design);
        yield return new Heading(1, "Method and safety");
        yield return new Paragraph(
            "Local law, the makers' instructions and licensed people stand above every line here. Anybody on site may stop the work. A hold is signed before the next step begins."
        );
        foreach (var (i, step) in method.Steps.Index())
        {
            yield return new Heading(3, Invariant($"{i + 1}. {step.Title}"));
            yield return new Bullets([.. step.Do.Select(RichText.From)]);
            if (step.Key == "set-out")
            {
                yield return SettingOutTables.Pits(design);
            }

            foreach (var hold in Hold(step))
            {
                yield return hold;
            }
        }

        yield return Lifts(method);
        yield return Hazards(method);
        yield return Tools(method);
    }

    /// <summary>The point that is signed before the next step; none where work simply goes on.</summary>
    public static IEnumerable<Block> Hold(MethodStep step) =>
        (step.Hold, step.Signed) switch
        {
            ({ } hold, { } tick) =>
            [
                new Bullets([RichText.Bold($"{hold}  Ticked in the site book: {tick.Says}.")], BulletMark.TickedBox),
            ],
            ({ } hold, null) =>
            [
                new Bullets([RichText.Bold($"{hold}  Signed: ............ date: ........")], BulletMark.CheckBox),
            ],
            _ => [],
        };

    /// <summary>What is heavy.</summary>
    public static Table Lifts(MethodStatement method) =>
        new(
            [
                new("what", 3),
                new("mass, kg", 0.9, HorizontalAnchor.Right),
                new("number", 0.8, HorizontalAnchor.Right),
                new("lifted by", 2.4),
            ],
            [
                .. method.Lifts.Select(lift =>
                    TableRow.Of(lift.What, Invariant($"{lift.MassKg:0}"), Invariant($"{lift.Count}"), lift.By)
                ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption =
                "Lifts: 16 to 25 kg a head by where the hands are, two thirds of the sum for two people, half for three and more",
        };

    /// <summary>Hazards.</summary>
    public static Table Hazards(MethodStatement method) =>
        new(
            [
                new("hazard", 1.6),
                new("hurts", 0.9),
                new("before", 0.6, HorizontalAnchor.Right),
                new("what is done about it", 4),
                new("after", 0.6, HorizontalAnchor.Right),
            ],
            [
                .. method.Hazards.Select(hazard =>
                    TableRow.Of(
                        hazard.What,
                        hazard.Who,
                        Invariant($"{hazard.Before}"),
                        hazard.Controls,
                        Invariant($"{hazard.After}")
                    )
                ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = "Hazards: likelihood 1 to 5 times severity 1 to 5; it ranks, it proves nothing",
        };

    /// <summary>Tools.</summary>
    public static Table Tools(MethodStatement method) =>
        new([new("for", 1), new("tools", 5)], [.. method.Tools.Select(tool => TableRow.Of(tool.For, tool.Tools))])
        {
            SizeMm = Lettering.SmallMm,
            Caption = "Tools",
        };
}

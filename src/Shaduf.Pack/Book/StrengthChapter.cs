using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on the rack's strength: what acts, what carries, how far each part is used.</summary>
internal static class StrengthChapter
{
    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order; none where the method ends.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        var choice = design.Works.RackChoice;
        if (choice.Taken.Strength is not { } strength)
        {
            yield break;
        }

        yield return new Heading(1, "Rack: forces and checks");
        yield return new Paragraph(Method(strength));
        yield return Actions(strength);
        yield return ForceTable.Of(strength.BothDepths.Select(each => each.Forces(ForceTable.Kind)));
        yield return Members(strength);
        yield return Welds(strength);
        yield return Faces(strength);
        if (strength.Splices.Count > 0)
        {
            yield return Splices(strength);
        }

        yield return Moves(strength);
        if (design.Works.Footings.Strength is { } blocks)
        {
            yield return ForceTable.OnFootings("column", blocks);
        }

        yield return new Paragraph(
            "Each line of working for the governing checks stands under Workings. Welds by eye as a competent person does, ISO 5817 level C; measure the walls of tubes before cutting. National codes, their wind maps and annexes decide over these figures, and an engineer signs where the law asks for it."
        );
        if (choice.Others.Count > 0)
        {
            yield return Others(choice);
        }
    }

    private static string Method(RackStrength strength) =>
        Invariant(
            $"Wind: {strength.Wind.From}; taken as {strength.Wind.BasicMPerS:0.0} m/s, mean of ten minutes 10 m above open country once in 50 years; ground of category {strength.Wind.Terrain.Name}, hill factor {strength.Wind.HillFactor:0.00}; gust {strength.Wind.PeakKNPerM2:0.000} kN/m2 at {strength.Wind.HeightM:0.00} m (no lower than the {strength.Wind.Terrain.LeastHeightM:0} m of the category). Air of {strength.Wind.AirKgPerM3:0.00} kg/m3. {strength.National.Name}. Each rack stands alone: no shelter is taken from another. Steel {strength.Rules.Grade.Name}, yield {strength.Rules.Grade.YieldNPerMm2:0} N/mm2. "
        )
        + Invariant(
            $"Frame in space of {strength.Cases.Frame.Model.Nodes.Count} nodes and {strength.Cases.Frame.Model.Members.Count} members, rigid joints, columns held {strength.HeldAtMm / 1000:0.0} m below the ground and, once more, at the ground, the worse of both taken; {strength.Combinations.Strength.Count} combinations by EN 1990, expression 6.10. Loads and reactions agree to {Math.Max(1e-9, strength.Cases.ImbalanceShare):0.0e+0} of the load."
        );

    private static Table Actions(RackStrength strength)
    {
        var factors = new double[strength.Actions.Count];
        return new(
            [
                new("action", 3),
                new("down, kN", 1, HorizontalAnchor.Right),
                new("away from the low edge, kN", 1, HorizontalAnchor.Right),
                new("along the row, kN", 1, HorizontalAnchor.Right),
            ],
            [
                .. strength
                    .Actions.Select((action, i) => (action, i))
                    .Where(pair =>
                        pair.action.Kind is not (RackActionKind.WindOnEdges or RackActionKind.Person)
                        && !pair.action.IsUneven
                    )
                    .Select(pair =>
                    {
                        Array.Clear(factors);
                        factors[pair.i] = pair.action.IsWind ? strength.Wind.PeakKNPerM2 : 1;
                        var feet = Enumerable
                            .Range(0, strength.Rack.Skeleton.Feet.Count)
                            .Select(foot => strength.Cases.Foot(foot, factors).Force)
                            .ToList();
                        return TableRow.Of(
                            pair.action.Name,
                            KN(feet.Sum(force => force.ZN)),
                            KN(-feet.Sum(force => force.YN)),
                            KN(-feet.Sum(force => force.XN))
                        );
                    }),
            ]
        )
        {
            Caption =
                "What acts on one rack, without partial factors; below 0 lifts. A person of 1 kN stands at the free end and in the middle of each bar along the row in turn",
        };
    }

    // What leans is small beside the wind, and must not print as nothing.
    private static string KN(double n) =>
        Math.Abs(n) is > 0.5 and < 100
            ? Invariant($"{n / 1000:0.000}")
            : Invariant($"{Math.Round(n / 1000, 2) + 0:0.00}");

    private static Table Members(RackStrength strength) =>
        new(
            [
                new("member", 1.6),
                new("section", 1.2),
                new("used", 0.6, HorizontalAnchor.Right),
                new("governed by", 2),
                new("in", 2.6),
            ],
            [
                .. strength
                    .Governing(member => $"{member.Mark} {member.Role}")
                    .Select(pair =>
                        TableRow.Of(
                            ForceTable.Named(strength.Rack.Skeleton, pair.Use.Member),
                            strength.Rack.Skeleton.Members[pair.Use.Member].Profile.Bar.Name,
                            pair.Use.Result.ShareText,
                            pair.Use.Result.Clause,
                            strength.Combinations.Strength[pair.Use.Combination].Name + pair.Held.HeldSays
                        )
                    ),
            ]
        )
        {
            Caption =
                "How far members are used, of each kind the one that is used most, by its number in the model; up to 1.00 holds",
        };

    private static Table Welds(RackStrength strength) =>
        new(
            [
                new("weld", 3),
                new("leg needed, mm", 1, HorizontalAnchor.Right),
                new("leg welded, mm", 1, HorizontalAnchor.Right),
                new("in", 3),
            ],
            [
                .. strength
                    .BothDepths.SelectMany(each => each.Joints.Select(use => (Held: each, Use: use)))
                    .GroupBy(pair => pair.Use.Name)
                    .Select(alike => alike.MaxBy(pair => pair.Use.RequiredLegMm))
                    .Select(pair =>
                        TableRow.Of(
                            pair.Use.Name,
                            pair.Use.IsHopeless ? "none does" : Invariant($"{pair.Use.RequiredLegMm:0.0}"),
                            Invariant($"{strength.Rack.Skeleton.Joints[pair.Use.Joint].Weld!.LegMm:0.0}"),
                            strength.Combinations.Strength[pair.Use.Combination].Name + pair.Held.HeldSays
                        )
                    ),
            ]
        )
        {
            Caption = "Fillet welds by their forces; throat is 0.71 of the leg",
        };

    private static Table Faces(RackStrength strength) =>
        new(
            [new("on the wall of a tube", 3), new("face used", 1, HorizontalAnchor.Right), new("in", 3)],
            [
                .. strength
                    .BothDepths.SelectMany(each => each.Faces.Select(use => (Held: each, Use: use)))
                    .GroupBy(pair => (pair.Use.Name, pair.Use.WhyNot))
                    .Select(alike => alike.MaxBy(pair => pair.Use.UseShare ?? 0))
                    .Select(pair =>
                        TableRow.Of(
                            pair.Use.Name,
                            pair.Use.UseShare is { } share ? Invariant($"{share:0.00}") : "beyond",
                            pair.Use.UseShare is null
                                ? pair.Use.WhyNot
                                : strength.Combinations.Strength[pair.Use.Combination].Name + pair.Held.HeldSays
                        )
                    ),
            ]
        )
        {
            Caption =
                "Walls of tubes on which other tubes end or across which bars lie, EN 1993-1-8, 7.5; up to 1.00 holds",
        };

    // Splices at one place of members that are alike stand in one row.
    private static Table Splices(RackStrength strength) =>
        new(
            [
                new("splice of", 2),
                new("from its start, m", 1, HorizontalAnchor.Right),
                new("throat needed, mm", 1, HorizontalAnchor.Right),
                new("wall, mm", 1, HorizontalAnchor.Right),
                new("moment over the highest", 1, HorizontalAnchor.Right),
            ],
            [
                .. strength
                    .BothDepths.SelectMany(each => each.Splices)
                    .GroupBy(use =>
                        (
                            strength.Rack.Skeleton.Members[use.Place.Member].Mark,
                            strength.Rack.Skeleton.Members[use.Place.Member].Role,
                            AtMm: Math.Round(use.Place.AtMm)
                        )
                    )
                    .Select(alike => (alike.Key, Use: alike.MaxBy(use => use.UseShare)!))
                    .Select(pair =>
                        TableRow.Of(
                            $"{pair.Key.Mark} {pair.Key.Role}",
                            Invariant($"{pair.Key.AtMm / 1000:0.00}"),
                            Invariant($"{pair.Use.ThroatMm:0.0}"),
                            Invariant($"{pair.Use.WallMm:0.0}"),
                            Invariant($"{pair.Use.MomentShare:0.00}")
                        )
                    ),
            ]
        )
        {
            Caption =
                "Butt welds of splices by the member's forces at their place; a weld through the wall has its thickness as throat",
        };

    private static Table Moves(RackStrength strength) =>
        new(
            [
                new("movement under loads without factors", 4),
                new("comes to", 1, HorizontalAnchor.Right),
                new("limit", 1, HorizontalAnchor.Right),
            ],
            [
                .. RackMoves
                    .Of(strength)
                    .Select(move =>
                        TableRow.Of(move.What, Invariant($"{move.Value:0.0000}"), Invariant($"{move.Limit:0.0000}"))
                    ),
            ]
        )
        {
            Caption = "Movements; the limits are judgement",
        };

    private static Table Others(RackChoice choice) =>
        new(
            [new("other racks that were looked at", 5), new("holds", 1), new("cost", 1, HorizontalAnchor.Right)],
            [
                .. choice
                    .Others.Take(8)
                    .Select(each => TableRow.Of(RackChoice.Says(each), HoldsSays(each), Invariant($"{each.Cost:#,0}"))),
            ]
        )
        {
            Caption =
                "Steel, concrete and labour of the racks; holds: steel, welds, modules in their holding and ground. Those that hold first, then by cost; ask: the module's card does not say what it bears when held so",
        };

    private static string HoldsSays(RackTried tried) =>
        (tried.Holds, tried.LacksWord) switch
        {
            (true, true) => "yes, ask",
            (true, false) => "yes",
            _ => "no",
        };
}

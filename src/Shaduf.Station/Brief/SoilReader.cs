using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the kind of soil at the footings and what was tested of it.</summary>
internal static class SoilReader
{
    /// <summary>Kinds of soil by the words of the brief.</summary>
    public static IReadOnlyList<(string Word, SoilKind Value)> Kinds { get; } =
    [
        ("rock", SoilKind.Rock),
        ("gravel", SoilKind.Gravel),
        ("sand", SoilKind.Sand),
        ("clay", SoilKind.Clay),
        ("expansive-clay", SoilKind.ExpansiveClay),
        ("fill", SoilKind.Fill),
        ("peat", SoilKind.Peat),
        ("loess", SoilKind.Loess),
    ];

    /// <summary>Reads the tests and holds them against one another and against the kind of soil.</summary>
    /// <param name="site">The site's mapping, its field 'soil' read.</param>
    /// <param name="kind">Kind of soil; null when unknown.</param>
    /// <returns>The tests; null when there are none.</returns>
    public static SoilTestBrief? Read(FieldMap site, SoilKind? kind)
    {
        if (site.OptionalMap("soilTest", "What was tested in a pit at the depth of the footings.") is not { } fields)
        {
            return null;
        }

        var test = new SoilTestBrief
        {
            FrictionDeg = fields.Known("frictionAngle", Measure.AngleDeg, 20, 45, "Angle of friction of the ground."),
            CohesionKPa = fields.Known("cohesion", Measure.GroundKPa, 0, 200, "Cohesion that goes with the friction."),
            UndrainedKPa = fields.Known(
                "undrained",
                Measure.GroundKPa,
                10,
                500,
                "Undrained strength of clay, by vane or in a laboratory."
            ),
            WeightKNPerM3 = fields.Known(
                "weight",
                Measure.WeightKNPerM3,
                15,
                24,
                "Weight of the ground as it lies, moist."
            ),
            BearingKPa = fields.Known(
                "bearing",
                Measure.GroundKPa,
                20,
                1000,
                "Allowable pressure that a soil report gives."
            ),
            Thumb = fields.OptionalOneOf(
                "thumb",
                [("soft", ThumbTest.Soft), ("firm", ThumbTest.Firm), ("stiff", ThumbTest.Stiff)],
                "A thumb on the clay at the bottom of the pit: in easily (soft), with a firm push (firm), hardly a mark (stiff)."
            ),
            PicketMm = fields.Known(
                "picket",
                Measure.LengthMm,
                0,
                1000,
                "How deep a man pushes a picket of 50 mm with a point into sand or gravel, with all his weight."
            ),
        };
        Check(fields, test, kind);
        fields.Done();
        return test;
    }

    private static void Check(FieldMap fields, SoilTestBrief test, SoilKind? kind)
    {
        if (!fields.AreSound())
        {
            return;
        }

        foreach (var (field, problem, accepted) in Odd(test, kind))
        {
            fields.Complain(field, problem, accepted);
        }
    }

    // Tests that cannot all be of the same ground.
    private static IEnumerable<(string Field, string Problem, string Accepted)> Odd(SoilTestBrief test, SoilKind? kind)
    {
        var isGrain = kind is SoilKind.Rock or SoilKind.Gravel or SoilKind.Sand;
        foreach (var field in isGrain ? ClayTests(test) : [])
        {
            yield return (
                field,
                "a test of clay, and the soil is not clay",
                "site.soil clay, or no such test, is accepted"
            );
        }

        if (test.PicketMm is not null && kind is SoilKind.Rock or SoilKind.Clay or SoilKind.ExpansiveClay)
        {
            yield return (
                "picket",
                "a test of sand and gravel, and the soil is neither",
                "site.soil sand or gravel, or no such test, is accepted"
            );
        }

        if (test is { CohesionKPa: not null, FrictionDeg: null })
        {
            yield return (
                "cohesion",
                "no friction goes with it",
                "cohesion with frictionAngle, or undrained, is accepted"
            );
        }

        if (test is { PicketMm: > FootingGround.LooseMm, FrictionDeg: > 34 and var friction })
        {
            yield return (
                "picket",
                Invariant($"loose ground has no friction of {friction:0.#} deg"),
                Invariant($"at most {FootingGround.LooseMm:0} mm, or at most 34 deg, is accepted")
            );
        }

        if (
            test is { Thumb: { } thumb, UndrainedKPa: { } undrained }
            && Range(thumb) is var (least, most)
            && (undrained < least || undrained > most)
        )
        {
            yield return (
                "thumb",
                Invariant($"clay of {undrained:0.#} kPa is not so under a thumb"),
                Invariant($"{least:0} kPa to {most:0} kPa goes with that")
            );
        }

        // No footing of this depth bears more than some seven times c_u before it fails.
        if (test is { BearingKPa: { } bearing, UndrainedKPa: { } strength } && bearing > 7 * strength)
        {
            yield return (
                "bearing",
                Invariant($"clay of {strength:0.#} kPa fails before it bears {bearing:0} kPa"),
                Invariant($"at most {7 * strength:0} kPa goes with that")
            );
        }
    }

    private static IEnumerable<string> ClayTests(SoilTestBrief test) =>
        new[] { ("undrained", test.UndrainedKPa is not null), ("thumb", test.Thumb is not null) }
            .Where(each => each.Item2)
            .Select(each => each.Item1);

    // Soft 20 to 40 kPa, firm 40 to 75, stiff 75 to 150, from memory, each with half as much again to both sides.
    private static (double Least, double Most) Range(ThumbTest thumb) =>
        thumb switch
        {
            ThumbTest.Soft => (10, 60),
            ThumbTest.Firm => (25, 115),
            _ => (50, 500),
        };
}

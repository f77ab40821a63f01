namespace Shaduf.Station.Tests;

/// <summary>Readings against the promise of their conditions, and what makes them miss.</summary>
public sealed class ProofTests
{
    private static readonly Design s_design = Examples.DesignOf("hilltop-village");
    private static readonly MeasuredBrief s_measured = s_design.Brief.Measured!;

    private static Proof With(Func<MeasuredBrief, MeasuredBrief> change) =>
        Proof.Of(
            s_design with
            {
                File = s_design.File with { Brief = s_design.Brief with { Measured = change(s_measured) } },
            }
        )!;

    // Readings exactly as promised.
    private static MeasuredBrief Perfect()
    {
        var promised = With(each => each).Items.ToDictionary(item => item.Kind, item => item.Promised);
        var run = s_measured.Runs[0] with { FlowM3PerH = promised[ProofKind.Flow] };
        var second = With(each => each with { Runs = [run] })
            .Items.ToDictionary(item => item.Kind, item => item.Promised);
        return s_measured with
        {
            Strings =
            [
                s_measured.Strings[0] with
                {
                    OpenV = promised[ProofKind.OpenVoltage],
                    ShortA = promised[ProofKind.ShortCurrent],
                },
            ],
            Runs =
            [
                run with
                {
                    LevelM = s_measured.RestM + second[ProofKind.Drawdown],
                    GaugeBar = second[ProofKind.Gauge],
                },
            ],
            Tank = new(2, 2 / run.FlowM3PerH),
        };
    }

    [Fact]
    public void The_example_has_one_reading_off_and_its_cause_is_named_first()
    {
        var proof = s_design.Proof!;
        var missed = Assert.Single(proof.Items, item => item.Verdict == ProofVerdict.Misses);
        Assert.Equal((ProofKind.ShortCurrent, -1), (missed.Kind, missed.Way));
        Assert.Equal("dirt", proof.Causes[0].Id);
        Assert.False(proof.IsAccepted);
        Assert.Contains(s_design.Findings, each => each.Id == "proof/short-current");
    }

    [Fact]
    public void Readings_as_promised_are_accepted()
    {
        var proof = With(_ => Perfect());
        Assert.All(proof.Items, item => Assert.Equal(ProofVerdict.Meets, item.Verdict));
        Assert.Empty(proof.Causes);
        Assert.True(proof.IsAccepted);
    }

    [Theory]
    [InlineData(0.75, 1.15, 1, 1, "valve")]
    [InlineData(0.75, 1, 1, 1, "strainer")]
    [InlineData(1, 1, 1.6, 1, "clogged-well")]
    [InlineData(1, 0.85, 1, 1.3, "main-leak")]
    [InlineData(1, 0.8, 1, 1, "gauge-wrong")]
    public void What_misses_points_at_its_cause(double flow, double gauge, double fall, double time, string cause)
    {
        var perfect = Perfect();
        var run = perfect.Runs[0] with { FlowM3PerH = flow * perfect.Runs[0].FlowM3PerH };
        var promised = With(_ => perfect with { Runs = [run] })
            .Items.ToDictionary(item => item.Kind, item => item.Promised);
        var changed = perfect with
        {
            Runs =
            [
                run with
                {
                    GaugeBar = gauge * promised[ProofKind.Gauge],
                    LevelM = perfect.RestM + (fall * promised[ProofKind.Drawdown]),
                },
            ],
            Tank = new(2, time * 2 / run.FlowM3PerH),
        };
        Assert.Equal(cause, With(_ => changed).Causes[0].Id);
    }

    [Fact]
    public void A_string_unlike_the_others_has_a_fault_of_its_own()
    {
        ProofItem Item(ProofKind kind, int number, double share) =>
            new(kind, $"string {number}", share, 1, "", 0.03, 0.01, ProofSense.Both);
        var one = ProofCause.Of([
            Item(ProofKind.OpenVoltage, 1, 1),
            Item(ProofKind.ShortCurrent, 1, 1),
            Item(ProofKind.OpenVoltage, 2, 0.9),
            Item(ProofKind.ShortCurrent, 2, 1),
        ]);
        var all = ProofCause.Of([
            Item(ProofKind.OpenVoltage, 1, 0.9),
            Item(ProofKind.ShortCurrent, 1, 1),
            Item(ProofKind.OpenVoltage, 2, 0.9),
            Item(ProofKind.ShortCurrent, 2, 1),
        ]);
        Assert.Equal(("module-out", "wrong-count"), (one[0].Id, all[0].Id));
    }

    [Fact]
    public void A_reading_off_by_no_more_than_it_is_uncertain_is_told_as_such()
    {
        var item = new ProofItem(ProofKind.Flow, "", 0.88, 1, "m3/h", 0.09, 0.04, ProofSense.AtLeast);
        Assert.Equal((ProofVerdict.Uncertain, 0), (item.Verdict, item.Way));
        Assert.Equal(ProofVerdict.Meets, (item with { Measured = 1.5 }).Verdict);
        Assert.Equal(ProofVerdict.Misses, (item with { Measured = 0.8 }).Verdict);
    }

    [Theory]
    [InlineData("strings: [{ string: 1, light: 870, cell: 50 degC }]", "measured.strings[1].light")]
    [InlineData("strings: [{ string: 1, light: 9000 W/m2, cell: 50 degC }]", "measured.strings[1].light")]
    [InlineData("strings: [{ string: 1, light: 870 lx, cell: 50 degC }]", "measured.strings[1].light")]
    [InlineData("strings: [{ string: 1, light: 870 W/m2, cell: 50 degC, open: 12 A }]", "measured.strings[1].open")]
    [InlineData("earth: 7 Mohm", "measured.earth")]
    [InlineData("earth: -3 ohm", "measured.earth")]
    [InlineData("tank: { volume: 2 m3, time: 0 h }", "measured.tank.time")]
    [InlineData(
        "pump: [{ light: 900 W/m2, cell: 50 degC, voltage: 600 V, current: 5 A, flow: -1 m3/h }]",
        "measured.pump[1].flow"
    )]
    [InlineData("on: yesterday", "measured.on")]
    [InlineData("rest: 130 m", "measured.rest")]
    [InlineData(
        "pump: [{ light: 900 W/m2, cell: 50 degC, voltage: 600 V, current: 5 A, flow: 3 m3/h, level: 111 m }]",
        "measured.pump[1].level"
    )]
    [InlineData(
        "rest: 42 m, pump: [{ light: 900 W/m2, cell: 50 degC, voltage: 600 V, current: 5 A, flow: 3 m3/h, level: 4.4 m }]",
        "measured.pump[1].level"
    )]
    public void A_reading_that_cannot_be_is_refused_at_its_place(string line, string field)
    {
        using var scratch = new Scratch();
        var text = Specimen.Brief.TrimEnd() + $"\n\nmeasured: {{ {line} }}\n";
        Assert.Contains(
            scratch.Errors(() => scratch.Read(text)),
            error => error.Contains($" {field}: ", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Readings_come_from_the_site_books_file_too()
    {
        using var scratch = new Scratch();
        scratch.Write(
            "ticks.json",
            """{ "by": "Kibo", "earth": "7.5 ohm", "ticked": [{ "point": "pits", "at": "2026-05-01T08:00" }] }"""
        );
        var brief = scratch.Read(Specimen.Brief.TrimEnd() + "\n\nmeasuredFrom: ticks.json\n").Brief;
        Assert.Equal(("Kibo", 7.5), (brief.Measured!.By, brief.Measured.EarthOhm));
        Assert.Equal([new("pits", new DateTime(2026, 5, 1, 8, 0, 0), "")], brief.Measured.Ticked);
        scratch.Write("ticks.json", """{ "earth": "7.5 V" }""");
        Assert.Contains(
            scratch.Errors(() => scratch.Read(Specimen.Brief.TrimEnd() + "\n\nmeasuredFrom: ticks.json\n")),
            error => error.Contains("ticks.json:1:", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void The_hash_covers_the_site_books_file()
    {
        using var scratch = new Scratch();
        var text = Specimen.Brief.TrimEnd() + "\n\nmeasuredFrom: ticks.json\n";
        scratch.Write("ticks.json", """{ "earth": "7.5 ohm" }""");
        var one = scratch.Read(text).Hash;
        Assert.Equal(one, scratch.Read(text).Hash);
        scratch.Write("ticks.json", """{ "earth": "7.6 ohm" }""");
        Assert.NotEqual(one, scratch.Read(text).Hash);
    }

    [Theory]
    [InlineData("""{ "by": "Kibo" """, "ticks.json:2:1: file", "not a whole file")]
    [InlineData("""{ "ticked": [{ "point": "pits", "at": "today" }] }""", "ticked[1].at", "'today' is not a time")]
    [InlineData("""{ "ticked": [{ "point": "pits" }, { "point": "pits" }] }""", "ticked", "a point is told twice")]
    [InlineData("""{ "station": "Elsewhere" }""", "measuredFrom", "of the station 'Elsewhere'")]
    [InlineData("""{ "ticked": [{ "piont": "pits" }] }""", "ticked[1].piont", "no such field")]
    [InlineData("<html>", "ticks.json:1:", "the file holds no fields")]
    [InlineData("""{ "rest": "130 m" }""", "ticks.json:1:", "below the bottom, 110 m deep")]
    public void A_file_of_the_site_book_that_cannot_be_is_refused_at_its_place(string file, string place, string says)
    {
        using var scratch = new Scratch();
        scratch.Write("ticks.json", file);
        Assert.Contains(
            scratch.Errors(() => scratch.Read(Specimen.Brief.TrimEnd() + "\n\nmeasuredFrom: ticks.json\n")),
            error => error.Contains(place, StringComparison.Ordinal) && error.Contains(says, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Ticked_holds_are_told_with_name_and_time_and_the_others_as_open()
    {
        var village = Examples.DesignOf("hilltop-village");
        var measured = village.Brief.Measured! with
        {
            Ticked =
            [
                new("pits", new(2026, 10, 2, 9, 30, 0), "Kibo"),
                new("pits/1", null, ""),
                new("well/99", null, ""),
            ],
        };
        var design = village with { File = village.File with { Brief = village.Brief with { Measured = measured } } };
        var proof = Proof.Of(design)!;
        Assert.Equal("Kibo, 2026-10-02 09:30", proof.Holds.Single(step => step.Key == "pits").Signed!.Says);
        Assert.DoesNotContain(proof.OpenHolds, step => step.Key is "pits" or "hand-over");
        Assert.Contains(proof.OpenHolds, step => step.Key == "steel");
        Assert.Equal(["well/99"], proof.StrayTicks.Select(tick => tick.Point));
        Assert.Equal(
            ["proof/holds", "proof/ticks"],
            proof.Findings().Select(finding => finding.Id).Where(id => id is "proof/holds" or "proof/ticks")
        );
        Assert.Empty(Proof.Of(village)!.Holds);
    }

    [Fact]
    public void Each_point_of_the_lists_has_a_name_of_its_own()
    {
        foreach (var name in Examples.Names)
        {
            var design = Examples.DesignOf(name);
            var points = CheckList.Of(design, MethodStatement.Of(design)).SelectMany(list => list.Points).ToList();
            Assert.Equal(points.Count, points.Select(point => point.Name).Distinct().Count());
            Assert.Contains(points, point => point.IsHold);
        }
    }
}

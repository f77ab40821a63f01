using CsCheck;

namespace Shaduf.Station.Tests;

public sealed class BriefTextTests
{
    private const string Small = """
        # First visit, in the rain.
        station:
          name: Spring farm # as the family says
          place: "At the bend: left"

        uses:
          people: { count: 11, each: 50 L/d } # counted
          livestock:
            - { animal: cattle, count: 62 }
            - animal: goat # two herds
              count: 110
        tank:
        array: { }
        """;

    private static readonly string[] s_examples = [.. Examples.Names.Select(Examples.TextOf)];

    private static BriefText Of(string text) => BriefText.Of(text + "\n");

    [Theory]
    [InlineData("station.name", "Spring farm")]
    [InlineData("station.place", "At the bend: left")]
    [InlineData("uses.people.each", "50 L/d")]
    [InlineData("uses.livestock[2].count", "110")]
    [InlineData("uses.livestock[3].count", null)]
    [InlineData("uses.people", null)]
    [InlineData("tank", null)]
    [InlineData("nothing.here", null)]
    public void A_field_is_read_by_its_path(string path, string? value) => Assert.Equal(value, Of(Small).Value(path));

    [Theory]
    [InlineData("station.name", "Autumn farm", "name: Spring farm #", "name: Autumn farm #")]
    [InlineData("station.place", "Left: #2", "\"At the bend: left\"", "\"Left: #2\"")]
    [InlineData("uses.people.count", "12", "count: 11,", "count: 12,")]
    [InlineData("uses.people.each", "{40} L/d", "each: 50 L/d }", "each: \"{40} L/d\" }")]
    [InlineData("uses.livestock[2].animal", "sheep", "goat # two", "sheep # two")]
    [InlineData("uses.people.pattern", "daytime-even", "L/d } # counted", "L/d, pattern: daytime-even } # counted")]
    [InlineData("station.client", "Amadhila", "left\"\n", "left\"\n  client: Amadhila\n")]
    [InlineData("uses.livestock[2].each", "5 L/d", "count: 110\n", "count: 110\n      each: 5 L/d\n")]
    [InlineData("uses.school.count", "60", "count: 110\n", "count: 110\n  school:\n    count: 60\n")]
    [InlineData("tank.stand", "2.5 m", "tank:\n", "tank: { stand: 2.5 m }\n")]
    [InlineData("array.tilt", "15 deg", "array: { }", "array: { tilt: 15 deg }")]
    [InlineData("array.losses.soiling", "4 %", "array: { }", "array: { losses: { soiling: 4 % } }")]
    [InlineData("guard.light", "light-12", "array: { }\n", "array: { }\nguard:\n  light: light-12\n")]
    [InlineData("prices", "-", "array: { }\n", "array: { }\nprices: \"-\"\n")]
    public void One_field_is_changed_and_every_other_letter_stays(
        string path,
        string value,
        string before,
        string after
    )
    {
        var text = Of(Small);
        Assert.Equal(text.Text.Replace(before, after), text.With(path, value).Text);
    }

    [Theory]
    [InlineData("station.place", "  place: \"At the bend: left\"\n", "")]
    [InlineData("uses.people.count", "count: 11, ", "")]
    [InlineData("uses.people.each", ", each: 50 L/d", "")]
    [InlineData("uses.people", "  people: { count: 11, each: 50 L/d } # counted\n", "")]
    [InlineData("uses.livestock[1]", "    - { animal: cattle, count: 62 }\n", "")]
    [InlineData("uses.livestock[2]", "    - animal: goat # two herds\n      count: 110\n", "")]
    [InlineData("uses.livestock[2].animal", "animal: goat # two herds\n      count", "count")]
    [InlineData("array", "array: { }\n", "")]
    [InlineData("tank", "tank:\n", "")]
    [InlineData("money", "", "")]
    public void A_field_or_an_item_is_left_out_with_its_line(string path, string before, string after)
    {
        var text = Of(Small);
        Assert.Equal(before.Length == 0 ? text.Text : text.Text.Replace(before, after), text.Without(path).Text);
    }

    [Fact]
    public void What_a_field_leaves_empty_goes_with_it() =>
        Assert.Equal("a: 1\n", BriefText.Of("a: 1\nb:\n  c: { d: 2 }\n").Without("b.c.d").Text);

    [Theory]
    [InlineData("uses.livestock", "count: 110\n", "count: 110\n    - { animal: donkey, count: 4 }\n")]
    [InlineData("uses.fixed", "count: 110\n", "count: 110\n  fixed: [{ animal: donkey, count: 4 }]\n")]
    [InlineData("tank", "tank:\n", "tank: [{ animal: donkey, count: 4 }]\n")]
    public void An_item_is_added_at_the_end(string path, string before, string after)
    {
        var text = Of(Small);
        Assert.Equal(
            text.Text.Replace(before, after),
            text.WithItem(path, [("animal", "donkey"), ("count", "4")]).Text
        );
    }

    [Fact]
    public void An_item_is_added_to_an_empty_list() =>
        Assert.Equal("a: [{ b: 1 }] # none\n", BriefText.Of("a: [ ] # none\n").WithItem("a", [("b", "1")]).Text);

    [Theory]
    [InlineData("wind: unknown # ask\n", "wind.speed", "wind: { speed: 5 m/s } # ask\n")]
    [InlineData("site:\n  wind: choose\n", "site.wind.speed", "site:\n  wind: { speed: 5 m/s }\n")]
    [InlineData("a: { b: unknown, c: 1 }\n", "a.b.d.e", "a: { b: { d: { e: 5 m/s } }, c: 1 }\n")]
    public void Fields_take_the_place_of_a_word_that_says_they_are_not_known(string text, string path, string after) =>
        Assert.Equal(after, BriefText.Of(text).With(path, "5 m/s").Text);

    [Fact]
    public void An_item_takes_the_place_of_a_word_that_says_there_is_none_known() =>
        Assert.Equal("a: [{ b: 1 }] # ask\n", BriefText.Of("a: unknown # ask\n").WithItem("a", [("b", "1")]).Text);

    [Fact]
    public void Line_breaks_of_another_system_stay()
    {
        var text = BriefText.Of("a:\r\n  b: 1 # one\r\nc: 2\r\n");
        Assert.Equal("a:\r\n  b: 1 # one\r\n  d: 3\r\nc: 2\r\n", text.With("a.d", "3").Text);
        Assert.Equal("a:\r\n  b: 1 # one\r\n", text.Without("c").Text);
    }

    [Fact]
    public void A_text_without_a_last_line_break_is_changed_at_its_end_too()
    {
        Assert.Equal("a: 1\nb: 2", BriefText.Of("a: 1").With("b", "2").Text);
        Assert.Equal("a: 1", BriefText.Of("a: 1\nb: 2").Without("b").Text);
    }

    [Theory]
    [InlineData("uses.people", "5")]
    [InlineData("station.name.first", "5")]
    [InlineData("uses.livestock[5].count", "5")]
    [InlineData("station.name", " ")]
    public void What_has_no_place_is_refused(string path, string value) =>
        Assert.Throws<ArgumentException>(() => Of(Small).With(path, value));

    [Fact]
    public void The_last_field_of_a_brief_stays() =>
        Assert.Throws<ArgumentException>(() => BriefText.Of("a: { b: 1 }").Without("a.b"));

    [Fact]
    public void A_text_that_is_not_yaml_is_refused_with_its_place() =>
        Assert.StartsWith(
            "brief.yaml:2:",
            Assert.Throws<BadInputException>(() => BriefText.Of("a: 1\n\tb: 2", "brief.yaml")).Errors[0].ToString(),
            StringComparison.Ordinal
        );

    [Fact]
    public void Any_value_in_any_field_of_any_example_reads_back_and_every_remark_stays() =>
        Gen.Select(
                Gen.Int[0, s_examples.Length - 1],
                Gen.Int[0, 10_000],
                Gen.Char["aZ9 .:#{}[],&*!|>'\"%@`-?\\\t\nä水"].Array[1, 12]
            )
            .Sample(
                (example, field, letters) =>
                {
                    var text = BriefText.Of(s_examples[example]);
                    var path = text.Paths[field % text.Paths.Count];
                    var wanted = new string(letters).Trim() is { Length: > 0 } some ? some : "x";
                    var changed = text.With(path, wanted);
                    Assert.Equal(wanted, changed.Value(path));
                    Assert.Equal(Remarks(text.Text), Remarks(changed.Text.Replace(BriefSpans.Quoted(wanted), "")));
                    Assert.Equal(text.Paths, changed.With(path, text.Value(path)!).Paths);
                    Assert.Equal(text.Paths.Count - 1, text.Without(path).Paths.Count);
                },
                iter: 300
            );

    private static IEnumerable<string> Remarks(string text) =>
        text.Split('\n').Where(line => line.Contains('#')).Select(line => line[line.IndexOf('#')..]);
}

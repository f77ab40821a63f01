using System.Text;
using CsCheck;

namespace Shaduf.Station.Tests;

/// <summary>Whatever a hand or a disk does to a brief, reading it gives a brief or a list of errors, and nothing else.</summary>
public sealed class MutatedBriefTests : IDisposable
{
    private static readonly string[] s_few =
    [
        "module-410",
        "lift-6x130",
        "drive-400-10",
        "gi-50",
        "pe-63-pn10",
        "pe-32-pn16",
        "pe-40-pn16",
        "pv-4",
        "drop-4",
        "L35x4",
        "SHS100x4",
        "tank-33",
        "light-20",
    ];

    private static readonly string[] s_lines = Specimen.Brief.Split('\n');

    private static readonly string[] s_odd =
    [
        "\t",
        "\0",
        "\u001b[31m",
        "\u2028",
        "\uFEFF",
        "\uD83D\uDE00",
        "é",
        "٣",
        ":",
        ": ",
        "- ",
        "#",
        "&a ",
        "*a ",
        "!t ",
        "{",
        "}",
        "[",
        "]",
        ",",
        "'",
        "\"",
        "|",
        ">",
        "---",
        "...",
        "%",
        "@",
        "`",
        "?",
        "<<: ",
        "null",
        "~",
        "true",
        "-",
        "1e9",
        "9999999999999999999",
        "0x1F",
        ".inf",
        "unknown",
        "choose",
        "m",
        " m",
        "°C",
        "\r",
        "\n",
        "\n  ",
        "\n\n\n",
    ];

    // Each step: what is done, where, and with what.
    private static readonly Gen<(int Kind, int At, int With)[]> s_steps = Gen.Select(
        Gen.Int[0, 5],
        Gen.Int[0, 1_000_000],
        Gen.Int[0, 1_000_000]
    ).Array[1, 6];

    private readonly Scratch scratch = new();

    public MutatedBriefTests()
    {
        scratch.WriteCards(Specimen.Cards.Keys.Except(s_few).Select(name => (name, (string?)null)));
        scratch.Write(
            "prices.yaml",
            "name: n\ncurrency: C\nminorDigits: 0\nrates: [{ item: sand, unit: m3, rate: 1 }]\n"
        );
    }

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Any_mutation_is_read_or_refused_and_never_breaks() =>
        s_steps.Sample(
            steps =>
            {
                var path = $"{Guid.NewGuid():N}.yaml";
                var text = steps.Aggregate(
                    Specimen.Brief,
                    (before, step) => Mutated(before, step.Kind, step.At, step.With)
                );
                try
                {
                    scratch.Write(path, text);
                    Assert.NotEmpty(StationFile.Read(scratch.PathOf(path)).Hash);
                }
                catch (BadInputException bad)
                {
                    Assert.NotEmpty(bad.Errors);
                    Assert.All(bad.Errors, error => AssertClear(error));
                }
            },
            iter: 2000
        );

    [Fact]
    public void Any_bytes_are_read_or_refused_and_never_break() =>
        Gen
            .Byte.Array[0, 300]
            .Sample(
                bytes =>
                {
                    var log = new FieldLog("bytes");
                    try
                    {
                        _ = YamlFile.Parse(log, bytes);
                    }
                    catch (BadInputException bad)
                    {
                        Assert.NotEmpty(bad.Errors);
                    }
                },
                iter: 3000
            );

    [Fact]
    public void Any_text_of_yaml_marks_is_read_or_refused_and_never_breaks() =>
        Gen.Int[0, s_odd.Length - 1]
            .Array[0, 30]
            .Sample(
                picks =>
                {
                    var log = new FieldLog("marks");
                    try
                    {
                        _ = YamlFile.Parse(
                            log,
                            Encoding.UTF8.GetBytes(string.Concat(picks.Select(pick => s_odd[pick])))
                        );
                    }
                    catch (BadInputException bad)
                    {
                        Assert.NotEmpty(bad.Errors);
                    }
                },
                iter: 5000
            );

    private static void AssertClear(FileError error)
    {
        Assert.True(error.Line >= 1 && error.Column >= 1, error.ToString());
        Assert.NotEmpty(error.Problem);
        Assert.NotEmpty(error.Accepted);
        Assert.DoesNotContain(error.ToString(), each => char.IsControl(each));
    }

    private static string Mutated(string text, int kind, int at, int with)
    {
        var lines = text.Split('\n').ToList();
        var line = at % lines.Count;
        switch (kind)
        {
            case 0:
                lines.RemoveAt(line);
                break;
            case 1:
                lines.Insert(line, s_lines[with % s_lines.Length]);
                break;
            case 2:
                lines[line] = lines[line].Split(':')[0] + ":" + s_lines[with % s_lines.Length].Split(':')[^1];
                break;
            case 3:
                return text[..(at % (text.Length + 1))];
            case 4:
                lines[line] = new string(' ', with % 9) + lines[line].TrimStart();
                break;
            default:
                return text.Insert(at % (text.Length + 1), s_odd[with % s_odd.Length]);
        }

        return string.Join('\n', lines);
    }
}

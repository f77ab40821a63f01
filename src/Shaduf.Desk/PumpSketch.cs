using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Shaduf.Station;
using Shaduf.Store;
using Shaduf.Working;

namespace Shaduf.Desk;

/// <summary>A pump's card as it is written from a data sheet.</summary>
internal sealed partial class PumpSketch
{
    /// <summary>Fields beside the curve, each with what a person begins from.</summary>
    public static IReadOnlyList<(string Name, string Begin)> Fields { get; } =
    [
        ("name", ""),
        ("about", "submersible pump"),
        ("motor", "three-phase"),
        ("motorPower", "2.2 kW"),
        ("motorVoltage", "400 V"),
        ("motorCurrent", "5.2 A"),
        ("motorEfficiency", "75 %"),
        ("powerFactor", "81 %"),
        ("ratedFrequency", "50 Hz"),
        ("lowestFrequency", "30 Hz"),
        ("motorDiameter", "96 mm"),
        ("diameter", "99 mm"),
        ("submergence", "1.5 m"),
        ("mass", "25 kg"),
        ("coolingSpeed", "0.08 m/s"),
    ];

    private readonly Dictionary<string, string> typed = Fields.ToDictionary(field => field.Name, field => field.Begin);

    /// <summary>What was typed into a field.</summary>
    public string this[string field]
    {
        get => typed[field];
        set => typed[field] = value;
    }

    /// <summary>The points as they were pasted: flow in m³/h, head in m, efficiency in %, one point a line; null when there were too many to take.</summary>
    public string? Points { get; set; } = "";

    /// <summary>The card when it can be read; else what is wrong with it.</summary>
    public (PumpCard? Card, IReadOnlyList<string> Faults) Read()
    {
        var (rows, fault) = Rows();
        if (fault is not null)
        {
            return (null, [fault]);
        }

        try
        {
            return (CardShelf.ReadText(TextOf(rows), "card") as PumpCard, []);
        }
        catch (BadInputException bad)
        {
            return (null, [.. bad.Errors.Select(error => $"{error.Field}: {error.Problem}; {error.Accepted}")]);
        }
    }

    /// <summary>The points that were read, as flow [m³/h] and head [m].</summary>
    public IReadOnlyList<(double FlowM3PerH, double HeadM)> Told => [.. Rows().Rows.Select(row => (row[0], row[1]))];

    /// <summary>Puts the card beside a station's brief and names it there.</summary>
    /// <returns>What the person must know; null when it was taken.</returns>
    public async Task<string?> TakeAsync(Workbench bench)
    {
        if (Read() is not ({ } card, _))
        {
            return "The card has faults: mend them first.";
        }

        var file = $"{card.Name}.yaml";
        if (StationAttachment.Fault(file, 1) is { } fault)
        {
            return fault;
        }

        var text = new StationAttachment(file, Encoding.UTF8.GetBytes(TextOf(Rows().Rows)));
        await bench.ChangeAsync(
            brief =>
                Task.FromResult<(BriefText, IReadOnlyList<FileChange>)>(
                    (brief.WithItem("ownCards", [("file", file)]), [FileChange.Put(text)])
                ),
            $"card of {card.Name}"
        );
        return null;
    }

    private string TextOf(IReadOnlyList<double[]> rows)
    {
        var text = new StringBuilder("card: pump\nplanning: no\n");
        foreach (var (name, value) in typed.Where(field => field.Value.Trim().Length > 0))
        {
            text.Append(CultureInfo.InvariantCulture, $"{name}: {BriefText.Written(value.Trim())}\n");
        }

        text.Append("curve:\n");
        foreach (var row in rows)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"  - {{ flow: {row[0]} m3/h, head: {row[1]} m, efficiency: {row[2]} % }}\n"
            );
        }

        return text.ToString();
    }

    // Three numbers a line, whatever stands between them.
    private (IReadOnlyList<double[]> Rows, string? Fault) Rows()
    {
        if (Points is null)
        {
            return ([], $"more than {Pastes.LongestText} characters were pasted; the points of one pump are accepted");
        }

        var rows = new List<double[]>();
        foreach (
            var (i, line) in Points
                .Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                .Index()
        )
        {
            var numbers = Numbers()
                .Matches(line.Replace(',', '.'))
                .Select(number => double.Parse(number.Value, CultureInfo.InvariantCulture))
                .ToArray();
            if (numbers.Length != 3)
            {
                var shown = line.Length > 40 ? line[..40] + "…" : line;
                return (
                    rows,
                    $"line {i + 1}: '{shown}' has {numbers.Length} numbers; flow m3/h, head m, efficiency % are accepted"
                );
            }

            rows.Add(numbers);
        }

        return (rows, null);
    }

    [GeneratedRegex(@"(?<![A-Za-z\d.])\d{1,9}(\.\d{1,9})?", RegexOptions.ExplicitCapture, 500)]
    private static partial Regex Numbers();
}

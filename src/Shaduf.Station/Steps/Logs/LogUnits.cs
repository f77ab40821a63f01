using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Whether the units of a log's heading can be those of its figures.</summary>
internal static class LogUnits
{
    // Ten times off is no fault of a station; half of all figures impossible is no fault of a cell: judgement.
    private const double WrongFactor = 10;
    private const double ImpossibleShare = 0.5;
    private const double FaintWPerM2 = 20;

    private static readonly IReadOnlyList<(string Unit, double Factor)> s_flows =
    [
        ("L/s", 3.6),
        ("L/min", 0.06),
        ("m3/d", 1 / 24.0),
        ("gpm", 0.2271),
        ("L/h", 0.001),
        ("m3/h", 1),
    ];

    /// <summary>Refuses a log whose figures cannot be in the units of its heading.</summary>
    /// <exception cref="BadInputException">They cannot; the place is the column's.</exception>
    public static void Check(LogReader reader, LogTally tally, IReadOnlyList<LogWeek> weeks, string file)
    {
        var log = new FieldLog(file);
        var heading = reader.Heading;
        void Wrong(LogColumn column, string problem) =>
            log.Add(
                new((int)reader.HeadingLine, heading.ColumnOf(column)),
                column.ToString().ToLowerInvariant(),
                problem,
                "the unit in which the figures were written is accepted in the heading"
            );
        foreach (var column in Enum.GetValues<LogColumn>().Where(each => each != LogColumn.Time && heading.Has(each)))
        {
            var (told, impossible) = reader.Counts(column);
            if (told > 0 && impossible > ImpossibleShare * told)
            {
                Wrong(
                    column,
                    Invariant(
                        $"{100.0 * impossible / told:0} % of the figures other than zero cannot be in '{heading.UnitOf(column)}' here"
                    )
                );
            }
        }

        if (heading.Has(LogColumn.Light) && tally.MostLightWPerM2 is > 0 and < FaintWPerM2)
        {
            Wrong(LogColumn.Light, Invariant($"no figure is above {tally.MostLightWPerM2:0.##} W/m2: are they kW/m2?"));
        }

        var (energy, expectedEnergy) = (weeks.Sum(week => week.EnergyKWh), weeks.Sum(week => week.ExpectedKWh));
        if (heading.Has(LogColumn.Power) && energy > 0 && expectedEnergy > WrongFactor * energy)
        {
            Wrong(
                LogColumn.Power,
                Invariant($"the figures are {expectedEnergy / energy:0} times smaller than the station's: are they kW?")
            );
        }

        log.ThrowIfAny();
    }

    /// <summary>The unit in which the flows of a log would be those of the station; null when they are as they stand, or in none.</summary>
    /// <param name="ratio">Flow over what was to be expected.</param>
    /// <param name="unit">Unit of the heading.</param>
    public static string? Likely(double ratio, string unit)
    {
        var own = s_flows.FirstOrDefault(each => each.Unit == unit).Factor;
        return own == 0 || ratio is > 0.6 and < 1.6
            ? null
            : s_flows
                .Where(each => each.Unit != unit && Math.Abs(Math.Log(ratio * each.Factor / own)) < 0.2)
                .Select(each => each.Unit)
                .FirstOrDefault();
    }
}

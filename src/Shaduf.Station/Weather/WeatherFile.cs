using System.Security.Cryptography;
using System.Text;
using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads a weather file of any of the three forms.</summary>
internal static class WeatherFile
{
    private const int MostErrors = 20;
    private const double FarthestKm = 500;

    /// <summary>Reads, checks and repairs a file.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="named">How the brief names it.</param>
    /// <param name="shown">Its path in errors.</param>
    /// <param name="station">The station.</param>
    /// <returns>The record.</returns>
    /// <exception cref="BadInputException">The file cannot be used; each reason is a line.</exception>
    public static WeatherRecord Read(string path, string named, string shown, Place station)
    {
        var log = new FieldLog(shown);
        try
        {
            using var file = File.OpenRead(path);
            using var hash = SHA256.Create();
            using var hashed = new CryptoStream(file, hash, CryptoStreamMode.Read);
            using var text = new StreamReader(hashed, Encoding.UTF8);
            using var lines = WeatherLines.Of(text, shown).GetEnumerator();
            var (format, table) = Table(lines, station, log);
            return Record(format, table, station, log) with
            {
                File = named,
                Hash = Convert.ToHexStringLower(hash.Hash!),
            };
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException([
                new(shown, 1, 1, "file", "the file cannot be read", "a file that this user may read is accepted"),
            ]);
        }
    }

    private static (WeatherFormat Format, WeatherTable Table) Table(
        IEnumerator<WeatherLine> lines,
        Place station,
        FieldLog log
    )
    {
        var format = Head(lines, station, log);
        log.ThrowIfAny();
        var table = new WeatherTable(format.IsTypical, log);
        while (lines.MoveNext())
        {
            if (lines.Current.Text[0] == '#')
            {
                continue;
            }

            if (format.Row(lines.Current) is { } row)
            {
                table.Add(row);
            }

            if (log.Count >= MostErrors)
            {
                log.Add(
                    new(lines.Current.Number, 1),
                    "file",
                    "reading stops after so many errors",
                    "see the lines above"
                );
                break;
            }
        }

        log.ThrowIfAny();
        return (format, table);
    }

    private static WeatherFormat Head(IEnumerator<WeatherLine> lines, Place station, FieldLog log)
    {
        var remarks = new List<WeatherLine>();
        WeatherLine? first = null;
        while (lines.MoveNext())
        {
            var line = lines.Current;
            if (line.Text[0] == '#')
            {
                remarks.Add(line);
                continue;
            }

            first = line;
            if (line.Text.StartsWith($"{EpwFormat.FirstWord},", StringComparison.Ordinal))
            {
                return EpwFormat.Head(lines, log);
            }

            if (PlainFormat.IsHeading(line, log))
            {
                return PlainFormat.Head(remarks, line, station, log);
            }

            if (
                lines.MoveNext()
                && lines.Current.Text.Contains(TmyFormat.FirstColumn, StringComparison.OrdinalIgnoreCase)
            )
            {
                return TmyFormat.Head(line, lines.Current, log);
            }

            break;
        }

        throw new BadInputException([NoHeading(log.File, first)]);
    }

    // Spreadsheets of many countries part the cells otherwise.
    private static FileError NoHeading(string file, WeatherLine? first)
    {
        var (line, text) = (first?.Number ?? 1, first?.Text ?? "");
        var parted =
            text.Count(c => c == ';') > text.Count(c => c == ',') ? "semicolons"
            : text.Contains('\t', StringComparison.Ordinal) ? "tabs"
            : null;
        return parted is not null
            ? new(
                file,
                line,
                1,
                "heading",
                $"the cells are parted by {parted}",
                "commas between the cells, and a point as decimal mark, are accepted"
            )
            : new(
                file,
                line,
                1,
                "heading",
                "this is no weather file that can be read",
                "an EPW file, a TMY file with its heading, or a CSV with the columns hour_ending or hour_beginning, global_w_m2 and air_degC is accepted"
            );
    }

    private static WeatherRecord Record(WeatherFormat format, WeatherTable table, Place station, FieldLog log)
    {
        var laterH = station.UtcOffsetH - format.Place.UtcOffsetH;
        if (laterH != Math.Round(laterH))
        {
            Refuse(
                log,
                "time zone",
                Invariant($"the file's clock is {Math.Abs(laterH):0.##} h from the station's, which is no whole hour"),
                "a whole number of hours between them is accepted"
            );
        }

        if (WeatherRecord.DistanceKm(format.Place, station) is > FarthestKm and var awayKm)
        {
            Refuse(
                log,
                "place",
                Invariant($"the record was taken {awayKm:0} km from the station"),
                Invariant($"a record within {FarthestKm} km is accepted: look at the signs of latitude and longitude")
            );
        }

        var years = table.Years((int)laterH, out var leftOut);
        if (years.Count == 0)
        {
            Refuse(log, "file", "no hour of any year has a row", "8,760 hours of a year are accepted");
        }

        var place = format.Place with { UtcOffsetH = station.UtcOffsetH };
        var read = years.Select(year => RecordYear.Of(place, year.Hours, format.IsAirAtEnd)).ToList();
        foreach (var refusal in read.SelectMany(year => year.Refusals).Take(MostErrors))
        {
            log.Add(new(refusal.Line, 1), "record", refusal.Problem, refusal.Accepted);
        }

        log.ThrowIfAny();
        var names = years.Select(year => format.IsTypical ? "typical year" : Invariant($"{year.Year}")).ToList();
        return new(
            log.File,
            format.Kind,
            "",
            place,
            read,
            names.Count > 1 && format.IsTypical ? [.. names.Select((_, i) => Invariant($"year {i + 1}"))] : names,
            table.LeapHourCount,
            leftOut,
            (int)laterH,
            format.NotUsed
        );
    }

    private static void Refuse(FieldLog log, string field, string problem, string accepted)
    {
        log.Add(new(1, 1), field, problem, accepted);
        log.ThrowIfAny();
    }
}

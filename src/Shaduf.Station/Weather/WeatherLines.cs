using System.Text;

namespace Shaduf.Station;

/// <summary>A line of a weather file.</summary>
/// <param name="Number">Line, from 1.</param>
/// <param name="Text">Its text without the line end.</param>
internal readonly record struct WeatherLine(int Number, string Text);

/// <summary>
/// The lines of a weather file as they come, so that no file can make the program grow: limits on the file, on a line and
/// on what a text may hold.
/// </summary>
internal static class WeatherLines
{
    /// <summary>Largest file accepted [bytes, counted as characters]: some 60 years of hours.</summary>
    public const int LargestMB = 64;

    private const int LongestLine = 16_384;

    /// <summary>Reads lines; blank ones are left out.</summary>
    /// <param name="text">The file.</param>
    /// <param name="shown">Its name in errors.</param>
    /// <returns>The lines in order, read as they are asked for.</returns>
    /// <exception cref="BadInputException">The file or a line is too long, or it is no text.</exception>
    public static IEnumerable<WeatherLine> Of(TextReader text, string shown)
    {
        var buffer = new char[32_768];
        var line = new StringBuilder();
        var (number, total) = (1, 0L);
        for (var count = text.Read(buffer); count > 0; count = text.Read(buffer))
        {
            total += count;
            if (total > LargestMB * 1_000_000L)
            {
                throw Bad(shown, number, "the file is too large", $"files of at most {LargestMB} MB are accepted");
            }

            for (var i = 0; i < count; i++)
            {
                if (buffer[i] == '\n')
                {
                    if (Content(line) is { } content)
                    {
                        yield return new(number, content);
                    }

                    number++;
                    line.Clear();
                }
                else if (char.IsControl(buffer[i]) && buffer[i] is not ('\r' or '\t'))
                {
                    throw Bad(
                        shown,
                        number,
                        "the file is not text",
                        "a text file with a row for each hour is accepted"
                    );
                }
                else if (line.Length == LongestLine)
                {
                    throw Bad(
                        shown,
                        number,
                        "the line is too long",
                        $"lines of at most {LongestLine} characters are accepted"
                    );
                }
                else
                {
                    line.Append(buffer[i]);
                }
            }
        }

        if (Content(line) is { } last)
        {
            yield return new(number, last);
        }
    }

    private static string? Content(StringBuilder line)
    {
        var text = line.ToString().Trim();
        return text.Length == 0 ? null : text;
    }

    private static BadInputException Bad(string shown, int line, string problem, string accepted) =>
        new([new(shown, line, 1, "file", problem, accepted)]);
}

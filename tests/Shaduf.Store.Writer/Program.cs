using System.Globalization;

namespace Shaduf.Store.Writer;

/// <summary>
/// Edits a station over and over and says each edit that was confirmed, until it is killed: the other half of the test
/// that nothing confirmed is lost.
/// </summary>
internal static class Program
{
    // What an edit writes: longer than a page of the disk, so that a torn one would show.
    private const int LineCount = 400;

    /// <summary>The brief after an edit: every line bears its number.</summary>
    private static string TextOf(int number) =>
        string.Concat(
            Enumerable.Range(0, LineCount).Select(line => FormattableString.Invariant($"l{line}: {number}\n"))
        );

    private static async Task Main(string[] args)
    {
        var store = await StationStore.OpenAsync(StoreSetting.Of(args[0]), TimeProvider.System);
        var station = (await store.ReadAsync(Guid.Parse(args[1], CultureInfo.InvariantCulture)))!;
        await using var told = Console.OpenStandardOutput();
        for (var number = station.EditNumber + 1; ; number++)
        {
            station = (await store.EditAsync(station, TextOf(number), "edit")).Now;
            await told.WriteAsync(System.Text.Encoding.ASCII.GetBytes(FormattableString.Invariant($"{number}\n")));
            await told.FlushAsync();
        }
    }
}

using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Shaduf.Store.Tests;

/// <summary>A program that is killed while it saves, again and again on one store: what was confirmed is there.</summary>
public sealed class KilledStoreTests : IDisposable
{
    // Two hundred as it stands; a short hunt makes fewer.
    private static readonly int s_killCount = (int)Math.Min(200, CsCheck.Check.Iter * 2);

    private readonly string folder = Directory.CreateTempSubdirectory("shaduf-killed-").FullName;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Nothing_confirmed_is_lost_however_often_it_is_killed()
    {
        var path = Path.Combine(folder, "stations.db");
        var store = await StationStore.OpenAsync(StoreSetting.Of(path), TimeProvider.System, Stop);
        var id = (await store.AddAsync("A", "l0: 0\n", stop: Stop)).Id;
        var (random, edits, confirmedAtAll) = (new Random(1), 0, 0);
        for (var kill = 0; kill < s_killCount; kill++)
        {
            var confirmed = await KilledAsync(path, id, 1 + random.Next(6), random.Next(8)) ?? edits;
            confirmedAtAll += confirmed > edits ? 1 : 0;
            var now = (await store.ReadAsync(id, Stop))!;
            Assert.InRange(now.EditNumber, confirmed, confirmed + 1);
            AssertWhole(now);
            edits = now.EditNumber;
        }

        Assert.Equal(s_killCount, confirmedAtAll);
        var journal = await store.JournalAsync(id, stop: Stop);
        Assert.Equal(Enumerable.Range(1, edits), journal.Select(line => line.Number));
        Assert.Equal(
            (await store.ReadAsync(id, Stop))!.Text,
            journal.Aggregate("l0: 0\n", (text, line) => line.Edit.Apply(text))
        );
        SqliteConnection.ClearAllPools();
        var again = await StationStore.OpenAsync(StoreSetting.Of(path), TimeProvider.System, Stop);
        Assert.Equal(edits, (await again.ReadAsync(id, Stop))!.EditNumber);
    }

    // The last edit that was confirmed before the kill, which falls somewhere in the edit after some; null for none.
    private static async Task<int?> KilledAsync(string path, Guid id, int confirmedFirst, int thenMs)
    {
        using var writer = Process.Start(
            new ProcessStartInfo(
                "dotnet",
                [typeof(Writer.Place).Assembly.Location, path, id.ToString("D", CultureInfo.InvariantCulture)]
            )
            {
                RedirectStandardOutput = true,
                UseShellExecute = false,
            }
        )!;
        int? last = null;
        for (var i = 0; i < confirmedFirst && await writer.StandardOutput.ReadLineAsync(Stop) is { } line; i++)
        {
            last = int.Parse(line, CultureInfo.InvariantCulture);
        }

        await Task.Delay(thenMs, Stop);
        writer.Kill();
        while (await writer.StandardOutput.ReadLineAsync(Stop) is { } line)
        {
            last = int.TryParse(line, CultureInfo.InvariantCulture, out var number)
                ? Math.Max(last ?? 0, number)
                : last;
        }

        await writer.WaitForExitAsync(Stop);
        return last;
    }

    // Every line bears the number of one and the same edit.
    private static void AssertWhole(StationText now) =>
        Assert.Single(
            now.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(": ")[1]).Distinct()
        );
}

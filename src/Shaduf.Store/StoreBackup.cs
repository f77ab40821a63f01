using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Shaduf.Store;

/// <summary>A copy of the store's file, made when the store is opened.</summary>
internal static class StoreBackup
{
    private const int Kept = 20;
    private const int Busy = 5;
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(10);

    /// <summary>Copies a store that is there into the folder <c>backups</c> beside it; the oldest beyond twenty go.</summary>
    /// <param name="file">The store's file.</param>
    /// <param name="at">The time in the copy's name.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>When it is done.</returns>
    public static async Task MakeAsync(string file, DateTimeOffset at, CancellationToken stop)
    {
        if (!File.Exists(file) || new FileInfo(file).Length == 0)
        {
            return;
        }

        var folder = Directory.CreateDirectory(Path.Combine(Path.GetDirectoryName(file)!, "backups")).FullName;
        var stem = Path.GetFileNameWithoutExtension(file);
        var time = at.UtcDateTime.ToString("yyyyMMdd-HHmmss-fffffff", CultureInfo.InvariantCulture);
        var copy = Path.Combine(folder, $"{stem}-{time}.db");
        await using (var from = new SqliteConnection(Connection(file)))
        await using (var to = new SqliteConnection(Connection(copy + ".part")))
        {
            await from.OpenAsync(stop);
            await to.OpenAsync(stop);
            await CopyAsync(from, to, stop);
        }

        // A copy that was broken off never looks like a whole one.
        File.Move(copy + ".part", copy, overwrite: true);
        foreach (var old in Directory.GetFiles(folder, $"{stem}-*.db").Order(StringComparer.Ordinal).SkipLast(Kept))
        {
            File.Delete(old);
        }
    }

    // Another window may be writing, or mending what a killed one left: the copy waits for its turn.
    private static async Task CopyAsync(SqliteConnection from, SqliteConnection to, CancellationToken stop)
    {
        var last = DateTime.UtcNow + s_patience;
        while (true)
        {
            try
            {
                from.BackupDatabase(to);
                return;
            }
            catch (SqliteException busy) when (busy.SqliteErrorCode == Busy && DateTime.UtcNow < last)
            {
                await Task.Delay(20, stop);
            }
        }
    }

    private static string Connection(string file) =>
        new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ConnectionString;
}

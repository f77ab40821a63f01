using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Shaduf.Store;

/// <summary>A copy of the store's file, made when the store is opened.</summary>
internal static class StoreBackup
{
    private const int Kept = 20;

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
            from.BackupDatabase(to);
        }

        // A copy that was broken off never looks like a whole one.
        File.Move(copy + ".part", copy, overwrite: true);
        foreach (var old in Directory.GetFiles(folder, $"{stem}-*.db").Order(StringComparer.Ordinal).SkipLast(Kept))
        {
            File.Delete(old);
        }
    }

    private static string Connection(string file) =>
        new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ConnectionString;
}

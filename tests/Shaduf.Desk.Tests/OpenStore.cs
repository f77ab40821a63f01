using Microsoft.Data.Sqlite;
using Shaduf.Store;

namespace Shaduf.Desk.Tests;

/// <summary>A store of a test's own, taken away afterwards.</summary>
internal sealed class OpenStore : IAsyncDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("shaduf-desk-test-").FullName;

    public StoreSetting Setting => StoreSetting.Of(Path.Combine(folder, "stations.db"));

    public Task<StationStore> StoreAsync() => StationStore.OpenAsync(Setting, TimeProvider.System);

    public ValueTask DisposeAsync()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
        return ValueTask.CompletedTask;
    }
}

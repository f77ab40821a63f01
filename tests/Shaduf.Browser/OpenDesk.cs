using Microsoft.AspNetCore.Builder;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Shaduf.Desk;
using Shaduf.Store;

namespace Shaduf.Browser;

/// <summary>The desk, started once on a store of its own, with one homestead in it.</summary>
public sealed class OpenDesk : IAsyncLifetime
{
    // The first design of a station may take long on a busy machine.
    private const float PatienceMs = 300_000;

    private readonly string folder = Directory.CreateTempSubdirectory("shaduf-desk-é-").FullName;
    private StoreSetting setting = null!;
    private WebApplication desk = null!;

    /// <summary>The address of the list of stations.</summary>
    public string Address { get; private set; } = "";

    /// <summary>The store behind it.</summary>
    public StationStore Store => desk.Services.GetRequiredService<StationStore>();

    /// <summary>The homestead's number.</summary>
    public Guid Homestead { get; private set; }

    public async ValueTask InitializeAsync()
    {
        setting = StoreSetting.Of(Path.Combine(folder, "stations.db"));
        desk = await DeskHost.StartAsync(new(0, setting));
        Address = DeskHost.Address(desk);
        Homestead = await AddedAsync("Dry farm");
    }

    /// <summary>Puts one more homestead into the store.</summary>
    public async Task<Guid> AddedAsync(string name)
    {
        var (text, files) = Starters.Example("homestead");
        return (await Store.AddAsync(name, text, files)).Id;
    }

    /// <summary>Opens a page of a station and waits until it is designed.</summary>
    public async Task<IPage> DesignedAsync(IBrowserContext window, Guid station, string part = "")
    {
        var page = await window.NewPageAsync();
        page.SetDefaultTimeout(PatienceMs);
        await page.GotoAsync($"{Address}/station/{station}/{part}");
        await page.WaitForSelectorAsync("main[data-live] dl.bar");
        return page;
    }

    /// <summary>
    /// The store may grow no more, as on a full disk. The limit is a connection's own: all that wait in the pool get it.
    /// </summary>
    public async Task FillDiskAsync()
    {
        var all = Enumerable.Range(0, 12).Select(_ => setting.Open()).ToList();
        foreach (var tables in all)
        {
            await tables.Database.OpenConnectionAsync();
            await tables.Database.ExecuteSqlRawAsync("PRAGMA max_page_count=1");
        }

        foreach (var tables in all)
        {
            await tables.Database.CloseConnectionAsync();
            await tables.DisposeAsync();
        }
    }

    /// <summary>Does something while another program holds the store, so that edits wait.</summary>
    public async Task WhileHeldAsync(Func<Task> act)
    {
        await using var tables = setting.Open();
        await using var held = await tables.Database.BeginTransactionAsync();
        await act();
    }

    /// <summary>There is room again.</summary>
    public static void FreeDisk() => SqliteConnection.ClearAllPools();

    public async ValueTask DisposeAsync()
    {
        await desk.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}

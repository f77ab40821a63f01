using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Microsoft.Data.Sqlite;
using Microsoft.Playwright;
using Shaduf.Desk;
using Shaduf.Store;
using static Microsoft.Playwright.Assertions;

namespace Shaduf.Browser;

/// <summary>The desk as a process of its own, killed under an open page.</summary>
public sealed class KilledDeskTests(Chromium chromium) : IClassFixture<Chromium>
{
    private const float PatienceMs = 300_000;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_desk_that_is_killed_leaves_a_notice_and_the_page_comes_back_with_all_that_was_confirmed()
    {
        await using var window = await chromium.WindowAsync();
        var folder = Directory.CreateTempSubdirectory("shaduf-killed-desk-").FullName;
        var file = Path.Combine(folder, "stations.db");
        var (text, files) = Starters.Example("homestead");
        var store = await StationStore.OpenAsync(StoreSetting.Of(file), TimeProvider.System, Stop);
        var station = await store.AddAsync("Dry farm", text, files, Stop);
        var port = FreePort();
        using var first = Started(file, port);
        var page = await window.NewPageAsync();
        page.SetDefaultTimeout(PatienceMs);
        await AnsweredAsync(port);
        await page.GotoAsync($"http://127.0.0.1:{port}/station/{station.Id}");
        await page.WaitForSelectorAsync("main[data-live] dl.bar");
        await EditAsync(page, "25");
        await Expect(page.Locator("button:text-is('Undo')")).ToBeEnabledAsync(new() { Timeout = PatienceMs });
        first.Kill();
        await first.WaitForExitAsync(Stop);
        await Expect(page.Locator("#components-reconnect-modal")).ToBeVisibleAsync(new() { Timeout = PatienceMs });
        using var second = Started(file, port);
        await Expect(page.Locator("#components-reconnect-modal")).ToBeHiddenAsync(new() { Timeout = PatienceMs });
        await page.WaitForSelectorAsync("main[data-live] dl.bar");
        await page.ClickAsync("summary:text-is('uses')");
        await page.ClickAsync("summary:text-is('people')");
        await Expect(page.Locator("#f-uses-people-count")).ToHaveValueAsync("25");
        second.Kill();
        await second.WaitForExitAsync(Stop);
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    private static async Task EditAsync(IPage page, string count)
    {
        await page.ClickAsync("summary:text-is('uses')");
        await page.ClickAsync("summary:text-is('people')");
        await page.FillAsync("#f-uses-people-count", count);
        await page.PressAsync("#f-uses-people-count", "Tab");
    }

    private static Process Started(string store, int port)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(DeskSetting).Assembly.Location, "--port", $"{port}"])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
        };
        start.Environment[StoreSetting.Variable] = store;
        return Process.Start(start)!;
    }

    private static async Task AnsweredAsync(int port)
    {
        using var caller = new HttpClient();
        for (var i = 0; i < 600; i++)
        {
            try
            {
                await caller.GetStringAsync(new Uri($"http://127.0.0.1:{port}/"), Stop);
                return;
            }
            catch (HttpRequestException)
            {
                await Task.Delay(100, Stop);
            }
        }

        Assert.Fail("the desk does not answer");
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}

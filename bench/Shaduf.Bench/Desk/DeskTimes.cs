using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Shaduf.Desk;
using Shaduf.Store;

namespace Shaduf.Bench.Desk;

/// <summary>
/// The desk in a real browser: from the server's start to the first page, from a keystroke to the redrawn figures with
/// the choice held, and twenty sessions that edit at once.
/// </summary>
internal static class DeskTimes
{
    private const int KeyCount = 25;
    private const int SessionCount = 20;
    private const int EditsEach = 5;
    private const float PatienceMs = 600_000;
    private const string Field = "#f-uses-people-count";
    private static readonly string[] s_examples = ["homestead", "hilltop-village", "river-terrace"];

    public static async Task WriteAsync(string chromium)
    {
        var folder = Directory.CreateTempSubdirectory("shaduf-desk-bench-").FullName;
        var clock = Stopwatch.StartNew();
        var desk = await DeskHost.StartAsync(new(0, StoreSetting.Of(Path.Combine(folder, "stations.db"))));
        Console.WriteLine($"server up after {clock.ElapsedMilliseconds} ms");
        var (address, store) = (DeskHost.Address(desk), desk.Services.GetRequiredService<StationStore>());
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(
            new() { ExecutablePath = chromium, Args = ["--no-sandbox", "--disable-gpu"] }
        );
        var page = await browser.NewPageAsync();
        clock.Restart();
        await page.GotoAsync(address);
        await page.WaitForSelectorAsync("main[data-live] #new-name");
        Console.WriteLine($"first page after {clock.ElapsedMilliseconds} ms");
        foreach (var example in s_examples)
        {
            var (text, files) = Starters.Example(example);
            var station = await store.AddAsync(example, text, files);
            Console.WriteLine($"{example}: {await KeyAsync(page, $"{address}/station/{station.Id}")}");
        }

        await TogetherAsync(browser, address, store);
        await desk.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    // From the keystroke to the demand in the bar of figures, seen by the page itself.
    private static async Task<string> KeyAsync(IPage page, string address)
    {
        await OpenedAsync(page, address);
        var times = new List<double>();
        for (var key = 0; key < KeyCount; key++)
        {
            times.Add(
                await page.EvaluateAsync<double>(
                    """
                    ([field, value]) => new Promise(done => {
                      const bar = document.querySelector('dl.bar'), before = bar.textContent, input = document.querySelector(field);
                      const from = performance.now();
                      const seen = new MutationObserver(() => {
                        if (bar.textContent !== before) {
                          seen.disconnect();
                          requestAnimationFrame(() => done(performance.now() - from));
                        }
                      });
                      seen.observe(bar, { subtree: true, childList: true, characterData: true });
                      input.value = value;
                      input.dispatchEvent(new Event('input', { bubbles: true }));
                    })
                    """,
                    new object[] { Field, (300 + (20 * key)).ToString(CultureInfo.InvariantCulture) }
                )
            );
        }

        times.Sort();
        return FormattableString.Invariant(
            $"keystroke to figures, {KeyCount} keys: median {times[KeyCount / 2]:0} ms, least {times[0]:0}, most {times[^1]:0}"
        );
    }

    private static async Task TogetherAsync(IBrowser browser, string address, StationStore store)
    {
        var clock = Stopwatch.StartNew();
        var (text, _) = Starters.Example("homestead");
        var errors = 0;
        await Task.WhenAll(
            Enumerable
                .Range(0, SessionCount)
                .Select(async session =>
                {
                    var station = await store.AddAsync($"Farm {session}", text);
                    await using var window = await browser.NewContextAsync();
                    var page = await window.NewPageAsync();
                    page.PageError += (_, _) => Interlocked.Increment(ref errors);
                    await OpenedAsync(page, $"{address}/station/{station.Id}");
                    for (var edit = 1; edit <= EditsEach; edit++)
                    {
                        await page.FillAsync(Field, $"{20 + edit}");
                        await page.PressAsync(Field, "Enter");
                    }

                    while (!(await page.TextContentAsync(".step"))!.StartsWith("Designed", StringComparison.Ordinal))
                    {
                        await Task.Delay(100);
                    }

                    var last = Stopwatch.StartNew();
                    while (
                        !(await store.ReadAsync(station.Id))!.Text.Contains(
                            $"count: {20 + EditsEach}",
                            StringComparison.Ordinal
                        )
                    )
                    {
                        if (last.Elapsed.TotalSeconds > 30)
                        {
                            Interlocked.Increment(ref errors);
                            break;
                        }

                        await Task.Delay(100);
                    }
                })
        );
        Console.WriteLine(
            $"{SessionCount} sessions, {EditsEach} edits each: {errors} errors, {clock.Elapsed.TotalSeconds:0} s"
        );
    }

    private static async Task OpenedAsync(IPage page, string address)
    {
        page.SetDefaultTimeout(PatienceMs);
        await page.GotoAsync(address);
        await page.WaitForSelectorAsync("dl.bar");
        await page.ClickAsync("summary:text-is('uses')");
        await page.ClickAsync("summary:text-is('people')");
        await page.WaitForSelectorAsync(Field);
    }
}

using System.Collections.Concurrent;
using System.Text;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Shaduf.Browser;

/// <summary>What goes to and fro while a person types and pastes.</summary>
public sealed class DeskTypingTests(Chromium chromium, OpenDesk desk) : IClassFixture<Chromium>, IClassFixture<OpenDesk>
{
    private const string Count = "#f-uses-people-count";

    [Fact]
    public async Task What_is_being_typed_stays_when_an_earlier_edit_is_confirmed_late()
    {
        await using var window = await chromium.WindowAsync();
        var station = await desk.AddedAsync("Slow");
        var page = await desk.DesignedAsync(window, station);
        await page.ClickAsync("summary:text-is('uses')");
        await page.ClickAsync("summary:text-is('people')");
        await desk.WhileHeldAsync(async () =>
        {
            await page.FillAsync(Count, "31");
            await page.PressAsync(Count, "Enter");
            await page.FillAsync(Count, "42");
        });
        await Expect(page.Locator("button:text-is('Undo')")).ToBeEnabledAsync(new() { Timeout = 60_000 });
        await Expect(page.Locator(Count)).ToHaveValueAsync("42");
        await page.PressAsync(Count, "Enter");
        while (!(await KeptAsync(station)).Contains("count: 42", StringComparison.Ordinal))
        {
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        await page.ClickAsync("button:text-is('Undo')");
        await Expect(page.Locator(Count)).ToHaveValueAsync("31", new() { Timeout = 60_000 });
    }

    [Fact]
    public async Task Pictures_and_pasted_points_do_not_come_through_the_circuit()
    {
        const string Points = "0 62 0\n1 60 38\n2 55 52\n3 46 55\n4 33 47\n";
        await using var window = await chromium.WindowAsync();
        var page = await window.NewPageAsync();
        page.SetDefaultTimeout(300_000);
        var told = new ConcurrentBag<string>();
        void Hear(IWebSocketFrame frame) => told.Add(frame.Text ?? Encoding.UTF8.GetString(frame.Binary!));
        page.WebSocket += (_, circuit) =>
        {
            circuit.FrameReceived += (_, frame) => Hear(frame);
            circuit.FrameSent += (_, frame) => Hear(frame);
        };
        await page.GotoAsync($"{desk.Address}/station/{desk.Homestead}");
        await page.WaitForSelectorAsync(".drawn desk-picture svg");
        await page.ClickAsync("nav.parts a:text-is('Money')");
        await page.ClickAsync("button:text-is('Show the offer')");
        await page.WaitForSelectorAsync(".page desk-picture svg");
        await page.ClickAsync("nav.parts a[href$='/cards']");
        await page.FillAsync("#points", Points);
        await page.FillAsync("#card-name", "own-3x90");
        await Expect(page.Locator(".chart svg")).ToBeVisibleAsync(new() { Timeout = 60_000 });

        Assert.Contains(told, each => each.Contains("own-3x90", StringComparison.Ordinal));
        Assert.DoesNotContain(told, each => each.Contains("<svg", StringComparison.Ordinal));
        Assert.DoesNotContain(told, each => each.Contains("1 60 38", StringComparison.Ordinal));
    }

    private async Task<string> KeptAsync(Guid station) =>
        (await desk.Store.ReadAsync(station, TestContext.Current.CancellationToken))!.Text;
}

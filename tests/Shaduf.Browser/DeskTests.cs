using System.IO.Compression;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Shaduf.Browser;

/// <summary>The desk in a real browser.</summary>
public sealed class DeskTests(Chromium chromium, OpenDesk desk) : IClassFixture<Chromium>, IClassFixture<OpenDesk>
{
    private static readonly string[] s_parts =
    [
        "",
        "water",
        "steel",
        "workshop",
        "money",
        "programme",
        "handover",
        "cards",
        "pack",
        "versions",
    ];

    [Fact]
    public async Task A_homestead_is_built_from_nothing_to_its_pack_in_under_forty_interactions()
    {
        await using var window = await chromium.WindowAsync();
        var page = await window.NewPageAsync();
        page.SetDefaultTimeout(300_000);
        await page.GotoAsync(desk.Address);
        await page.WaitForSelectorAsync("main[data-live]");
        var acts = 0;
        async Task ClickAsync(string what)
        {
            await page.ClickAsync(what);
            acts++;
        }

        async Task FillAsync(string what, string value)
        {
            await page.FillAsync(what, value);
            await page.PressAsync(what, "Enter");
            acts += 2;
        }

        await FillAsync("#new-name", "Farm of Tana");
        await page.WaitForSelectorAsync("dl.bar");
        await ClickAsync("summary:text-is('site')");
        await FillAsync("#f-site-latitude", "-12.4 deg");
        await FillAsync("#f-site-longitude", "31.2 deg");
        await ClickAsync("summary:text-is('site')");
        await ClickAsync("summary:text-is('uses')");
        await ClickAsync("summary:text-is('people')");
        await FillAsync("#f-uses-people-count", "14");
        await ClickAsync("summary:text-is('uses')");
        await ClickAsync("figcaption button:text-is('source')");
        await FillAsync("#f-source-restLevel", "21 m");
        await ClickAsync("button:text-is('Choose anew')");
        await page.WaitForSelectorAsync("text=Designed: everything chosen anew.");
        await ClickAsync("nav.parts a:text-is('Pack')");
        await ClickAsync("button:text-is('Make the pack')");
        await page.WaitForSelectorAsync("ul.files");
        var zip = await page.RunAndWaitForDownloadAsync(() => ClickAsync("a:text-is('All of it as one zip')"));
        using var pack = await ZipFile.OpenReadAsync(await zip.PathAsync(), TestContext.Current.CancellationToken);
        Assert.Contains(pack.Entries, entry => entry.Name == "engineer-book.pdf" && entry.Length > 10_000);
        Assert.Contains(pack.Entries, entry => entry.Name == "design.json");
        Assert.InRange(acts, 1, 39);
    }

    [Fact]
    public async Task By_keys_alone_a_station_is_begun_edited_and_packed()
    {
        await using var window = await chromium.WindowAsync();
        var page = await window.NewPageAsync();
        page.SetDefaultTimeout(300_000);
        await page.GotoAsync(desk.Address);
        await page.WaitForSelectorAsync("main[data-live]");
        await ToAsync(page, "e => e.id === 'new-name'");
        await page.Keyboard.TypeAsync("Keys only");
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForSelectorAsync("dl.bar");
        await ToAsync(page, "e => e.tagName === 'SUMMARY' && e.textContent.trim() === 'uses'");
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForSelectorAsync("summary:text-is('people')");
        await ToAsync(page, "e => e.tagName === 'SUMMARY' && e.textContent.trim() === 'people'");
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForSelectorAsync("#f-uses-people-count");
        await ToAsync(page, "e => e.id === 'f-uses-people-count'");
        await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.TypeAsync("19");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator("button:text-is('Undo')")).ToBeEnabledAsync(new() { Timeout = 60_000 });
        await ToAsync(page, "e => e.tagName === 'A' && e.textContent === 'Pack'", back: true);
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForSelectorAsync("button:text-is('Make the pack')");
        await ToAsync(page, "e => e.textContent === 'Make the pack'");
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForSelectorAsync("ul.files");
        await ToAsync(page, "e => e.textContent === 'All of it as one zip'");
        var zip = await page.RunAndWaitForDownloadAsync(() => page.Keyboard.PressAsync("Enter"));
        Assert.Equal("pack.zip", zip.SuggestedFilename);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task No_page_breaks_the_rules_of_access_and_none_is_wider_than_its_window(bool isDark)
    {
        await using var window = await chromium.WindowAsync(isDark: isDark);
        var page = await desk.DesignedAsync(window, desk.Homestead);
        foreach (var part in s_parts)
        {
            await page.ClickAsync($"nav.parts a[href='/station/{desk.Homestead}/{part}']");
            await page.WaitForSelectorAsync($"nav.parts a[aria-current][href='/station/{desk.Homestead}/{part}']");
            await AssertSoundAsync(page, part);
        }

        await page.GotoAsync(desk.Address);
        await page.WaitForSelectorAsync("main[data-live]");
        await AssertSoundAsync(page, "stations");
    }

    [Fact]
    public async Task What_is_typed_moves_the_figures_before_it_is_kept_and_undo_brings_them_back()
    {
        await using var window = await chromium.WindowAsync();
        var station = await desk.AddedAsync("Typed");
        var page = await desk.DesignedAsync(window, station);
        await page.ClickAsync("summary:text-is('uses')");
        await page.ClickAsync("summary:text-is('people')");
        await page.FillAsync("#f-uses-people-count", "30");
        await Expect(page.Locator(".change")).ToContainTextAsync("demand +", new() { Timeout = 60_000 });
        Assert.Equal(0, (await desk.Store.ReadAsync(station, TestContext.Current.CancellationToken))!.EditNumber);
        await page.PressAsync("#f-uses-people-count", "Enter");
        await Expect(page.Locator("button:text-is('Undo')")).ToBeEnabledAsync(new() { Timeout = 60_000 });
        await Expect(page.Locator(".step")).ToContainTextAsync("Designed", new() { Timeout = 60_000 });
        await page.ClickAsync("button:text-is('Undo')");
        await Expect(page.Locator("#f-uses-people-count")).ToHaveValueAsync("11");
        await Expect(page.Locator(".change")).ToContainTextAsync("demand -", new() { Timeout = 60_000 });
    }

    [Fact]
    public async Task Nonsense_a_pasted_page_and_a_script_are_told_beside_the_field_and_nothing_runs()
    {
        await using var window = await chromium.WindowAsync();
        var station = await desk.AddedAsync("<script>alert('name')</script>");
        var page = await desk.DesignedAsync(window, station);
        var ran = new List<string>();
        page.Dialog += async (_, dialog) =>
        {
            ran.Add(dialog.Message);
            await dialog.DismissAsync();
        };
        Assert.Equal("<script>alert('name')</script>", await page.TextContentAsync("h1"));
        await page.ClickAsync("summary:text-is('uses')");
        await page.ClickAsync("summary:text-is('people')");
        foreach (var typed in new[] { "<img src=x onerror=alert(1)>", "eleven", new string('9', 3900) })
        {
            await page.FillAsync("#f-uses-people-count", typed);
            await page.PressAsync("#f-uses-people-count", "Tab");
            await Expect(page.Locator(".row.wrong:has(#f-uses-people-count) b"))
                .ToBeVisibleAsync(new() { Timeout = 60_000 });
        }

        Assert.Empty(ran);
        await page.FillAsync("#f-uses-people-count", "12");
        await page.PressAsync("#f-uses-people-count", "Tab");
        await Expect(page.Locator(".row.wrong")).ToHaveCountAsync(0, new() { Timeout = 60_000 });
    }

    [Fact]
    public async Task A_second_window_is_told_that_the_first_was_quicker_and_overwrites_nothing()
    {
        await using var window = await chromium.WindowAsync();
        var station = await desk.AddedAsync("Two windows");
        var (first, second) = (await desk.DesignedAsync(window, station), await desk.DesignedAsync(window, station));
        foreach (var page in new[] { first, second })
        {
            await page.ClickAsync("summary:text-is('uses')");
            await page.ClickAsync("summary:text-is('people')");
        }

        await first.FillAsync("#f-uses-people-count", "21");
        await first.PressAsync("#f-uses-people-count", "Tab");
        await Expect(first.Locator("button:text-is('Undo')")).ToBeEnabledAsync(new() { Timeout = 60_000 });
        await second.FillAsync("#f-uses-people-count", "77");
        await second.PressAsync("#f-uses-people-count", "Tab");
        await Expect(second.Locator("p.message")).ToContainTextAsync("Another window", new() { Timeout = 60_000 });
        Assert.Contains(
            "count: 21",
            (await desk.Store.ReadAsync(station, TestContext.Current.CancellationToken))!.Text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Closing_the_window_in_the_middle_of_a_save_leaves_the_old_or_the_new_brief()
    {
        var station = await desk.AddedAsync("Closed");
        await using (var window = await chromium.WindowAsync())
        {
            var page = await desk.DesignedAsync(window, station);
            await page.ClickAsync("summary:text-is('uses')");
            await page.ClickAsync("summary:text-is('people')");
            await page.FillAsync("#f-uses-people-count", "33");
            await page.EvaluateAsync(
                "document.getElementById('f-uses-people-count').dispatchEvent(new Event('change', { bubbles: true }))"
            );
            await page.CloseAsync();
        }

        var kept = (await desk.Store.ReadAsync(station, TestContext.Current.CancellationToken))!.Text;
        Assert.Contains(
            kept.Contains("count: 33", StringComparison.Ordinal) ? "count: 33" : "count: 11",
            kept,
            StringComparison.Ordinal
        );
        await using var again = await chromium.WindowAsync();
        await desk.DesignedAsync(again, station);
    }

    [Theory]
    [InlineData("../../etc/passwd.yaml", "station: { name: Hostile name }\n", "")]
    [InlineData("bomb.yaml", "a: &a [x]\nb: &b [*a, *a]\nc: [*b, *b]\n", "anchor")]
    [InlineData("no.yaml", "\u0001\u0002", "")]
    public async Task A_hostile_file_gives_a_page_and_is_never_taken_for_more_than_text(
        string name,
        string text,
        string says
    )
    {
        await using var window = await chromium.WindowAsync();
        var page = await window.NewPageAsync();
        await page.GotoAsync(desk.Address);
        await page.WaitForSelectorAsync("main[data-live]");
        await page.SetInputFilesAsync(
            "#file",
            new FilePayload
            {
                Name = name,
                MimeType = "application/yaml",
                Buffer = System.Text.Encoding.UTF8.GetBytes(text),
            }
        );
        await page.ClickAsync("button:text-is('Take it in')");
        await page.WaitForURLAsync(url =>
            url.Contains("/files/new", StringComparison.Ordinal) || url.Contains("/station/", StringComparison.Ordinal)
        );
        Assert.Contains(says, await page.ContentAsync(), StringComparison.OrdinalIgnoreCase);
        await page.GotoAsync(desk.Address);
        await page.WaitForSelectorAsync("main[data-live]");
    }

    [Fact]
    public async Task Us_units_show_feet_and_leave_the_brief_as_it_is()
    {
        await using var window = await chromium.WindowAsync();
        var page = await desk.DesignedAsync(window, desk.Homestead);
        var before = (await desk.Store.ReadAsync(desk.Homestead, TestContext.Current.CancellationToken))!;
        await page.ClickAsync("figcaption button:text-is('source')");
        var metric = await page.InputValueAsync("#f-source-restLevel");
        await page.ClickAsync("button:text-is('US units')");
        await Expect(page.Locator("#f-source-restLevel"))
            .ToHaveValueAsync(new System.Text.RegularExpressions.Regex("^[0-9.]+ ft$"));
        await Expect(page.Locator("dl.bar")).ToContainTextAsync("gal/d");
        await page.ClickAsync("button:text-is('US units')");
        await Expect(page.Locator("#f-source-restLevel")).ToHaveValueAsync(metric);
        Assert.Equal(before, await desk.Store.ReadAsync(desk.Homestead, TestContext.Current.CancellationToken));
    }

    private static async Task AssertSoundAsync(IPage page, string part)
    {
        await page.SetViewportSizeAsync(1280, 900);
        var axe = await page.RunAxe();
        Assert.True(
            axe.Violations.Length == 0,
            $"'{part}': "
                + string.Join("; ", axe.Violations.Select(each => $"{each.Id}: {each.Help}: {each.Nodes[0].Html}"))
        );
        foreach (var width in new[] { 360, 768, 2560 })
        {
            await page.SetViewportSizeAsync(width, 900);
            // What is drawn for a wider window takes a moment to follow.
            for (var tried = 0; tried < 100 && await WidthAsync(page) > width; tried++)
            {
                await Task.Delay(100, TestContext.Current.CancellationToken);
            }

            Assert.True(await WidthAsync(page) <= width, $"'{part}' is wider than {width} px");
        }

        // A page written from the right is as narrow.
        await page.SetViewportSizeAsync(360, 900);
        await page.EvaluateAsync("document.documentElement.dir = 'rtl'");
        Assert.True(await WidthAsync(page) <= 360, $"'{part}' from the right is wider than 360 px");
        await page.EvaluateAsync("document.documentElement.dir = 'ltr'");
        await page.SetViewportSizeAsync(1280, 900);
    }

    private static Task<int> WidthAsync(IPage page) => page.EvaluateAsync<int>("document.documentElement.scrollWidth");

    // Steps from field to field until one is reached, as a person without a mouse does.
    private static async Task ToAsync(IPage page, string wanted, bool back = false)
    {
        for (var step = 0; step < 400; step++)
        {
            if (await page.EvaluateAsync<bool>($"({wanted})(document.activeElement)"))
            {
                return;
            }

            await page.Keyboard.PressAsync(back ? "Shift+Tab" : "Tab");
        }

        Assert.Fail($"no way by keys to {wanted}");
    }
}

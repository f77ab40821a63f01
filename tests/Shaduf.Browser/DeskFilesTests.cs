using System.IO.Compression;
using Microsoft.Playwright;
using Shaduf.Desk;
using static Microsoft.Playwright.Assertions;

namespace Shaduf.Browser;

/// <summary>Files, cards, prices and alternatives in a real browser; what goes wrong with them is told and nothing is lost.</summary>
public sealed class DeskFilesTests(Chromium chromium, OpenDesk desk) : IClassFixture<Chromium>, IClassFixture<OpenDesk>
{
    private static readonly LocatorAssertionsToBeVisibleOptions s_patient = new() { Timeout = 120_000 };

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task An_upload_of_fifty_megabytes_gives_a_page_that_says_how_much_is_taken()
    {
        await using var window = await chromium.WindowAsync();
        var page = await window.NewPageAsync();
        var folder = Directory.CreateTempSubdirectory("shaduf-large-");
        var large = Path.Combine(folder.FullName, "large.yaml");
        await File.WriteAllBytesAsync(large, new byte[50_000_000], Stop);
        await page.GotoAsync(desk.Address);
        await page.WaitForSelectorAsync("main[data-live]");
        var before = await desk.Store.ListAsync(false, Stop);
        await page.SetInputFilesAsync("#file", large);
        await page.ClickAsync("button:text-is('Take it in')");
        await Expect(page.Locator("main")).ToContainTextAsync("256 kB", new() { Timeout = 60_000 });
        await page.ClickAsync("a:text-is('Go back')");
        await page.WaitForSelectorAsync("main[data-live]");
        Assert.Equal(before.Count, (await desk.Store.ListAsync(false, Stop)).Count);
        folder.Delete(recursive: true);
    }

    [Fact]
    public async Task A_brief_of_a_newer_version_opens_with_what_is_not_known_told_beside_the_rest()
    {
        await using var window = await chromium.WindowAsync();
        var page = await window.NewPageAsync();
        page.SetDefaultTimeout(120_000);
        await page.GotoAsync(desk.Address);
        await page.WaitForSelectorAsync("main[data-live]");
        var text = Starters.Example("homestead").Text + "\ncanal: { gates: 4 }\n";
        await page.SetInputFilesAsync(
            "#file",
            new FilePayload
            {
                Name = "station.yaml",
                MimeType = "application/yaml",
                Buffer = System.Text.Encoding.UTF8.GetBytes(text),
            }
        );
        await page.ClickAsync("button:text-is('Take it in')");
        await Expect(page.Locator("ul.errors")).ToContainTextAsync("canal", new() { Timeout = 120_000 });
        var id = Guid.Parse(new Uri(page.Url).Segments[2].TrimEnd('/'));
        Assert.Equal(text, (await desk.Store.ReadAsync(id, Stop))!.Text);
    }

    [Fact]
    public async Task When_the_disk_is_full_a_page_says_so_and_the_station_stays_as_it_was()
    {
        await using var window = await chromium.WindowAsync();
        var station = await desk.AddedAsync("Full disk");
        var page = await desk.DesignedAsync(window, station, "cards");
        var kept = await desk.Store.ReadAsync(station, Stop);
        await desk.FillDiskAsync();
        try
        {
            await page.SelectOptionAsync("#beside-use", "beside");
            await page.SetInputFilesAsync(
                "#beside-file",
                new FilePayload
                {
                    Name = "photo.jpg",
                    MimeType = "image/jpeg",
                    Buffer = new byte[4_000_000],
                }
            );
            await page.ClickAsync("form.outline button:text-is('Take it in')");
            await Expect(page.Locator("main")).ToContainTextAsync("The disk is full", new() { Timeout = 60_000 });
        }
        finally
        {
            OpenDesk.FreeDisk();
        }

        Assert.Equal(kept, await desk.Store.ReadAsync(station, Stop));
        await page.ClickAsync("a:text-is('Go back')");
        await page.WaitForSelectorAsync("main[data-live] dl.bar");
    }

    [Fact]
    public async Task A_card_and_a_price_book_go_out_and_come_in_again()
    {
        await using var window = await chromium.WindowAsync();
        var page = await desk.DesignedAsync(window, await desk.AddedAsync("Cards"), "cards");
        var sent = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("a:text-is('L30x3')"));
        var card = await File.ReadAllTextAsync(await sent.PathAsync(), Stop);
        await TakeInAsync(page, "card", "own.yaml", card.Replace("name: L30x3", "name: own-angle"));
        await Expect(page.Locator("a:text-is('own-angle')")).ToBeVisibleAsync(s_patient);
        await page.ClickAsync("nav.parts a:text-is('Money')");
        var book = await page.RunAndWaitForDownloadAsync(() =>
            page.ClickAsync("a:text-is('The price book as a file')")
        );
        var prices = await File.ReadAllTextAsync(await book.PathAsync(), Stop);
        await page.ClickAsync("nav.parts a:text-is('Cards and files')");
        await TakeInAsync(page, "prices", "mine.yaml", prices.Replace("name: ", "name: Ours, "));
        await page.ClickAsync("nav.parts a:text-is('Money')");
        await Expect(page.Locator("text=Prices of Ours,")).ToBeVisibleAsync(s_patient);
        await page.ClickAsync("button:text-is('Undo')");
        await Expect(page.Locator("text=Prices of Ours,")).ToHaveCountAsync(0, new() { Timeout = 120_000 });
    }

    [Fact]
    public async Task Two_ways_to_build_stand_side_by_side()
    {
        await using var window = await chromium.WindowAsync();
        var page = await desk.DesignedAsync(window, await desk.AddedAsync("Ways"), "water");
        await page.ClickAsync("button:text-is('Lay aside as it stands')");
        await page.Locator("button.plain:has-text('beside')").First.ClickAsync();
        var table = page.Locator("table:has(caption:text-is('Alternatives in figures'))");
        await Expect(table.Locator("thead th")).ToHaveCountAsync(3);
        await Expect(table).Not.ToContainTextAsync("being designed", new() { Timeout = 240_000 });
        await Expect(table.Locator("tbody tr").First).ToContainTextAsync("%");
    }

    [Fact]
    public async Task A_pasted_data_sheet_gives_a_curve_and_a_card()
    {
        await using var window = await chromium.WindowAsync();
        var station = await desk.AddedAsync("Pasted pump");
        var page = await desk.DesignedAsync(window, station, "cards");
        await page.FillAsync("#points", "0 62 0\n1.0; 60; 38\n2.0\t55\t52\n3.0 46 55\n4.0 33 47\n");
        await page.FillAsync("#card-name", "own-pump");
        await Expect(page.Locator(".chart svg")).ToBeVisibleAsync(s_patient);
        await page.ClickAsync("button:text-is('Take the card')");
        await Expect(page.Locator("a:text-is('own-pump.yaml')")).ToBeVisibleAsync(s_patient);
        Assert.Contains("own-pump.yaml", (await desk.Store.ReadAsync(station, Stop))!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_brief_gives_the_same_design_through_the_desk_and_through_the_command()
    {
        await using var window = await chromium.WindowAsync();
        var page = await desk.DesignedAsync(window, await desk.AddedAsync("Same"));
        await page.ClickAsync("summary:text-is('uses')");
        await page.ClickAsync("summary:text-is('people')");
        await page.FillAsync("#f-uses-people-count", "17");
        await page.PressAsync("#f-uses-people-count", "Tab");
        await Expect(page.Locator("button:text-is('Undo')")).ToBeEnabledAsync(new() { Timeout = 60_000 });
        await page.ClickAsync("nav.parts a:text-is('Pack')");
        await page.ClickAsync("button:text-is('Make the pack')");
        await page.WaitForSelectorAsync("ul.files");
        var zip = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("a:text-is('All of it as one zip')"));
        var brief = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync(".acts a:text-is('station.yaml')"));
        using var pack = await ZipFile.OpenReadAsync(await zip.PathAsync(), Stop);
        using var reader = new StreamReader(await pack.GetEntry("design.json")!.OpenAsync(Stop));

        var folder = Directory.CreateTempSubdirectory("shaduf-same-").FullName;
        var path = Path.Combine(folder, "station.yaml");
        File.Copy(await brief.PathAsync(), path);
        Assert.InRange(
            await Cli
                .Commands.Root()
                .Parse(["design", path, "--out", Path.Combine(folder, "pack")])
                .InvokeAsync(cancellationToken: Stop),
            0,
            3
        );
        Assert.Equal(
            await File.ReadAllTextAsync(Path.Combine(folder, "pack", "design.json"), Stop),
            await reader.ReadToEndAsync(Stop)
        );
        Directory.Delete(folder, recursive: true);
    }

    private static async Task TakeInAsync(IPage page, string use, string name, string text)
    {
        await page.SelectOptionAsync("#beside-use", use);
        await page.SetInputFilesAsync(
            "#beside-file",
            new FilePayload
            {
                Name = name,
                MimeType = "application/yaml",
                Buffer = System.Text.Encoding.UTF8.GetBytes(text),
            }
        );
        await page.ClickAsync("form.outline button:text-is('Take it in')");
        await page.WaitForSelectorAsync($"a:text-is('{name}')");
        await page.WaitForSelectorAsync("main[data-live] dl.bar");
    }
}

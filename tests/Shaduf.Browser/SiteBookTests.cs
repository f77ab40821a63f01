using Microsoft.Playwright;
using Shaduf.Pack;
using Shaduf.Station;
using static Microsoft.Playwright.Assertions;

namespace Shaduf.Browser;

/// <summary>The site book on a small phone: 360 px wide, no network.</summary>
public sealed class SiteBookTests(Chromium chromium) : IClassFixture<Chromium>, IDisposable
{
    private static readonly Lazy<Task<(string Brief, byte[] Page)>> s_homestead = new(() => MadeAsync("homestead"));
    private static readonly Lazy<Task<(string Brief, byte[] Page)>> s_village = new(() => MadeAsync("hilltop-village"));
    private readonly string folder = Directory.CreateTempSubdirectory("shaduf browser é ").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task It_opens_without_asking_for_anything()
    {
        await using var phone = await chromium.PhoneAsync();
        var page = await phone.NewPageAsync();
        var (asked, wrong) = (new List<string>(), new List<string>());
        page.Request += (_, request) => asked.Add(request.Url);
        page.PageError += (_, error) => wrong.Add(error);
        page.Console += (_, told) => wrong.AddRange(told.Type == "error" ? [told.Text] : Array.Empty<string>());
        var url = await OpenAsync(page, await s_homestead.Value);
        Assert.Equal([url], asked);
        Assert.Empty(wrong);
        Assert.Contains("Homestead", await page.TitleAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(360)]
    [InlineData(320)]
    public async Task Nothing_is_wider_than_the_phone_and_letters_and_boxes_are_large(int width)
    {
        await using var phone = await chromium.PhoneAsync(width);
        var page = await phone.NewPageAsync();
        foreach (var made in new[] { await s_homestead.Value, await s_village.Value })
        {
            await OpenAsync(page, made);
            Assert.Equal(width, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
            var small = await page.EvaluateAsync<string[]>(
                """
                Array.from(document.querySelectorAll('p, label, li, h1, h2, td, button'))
                  .filter(e => e.offsetWidth > 0 && parseFloat(getComputedStyle(e).fontSize) < 16).map(e => e.textContent)
                """
            );
            Assert.Empty(small);
            var narrow = await page.EvaluateAsync<int>(
                "Array.from(document.querySelectorAll('button, .point')).filter(e => e.offsetWidth > 0 && e.offsetHeight < 44).length"
            );
            Assert.Equal(0, narrow);
            var twice = await page.EvaluateAsync<string[]>(
                "Array.from(document.querySelectorAll('[id]')).map(e => e.id).filter((id, i, all) => all.indexOf(id) !== i)"
            );
            Assert.Empty(twice);
        }
    }

    [Fact]
    public async Task It_is_black_on_white()
    {
        await using var phone = await chromium.PhoneAsync();
        var page = await phone.NewPageAsync();
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await OpenAsync(page, await s_homestead.Value);
        var colours = await page.EvaluateAsync<string[]>(
            """
            Array.from(document.querySelectorAll('p, label, li, h1, h2, h3, td, th, a, legend, summary'))
              .filter(e => !e.closest('#bar')).map(e => getComputedStyle(e).color).filter((c, i, all) => all.indexOf(c) === i)
            """
        );
        Assert.Equal(["rgb(0, 0, 0)"], colours);
        Assert.Equal(
            "rgb(255, 255, 255)",
            await page.EvaluateAsync<string>("getComputedStyle(document.documentElement).backgroundColor")
        );
    }

    [Fact]
    public async Task Ticks_and_readings_outlive_a_reload_and_the_file_is_read_back()
    {
        await using var phone = await chromium.PhoneAsync();
        var page = await phone.NewPageAsync();
        var made = await s_village.Value;
        await OpenAsync(page, made);
        await page.Locator("[data-text=by]").FillAsync("Kibo \"the elder\" é");
        await page.Locator("[data-point=pits]").CheckAsync();
        await page.Locator("[data-point='steel/2']").CheckAsync();
        await ReadAsync(page, "strings", ("light", "870"), ("cell", "51"), ("open", "871"), ("short", "9,7"));
        await ReadAsync(page, "station", ("rest", "41.4"), ("earth", "7.6"), ("motor", "a lot"));
        await page.Locator("[data-note=Remarks]").FillAsync("Gate sticks:\n{plane} it; 'soon' \u2028 # yes");
        await page.ReloadAsync();
        await Expect(page.Locator("[data-point=pits]")).ToBeCheckedAsync();
        await Expect(page.Locator("[data-point=concrete]")).Not.ToBeCheckedAsync();
        await Expect(page.Locator("[data-sheet=strings] [data-reading=short]")).ToHaveValueAsync("9,7");
        var measured = ReadBack(made.Brief, await SavedAsync(page));
        Assert.Equal("Kibo \"the elder\" é", measured.By);
        Assert.Equal(["pits", "steel/2"], measured.Ticked.Select(tick => tick.Point).Order());
        Assert.All(measured.Ticked, tick => Assert.Equal(measured.By, tick.By));
        Assert.All(measured.Ticked, tick => Assert.NotNull(tick.At));
        Assert.Equal(new(1, 870, 51, 871, 9.7, null), measured.Strings.Single());
        Assert.Equal((41.4, 7.6, null), (measured.RestM, measured.EarthOhm, measured.MotorMohm));
        Assert.Contains(
            measured.Notes,
            note => note is { About: "left out: Earth, motor, water, motor", Text: "a lot Mohm" }
        );
        Assert.Contains(
            measured.Notes,
            note => note.About == "Remarks" && note.Text.Contains("{plane} it", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task A_phone_that_keeps_nothing_still_ticks_and_saves()
    {
        await using var phone = await chromium.PhoneAsync();
        await phone.AddInitScriptAsync(
            "Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('refused', 'SecurityError'); } });"
        );
        var page = await phone.NewPageAsync();
        var made = await s_homestead.Value;
        await OpenAsync(page, made);
        await Expect(page.Locator("#kept")).ToBeVisibleAsync();
        await page.Locator("[data-point=pits]").CheckAsync();
        Assert.Equal(["pits"], ReadBack(made.Brief, await SavedAsync(page)).Ticked.Select(tick => tick.Point));
    }

    [Fact]
    public async Task A_file_taken_in_on_another_phone_brings_all_of_it()
    {
        var made = await s_homestead.Value;
        string file;
        await using (var first = await chromium.PhoneAsync())
        {
            var page = await first.NewPageAsync();
            await OpenAsync(page, made);
            await page.Locator("[data-point='concrete/1']").CheckAsync();
            await ReadAsync(page, "tank", ("volume", "1"), ("time", "0.6"));
            file = await SavedAsync(page);
        }

        await using var second = await chromium.PhoneAsync();
        var other = await second.NewPageAsync();
        await OpenAsync(other, made);
        await other.Locator("#take").SetInputFilesAsync(file);
        await Expect(other.Locator("[data-point='concrete/1']")).ToBeCheckedAsync();
        await Expect(other.Locator("[data-sheet=tank] [data-reading=time]")).ToHaveValueAsync("0.6");
        await File.WriteAllTextAsync(
            file,
            """{ "station": "Elsewhere", "ticked": [{ "point": "pits" }] }""",
            TestContext.Current.CancellationToken
        );
        await other.Locator("#take").SetInputFilesAsync(file);
        await Expect(other.Locator("#said")).ToContainTextAsync("Elsewhere");
        await Expect(other.Locator("[data-point=pits]")).Not.ToBeCheckedAsync();
    }

    [Fact]
    public async Task The_promise_follows_the_light_of_the_day()
    {
        await using var phone = await chromium.PhoneAsync();
        var page = await phone.NewPageAsync();
        await OpenAsync(page, await s_village.Value);
        await ReadAsync(page, "strings", ("light", "1000"), ("cell", "25"), ("open", "2"));
        var design = DesignRun.Run(StationFile.Read(Example("hilltop-village")));
        var volts = design.Choice.SeriesCount * design.Choice.Module.Sheet.OpenCircuitV;
        var lowest = volts * (1 - ProofTolerance.VoltageShare);
        await Expect(page.Locator("[data-sheet=strings] .promise"))
            .ToContainTextAsync(FormattableString.Invariant($"{lowest:0} to "));
        await Expect(page.Locator("[data-sheet=strings] .promise")).ToContainTextAsync("LOOK AGAIN");
        await ReadAsync(page, "strings", ("light", "9000"));
        await Expect(page.Locator("[data-sheet=strings] .fault").First).ToContainTextAsync("50 to 1500 W/m2");
    }

    [Fact]
    public async Task A_drawing_is_enlarged_and_closed()
    {
        await using var phone = await chromium.PhoneAsync();
        var page = await phone.NewPageAsync();
        await OpenAsync(page, await s_homestead.Value);
        await page.Locator("#set-out button.zoom").First.ClickAsync();
        var drawing = page.Locator("#viewer svg");
        var first = await drawing.BoundingBoxAsync();
        await page.Locator("[data-zoom='1.5']").ClickAsync();
        var second = await drawing.BoundingBoxAsync();
        Assert.True(first!.Width >= 700 && second!.Width > 1.4 * first.Width);
        await page.Locator("[data-zoom=close]").ClickAsync();
        await Expect(page.Locator("#viewer")).Not.ToBeVisibleAsync();
    }

    [Fact]
    public async Task It_prints()
    {
        await using var phone = await chromium.PhoneAsync();
        var page = await phone.NewPageAsync();
        await OpenAsync(page, await s_homestead.Value);
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Expect(page.Locator("#bar")).Not.ToBeVisibleAsync();
        await Expect(page.Locator("[data-point=pits]")).ToBeVisibleAsync();
        var pdf = await page.PdfAsync(new() { Format = "A4" });
        Assert.True(pdf.Length > 50_000);
    }

    private static string Example(string name)
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(root.FullName, "Shaduf.slnx")))
        {
            root = root.Parent!;
        }

        return Path.Combine(root.FullName, "examples", name, "station.yaml");
    }

    private static async Task<(string Brief, byte[] Page)> MadeAsync(string name)
    {
        var path = Example(name);
        var design = DesignRun.Run(StationFile.Read(path));
        var files = await PackWriter.FilesAsync(design, Stamp.Of(design, "test", new(2026, 3, 1)));
        return (path, files.Single(file => file.Name == "site-book.html").Bytes);
    }

    private async Task<string> OpenAsync(IPage page, (string Brief, byte[] Page) made)
    {
        var path = Path.Combine(folder, "site-book.html");
        await File.WriteAllBytesAsync(path, made.Page);
        var url = new Uri(path).AbsoluteUri;
        await page.GotoAsync(url);
        return url;
    }

    private static async Task ReadAsync(IPage page, string sheet, params (string Field, string Value)[] readings)
    {
        foreach (var (field, value) in readings)
        {
            await page.Locator($"[data-sheet={sheet}][data-number='1'] [data-reading={field}]").FillAsync(value);
        }
    }

    private async Task<string> SavedAsync(IPage page)
    {
        var saved = await page.RunAndWaitForDownloadAsync(() => page.Locator("#save").ClickAsync());
        var path = Path.Combine(folder, saved.SuggestedFilename);
        await saved.SaveAsAsync(path);
        return path;
    }

    // The example's brief with the file in place of its readings.
    private MeasuredBrief ReadBack(string brief, string file)
    {
        var text = File.ReadAllText(brief);
        var from = text.IndexOf("\nmeasured:", StringComparison.Ordinal);
        var path = Path.Combine(folder, "station.yaml");
        var examples = Path.GetDirectoryName(Path.GetDirectoryName(brief))!;
        File.WriteAllText(
            path,
            (from < 0 ? text : text[..from]).Replace("../", $"{examples}/", StringComparison.Ordinal)
                + $"\nmeasuredFrom: {Path.GetFileName(file)}\n"
        );
        return StationFile.Read(path).Brief.Measured!;
    }
}

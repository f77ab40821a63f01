using System.IO.Compression;
using System.Net;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Shaduf.Station;
using Shaduf.Store;

namespace Shaduf.Desk.Tests;

public sealed class BesideFilesTests : IAsyncLifetime
{
    private const string Brief = "# ours\nstation: { name: Far well } # told\nsite:\n  months: { rain: 3 mm }\n";

    private readonly OpenStore kept = new();
    private WebApplication desk = null!;
    private HttpClient browser = null!;
    private StationText station = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private StationStore Store => desk.Services.GetRequiredService<StationStore>();

    public async ValueTask InitializeAsync()
    {
        desk = await DeskHost.StartAsync(new(0, kept.Setting));
        browser = new(new HttpClientHandler { AllowAutoRedirect = false })
        {
            BaseAddress = new(DeskHost.Address(desk)),
            Timeout = TimeSpan.FromMinutes(5),
        };
        station = await Store.AddAsync("Far well", Brief, stop: Stop);
    }

    public async ValueTask DisposeAsync()
    {
        browser.Dispose();
        await desk.DisposeAsync();
        await kept.DisposeAsync();
    }

    [Theory]
    [InlineData("prices", "rates.csv", "prices: rates.csv")]
    [InlineData("weather", "year.csv", "weather: year.csv")]
    [InlineData("readings", "readings.json", "measuredFrom: readings.json")]
    [InlineData("beside", "photo.jpg", "# told")]
    public async Task A_file_is_one_edit_that_lays_it_beside_the_brief_and_names_it(
        string use,
        string name,
        string named
    )
    {
        var answer = await SendAsync(use, name, [1, 2, 3]);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        var now = (await Store.ReadAsync(station.Id, Stop))!;
        Assert.Equal(1, now.EditNumber);
        Assert.Contains(named, now.Text, StringComparison.Ordinal);
        Assert.Equal([1, 2, 3], await browser.GetByteArrayAsync(At($"beside/{name}"), Stop));
        await Store.TakeBackAsync(now, 1, "undo", Stop);
        Assert.Equal(Brief, (await Store.ReadAsync(station.Id, Stop))!.Text);
        Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync(At($"beside/{name}"), Stop)).StatusCode);
    }

    [Fact]
    public async Task A_card_comes_in_once_and_goes_out_as_it_came()
    {
        var card = await File.ReadAllTextAsync(Path.Combine(StationFile.ShippedCards, "L30x3.yaml"), Stop);
        var own = Encoding.UTF8.GetBytes(card.Replace("name: L30x3", "name: own-angle", StringComparison.Ordinal));
        for (var time = 0; time < 2; time++)
        {
            Assert.Equal(HttpStatusCode.Redirect, (await SendAsync("card", "own-angle.yaml", own)).StatusCode);
        }

        var text = (await Store.ReadAsync(station.Id, Stop))!.Text;
        Assert.Equal("own-angle.yaml", BriefText.Of(text).Value("ownCards[1].file"));
        Assert.Equal(1, BriefText.Of(text).ItemCount("ownCards"));
        Assert.Equal(own, await browser.GetByteArrayAsync(At("card/own-angle"), Stop));
        Assert.Equal(card, await browser.GetStringAsync(At("card/L30x3"), Stop));
        Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync(At("card/none"), Stop)).StatusCode);
    }

    [Theory]
    [InlineData("card", "pump.yaml", "card: pump\nname: 7\n", "pump.yaml:")]
    [InlineData("beside", "..", "x", "was not taken")]
    [InlineData("beside", "tür?.csv", "x", "latin letters")]
    public async Task What_is_refused_gives_a_page_that_says_why_and_changes_nothing(
        string use,
        string name,
        string text,
        string says
    )
    {
        var answer = await SendAsync(use, name, Encoding.UTF8.GetBytes(text));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(says, await answer.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
        Assert.Equal(station, await Store.ReadAsync(station.Id, Stop));
    }

    [Fact]
    public async Task A_file_of_fifty_megabytes_is_refused_by_a_page()
    {
        var answer = await SendAsync("beside", "log.csv", new byte[50_000_000]);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("at most 16 MB", await answer.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
        Assert.Empty(await Store.Files.ListAsync(station.Id, Stop));
    }

    [Fact]
    public async Task A_page_elsewhere_cannot_lay_a_file_here()
    {
        var answer = await SendAsync("beside", "a.csv", [1], "https://elsewhere.example");
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Empty(await Store.Files.ListAsync(station.Id, Stop));
    }

    [Fact]
    public async Task Pasted_text_becomes_a_file()
    {
        using var form = new MultipartFormDataContent
        {
            { new StringContent("beside"), "use" },
            { new StringContent("notes.txt"), "name" },
            { new StringContent("ask the mason"), "text" },
        };
        Assert.Equal(HttpStatusCode.Redirect, (await PostAsync(form, OwnOrigin)).StatusCode);
        Assert.Equal("ask the mason", await browser.GetStringAsync(At("beside/notes.txt"), Stop));
    }

    [Fact]
    public async Task The_zip_holds_the_brief_and_its_files()
    {
        await SendAsync("beside", "a.csv", [1]);
        var zip = await browser.GetByteArrayAsync(At("station.zip"), Stop);
        await using var archive = new ZipArchive(new MemoryStream(zip));
        Assert.Equal(["station.yaml", "a.csv"], archive.Entries.Select(entry => entry.FullName));
    }

    private string OwnOrigin => browser.BaseAddress!.ToString().TrimEnd('/');

    private Uri At(string what) => new($"/files/{station.Id}/{what}", UriKind.Relative);

    private Task<HttpResponseMessage> SendAsync(string use, string name, byte[] bytes, string? origin = null)
    {
        var form = new MultipartFormDataContent
        {
            { new StringContent(use), "use" },
            { new ByteArrayContent(bytes), "file", name },
        };
        return PostAsync(form, origin ?? OwnOrigin);
    }

    private async Task<HttpResponseMessage> PostAsync(MultipartFormDataContent form, string origin)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, At("beside")) { Content = form };
        request.Headers.Add("Origin", origin);
        return await browser.SendAsync(request, Stop);
    }
}

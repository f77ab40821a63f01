using System.IO.Compression;
using System.Net;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Shaduf.Pack;
using Shaduf.Station;
using Shaduf.Store;

namespace Shaduf.Desk.Tests;

/// <summary>The desk as a server, asked over plain HTTP.</summary>
public sealed class DeskHostTests : IAsyncLifetime
{
    private readonly OpenStore kept = new();
    private WebApplication desk = null!;
    private HttpClient browser = null!;

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
    }

    public async ValueTask DisposeAsync()
    {
        browser.Dispose();
        await desk.DisposeAsync();
        await kept.DisposeAsync();
    }

    [Theory]
    [InlineData("/", HttpStatusCode.OK)]
    [InlineData("/desk.css", HttpStatusCode.OK)]
    [InlineData("/_framework/blazor.web.js", HttpStatusCode.OK)]
    [InlineData("/nothing", HttpStatusCode.NotFound)]
    [InlineData("/files/00000000-0000-0000-0000-000000000000/station.yaml", HttpStatusCode.NotFound)]
    [InlineData("/files/../stations.db", HttpStatusCode.NotFound)]
    public async Task Pages_answer(string path, HttpStatusCode status) =>
        Assert.Equal(status, (await browser.GetAsync(new Uri(path, UriKind.Relative), Stop)).StatusCode);

    [Fact]
    public async Task It_listens_on_this_computer_only_and_under_its_own_names()
    {
        Assert.True(browser.BaseAddress!.IsLoopback);
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        request.Headers.Host = "desk.example";
        Assert.Equal(HttpStatusCode.Forbidden, (await browser.SendAsync(request, Stop)).StatusCode);
    }

    [Fact]
    public async Task Nothing_that_a_page_names_lies_on_another_computer()
    {
        var page = await browser.GetStringAsync(new Uri("/", UriKind.Relative), Stop);
        Assert.DoesNotContain("http://", page.Replace(DeskHost.Address(desk), ""), StringComparison.Ordinal);
        Assert.DoesNotContain("https://", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_brief_from_a_file_goes_out_again_to_the_letter()
    {
        const string Brief = "# ours\nstation: { name: Far well } # told\n";
        var answer = await SendAsync(Encoding.UTF8.GetBytes(Brief), browser.BaseAddress!.ToString());
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        var entry = Assert.Single(await Store.ListAsync(false, Stop));
        Assert.Equal("Far well", entry.Name);
        Assert.Equal(
            Brief,
            await browser.GetStringAsync(new Uri($"/files/{entry.Id}/station.yaml", UriKind.Relative), Stop)
        );
    }

    [Fact]
    public async Task A_script_in_a_name_is_shown_and_not_run()
    {
        await Store.AddAsync("<script>alert(1)</script>", "a: 1\n", stop: Stop);
        var page = await browser.GetStringAsync(new Uri("/", UriKind.Relative), Stop);
        Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;alert", page, StringComparison.Ordinal);
    }

    public static TheoryData<byte[]> Hostile =>
        [
            Array.Empty<byte>(),
            new byte[] { 0xff, 0xfe, 0x00 },
            new byte[50_000_000],
            Encoding.UTF8.GetBytes("a: &x [1, 2]\nb: [*x, *x, *x]\n"),
            Encoding.UTF8.GetBytes(new string('[', 5000)),
            Encoding.UTF8.GetBytes("a: 1\n\0b: 2\n"),
        ];

    [Theory]
    [MemberData(nameof(Hostile))]
    public async Task A_file_that_is_no_brief_is_told_and_not_kept(byte[] bytes)
    {
        var answer = await SendAsync(bytes, browser.BaseAddress!.ToString());
        Assert.InRange((int)answer.StatusCode, 400, 499);
        Assert.NotEmpty(await answer.Content.ReadAsStringAsync(Stop));
        Assert.Empty(await Store.ListAsync(false, Stop));
    }

    [Fact]
    public async Task A_page_elsewhere_cannot_put_a_file_here()
    {
        Assert.Equal(
            HttpStatusCode.Forbidden,
            (await SendAsync("station: { name: A }\n"u8.ToArray(), "https://elsewhere.example")).StatusCode
        );
        Assert.Empty(await Store.ListAsync(false, Stop));
    }

    [Fact]
    public async Task The_pack_from_the_desk_holds_the_same_design_as_the_command_writes()
    {
        var (text, files) = Starters.Example("homestead");
        var station = await Store.AddAsync("Dry farm", text, files, Stop);
        var zip = await browser.GetByteArrayAsync(new Uri($"/files/{station.Id}/pack.zip", UriKind.Relative), Stop);
        await using var archive = new ZipArchive(new MemoryStream(zip));
        using var reader = new StreamReader(await archive.GetEntry("design.json")!.OpenAsync(Stop));

        var folder = Directory.CreateTempSubdirectory("shaduf-same-").FullName;
        var path = Path.Combine(folder, "station.yaml");
        await File.WriteAllTextAsync(path, text, Stop);
        var design = DesignRun.Run(StationFile.Read(path));
        Directory.Delete(folder, recursive: true);
        var stamp = Stamp.Of(design, Downloads.Version, DateOnly.FromDateTime(DateTime.Today));
        var pack = (await PackWriter.FilesAsync(design, stamp)).ToDictionary(file => file.Name, file => file.Bytes);
        Assert.Equal(Encoding.UTF8.GetString(pack["design.json"]), await reader.ReadToEndAsync(Stop));
        Assert.Equal(pack.Keys.Order(), archive.Entries.Select(entry => entry.FullName).Order());
    }

    private async Task<HttpResponseMessage> SendAsync(byte[] bytes, string origin)
    {
        using var form = new MultipartFormDataContent { { new ByteArrayContent(bytes), "file", "../../station.yaml" } };
        using var request = new HttpRequestMessage(HttpMethod.Post, "/files/new") { Content = form };
        request.Headers.Add("Origin", origin.TrimEnd('/'));
        return await browser.SendAsync(request, Stop);
    }
}

using System.IO.Compression;
using System.Reflection;
using System.Text;
using Microsoft.AspNetCore.Http.Metadata;
using Shaduf.Pack;
using Shaduf.Station;
using Shaduf.Store;

namespace Shaduf.Desk;

/// <summary>Files leave and come over plain HTTP, not through the pages' circuit.</summary>
internal static class Downloads
{
    /// <summary>Version of the program.</summary>
    public static string Version { get; } =
        typeof(Downloads).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

    // The viewer of the solid model, bundled when the program is built.
    private static readonly Lazy<byte[]> s_viewer = new(() =>
    {
        using var stream = typeof(Downloads).Assembly.GetManifestResourceStream("model.js")!;
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    });

    /// <summary>Adds the ways of files.</summary>
    public static void Map(WebApplication desk)
    {
        desk.MapGet("/files/{id:guid}/station.yaml", BriefAsync);
        desk.MapGet("/files/{id:guid}/pack.zip", PackAsync);
        desk.MapGet("/files/{id:guid}/pack/{name}", One);
        desk.MapGet("/files/{id:guid}/station.glb", ModelAsync);
        desk.MapGet("/fonts/{name}", Font);
        desk.MapGet("/model.js", () => Results.Bytes(s_viewer.Value, "text/javascript"));
        desk.MapPost("/files/new", TakeAsync).DisableAntiforgery().WithMetadata(new LargestUpload());
    }

    private static async Task<IResult> BriefAsync(Guid id, StationStore store) =>
        await store.ReadAsync(id) is { } station
            ? Results.File(Encoding.UTF8.GetBytes(station.Text), "application/yaml", "station.yaml")
            : Results.NotFound();

    // The fonts of the drawings, which travel inside the pack's assembly.
    private static IResult Font(string name) =>
        typeof(SvgRenderer).Assembly.GetManifestResourceStream($"fonts/{name}") is { } font
            ? Results.Stream(font, "font/ttf")
            : Results.NotFound();

    // The pack that was made last; a browser that asks for one that is none yet gets it made.
    private static async Task<IResult> PackAsync(Guid id, StationStore store, PackJobs jobs, CancellationToken stop)
    {
        if (await store.ReadAsync(id, stop) is not { } station)
        {
            return Results.NotFound();
        }

        var job =
            jobs.Of(id) is { Files.Count: > 0 } made && made.EditNumber == station.EditNumber
                ? made
                : jobs.Start(station);
        while (!job.IsOver)
        {
            await Task.Delay(50, stop);
        }

        return job.Files.Count == 0
            ? Results.BadRequest(job.Trouble)
            : Results.File(Zipped(job.Files), "application/zip", "pack.zip");
    }

    private static IResult One(Guid id, string name, PackJobs jobs) =>
        jobs.Of(id)?.Files.FirstOrDefault(file => file.Name == name) is ({ } found, var bytes)
            ? Results.File(bytes, TypeOf(found), found)
            : Results.NotFound();

    private static async Task<IResult> ModelAsync(
        Guid id,
        StationStore store,
        Digests digests,
        CancellationToken stop
    ) =>
        await store.ReadAsync(id, stop) is not null && digests.DesignOf(id) is { } design
            ? Results.File(GlbRenderer.Write(StationModel.Of(design)), "model/gltf-binary", "station.glb")
            : Results.NotFound();

    private static byte[] Zipped(IReadOnlyList<(string Name, byte[] Bytes)> files)
    {
        using var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, bytes) in files)
            {
                using var entry = archive.CreateEntry(name).Open();
                entry.Write(bytes);
            }
        }

        return zip.ToArray();
    }

    // Nothing that a page could run: drawings go out as files to keep.
    private static string TypeOf(string name) =>
        Path.GetExtension(name) switch
        {
            ".pdf" => "application/pdf",
            ".json" => "application/json",
            ".csv" => "text/csv",
            _ => "application/octet-stream",
        };

    // A brief from a file: its station is opened at once; what is wrong with it stands beside the fields there.
    private static async Task<IResult> TakeAsync(IFormFile file, StationStore store, HttpRequest request)
    {
        if (!IsOwnPage(request))
        {
            return Results.StatusCode(StatusCodes.Status403Forbidden);
        }

        if (file.Length > StationStore.LongestText)
        {
            return Results.BadRequest(
                $"A brief has at most {StationStore.LongestText / 1024} kB; this file has {file.Length / 1024} kB."
            );
        }

        try
        {
            using var reader = new StreamReader(
                file.OpenReadStream(),
                new UTF8Encoding(false, throwOnInvalidBytes: true)
            );
            var text = await reader.ReadToEndAsync();
            var name = BriefText.Of(text).Value("station.name") ?? "Station without a name";
            var station = await store.AddAsync(name[..Math.Min(name.Length, 80)], text);
            return Results.Redirect($"/station/{station.Id}");
        }
        catch (Exception trouble) when (trouble is BadInputException or ArgumentException or StoreException)
        {
            return Results.BadRequest(
                trouble is DecoderFallbackException ? "This is not a text file in UTF-8." : trouble.Message
            );
        }
    }

    // Far more than is kept: a file that is too large is answered with a page and not with a broken line.
    private sealed class LargestUpload : IRequestSizeLimitMetadata
    {
        public long? MaxRequestBodySize => 1024L * 1024 * 1024;
    }

    // Another site's page may post a form here; the browser tells whose page it was.
    private static bool IsOwnPage(HttpRequest request) =>
        request.Headers.Origin is [{ } origin]
        && Uri.TryCreate(origin, UriKind.Absolute, out var from)
        && from.Authority == request.Host.Value;
}

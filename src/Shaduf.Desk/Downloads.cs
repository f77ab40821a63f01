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

    /// <summary>Adds the ways of files.</summary>
    public static void Map(WebApplication desk)
    {
        desk.MapGet("/files/{id:guid}/station.yaml", BriefAsync);
        desk.MapGet("/files/{id:guid}/pack.zip", PackAsync);
        desk.MapPost("/files/new", TakeAsync).DisableAntiforgery().WithMetadata(new LargestUpload());
    }

    private static async Task<IResult> BriefAsync(Guid id, StationStore store) =>
        await store.ReadAsync(id) is { } station
            ? Results.File(Encoding.UTF8.GetBytes(station.Text), "application/yaml", "station.yaml")
            : Results.NotFound();

    private static async Task<IResult> PackAsync(Guid id, StationStore store, CancellationToken stop)
    {
        if (await store.ReadAsync(id, stop) is not { } station)
        {
            return Results.NotFound();
        }

        var folder = Directory.CreateTempSubdirectory("shaduf-pack-").FullName;
        try
        {
            foreach (var file in await store.Files.ListAsync(id, stop))
            {
                await File.WriteAllBytesAsync(Path.Combine(folder, file.Name), file.Bytes, stop);
            }

            var design = PackWriter.Legible(
                DesignRun.Run(StationFile.Of(station.Text, folder), _ => stop.ThrowIfCancellationRequested())
            );
            var files = await PackWriter.FilesAsync(
                design,
                Stamp.Of(design, Version, DateOnly.FromDateTime(DateTime.Today))
            );
            var zip = new MemoryStream();
            using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
            {
                foreach (var (name, bytes) in files)
                {
                    await using var entry = await archive.CreateEntry(name).OpenAsync(stop);
                    await entry.WriteAsync(bytes, stop);
                }
            }

            return Results.File(zip.ToArray(), "application/zip", "pack.zip");
        }
        catch (BadInputException bad)
        {
            return Results.BadRequest(bad.Message);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

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

using System.Reflection;
using System.Text;
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
        BesideFiles.Map(desk);
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

    // The pack that is being made or was made last, as its page says; a browser that asks for one that is none yet gets it made.
    private static async Task<IResult> PackAsync(Guid id, StationStore store, PackJobs jobs, CancellationToken stop)
    {
        if (await store.ReadAsync(id, stop) is not { } station)
        {
            return Results.NotFound();
        }

        var job = jobs.Of(id) is { IsOver: false } or { Files.Count: > 0 } ? jobs.Of(id)! : jobs.Start(station);
        while (!job.IsOver)
        {
            await Task.Delay(50, stop);
        }

        return job.Files.Count == 0
            ? Results.BadRequest(job.Trouble)
            : Results.File(BesideFiles.Zipped(job.Files), "application/zip", "pack.zip");
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

    // Nothing that a page could run: drawings go out as files to keep.
    private static string TypeOf(string name) =>
        Path.GetExtension(name) switch
        {
            ".pdf" => "application/pdf",
            ".json" => "application/json",
            ".csv" => "text/csv",
            _ => "application/octet-stream",
        };

    // A brief from a file, with the files that it names: its station is opened at once; what is wrong with it stands
    // beside the fields there.
    private static async Task<IResult> TakeAsync(IFormFileCollection files, StationStore store, HttpRequest request)
    {
        if (!IsOwnPage(request))
        {
            return Results.StatusCode(StatusCodes.Status403Forbidden);
        }

        try
        {
            if (BriefAmong(files) is not { } brief)
            {
                return BesideFiles.Refused(
                    ["Which of these is the brief? Choose one .yaml file, or name it station.yaml."],
                    "/"
                );
            }

            if (brief.Length > StationStore.LongestText)
            {
                var most = StationStore.LongestText / 1024;
                return BesideFiles.Refused(
                    [$"A brief has at most {most} kB; this file has {brief.Length / 1024:#,0} kB."],
                    "/"
                );
            }

            using var reader = new StreamReader(
                brief.OpenReadStream(),
                new UTF8Encoding(false, true),
                detectEncodingFromByteOrderMarks: false
            );
            var text = (await reader.ReadToEndAsync()).TrimStart('\uFEFF');
            var name = BriefText.Of(text).Value("station.name") ?? "Station without a name";
            var others = await Task.WhenAll(files.Where(file => file != brief).Select(BesideFiles.ReadAsync));
            var station = await store.AddAsync(name[..Math.Min(name.Length, 80)], text, others);
            return Results.Redirect($"/station/{station.Id}");
        }
        catch (Exception trouble) when (trouble is BadInputException or ArgumentException or StoreException)
        {
            return BesideFiles.Refused(
                [trouble is DecoderFallbackException ? "This is not a text file in UTF-8." : trouble.Message],
                "/"
            );
        }
    }

    private static IFormFile? BriefAmong(IFormFileCollection files)
    {
        var briefs = files.Where(file => Path.GetExtension(file.FileName) is ".yaml" or ".yml").ToList();
        return files.Count == 1 ? files[0]
            : briefs.Count == 1 ? briefs[0]
            : briefs.FirstOrDefault(file => Path.GetFileNameWithoutExtension(file.FileName) == "station");
    }

    /// <summary>Whether a form is this desk's own: the browser tells whose page it was, and another site may post here.</summary>
    public static bool IsOwnPage(HttpRequest request) =>
        request.Headers.Origin is [{ } origin]
        && Uri.TryCreate(origin, UriKind.Absolute, out var from)
        && from.Authority == request.Host.Value;
}

using System.IO.Compression;
using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using Shaduf.Desk.Pages;
using Shaduf.Station;
using Shaduf.Store;

namespace Shaduf.Desk;

/// <summary>Files beside a brief come and go over plain HTTP; each that comes is an edit of the station.</summary>
internal static class BesideFiles
{
    // How often an upload meets another window's edit before it gives up.
    private const int MostTries = 5;

    /// <summary>Adds the ways of these files.</summary>
    public static void Map(WebApplication desk)
    {
        desk.MapGet("/files/{id:guid}/beside/{name}", OneAsync);
        desk.MapGet("/files/{id:guid}/card/{name}", CardAsync);
        desk.MapGet("/files/{id:guid}/prices.yaml", PricesAsync);
        desk.MapGet("/files/{id:guid}/station.zip", AllAsync);
        desk.MapPost("/files/{id:guid}/beside", TakeAsync).DisableAntiforgery().WithMetadata(new LargestUpload());
    }

    /// <summary>Reads a form's file.</summary>
    /// <exception cref="ArgumentException">Its name or size is refused; the message says it plainly.</exception>
    public static async Task<StationAttachment> ReadAsync(IFormFile file)
    {
        // A browser may send the path on the person's own computer.
        var name = file.FileName[(file.FileName.LastIndexOfAny(['/', '\\']) + 1)..];
        if (StationAttachment.Fault(name, file.Length) is { } fault)
        {
            throw new ArgumentException($"'{(name.Length > 80 ? name[..80] + "…" : name)}' was not taken. {fault}");
        }

        using var bytes = new MemoryStream();
        await file.CopyToAsync(bytes);
        return new(name, bytes.ToArray());
    }

    private static async Task<IResult> OneAsync(Guid id, string name, StationStore store) =>
        (await store.Files.ListAsync(id)).FirstOrDefault(file => file.Name == name) is { } file
            ? Results.File(file.Bytes, "application/octet-stream", file.Name)
            : Results.NotFound();

    // A card by its own name, as the file that it was read from: the station's own first, then those of the program.
    private static async Task<IResult> CardAsync(Guid id, string name, StationStore store)
    {
        var own = (await store.Files.ListAsync(id))
            .Where(file => file.Name.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase))
            .Select(file => Encoding.UTF8.GetString(file.Bytes));
        var shipped = Directory.GetFiles(StationFile.ShippedCards, "*.yaml").Select(File.ReadAllText);
        return own.Concat(shipped).FirstOrDefault(text => NameIn(text) == name) is { } card
            ? Results.File(Encoding.UTF8.GetBytes(card), "application/yaml", $"{name}.yaml")
            : Results.NotFound();
    }

    private static string? NameIn(string text)
    {
        try
        {
            return BriefText.Of(text).Value("name");
        }
        catch (BadInputException)
        {
            return null;
        }
    }

    // The rates that the station uses: its own book, or the one that comes with the program.
    private static async Task<IResult> PricesAsync(Guid id, StationStore store)
    {
        if (await store.ReadAsync(id) is not { } station)
        {
            return Results.NotFound();
        }

        var named = BriefText.Of(station.Text).Value("prices");
        var own = (await store.Files.ListAsync(id)).FirstOrDefault(file => file.Name == named);
        return own is null
            ? Results.File(StationFile.ShippedPrices, "application/octet-stream", "prices.yaml")
            : Results.File(own.Bytes, "application/octet-stream", own.Name);
    }

    private static async Task<IResult> AllAsync(Guid id, StationStore store) =>
        await store.ReadAsync(id) is { } station
            ? Results.File(
                Zipped([
                    ("station.yaml", Encoding.UTF8.GetBytes(station.Text)),
                    .. (await store.Files.ListAsync(id)).Select(file => (file.Name, file.Bytes)),
                ]),
                "application/zip",
                "station.zip"
            )
            : Results.NotFound();

    /// <summary>Files as one zip.</summary>
    public static byte[] Zipped(IReadOnlyList<(string Name, byte[] Bytes)> files)
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

    private static async Task<IResult> TakeAsync(Guid id, HttpRequest request, StationStore store)
    {
        if (!Downloads.IsOwnPage(request))
        {
            return Results.StatusCode(StatusCodes.Status403Forbidden);
        }

        if (!request.HasFormContentType)
        {
            return Results.StatusCode(StatusCodes.Status415UnsupportedMediaType);
        }

        var form = await request.ReadFormAsync();
        var back =
            $"/station/{id}/{(form["back"] == "handover" ? "handover" : form["back"] == "money" ? "money" : "cards")}";
        var use = BesideUse.All.FirstOrDefault(each => each.Word == form["use"]) ?? BesideUse.All[^1];
        try
        {
            var file = form.Files is [{ } sent] ? await ReadAsync(sent) : Pasted(form);
            if (use.Faults(file.Name, Encoding.UTF8.GetString(file.Bytes)) is { Count: > 0 } faults)
            {
                return Refused(faults, back);
            }

            await KeepAsync(id, file, use, store);
            return Results.Redirect(back);
        }
        catch (Exception trouble) when (trouble is BadInputException or ArgumentException or StoreException)
        {
            return Refused([trouble.Message], back);
        }
    }

    private static async Task KeepAsync(Guid id, StationAttachment file, BesideUse use, StationStore store)
    {
        for (var tried = 0; tried < MostTries; tried++)
        {
            var seen = await store.ReadAsync(id) ?? throw new StoreException("There is no such station in this store.");
            var text = use.Named(BriefText.Of(seen.Text), file.Name).Text;
            if ((await store.EditAsync(seen, text, $"file {file.Name}", [FileChange.Put(file)])).IsKept)
            {
                return;
            }
        }

        throw new StoreException("Other windows edit this station all the time: try again.");
    }

    private static StationAttachment Pasted(IFormCollection form)
    {
        if (string.IsNullOrWhiteSpace(form["text"]))
        {
            throw new ArgumentException("Choose a file, or paste its text and give it a name.");
        }

        return new($"{form["name"]}".Trim(), Encoding.UTF8.GetBytes($"{form["text"]}"));
    }

    /// <summary>A page that says what was refused, with the way back.</summary>
    public static IResult Refused(IReadOnlyList<string> why, string back) =>
        new RazorComponentResult<RefusedPage>(new { Why = why, Back = back })
        {
            StatusCode = StatusCodes.Status400BadRequest,
        };
}

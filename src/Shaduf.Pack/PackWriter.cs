using System.Text;
using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>
/// Writes the pack: <c>design.json</c>, the books of engineer, crew and client, <c>offer.pdf</c>, <c>quantities.xlsx</c>,
/// <c>year.csv</c>, <c>programme.ics</c>, the drawing sheets as <c>sheets.pdf</c> and one by one as SVG and DXF, the solid
/// model as <c>station.glb</c>, the site book for phones as <c>site-book.html</c>.
/// </summary>
public static class PackWriter
{
    /// <summary>Names of the files of every pack; the single drawing sheets stand beside them.</summary>
    public static IReadOnlyList<string> FileNames { get; } =
    [
        "design.json",
        "engineer-book.pdf",
        "quantities.xlsx",
        "year.csv",
        "programme.ics",
        "sheets.pdf",
        "crew-book.pdf",
        "client-book.pdf",
        "offer.pdf",
        "station.glb",
        "site-book.html",
    ];

    /// <summary>The design with what only its papers show: words that no font can write.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The design, its findings worst first.</returns>
    public static Design Legible(Design design) =>
        design with
        {
            Findings =
            [
                .. design
                    .Findings.Concat(Lettering.Check(design.File.Words))
                    .OrderByDescending(finding => finding.Status)
                    .ThenBy(finding => finding.Id, StringComparer.Ordinal),
            ],
        };

    /// <summary>Whether a file is a single drawing sheet of a pack, of which each station has its own.</summary>
    /// <param name="name">Name of the file.</param>
    public static bool IsSheet(string name) =>
        name.StartsWith("sheet-", StringComparison.Ordinal) && Path.GetExtension(name) is ".svg" or ".dxf";

    /// <summary>
    /// Writes the pack into a folder. All files are made first, in a folder beside it, and moved in when all of them
    /// are whole: on failure nothing of the folder has changed. Other files in the folder are left alone.
    /// </summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">What every document bears.</param>
    /// <param name="folder">The folder; made when it is missing.</param>
    /// <returns>A task that ends when the pack is there.</returns>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static async Task WriteAsync(Design design, Stamp stamp, string folder)
    {
        var target = Path.GetFullPath(folder);
        var parent = Path.GetDirectoryName(target) ?? target;
        Directory.CreateDirectory(parent);
        var draft = Path.Combine(parent, $".{Path.GetFileName(target)}.{Path.GetRandomFileName()}.draft");
        Directory.CreateDirectory(draft);
        try
        {
            await WriteFilesAsync(design, stamp, draft);
            using var turn = await TurnAsync(Path.Combine(parent, $".{Path.GetFileName(target)}.lock"));
            if (!Directory.Exists(target))
            {
                Directory.Move(draft, target);
                return;
            }

            Exchange(draft, target);
        }
        finally
        {
            if (Directory.Exists(draft))
            {
                Directory.Delete(draft, recursive: true);
            }
        }
    }

    // One writer of a folder at a time: the others wait for the file that it holds open, and give up after ten seconds.
    private static async Task<FileStream> TurnAsync(string path)
    {
        var last = DateTime.UtcNow.AddSeconds(10);
        while (true)
        {
            try
            {
                return new(path, FileMode.OpenOrCreate, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose);
            }
            catch (IOException) when (DateTime.UtcNow < last)
            {
                await Task.Delay(20);
            }
        }
    }

    private static async Task WriteFilesAsync(Design design, Stamp stamp, string draft)
    {
        foreach (var (name, bytes) in await FilesAsync(design, stamp))
        {
            await File.WriteAllBytesAsync(Path.Combine(draft, name), bytes);
        }
    }

    // The old files step aside and the new ones move in; when one of them cannot, all goes back as it was.
    private static void Exchange(string draft, string target)
    {
        var aside = Directory.CreateDirectory(Path.Combine(draft, "old")).FullName;
        var undo = new Stack<(string From, string To)>();
        try
        {
            Move(Names(target).Where(name => IsSheet(name) || FileNames.Contains(name)), target, aside, undo);
            Move(Names(draft), draft, target, undo);
        }
        catch
        {
            foreach (var (from, to) in undo)
            {
                File.Move(from, to);
            }

            throw;
        }
    }

    private static List<string> Names(string folder) =>
        [.. Directory.EnumerateFiles(folder).Select(path => Path.GetFileName(path)!).Order(StringComparer.Ordinal)];

    private static void Move(
        IEnumerable<string> names,
        string fromFolder,
        string toFolder,
        Stack<(string From, string To)> undo
    )
    {
        foreach (var name in names)
        {
            var (from, to) = (Path.Combine(fromFolder, name), Path.Combine(toFolder, name));
            File.Move(from, to);
            undo.Push((to, from));
        }
    }

    /// <summary>Makes every file of the pack in memory.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">What every document bears.</param>
    /// <returns>Names and bytes; the same for the same design and stamp.</returns>
    public static Task<IReadOnlyList<(string Name, byte[] Bytes)>> FilesAsync(Design design, Stamp stamp) =>
        FilesAsync(design, stamp, _ => { });

    /// <summary>Makes every file of the pack in memory.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">What every document bears.</param>
    /// <param name="begun">Told the name of each file before it is made, from several threads; what it throws ends the making.</param>
    /// <returns>Names and bytes; the same for the same design and stamp.</returns>
    public static async Task<IReadOnlyList<(string Name, byte[] Bytes)>> FilesAsync(
        Design design,
        Stamp stamp,
        Action<string> begun
    )
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        byte[] Book(string what, Func<IReadOnlyList<Scene>> pages) => Pdf(design, stamp, what, pages());
        var sheets = DrawingSheets.Of(design, stamp);
        Func<byte[]>[] makers =
        [
            () => utf8.GetBytes(DesignJson.Of(design, stamp)),
            () => Book("engineer's book", () => EngineerBook.Pages(design, stamp)),
            () => QuantitiesBook.OfAsync(design, stamp).GetAwaiter().GetResult(),
            () => utf8.GetBytes(YearCsv.Of(design, stamp)),
            () => utf8.GetBytes(CalendarFile.Text(design, stamp)),
            () => Book("drawing sheets", () => [.. sheets.Select(sheet => sheet.Scene)]),
            () => Book("crew's book", () => CrewBook.Pages(design, stamp)),
            () => Book("client's book", () => ClientBook.Pages(design, stamp)),
            () => Book("offer", () => OfferPaper.Pages(design, stamp)),
            () => GlbRenderer.Write(StationModel.Of(design)),
            () => utf8.GetBytes(SiteBook.Of(design, stamp, sheets)),
            .. sheets.Select<DrawingSheet, Func<byte[]>>(sheet => () => utf8.GetBytes(SvgRenderer.Write(sheet.Scene))),
            .. sheets.Select<DrawingSheet, Func<byte[]>>(sheet =>
                () => Encoding.ASCII.GetBytes(DxfRenderer.Write(sheet.Scene, sheet.OneToFactor))
            ),
        ];

        // Each file is made from the design alone: side by side they take less time and come out the same.
        IReadOnlyList<string> names =
        [
            .. FileNames,
            .. sheets.Select(sheet => $"sheet-{sheet.Name}.svg"),
            .. sheets.Select(sheet => $"sheet-{sheet.Name}.dxf"),
        ];
        var made = await Task.WhenAll(
            names
                .Zip(makers)
                .Select(file =>
                    Task.Run(() =>
                    {
                        begun(file.First);
                        return file.Second();
                    })
                )
        );
        return [.. names.Zip(made)];
    }

    internal static byte[] Pdf(Design design, Stamp stamp, string what, IReadOnlyList<Scene> pages)
    {
        using var stream = new MemoryStream();
        var info = new DocumentInfo(
            $"{design.Brief.Head.Name}: {what}",
            design.Brief.Head.Builder,
            stamp.Line,
            $"shaduf {stamp.ProgramVersion}",
            new(stamp.Dated, TimeOnly.MinValue, TimeSpan.Zero)
        );
        PdfRenderer.Write(stream, pages, info);
        return stream.ToArray();
    }
}

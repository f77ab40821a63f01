using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>
/// The site book: one page for a phone that needs no network. Check lists keep their ticks on the phone; ticks, readings
/// and notes go out as a file that the brief's <c>measuredFrom</c> reads.
/// </summary>
internal static class SiteBook
{
    private static readonly string s_style = Embedded("site-book.css");
    private static readonly string s_script = Embedded("site-book.js");

    /// <summary>Writes the page.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">What every document bears.</param>
    /// <param name="sheets">The drawing sheets.</param>
    /// <returns>The page, whole.</returns>
    public static string Of(Design design, Stamp stamp, IReadOnlyList<DrawingSheet> sheets)
    {
        var name = design.Brief.Head.Name;
        var method = MethodStatement.Of(design);
        var lists = CheckList.Of(design, method);
        Html[] chapters =
        [
            .. lists.Select(list => Chapter(list.Key, list.Title, Html.Join([Before(design, list.Key), Points(list)]))),
            Chapter("tests", "Tests of the last day", SiteReadings.Sheets(design)),
            Chapter(
                "safety",
                "Lifts and hazards",
                HtmlBlocks.Of([MethodChapter.Lifts(method), MethodChapter.Hazards(method)])
            ),
            Chapter("drawings", "Drawing sheets", Html.Join(sheets.Select(Drawing))),
            Chapter("export", "Hand back", HandBack()),
        ];
        return Html.Of(
            $"""
            <!doctype html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'sha256-{Hash(
                s_style
            )}'; script-src 'sha256-{Hash(s_script)}'; img-src data:">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <link rel="icon" href="data:,">
            <title>{name}: site book</title>
            <style>{new Html(s_style)}</style>
            </head>
            <body>
            <header id="top">
            <h1>{name}</h1>
            <p>Site book, {stamp.Line}</p>
            <noscript><p class="notice look"><b>NO TICKS</b> This page may be read and printed, but scripts are switched off: ticks and readings cannot be kept.</p></noscript>
            <p id="kept" class="notice look" hidden></p>
            {HtmlBlocks.Of([.. Standing.Notices(design, isForClient: false), .. Standing.Measured(design)])}
            <p>Anybody may stop the work. Nobody under a load, alone in a pit, or on steel when thunder is heard. Local law, the makers' instructions and licensed people stand above every line here.</p>
            {People()}
            <nav aria-label="Contents"><h2>Contents</h2><ol>{Html.Join(Contents(lists))}</ol></nav>
            </header>
            <main>
            {Html.Join(chapters)}
            </main>
            <div id="bar"><a href="#top">Contents</a><button type="button" id="next">Next open</button><a href="#export">Hand back</a></div>
            <dialog id="viewer" aria-label="Drawing"><div class="tools"><button type="button" data-zoom="1.5" aria-label="Larger">+</button><button type="button" data-zoom="0.667" aria-label="Smaller">−</button><button type="button" data-zoom="fit">Whole</button><button type="button" data-zoom="close">Close</button></div><div class="pane" tabindex="0"></div></dialog>
            <script type="application/json" id="promise">{new Html(SiteReadings.Promise(design))}</script>
            <script type="application/json" id="book">{new Html(Book(design, stamp))}</script>
            <script>{new Html(s_script)}</script>
            </body>
            </html>

            """
        ).Text;
    }

    // What stands above the points of a list: pictures, and tables to work by.
    private static Html Before(Design design, string key)
    {
        IEnumerable<Block> tables = key switch
        {
            "set-out" => [SettingOutTables.Pits(design)],
            "steel" => [.. CrewLists.Cuts(design, int.MaxValue)],
            "concrete" => ErectionChapter.Blocks(design).OfType<Table>(),
            "stand" when design.Works.StandErection is { } stand && !StandRelease.IsWithheld(design) =>
            [
                ErectionChapter.Days(stand.Steps, stand.AirDegC),
            ],
            _ => [],
        };
        return HtmlBlocks.Of([.. CrewPictures.Of(design, key), .. tables]);
    }

    private static Html Chapter(string key, string title, Html inner) =>
        Html.Of($"<section id=\"{key}\"><h2>{title}</h2>\n{inner}</section>\n");

    private static Html Points(CheckList list) =>
        Html.Join(
            list.Points.Select(point =>
                Html.Of(
                    $"<label class=\"point{(point.IsHold ? " hold" : "")}\"><input type=\"checkbox\" data-point=\"{point.Name}\"><span>{point.Says}<small></small></span></label>\n"
                )
            )
        );

    private static IEnumerable<Html> Contents(IReadOnlyList<CheckList> lists) =>
        lists
            .Select(list =>
                Html.Of(
                    $"<li><span><a href=\"#{list.Key}\">{list.Title}</a> <span class=\"count\" data-list=\"{list.Key}\">{list.Points.Count}</span></span></li>"
                )
            )
            .Concat(
                new[]
                {
                    ("tests", "Tests of the last day"),
                    ("safety", "Lifts and hazards"),
                    ("drawings", "Drawing sheets"),
                }.Select(each => Html.Of($"<li><span><a href=\"#{each.Item1}\">{each.Item2}</a></span></li>"))
            );

    private static Html People() =>
        Html.Join([
            Html.Of($"<fieldset><legend>On site</legend>"),
            Html.Of(
                $"<label class=\"field\">Your name, set beside each tick<input maxlength=\"60\" data-text=\"by\"></label>"
            ),
            .. new[]
            {
                "Nearest clinic",
                "Telephone of the builder",
                "Vehicle and driver",
                "Shelter from lightning",
            }.Select(about =>
                Html.Of($"<label class=\"field\">{about}<input maxlength=\"240\" data-note=\"{about}\"></label>")
            ),
            Html.Of($"</fieldset>"),
        ]);

    private static Html Drawing(DrawingSheet sheet) =>
        Html.Of(
            $"<details><summary>{sheet.Title}</summary>{HtmlBlocks.Picture(sheet.Scene, "The same sheet, to scale, is in sheets.pdf.")}</details>\n"
        );

    private static Html HandBack() =>
        Html.Of(
            $"""
            <p>The file holds all ticks with their time and name, all readings and notes. Lay it beside the brief and name it there: <code>measuredFrom: FILE</code>. Readings that cannot be are kept as notes.</p>
            <label class="field">Remarks, defects, what is left to do<textarea rows="4" maxlength="240" data-note="Remarks"></textarea></label>
            <p><button type="button" id="save">Save the file</button> <button type="button" id="show">Show it as text</button> <button type="button" id="print">Print</button></p>
            <textarea id="text" rows="8" readonly hidden aria-label="The file as text"></textarea>
            <p><label class="field">Take a file in again (another phone, or after a reset)<input type="file" id="take" accept=".json,application/json"></label></p>
            <p id="said" role="status"></p>
            <p><button type="button" id="clear">Forget all ticks and readings on this phone</button></p>

            """
        );

    private static string Book(Design design, Stamp stamp) =>
        JsonSerializer.Serialize(
            new
            {
                station = design.Brief.Head.Name,
                brief = stamp.BriefHash,
                ticked = (design.Brief.Measured?.Ticked ?? []).Select(tick => new
                {
                    point = tick.Point,
                    at = tick.At is { } at ? FormattableString.Invariant($"{at:yyyy-MM-ddTHH:mm}") : null,
                    by = tick.By,
                }),
            }
        );

    private static string Hash(string text) => Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private static string Embedded(string name)
    {
        using var reader = new StreamReader(typeof(SiteBook).Assembly.GetManifestResourceStream(name)!, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}

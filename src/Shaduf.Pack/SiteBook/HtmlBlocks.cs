using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>The blocks of a book on a page for phones: text flows, pictures can be enlarged, wide tables slide.</summary>
internal static class HtmlBlocks
{
    /// <summary>The blocks one after the other.</summary>
    /// <param name="blocks">The blocks.</param>
    /// <returns>The piece of a page.</returns>
    public static Html Of(IEnumerable<Block> blocks) => Html.Join(blocks.Select(Of));

    /// <summary>One block.</summary>
    /// <param name="block">The block.</param>
    /// <returns>The piece of a page.</returns>
    public static Html Of(Block block) =>
        block switch
        {
            Heading { Level: 1 } heading => Html.Of($"<h2>{heading.Text}</h2>\n"),
            Heading heading => Html.Of($"<h3>{heading.Text}</h3>\n"),
            Paragraph paragraph => Html.Of($"<p>{Of(paragraph.Text)}</p>\n"),
            Bullets { Mark: BulletMark.Number } list => Html.Of($"<ol>{Points(list)}</ol>\n"),
            Bullets list => Html.Of($"<ul>{Points(list)}</ul>\n"),
            Notice notice => Of(notice),
            Figure figure => Picture(figure.Picture, figure.Caption),
            Columns columns => Html.Join(columns.Sides.Select(side => Of(side.Blocks))),
            Table table => Of(table),
            _ => Html.None,
        };

    /// <summary>A picture that can be enlarged.</summary>
    /// <param name="scene">The picture, drawn in black and grey.</param>
    /// <param name="caption">What it shows.</param>
    /// <returns>The piece of a page.</returns>
    public static Html Picture(Scene scene, string caption) =>
        Html.Of(
            $"<figure>\n{new Html(SvgRenderer.Write(GreyScene.Of(scene)))}<figcaption>{caption}</figcaption><button type=\"button\" class=\"zoom\">Enlarge</button></figure>\n"
        );

    private static Html Points(Bullets list) =>
        Html.Join(list.Points.Select(point => Html.Of($"<li>{Of(point)}</li>")));

    private static Html Of(RichText text) =>
        Html.Join(
            text.Spans.Select(span =>
                span.Weight == FontWeight.Bold ? Html.Of($"<b>{span.Text}</b>") : Html.Of($"{span.Text}")
            )
        );

    private static Html Of(Notice notice)
    {
        var word = notice.Word ?? notice.Status.ToString().ToUpperInvariant();
        var look = notice.Status == FindingStatus.Stop ? "stop" : "look";
        return Html.Of($"<p class=\"notice {look}\"><b>{word}</b> {Of(notice.Text)}</p>\n");
    }

    private static Html Of(Table table)
    {
        // Above the box that slides, so that it never slides away.
        var caption = table.Caption.Length > 0 ? Html.Of($"<p class=\"caption\">{table.Caption}</p>\n") : Html.None;
        var head = Html.Join(
            table.Columns.Select(column => Html.Of($"<th scope=\"col\"{Side(column)}>{column.Heading}</th>"))
        );
        return Html.Of(
            $"{caption}<div class=\"wide\" tabindex=\"0\"><table><thead><tr>{head}</tr></thead><tbody>{Html.Join(table.Rows.Select(row => Row(table, row)))}</tbody></table></div>\n"
        );
    }

    private static Html Row(Table table, TableRow row) =>
        row.Cells.Count == 1 && table.Columns.Count > 1
            ? Html.Of($"<tr><th colspan=\"{table.Columns.Count}\" scope=\"colgroup\">{Of(row.Cells[0])}</th></tr>")
            : Html.Of(
                $"<tr>{Html.Join(row.Cells.Zip(table.Columns, (cell, column) => Html.Of($"<td{Side(column)}>{Of(cell)}</td>")))}</tr>"
            );

    private static Html Side(TableColumn column) =>
        column.Align == HorizontalAnchor.Right ? new(" class=\"right\"") : Html.None;
}

using System.Globalization;
using System.Xml.Linq;

namespace Shaduf.Pack.Tests;

/// <summary>A sheet as someone reads it who has only its file: texts with their places, and the tables that they form.</summary>
public sealed class SheetReading
{
    private const double RowMm = 4.6;
    private readonly List<(double X, double Y, string Text)> texts;

    private SheetReading(List<(double X, double Y, string Text)> texts) => this.texts = texts;

    /// <summary>Reads the SVG of a sheet.</summary>
    public static SheetReading OfSvg(string svg) =>
        new([
            .. XDocument
                .Parse(svg)
                .Descendants()
                .Where(element => element.Name.LocalName == "text")
                .Select(element => (Number(element, "x"), Number(element, "y"), element.Value)),
        ]);

    /// <summary>Rows of a table by its title and heads, its further pieces included.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Table(string title, params string[] heads)
    {
        var rows = new List<IReadOnlyList<string>>();
        foreach (var (left, top, _) in texts.Where(each => each.Text == title || each.Text == $"{title}, on").ToList())
        {
            var line = texts
                .Where(each => Math.Abs(each.Y - top - RowMm) < 0.02 && each.X > left)
                .OrderBy(each => each.X)
                .Take(heads.Length)
                .ToList();
            Assert.Equal(heads, line.Select(each => each.Text));
            for (var y = top + (2 * RowMm); Cell(line[0].X, y).Length > 0; y += RowMm)
            {
                rows.Add([.. line.Select(head => Cell(head.X, y))]);
            }
        }

        Assert.NotEmpty(rows);
        return rows;
    }

    /// <summary>Texts in a box from a place: right and down from its left upper corner.</summary>
    public IEnumerable<(double X, double Y, string Text)> Within(double left, double top, double wide, double high) =>
        texts.Where(each => each.X >= left && each.X < left + wide && each.Y >= top && each.Y < top + high);

    /// <summary>All texts.</summary>
    public IReadOnlyList<(double X, double Y, string Text)> All => texts;

    private string Cell(double x, double y) =>
        texts.FirstOrDefault(each => Math.Abs(each.X - x) < 0.02 && Math.Abs(each.Y - y) < 0.05).Text ?? "";

    private static double Number(XElement element, string name) =>
        double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}

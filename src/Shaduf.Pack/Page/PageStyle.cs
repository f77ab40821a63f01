namespace Shaduf.Pack;

/// <summary>Empty edges of a page.</summary>
/// <param name="LeftMm">Left [mm], 0 to 100; wide enough to punch and file.</param>
/// <param name="TopMm">Top [mm], 12 to 100; the running head stands in it.</param>
/// <param name="RightMm">Right [mm], 0 to 100.</param>
/// <param name="BottomMm">Bottom [mm], 14 to 100; the foot stands in it.</param>
public sealed record PageMargins(double LeftMm, double TopMm, double RightMm, double BottomMm)
{
    /// <summary>The house's margins: 22 left, 22 top, 15 right, 20 bottom.</summary>
    public static PageMargins House { get; } = new(22, 22, 15, 20);
}

/// <summary>What every page says about the paper it is: whether to build from it, and what it was made from.</summary>
/// <param name="Status">Status: <c>for tender</c>, <c>for construction</c>, <c>draft</c>.</param>
/// <param name="Revision">Revision letter or number.</param>
/// <param name="BriefHash">Hash of the brief that the document was made from.</param>
public sealed record DocumentMark(string Status, string Revision, string BriefHash);

/// <summary>Size, margins and running texts of a document's pages.</summary>
/// <param name="Size">Sheet size.</param>
/// <param name="Margins">Margins.</param>
/// <param name="HeadLeft">Text at the head of each page, left: the station.</param>
/// <param name="HeadRight">Text at the head of each page, right: the document.</param>
/// <param name="Mark">What stands at the foot of each page beside its number.</param>
public sealed record PageStyle(
    PaperSize Size,
    PageMargins Margins,
    string HeadLeft,
    string HeadRight,
    DocumentMark Mark
)
{
    /// <summary>The box of the text.</summary>
    public PaperBox Body =>
        new(Margins.LeftMm, Margins.TopMm, Size.WidthMm - Margins.RightMm, Size.HeightMm - Margins.BottomMm);
}

namespace Shaduf.Pack;

/// <summary>Sizes of pictures in a book's page [mm].</summary>
internal static class PicturePaper
{
    public static readonly PaperSize Full = new(173, 118);
    public static readonly PaperSize Tall = new(173, 130);
    public static readonly PaperSize Page = new(173, 200);
    public static readonly PaperSize Half = new(173, 60);
    public static readonly PaperSize Low = new(173, 40);
}

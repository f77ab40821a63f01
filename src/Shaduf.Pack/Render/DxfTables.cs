namespace Shaduf.Pack;

/// <summary>The tables of a DXF file: line types, layers, text style, the records that strict readers ask for.</summary>
internal static class DxfTables
{
    public static void Write(DxfText file, IReadOnlyList<Layer> layers, double scale)
    {
        Layer[] dashed = [.. layers.Where(layer => layer.DashMm.Count > 0)];
        file.Section("TABLES");
        Table(file, "VPORT", []);
        Table(
            file,
            "LTYPE",
            [
                .. new[] { "ByBlock", "ByLayer", "Continuous" }.Select(name =>
                    (Action<string>)(owner => Line(file, owner, name, [], scale))
                ),
                .. dashed.Select(layer =>
                    (Action<string>)(owner => Line(file, owner, layer.Name, layer.DashMm, scale))
                ),
            ]
        );
        Table(
            file,
            "LAYER",
            [
                owner => LayerOf(file, owner, "0", 7, "Continuous", 25),
                .. layers.Select(layer => (Action<string>)(owner => LayerOf(file, owner, layer))),
            ]
        );
        Table(file, "STYLE", [owner => Style(file, owner)]);
        Table(file, "VIEW", []);
        Table(file, "UCS", []);
        Table(file, "APPID", [owner => Named(file, owner, "APPID", "AcDbRegAppTableRecord", "ACAD").Pair(70, 0)]);
        Dimensions(file);
        Records(file);
        file.End();
    }

    private static void Table(DxfText file, string name, IReadOnlyList<Action<string>> rows)
    {
        var handle = Begun(file, name, rows.Count);
        foreach (var row in rows)
        {
            row(handle);
        }

        file.Pair(0, "ENDTAB");
    }

    private static string Begun(DxfText file, string name, int count)
    {
        var handle = file.Handle();
        file.Pair(0, "TABLE").Pair(2, name).Pair(5, handle).Pair(330, "0").Pair(100, "AcDbSymbolTable").Pair(70, count);
        return handle;
    }

    private static DxfText Named(DxfText file, string owner, string kind, string type, string name) =>
        file.Entity(kind, "AcDbSymbolTableRecord", owner).Pair(100, type).Pair(2, name);

    private static void Line(DxfText file, string owner, string name, IReadOnlyList<double> dashMm, double scale)
    {
        Named(file, owner, "LTYPE", "AcDbLinetypeTableRecord", name).Pair(70, 0).Pair(3, "").Pair(72, 65);
        file.Pair(73, dashMm.Count).Number(40, dashMm.Sum() * scale);
        foreach (var (i, mm) in dashMm.Index())
        {
            file.Number(49, (i % 2 == 0 ? mm : -mm) * scale).Pair(74, 0);
        }
    }

    private static void LayerOf(DxfText file, string owner, Layer layer) =>
        LayerOf(
            file,
            owner,
            layer.Name,
            ColourOf(layer.Colour),
            layer.DashMm.Count > 0 ? layer.Name : "Continuous",
            (int)Math.Round(layer.PenWidthMm * 100)
        );

    private static void LayerOf(DxfText file, string owner, string name, int colour, string lineType, int weight) =>
        Named(file, owner, "LAYER", "AcDbLayerTableRecord", name)
            .Pair(70, 0)
            .Pair(62, colour)
            .Pair(6, lineType)
            .Pair(370, weight);

    // The seven colours that every reader has; 7 prints black.
    private static int ColourOf(Colour colour) =>
        colour == Palette.Clay ? 1
        : colour == Palette.Leaf ? 3
        : colour == Palette.Water ? 5
        : colour == Palette.Sun ? 6
        : 7;

    private static void Style(DxfText file, string owner)
    {
        Named(file, owner, "STYLE", "AcDbTextStyleTableRecord", "Standard").Pair(70, 0).Number(40, 0).Number(41, 1);
        file.Number(50, 0).Pair(71, 0).Number(42, 2.5).Pair(3, "arial.ttf").Pair(4, "");
    }

    private static void Dimensions(DxfText file)
    {
        var owner = Begun(file, "DIMSTYLE", 1);
        file.Pair(100, "AcDbDimStyleTable");
        file.Pair(0, "DIMSTYLE").Pair(105, file.Handle()).Pair(330, owner).Pair(100, "AcDbSymbolTableRecord");
        file.Pair(100, "AcDbDimStyleTableRecord").Pair(2, "Standard").Pair(70, 0).Pair(0, "ENDTAB");
    }

    private static void Records(DxfText file)
    {
        var owner = Begun(file, "BLOCK_RECORD", 2);
        foreach (
            var (name, handle) in new[] { ("*Model_Space", DxfText.ModelHandle), ("*Paper_Space", DxfText.PaperHandle) }
        )
        {
            file.Pair(0, "BLOCK_RECORD").Pair(5, handle).Pair(330, owner).Pair(100, "AcDbSymbolTableRecord");
            file.Pair(100, "AcDbBlockTableRecord").Pair(2, name);
        }

        file.Pair(0, "ENDTAB");
    }
}

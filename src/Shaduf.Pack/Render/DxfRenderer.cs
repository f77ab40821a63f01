using System.Globalization;
using System.Text;
using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>
/// Writes a scene as DXF R2000: the scene's layers with their line types and weights, millimetres, y up, lines and texts
/// as lines and texts. Fillings are left out; dimensions are lines, strokes and text, which every reader shows alike.
/// </summary>
/// <source>Group codes of the published DXF reference for AC1015</source>
public static class DxfRenderer
{
    /// <summary>Writes a picture. The same scene gives the same text.</summary>
    /// <param name="scene">The picture.</param>
    /// <param name="oneToFactor">Its scale 1:n, by which all is enlarged so that lengths are true [1], 0.01 to 10000.</param>
    /// <returns>The DXF file.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The scale is outside its range, or NaN.</exception>
    public static string Write(Scene scene, double oneToFactor)
    {
        Within.Require(oneToFactor, 0.01, 10_000, "");
        Layer[] layers = [.. scene.Items.Select(item => item.Layer).DistinctBy(layer => layer.Name)];
        var file = new DxfText();
        Header(file, scene.Size, oneToFactor);
        file.Section("CLASSES").End();
        DxfTables.Write(file, layers, oneToFactor);
        Blocks(file);
        file.Section("ENTITIES");
        var entities = new DxfEntities(file, scene.Size.HeightMm, oneToFactor);
        foreach (var item in scene.Items)
        {
            entities.Add(item);
        }

        file.End();
        Objects(file);
        return file.Ended();
    }

    private static void Header(DxfText file, PaperSize size, double scale)
    {
        file.Section("HEADER");
        file.Pair(9, "$ACADVER").Pair(1, "AC1015");
        file.Pair(9, "$DWGCODEPAGE").Pair(3, "ANSI_1252");
        file.Pair(9, "$INSUNITS").Pair(70, 4);
        file.Pair(9, "$MEASUREMENT").Pair(70, 1);
        file.Pair(9, "$EXTMIN").Point(10, 0, 0);
        file.Pair(9, "$EXTMAX").Point(10, size.WidthMm * scale, size.HeightMm * scale);
        file.Pair(9, "$HANDSEED").Pair(5, "FFFFF");
        file.End();
    }

    private static void Blocks(DxfText file)
    {
        file.Section("BLOCKS");
        foreach (
            var (name, record) in new[] { ("*Model_Space", DxfText.ModelHandle), ("*Paper_Space", DxfText.PaperHandle) }
        )
        {
            file.Entity("BLOCK", "AcDbEntity", record).Pair(8, "0").Pair(100, "AcDbBlockBegin");
            file.Pair(2, name).Pair(70, 0).Point(10, 0, 0).Pair(3, name).Pair(1, "");
            file.Entity("ENDBLK", "AcDbEntity", record).Pair(8, "0").Pair(100, "AcDbBlockEnd");
        }

        file.End();
    }

    private static void Objects(DxfText file)
    {
        file.Section("OBJECTS");
        file.Pair(0, "DICTIONARY").Pair(5, DxfText.RootHandle).Pair(330, "0").Pair(100, "AcDbDictionary").Pair(281, 1);
        file.Pair(3, "ACAD_GROUP").Pair(350, DxfText.GroupHandle);
        file.Pair(0, "DICTIONARY").Pair(5, DxfText.GroupHandle).Pair(330, DxfText.RootHandle);
        file.Pair(100, "AcDbDictionary").Pair(281, 1);
        file.End();
    }
}

/// <summary>Pairs of code and value, with handles given out one after another.</summary>
internal sealed class DxfText
{
    public const string ModelHandle = "1";
    public const string PaperHandle = "2";
    public const string RootHandle = "3";
    public const string GroupHandle = "4";

    private readonly StringBuilder text = new();
    private int last = 0x10;

    public DxfText Section(string name) => Pair(0, "SECTION").Pair(2, name);

    public DxfText End() => Pair(0, "ENDSEC");

    public string Ended() => Pair(0, "EOF").text.ToString();

    public string Handle() => (++last).ToString("X", CultureInfo.InvariantCulture);

    public DxfText Entity(string kind, string type, string owner) =>
        Pair(0, kind).Pair(5, Handle()).Pair(330, owner).Pair(100, type);

    public DxfText Pair(int code, string value)
    {
        text.Append(CultureInfo.InvariantCulture, $"{code, 3}\r\n{value}\r\n");
        return this;
    }

    public DxfText Pair(int code, int value) => Pair(code, value.ToString(CultureInfo.InvariantCulture));

    public DxfText Number(int code, double value)
    {
        var written = value.ToString("0.0#####", CultureInfo.InvariantCulture);
        return Pair(code, written == "-0.0" ? "0.0" : written);
    }

    public DxfText Point(int code, double x, double y) => Number(code, x).Number(code + 10, y).Number(code + 20, 0);
}

using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>
/// Each module in its place on the racks with its string and its number in it, and the wires between them: every second
/// module on the way out, the others on the way back.
/// </summary>
public static class StringDiagram
{
    private const double SideMm = 14;
    private const double EdgeMm = 8;
    private const double RowGapMm = 9;
    private const double RackGapMm = 7;
    private const double LargestCellMm = 15;
    private const double CellShapeFactor = 1.1;
    private const double FootMm = 12;

    // So that it stands on a page with its caption, at its largest cells.
    private const double TallestMm = 245;

    // Way out and way back on a module, as shares of its height from its upper edge.
    private const double OutShare = 0.24;
    private const double BackShare = 0.76;

    /// <summary>Racks whose strings a picture can show at a size that can be read.</summary>
    /// <param name="grid">The grid.</param>
    /// <returns>Racks a picture, at least 1.</returns>
    public static int RacksEach(RackGrid grid) =>
        Math.Max(
            1,
            (int)(
                (TallestMm - FootMm - (2 * EdgeMm) + RowGapMm + RackGapMm)
                / ((grid.Rows * ((LargestCellMm * CellShapeFactor) + RowGapMm)) + RackGapMm)
            )
        );

    /// <summary>Composes the picture of some racks.</summary>
    /// <param name="design">The design.</param>
    /// <param name="widthMm">Width of the picture [mm], at least 150.</param>
    /// <param name="firstRack">The first rack shown, from 0.</param>
    /// <returns>The picture, not to scale; the sun's side below.</returns>
    public static Scene Of(Design design, double widthMm, int firstRack = 0)
    {
        var grid = design.Choice.Grid;
        var racks = Math.Min(RacksEach(grid), grid.RackCount - firstRack);
        var sheet = new Sheet(grid, firstRack, racks, widthMm);
        var builder = new SceneBuilder(new(widthMm, sheet.HeightMm + FootMm));
        for (var rack = firstRack; rack < firstRack + racks; rack++)
        {
            Modules(builder, sheet, rack);
        }

        foreach (var route in design.Works.Electrics.Layout.Strings)
        {
            Wires(builder, sheet, route);
            Marks(builder, sheet, route);
            Leads(builder, sheet, route);
        }

        builder.Text(
            new(SideMm, sheet.HeightMm + 4),
            "Number in a module: string.place from minus to plus. Dot: joined here; a line without a dot passes by.",
            TextStyle.Small
        );
        builder.Text(
            new(SideMm, sheet.HeightMm + 8.5),
            "Low edge below; the cables go to their box at the left end. Not to scale.",
            TextStyle.Small
        );
        return builder.Build("string diagram");
    }

    private static void Modules(SceneBuilder builder, Sheet sheet, int rack)
    {
        var grid = sheet.Grid;
        for (var row = 0; row < grid.Rows; row++)
        {
            for (var column = 0; column < grid.Columns; column++)
            {
                builder.Rectangle(Layer.Module, sheet.Box(new(rack, row, column)), Palette.White);
            }
        }

        var corner = sheet.Box(new(rack, 0, 0));
        builder.Text(
            new(1, corner.Centre.YMm),
            Invariant($"rack {rack + 1}"),
            TextStyle.Small with
            {
                Vertical = VerticalAnchor.Middle,
                Weight = FontWeight.Bold,
            }
        );
    }

    // The first half of the order goes out, the rest comes back.
    private static void Wires(SceneBuilder builder, Sheet sheet, StringRoute route)
    {
        var outCount = (route.Order.Count + 1) / 2;
        PaperPoint At(int i) => sheet.At(route.Order[i], i < outCount ? OutShare : BackShare);
        for (var i = 0; i + 1 < route.Order.Count; i++)
        {
            var (from, to) = (route.Order[i], route.Order[i + 1]);
            if (sheet.Shows(from) && sheet.Shows(to))
            {
                Wire(builder, sheet, (from, At(i)), (to, At(i + 1)), i + 1 < outCount);
            }
        }

        for (var i = 0; i < route.Order.Count; i++)
        {
            if (sheet.Shows(route.Order[i]))
            {
                ElectricSymbols.Joint(builder, At(i));
            }
        }
    }

    // Along a row straight; from row to row round the end of the rows, the way out outside the way back.
    private static void Wire(
        SceneBuilder builder,
        Sheet sheet,
        (ModulePlace Place, PaperPoint At) from,
        (ModulePlace Place, PaperPoint At) to,
        bool isOut
    )
    {
        if (from.Place.Row == to.Place.Row && from.Place.Rack == to.Place.Rack)
        {
            builder.Line(ElectricSymbols.Wire, from.At, to.At);
            return;
        }

        var isRight = from.Place.Column + to.Place.Column >= sheet.Grid.Columns;
        var beyondMm = isOut ? 3.4 : 1.7;
        var endMm = isRight ? sheet.RightMm + beyondMm : SideMm - beyondMm;
        builder.Polyline(ElectricSymbols.Wire, [from.At, new(endMm, from.At.YMm), new(endMm, to.At.YMm), to.At]);
    }

    private static void Marks(SceneBuilder builder, Sheet sheet, StringRoute route)
    {
        var style = new TextStyle(sheet.CellMm >= 11 ? Lettering.SmallMm : 2.2).Centred;
        foreach (var (i, place) in route.Order.Index())
        {
            if (sheet.Shows(place))
            {
                builder.Text(sheet.At(place, 0.5), Invariant($"{route.Number}.{i + 1}"), style);
            }
        }
    }

    // Minus leaves the first module upwards, plus the last one downwards.
    private static void Leads(SceneBuilder builder, Sheet sheet, StringRoute route)
    {
        if (sheet.Shows(route.Order[0]))
        {
            Lead(builder, sheet.At(route.Order[0], OutShare), sheet.Box(route.Order[0]).TopMm, $"{route.Number} -");
        }

        if (sheet.Shows(route.Order[^1]))
        {
            var share = route.Order.Count == 1 ? OutShare : BackShare;
            var box = sheet.Box(route.Order[^1]);
            Lead(builder, sheet.At(route.Order[^1], share), box.BottomMm, $"{route.Number} +");
        }
    }

    private static void Lead(SceneBuilder builder, PaperPoint from, double edgeMm, string mark)
    {
        var isUp = edgeMm < from.YMm;
        var tip = new PaperPoint(from.XMm, edgeMm + (isUp ? -1.6 : 1.6));
        builder.Line(ElectricSymbols.Wire, from, tip);
        builder.Polyline(
            ElectricSymbols.Wire,
            [tip.Moved(-0.8, isUp ? 1.3 : -1.3), tip, tip.Moved(0.8, isUp ? 1.3 : -1.3)]
        );
        builder.Text(
            tip.Moved(1.2, isUp ? 0.6 : 1.4),
            mark,
            new TextStyle(2.4) { Weight = FontWeight.Bold, IsOpaque = true }
        );
    }

    // Where modules lie on the paper: the first rack's low row at the bottom.
    private sealed record Sheet(RackGrid Grid, int FirstRack, int Racks, double WidthMm)
    {
        public double CellMm => Math.Min(LargestCellMm, (WidthMm - (2 * SideMm)) / Grid.Columns);

        public double RightMm => SideMm + (Grid.Columns * CellMm);

        public double HeightMm =>
            (2 * EdgeMm) + (Racks * Grid.Rows * (CellHeightMm + RowGapMm)) + ((Racks - 1) * RackGapMm) - RowGapMm;

        private double CellHeightMm => Math.Max(11, CellMm * CellShapeFactor);

        public bool Shows(ModulePlace place) => place.Rack >= FirstRack && place.Rack < FirstRack + Racks;

        public PaperBox Box(ModulePlace place)
        {
            var rack = place.Rack - FirstRack;
            var above = (rack * Grid.Rows) + place.Row;
            var bottomMm = HeightMm - EdgeMm - (above * (CellHeightMm + RowGapMm)) - (rack * RackGapMm);
            var leftMm = SideMm + (place.Column * CellMm);
            return new(leftMm, bottomMm - CellHeightMm, leftMm + CellMm, bottomMm);
        }

        public PaperPoint At(ModulePlace place, double share)
        {
            var box = Box(place);
            return new(box.Centre.XMm, box.TopMm + (share * box.HeightMm));
        }
    }
}

namespace Shaduf.Station;

/// <summary>Where a module stands, counted from 0: rack from the front, row from the low edge, column from the cables' end.</summary>
/// <param name="Rack">Rack.</param>
/// <param name="Row">Row up the slope.</param>
/// <param name="Column">Column along the row.</param>
public readonly record struct ModulePlace(int Rack, int Row, int Column);

/// <summary>One string on the racks.</summary>
/// <param name="Number">Number of the string, from 1.</param>
/// <param name="Order">Its modules from the minus lead to the plus lead.</param>
/// <param name="HomeM">From the farther of its two end modules to the cables' end of the first rack and down to the box [m].</param>
public sealed record StringRoute(int Number, IReadOnlyList<ModulePlace> Order, double HomeM);

/// <summary>
/// Where each string's modules stand and in which order they are wired. Modules are taken to and fro along the rows; within a
/// string every second one is joined on the way out and the others on the way back (leapfrog), so that plus and minus end side
/// by side at the near end and lie together all the way: little loop for lightning to induce in.
/// </summary>
/// <param name="Strings">The strings.</param>
/// <param name="LongestJumpM">Longest way between two modules that are wired to each other in one rack [m].</param>
public sealed record StringLayout(IReadOnlyList<StringRoute> Strings, double LongestJumpM)
{
    // Down a column to a box at breast height; common practice, no source.
    private const double DownM = 2;

    /// <summary>Lays out the strings of a choice.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="rack">Its racks.</param>
    /// <returns>The layout.</returns>
    public static StringLayout Of(Choice choice, Rack rack)
    {
        var places = Places(choice.Grid).ToList();
        var pitch = Pitch.Of(choice, rack);
        return new(
            [
                .. Enumerable
                    .Range(0, choice.StringCount)
                    .Select(i => places.GetRange(i * choice.SeriesCount, choice.SeriesCount))
                    .Select((path, i) => Route(i + 1, path, pitch)),
            ],
            Enumerable
                .Range(0, choice.StringCount)
                .Select(i => Leapfrog(places.GetRange(i * choice.SeriesCount, choice.SeriesCount)))
                .SelectMany(order => order.Zip(order.Skip(1)))
                .Where(pair => pair.First.Rack == pair.Second.Rack)
                .Select(pair => pitch.BetweenM(pair.First, pair.Second))
                .DefaultIfEmpty(0)
                .Max()
        );
    }

    /// <summary>All places, to and fro along the rows and racks: each beside, above or behind the one before it.</summary>
    /// <param name="grid">The grid.</param>
    /// <returns>The places in order.</returns>
    public static IEnumerable<ModulePlace> Places(RackGrid grid) =>
        from rack in Enumerable.Range(0, grid.RackCount)
        from row in Enumerable.Range(0, grid.Rows)
        from step in Enumerable.Range(0, grid.Columns)
        select new ModulePlace(rack, row, ((rack * grid.Rows) + row) % 2 == 0 ? step : grid.Columns - 1 - step);

    /// <summary>Every second place on the way out, the others on the way back.</summary>
    /// <param name="path">Places side by side, from the near end.</param>
    /// <returns>The places in the order of wiring.</returns>
    public static IReadOnlyList<ModulePlace> Leapfrog(IReadOnlyList<ModulePlace> path) =>
        [.. path.Where((_, i) => i % 2 == 0), .. path.Where((_, i) => i % 2 == 1).Reverse()];

    // From whichever end of its modules lies nearer to the box.
    private static StringRoute Route(int number, IReadOnlyList<ModulePlace> path, Pitch pitch)
    {
        var near = pitch.HomeM(path[^1]) < pitch.HomeM(path[0]) ? path.Reverse().ToList() : path;
        var order = Leapfrog(near);
        return new(number, order, Math.Max(pitch.HomeM(order[0]), pitch.HomeM(order[^1])) + DownM);
    }

    // Distances of modules and racks [m].
    private sealed record Pitch(double ColumnM, double RowM, double RackM)
    {
        public static Pitch Of(Choice choice, Rack rack) =>
            new(
                rack.Size.LengthMm / 1000 / choice.Grid.Columns,
                rack.Size.DepthMm / 1000 / choice.Grid.Rows,
                GuardField.Of(rack).PitchM
            );

        public double HomeM(ModulePlace place) =>
            ((place.Column + 0.5) * ColumnM) + (place.Row * RowM) + (place.Rack * RackM);

        public double BetweenM(ModulePlace a, ModulePlace b) =>
            (Math.Abs(a.Column - b.Column) * ColumnM) + (Math.Abs(a.Row - b.Row) * RowM);
    }
}

using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>A point that is ticked on site.</summary>
/// <param name="Name">Short name, the same in the site book and in the file that it exports.</param>
/// <param name="Says">What is ticked.</param>
public sealed record CheckPoint(string Name, string Says)
{
    /// <summary>Whether work stops until it is ticked.</summary>
    public bool IsHold => Says.StartsWith("Hold", StringComparison.Ordinal);
}

/// <summary>Points that belong together.</summary>
/// <param name="Key">Short name.</param>
/// <param name="Title">What they belong to.</param>
/// <param name="Points">The points in order.</param>
public sealed record CheckList(string Key, string Title, IReadOnlyList<CheckPoint> Points)
{
    /// <summary>All that is ticked on a site: what is loaded, the tools, then step by step.</summary>
    /// <param name="design">The design.</param>
    /// <param name="method">Its method.</param>
    /// <returns>The lists in order of use.</returns>
    public static IReadOnlyList<CheckList> Of(Design design, MethodStatement method) =>
        [
            new(
                "load",
                "Load the lorry",
                [
                    .. design.Office.Purchases.Select(each => new CheckPoint(
                        $"load/{each.Item}",
                        $"{Pieces(each)} {(each.Codes.Count == 1 ? each.What : $"{each.Item}, for all its uses")}"
                    )),
                ]
            ),
            new(
                "tools",
                "Tools",
                [.. method.Tools.Select(tool => new CheckPoint($"tools/{tool.For}", $"{tool.For}: {tool.Tools}"))]
            ),
            .. method.Steps.Select(step => step.Checks),
        ];

    private static string Pieces(Purchase bought) =>
        (bought.PieceCount, bought.SoldUnits) switch
        {
            (1, var sold) => Invariant($"{sold:0.##} {bought.Unit}"),
            (var count, 1) => Invariant($"{count} {bought.Unit}"),
            var (count, sold) => Invariant($"{count} x {sold:0.##} {bought.Unit}"),
        };
}

using Shaduf.Pack;

namespace Shaduf.Desk;

/// <summary>Where a drawing shows something that has fields in the brief.</summary>
/// <param name="Name">The part of the brief.</param>
/// <param name="Lines">Lines to touch.</param>
/// <param name="Boxes">Boxes to touch.</param>
public sealed record TouchArea(
    string Name,
    IReadOnlyList<IReadOnlyList<PaperPoint>> Lines,
    IReadOnlyList<PaperBox> Boxes
)
{
    // A finger is wider than a line.
    private const double AroundMm = 1.5;

    /// <summary>The places of a drawing, by what its items are said to be about.</summary>
    public static IReadOnlyList<TouchArea> Of(Scene scene) =>
        [
            .. scene
                .Items.Where(item => FieldNode.Brief.Any(field => field.Name == item.About))
                .GroupBy(item => item.About)
                .OrderBy(group => FieldNode.Brief.Select(field => field.Name).ToList().IndexOf(group.Key))
                .Select(group => new TouchArea(
                    group.Key,
                    [.. group.Select(LineOf).Where(line => line.Count > 0)],
                    [.. group.Where(item => LineOf(item).Count == 0).Select(item => item.Box.Grown(AroundMm))]
                )),
        ];

    private static IReadOnlyList<PaperPoint> LineOf(SceneItem item) =>
        item switch
        {
            LineItem line => [line.From, line.To],
            PolyItem { IsClosed: false } poly => poly.Points,
            _ => [],
        };
}

/// <summary>Which findings belong to which part of the brief.</summary>
internal static class Touching
{
    private static readonly IReadOnlyList<(string Part, string Prefix)> s_prefixes =
    [
        ("source", "source"),
        ("source", "pump"),
        ("lift", "lift"),
        ("lift", "pipe"),
        ("tank", "tank"),
        ("tank", "stand"),
        ("taps", "taps"),
        ("array", "array"),
        ("array", "electrics"),
        ("array", "sky"),
        ("rack", "rack"),
        ("rack", "ground"),
        ("rack", "build"),
        ("rack", "workshop"),
        ("guard", "guard"),
        ("uses", "water"),
        ("uses", "demand"),
        ("site", "site"),
        ("site", "weather"),
        ("site", "ground"),
        ("money", "money"),
        ("crew", "programme"),
        ("measured", "proof"),
    ];

    /// <summary>Whether a finding is about a part of the brief.</summary>
    public static bool IsAbout(string finding, string part) =>
        s_prefixes.Contains((part, finding[..Math.Max(0, finding.IndexOf('/', StringComparison.Ordinal))]));
}

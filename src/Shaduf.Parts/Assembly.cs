using Shaduf.Shape;

namespace Shaduf.Parts;

/// <summary>Weld of one kind.</summary>
/// <param name="Name">Where it is: 'lap of the channels'.</param>
/// <param name="LegMm">Leg of the fillet [mm].</param>
/// <param name="LengthMm">Length of one run [mm].</param>
/// <param name="Count">How many runs.</param>
public sealed record Seam(string Name, double LegMm, double LengthMm, int Count)
{
    /// <summary>Whether it is welded on site, because what it joins does not fit the truck.</summary>
    public bool IsOnSite { get; init; }

    /// <summary>Whether a run goes all round what it joins.</summary>
    public bool IsAllRound { get; init; }
}

/// <summary>What parts are held together by where they are not welded, of one kind.</summary>
/// <param name="What">What it is, with its size.</param>
/// <param name="Where">What they hold.</param>
/// <param name="Count">How many.</param>
public sealed record Fixing(string What, string Where, int Count);

/// <summary>Parts that are welded or set together, and their welds.</summary>
/// <param name="Name">What it is: 'rack'.</param>
/// <param name="Parts">Its parts.</param>
/// <param name="Seams">Its welds.</param>
public sealed record Assembly(string Name, IReadOnlyList<Part> Parts, IReadOnlyList<Seam> Seams)
{
    /// <summary>Hundred of the numbers of its plates and welds, so that no two of a station share one: W101, PL101.</summary>
    public int Series { get; init; }

    /// <summary>Plates that are welded on; their mass is not in that of the parts.</summary>
    public IReadOnlyList<Plate> Plates { get; init; } = [];

    /// <summary>What holds parts together where they are not welded.</summary>
    public IReadOnlyList<Fixing> Fixings { get; init; } = [];

    /// <summary>The mark of the plates of a role; empty where it has none.</summary>
    /// <param name="role">The role.</param>
    public string MarkOf(string role) => Plates.FirstOrDefault(plate => plate.Role == role)?.Mark ?? "";

    /// <summary>Mass of the steel [kg].</summary>
    public double MassKg => Parts.Sum(part => part.MassKg);

    /// <summary>Centre of gravity of the steel [mm].</summary>
    public Point CentreMm =>
        Parts.Aggregate(
            new Point(0, 0, 0),
            (sum, part) => sum + ((part.Shape.Start + part.Shape.End) * (part.MassKg / 2))
        ) * (1 / MassKg);

    /// <summary>The parts by mark, in order of mark.</summary>
    /// <exception cref="InvalidOperationException">Two parts share a mark but are not alike.</exception>
    public IReadOnlyList<PartGroup> Groups =>
        [
            .. Parts
                .GroupBy(part => part.Mark)
                .OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group =>
                    group.All(part => IsLike(part, group.First()))
                        ? Group(group.Key, [.. group])
                        : throw new InvalidOperationException($"parts marked {group.Key} are not alike")
                ),
        ];

    private static PartGroup Group(string mark, IReadOnlyList<Part> parts) =>
        new(
            mark,
            parts[0].Role,
            parts[0].Section,
            parts[0].Shape,
            parts[0].PiecesMm,
            parts.Count,
            parts.Sum(part => part.MassKg)
        )
        {
            Work = parts[0].Work,
        };

    // Alike on the floor: same section, same lengths and same pieces to a tenth of a millimetre, either way round.
    private static bool IsLike(Part a, Part b) =>
        a.Section == b.Section
        && Math.Abs(a.LengthMm - b.LengthMm) < 0.1
        && Math.Abs(a.Shape.ShortPointMm - b.Shape.ShortPointMm) < 0.1
        && a.PiecesMm.Count == b.PiecesMm.Count
        && a.PiecesMm.Order().Zip(b.PiecesMm.Order()).All(pair => Math.Abs(pair.First - pair.Second) < 0.1);
}

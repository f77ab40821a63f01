using Shaduf.Shape;

namespace Shaduf.Parts;

/// <summary>One piece of steel between two points, with the short name painted on it.</summary>
/// <param name="Mark">The name; parts that are alike share it.</param>
/// <param name="Role">What it is in the station: 'cross tube'.</param>
/// <param name="Section">Its section.</param>
/// <param name="Shape">Lengths, saw angles and axis.</param>
/// <param name="SplicesMm">Distances of its splices from the start; empty when one bar is long enough [mm].</param>
public sealed record Part(string Mark, string Role, Section Section, Cut Shape, IReadOnlyList<double> SplicesMm)
{
    /// <summary>Whether good places for a splice lie further apart than a piece is long, so that whole bars were laid.</summary>
    public bool IsSplicedAnywhere { get; init; }

    /// <summary>What is done to it besides its two cuts; empty for nothing.</summary>
    public string Work { get; init; } = "";

    /// <summary>Length from long point to long point [mm].</summary>
    public double LengthMm => Shape.LongPointMm;

    /// <summary>A length as the saw is set to it: whole millimetres, never short.</summary>
    /// <param name="mm">The length [mm].</param>
    /// <returns>The length to mark [mm].</returns>
    public static double WholeMm(double mm) => Math.Ceiling(mm - 1e-3);

    /// <summary>Length that its bar must give, from its first to its last point [mm].</summary>
    public double AlongBarMm => Section.AlongBarMm(Shape);

    /// <summary>Mass by the mean of long and short point [kg].</summary>
    public double MassKg => (Shape.LongPointMm + Shape.ShortPointMm) / 2 * Section.MassKgPerM / 1000;

    /// <summary>Lengths of the pieces that are welded together at the splices, in order from the start [mm].</summary>
    public IReadOnlyList<double> PiecesMm
    {
        get
        {
            double[] ends = [0, .. SplicesMm, LengthMm];
            return [.. ends.Zip(ends.Skip(1), (a, b) => b - a)];
        }
    }

    /// <summary>A part with square ends along a straight line, spliced where the bar is too short.</summary>
    /// <param name="mark">The name.</param>
    /// <param name="role">What it is.</param>
    /// <param name="section">Its section.</param>
    /// <param name="from">Start of the axis.</param>
    /// <param name="to">End of the axis.</param>
    /// <returns>The part.</returns>
    public static Part Straight(string mark, string role, Section section, Point from, Point to)
    {
        var shape = SquareCut(from, to);
        return new(mark, role, section, shape, Splices(shape.LongPointMm, section.LongestPieceMm));
    }

    /// <summary>A part with square ends that runs over supports, spliced away from them and from mid-span.</summary>
    /// <param name="mark">The name.</param>
    /// <param name="role">What it is.</param>
    /// <param name="section">Its section.</param>
    /// <param name="axis">Start and end of the axis.</param>
    /// <param name="supportsMm">Where it is held, from its start, in order [mm].</param>
    /// <param name="isTurned">Whether it is turned end for end, so that its splices are not beside its neighbour's.</param>
    /// <returns>The part.</returns>
    public static Part Over(
        string mark,
        string role,
        Section section,
        (Point From, Point To) axis,
        IReadOnlyList<double> supportsMm,
        bool isTurned = false
    )
    {
        var shape = SquareCut(axis.From, axis.To);
        var splices = SplicePlaces.Of(shape.LongPointMm, supportsMm, section.LongestPieceMm);
        return new(
            mark,
            role,
            section,
            shape,
            isTurned ? [.. splices.Select(at => shape.LongPointMm - at).Order()] : splices
        )
        {
            IsSplicedAnywhere = !SplicePlaces.AreGood(splices, shape.LongPointMm, supportsMm),
        };
    }

    /// <summary>
    /// Where a member that stands or leans is spliced: whole bars from the start, and no piece shorter than 500 mm (the bar before it gives way).
    /// </summary>
    /// <param name="lengthMm">Length of the member [mm], above 0.</param>
    /// <param name="barMm">Length of the bar [mm], above 0.</param>
    /// <returns>Distances of the splices from the start [mm].</returns>
    public static IReadOnlyList<double> Splices(double lengthMm, double barMm)
    {
        const double shortestMm = 500;
        var splices = new List<double>();
        for (var at = barMm; at < lengthMm; at += barMm)
        {
            splices.Add(at);
        }

        if (splices.Count > 0 && lengthMm - splices[^1] < shortestMm)
        {
            splices[^1] = lengthMm - shortestMm;
        }

        return splices;
    }

    private static Cut SquareCut(Point from, Point to)
    {
        var lengthMm = (to - from).LengthMm;
        return new(lengthMm, lengthMm, 0, 0, from, to);
    }
}

/// <summary>Parts that are alike.</summary>
/// <param name="Mark">Their name.</param>
/// <param name="Role">What they are.</param>
/// <param name="Section">Their section.</param>
/// <param name="Shape">Lengths and saw angles of each.</param>
/// <param name="PiecesMm">Pieces of each, welded at the splices [mm].</param>
/// <param name="Count">How many.</param>
/// <param name="MassKg">Mass of all of them [kg].</param>
public sealed record PartGroup(
    string Mark,
    string Role,
    Section Section,
    Cut Shape,
    IReadOnlyList<double> PiecesMm,
    int Count,
    double MassKg
)
{
    /// <summary>What is done to each besides its two cuts; empty for nothing.</summary>
    public string Work { get; init; } = "";

    /// <summary>Length that the bar must give for each, from its first to its last point [mm].</summary>
    public double AlongBarMm => Section.AlongBarMm(Shape);
}

using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Kind of a weld.</summary>
public enum WeldKind
{
    /// <summary>Fillet.</summary>
    Fillet,

    /// <summary>Square butt of two ends.</summary>
    SquareButt,
}

/// <summary>Welds of one kind, with a place where one of them is seen.</summary>
/// <param name="Mark">Their number on the drawings: 'W3'.</param>
/// <param name="Line">Leg, runs, weld metal, rod.</param>
/// <param name="Kind">Fillet or butt.</param>
/// <param name="IsAllRound">Whether they go all round.</param>
/// <param name="At">Where one of them is.</param>
public sealed record WeldMark(string Mark, WeldLine Line, WeldKind Kind, bool IsAllRound, Point At)
{
    /// <summary>Position of welding: the work is turned in the shop; what stands on site is welded as it stands.</summary>
    /// <source>ISO 6947: PA flat, PB horizontal fillet, PF upright from below; choice: judgement</source>
    public string Position =>
        Line.Seam.IsOnSite ? "PB, PF"
        : Kind == WeldKind.SquareButt ? "PA, turned"
        : "PB, turned";

    /// <summary>Leg or thickness and runs as beside a symbol of ISO 2553: size, then number x length.</summary>
    public (string Size, string Runs) Figures =>
        (
            Invariant($"{(Kind == WeldKind.Fillet ? "z" : "s")}{Line.Seam.LegMm:0.#}"),
            IsAllRound || Kind == WeldKind.SquareButt ? "" : Invariant($"{Line.Seam.LengthMm:0}")
        );
}

/// <summary>Every weld of an assembly with its number and place.</summary>
public static class WeldMap
{
    /// <summary>How the names of splices begin; the mark of the part follows.</summary>
    internal const string SpliceWord = "splice of ";

    /// <summary>The welds of steel that is made alike a number of times.</summary>
    /// <param name="steel">One of them.</param>
    /// <param name="skeleton">Its members and joints.</param>
    /// <param name="count">How many.</param>
    /// <returns>One mark for each kind of weld, in the order of the list of welds.</returns>
    public static IReadOnlyList<WeldMark> Of(Assembly steel, Skeleton skeleton, int count) =>
        [
            .. SteelFinish
                .Welds(steel, count)
                .Where(line => line.Count > 0)
                .Select(
                    (line, i) =>
                        new WeldMark(
                            Invariant($"W{steel.Series + i + 1}"),
                            line,
                            line.Seam.Name.StartsWith(SpliceWord, StringComparison.Ordinal)
                                ? WeldKind.SquareButt
                                : WeldKind.Fillet,
                            line.Seam.IsAllRound,
                            Place(line.Seam, steel, skeleton)
                        )
                ),
        ];

    // A joint of that name; else the part that the name speaks of.
    private static Point Place(Seam seam, Assembly steel, Skeleton skeleton)
    {
        var joint = skeleton
            .Joints.Where(joint => joint.Name == seam.Name)
            .MinBy(joint => Math.Abs((joint.Weld?.RunMm ?? 0) - seam.LengthMm));
        if (joint is not null)
        {
            return (joint.AtFirst + joint.AtSecond) * 0.5;
        }

        if (seam.Name.StartsWith(SpliceWord, StringComparison.Ordinal))
        {
            var spliced = steel.Parts.First(part =>
                part.Mark == seam.Name[SpliceWord.Length..] && part.SplicesMm.Count > 0
            );
            return Along(spliced, spliced.SplicesMm[0] / spliced.LengthMm);
        }

        return seam.Name switch
        {
            "foot pieces to columns" => Along(First(steel, Rack.FootMark), 0.5),
            "cap plates to columns" => First(steel, "C1").Shape.End,
            "stub to cross tube" => First(steel, "S1").Shape.Start,
            "pole to base plate" or "gussets to pole and plate" => steel.Parts[0].Shape.Start,
            "lap of the channels" => Along(First(steel, "F1"), 0.5),
            StandFrame.LapName => OfRole(steel, TankStand.DiagonalRole).Shape.Start,
            StandFrame.GussetName => skeleton.Joints.First(joint => joint.Name == StandFrame.EndName).AtFirst,
            StandFrame.BaseName => OfRole(steel, TankStand.LegRole).Shape.Start,
            StandFrame.DeckName => Along(OfRole(steel, TankStand.JoistRole), 0.5),
            StandFrame.CapName => OfRole(steel, TankStand.LegRole).Shape.End,
            StandFrame.ToeName => OfRole(steel, TankStand.JoistRole).Shape.Start,
            StandAccess.PostName => OfRole(steel, StandAccess.PostRole).Shape.Start,
            StandAccess.RailName => OfRole(steel, StandAccess.RailRole).Shape.End,
            StandAccess.RungName => Along(OfRole(steel, StandAccess.StileRole), 0.5),
            RemovableSide.WeldName => Along(First(steel, RemovableSide.LugMark), 0.5),
            SlideInDeck.HolderName => Along(First(steel, "F4"), 0.5),
            _ => throw new ArgumentException($"nobody says where the weld '{seam.Name}' is"),
        };
    }

    private static Part First(Assembly steel, string mark) => steel.Parts.First(part => part.Mark == mark);

    private static Part OfRole(Assembly steel, string role) => steel.Parts.First(part => part.Role == role);

    private static Point Along(Part part, double share) =>
        part.Shape.Start + ((part.Shape.End - part.Shape.Start) * share);
}

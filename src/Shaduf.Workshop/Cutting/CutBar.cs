namespace Shaduf.Workshop;

/// <summary>One piece as it lies in its bar.</summary>
/// <param name="Mark">The mark of its part.</param>
/// <param name="LengthMm">Its length, long point to long point [mm].</param>
/// <param name="FromMm">Its first point from the trimmed end of the bar [mm].</param>
public sealed record CutPiece(string Mark, double LengthMm, double FromMm)
{
    /// <summary>Saw angle where it begins, from a square cut [deg].</summary>
    public double StartDeg { get; init; }

    /// <summary>Saw angle where it ends, from a square cut [deg].</summary>
    public double EndDeg { get; init; }

    /// <summary>Whether its long point lies on the upper side of the bar where it begins.</summary>
    public bool StartsLongAbove { get; init; } = true;

    /// <summary>Whether its long point lies on the upper side of the bar where it ends.</summary>
    public bool EndsLongAbove { get; init; } = true;

    /// <summary>Whether one slanting cut parts it from the piece before it.</summary>
    public bool IsNested { get; init; }

    /// <summary>Its last point from the trimmed end of the bar [mm].</summary>
    public double ToMm => FromMm + LengthMm;
}

/// <summary>One bar and what is cut from it.</summary>
/// <param name="Stock">The bar.</param>
/// <param name="Pieces">The pieces in cutting order.</param>
/// <param name="RemainderMm">What is left after the last cut, end trim taken off [mm]; 0 when the last cut eats it.</param>
public sealed record CutBar(BarStock Stock, IReadOnlyList<CutPiece> Pieces, double RemainderMm)
{
    /// <summary>What is cut, written the same for bars that are cut alike.</summary>
    public string Pattern =>
        string.Join(
            " + ",
            Pieces.Select(piece =>
                FormattableString.Invariant($"{piece.Mark}|{piece.FromMm:0.0}|{piece.StartsLongAbove}")
            )
        );
}

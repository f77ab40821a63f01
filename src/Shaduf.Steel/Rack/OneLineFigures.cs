using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>What a rack on one line of columns comes to, for the question whether it may stand on one line.</summary>
/// <param name="SlopeM">Length of the plane up its slope [m].</param>
/// <param name="BasicMPerS">Basic wind speed, ten minutes [m/s].</param>
/// <param name="ColumnNm">Largest design moment of a column [N·m].</param>
/// <param name="Head">Movement of its head under characteristic wind.</param>
/// <param name="LengthMm">From the head down to where it is held [mm].</param>
/// <param name="FirstHz">First frequency [Hz].</param>
public sealed record OneLineFigures(
    double SlopeM,
    double BasicMPerS,
    double ColumnNm,
    HeadMovement Head,
    double LengthMm,
    double FirstHz
)
{
    /// <summary>Largest turning of the head [rad].</summary>
    /// <source>common practice, no source</source>
    public const double LargestTurnRad = 0.010;

    /// <summary>Frequency below which one line is refused: gusts would rock it [Hz].</summary>
    /// <source>common practice, no source</source>
    public const double LeastHz = 3;

    /// <summary>Frequency from which nothing is said [Hz].</summary>
    /// <source>common practice, no source</source>
    public const double CalmHz = 5;

    private const double LargestNm = 40_000;
    private const double LargestEdgeMm = 25;

    /// <summary>Longest plane up its slope that one line holds in any wind [m].</summary>
    public const double ShortSlopeM = 3;

    /// <summary>Strongest basic wind in which one line holds a longer one [m/s].</summary>
    public const double LongSlopeMPerS = 26;

    /// <summary>Movement of the plane's edge, up or down [mm].</summary>
    public double EdgeMm => Head.TurnRad * SlopeM * 1000 / 2;

    /// <summary>What speaks against one line, each with its figures; empty when nothing does.</summary>
    /// <source>common practice, no source</source>
    public IReadOnlyList<string> Against =>
        [
            .. Said(
                Head.TurnRad > LargestTurnRad,
                Invariant($"the head of the column turns {Head.TurnRad:0.0000} rad; at most {LargestTurnRad:0.000}")
            ),
            .. Said(
                Head.HeadMm > LengthMm / 100,
                Invariant($"the head of the column moves {Head.HeadMm:0.0} mm; at most {LengthMm / 100:0.0} mm")
            ),
            .. Said(
                EdgeMm > LargestEdgeMm,
                Invariant($"the edge of the plane moves {EdgeMm:0} mm; at most {LargestEdgeMm:0} mm")
            ),
            .. Said(
                FirstHz < LeastHz,
                Invariant($"the plane rocks at {FirstHz:0.00} Hz; at least {LeastHz:0} Hz, or gusts rock it")
            ),
            .. Said(
                ColumnNm > LargestNm,
                Invariant($"a column carries {ColumnNm / 1000:0.0} kNm; at most {LargestNm / 1000:0} kNm")
            ),
            .. Said(
                SlopeM > ShortSlopeM && BasicMPerS > LongSlopeMPerS,
                Invariant(
                    $"a slope of {SlopeM:0.00} m at {BasicMPerS:0.0} m/s; above {LongSlopeMPerS:0} m/s at most {ShortSlopeM:0} m"
                )
            ),
        ];

    private static IEnumerable<string> Said(bool isAgainst, string words) => isAgainst ? [words] : [];
}

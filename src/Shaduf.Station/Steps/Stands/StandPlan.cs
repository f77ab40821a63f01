namespace Shaduf.Station;

/// <summary>
/// Lines of a stand. Axes: x along the two rows of legs, y away from the ladder, z up, millimetres; the origin lies on
/// the ground under the front left leg.
/// </summary>
/// <param name="Tank">The tank.</param>
/// <param name="FloorMm">Underside of the tank above ground [mm].</param>
/// <param name="LegCount">Legs in two rows; of an odd number the back row has one more.</param>
/// <param name="Sections">Sections.</param>
/// <param name="AskedBays">Bays of diagonals; null to take them by their slope.</param>
/// <param name="AskedPlatformMm">Side of the platform [mm]; null for what the tank needs.</param>
public sealed record StandPlan(
    StandTank Tank,
    double FloorMm,
    int LegCount,
    StandSections Sections,
    int? AskedBays,
    double? AskedPlatformMm
)
{
    /// <summary>Deck plate [mm] (common practice, no source: 5 mm at least under a flat bottom).</summary>
    public const double DeckMm = 5;

    /// <summary>Plate between leg and row beam [mm].</summary>
    public const double CapMm = 10;

    /// <summary>From the ground to the underside of a leg: plinth, grout and base plate [mm].</summary>
    public const double FootMm = Rack.PlinthHeightMm + UnderMm;

    /// <summary>Room between plinth and leg for 25 to 40 mm of grout and a plate of 30 to 15 mm [mm].</summary>
    public const double UnderMm = 55;

    /// <summary>Distance of joists under a flat bottom at most [mm] (judgement, no source).</summary>
    public const double MostPitchMm = 300;

    /// <summary>Deck beyond the tank at least [mm] (judgement, no source).</summary>
    public const double EdgeMm = 25;

    /// <summary>Lowest stand that is built on legs [mm] (judgement, no source: below it a plinth is cheaper).</summary>
    public const double LowestMm = 1000;

    // Walkway before the tank: 600 mm clear (EN ISO 14122-2) and the rail.
    private const double WalkMm = 700;
    private const double BackMm = 100;

    // The lowest and highest joints of diagonals stand so far from the ends of the legs, for gussets.
    private const double GussetMm = 100;

    // One bay for each one and a half distances of legs (judgement, no source).
    private const double BayRatio = 1.5;

    /// <summary>Legs in the front row, which never has more than the back row.</summary>
    public int RowCount => LegCount / 2;

    /// <summary>Whether the legs of both rows stand opposite each other; if not, the inner ones stand in the gaps.</summary>
    public bool IsPaired => LegCount % 2 == 0;

    /// <summary>Width of the tank that stands on the platform: less than the tank where the platform is too small [mm].</summary>
    public double BedMm => Math.Min(Tank.WidthMm, (AskedPlatformMm ?? double.MaxValue) - (2 * EdgeMm));

    /// <summary>Distance of the joists: a whole part of the tank's width, or of a panel, so that one lies under each joint line [mm].</summary>
    public double PitchMm
    {
        get
        {
            var unit = Tank.IsRound ? BedMm : BedMm / Math.Max(1, Math.Round(BedMm / Tank.PanelMm));
            return unit / Math.Ceiling((unit / MostPitchMm) - 1e-9);
        }
    }

    /// <summary>Distance of both rows, and of the first and last leg of a row: the tank and 50 mm on each side, in steps of 50 mm.</summary>
    public double SideMm => Math.Ceiling((BedMm + 100) / 50) * 50;

    /// <summary>Middle of the tank along x and along y [mm].</summary>
    public double MiddleMm => SideMm / 2;

    /// <summary>Legs along the front row [mm].</summary>
    public IReadOnlyList<double> LegXMm => Along(RowCount);

    /// <summary>Legs along both rows, the front one first [mm].</summary>
    public IReadOnlyList<IReadOnlyList<double>> RowsXMm => [LegXMm, Along(LegCount - RowCount)];

    /// <summary>Height of the legs' upper ends [mm].</summary>
    public double TopMm => FloorMm - DeckMm - Sections.Joist.SideMm - Sections.Beam.SideMm - CapMm;

    /// <summary>Whether joists and beams leave room for legs with a bay of diagonals.</summary>
    public bool HasLegs => TopMm - FootMm >= 3 * GussetMm;

    /// <summary>Middle of the row beams [mm].</summary>
    public double BeamZMm => TopMm + CapMm + (Sections.Beam.SideMm / 2);

    /// <summary>Middle of the joists [mm].</summary>
    public double JoistZMm => FloorMm - DeckMm - (Sections.Joist.SideMm / 2);

    /// <summary>Bays of diagonals one over the other.</summary>
    public int BayCount =>
        AskedBays
        ?? Math.Max(
            1,
            (int)Math.Ceiling((TopMm - FootMm) / (BayRatio * Math.Sqrt(SideMm * SideMm / (RowCount - 1))) - 1e-9)
        );

    /// <summary>Heights at which diagonals meet the legs, from the lowest up [mm].</summary>
    public IReadOnlyList<double> LevelsMm
    {
        get
        {
            var (low, high) = (FootMm + GussetMm, TopMm - GussetMm);
            return [.. Enumerable.Range(0, BayCount + 1).Select(i => low + ((high - low) * i / BayCount))];
        }
    }

    /// <summary>Joists along x [mm].</summary>
    public IReadOnlyList<double> JoistXMm
    {
        get
        {
            var bays = (int)Math.Round(BedMm / PitchMm);
            var beyond = Math.Max(1, (int)Math.Ceiling((((AskedPlatformMm ?? 0) - BedMm) / 2 / PitchMm) - 1e-9));
            var start = MiddleMm - (BedMm / 2);
            return [.. Enumerable.Range(-beyond, bays + 1 + (2 * beyond)).Select(i => start + (i * PitchMm))];
        }
    }

    /// <summary>Front and back of the platform along y [mm].</summary>
    public (double FrontMm, double BackMm) DepthMm => (-WalkMm, SideMm + BackMm);

    /// <summary>Left and right of the platform along x: the outsides of its last joists [mm].</summary>
    public (double LeftMm, double RightMm) WidthMm
    {
        get
        {
            var joists = JoistXMm;
            return (joists[0] - (Sections.Joist.SideMm / 2), joists[^1] + (Sections.Joist.SideMm / 2));
        }
    }

    /// <summary>Area of the platform [m²].</summary>
    public double DeckM2 => (WidthMm.RightMm - WidthMm.LeftMm) * (DepthMm.BackMm - DepthMm.FrontMm) * 1e-6;

    private IReadOnlyList<double> Along(int count) =>
        [.. Enumerable.Range(0, count).Select(i => SideMm * i / (count - 1))];

    /// <summary>Length of the tank's bottom over a joist [mm]; 0 where it does not reach.</summary>
    /// <param name="xMm">Place of the joist [mm].</param>
    public double ChordMm(double xMm)
    {
        var (off, half) = (Math.Abs(xMm - MiddleMm), BedMm / 2);
        return Tank.IsRound ? 2 * Math.Sqrt(Math.Max(0, (half * half) - (off * off)))
            : off <= half + 1 ? BedMm
            : 0;
    }
}

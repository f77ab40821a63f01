using Shaduf.Parts;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Plates of a stand, cut from sheet.</summary>
/// <param name="Foot">Base plate of a leg.</param>
/// <param name="LegCount">Legs.</param>
/// <param name="LegMm">Side of a leg [mm].</param>
/// <param name="GussetCount">Gussets at the ends of diagonals.</param>
/// <param name="DeckM2">Area of the deck [m²].</param>
/// <param name="ToeMm">Length of the toe plate [mm].</param>
public sealed record StandPlates(
    StandFoot Foot,
    int LegCount,
    double LegMm,
    int GussetCount,
    double DeckM2,
    double ToeMm
)
{
    /// <summary>Gusset: side and thickness [mm]; common practice, no source.</summary>
    public static (double SideMm, double ThicknessMm) Gusset { get; } = (150, 8);

    /// <summary>Height of the toe plate [mm] (EN ISO 14122-3).</summary>
    public const double ToeHighMm = 100;

    /// <summary>Its thickness [mm].</summary>
    public const double ToeThickMm = 5;

    /// <summary>What a cap is wider than its leg [mm]; common practice, no source.</summary>
    public const double CapBeyondMm = 20;

    /// <summary>Role of the base plates.</summary>
    public const string BaseRole = "base plate of a leg";

    /// <summary>Role of the caps.</summary>
    public const string CapRole = "cap of a leg, under the row beam";

    /// <summary>Role of the gussets.</summary>
    public const string GussetRole = "gusset of a diagonal";

    /// <summary>Cap under the row beam: side [mm].</summary>
    public double CapSideMm => LegMm + CapBeyondMm;

    /// <summary>Deck and toe plate [kg].</summary>
    public double DeckKg =>
        SteelDensity.KgPerM3 * ((DeckM2 * StandPlan.DeckMm / 1000) + (ToeMm * ToeHighMm * ToeThickMm * 1e-9));

    /// <summary>Base plates, caps and gussets [kg].</summary>
    public double PieceKg => SteelDensity.KgPerM3 * 1e-9 * Pieces.Sum(plate => plate.Count * plate.VolumeMm3);

    /// <summary>Base plates, caps and gussets of one stand.</summary>
    public IReadOnlyList<Plate> Pieces =>
        [
            new("PL201", BaseRole, Foot.SideMm, Foot.SideMm, Foot.ThicknessMm, LegCount)
            {
                Holes = new(PoleFoot.HoleMm(Foot.Bolt.DiameterMm), Foot.SpacingMm),
            },
            new("PL202", CapRole, CapSideMm, CapSideMm, StandPlan.CapMm, LegCount),
            new("PL203", GussetRole, Gusset.SideMm, Gusset.SideMm, Gusset.ThicknessMm, GussetCount),
        ];

    /// <summary>All of them [kg].</summary>
    public double MassKg => DeckKg + PieceKg;

    /// <summary>Area to paint, both faces [m²].</summary>
    public double PaintM2 =>
        2 * (DeckM2 + (ToeMm * ToeHighMm * 1e-6) + (1e-6 * Pieces.Sum(plate => plate.Count * plate.FaceMm2)));
}

/// <summary>The foot of a leg: a square plate on four bolts that are cast into its block.</summary>
/// <param name="SideMm">Side of the plate [mm].</param>
/// <param name="ThicknessMm">Its thickness [mm].</param>
/// <param name="SpacingMm">Distance of the bolts along a side [mm].</param>
/// <param name="BoltName">Size of the bolts.</param>
/// <param name="InConcreteMm">Length of a bolt in the concrete, plinth and block [mm].</param>
/// <param name="EdgeMm">From the bolts to the sides of the block at least [mm].</param>
public sealed record StandFoot(
    double SideMm,
    double ThicknessMm,
    double SpacingMm,
    string BoltName,
    double InConcreteMm,
    double EdgeMm
)
{
    /// <summary>Bolts of a foot.</summary>
    public const int BoltCount = 4;

    /// <summary>The foot of a leg before it is checked, the lightest that is made.</summary>
    /// <param name="legMm">Side of the leg [mm].</param>
    public static StandFoot Of(double legMm) => All(legMm).First();

    /// <summary>The feet that are made, the lightest first: bolts, plates as sold, the block's edge; common practice, no source.</summary>
    /// <param name="legMm">Side of the leg [mm].</param>
    public static IEnumerable<StandFoot> All(double legMm) =>
        from bolt in new[]
        {
            (Name: "M16", ClearMm: 40, InConcreteMm: 500, EdgeMm: 150),
            (Name: "M20", ClearMm: 50, InConcreteMm: 600, EdgeMm: 250),
            (Name: "M24", ClearMm: 60, InConcreteMm: 700, EdgeMm: 350),
            (Name: "M24", ClearMm: 60, InConcreteMm: 750, EdgeMm: 500),
        }
        from plate in new[] { 15, 20, 25, 30 }
        select new StandFoot(
            legMm + (4 * bolt.ClearMm),
            plate,
            legMm + (2 * bolt.ClearMm),
            bolt.Name,
            bolt.InConcreteMm,
            bolt.EdgeMm
        );

    /// <summary>Narrowest block that its bolts are checked in [mm].</summary>
    public double NarrowestMm => Math.Ceiling((SpacingMm + (2 * EdgeMm)) / 50) * 50;

    /// <summary>Depth of a block that its bolts end in, 100 mm of concrete under them [mm].</summary>
    public double NeededDepthMm => InConcreteMm - Rack.PlinthHeightMm + 100;

    /// <summary>Shallowest block that is chosen [mm]; common practice, no source.</summary>
    public double ShallowestMm => Math.Max(600, NeededDepthMm);

    /// <summary>Size of the bolts.</summary>
    public BoltSize Bolt => BoltSize.Of(BoltName);

    /// <summary>From a bolt to the face of the leg [mm].</summary>
    /// <param name="legMm">Side of the leg [mm].</param>
    public double LeverMm(double legMm) => (SpacingMm - legMm) / 2;

    /// <summary>Grout between plinth and plate: what the plate leaves of the room under a leg [mm].</summary>
    public double GroutMm => StandPlan.UnderMm - ThicknessMm;

    /// <summary>Length of a bolt: in the concrete, grout, plate, nuts and washers [mm].</summary>
    public double BoltMm => InConcreteMm + GroutMm + ThicknessMm + (4 * Bolt.DiameterMm);
}

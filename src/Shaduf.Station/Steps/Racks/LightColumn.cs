using Shaduf.Parts;
using Shaduf.Steel;
using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>The foot of a pole: a square plate on four bolts that are cast into its block.</summary>
/// <param name="SideMm">Side of the plate [mm].</param>
/// <param name="ThicknessMm">Its thickness [mm].</param>
/// <param name="BoltMm">Diameter of a bolt [mm].</param>
/// <param name="BoltSpacingMm">Distance of the bolts, middle to middle, along a side [mm].</param>
/// <param name="BoltInConcreteMm">Length of a bolt in the concrete [mm].</param>
/// <param name="GussetMm">Legs of the triangular gussets, one on each side of the pole [mm].</param>
/// <param name="GussetThicknessMm">Their thickness [mm].</param>
public sealed record PoleFoot(
    double SideMm,
    double ThicknessMm,
    double BoltMm,
    double BoltSpacingMm,
    double BoltInConcreteMm,
    double GussetMm,
    double GussetThicknessMm
)
{
    /// <summary>Bolts.</summary>
    public const int BoltCount = 4;

    /// <summary>Gussets.</summary>
    public const int GussetCount = 4;

    /// <summary>Grout under the plate [mm]; common practice, no source.</summary>
    public const double GroutMm = 30;

    /// <summary>Hole for a bolt [mm] (EN 1090-2: 2 mm wider from M16 to M24, 3 mm above; from memory).</summary>
    /// <param name="boltMm">Diameter of the bolt [mm].</param>
    public static double HoleMm(double boltMm) => boltMm + (boltMm > 24 ? 3 : 2);

    /// <summary>Its plate and gussets.</summary>
    /// <param name="series">Hundred of their marks.</param>
    public IReadOnlyList<Plate> Plates(int series) =>
        [
            new($"PL{series + 1}", "base plate of a pole", SideMm, SideMm, ThicknessMm, 1)
            {
                Holes = new(HoleMm(BoltMm), BoltSpacingMm),
            },
            new($"PL{series + 2}", "gusset of a pole", GussetMm, GussetMm, GussetThicknessMm, GussetCount)
            {
                IsTriangle = true,
            },
        ];

    /// <summary>Mass of plate and gussets, bolts not counted [kg].</summary>
    public double MassKg => SteelDensity.KgPerM3 * 1e-9 * Plates(0).Sum(plate => plate.Count * plate.VolumeMm3);

    /// <summary>Length of a bolt: in the concrete, grout, plate, nuts below and above and a washer each [mm].</summary>
    public double BoltLengthMm => BoltInConcreteMm + GroutMm + ThicknessMm + (4 * BoltMm);
}

/// <summary>A size of light column.</summary>
/// <param name="Name">Its tube.</param>
/// <param name="DiameterMm">Diameter of the tube [mm].</param>
/// <param name="WallMm">Its wall [mm].</param>
/// <param name="Foot">Its foot.</param>
/// <param name="WeldLegMm">Leg of the weld to the plate [mm].</param>
/// <param name="BlockMm">Side of its square block [mm].</param>
public sealed record LightColumnSize(
    string Name,
    double DiameterMm,
    double WallMm,
    PoleFoot Foot,
    double WeldLegMm,
    double BlockMm
)
{
    /// <summary>All sizes, the lightest first.</summary>
    public static IReadOnlyList<LightColumnSize> All { get; } =
    [
        .. Csv.Embedded(typeof(LightColumnSize).Assembly, "LightColumnSize.csv")
            .Select(row => new LightColumnSize(
                row["name"],
                row.Number("diameterMm"),
                row.Number("wallMm"),
                new(
                    row.Number("plateMm"),
                    row.Number("plateThicknessMm"),
                    row.Number("boltMm"),
                    row.Number("boltSpacingMm"),
                    row.Number("boltInConcreteMm"),
                    row.Number("gussetMm"),
                    row.Number("gussetThicknessMm")
                ),
                row.Number("weldLegMm"),
                row.Number("blockMm")
            )),
    ];
}

/// <summary>A light column: one round tube on a plate with four bolts.</summary>
/// <param name="Steel">Its tube and welds.</param>
/// <param name="Skeleton">The line along which it carries, from the top of its block to the lamp.</param>
/// <param name="Size">Its size.</param>
/// <param name="HeightMm">From the ground to the lamp, or to the tip of a mast [mm].</param>
public sealed record LightColumn(Assembly Steel, Skeleton Skeleton, LightColumnSize Size, double HeightMm)
{
    /// <summary>The air rod on a mast's tube [mm].</summary>
    public const double TipMm = 1000;

    /// <summary>The air rod in all: 500 mm of it lie beside the tube in two holders; common practice, no source [mm].</summary>
    public const double AirRodMm = TipMm + 500;

    private const double BarMm = 6000;
    private const double GussetWeldMm = 4;

    /// <summary>Its foot.</summary>
    public PoleFoot Foot => Size.Foot;

    /// <summary>Its tube.</summary>
    public Part Pole => Steel.Parts[0];

    /// <summary>A column of a height.</summary>
    /// <param name="heightMm">From the ground to the lamp, or to the tip of a mast [mm], above 0.</param>
    /// <param name="size">Its size.</param>
    /// <param name="isMast">Whether it is a lightning mast: its tube ends below the air rod.</param>
    /// <param name="workshop">The saw; null when unknown.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">The height leaves no tube.</exception>
    public static LightColumn Of(
        double heightMm,
        LightColumnSize size,
        bool isMast = false,
        WorkshopBrief? workshop = null
    )
    {
        var tubeMm = isMast ? heightMm - TipMm : heightMm;
        var (mark, role) = isMast ? ("Y2", "lightning mast") : ("Y1", "light column");
        if (!(tubeMm > 0))
        {
            throw new ArgumentException($"pole ({mark}): a part without length");
        }

        var tube = CircularHollow.Of(size.DiameterMm, size.WallMm);
        var section = new Section(
            size.Name,
            Outline.RoundTube,
            size.DiameterMm,
            size.WallMm,
            tube.MassKgPerM,
            tube.PerimeterMm,
            BarMm,
            BarMm - (workshop ?? WorkshopBrief.Unknown).EndTrimMm
        );
        var pole = Part.Straight(mark, role, section, new(0, 0, 0), new(0, 0, tubeMm));
        Seam[] seams =
        [
            new("pole to base plate", size.WeldLegMm, Math.PI * size.DiameterMm, 1) { IsAllRound = true },
            new("gussets to pole and plate", GussetWeldMm, size.Foot.GussetMm, 4 * PoleFoot.GussetCount),
            .. pole.SplicesMm.Count > 0
                ?
                [
                    new Seam($"splice of {mark}", size.WallMm, Math.PI * size.DiameterMm, pole.SplicesMm.Count)
                    {
                        IsOnSite = true,
                    },
                ]
                : (Seam[])[],
        ];
        var member = new Member(
            pole.Mark,
            pole.Role,
            new(MakeUp.Single, section),
            pole.Shape.Start,
            new(0, 0, heightMm),
            new(1, 0, 0)
        );
        var series = isMast ? 400 : 300;
        return new(
            new(role, [pole], seams) { Series = series, Plates = size.Foot.Plates(series) },
            new([member], [], [new(0, pole.Shape.Start)]),
            size,
            heightMm
        );
    }
}

using Shaduf.Parts;
using Shaduf.Workshop;

namespace Shaduf.Station;

/// <summary>Welds of one kind on all racks.</summary>
/// <param name="Seam">The weld.</param>
/// <param name="Count">Runs on all racks.</param>
/// <param name="DepositKg">Weld metal of all [kg].</param>
/// <param name="RodMm">Rod to lay it with [mm].</param>
public sealed record WeldLine(Seam Seam, int Count, double DepositKg, double RodMm);

/// <summary>Electrodes of one size.</summary>
/// <param name="RodMm">Diameter of the core [mm].</param>
/// <param name="MassKg">Mass needed [kg].</param>
/// <param name="Rods">Rods of 350 mm needed.</param>
/// <param name="Packets">Packets to buy.</param>
public sealed record ElectrodeLine(double RodMm, double MassKg, double Rods, int Packets);

/// <summary>Paint of one kind.</summary>
/// <param name="Item">Key of its rate.</param>
/// <param name="Name">What it is.</param>
/// <param name="Coats">Coats.</param>
/// <param name="FilmUm">Dry film of a coat [um].</param>
/// <param name="WetUm">Wet film of a coat, as it comes from the tin [um].</param>
/// <param name="Litres">Paint of all coats, before rounding up to tins [L].</param>
public sealed record CoatLine(string Item, string Name, int Coats, double FilmUm, double WetUm, double Litres);

/// <summary>Welding and finishing of the racks' steel.</summary>
public static class SteelFinish
{
    /// <summary>A packet of electrodes [kg]; from memory.</summary>
    public const double PacketKg = 2.5;

    /// <summary>Volume solids of the paints; from memory.</summary>
    public const double SolidsShare = 0.5;

    /// <summary>Paint lost, by brush on small sections; common practice, no source.</summary>
    public const double LossShare = 0.25;

    /// <summary>Weld metal to electrodes bought; planning tables of welding makers.</summary>
    public const double DepositShare = 0.55;

    // Convexity and overrun: published tables of fillet weights.
    private const double OverrunShare = 0.2;
    private const double RodLengthMm = 350;
    private const double StubMm = 50;
    private const double RecoveryShare = 0.9;

    // Vent and drain at both ends.
    private const int VentCount = 4;

    // Zinc phosphate primer and two finish coats: common practice, no source.
    private static readonly (string Item, string Name, int Coats, double FilmUm)[] s_coats =
    [
        ("paint-primer", "primer, one coat of 50 um", 1, 50),
        ("paint-finish", "finish, two coats of 40 um", 2, 40),
    ];

    /// <summary>The welds.</summary>
    /// <param name="rack">The rack.</param>
    /// <returns>One line for each kind.</returns>
    public static IReadOnlyList<WeldLine> Welds(Rack rack) => Welds(rack.Steel, rack.Grid.RackCount);

    /// <summary>The welds of steel that is made alike a number of times.</summary>
    /// <param name="steel">One of them.</param>
    /// <param name="count">How many.</param>
    /// <returns>One line for each kind.</returns>
    public static IReadOnlyList<WeldLine> Welds(Assembly steel, int count) =>
        [
            .. steel.Seams.Select(seam =>
            {
                var runs = seam.Count * count;
                var kgPerM = FilletWeld.DepositKgPerM(seam.LegMm, OverrunShare);
                return new WeldLine(seam, runs, runs * seam.LengthMm / 1000 * kgPerM, Electrodes.RodMm(seam.LegMm));
            }),
        ];

    /// <summary>The electrodes, by size.</summary>
    /// <param name="welds">The welds.</param>
    /// <returns>One line for each size.</returns>
    public static IReadOnlyList<ElectrodeLine> Rods(IReadOnlyList<WeldLine> welds) =>
        [
            .. welds
                .GroupBy(weld => weld.RodMm)
                .OrderBy(size => size.Key)
                .Select(size =>
                {
                    var depositKg = size.Sum(weld => weld.DepositKg);
                    var massKg = Electrodes.MassKg(depositKg, DepositShare);
                    var coreKg = Electrodes.CoreKg(size.Key, RodLengthMm, StubMm);
                    return new ElectrodeLine(
                        size.Key,
                        massKg,
                        Electrodes.RodCount(depositKg, coreKg, RecoveryShare),
                        (int)Math.Ceiling((massKg / PacketKg) - 1e-9)
                    );
                }),
        ];

    /// <summary>Outer surface of all parts; nothing taken off for joints [m2].</summary>
    /// <param name="rack">The rack.</param>
    /// <returns>Area [m2].</returns>
    public static double AreaM2(Rack rack) =>
        rack.Grid.RackCount * rack.Steel.Parts.Sum(part => part.LengthMm / 1000 * part.Section.PerimeterMm / 1000);

    /// <summary>The paint, by coat.</summary>
    /// <param name="areaM2">Area painted [m2].</param>
    /// <returns>One line for each kind.</returns>
    public static IReadOnlyList<CoatLine> Coats(double areaM2) =>
        [
            .. s_coats.Select(coat => new CoatLine(
                coat.Item,
                coat.Name,
                coat.Coats,
                coat.FilmUm,
                PaintCoat.WetFilmUm(SolidsShare, coat.FilmUm, thinnerShare: 0),
                coat.Coats * PaintCoat.Litres(areaM2, SolidsShare, coat.FilmUm, LossShare)
            )),
        ];

    /// <summary>Holes of each closed tube, where the steel is galvanised instead of painted.</summary>
    /// <param name="steel">The steel.</param>
    /// <returns>Sections and the least diameter of two holes at each end [mm].</returns>
    public static IReadOnlyList<(Section Section, double HoleMm)> VentsOf(IEnumerable<Assembly> steel) =>
        [
            .. steel
                .SelectMany(each => each.Groups)
                .Select(group => group.Section)
                .Distinct()
                .Where(section => section.Outline != Outline.EqualAngle)
                .OrderBy(section => section.Name, StringComparer.Ordinal)
                .Select(section => (section, Math.Ceiling(Vents.HoleMm(InnerMm2(section), VentCount)))),
        ];

    private static double InnerMm2(Section section)
    {
        var innerMm = section.SideMm - (2 * section.WallMm);
        return section.Outline == Outline.RoundTube ? Math.PI / 4 * innerMm * innerMm : innerMm * innerMm;
    }
}

using Shaduf.Money;
using Shaduf.Parts;
using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Pieces that are loaded alike.</summary>
/// <param name="What">What they are: marks and what is already welded to them.</param>
/// <param name="Count">How many.</param>
/// <param name="EachKg">Mass of one [kg].</param>
/// <param name="LengthMm">Length of one [mm]; 0 where it does not matter.</param>
/// <param name="Welding">What of them is welded where.</param>
public sealed record LoadItem(string What, int Count, double EachKg, double LengthMm, string Welding)
{
    /// <summary>Trip on which they go, from 1.</summary>
    public int Trip { get; init; }

    /// <summary>Whether they are for the stand of a tank, so that they stay behind while it is withheld.</summary>
    public bool IsOfStand { get; init; }

    /// <summary>Whether each of them fills the truck.</summary>
    public bool IsAlone { get; init; }

    /// <summary>Mass of all of them [kg].</summary>
    public double MassKg => Count * EachKg;
}

/// <summary>What goes on the truck, in the order of loading: what lies below and what is needed last first.</summary>
/// <param name="Items">The pieces, trip by trip.</param>
/// <param name="PayloadKg">What the truck carries [kg].</param>
/// <param name="IsPayloadTold">Whether the brief says so.</param>
/// <param name="BedMm">Length of its bed [mm]; null when unknown.</param>
public sealed record LoadingList(IReadOnlyList<LoadItem> Items, double PayloadKg, bool IsPayloadTold, double? BedMm)
{
    /// <summary>Payload where the brief leaves it open [kg]; the trips of the bill count with it; common practice, no source.</summary>
    public const double UsualPayloadKg = 3000;

    private const double BagKg = 50;

    /// <summary>Trips.</summary>
    public int TripCount => Items.Max(item => item.Trip);

    /// <summary>The longest piece [mm].</summary>
    public double LongestMm => Items.Max(item => item.LengthMm);

    /// <summary>Loads the truck.</summary>
    /// <param name="design">The design.</param>
    public static LoadingList Of(Design design) =>
        Of(design.Brief.Rack.Crew, design.Choice, design.Works, design.Takeoff.Lines);

    /// <summary>Loads the truck.</summary>
    /// <param name="crew">The crew with its truck.</param>
    /// <param name="choice">What was chosen.</param>
    /// <param name="works">The works.</param>
    /// <param name="lines">What was taken off, for the cement.</param>
    internal static LoadingList Of(CrewBrief crew, Choice choice, Works works, IReadOnlyList<QuantityLine> lines)
    {
        var payloadKg = crew.PayloadKg ?? UsualPayloadKg;
        LoadItem[] all =
        [
            .. Racks(works.Rack).OrderByDescending(item => item.LengthMm),
            .. StandItems(works.Stand),
            .. Poles(works.Guard),
            .. works.Guard.Fence is { } fence ? FenceLoad.Of(fence) : [],
            .. Cement(lines),
            .. WaterLoad.Pipes(choice, works, lines),
            WaterLoad.Pump(choice, works.Source),
            new(
                "modules, upright on their long side, strapped, last on and first off",
                choice.ModuleCount,
                choice.Module.Body.MassKg,
                choice.Module.Body.LengthMm,
                ""
            ),
            .. lines.Any(line => line.Item == choice.Tank.Name) ? WaterLoad.Tanks(choice.Tank, choice.TankCount) : [],
        ];
        return new([.. Tripped(all, payloadKg)], payloadKg, crew.PayloadKg is not null, crew.TruckBedM * 1000);
    }

    /// <summary>Whether the truck takes it.</summary>
    public IEnumerable<Finding> Findings()
    {
        var heaviest = Items.MaxBy(item => item.EachKg)!;
        var fits = heaviest.EachKg <= PayloadKg && !(LongestMm > BedMm);
        yield return new(
            "workshop/loading",
            fits && IsPayloadTold && BedMm is not null ? FindingStatus.Holds : FindingStatus.Look,
            Invariant(
                $"{Items.Sum(item => item.MassKg):0} kg in {TripCount} trips of {PayloadKg:0} kg{(IsPayloadTold ? "" : " (the truck's payload is not told: a usual one)")}; longest piece {LongestMm:0} mm{(BedMm is { } bed ? Invariant($", bed {bed:0} mm") : ", the truck's bed is not told")}; sand, stone, cables, drive, lamps, valves, tools and small goods not counted"
            ),
            LongestMm,
            BedMm,
            "mm",
            "solid model; usual payload: common practice, no source"
        );
    }

    private static IEnumerable<LoadItem> StandItems(StandDesign? stands) =>
        stands is null
            ? []
            : StandLoad
                .Of(stands)
                .OrderByDescending(item => item.LengthMm)
                .Select(item => item with { IsOfStand = true });

    // Bags of the stand's footings apart: they stay behind while it is withheld.
    private static IEnumerable<LoadItem> Cement(IReadOnlyList<QuantityLine> lines) =>
        lines
            .Where(line => line.Item == "cement-50kg")
            .GroupBy(line => line.Description.EndsWith(StandTakeoff.FootingsWord, StringComparison.Ordinal))
            .OrderBy(bags => !bags.Key)
            .Select(bags => new LoadItem(
                $"cement{(bags.Key ? " of the stand's footings" : "")}, bags of 50 kg, off the floor and covered",
                (int)bags.Sum(line => line.Quantity),
                BagKg,
                0,
                ""
            )
            {
                IsOfStand = bags.Key,
            });

    // A pole in pieces is welded together on site; its foot is on it.
    private static IEnumerable<LoadItem> Poles(Guard guard) =>
        guard.PoleStrengths.Select(pole => new LoadItem(
            $"{pole.Name} {pole.Column.Pole.Mark} with its foot",
            guard.CountOf(pole),
            pole.Column.Steel.MassKg + pole.Column.Foot.MassKg,
            pole.Column.Pole.PiecesMm.Max(),
            pole.Column.Pole.PiecesMm.Count > 1
                ? Invariant(
                    $"{pole.Column.Pole.PiecesMm.Count} pieces, welded together on site; plate and gussets in the shop"
                )
                : "plate and gussets welded on in the shop"
        ));

    // What the shop welds on goes with the part that it is welded to.
    private static IEnumerable<LoadItem> Racks(Rack rack)
    {
        var (steel, racks) = (rack.Steel, rack.Grid.RackCount);
        double EachKg(string mark) =>
            steel.Groups.FirstOrDefault(part => part.Mark == mark) is { } part ? part.MassKg / part.Count : 0;
        var cap = steel.Plates.Count > 0 ? steel.Plates[0] : null;
        var capKg = cap is null ? 0 : cap.VolumeMm3 * SteelDensity.KgPerM3 * 1e-9;
        var stubs = steel.Parts.Count(part => part.Mark == "S1") / Math.Max(1, rack.TubePlacesMm.Count);
        foreach (var part in steel.Groups.Where(part => part.Mark[0] is not ('K' or 'S')))
        {
            var count = part.Count * racks;
            var each = part.MassKg / part.Count;
            yield return InPieces(
                steel,
                part,
                part.Mark[0] switch
                {
                    'C' => new(
                        $"{part.Mark} {part.Role}{(cap is null ? "" : $", cap plate {cap.Mark}")} and foot pieces {Rack.FootMark}",
                        count,
                        each + (2 * EachKg(Rack.FootMark)) + capKg,
                        part.AlongBarMm,
                        "foot pieces welded in the shop, head to the cross tube on site"
                    ),
                    'T' => new(
                        $"{part.Mark} {part.Role}{(stubs > 0 ? Invariant($" with {stubs} stubs S1") : "")}",
                        count,
                        each + (stubs * EachKg("S1")),
                        part.AlongBarMm,
                        stubs > 0 ? "stubs welded in the shop, frame to it on site" : "welded on site"
                    ),
                    'F' => Side(rack, part, EachKg(RemovableSide.LugMark)),
                    _ => Loose(part, count),
                }
            );
        }
    }

    // Two angles a channel and two channels a holder, with what the removable side is bolted by.
    private static LoadItem Side(Rack rack, PartGroup part, double lugKg)
    {
        var isRemovable = part.Mark == "F3";
        var angles = part.Mark == "F4" ? 4 : 2;
        var lugs =
            isRemovable ? rack.Grid.Rows + 1
            : part.Mark == "F2" ? 0
            : 1;
        var made = angles == 4 ? "two channels back to back" : "two angles lapped to a channel";
        var with = lugs > 0 ? Invariant($" with {lugs} {(lugs == 1 ? "lug" : "lugs")} {RemovableSide.LugMark}") : "";
        return new(
            $"{part.Mark} {part.Role}, {made}{with}",
            part.Count / angles * rack.Grid.RackCount,
            (angles * part.MassKg / part.Count) + (lugs * lugKg),
            part.AlongBarMm,
            isRemovable
                ? "laps and lugs welded in the shop, bolted on site"
                : $"laps{(lugs > 0 ? " and lug" : "")} welded in the shop, corners on site"
        );
    }

    private static LoadItem Loose(PartGroup part, int count) =>
        new($"{part.Mark} {part.Role}", count, part.MassKg / part.Count, part.AlongBarMm, "welded on site");

    // What the weld map splices on site is loaded by the piece; what the shop splices, whole.
    internal static LoadItem InPieces(Assembly steel, PartGroup part, LoadItem whole)
    {
        var pieces = part.PiecesMm.Count;
        return pieces == 1 ? whole with { LengthMm = Part.WholeMm(whole.LengthMm) }
            : steel.Seams.Any(seam => seam.Name == WeldMap.SpliceWord + part.Mark && seam.IsOnSite)
                ? whole with
                {
                    What = Invariant($"{whole.What}, {pieces} pieces each"),
                    Count = whole.Count * pieces,
                    EachKg = whole.EachKg / pieces,
                    LengthMm = Part.WholeMm(part.PiecesMm.Max()),
                    Welding = $"{whole.Welding}; spliced on site",
                }
            : whole with { LengthMm = Part.WholeMm(whole.LengthMm), Welding = $"spliced in the shop; {whole.Welding}" };
    }

    // One trip after another; what is split goes on with the next.
    private static IEnumerable<LoadItem> Tripped(IEnumerable<LoadItem> items, double payloadKg)
    {
        var (trip, loadedKg) = (1, 0.0);
        foreach (var item in items.Where(item => item.Count > 0))
        {
            for (var left = item.Count; left > 0; )
            {
                var room = (int)((payloadKg - loadedKg) / item.EachKg);
                if ((room < 1 || item.IsAlone) && loadedKg > 0)
                {
                    (trip, loadedKg) = (trip + 1, 0);
                    continue;
                }

                var taken = item.IsAlone ? 1 : Math.Min(left, Math.Max(1, room));
                yield return item with
                {
                    Count = taken,
                    Trip = trip,
                };
                left -= taken;
                loadedKg += taken * item.EachKg;
            }
        }
    }
}

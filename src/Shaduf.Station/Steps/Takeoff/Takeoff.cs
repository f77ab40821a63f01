using Shaduf.Money;
using Shaduf.Parts;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Steel that is made alike a number of times.</summary>
/// <param name="Name">What it is: 'racks'.</param>
/// <param name="Steel">One of them.</param>
/// <param name="Count">How many.</param>
public sealed record SteelLot(string Name, Assembly Steel, int Count)
{
    /// <summary>Bars of all of them [kg].</summary>
    public double MassKg => Count * Steel.MassKg;

    /// <summary>The racks.</summary>
    /// <param name="rack">One rack.</param>
    public static SteelLot Of(Rack rack) => new("racks", rack.Steel, rack.Grid.RackCount);
}

/// <summary>Every quantity of the station with where it comes from.</summary>
/// <param name="Lines">The quantities.</param>
/// <param name="BarPlans">The bars of each section.</param>
public sealed record Takeoff(IReadOnlyList<QuantityLine> Lines, IReadOnlyList<SectionPlan> BarPlans)
{
    /// <summary>Takes off everything.</summary>
    /// <param name="ground">The brief, and what is settled of it.</param>
    /// <param name="choice">What was chosen.</param>
    /// <param name="works">The works designed for it.</param>
    /// <param name="plans">The bars that its steel is cut from.</param>
    /// <returns>The takeoff.</returns>
    public static Takeoff Of(
        (Brief Brief, Survey Survey) ground,
        Choice choice,
        Works works,
        IReadOnlyList<SectionPlan> plans
    )
    {
        var (brief, survey) = ground;
        List<QuantityLine> lines =
        [
            .. Measured(brief, choice, works, plans),
            PipeTakeoff.Chlorine(Disinfection.Of(choice, works, survey)),
        ];
        return new([.. Transport(brief, choice, works, lines), .. lines], plans);
    }

    private static IEnumerable<QuantityLine> Measured(
        Brief brief,
        Choice choice,
        Works works,
        IReadOnlyList<SectionPlan> plans
    ) =>
        [
            .. works.Source.Lines(choice),
            .. PipeTakeoff.Main(choice, works),
            .. WaterTakeoff.Tank(brief, choice),
            .. ArrayTakeoff.Electric(choice, works.Electrics),
            .. RackTakeoff.Steel(works.Rack, plans),
            .. RackTakeoff.Concrete(works.Footings),
            .. StandTakeoff.Of(works.Stand),
            .. GuardTakeoff.Of(choice, works),
            .. FenceTakeoff.Of(works.Guard, works.Footings),
            .. PipeTakeoff.Taps(works),
            Labour.Days("commission", 1, "once"),
        ];

    private static IEnumerable<QuantityLine> Transport(
        Brief brief,
        Choice choice,
        Works works,
        IReadOnlyList<QuantityLine> lines
    )
    {
        if (brief.Money.TransportKm > 0)
        {
            var load = LoadingList.Of(brief.Rack.Crew, choice, works, lines);
            var trips = load.TripCount + 1;
            yield return new(
                "transport-km",
                BillSection.General,
                "truck and crew, there and back",
                "nr",
                Math.Ceiling(trips * 2 * brief.Money.TransportKm),
                Invariant(
                    $"{trips} trips ({load.TripCount} of the loading list, {load.PayloadKg / 1000:0.##} t each, and one for the rest; sand and stone come by the quarry's lorries, in their rates) x 2 x {brief.Money.TransportKm:0.#} km"
                )
            );
        }
    }
}

/// <summary>The works designed for a choice.</summary>
/// <param name="Electrics">Strings and cables.</param>
/// <param name="Rack">Racks.</param>
/// <param name="Footings">Footings.</param>
/// <param name="Guard">Light, earth, fence.</param>
/// <param name="Main">The pumped main as built.</param>
/// <param name="Taps">Taps by gravity.</param>
/// <param name="TapStands">Their stands; null without any.</param>
/// <param name="Source">What is built at the source.</param>
public sealed record Works(
    Electrics Electrics,
    Rack Rack,
    Footings Footings,
    Guard Guard,
    MainWorks Main,
    TapNetwork Taps,
    TapStands? TapStands,
    SourceBuild Source
)
{
    /// <summary>What the whole costs with each main.</summary>
    public required EconomicMain EconomicMain { get; init; }

    /// <summary>The rack that is built, how it was checked, and what else was looked at.</summary>
    public required RackChoice RackChoice { get; init; }

    /// <summary>The stands under the tanks; null where none of steel is built here.</summary>
    public required StandDesign? Stand { get; init; }

    /// <summary>All steel that is sawn from bars: what the shop welds and paints, and galvanised tubes of poles and fence.</summary>
    public IReadOnlyList<SteelLot> SawnLots =>
        [
            .. SteelLots,
            .. Guard.PoleStrengths.Select(pole => new SteelLot(
                $"{pole.Name}s",
                pole.Column.Steel,
                Guard.CountOf(pole)
            )),
            .. Guard.Fence is { } fence ? [new SteelLot("fence", fence.Steel, 1)] : Array.Empty<SteelLot>(),
        ];

    /// <summary>Steel that the shop welds and paints.</summary>
    public IReadOnlyList<SteelLot> SteelLots =>
        [
            SteelLot.Of(Rack),
            .. Stand is { } stand ? [new SteelLot("stands", stand.Stand.Steel, stand.Count)] : Array.Empty<SteelLot>(),
        ];

    /// <summary>The pits of the racks, from two pegs.</summary>
    public PitPlan Pits => PitPlan.Of(Rack, Footings);

    /// <summary>Ground over the crown of buried pipes [m].</summary>
    public required double CoverM { get; init; }

    /// <summary>Soil of the site; null when nobody looked.</summary>
    public required SoilKind? Soil { get; init; }

    /// <summary>Block of the tallest light column; null when none stands.</summary>
    public PoleBlock? PoleBlock { get; init; }

    /// <summary>Block of a lightning mast; null when none stands.</summary>
    public PoleBlock? MastBlock { get; init; }

    /// <summary>Blocks of light columns and masts, as far as they stand.</summary>
    public IEnumerable<PoleBlock> PoleBlocks => new[] { PoleBlock, MastBlock }.OfType<PoleBlock>();

    /// <summary>How many blocks of a kind are cast.</summary>
    /// <param name="block">Of light columns or of masts.</param>
    public int CountOf(PoleBlock block) => Guard.Poles.Count(pole => pole.HasRod == block.IsMast);

    /// <summary>The racks before their concrete holds them; null where no wind table goes.</summary>
    public Erection? Erection { get; init; }

    /// <summary>The stands before they hold water; null where none is built here.</summary>
    public StandErection? StandErection { get; init; }

    /// <summary>What was chosen for main and taps, and why.</summary>
    public IEnumerable<ChoiceNote> PipeNotes =>
        [.. Taps.Notes, new("stop when the tank is full", Main.TankFull.Name, Main.TankFull.Why)];

    /// <summary>Trenches of the pipes to the taps.</summary>
    public Trenches TapTrench =>
        Trenches.Of(Taps.Heads.Select(head => (head.Pipe, head.Point.LengthM)), CoverM, PipeGround.Of(Soil));
}

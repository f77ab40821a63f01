namespace Shaduf.Pack;

/// <summary>The file <c>design.json</c>. Names carry units and, once given, stay.</summary>
/// <param name="Stamp">Status, revision, hash, version, date.</param>
/// <param name="Station">Name and place.</param>
/// <param name="Choice">What was chosen.</param>
/// <param name="Water">The promise.</param>
/// <param name="Sky">The light on the modules.</param>
/// <param name="Source">Where the water comes from.</param>
/// <param name="Lift">Pipes and head.</param>
/// <param name="Pipework">Main and taps as laid.</param>
/// <param name="Electrics">Strings and cables.</param>
/// <param name="Rack">Racks.</param>
/// <param name="Ground">Footings.</param>
/// <param name="Guard">Light, lightning and earth.</param>
/// <param name="Money">The offer.</param>
/// <param name="Quantities">The bill.</param>
/// <param name="Pumps">What became of each pump card.</param>
/// <param name="Findings">All findings, worst first.</param>
/// <param name="Assumptions">What was assumed.</param>
/// <param name="Choices">What was chosen and why.</param>
/// <param name="Weather">The weather that it is sized on.</param>
/// <param name="Front">The least cost for each share of the demand, cheapest first.</param>
/// <param name="LifeCycle">Solar against diesel.</param>
/// <param name="Sensitivity">The design year first, then harder ones.</param>
/// <param name="Ledger">Energy from light on the ground to water in the tank, step by step.</param>
/// <param name="Facing">The chosen tilt and direction beside others.</param>
/// <param name="Well">The borehole as built; null for open water.</param>
/// <param name="Intake">Open water with its pump as built; null for a borehole.</param>
/// <param name="Stand">The stands under the tanks; null where none of steel is built.</param>
/// <param name="Erection">Racks and stands before their concrete holds them.</param>
public sealed record DesignFile(
    StampEntry Stamp,
    StationEntry Station,
    ChoiceEntry Choice,
    WaterEntry Water,
    SkyEntry Sky,
    SourceEntry Source,
    LiftEntry Lift,
    PipeworkEntry Pipework,
    ElectricsEntry Electrics,
    RackEntry Rack,
    GroundEntry Ground,
    GuardEntry Guard,
    MoneyEntry Money,
    IReadOnlyList<QuantityEntry> Quantities,
    IReadOnlyList<PumpEntry> Pumps,
    IReadOnlyList<FindingEntry> Findings,
    IReadOnlyList<AssumptionEntry> Assumptions,
    IReadOnlyList<ReasonEntry> Choices,
    WeatherEntry Weather,
    IReadOnlyList<FrontEntry> Front,
    LifeCycleEntry LifeCycle,
    IReadOnlyList<SensitivityEntry> Sensitivity,
    IReadOnlyList<LedgerEntry> Ledger,
    FacingsEntry Facing,
    WellEntry? Well,
    IntakeEntry? Intake,
    StandEntry? Stand,
    ErectionEntry Erection
)
{
    /// <summary>When what is done.</summary>
    public required ProgrammeEntry Programme { get; init; }

    /// <summary>The rest of the programme from the day of the report; null before work begins.</summary>
    public required ProgrammeEntry? Forecast { get; init; }

    /// <summary>What was measured, held against the promise; null before the station is measured.</summary>
    public required ProofEntry? Proof { get; init; }

    /// <summary>What is bought from whom, in the sizes that are sold.</summary>
    public required IReadOnlyList<PurchaseEntry> Purchases { get; init; }

    /// <summary>The pits from two pegs.</summary>
    public required SettingOutEntry SettingOut { get; init; }

    /// <summary>What goes on the truck.</summary>
    public required LoadingEntry Loading { get; init; }
}

/// <summary>Status, revision, hash, version, date.</summary>
public sealed record StampEntry(string Status, string Revision, string BriefHash, string ProgramVersion, string Dated);

/// <summary>Name and place.</summary>
public sealed record StationEntry(
    string Name,
    string Place,
    double LatitudeDeg,
    double LongitudeDeg,
    double ElevationM
);

/// <summary>What was chosen; riser and pump setting of a borehole, and the pipe that joins any source to the main.</summary>
public sealed record ChoiceEntry(
    string Pump,
    string Drive,
    string Module,
    int ModuleCount,
    int SeriesCount,
    int StringCount,
    double ArrayW,
    double TiltDeg,
    double AzimuthDeg,
    string Tank,
    int TankCount,
    double TankM3,
    string Main,
    string? Riser,
    double? PumpSettingM,
    string SourcePipe
);

/// <summary>One month of the promise.</summary>
public sealed record MonthEntry(
    string Month,
    double DemandM3PerDay,
    double SupplyM3PerDay,
    double PumpableM3PerDay,
    double MetShare,
    double SunKWhPerM2Day
);

/// <summary>The promise.</summary>
public sealed record WaterEntry(
    string WorstMonth,
    double WorstMetShare,
    double TargetShare,
    int LongestShortageH,
    IReadOnlyList<MonthEntry> Months
);

/// <summary>Pipes and head at the largest flow.</summary>
public sealed record LiftEntry(
    double FlowM3PerH,
    double HeadM,
    double StaticHeadM,
    double? RiserM,
    double MainM,
    double SourcePipeM
);

/// <summary>A cable.</summary>
public sealed record CableEntry(
    string Name,
    string? Card,
    double LengthM,
    double CurrentA,
    double? DropShare,
    double BoughtM
);

/// <summary>A string: its modules as rack.row.column, counted from 1, from minus to plus.</summary>
public sealed record StringEntry(int Number, double HomeM, IReadOnlyList<string> Modules);

/// <summary>What protects the electrics; a name is null where nothing is needed or no card serves.</summary>
public sealed record ProtectionEntry(
    double IsolatorV,
    double IsolatorA,
    string? Isolator,
    string? Fuse,
    int ArresterType,
    string? DirectArrester,
    string? MotorArrester,
    string FilterKind,
    string? Filter,
    double EarthMm2,
    string? Earth,
    double LowestHz
);

/// <summary>Strings, cables and protection.</summary>
public sealed record ElectricsEntry(
    double ColdV,
    double HotV,
    double AgedV,
    double HotCellDegC,
    bool NeedsFuses,
    IReadOnlyList<CableEntry> Cables,
    IReadOnlyList<StringEntry> Strings,
    ProtectionEntry Protection
);

/// <summary>Parts that are alike, of all racks.</summary>
public sealed record PartEntry(
    string Mark,
    string Role,
    string Section,
    double LengthMm,
    double ShortPointMm,
    double StartCutDeg,
    double EndCutDeg,
    IReadOnlyList<double> PiecesMm,
    int Count,
    double MassKg
);

/// <summary>The bars of a section.</summary>
public sealed record BarsEntry(string Section, double BarMm, int Count, int LeastCount)
{
    /// <summary>Whether no plan of square cuts is cheaper.</summary>
    public required bool Proved { get; init; }

    /// <summary>What is cut from each bar; bars that are cut alike once.</summary>
    public required IReadOnlyList<CutBarEntry> Cuts { get; init; }
}

/// <summary>Bars that are cut alike.</summary>
public sealed record CutBarEntry(
    double BarMm,
    bool Offcut,
    int Count,
    double LeftOverMm,
    IReadOnlyList<CutPieceEntry> Pieces
);

/// <summary>A piece as it lies in its bar.</summary>
public sealed record CutPieceEntry(string Mark, double FromMm, double LengthMm, double StartDeg, double EndDeg);

/// <summary>Racks; masses and counts are of all racks, sizes of one.</summary>
public sealed record RackEntry(
    int RackCount,
    int Rows,
    int Columns,
    double LengthMm,
    double DepthMm,
    double LowEdgeMm,
    double TopEdgeMm,
    double MassKg,
    IReadOnlyList<PartEntry> Parts,
    IReadOnlyList<BarsEntry> Bars
)
{
    /// <summary>How it holds the modules: slide-in or clamped-rails.</summary>
    public required string Type { get; init; }

    /// <summary>Lines of columns.</summary>
    public required int Lines { get; init; }

    /// <summary>Long side of the modules: up the slope (portrait) or along the row (landscape).</summary>
    public required string Orientation { get; init; }
}

/// <summary>Footings.</summary>
public sealed record GroundEntry(
    int BlockCount,
    double SideMm,
    double DepthMm,
    string Mix,
    double ConcreteM3,
    double ExcavationM3
)
{
    /// <summary>Shape of the footings: block, beam (across the row) or strip (along it).</summary>
    public required string Form { get; init; }

    /// <summary>Size of one footing across the row [mm]; sideMm is that along the row.</summary>
    public required double AcrossMm { get; init; }
}

/// <summary>What became of a pump card.</summary>
public sealed record PumpEntry(string Pump, string Outcome, double? Cost, double? WorstMetShare);

/// <summary>A finding.</summary>
public sealed record FindingEntry(
    string Id,
    string Status,
    string Says,
    double? Value,
    double? Limit,
    string Unit,
    string Source,
    IReadOnlyList<string> LeansOn
);

/// <summary>An assumption.</summary>
public sealed record AssumptionEntry(
    string Id,
    string Field,
    string Taken,
    string HowToFind,
    string Source,
    string BestStatus
);

/// <summary>A choice and why.</summary>
public sealed record ReasonEntry(string What, string Chosen, string Why);

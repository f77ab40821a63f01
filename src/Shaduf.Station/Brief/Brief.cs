namespace Shaduf.Station;

/// <summary>
/// What the client asks and the survey found, as written in <c>station.yaml</c>. A null means that the user wrote
/// 'unknown' or 'choose', or left the field out.
/// </summary>
/// <param name="Head">Who and where.</param>
/// <param name="Site">Place, climate, ground.</param>
/// <param name="Uses">Who drinks, and how much.</param>
/// <param name="Source">The borehole or well.</param>
/// <param name="Lift">The way of the pipe up to the tank.</param>
/// <param name="Tank">The tank.</param>
/// <param name="Taps">Taps by gravity; null when there are none.</param>
/// <param name="Array">Modules and cables.</param>
/// <param name="Rack">The steel under the modules.</param>
/// <param name="Guard">Light, lightning, fence.</param>
/// <param name="Money">Terms of the offer.</param>
public sealed record Brief(
    BriefHead Head,
    SiteBrief Site,
    UsesBrief Uses,
    SourceBrief Source,
    LiftBrief Lift,
    TankBrief Tank,
    TapsBrief? Taps,
    ArrayBrief Array,
    RackBrief Rack,
    GuardBrief Guard,
    MoneyBrief Money
);

/// <summary>Who and where.</summary>
/// <param name="Name">The station's name.</param>
/// <param name="Place">Where it is.</param>
/// <param name="Client">Who asks for it.</param>
/// <param name="Builder">Who builds it.</param>
/// <param name="Revision">Revision of the brief.</param>
/// <param name="Issued">Date printed on the documents; null when none is given.</param>
public sealed record BriefHead(
    string Name,
    string Place,
    string Client,
    string Builder,
    string Revision,
    DateOnly? Issued
);

/// <summary>People, pupils or patients.</summary>
/// <param name="Count">How many today.</param>
/// <param name="EachLPerDay">Water for each [L/d].</param>
/// <param name="Pattern">Draw pattern by name.</param>
public sealed record HeadsBrief(int Count, double? EachLPerDay, string Pattern);

/// <summary>A clinic.</summary>
/// <param name="Outpatients">Out-patients a day.</param>
/// <param name="OutpatientLPerDay">Water for each [L/d].</param>
/// <param name="Beds">Beds.</param>
/// <param name="BedLPerDay">Water for each [L/d].</param>
public sealed record ClinicBrief(int Outpatients, double? OutpatientLPerDay, int Beds, double? BedLPerDay);

/// <summary>A herd.</summary>
/// <param name="Animal">Kind of animal.</param>
/// <param name="Count">How many.</param>
/// <param name="EachLPerDay">Water for each [L/d].</param>
public sealed record HerdBrief(string Animal, int Count, double? EachLPerDay);

/// <summary>A watered plot.</summary>
/// <param name="Crop">What grows there.</param>
/// <param name="AreaM2">Area [m²].</param>
/// <param name="NeedMmPerDay">Water that the crop needs from irrigation, January first [mm/d].</param>
/// <param name="EfficiencyShare">Share of the water that reaches the roots.</param>
/// <param name="Pattern">Draw pattern by name.</param>
public sealed record PlotBrief(
    string Crop,
    double AreaM2,
    IReadOnlyList<double> NeedMmPerDay,
    double? EfficiencyShare,
    string Pattern
);

/// <summary>A use that is the same every day.</summary>
/// <param name="Name">What it is.</param>
/// <param name="LPerDay">Water [L/d].</param>
/// <param name="Pattern">Draw pattern by name.</param>
public sealed record FixedUseBrief(string Name, double LPerDay, string Pattern);

/// <summary>Over what the share of the demand that is met is measured.</summary>
public enum TargetSpan
{
    /// <summary>The month that is met worst.</summary>
    WorstMonth,

    /// <summary>The whole year.</summary>
    Year,
}

/// <summary>Who drinks, and how much.</summary>
public sealed record UsesBrief(
    double? DesignYears,
    double? GrowthPerYearShare,
    double? LossShare,
    double? TargetShare,
    HeadsBrief? People,
    HeadsBrief? School,
    ClinicBrief? Clinic,
    IReadOnlyList<HerdBrief> Livestock,
    IReadOnlyList<PlotBrief> Plots,
    IReadOnlyList<FixedUseBrief> Fixed
)
{
    /// <summary>Over what the target is measured.</summary>
    public TargetSpan TargetSpan { get; init; }
}

/// <summary>One step of a step test.</summary>
/// <param name="FlowM3PerH">Flow [m³/h].</param>
/// <param name="DrawdownM">Drawdown below the rest level [m].</param>
public sealed record StepBrief(double FlowM3PerH, double DrawdownM);

/// <summary>The borehole or well. Depths are below ground at the wellhead.</summary>
public sealed record SourceBrief(
    double? DepthM,
    double? CasingMm,
    double? RestLevelM,
    double? SeasonalFallM,
    double? TestedYieldM3PerH,
    double? DrillersFigureM3PerH,
    double? YieldShare,
    IReadOnlyList<StepBrief> Steps,
    double? PumpSettingM,
    double? WaterDegC
);

/// <summary>A point of the pipe's way.</summary>
/// <param name="ChainageM">Distance along the way from the wellhead [m].</param>
/// <param name="ElevationM">Ground level [m].</param>
public sealed record RoutePoint(double ChainageM, double ElevationM);

/// <summary>Fittings of one kind.</summary>
/// <param name="Kind">Name in the table of fittings.</param>
/// <param name="Count">How many.</param>
public sealed record FittingBrief(string Kind, int Count);

/// <summary>The way of the pipe up to the tank.</summary>
public sealed record LiftBrief(
    IReadOnlyList<RoutePoint> Route,
    double InletM,
    string? Main,
    string? Riser,
    IReadOnlyList<FittingBrief> Fittings
);

/// <summary>Levels between which the outlet of a tank stays shut.</summary>
/// <param name="CloseShare">The outlet closes at this share of the useful volume.</param>
/// <param name="ReopenShare">It opens again at this share.</param>
public sealed record LowStopBrief(double CloseShare, double ReopenShare);

/// <summary>The tank.</summary>
/// <param name="Card">Card by name; null to choose.</param>
/// <param name="Count">How many alike; null to choose.</param>
/// <param name="IsExisting">Whether it stands already and is not bought.</param>
/// <param name="GivenStandM">Height of its floor above ground [m]; null when unknown.</param>
/// <param name="ReserveDays">Water for people, animals and fixed uses that the tank must hold at least [days].</param>
public sealed record TankBrief(string? Card, int? Count, bool IsExisting, double? GivenStandM, double? ReserveDays)
{
    /// <summary>Share of the useful volume at which a pump stopped by a full tank starts again.</summary>
    public double? RestartShare { get; init; }

    /// <summary>Levels at which the outlet closes and opens; null when it stays open.</summary>
    public LowStopBrief? LowStop { get; init; }

    /// <summary>Height of its floor above ground [m]; on the ground when unknown.</summary>
    public double StandM => GivenStandM ?? Assumption.DefaultOf("stand");
}

/// <summary>One tap.</summary>
/// <param name="Name">Its name.</param>
/// <param name="ElevationM">Level of its mouth [m].</param>
/// <param name="BranchM">Length of its own branch [m].</param>
/// <param name="Pipe">Card of the branch's pipe.</param>
/// <param name="FlowM3PerH">Flow when open [m³/h].</param>
public sealed record TapBrief(string Name, double ElevationM, double BranchM, string Pipe, double FlowM3PerH);

/// <summary>Taps by gravity: one main from the tank to a junction, then a branch to each tap.</summary>
/// <param name="MainM">Length of the main [m].</param>
/// <param name="MainPipe">Card of the main's pipe.</param>
/// <param name="Taps">The taps.</param>
public sealed record TapsBrief(double MainM, string MainPipe, IReadOnlyList<TapBrief> Taps);

/// <summary>Modules and cables.</summary>
public sealed record ArrayBrief(
    string? Module,
    double? TiltDeg,
    double? AzimuthDeg,
    double? AlbedoShare,
    double? StringCableM,
    double? MotorCableM,
    LossesBrief Losses
);

/// <summary>The steel under the modules.</summary>
public sealed record RackBrief(
    int? Rows,
    int? Columns,
    double? LowEdgeM,
    double? DepthClearanceMm,
    double? RowClearanceMm,
    string? Angle,
    string? Tube,
    string? Column,
    double? FootingSideMm,
    double? FootingDepthMm,
    string? Mix
);

/// <summary>Terms of the offer.</summary>
public sealed record MoneyBrief(
    double? ContingencyShare,
    double? OverheadShare,
    double? MarkupShare,
    double? TaxShare,
    double? Budget,
    double? GivenTransportKm
)
{
    /// <summary>What the cost over the years is reckoned with.</summary>
    public required LifeBrief Life { get; init; }

    /// <summary>Road from the yard to the site, one way [km]; not priced when unknown.</summary>
    public double TransportKm => GivenTransportKm ?? Assumption.DefaultOf("transport");
}

namespace Shaduf.Station;

/// <summary>
/// What the client asks and the survey found, as written in <c>station.yaml</c>. A null means that the user wrote
/// 'unknown' or 'choose', or left the field out.
/// </summary>
/// <param name="Head">Who and where.</param>
/// <param name="Site">Place, climate, ground.</param>
/// <param name="Uses">Who drinks, and how much.</param>
/// <param name="Source">The borehole or well, or open water.</param>
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
)
{
    /// <summary>What was measured on the finished station; null before.</summary>
    public MeasuredBrief? Measured { get; init; }

    /// <summary>What of the programme has happened; null before work begins.</summary>
    public ProgressBrief? Progress { get; init; }
}

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

/// <summary>A point of the pipe's way.</summary>
/// <param name="ChainageM">Distance along the way from the wellhead [m].</param>
/// <param name="ElevationM">Ground level [m].</param>
/// <param name="BendDeg">Change of direction on the map [°]; null for none.</param>
public sealed record RoutePoint(double ChainageM, double ElevationM, double? BendDeg = null)
{
    /// <summary>Where it lies on the site; null when not told.</summary>
    public SitePlace? Place { get; init; }
}

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
)
{
    /// <summary>Card of the pump; null to choose.</summary>
    public string? Pump { get; init; }

    /// <summary>Card of the drive; null to choose.</summary>
    public string? Drive { get; init; }

    /// <summary>How the pump stops when the tank is full; null to choose.</summary>
    public TankFullStop? TankFull { get; init; }

    /// <summary>Ground over the crown of the pipe [m]; null when unknown.</summary>
    public double? CoverM { get; init; }

    /// <summary>Whether the old rule of Hazen and Williams is reported beside the loss.</summary>
    public bool ShowsHazenWilliams { get; init; }
}

/// <summary>Levels between which the outlet of a tank stays shut.</summary>
/// <param name="CloseShare">The outlet closes at this share of the useful volume.</param>
/// <param name="ReopenShare">It opens again at this share.</param>
public sealed record LowStopBrief(double CloseShare, double ReopenShare);

/// <summary>The tank.</summary>
/// <param name="Card">Card by name; null to choose.</param>
/// <param name="Count">How many alike; null to choose.</param>
/// <param name="IsExisting">Whether it stands already and is not bought.</param>
/// <param name="GivenStandM">Height of its floor above ground [m]; null to choose.</param>
/// <param name="ReserveDays">Water for people, animals and fixed uses that the tank must hold at least [days].</param>
public sealed record TankBrief(string? Card, int? Count, bool IsExisting, double? GivenStandM, double? ReserveDays)
{
    /// <summary>Share of the useful volume at which a pump stopped by a full tank starts again.</summary>
    public double? RestartShare { get; init; }

    /// <summary>Levels at which the outlet closes and opens; null when it stays open.</summary>
    public LowStopBrief? LowStop { get; init; }

    /// <summary>What it stands on, and of what that is made.</summary>
    public StandBrief Stand { get; init; } = StandBrief.Open;

    /// <summary>Height of its floor above ground [m]; on the ground until it is chosen.</summary>
    public double StandM => GivenStandM ?? Assumption.DefaultOf("stand");
}

/// <summary>Modules and cables.</summary>
public sealed record ArrayBrief(
    string? Module,
    double? TiltDeg,
    double? AzimuthDeg,
    double? AlbedoShare,
    double? StringCableM,
    double? MotorCableM,
    LossesBrief Losses
)
{
    /// <summary>Modules in a string; null to choose.</summary>
    public int? SeriesCount { get; init; }

    /// <summary>Strings side by side; null to choose.</summary>
    public int? StringCount { get; init; }
}

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
    /// <summary>Money set aside for work that is not yet defined.</summary>
    public IReadOnlyList<ProvisionalSum> Provisional { get; init; } = [];

    /// <summary>What the cost over the years is reckoned with.</summary>
    public required LifeBrief Life { get; init; }

    /// <summary>How the price is paid, and how long it stands.</summary>
    public required PaymentBrief Payment { get; init; }

    /// <summary>Road from the yard to the site, one way [km]; not priced when unknown.</summary>
    public double TransportKm => GivenTransportKm ?? Assumption.DefaultOf("transport");
}

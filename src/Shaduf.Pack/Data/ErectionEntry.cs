using Shaduf.Station;
using static Shaduf.Pack.DesignEntries;

namespace Shaduf.Pack;

/// <summary>Racks and stands before their concrete holds them.</summary>
/// <param name="Rack">One rack on ropes over its open pits; null where the method ends.</param>
/// <param name="Stand">One stand; null where none is built.</param>
/// <param name="ModulesStopMPerS">Mean wind at which work with modules stops.</param>
/// <param name="LiftingStopMPerS">Mean wind at which lifting stops.</param>
/// <param name="LaddersStopMPerS">Mean wind at which nobody is on a ladder or a stand.</param>
public sealed record ErectionEntry(
    RaisedEntry? Rack,
    RaisedEntry? Stand,
    double ModulesStopMPerS,
    double LiftingStopMPerS,
    double LaddersStopMPerS
)
{
    /// <summary>The entry of a design.</summary>
    internal static ErectionEntry Of(Design design)
    {
        var stops = Erection.StopsMPerS;
        return new(
            design.Works.Erection is { } rack ? Of(rack) with { Props = Of(rack.Props) } : null,
            design.Works.StandErection is { } stand ? Of(stand) : null,
            stops.Modules,
            stops.Lifting,
            stops.Ladders
        );
    }

    private static RaisedEntry Of(Erection works) =>
        new(
            R(works.StageMPerS),
            R(works.WindKN),
            works.RopesASide,
            R(works.RopeKN),
            R(works.TiedM),
            R(works.FrameKg),
            R(works.CentreMm.ZMm),
            R(works.SlingKN),
            works.Heaviest.Mark,
            R(works.Heaviest.MassKg),
            StepsOf(works.Steps, works.AirDegC),
            works.Work
        );

    private static PropsEntry Of(Propping props) =>
        new(
            props.Count,
            props.ASide,
            Propping.TubeMm,
            Propping.TubeWallMm,
            R(props.Pairs.SelectMany(pair => pair.Both).Max(prop => prop.LengthMm)),
            R(props.LeanDeg),
            R(props.Works.PressKN),
            R(props.Works.LiftKN),
            R(props.MostAlongKN),
            R(Propping.ResistanceKN(props.Worst.Prop)),
            R(props.UseShare),
            R(props.TubeUseShare),
            props.BoardMm,
            R(props.PressureKPa),
            R(props.SurfaceKPa),
            props.StakesASide
        );

    private static RaisedEntry Of(StandErection works) =>
        new(
            R(works.StageMPerS),
            R(works.WindKN),
            works.RopesASide,
            R(works.RopeKN),
            R(works.TiedM),
            R(works.RowKg),
            R(works.RowCentreMm),
            R(works.SlingKN),
            works.Heaviest.Mark,
            R(works.Heaviest.MassKg),
            StepsOf(works.Steps, works.AirDegC),
            works.Work
        );

    private static IReadOnlyList<CureEntry> StepsOf(IReadOnlyList<CureStep> steps, IReadOnlyList<double> airDegC) =>
        [.. steps.Select(step => new CureEntry(step.Name, step.StrengthShare, [.. airDegC.Select(step.DaysAt)]))];
}

/// <summary>What is raised, and what holds it until its concrete or its braces do.</summary>
/// <param name="StageWindMPerS">Basic wind speed of the stage.</param>
/// <param name="WindKN">Its force, without partial factors.</param>
/// <param name="RopesASide">Ropes to each side.</param>
/// <param name="RopeKN">Pull of one rope, with its factor.</param>
/// <param name="TiedM">Height at which they are tied.</param>
/// <param name="LiftedKg">A rack's frame without modules, or a stand's row of legs.</param>
/// <param name="CentreHeightMm">Height of its centre of gravity over the ground of a rack, over the feet of a row.</param>
/// <param name="SlingKN">Pull in a leg of its sling.</param>
/// <param name="HeaviestMark">Heaviest single piece.</param>
/// <param name="HeaviestKg">Its mass.</param>
/// <param name="Waits">What waits for the concrete.</param>
/// <param name="Steps">The work, step by step.</param>
public sealed record RaisedEntry(
    double StageWindMPerS,
    double WindKN,
    int RopesASide,
    double RopeKN,
    double TiedM,
    double LiftedKg,
    double CentreHeightMm,
    double SlingKN,
    string HeaviestMark,
    double HeaviestKg,
    IReadOnlyList<CureEntry> Waits,
    IReadOnlyList<string> Steps
)
{
    /// <summary>What carries a rack's frame over its open pits; null for a stand.</summary>
    public PropsEntry? Props { get; init; }
}

/// <summary>The props under a rack's frame.</summary>
/// <param name="Count">How many.</param>
/// <param name="ASide">At each end of each cross tube or rafter.</param>
/// <param name="DiameterMm">Diameter of the tube.</param>
/// <param name="WallMm">Its wall.</param>
/// <param name="LongestMm">Length of the longest.</param>
/// <param name="LeanDeg">Greatest lean from upright.</param>
/// <param name="WindPressKN">Force of the stage's wind on the bare frame from above or from below, without partial factors.</param>
/// <param name="LiftKN">What that wind lifts beyond the weight, with partial factors; the ropes hold it.</param>
/// <param name="AlongKN">Force along the prop that bears most, with partial factors.</param>
/// <param name="ResistanceKN">What one bears against buckling.</param>
/// <param name="UseShare">Use of that prop.</param>
/// <param name="TubeUseShare">Use of the cross tube or rafter on them.</param>
/// <param name="BoardMm">Side of the board under each.</param>
/// <param name="PressureKPa">Pressure under it, without partial factors.</param>
/// <param name="AllowedKPa">Pressure that may be put on the ground's surface.</param>
/// <param name="StakesASide">Stakes behind the feet of each end.</param>
public sealed record PropsEntry(
    int Count,
    int ASide,
    double DiameterMm,
    double WallMm,
    double LongestMm,
    double LeanDeg,
    double WindPressKN,
    double LiftKN,
    double AlongKN,
    double ResistanceKN,
    double UseShare,
    double TubeUseShare,
    double BoardMm,
    double PressureKPa,
    double AllowedKPa,
    int StakesASide
);

/// <summary>A step that waits for the concrete.</summary>
/// <param name="Step">The step.</param>
/// <param name="StrengthShare">Share of the strength at 28 days.</param>
/// <param name="Days">Days from casting by the month, January first; null when it is too cold to cast.</param>
public sealed record CureEntry(string Step, double StrengthShare, IReadOnlyList<double?> Days);

using Shaduf.Station;
using static Shaduf.Pack.DesignEntries;

namespace Shaduf.Pack;

/// <summary>The source; depths below the ground where the main begins, below 0 when above it.</summary>
/// <param name="DepthM">Its bottom.</param>
/// <param name="RestDryM">Water at rest at the end of the dry season.</param>
/// <param name="YieldM3PerH">Largest flow that may be drawn.</param>
/// <param name="PumpingLevelM">Water at the largest flow of the year.</param>
public sealed record SourceEntry(double DepthM, double RestDryM, double YieldM3PerH, double PumpingLevelM)
{
    internal static SourceEntry Of(Design design) =>
        new(
            R(design.Source.BottomM),
            R(design.Source.RestDryM),
            R(design.Source.YieldM3PerH),
            R(design.Source.LevelM(design.ShownFlowM3PerH))
        );
}

/// <summary>A borehole as built; depths below ground at the wellhead.</summary>
/// <param name="SeasonFallM">What the season's own pumping takes; part of the water at rest.</param>
/// <param name="LowestLevelM">Depth below which the water may not fall while the pump runs.</param>
/// <param name="SubmergenceM">Water above the intake at the largest flow.</param>
/// <param name="StopProbeM">Probe that stops the pump.</param>
/// <param name="StartProbeM">Probe that lets it start again.</param>
/// <param name="HungEmptyKg">What is lowered, before water enters.</param>
/// <param name="HungFullKg">What comes up when the riser is full.</param>
/// <param name="RunningPullKN">Pull at the top of the riser while the pump runs.</param>
/// <param name="HoistT">Hoist to bring; null when none of the usual ones is enough.</param>
/// <param name="TripodLegM">Length of a leg of the tripod.</param>
/// <param name="RopeKN">Least breaking load of the safety rope.</param>
/// <param name="NeedsShroud">Whether the motor needs a cooling shroud.</param>
public sealed record WellEntry(
    double SeasonFallM,
    double LowestLevelM,
    double SubmergenceM,
    double StopProbeM,
    double StartProbeM,
    double HungEmptyKg,
    double HungFullKg,
    double RunningPullKN,
    double? HoistT,
    double TripodLegM,
    double RopeKN,
    bool NeedsShroud
)
{
    // Null where there is no borehole.
    internal static WellEntry? Of(Design design) =>
        design.Works.Source is WellBuild build
            ? new(
                R(build.Well.SeasonM),
                R(build.Well.LowestLevelM),
                R(build.Well.PumpSettingM - build.Well.LevelM(design.ShownFlowM3PerH)),
                R(build.Well.StopProbeM),
                R(build.Well.StartProbeM),
                R(build.Hung.EmptyKg),
                R(build.Hung.TotalKg),
                R(build.RunningKN),
                R(build.HoistT),
                R(build.Tripod.LegM),
                R(build.RopeKN),
                build.Cooling.NeedsShroud
            )
            : null;
}

/// <summary>Suction head in one month at the largest flow of the year.</summary>
/// <param name="Month">The month.</param>
/// <param name="WaterM">Lowest level of the water, above sea.</param>
/// <param name="WaterDegC">Hottest water.</param>
/// <param name="LiftM">Height of the pump over the water.</param>
/// <param name="LossM">Head lost in the suction pipe.</param>
/// <param name="AvailableM">Net positive suction head that the place offers.</param>
/// <param name="NeededM">What the pump needs, with its margin.</param>
/// <param name="MayTakeM3PerDay">Water that may be taken in a day; null where nothing limits it.</param>
public sealed record SuctionEntry(
    string Month,
    double WaterM,
    double WaterDegC,
    double LiftM,
    double LossM,
    double AvailableM,
    double NeededM,
    double? MayTakeM3PerDay
);

/// <summary>Open water with a surface pump, as built; levels above sea.</summary>
/// <param name="Water">river, pond, canal or open well.</param>
/// <param name="Stand">bank or raft.</param>
/// <param name="NormalM">Usual level.</param>
/// <param name="LowestM">Lowest level.</param>
/// <param name="FloodM">Highest flood.</param>
/// <param name="BedM">Bottom.</param>
/// <param name="PumpM">The pump's shaft; on a raft at the lowest water.</param>
/// <param name="StrainerM">The strainer.</param>
/// <param name="StopM">Level at which the float switch stops the pump.</param>
/// <param name="CoverM">Lowest water over the strainer.</param>
/// <param name="LeastCoverM">What must stand over it.</param>
/// <param name="Pipe">The suction pipe.</param>
/// <param name="SuctionM">Length from strainer to pump.</param>
/// <param name="HoseM">Length of the hose from a raft to the bank; 0 on the bank.</param>
/// <param name="Months">Suction head month by month.</param>
public sealed record IntakeEntry(
    string Water,
    string Stand,
    double NormalM,
    double LowestM,
    double FloodM,
    double BedM,
    double PumpM,
    double StrainerM,
    double StopM,
    double CoverM,
    double LeastCoverM,
    string Pipe,
    double SuctionM,
    double HoseM,
    IReadOnlyList<SuctionEntry> Months
)
{
    // Null where there is no open water.
    internal static IntakeEntry? Of(Design design)
    {
        if (design.Works.Source is not IntakeBuild build)
        {
            return null;
        }

        var (intake, survey) = (build.Intake, build.Intake.Survey);
        return new(
            survey.Brief.Name,
            survey.Stand == PumpStand.Bank ? "bank" : "raft",
            R(survey.Brief.NormalM),
            R(survey.LowestM),
            R(survey.FloodM),
            R(survey.BedM),
            R(survey.PumpM),
            R(intake.StrainerM),
            R(build.StopM),
            R(intake.CoverM),
            R(build.LeastCoverM),
            build.Pipe.Card.Name,
            R(build.Pipe.SuctionM),
            R(build.Pipe.HoseM),
            [.. build.Months(design.Choice.Pump).Select(month => MonthOf(intake, month))]
        );
    }

    private static SuctionEntry MonthOf(Intake intake, SuctionMonth month)
    {
        var dayM3 = intake.Limits.DayM3[month.Month];
        return new(
            YearCalendarNames.Months[month.Month],
            R(intake.Survey.LevelM(month.Month)),
            R(month.WaterDegC),
            R(month.LiftM),
            R(month.LossM),
            R(month.AvailableM),
            R(month.NeededM),
            double.IsFinite(dayM3) ? R(dayM3) : null
        );
    }
}

namespace Shaduf.Station;

/// <summary>What is settled of open water and of the pump's place beside it. Levels are above sea.</summary>
/// <param name="Brief">The water as the brief has it.</param>
/// <param name="GroundM">Ground where the main begins [m].</param>
/// <param name="LowestM">Lowest level of the dry season [m].</param>
/// <param name="FloodM">Highest flood [m].</param>
/// <param name="BedM">Bottom where the water is drawn [m].</param>
/// <param name="MayTakeM3PerH">Flow that may be taken [m³/h].</param>
/// <param name="HottestDegC">Hottest water of the year [°C].</param>
/// <param name="Stand">Where the pump stands.</param>
/// <param name="PumpM">Level of its shaft; on a raft at the lowest water [m].</param>
/// <param name="SuctionM">Length of the pipe from strainer to pump [m].</param>
/// <param name="HoseM">Length of the hose from a raft to the bank [m]; 0 on the bank.</param>
public sealed record IntakeSurvey(
    SurfaceBrief Brief,
    double GroundM,
    double LowestM,
    double FloodM,
    double BedM,
    double MayTakeM3PerH,
    double HottestDegC,
    PumpStand Stand,
    double PumpM,
    double SuctionM,
    double HoseM
) : SourceSurvey
{
    /// <summary>Room kept over the highest flood [m]; common practice, no source.</summary>
    public const double OverFloodM = 0.5;

    /// <summary>Height of a pump's shaft over the deck of a raft and the water [m]; judgement, no source.</summary>
    public const double OnRaftM = 0.3;

    // A plinth lifts the shaft so far over the ground; higher is a structure. Judgement, no source.
    private const double PlinthM = 0.3;
    private const double HighestPlinthM = 1.0;
    private const double RaftSuctionM = 2;

    /// <inheritdoc/>
    public override double HighestWaterM(double groundM) => FloodM;

    /// <summary>How much lower the water is taken than in a common dry season [m].</summary>
    public double DrierM { get; init; }

    /// <summary>Highest suction lift that is trusted at a height [m].</summary>
    /// <param name="elevationM">Height above sea level [m].</param>
    /// <returns>Lift [m].</returns>
    /// <source>6 to 7 m at the sea, about 1.1 m less for each 1000 m of height; common practice, no source</source>
    public static double HighestLiftM(double elevationM) => 6 - (1.1 * Math.Max(0, elevationM) / 1000);

    internal static IntakeSurvey Of(SurfaceBrief brief, double groundM, List<Assumption> taken)
    {
        double Taken(string id, double value, string unit) => Assumption.Take(taken, id, value, unit);
        double Default(string id) => Assumption.DefaultOf(id);

        var lowestM = brief.LowestM ?? Taken("lowest-water", brief.NormalM - Default("lowest-water"), "m");
        var floodM = brief.FloodM ?? Taken("flood", brief.NormalM + Default("flood"), "m");
        var bankM = brief.PumpM ?? Math.Max(groundM + PlinthM, Math.Min(floodM + OverFloodM, groundM + HighestPlinthM));
        var isBank = bankM >= floodM + OverFloodM && bankM - lowestM <= HighestLiftM(lowestM);
        var stand = brief.Stand ?? (isBank ? PumpStand.Bank : PumpStand.Raft);
        var pumpM = stand == PumpStand.Bank ? bankM : lowestM + OnRaftM;
        var usualM = stand == PumpStand.Bank ? Math.Max(4, (2 * (pumpM - lowestM)) + 2) : RaftSuctionM;
        return new(
            brief,
            groundM,
            lowestM,
            floodM,
            brief.BedM ?? Taken("bed", lowestM - Default("bed"), "m"),
            brief.MayTakeM3PerH ?? Taken("may-take", Default("may-take"), "m3/h"),
            brief.WaterDegC ?? Taken("hottest-water", Default("hottest-water"), "degC"),
            stand,
            pumpM,
            brief.Suction.LengthM ?? Taken("suction-length", usualM, "m"),
            stand == PumpStand.Bank ? 0 : brief.Suction.HoseM ?? Taken("raft-hose", Default("raft-hose"), "m")
        );
    }

    /// <summary>Lowest level in a month [m].</summary>
    /// <param name="month">Month, 0 to 11.</param>
    /// <returns>Level [m].</returns>
    public double LevelM(int month) => (Of(month)?.LevelM ?? LowestM) - DrierM;

    /// <summary>Hottest water in a month [°C].</summary>
    /// <param name="month">Month, 0 to 11.</param>
    /// <returns>Temperature [°C].</returns>
    public double WaterDegC(int month) => Of(month)?.WaterDegC ?? HottestDegC;

    /// <summary>Height of the pump over the water in a month [m].</summary>
    /// <param name="month">Month, 0 to 11.</param>
    /// <returns>Lift [m].</returns>
    public double LiftM(int month) => Stand == PumpStand.Raft ? OnRaftM : PumpM - LevelM(month);

    /// <summary>What may be taken, month by month.</summary>
    public SourceLimits Limits =>
        new(
            [.. Enumerable.Range(0, 12).Select(month => Of(month)?.MayTakeM3PerH ?? MayTakeM3PerH)],
            [
                .. Enumerable
                    .Range(0, 12)
                    .Select(month => Of(month)?.MayTakeM3PerDay ?? Brief.MayTakeM3PerDay ?? double.PositiveInfinity),
            ]
        );

    private SurfaceMonthBrief? Of(int month) => Brief.Months.Count > 0 ? Brief.Months[month] : null;
}

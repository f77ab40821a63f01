namespace Shaduf.Station;

/// <summary>A week of a log beside what was to be expected in the same hours.</summary>
/// <param name="From">Its first day.</param>
/// <param name="LoggedH">Time that the rows speak for [h].</param>
/// <param name="WaterM3">Water pumped [m³].</param>
/// <param name="ExpectedM3">Water that was to be expected [m³].</param>
/// <param name="EnergyKWh">Energy into the drive [kWh].</param>
/// <param name="ExpectedKWh">Energy that was to be expected [kWh].</param>
public sealed record LogWeek(
    DateOnly From,
    double LoggedH,
    double WaterM3,
    double ExpectedM3,
    double EnergyKWh,
    double ExpectedKWh
)
{
    /// <summary>Power over that of the design's array in the same light; null where it cannot be told.</summary>
    public double? ArrayRatio { get; init; }

    /// <summary>Flow over that of the design's pump at the same power and level; null where it cannot be told.</summary>
    public double? PumpRatio { get; init; }

    /// <summary>Depth to the water before pumping [m]; null where it cannot be told.</summary>
    public double? RestM { get; init; }

    /// <summary>Flow at night while the pump stands [m³/h]; null where it cannot be told.</summary>
    public double? NightFlowM3PerH { get; init; }

    /// <summary>What the tank lost in the quietest night [m³/h]; null where it cannot be told.</summary>
    public double? NightLossM3PerH { get; init; }

    /// <summary>Time in which the pump stood in light enough to run: tank full, water low, or a fault [h]; null where it cannot be told.</summary>
    public double? StoodH { get; init; }

    /// <summary>How much later than the sun the middle of the day is by the log's clock [min]; null where it cannot be told.</summary>
    public double? ClockOffMin { get; init; }

    /// <summary>Water over what was to be expected; null where nothing was.</summary>
    public double? WaterShare => ExpectedM3 > 0 ? WaterM3 / ExpectedM3 : null;
}

/// <summary>The sums of a week while its rows come in.</summary>
internal sealed class WeekSums
{
    // Less than this tells nothing of a ratio [h]; judgement.
    private const double LeastH = 3;

    private readonly List<double> offsMin = [];

    /// <summary>Sums of the week.</summary>
    public double LoggedH,
        WaterM3,
        ExpectedM3,
        EnergyWh,
        ExpectedWh;

    /// <summary>Array: hours, energy, energy expected.</summary>
    public (double H, double Wh, double ExpectedWh) Array;

    /// <summary>Pump: hours, water, water expected.</summary>
    public (double H, double M3, double ExpectedM3) Pump;

    /// <summary>Night: depth times hours, hours.</summary>
    public (double MH, double H) Rest;

    /// <summary>Night, pump standing: water, hours.</summary>
    public (double M3, double H) NightFlow;

    /// <summary>Hours in which the pump stood in light.</summary>
    public double StoodH;

    /// <summary>Loss of the quietest night; null before one is whole.</summary>
    public double? NightLossM3PerH;

    /// <summary>Adds a day's middle.</summary>
    public void AddClockOff(double min) => offsMin.Add(min);

    /// <summary>The week as it came out.</summary>
    public LogWeek Of(DateOnly from, bool hasLight)
    {
        offsMin.Sort();
        return new(from, LoggedH, WaterM3, ExpectedM3, EnergyWh / 1000, ExpectedWh / 1000)
        {
            ArrayRatio = Array.H >= LeastH && Array.ExpectedWh > 0 ? Array.Wh / Array.ExpectedWh : null,
            PumpRatio = Pump.H >= LeastH && Pump.ExpectedM3 > 0 ? Pump.M3 / Pump.ExpectedM3 : null,
            RestM = Rest.H >= LeastH ? Rest.MH / Rest.H : null,
            NightFlowM3PerH = NightFlow.H >= LeastH ? NightFlow.M3 / NightFlow.H : null,
            NightLossM3PerH = NightLossM3PerH,
            StoodH = hasLight ? StoodH : null,
            ClockOffMin = offsMin.Count >= 3 ? offsMin[offsMin.Count / 2] : null,
        };
    }
}

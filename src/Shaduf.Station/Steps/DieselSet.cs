using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>A generator set that does the station's work.</summary>
/// <param name="RatedKW">Rated electrical power [kW].</param>
/// <param name="MotorKW">What the pump's motor takes at its rated speed on these pipes [kW].</param>
/// <param name="FlowM3PerH">Flow at that speed [m³/h].</param>
/// <param name="HoursPerYear">Hours of running in a year [h/year].</param>
/// <param name="FuelLPerYear">Fuel in a year [L].</param>
public sealed record DieselSet(
    double RatedKW,
    double MotorKW,
    double FlowM3PerH,
    double HoursPerYear,
    double FuelLPerYear
)
{
    /// <summary>Load of the set [share].</summary>
    public double LoadShare => MotorKW / RatedKW;

    /// <summary>Rated power of the set over the motor's, so that it starts the motor: 2 to 3; common practice, no source.</summary>
    public const double StartFactor = 2.5;

    /// <summary>Running between two services, oil and filters [h]; common practice, no source.</summary>
    public const double ServiceH = 250;

    /// <summary>Running between two overhauls [h]: top overhaul at 3000 to 5000 h; from memory.</summary>
    public const double OverhaulH = 4000;

    /// <summary>Price of an overhaul as a share of the set's; judgement, no source.</summary>
    public const decimal OverhaulPart = 0.25m;

    /// <summary>Life of a set at 1500 rpm [h]: 8000 to 15000 h; from memory.</summary>
    public const double LifeH = 10_000;

    // Sizes in which small sets are sold; judgement, no source.
    private static readonly double[] SizesKW = [2, 3, 5, 7, 10, 15, 20, 30, 45, 60, 80, 100, 150, 200, 300, 500];

    /// <summary>The set that lifts a year's water.</summary>
    /// <param name="hydraulics">Pump and pipes.</param>
    /// <param name="yieldM3PerH">Largest flow that the source allows [m³/h].</param>
    /// <param name="waterM3">Water of the year [m³].</param>
    /// <returns>The set; null when the pump lifts no water even at rated speed, or no size is large enough.</returns>
    public static DieselSet? Of(Hydraulics hydraulics, double yieldM3PerH, double waterM3)
    {
        var table = hydraulics.Table(1, yieldM3PerH);
        if (table.FullFlowM3PerH <= 0)
        {
            return null;
        }

        var motorKW =
            MotorInput.ElectricalW(hydraulics.Pump.Motor, table.Points[^1].ShaftW)
            / hydraulics.Feed.CableKeptShare
            / 1000;
        var ratedKW = SizesKW.FirstOrDefault(size => size >= motorKW * StartFactor);
        var hours = waterM3 / table.FullFlowM3PerH;
        return ratedKW > 0
            ? new(ratedKW, motorKW, table.FullFlowM3PerH, hours, hours * GeneratorFuel.LPerH(motorKW, ratedKW))
            : null;
    }
}

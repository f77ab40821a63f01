using Shaduf.Sun;

namespace Shaduf.Station;

/// <summary>
/// Looks for the tilt and the direction in which the modules get the most light for the demand in the month that is
/// worst off. Every plane is run through all hours of the design year; none is left to a rule of thumb.
/// </summary>
/// <param name="lightOn">The light of the design year on a plane.</param>
/// <param name="demandM3PerDay">Demand of each month, January first.</param>
internal sealed class FacingSearch(Func<PlaneFacing, PlaneYear> lightOn, IReadOnlyList<double> demandM3PerDay)
{
    /// <summary>Flattest tilt: flatter glass is not washed by the rain.</summary>
    public const double LeastTiltDeg = 10;

    /// <summary>Steepest tilt that the rack is made for.</summary>
    public const double MostTiltDeg = 35;

    /// <summary>Gain in the worst month from which the modules are turned away from north or south; judgement, no source.</summary>
    public const double LeastTurnGainShare = 0.03;

    // A rack is set out to about this.
    private const double AzimuthStepDeg = 5;
    private const double NeighbourDeg = 5;

    private readonly Dictionary<PlaneFacing, double> tried = [];

    /// <summary>The plane with the most light in the worst month.</summary>
    /// <param name="tiltDeg">Tilt that the brief gives; null to search.</param>
    /// <param name="azimuthDeg">Direction that the brief gives; null to search.</param>
    /// <returns>Its tilt and direction.</returns>
    public PlaneFacing Best(double? tiltDeg, double? azimuthDeg)
    {
        var straight = (azimuthDeg is { } given ? [given] : new double[] { 0, 180 })
            .Select(azimuth => BestTilt(tiltDeg, azimuth))
            .MaxBy(Worth);
        if (azimuthDeg is not null)
        {
            return straight;
        }

        var turned = Climbed(tiltDeg, Coarse(tiltDeg).MaxBy(Worth));
        return Worth(turned) >= Worth(straight) * (1 + LeastTurnGainShare) ? turned : straight;
    }

    /// <summary>The best plane and those a little flatter and steeper: which of them is cheapest, the choice finds out.</summary>
    /// <param name="best">The best plane.</param>
    /// <param name="tiltDeg">Tilt that the brief gives; null when it is free.</param>
    /// <returns>The planes.</returns>
    public static IReadOnlyList<PlaneFacing> Around(PlaneFacing best, double? tiltDeg) =>
        tiltDeg is null
            ? [.. new[] { Leaned(best, -NeighbourDeg), best, Leaned(best, NeighbourDeg) }.Distinct()]
            : [best];

    /// <summary>Light at the cells for each m³ asked for, in the month in which there is least [kWh/m² per m³].</summary>
    /// <param name="light">The light.</param>
    /// <param name="demandM3PerDay">Demand of each month, January first.</param>
    /// <returns>The month, 0 to 11, and the light.</returns>
    public static (int Month, double KWhPerM2PerM3) WorstMonth(PlaneYear light, IReadOnlyList<double> demandM3PerDay)
    {
        var byMonth = Sky.MonthlyKWhPerM2Day(light.EffectiveWPerM2);
        return Enumerable
            .Range(0, 12)
            .Where(month => demandM3PerDay[month] > 0)
            .Select(month => (month, byMonth[month] / demandM3PerDay[month]))
            .DefaultIfEmpty((0, byMonth.Min()))
            .MinBy(each => each.Item2);
    }

    private PlaneFacing BestTilt(double? tiltDeg, double azimuthDeg)
    {
        if (tiltDeg is { } given)
        {
            return new(given, azimuthDeg);
        }

        var near = Steps(LeastTiltDeg, MostTiltDeg, 5).Select(tilt => new PlaneFacing(tilt, azimuthDeg)).MaxBy(Worth);
        return Steps(-4, 4, 1).Select(by => Leaned(near, by)).MaxBy(Worth);
    }

    private static IEnumerable<PlaneFacing> Coarse(double? tiltDeg) =>
        from azimuth in Steps(0, 330, 30)
        from tilt in tiltDeg is { } given ? [given] : new[] { LeastTiltDeg, 20, 30 }
        select new PlaneFacing(tilt, azimuth);

    // To the best of the eight neighbours until none is better, then in smaller steps.
    private PlaneFacing Climbed(double? tiltDeg, PlaneFacing from)
    {
        var best = from;
        foreach (
            var (turnDeg, leanDeg) in new[] { (3 * AzimuthStepDeg, 4.0), (AzimuthStepDeg, 2), (AzimuthStepDeg, 1) }
        )
        {
            var next = best;
            do
            {
                best = next;
                next = Neighbours(best, turnDeg, tiltDeg is null ? leanDeg : 0).MaxBy(Worth);
            } while (Worth(next) > Worth(best));
        }

        return best;
    }

    private static IEnumerable<PlaneFacing> Neighbours(PlaneFacing facing, double turnDeg, double leanDeg) =>
        from turn in new[] { 0, -turnDeg, turnDeg }
        from lean in new[] { 0, -leanDeg, leanDeg }.Distinct()
        let leaned = lean == 0 ? facing : Leaned(facing, lean)
        select leaned with
        {
            AzimuthDeg = (facing.AzimuthDeg + turn + 360) % 360,
        };

    private static PlaneFacing Leaned(PlaneFacing facing, double byDeg) =>
        facing with
        {
            TiltDeg = Math.Clamp(facing.TiltDeg + byDeg, LeastTiltDeg, MostTiltDeg),
        };

    private static IEnumerable<double> Steps(double from, double to, double step) =>
        Enumerable.Range(0, (int)Math.Round((to - from) / step) + 1).Select(i => from + (i * step));

    private double Worth(PlaneFacing facing)
    {
        if (!tried.TryGetValue(facing, out var worth))
        {
            worth = WorstMonth(lightOn(facing), demandM3PerDay).KWhPerM2PerM3;
            tried.Add(facing, worth);
        }

        return worth;
    }
}

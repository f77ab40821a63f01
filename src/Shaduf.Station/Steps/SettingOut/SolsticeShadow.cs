using Shaduf.Sun;

namespace Shaduf.Station;

/// <summary>The shadow of a rack's plane on level ground at one hour of a solstice.</summary>
/// <param name="Day">The day: 'June' or 'December'.</param>
/// <param name="SolarH">Solar time [h].</param>
/// <param name="Rack">The rack, from 0.</param>
/// <param name="Corners">Corners of the shadow.</param>
public sealed record SolsticeShadow(string Day, double SolarH, int Rack, IReadOnlyList<SitePlace> Corners)
{
    // Below it shadows reach across the whole site.
    private const double LowestDeg = 8;
    private const double SolsticeDeg = 23.45;
    private static readonly double[] s_hours = [9, 12, 15];

    /// <summary>The shadows of all racks at 9, 12 and 15 h of both solstices, the sun 8 deg up or more.</summary>
    /// <param name="latitudeDeg">Latitude [deg], -90 to 90.</param>
    /// <param name="plan">The station from above.</param>
    /// <returns>The shadows.</returns>
    public static IReadOnlyList<SolsticeShadow> Of(double latitudeDeg, SitePlan plan) =>
        [
            .. from day in new[] { (Name: "June", Deg: SolsticeDeg), (Name: "December", Deg: -SolsticeDeg) }
            from hour in s_hours
            let sun = SolarGeometry.Sun(latitudeDeg, day.Deg, (hour - 12) * 15)
            where sun.ZenithDeg < 90 - LowestDeg
            from rack in Enumerable.Range(0, plan.Field.RackCount)
            select new SolsticeShadow(day.Name, hour, rack, [.. Corner(plan, rack, sun)]),
        ];

    private static IEnumerable<SitePlace> Corner(SitePlan plan, int rack, SunAngles sun)
    {
        var field = plan.Field;
        var lowM = rack * field.PitchM;
        var away = Math.Tan(sun.ZenithDeg * Math.PI / 180);
        foreach (
            var (x, y, heightM) in new[]
            {
                (0, lowM, field.LowM),
                (field.LengthM, lowM, field.LowM),
                (field.LengthM, lowM + field.RackM, field.TopM),
                (0, lowM + field.RackM, field.TopM),
            }
        )
        {
            var (foot, fall) = (plan.Bearing.At(new(x, y)), SitePlace.By(sun.AzimuthDeg + 180, heightM * away));
            yield return new(foot.EastM + fall.EastM, foot.NorthM + fall.NorthM);
        }
    }
}

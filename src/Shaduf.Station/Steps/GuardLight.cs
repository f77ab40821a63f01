using Shaduf.Power;
using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Light at one place.</summary>
/// <param name="Place">Where.</param>
/// <param name="HeightM">Height of the lit surface [m]: 0 on the ground.</param>
/// <param name="Lux">Light of all lamps on the level there [lx].</param>
/// <param name="IsShaded">Whether racks stand between it and every lamp.</param>
public sealed record LitPlace(GroundPlace Place, double HeightM, double Lux, bool IsShaded);

/// <summary>The night light: lamps, their light on ground and modules, battery and charging module of each.</summary>
/// <param name="Card">The lamp.</param>
/// <param name="Lamps">Where the lamps hang.</param>
/// <param name="LeastLux">Least light asked [lx].</param>
/// <param name="Grid">Light over the racks and the ground around them.</param>
/// <param name="HoursPerNight">Hours that it burns [h].</param>
/// <param name="Nights">Nights without sun that the battery carries [days].</param>
/// <param name="NeededWh">Battery that one lamp needs [Wh].</param>
/// <param name="WorstSunKWhPerM2Day">Sun on the charging module in the worst month [kWh/m²/d].</param>
/// <param name="NeededW">Charging module that one lamp needs [W]; null when the worst month has too little sun to charge.</param>
/// <param name="ColdDegC">Coldest air on record [°C].</param>
public sealed record GuardLight(
    LightCard Card,
    IReadOnlyList<GuardPoint> Lamps,
    double LeastLux,
    IReadOnlyList<LitPlace> Grid,
    double HoursPerNight,
    double Nights,
    double NeededWh,
    double WorstSunKWhPerM2Day,
    double? NeededW,
    double ColdDegC
)
{
    /// <summary>Evenness aimed at: least over mean; EN 12464-2 in order of magnitude, from memory.</summary>
    public const double LeastEvenRatio = 0.25;

    /// <summary>Ground around the racks that is looked at when there is no fence [m].</summary>
    public const double AroundM = 3;

    // Planning values: dirt and age of the lamp; what a battery gives back; days to refill it (from memory).
    internal const double KeptShare = 0.7;
    internal const double BatteryShare = 0.9;
    internal const double RefillDays = 10;

    // Enough to see a person by: EN 12464-2 in order of magnitude, from memory.
    private const double UsualLeastLux = 1;
    private const double UsualNights = 3;
    private const double ClearAboveM = 2;
    private const double LeastSunKWhPerM2Day = 0.05;
    private const int MostInLine = 3;
    private const int MostLamps = 12;

    /// <summary>Lights the racks.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="sky">The sun of the year.</param>
    /// <param name="field">The racks.</param>
    /// <param name="card">The lamp.</param>
    /// <returns>The light.</returns>
    public static GuardLight Of(Brief brief, Survey survey, Sky sky, GuardField field, LightCard card)
    {
        var light = brief.Guard.Light;
        var heightM = light.HeightM ?? HeightAboveM(card, field);
        var leastLux = light.LeastLux ?? UsualLeastLux;
        var aroundM = brief.Guard.Fence?.MarginM ?? AroundM;
        var tried = Layouts(field, light.Count)
            .Select(places => (IReadOnlyList<GuardPoint>)[.. places.Select((place, i) => Lamp(i, place, heightM))])
            .Select(lamps => (Lamps: lamps, Grid: GridOf(field, lamps, card, aroundM)))
            .ToList();
        var chosen = tried.Find(each => Least(each.Grid) >= leastLux);
        var (lamps, grid) = chosen.Lamps is null ? tried.MaxBy(each => Least(each.Grid)) : chosen;
        var hours = light.HoursPerNight ?? LongestNightH(brief.Site.LatitudeDeg);
        var nights = light.Nights ?? UsualNights;
        var sun = sky.PlaneKWhPerM2Day.Min();
        return new(
            card,
            lamps,
            leastLux,
            grid,
            hours,
            nights,
            LampBattery.CapacityWh(
                card.LampW * hours,
                nights,
                LampBattery.DepthShare(card.Battery.Kind),
                BatteryShare,
                LampBattery.ColdShare(card.Battery.Kind, survey["record-low"])
            ),
            sun,
            sun >= LeastSunKWhPerM2Day
                ? ChargingModule.RatingW(card.LampW * hours, sun, ChargeShareOf(card), MarginRatioOf(nights))
                : null,
            survey["record-low"]
        );
    }

    /// <summary>Energy of one lamp in a night [Wh].</summary>
    public double NightlyWh => Card.LampW * HoursPerNight;

    /// <summary>Blocks of battery for one lamp.</summary>
    public int BlocksEach => (int)Math.Ceiling(NeededWh / Card.Battery.BlockWh);

    /// <summary>Charging modules for one lamp; 0 when no module could charge it.</summary>
    public int ModulesEach => NeededW is { } needed ? (int)Math.Ceiling(needed / Card.Charger.RatedW) : 0;

    /// <summary>Places out of the racks' shade.</summary>
    public IEnumerable<LitPlace> Lit => Grid.Where(each => !each.IsShaded);

    /// <summary>Least light out of the shade [lx].</summary>
    public double MinLux => Least(Grid);

    /// <summary>Mean light out of the shade [lx].</summary>
    public double MeanLux => Lit.Select(each => each.Lux).DefaultIfEmpty(0).Average();

    /// <summary>Least over mean.</summary>
    public double EvenRatio => MeanLux > 0 ? MinLux / MeanLux : 0;

    /// <summary>Share of the places that lie in the racks' shade.</summary>
    public double ShadeShare => 1 - ((double)Lit.Count() / Grid.Count);

    /// <summary>Reserve of the charging module over a mean day of the worst month.</summary>
    public double MarginRatio => MarginRatioOf(Nights);

    /// <summary>Part of the module's rating that comes out of the battery again.</summary>
    public double ChargeShare => ChargeShareOf(Card);

    private static double MarginRatioOf(double nights) => ChargingModule.MarginRatio(nights, RefillDays);

    private static double ChargeShareOf(LightCard card) =>
        ChargingModule.KeptShare(card.Battery.Kind)
        * (card.Charger.HasTracking ? 1 : ChargingModule.DirectShare(card.Battery.BlockV, card.Charger.MaximumPowerV));

    private static double Least(IReadOnlyList<LitPlace> grid) =>
        grid.Where(each => !each.IsShaded).Select(each => each.Lux).DefaultIfEmpty(0).Min();

    private static GuardPoint Lamp(int i, GroundPlace place, double heightM) =>
        new(Invariant($"lamp {i + 1}"), place, heightM);

    // Well above the modules, in half metres.
    private static double HeightAboveM(LightCard card, GuardField field) =>
        Math.Max(card.PoleM, Math.Ceiling((field.TopM + ClearAboveM) * 2) / 2);

    // Few first, behind the last rack before behind every rack; as many as asked when a number is asked.
    private static IEnumerable<IReadOnlyList<GroundPlace>> Layouts(GuardField field, int? asked) =>
        asked is { } count
            ? [field.Behind(count, everyRack: false)]
            : new[] { false, true }
                .SelectMany(everyRack => Enumerable.Range(1, MostInLine).Select(each => field.Behind(each, everyRack)))
                .Where(places => places.Count <= MostLamps)
                .OrderBy(places => places.Count);

    private static IReadOnlyList<LitPlace> GridOf(
        GuardField field,
        IReadOnlyList<GuardPoint> lamps,
        LightCard card,
        double aroundM
    )
    {
        var backM = field.DepthM + Math.Max(aroundM, GuardField.BehindM);
        return
        [
            .. from y in Steps(-aroundM, backM)
            from x in Steps(-aroundM, field.LengthM + aroundM)
            let place = new GroundPlace(x, y)
            let atM = field.PlaneM(place) ?? 0
            let seen = lamps.Where(lamp => !field.Hides(lamp, place, atM)).ToList()
            select new LitPlace(place, atM, seen.Sum(lamp => LuxOf(lamp, card, place, atM)), seen.Count == 0),
        ];
    }

    // A lamp not above the surface gives it nothing.
    private static double LuxOf(GuardPoint lamp, LightCard card, GroundPlace place, double atM) =>
        lamp.HeightM - atM < 0.1
            ? 0
            : card.Luminaire.Lux(
                lamp.HeightM - atM,
                double.Hypot(place.XM - lamp.Place.XM, place.YM - lamp.Place.YM),
                KeptShare
            );

    // About a metre apart, at most forty.
    private static IEnumerable<double> Steps(double fromM, double toM)
    {
        var count = Math.Clamp((int)Math.Round(toM - fromM), 4, 40);
        return Enumerable.Range(0, count + 1).Select(i => fromM + (i * (toM - fromM) / count));
    }

    private static double LongestNightH(double latitudeDeg) =>
        24
        - new[] { 172, 355 }.Min(day =>
            2 * SolarGeometry.SunsetHourAngleDeg(latitudeDeg, SolarGeometry.DeclinationSpencerDeg(day)) / 15
        );
}

using Shaduf.Power;
using Shaduf.Sun;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>
/// The figures of a brief that may be unknown, each either as the brief gives it or as the stated default, with the
/// list of what was assumed. Downstream steps read these and never ask whether a figure was given.
/// </summary>
public sealed record Survey
{
    /// <summary>What was assumed.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>Figures by name in the table of defaults, in the table's unit.</summary>
    public required IReadOnlyDictionary<string, double> Figures { get; init; }

    /// <summary>Monthly climate.</summary>
    public required MonthlyClimate Climate { get; init; }

    /// <summary>What is settled of the source.</summary>
    public required SourceSurvey Source { get; init; }

    /// <summary>A figure by its name in the table of defaults.</summary>
    /// <param name="id">Short name.</param>
    /// <returns>The figure in the table's unit.</returns>
    public double this[string id] => Figures[id];

    /// <summary>The same with another number of years ahead.</summary>
    /// <param name="years">Years ahead that the demand is taken for.</param>
    /// <returns>The survey.</returns>
    public Survey In(double years) =>
        this with
        {
            Figures = new Dictionary<string, double>(Figures) { ["design-years"] = years },
        };

    /// <summary>Settles every figure of a brief.</summary>
    /// <param name="brief">The brief.</param>
    /// <returns>The survey.</returns>
    public static Survey Of(Brief brief)
    {
        var taken = new List<Assumption>();
        var figures = Settle(brief, taken);
        foreach (var (id, given) in brief.Array.Losses.ById)
        {
            figures[id] = given ?? Assumption.DefaultOf(id);
            taken.AddRange(given is null ? [Assumption.Of(id)] : (Assumption[])[]);
        }

        taken.AddRange(NotLookedAt(brief));
        figures["cover"] = brief.Lift.CoverM ?? Assumption.Take(taken, "cover", Assumption.DefaultOf("cover"), "m");
        var source = SourceSurvey.Of(brief, taken);
        var climate = ClimateOf(brief.Site, figures, taken);
        taken.AddRange(UseAssumptions.Of(brief, climate));
        return new()
        {
            Figures = figures,
            Climate = climate,
            Source = source,
            Assumptions = taken,
        };
    }

    private static Dictionary<string, double> Settle(Brief brief, List<Assumption> taken)
    {
        var uses = brief.Uses;
        var figures = new Dictionary<string, double>();
        void Settle(string id, double? given, bool isAsked = true)
        {
            figures[id] = given ?? Assumption.DefaultOf(id);
            if (given is null && isAsked)
            {
                taken.Add(Assumption.Of(id));
            }
        }

        Settle("design-years", uses.DesignYears);
        Settle("growth", uses.GrowthPerYearShare);
        Settle("losses", uses.LossShare);
        Settle("target", uses.TargetShare);
        Settle("peak-day", uses.PeakDayFactor);
        Settle("people-litres", null, uses.People.Any(IsOpen));
        Settle("school-litres", null, uses.School is { } school && IsOpen(school));
        Settle("outpatient-litres", uses.Clinic?.OutpatientLPerDay, uses.Clinic is not null);
        Settle("bed-litres", uses.Clinic?.BedLPerDay, uses.Clinic is not null);
        Settle("plot-efficiency", null, uses.Plots.Any(plot => plot.ReachingShare is null));
        var isPlanted = uses.Plots.Any(plot => plot.Planting is not null);
        Settle("wind-height", brief.Site.Field.WindHeightM, isPlanted && FieldYear.IsFull(brief.Site));
        Settle("stand", brief.Tank.GivenStandM, brief.Tank.IsExisting);
        figures["record-low"] =
            brief.Site.RecordLowDegC ?? Assumption.Take(taken, "record-low", ColdDegC(brief.Site), "degC");
        figures["record-high"] =
            brief.Site.RecordHighDegC ?? Assumption.Take(taken, "record-high", HotDegC(brief.Site), "degC");
        foreach (var (id, given, isAsked) in SiteFigures(brief))
        {
            Settle(id, given, isAsked);
        }

        figures["flash-density"] = Flashes(brief, taken);
        foreach (var (id, given, isAsked) in WellFigures(brief.Source))
        {
            Settle(id, given, isAsked);
        }

        Settle("water-temperature", brief.Source.WaterDegC);
        Settle("pipe-temperature", brief.Source.WaterDegC);
        Settle(
            "reserve",
            brief.Tank.ReserveDays,
            uses.Plots.Count == 0 || uses.Livestock.Count + uses.Fixed.Count + uses.People.Count > 0
        );
        Settle("tank-restart", brief.Tank.RestartShare);
        Settle("albedo", brief.Array.AlbedoShare);
        Settle("horizon", null, brief.Site.Surrounds.Horizon.Count == 0);
        foreach (var (id, given) in OtherFigures(brief))
        {
            Settle(id, given);
        }

        return figures;
    }

    private static IEnumerable<(string Id, double? Given)> OtherFigures(Brief brief) =>
        [
            ("string-cable", brief.Array.StringCableM),
            ("motor-cable", brief.Array.MotorCableM),
            .. MoneyFigures(brief.Money),
            .. CrewFigures(brief.Rack.Crew),
            .. WindFigures(brief),
            .. brief.Rack.Workshop.Figures,
        ];

    // A map's figure; else by the days with thunder; else by days that no place of that latitude is likely to exceed.
    private static double Flashes(Brief brief, List<Assumption> taken) =>
        brief.Guard.Lightning.FlashesPerKm2Year
        ?? (brief.Guard.Lightning.ThunderDays is { } days ? FlashDensity.LargestPerKm2Year(days) : (double?)null)
        ?? Assumption.Take(
            taken,
            "flash-density",
            FlashDensity.LargestPerKm2Year(Math.Abs(brief.Site.LatitudeDeg) <= 23.5 ? 100 : 30),
            "/km2/year"
        );

    private static IEnumerable<(string Id, double? Given, bool IsAsked)> WellFigures(SourceBrief source) =>
        source is BoreholeBrief borehole
            ?
            [
                ("casing", borehole.CasingMm, true),
                ("seasonal-fall", borehole.SeasonalFallM, true),
                ("yield-share", borehole.YieldShare, true),
                ("dry-days", borehole.DryDays, borehole.ConstantTest is not null),
            ]
            : [];

    private static IEnumerable<(string Id, double? Given)> CrewFigures(CrewBrief crew) =>
        [
            ("crew-people", crew.PeopleCount),
            ("work-hours", crew.HoursADay),
            ("steel-wait", crew.SteelWaitDays),
            ("goods-wait", crew.GoodsWaitDays),
        ];

    private static IEnumerable<(string Id, double? Given)> WindFigures(Brief brief) =>
        [("blockage", brief.Rack.BlockageShare), ("hill-slope", brief.Site.HillSlopeShare)];

    private static IEnumerable<(string Id, double? Given)> MoneyFigures(MoneyBrief money) =>
        [
            ("contingency", money.ContingencyShare),
            ("overhead", money.OverheadShare),
            ("markup", money.MarkupShare),
            ("tax", money.TaxShare),
            ("transport", money.GivenTransportKm),
            ("retention", money.Payment.RetentionShare),
            ("defects", money.Payment.DefectsDays),
            ("validity", money.Payment.ValidityDays),
            .. LifeFigures(money.Life),
        ];

    private static IEnumerable<(string Id, double? Given, bool IsAsked)> SiteFigures(Brief brief) =>
        [
            ("soil-resistivity", brief.Site.SoilResistivityOhmM, true),
            ("snow", brief.Site.SnowKNPerM2, true),
            ("wind", brief.Site.Wind?.SpeedMPerS, true),
            ("earthquake", brief.Site.Earthquake?.RockShare, StandDesign.IsAsked(brief.Tank)),
        ];

    private static IEnumerable<(string Id, double? Given)> LifeFigures(LifeBrief life) =>
        [
            ("life-years", life.Years),
            ("discount", life.DiscountPerYear),
            ("fuel-rise", life.FuelRisePerYear),
            ("pump-life", life.PumpYears),
            ("drive-life", life.DriveYears),
            ("solar-care", life.CareShare),
        ];

    // Neither a figure nor a level of supply is given.
    private static bool IsOpen(HeadsBrief heads) => heads is { EachLPerDay: null, Level: null };

    /// <summary>Water for each of some people or pupils: the brief's figure, else that of their level, else the default [L/d].</summary>
    /// <param name="heads">The people or pupils.</param>
    /// <returns>Water [L/d].</returns>
    public double LitresOf(HeadsBrief heads) =>
        heads.EachLPerDay
        ?? ServiceLevel.All.FirstOrDefault(level => level.Name == heads.Level)?.LitresPerDay
        ?? this[heads.ArePupils ? "school-litres" : "people-litres"];

    // What is no figure, and was left open.
    private static IEnumerable<Assumption> NotLookedAt(Brief brief)
    {
        if (brief.Lift.Fittings.Count == 0)
        {
            yield return Assumption.Of("fittings", "the usual fittings");
        }

        if (brief.Taps?.Junctions.Any(junction => junction.LevelM is null) == true)
        {
            yield return Assumption.Of("junction", "as low as the lowest tap");
        }

        if (brief.Site.Soil is null)
        {
            yield return Assumption.Of("soil", "untested soil");
        }

        if (brief.Site.GroundwaterM is null)
        {
            yield return Assumption.Of("groundwater", "up to the surface for the weight of concrete");
        }

        if (brief.Site.EdgeM is null)
        {
            yield return Assumption.Of("edge", "none within twice the width of a footing");
        }

        if (brief.Site is { FrostM: null, RecordLowDegC: not >= 0 })
        {
            yield return Assumption.Of("frost", "not as deep as the footings");
        }

        if (brief.Site.Surrounds.Near.Count == 0)
        {
            yield return Assumption.Of("near", "only the station's own fence, pole and racks");
        }

        if (brief.Site.Terrain is null)
        {
            yield return Assumption.Of("terrain", "II: farm land with few obstacles");
        }

        if (brief.Rack.Steel == SteelBrief.Unmarked)
        {
            yield return Assumption.Of("steel-grade", "unmarked: yield 210 N/mm2");
        }

        if (!brief.Rack.IsWallMeasured)
        {
            yield return Assumption.Of("wall", "10 % thinner than its name says");
        }
    }

    // Never inside what the months themselves say: a night is colder than its month, a noon hotter.
    private static double ColdDegC(SiteBrief site) =>
        new[]
        {
            Assumption.DefaultOf("record-low"),
            site.Months.Min(month => month.MeanDegC) - 15,
            site.Months.Min(month => month.LowDegC) - 5,
            site.Record?.ColdestDegC,
        }
            .OfType<double>()
            .Min();

    private static double HotDegC(SiteBrief site) =>
        new[]
        {
            Assumption.DefaultOf("record-high"),
            site.Months.Max(month => month.MeanDegC) + 10,
            site.Months.Max(month => month.HighDegC) + 5,
            site.Record?.HottestDegC,
        }
            .OfType<double>()
            .Max();

    private static MonthlyClimate ClimateOf(SiteBrief site, Dictionary<string, double> figures, List<Assumption> taken)
    {
        figures["month-clearness"] = Assumption.DefaultOf("month-clearness");
        figures["month-air"] = Assumption.DefaultOf("month-air");
        var months = MonthSky.Of(site);
        taken.AddRange(MonthSky.Taken(months));
        return new([.. months.Select(month => month.SunKWhPerM2Day)], [.. months.Select(month => month.AirDegC)])
        {
            SwingK = [.. site.Months.Select(month => month.HighDegC - month.LowDegC)],
        };
    }
}

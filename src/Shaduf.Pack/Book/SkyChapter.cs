using Shaduf.Station;
using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on the light: what comes down, what is in its way, and what reaches the cells.</summary>
internal static class SkyChapter
{
    // Haze of the warm humid or dusty lands: 4 to 5, from memory. It serves the picture only.
    private const double LinkeFactor = 4;

    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        var months = SkyMonth.Of(design.Sky);
        yield return new Heading(1, "The sky by month");
        yield return new Figure(
            Light(design, months, PicturePaper.Half),
            Invariant(
                $"Sun by month, mean day. A sky without clouds: Ineichen and Perez with a Linke turbidity of {LinkeFactor:0} (humid or dusty air), for comparison only; a dull month lies far below it, and one above it has clearer air than that, or its figure is to be doubted."
            )
        );
        yield return Losses(months, design);
        yield return new Figure(
            SunPaths.Of(design, new(173, 74)),
            $"The sky from the middle of the rearmost rack. Where a path runs behind the skyline or behind what stands near, the sun does not reach that spot.{Numbers(design)}"
        );
    }

    private static string Numbers(Design design) =>
        design.Layout.Things.Count == 0
            ? ""
            : $" {string.Join("; ", design.Layout.Things.Select((thing, i) => Invariant($"{i + 1} {thing.Name}")))}.";

    private static Scene Light(Design design, IReadOnlyList<SkyMonth> months, PaperSize size) =>
        new BarChart(
            new("sun, kWh/m2 a day"),
            [.. YearCalendarNames.Months.Select(name => name[..3])],
            [
                new("level, clear sky", SkyMonth.ClearKWhPerM2Day(design.Brief.Site.Place, LinkeFactor)),
                new("level, as given", [.. months.Select(month => month.LevelKWhPerM2Day)]),
                new("on the plane, open", [.. months.Select(month => month.OpenKWhPerM2Day)]),
                new("at the cells", [.. months.Select(month => month.EffectiveKWhPerM2Day)]),
            ]
        )
        {
            ValueFormat = null,
        }.ToScene(size, "sun by month");

    private static Table Losses(IReadOnlyList<SkyMonth> months, Design design) =>
        new(
            [
                new("month", 0.9),
                new("sun up on the 15th", 1.3),
                new("level, kWh/m2/d", 0.8, HorizontalAnchor.Right),
                new("plane, open, kWh/m2/d", 0.9, HorizontalAnchor.Right),
                new("skyline takes, %", 0.8, HorizontalAnchor.Right),
                new("near things take, %", 0.8, HorizontalAnchor.Right),
                new("glass throws back, %", 0.8, HorizontalAnchor.Right),
                new("at the cells, kWh/m2/d", 0.9, HorizontalAnchor.Right),
            ],
            [.. months.Select((month, i) => Row(month, i, design.Brief.Site.Place))]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = "The light on its way to the cells",
        };

    // Terrestrial time less universal time in the 2020s.
    private const double DeltaTS = 69;

    private static TableRow Row(SkyMonth month, int index, Place place)
    {
        var times = SunTimes.Of(place, new(YearCalendar.Year, index + 1, 15), DeltaTS);
        return TableRow.Of(
            YearCalendarNames.Months[index],
            times.Says,
            Invariant($"{month.LevelKWhPerM2Day:0.00}"),
            Invariant($"{month.OpenKWhPerM2Day:0.00}"),
            Invariant($"{month.HorizonLostShare * 100:0.0}"),
            Invariant($"{month.NearLostShare * 100:0.0}"),
            Invariant($"{month.ReflectedShare * 100:0.0}"),
            Invariant($"{month.EffectiveKWhPerM2Day:0.00}")
        );
    }
}

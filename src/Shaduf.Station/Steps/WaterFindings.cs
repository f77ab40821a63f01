using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the promise itself.</summary>
internal static class WaterFindings
{
    /// <summary>Whether the target is met, in the design year and in others.</summary>
    /// <param name="design">The design so far.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Design design)
    {
        var target = design.Survey["target"];
        if (design.Sizing.Limit is { } limit)
        {
            yield return new(
                "sizing/limit",
                FindingStatus.Stop,
                $"no arrangement of the cards serves this brief; what binds is the {limit.Kind}: {limit.Says}",
                limit.Value,
                limit.Allowed,
                limit.Unit,
                ""
            );
        }

        foreach (var finding in Target(design))
        {
            yield return finding;
        }

        yield return OtherYears(design.Sky.Weather.Record, design.Sensitivity.SeededShares, target);
        foreach (var year in design.Sensitivity.Years.Skip(1))
        {
            yield return Harder(year, design.Brief.Uses.TargetSpan, target);
        }

        yield return new(
            "water/quality",
            FindingStatus.Unchecked,
            "the water was not analysed: an accredited laboratory and the health authority decide whether it may be drunk",
            null,
            null,
            "",
            "WHO Guidelines for Drinking-water Quality"
        );
        yield return Reserve(design);
        yield return Inlet(design);
        yield return Base(design);
    }

    private static Finding Base(Design design)
    {
        var isStand = design.Brief.Tank.StandM > 0.5;
        return design.Works.Stand is null
            ? new(
                "tank/base",
                FindingStatus.Unchecked,
                isStand
                    ? "stand under the tank: not designed, not checked and not in the bill; a cubic metre of water weighs a tonne"
                    : "base under the tank: not designed and not in the bill",
                null,
                null,
                "",
                ""
            )
            : new(
                "tank/base",
                FindingStatus.Holds,
                "the tank stands on a stand of steel that is designed here: the findings under stand/ say how far it holds",
                null,
                null,
                "",
                ""
            );
    }

    // The target is held against the worst month or the year; the other is told beside it.
    private static IEnumerable<Finding> Target(Design design)
    {
        var (year, target, span) = (design.Year, design.Survey["target"], design.Brief.Uses.TargetSpan);
        Finding Said(TargetSpan over, string id, double share, string says) =>
            over == span
                ? Finding.AtLeast(
                    id,
                    share * 100,
                    target * 100,
                    "%",
                    says,
                    "target of the brief, or 95 % by common practice"
                )
                : new(id, FindingStatus.Holds, says, share * 100, null, "%", "");

        yield return Said(
            TargetSpan.WorstMonth,
            "water/worst-month",
            year.WorstShare,
            Invariant($"share of the demand met in the worst month, {YearCalendarNames.Months[year.WorstMonth]}")
        );
        yield return Said(TargetSpan.Year, "water/year", year.YearShare, "share of the year's demand that is met");
    }

    private static Finding OtherYears(WeatherRecord? record, IReadOnlyList<double> otherYears, double target)
    {
        if (otherYears.Count == 0)
        {
            return new(
                "water/other-years",
                FindingStatus.Unchecked,
                "the weather file holds one year: how the station does in a duller one is not known; ask for a record of ten years",
                null,
                null,
                "",
                "weather file"
            );
        }

        var worst = otherYears.Min();
        var years = record is null
            ? $"{otherYears.Count} other weather years with the same monthly means"
            : $"the {otherYears.Count} other years of the weather file";
        return new(
            "water/other-years",
            worst >= target ? FindingStatus.Holds : FindingStatus.Look,
            worst >= target
                ? $"{years} meet the target too"
                : $"the dullest of {years} falls short of the target: talk about a larger tank or array",
            worst * 100,
            target * 100,
            "%",
            record is null
                ? "weather years are draws of a random process (Aguiar, Collares-Pereira, Conde 1988)"
                : "weather file"
        );
    }

    private static Finding Harder(HarderYear year, TargetSpan span, double target)
    {
        var share = span == TargetSpan.Year ? year.YearShare : year.WorstShare;
        var over = span == TargetSpan.Year ? "over the year" : "in the worst month";
        return new(
            $"water/other-years-{year.Id}",
            share >= target ? FindingStatus.Holds : FindingStatus.Look,
            $"{year.Name}, share of the demand met {over}: {year.Says}",
            share * 100,
            target * 100,
            "%",
            "year run"
        );
    }

    private static Finding Reserve(Design design)
    {
        var reserveM3 = design.Survey["reserve"] * design.Demand.DrinkingM3PerDay;
        return new(
            "water/reserve",
            design.Choice.UsefulM3 >= reserveM3 ? FindingStatus.Holds : FindingStatus.Look,
            Invariant(
                $"useful volume of the tank against {design.Survey["reserve"]:0.##} days of water for people, animals and fixed uses"
            ),
            design.Choice.UsefulM3,
            reserveM3,
            "m3",
            "brief or table of defaults"
        );
    }

    // Water fills a tank up to its inlet and no further: the head at the inlet is what its float valve needs.
    private static Finding Inlet(Design design)
    {
        var rimM = design.Brief.Lift.Route[^1].ElevationM + design.Brief.Tank.StandM + design.Choice.Tank.HeightM;
        var inletM = design.Brief.Lift.InletM;
        return new(
            "tank/inlet",
            rimM <= inletM ? FindingStatus.Holds : FindingStatus.Look,
            rimM <= inletM
                ? "the rim of the chosen tank against its inlet"
                : "the chosen tank is taller than the inlet of the brief allows: raise the inlet or take a lower tank, or its top stays empty",
            rimM,
            inletM,
            "m",
            "levels of the brief and tank card"
        );
    }
}

using System.Collections.Immutable;
using Shaduf.Power;
using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The chosen station in a year that is worse than the one it was sized on.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Name">What it is, in few words.</param>
/// <param name="Says">What was changed.</param>
/// <param name="WorstShare">Share of the demand met in the worst month.</param>
/// <param name="YearShare">Share of the year's demand met.</param>
public sealed record HarderYear(string Id, string Name, string Says, double WorstShare, double YearShare);

/// <summary>How the chosen station bears what may go wrong: each a year run of its own.</summary>
/// <param name="Years">The design year first, then the harder ones.</param>
/// <param name="SeededShares">Share met in the worst month, or over the year as the brief asks, in each of the other weather years, worst first.</param>
public sealed record Sensitivity(IReadOnlyList<HarderYear> Years, IReadOnlyList<double> SeededShares)
{
    private const int YearsOn = 10;

    // A dirty array: not cleaned through a dusty season. Judgement, no source.
    private const double DirtyShare = 0.85;

    /// <summary>Runs the years.</summary>
    /// <param name="design">The design so far.</param>
    /// <returns>What came of them.</returns>
    public static Sensitivity Of(Design design)
    {
        var (survey, sizing, choice) = (design.Survey, design.Sizing, design.Choice);
        var inputs = sizing.Inputs(design.Demand);
        var kept = inputs.ModulesKept / sizing.Losses.KeptShare;
        var seeded = Seeded(design, inputs);
        var dry = design.Source.Drier(choice.Pump, choice.Lift.Foot, survey);
        var dirty = sizing.Losses with { SoilingShare = DirtyShare };
        var later = (int)Math.Ceiling(survey["design-years"]) + YearsOn;
        var ageShare = ArrayLosses.KeptAtAgeShare(Math.Clamp(later, 1, 50), survey["array-ageing"]);
        var aged = sizing.Losses with { AgeShare = ageShare };
        return new(
            [
                Year("design", "design year", "as designed", design.Year),
                .. Dull(seeded),
                Year(
                    "dry",
                    "dry year",
                    dry.Says,
                    YearRun.Run(inputs with { Table = Dry(design, dry), Limits = dry.Source.Limits })
                ),
                Year(
                    "dirty",
                    "dirty array",
                    Invariant($"dust and droppings take {(1 - dirty.SoilingShare) * 100:0} % of the light"),
                    YearRun.Run(inputs with { ModulesKept = kept * dirty.KeptShare })
                ),
                Year(
                    "later",
                    "ten years on",
                    Invariant($"{later} years after the survey: the demand has grown on, the modules have aged on"),
                    YearRun.Run(
                        inputs with
                        {
                            ModulesKept = kept * aged.KeptShare,
                            DrawM3 = DemandYear.Of(design.Brief, survey.In(survey["design-years"] + YearsOn)).HourM3,
                        }
                    )
                ),
            ],
            [.. seeded.Select(run => Reliability.Share(design.Brief.Uses.TargetSpan, run))]
        );
    }

    private static HarderYear Year(string id, string name, string says, YearRun run) =>
        new(id, name, says, run.WorstShare, run.YearShare);

    // The tenth percentile of the other years: the second worst of twenty, the worst of ten. None when there is no other year.
    private static IEnumerable<HarderYear> Dull(IReadOnlyList<YearRun> worstFirst)
    {
        if (worstFirst.Count > 0)
        {
            var rank = (int)Math.Ceiling(0.1 * worstFirst.Count);
            yield return Year(
                "dull",
                "dull year",
                Invariant(
                    $"number {rank} from the dullest of {worstFirst.Count} other weather years (tenth percentile)"
                ),
                worstFirst[rank - 1]
            );
        }
    }

    // The other weather years, worst first.
    private static IReadOnlyList<YearRun> Seeded(Design design, YearInputs inputs) =>
        [
            .. design
                .Sky.Weather.Others.AsParallel()
                .AsOrdered()
                .Select(year => YearRun.Run(inputs with { ModuleW = ModuleW(design, year) }))
                .AsSequential()
                .OrderBy(run => Reliability.Share(design.Brief.Uses.TargetSpan, run)),
        ];

    private static ImmutableArray<double> ModuleW(Design design, WeatherYear year) =>
        Sizing.ModuleYearW(
            design.Choice.Module,
            year,
            PlaneYear.Of(SkyYear.Of(year, PerezSet.AllSites1990), design.Sky.Plane.Setting)
        );

    // The same pump and pipes on lower water; the flow is held so low that the pump's inlet gets what it asks for.
    private static Water.PumpTable Dry(Design design, DryYear dry)
    {
        var lift = Lift.Of(design.Brief, design.Survey, dry.Source, design.Choice.Lift.Foot, design.Choice.Lift.Lay);
        return (design.Sizing.Hydraulics with { Lift = lift }).Table(design.Sizing.VoltageSpeedRatio, dry.MostM3PerH);
    }
}

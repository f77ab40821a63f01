using Shaduf.Sun;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings of open water with the pump beside it.</summary>
internal static class IntakeFindings
{
    /// <summary>The findings.</summary>
    /// <param name="design">The design so far.</param>
    /// <param name="build">What is built beside the water.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Design design, IntakeBuild build)
    {
        var (intake, survey) = (build.Intake, build.Intake.Survey);
        return
        [
            Finding.AtMost(
                "source/yield",
                build.FlowM3PerH,
                intake.YieldM3PerH * (1 + 1e-6),
                "m3/h",
                "the largest flow of the year stays within what may be taken in an hour; months in which less may be taken are held to that",
                "brief"
            ),
            Daily(design, intake.Limits),
            Npsh(build),
            Lift(survey),
            survey.Stand == PumpStand.Bank ? Flood(survey) : Raft(survey),
            .. Strainer(build),
            DryRun(build),
            Treatment(design.Brief.Uses),
        ];
    }

    private static Finding Daily(Design design, SourceLimits limits)
    {
        if (limits.DayM3.All(double.IsPositiveInfinity))
        {
            return new(
                "source/licence",
                FindingStatus.Unchecked,
                "nobody said how much water may be taken in a day: ask the water office and those who live downstream",
                null,
                null,
                "m3/d",
                ""
            );
        }

        var days = design
            .Trace.PumpedM3.Chunk(24)
            .Select((hours, day) => (PumpedM3: hours.Sum(), LimitM3: limits.DayM3[YearCalendar.MonthOf(24 * day)]))
            .Where(day => double.IsFinite(day.LimitM3))
            .ToList();
        var bound = days.Count(day => day.PumpedM3 >= day.LimitM3 - 1e-6);
        var worst = days.MaxBy(day => day.LimitM3 > 0 ? day.PumpedM3 / day.LimitM3 : 0);
        return Finding.AtMost(
            "source/licence",
            worst.PumpedM3,
            worst.LimitM3 + 1e-6,
            "m3/d",
            Invariant(
                $"water drawn on the day that comes nearest to what may be taken; the year run stops the pump there, on {bound} days"
            ),
            "brief"
        );
    }

    private static Finding Npsh(IntakeBuild build)
    {
        var worst = build.Worst;
        var month = YearCalendarNames.Months[worst.Month];
        return new(
            "source/npsh",
            worst.SpareM >= 0 ? FindingStatus.Holds : FindingStatus.Stop,
            worst.SpareM >= 0
                ? Invariant(
                    $"suction head (NPSH) at the pump in {month} at {build.FlowM3PerH:0.0} m3/h, {worst.LiftM:0.0} m over water of {worst.WaterDegC:0} degC, {worst.LossM:0.0} m lost in the pipe"
                )
                : Invariant(
                    $"the pump cavitates in {month}: it stands {worst.LiftM:0.0} m over the water and must stand {-worst.SpareM:0.0} m lower, or draw less through a wider and shorter pipe ({worst.LossM:0.0} m are lost there)"
                ),
            worst.AvailableM,
            worst.NeededM,
            "m",
            "Crane TP-410; 0.5 m or 1.3 times over the pump card: common practice, no source"
        );
    }

    private static Finding Lift(IntakeSurvey survey)
    {
        var liftM = Enumerable.Range(0, 12).Max(survey.LiftM);
        return Finding.AtMost(
            "source/suction-lift",
            liftM,
            IntakeSurvey.HighestLiftM(survey.LowestM),
            "m",
            "height of the pump over the lowest water, against what keeps its prime at this height above sea",
            "6 m at the sea, 1.1 m less for each 1000 m; common practice, no source"
        );
    }

    private static Finding Flood(IntakeSurvey survey) =>
        new(
            "source/flood",
            survey.PumpM >= survey.FloodM + IntakeSurvey.OverFloodM ? FindingStatus.Holds : FindingStatus.Stop,
            survey.PumpM >= survey.FloodM + IntakeSurvey.OverFloodM
                ? "the pump's shaft over the highest flood; the drive hangs higher still"
                : Invariant(
                    $"the highest flood drowns the pump: raise it by {survey.FloodM + IntakeSurvey.OverFloodM - survey.PumpM:0.0} m, or put it on a raft"
                ),
            survey.PumpM,
            survey.FloodM + IntakeSurvey.OverFloodM,
            "m",
            "0.5 m over the highest flood; common practice, no source"
        );

    private static Finding Raft(IntakeSurvey survey)
    {
        var rangeM = survey.FloodM - survey.LowestM;
        return new(
            "source/flood",
            survey.HoseM >= rangeM ? FindingStatus.Look : FindingStatus.Stop,
            survey.HoseM >= rangeM
                ? Invariant(
                    $"the raft goes up and down by {rangeM:0.0} m: the hose must follow without a kink, the moorings hold it in the flood; the raft itself is not designed"
                )
                : "the hose is shorter than the raft goes up and down",
            survey.HoseM,
            rangeM,
            "m",
            "levels of the brief"
        );
    }

    private static IEnumerable<Finding> Strainer(IntakeBuild build)
    {
        yield return Finding.AtLeast(
            "source/strainer",
            build.Intake.CoverM,
            build.LeastCoverM,
            "m",
            "lowest water over the strainer, so that it draws no air at the largest flow",
            "D (1 + 2.3 F), ANSI/HI 9.8, from memory"
        );
        var overBedM = build.Intake.StrainerM - build.Intake.Survey.BedM;
        yield return new(
            "source/strainer-bed",
            overBedM >= Intake.OverBedM - 1e-9 ? FindingStatus.Holds : FindingStatus.Look,
            "strainer over the bottom; in a basket that leaves and fish do not pass, where the current keeps it clean",
            overBedM,
            Intake.OverBedM,
            "m",
            "common practice, no source"
        );
    }

    private static Finding DryRun(IntakeBuild build) =>
        new(
            "source/dry-run",
            build.Intake.Survey.LowestM >= build.StopM ? FindingStatus.Holds : FindingStatus.Look,
            Invariant(
                $"lowest water over the level at which the float switch of the bill stops the pump, {build.StopM:0.00} m; a pump that runs dry ruins its seal: fill it and its suction pipe before every first start"
            ),
            build.Intake.Survey.LowestM,
            build.StopM,
            "m",
            "common practice, no source"
        );

    private static Finding Treatment(UsesBrief uses) =>
        new(
            "source/treatment",
            FindingStatus.Unchecked,
            uses.People.Count > 0 || uses.School is not null || uses.Clinic is not null
                ? "open water carries germs, silt and what is sprayed upstream: nobody drinks it before it is settled, filtered and disinfected; treatment is not designed here"
                : "open water carries germs, silt and what is sprayed upstream: for crops and animals have it looked at; nobody drinks it",
            null,
            null,
            "",
            "WHO Guidelines for Drinking-water Quality"
        );
}

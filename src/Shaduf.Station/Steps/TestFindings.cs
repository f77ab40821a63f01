using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the tests of the source.</summary>
internal static class TestFindings
{
    // Judgement, no source: beyond it the borehole, not the aquifer, holds the water back.
    private const double MostWellLossShare = 0.5;

    // Judgement, no source: reading a dipper is better than that.
    private const double MostResidualShare = 0.1;

    // A single barrier doubles the slope.
    private const double MostLateSlopeFactor = 1.5;

    /// <summary>Findings on step test, constant test and their absence.</summary>
    /// <param name="brief">The source as the brief has it.</param>
    /// <param name="tested">What they say.</param>
    /// <param name="largestFlowM3PerH">Largest flow of the year [m³/h].</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(BoreholeBrief brief, TestedWell tested, double largestFlowM3PerH) =>
        [
            .. Proven(brief),
            .. Beyond(tested.Steps, largestFlowM3PerH),
            .. AboveSteps(brief, tested.Steps),
            .. Steps(brief, tested.Steps, largestFlowM3PerH / 3600),
            .. LongUse(tested.Line),
        ];

    private static IEnumerable<Finding> Proven(BoreholeBrief brief)
    {
        if (brief.TestedYieldM3PerH is null && brief.ConstantTest is null && brief.Steps.Count < 3)
        {
            yield return new(
                "source/proven",
                FindingStatus.Look,
                brief.BucketTest is not null || brief.DrillersFigureM3PerH is not null
                    ? "the yield is not proven: a drum or a driller's figure at a cautious share stands for a test; promise no volume before a step test and a long test"
                    : "the yield is not proven: nobody tested the source; promise no volume before a step test and a long test",
                null,
                null,
                "",
                "a driller's airlift figure is no yield; judgement, no source"
            );
        }
    }

    private static IEnumerable<Finding> Beyond(StepDrawdown steps, double largestFlowM3PerH)
    {
        var testedM3PerH = steps.LargestFlowM3PerS * 3600;
        if (largestFlowM3PerH > testedM3PerH * (1 + 1e-6))
        {
            yield return new(
                "source/beyond-test",
                FindingStatus.Look,
                "the largest flow of the year lies beyond the largest flow tested: the drawdown there is a guess",
                largestFlowM3PerH,
                testedM3PerH,
                "m3/h",
                "step test"
            );
        }
    }

    private static IEnumerable<Finding> AboveSteps(BoreholeBrief brief, StepDrawdown steps)
    {
        var testedM3PerH = steps.LargestFlowM3PerS * 3600;
        if (brief.Steps.Count > 0 && brief.TestedYieldM3PerH > testedM3PerH * (1 + 1e-6))
        {
            yield return new(
                "source/yield-above-steps",
                FindingStatus.Look,
                "the tested yield is larger than the largest step: ask how the one was held when the other was not reached",
                brief.TestedYieldM3PerH,
                testedM3PerH,
                "m3/h",
                "step test"
            );
        }
    }

    private static IEnumerable<Finding> Steps(BoreholeBrief brief, StepDrawdown fit, double flowM3PerS)
    {
        if (fit.Basis == DrawdownBasis.RegressionRefused)
        {
            yield return new(
                "source/step-test",
                FindingStatus.Look,
                "the steps do not follow aquifer and well loss together (the borehole may still have been clearing): the largest drawdown per flow is taken for all flows",
                null,
                null,
                "",
                "Jacob 1947, Hantush-Bierschenk"
            );
        }

        if (fit.Basis != DrawdownBasis.Steps)
        {
            yield break;
        }

        yield return Residual(brief, fit);
        if (flowM3PerS > 0)
        {
            yield return WellLoss(fit, flowM3PerS);
        }
    }

    private static Finding WellLoss(StepDrawdown fit, double flowM3PerS)
    {
        var lostShare = fit.WellS2PerM5 * flowM3PerS * flowM3PerS / fit.DrawdownM(flowM3PerS);
        return new(
            "source/well-loss",
            lostShare <= MostWellLossShare ? FindingStatus.Holds : FindingStatus.Look,
            lostShare <= MostWellLossShare
                ? "share of the drawdown that is lost in screen and casing at the largest flow"
                : "most of the drawdown is lost in screen and casing: have the borehole cleaned or ask the driller",
            lostShare * 100,
            MostWellLossShare * 100,
            "%",
            "C Q2 / (B Q + C Q2), Jacob 1947; the limit is judgement, no source (Walton's classes are for wells of high yield)"
        );
    }

    private static Finding Residual(BoreholeBrief brief, StepDrawdown fit)
    {
        var worst = fit.ResidualsM.Zip(brief.Steps, (residual, step) => Math.Abs(residual) / step.DrawdownM).Max();
        var holds = worst <= MostResidualShare;
        return new(
            "source/step-fit",
            holds ? FindingStatus.Holds : FindingStatus.Look,
            holds
                ? Invariant(
                    $"largest distance of a step from the fitted curve; r2 of the fit {fit.DeterminationCoefficient:0.000}"
                )
                : Invariant(
                    $"a step lies far from the fitted curve (r2 {fit.DeterminationCoefficient:0.000}): look at that reading, or test again"
                ),
            worst * 100,
            MostResidualShare * 100,
            "%",
            "least squares of s/Q on Q, Hantush-Bierschenk; the limit is judgement, no source"
        );
    }

    private static IEnumerable<Finding> LongUse(CooperJacob? fitted)
    {
        if (fitted is not { } line)
        {
            yield return new(
                "source/long-use",
                FindingStatus.Look,
                "no test at constant rate: how far months of pumping lower the level is not known; the seasonal fall alone is in the design",
                null,
                null,
                "",
                "Cooper and Jacob 1946"
            );
            yield break;
        }

        yield return Barrier(line);
    }

    private static Finding Barrier(CooperJacob line)
    {
        var holds = line.LateSlopeFactor <= MostLateSlopeFactor;
        return new(
            "source/long-use",
            holds ? FindingStatus.Holds : FindingStatus.Look,
            holds
                ? Invariant(
                    $"late slope of the long test over its early one; transmissivity {line.TransmissivityM2PerS * 86400:0.#} m2/d"
                )
                : "the level falls faster late in the long test: a barrier is felt, and a season of pumping will lower it more than the line says; ask a hydrogeologist",
            line.LateSlopeFactor,
            MostLateSlopeFactor,
            "",
            "Cooper and Jacob 1946; a barrier doubles the slope"
        );
    }
}

using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>What holds for any design, whatever its findings say.</summary>
internal static class Sound
{
    public static void Assert(Design design)
    {
        var figures = Figures(design).ToList();
        Xunit.Assert.All(figures, figure => Xunit.Assert.True(double.IsFinite(figure.Value), figure.What));
        Xunit.Assert.All(
            Texts(design),
            text =>
            {
                Xunit.Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
                Xunit.Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
                Xunit.Assert.DoesNotContain('∞', text);
            }
        );
        Xunit.Assert.All(design.Months, month => Xunit.Assert.InRange(month.MetShare, 0, 1 + 1e-9));
        Xunit.Assert.All(
            design.Months,
            month => Xunit.Assert.InRange(month.SupplyM3PerDay, 0, month.DemandM3PerDay + 1e-9)
        );
        Xunit.Assert.Equal(design.Choice.ModuleCount, design.Choice.Grid.ModuleCount);
        Xunit.Assert.Equal(
            design.Bill.Direct + design.Bill.Preliminaries,
            design.Bill.Lines.Sum(line => line.Amount ?? 0)
        );
        Xunit.Assert.True(design.Offer.Total >= design.Offer.Direct);
        Xunit.Assert.All(
            design.Works.Rack.Steel.Parts,
            part => Xunit.Assert.True(part.Shape.ShortPointMm > 0, part.Mark)
        );
        Xunit.Assert.Equal(design.Sizing.Limit is null, design.Findings.All(finding => finding.Id != "sizing/limit"));
        Xunit.Assert.True(
            design.Sizing.Limit is not null
                || Reliability.Share(design.Brief.Uses.TargetSpan, design.Year) >= design.Survey["target"],
            "serves without meeting the target"
        );
        Xunit.Assert.Equal(design.Findings.Count, design.Findings.Select(finding => finding.Id).Distinct().Count());
        foreach (var finding in design.Findings)
        {
            foreach (var leaned in finding.LeansOn)
            {
                var assumption = design.Survey.Assumptions.Single(each => each.Id == leaned);
                Xunit.Assert.True(finding.Status >= assumption.Best, $"{finding.Id} leans on {leaned}");
            }
        }
    }

    private static IEnumerable<(string What, double Value)> Figures(Design design) =>
        [
            .. design.Findings.Select(finding => (finding.ToString(), finding.Value ?? 0)),
            .. design.Findings.Select(finding => (finding.ToString(), finding.Limit ?? 0)),
            .. design.Months.Select(month => (month.ToString(), month.PumpableM3PerDay + month.SunKWhPerM2Day)),
            .. design.Workings.SelectMany(sheet => sheet.Lines).Select(line => (line.ToString(), line.Value)),
            .. design.Works.Rack.Steel.Parts.Select(part => (part.ToString(), part.MassKg)),
            .. design.Takeoff.Lines.Select(line => (line.ToString(), line.Quantity)),
            .. design.Sizing.Verdicts.Select(verdict => (verdict.ToString(), verdict.Cost ?? 0)),
            .. design.Trace.LevelM3.Select(level => ("tank", level)),
            ("rack", design.Works.Rack.MassKg),
            ("earth", design.Works.Guard.Earth.EarthOhm),
        ];

    private static IEnumerable<string> Texts(Design design) =>
        [
            .. design.Findings.Select(finding => finding.Says),
            .. design.Notes.Select(note => $"{note.What} {note.Chosen} {note.Why}"),
            .. design.Survey.Assumptions.Select(assumption => assumption.Taken),
            .. design.Sizing.Verdicts.Select(verdict => verdict.Outcome),
            .. design.Workings.SelectMany(sheet => sheet.Lines).Select(line => line.Numbers),
            .. design.Takeoff.Lines.Select(line => line.Origin),
        ];
}

using System.Reflection;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Cli;

/// <summary><c>shaduf verify</c>.</summary>
internal static class VerifyCommand
{
    private static readonly (Assembly Trade, IReadOnlyList<PublishedCheck> Checks)[] Trades =
    [
        (typeof(Sun.PublishedChecks).Assembly, Sun.PublishedChecks.All),
        (typeof(Water.PublishedChecks).Assembly, Water.PublishedChecks.All),
        (typeof(Power.PublishedChecks).Assembly, Power.PublishedChecks.All),
        (typeof(Steel.PublishedChecks).Assembly, Steel.PublishedChecks.All),
        (typeof(Ground.PublishedChecks).Assembly, Ground.PublishedChecks.All),
        (typeof(Workshop.PublishedChecks).Assembly, Workshop.PublishedChecks.All),
        (typeof(Money.PublishedChecks).Assembly, Money.PublishedChecks.All),
        (typeof(Programme.PublishedChecks).Assembly, Programme.PublishedChecks.All),
    ];

    private static readonly IReadOnlyList<OracleCheck> Oracle =
    [
        .. Sun.OracleChecks.All,
        .. Water.OracleChecks.All,
        .. Power.OracleChecks.All,
        .. Steel.OracleChecks.All,
        .. Workshop.OracleChecks.All,
    ];

    /// <summary>Computes every published case and every quantity of the independent figures.</summary>
    /// <param name="isAllShown">Whether the published cases that agree are listed too.</param>
    /// <param name="output">Where to report.</param>
    /// <returns>Exit code: 1 when a check is missed.</returns>
    public static int Run(bool isAllShown, TextWriter output)
    {
        var verdicts = Trades.SelectMany(trade => Published.Verify(trade.Trade, trade.Checks)).ToList();
        foreach (var verdict in verdicts.Where(verdict => isAllShown || !verdict.Agrees))
        {
            var row = verdict.Case;
            var deviation = verdict.Obtained - row.Expected;
            output.WriteLine(
                Invariant(
                    $"{(verdict.Agrees ? "agrees" : "MISSED")}  {row.Method}  {row.Id}  {row.Quantity}: expected {row.Expected:0.######} {row.Unit}, obtained {verdict.Obtained:0.######}, deviation {deviation:0.######}, tolerance {row.Tolerance:0.######}; {row.Source} ({row.Confirmed}){(verdict.Trouble.Length > 0 ? $"; {verdict.Trouble}" : "")}"
                )
            );
        }

        foreach (var method in verdicts.GroupBy(verdict => verdict.Case.Method))
        {
            output.WriteLine(
                Invariant($"{method.Key}: {method.Count(verdict => verdict.Agrees)} of {method.Count()} agree")
            );
        }

        var independent = Oracle.Select(check => check.Verify()).ToList();
        output.WriteLine(
            "Independent figures, own computation with general libraries; each line is a file and quantity:"
        );
        independent.ForEach(verdict => output.WriteLine(Line(verdict)));
        var missed = verdicts.Count(verdict => !verdict.Agrees) + independent.Count(verdict => !verdict.Agrees);
        output.WriteLine(Invariant($"{verdicts.Count + independent.Count} checks, {missed} missed"));
        return missed == 0 ? ExitCode.Done : ExitCode.OurFault;
    }

    private static string Line(OracleVerdict verdict)
    {
        var (check, margin) = (verdict.Check, verdict.Check.Margin);
        var unit = margin.Unit.Length > 0 ? $" {margin.Unit}" : "";
        var trouble = verdict.Trouble.Length > 0 ? $"; {verdict.Trouble}" : "";
        return Invariant(
            $"{(verdict.Agrees ? "agrees" : "MISSED")}  {check.File}  {check.Quantity}: {verdict.Count} figures, largest deviation {verdict.Largest:G2}{unit}, tolerance {margin.Most:G3}{unit}{trouble}"
        );
    }
}

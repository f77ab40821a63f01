using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Keeps the rows of a log in order of time: gaps, rows that stand twice, clocks that go back.</summary>
/// <param name="faults">Takes what is wrong.</param>
/// <param name="intervalS">Usual time from row to row [s].</param>
internal sealed class LogOrder(LogFaults faults, int intervalS)
{
    private const double GapFactor = 1.5;
    private const int HourS = 3600;

    private LogRow last;
    private long highest = -1;
    private bool isBack;

    /// <summary>Rows that are missing.</summary>
    public long MissingCount { get; private set; }

    /// <summary>Rows for times that were told before.</summary>
    public long ApartCount { get; private set; }

    /// <summary>Water of those rows [m³].</summary>
    public double ApartM3 { get; private set; }

    /// <summary>Whether a row is counted, and for how long it speaks.</summary>
    /// <param name="row">The row.</param>
    /// <param name="hours">Time that it speaks for [h].</param>
    public bool Takes(in LogRow row, out double hours)
    {
        hours = (double)intervalS / HourS;
        if (highest >= 0 && row.Second == last.Second)
        {
            Repeated(row);
            return false;
        }

        if (row.Second <= highest)
        {
            Back(row, hours);
            return false;
        }

        if (highest >= 0)
        {
            var step = row.Second - highest;
            hours = Math.Min(step, intervalS) / (double)HourS;
            if (step > GapFactor * intervalS)
            {
                Gap(row, step);
            }
        }

        (isBack, highest, last) = (false, row.Second, row);
        return true;
    }

    private void Repeated(LogRow row)
    {
        var (at, before) = (row.At, last.Line);
        var isSame = row.TellsTheSame(last);
        faults.Add(
            row.Line,
            0,
            isSame ? LogFaultKind.Repeated : LogFaultKind.Contradicts,
            () =>
                Invariant(
                    $"{at:yyyy-MM-dd HH:mm} stands on line {before} too{(isSame ? "" : ", with other figures")}: the first is counted"
                )
        );
    }

    // A row for a time that was told before is counted apart: nothing is lost, nothing stands twice in a week.
    private void Back(LogRow row, double hours)
    {
        var reached = new DateTime(highest * TimeSpan.TicksPerSecond);
        if (!isBack)
        {
            var backMin = (highest + intervalS - row.Second) / 60;
            faults.Add(
                row.Line,
                0,
                LogFaultKind.ClockBack,
                () =>
                    Invariant(
                        $"the clock goes back {backMin} min, to {row.At:yyyy-MM-dd HH:mm}{(backMin == 60 ? " (set back from summer time?)" : "")}: the rows until it reaches {reached:yyyy-MM-dd HH:mm} again are counted apart, not in the weeks"
                    )
            );
        }

        (isBack, last) = (true, row);
        ApartCount++;
        ApartM3 += Math.Max(0, row.FlowM3PerH ?? 0) * hours;
    }

    private void Gap(LogRow row, long step)
    {
        var from = new DateTime(highest * TimeSpan.TicksPerSecond);
        var missing = (long)Math.Round((double)step / intervalS) - 1;
        MissingCount += missing;
        faults.Add(
            row.Line,
            0,
            LogFaultKind.Gap,
            () =>
                Invariant(
                    $"nothing from {from:yyyy-MM-dd HH:mm} to {row.At:yyyy-MM-dd HH:mm}: rows missing: {missing}{(step - intervalS == HourS ? " (an hour: a clock set to summer time?)" : "")}; nothing is put in their place"
                )
        );
    }
}

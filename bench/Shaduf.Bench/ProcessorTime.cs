namespace Shaduf.Bench;

/// <summary>Times for a machine that does other work besides: processor time of all threads of this program.</summary>
internal static class ProcessorTime
{
    private static readonly TimeSpan Enough = TimeSpan.FromSeconds(1);

    /// <summary>The first and the least time of as many runs as one second holds, at least two [ms].</summary>
    public static (double FirstMs, double LeastMs) Of(Action run)
    {
        var (first, least, began) = (double.NaN, double.PositiveInfinity, Now);
        while (double.IsPositiveInfinity(least) || Now - began < Enough)
        {
            var before = Now;
            run();
            var ms = (Now - before).TotalMilliseconds;
            (first, least) = double.IsNaN(first) ? (ms, least) : (first, Math.Min(least, ms));
        }

        return (first, least);
    }

    private static TimeSpan Now => Environment.CpuUsage.TotalTime;
}

using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Shaduf.Sun;
using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>
/// Room for year runs one after another, made once: a run in it allocates nothing. First the array pumps, then as many
/// tanks as wished are held against those flows.
/// </summary>
public sealed class YearRoom
{
    // First hour of each month, and of the next year.
    private static readonly ImmutableArray<int> FirstHours =
    [
        .. Enumerable.Range(0, 13).Select(month => 24 * YearCalendar.DaysInMonth.Take(month).Sum()),
    ];

    private readonly double[] flowM3 = new double[YearCalendar.HourCount];
    private readonly double[] demandM3 = new double[12];
    private readonly double[] deliveredM3 = new double[12];
    private readonly double[] pumpedM3 = new double[12];
    private readonly double[] pumpableM3 = new double[12];

    /// <summary>Water asked for in each month [m³].</summary>
    public ReadOnlySpan<double> DemandM3 => demandM3;

    /// <summary>Water that the uses received [m³].</summary>
    public ReadOnlySpan<double> DeliveredM3 => deliveredM3;

    /// <summary>Water pumped into the tank [m³].</summary>
    public ReadOnlySpan<double> PumpedM3 => pumpedM3;

    /// <summary>Water that could have been pumped with a tank that is never full [m³].</summary>
    public ReadOnlySpan<double> PumpableM3 => pumpableM3;

    /// <summary>Water in the tank when the year began [m³].</summary>
    public double StartM3 { get; private set; }

    /// <summary>Water in the tank when it ended [m³].</summary>
    public double EndM3 { get; private set; }

    /// <summary>The flow of each hour from the power of an array.</summary>
    /// <param name="moduleW">Power of one module by hour [W].</param>
    /// <param name="modulesKept">Number of modules times the share of their power that is kept.</param>
    /// <param name="table">Flow by power.</param>
    /// <param name="limits">What may be taken from the source.</param>
    public void Pump(ImmutableArray<double> moduleW, double modulesKept, PumpTable table, SourceLimits limits)
    {
        var module = moduleW.AsSpan();
        for (var month = 0; month < 12; month++)
        {
            var (sum, hourM3, dayM3) = (0.0, limits.HourM3[month], limits.DayM3[month]);
            for (var day = FirstHours[month]; day < FirstHours[month + 1]; day += 24)
            {
                var daySum = 0.0;
                for (var at = day; at < day + 24; at++)
                {
                    var flow = module[at] > 0 ? Math.Min(hourM3, table.FlowM3PerH(module[at] * modulesKept)) : 0;
                    flowM3[at] = flow;
                    daySum += flow;
                }

                sum += Math.Min(dayM3, daySum);
            }

            pumpableM3[month] = sum;
        }
    }

    /// <summary>
    /// Holds a tank against the flows: each hour the tank takes the flow until it is full, and the uses draw what is
    /// there; flow and draw run side by side. The year runs twice, the first time from an empty tank, so that it begins
    /// with the water that such a year leaves. Once a month ends as it did the first time, the rest of the year is known.
    /// </summary>
    /// <param name="drawM3">Water asked for by hour [m³].</param>
    /// <param name="usefulM3">Useful volume of the tank [m³].</param>
    /// <param name="stops">Levels at which pump and outlet stop.</param>
    /// <param name="limits">What may be taken from the source.</param>
    /// <param name="trace">Where the hours are recorded; null to keep only the sums.</param>
    public void Hold(
        ImmutableArray<double> drawM3,
        double usefulM3,
        TankStops stops,
        SourceLimits limits,
        YearTrace? trace = null
    )
    {
        Span<TankState> ends = stackalloc TankState[12];
        var tank = new Tank(usefulM3, stops);
        for (var month = 0; month < 12; month++)
        {
            Pass(month, drawM3.AsSpan(), limits.DayM3[month], ref tank, trace);
            ends[month] = tank.State;
        }

        StartM3 = tank.State.LevelM3;
        for (var month = 0; month < 12; month++)
        {
            Pass(month, drawM3.AsSpan(), limits.DayM3[month], ref tank, trace);
            if (tank.State == ends[month])
            {
                EndM3 = ends[11].LevelM3;
                return;
            }
        }

        EndM3 = tank.State.LevelM3;
    }

    // Compiled in full at once: most of its work is done before a runtime that learns would come to it.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Pass(int month, ReadOnlySpan<double> draw, double dayM3, ref Tank tank, YearTrace? trace)
    {
        var (asked, got, kept, left) = (0.0, 0.0, 0.0, dayM3);
        var (first, next) = (FirstHours[month], FirstHours[month + 1]);
        for (var at = first; at < next; at++)
        {
            left = at % 24 == 0 ? dayM3 : left;

            // An hour in which nothing flows leaves the tank as it is.
            if (trace is null && flowM3[at] == 0 && draw[at] == 0)
            {
                continue;
            }

            var (hourKept, hourGot) = tank.Pass(Math.Min(flowM3[at], left), draw[at]);
            left -= hourKept;
            asked += draw[at];
            got += hourGot;
            kept += hourKept;
            if (trace is not null)
            {
                (trace.PumpedM3[at], trace.DeliveredM3[at], trace.LevelM3[at]) = (
                    hourKept,
                    hourGot,
                    tank.State.LevelM3
                );
            }
        }

        (demandM3[month], deliveredM3[month], pumpedM3[month]) = (asked, got, kept);
    }

    private readonly record struct TankState(double LevelM3, bool IsStopped, bool IsClosed);

    // What is in the tank, and whether pump and outlet are stopped.
    private struct Tank(double usefulM3, TankStops stops)
    {
        private readonly double restartM3 = usefulM3 * stops.RestartShare;
        private readonly double closeM3 = usefulM3 * stops.CloseShare;
        private readonly double reopenM3 = usefulM3 * stops.ReopenShare;
        private double level;
        private bool isStopped;
        private bool isClosed;

        public readonly TankState State => new(level, isStopped, isClosed);

        // One hour: what was pumped into the tank, and what the uses received.
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public (double KeptM3, double GotM3) Pass(double flow, double draw)
        {
            isStopped &= level > restartM3;
            isClosed &= level < reopenM3;
            var (kept, got) = (isStopped ? 0 : flow, isClosed ? 0 : draw);
            var balance = level + kept - got;
            if (balance >= usefulM3)
            {
                kept -= balance - usefulM3;
                level = usefulM3;
                isStopped = true;
            }
            else if (balance <= closeM3 && got > 0)
            {
                got = Math.Min(got, Math.Max(0, level + kept - closeM3));
                level = level + kept - got;
                isClosed = true;
            }
            else
            {
                level = balance;
            }

            return (kept, got);
        }
    }
}

using Shaduf.Sun;

namespace Shaduf.Station;

/// <summary>Adds the rows of a log up, week by week; what it keeps grows with the weeks only.</summary>
internal sealed class LogTally
{
    private const int DayS = 86_400;
    private const int NightFromH = 22;
    private const int NightUntilH = 4;
    private const int RestUntilH = 5;

    // A night must be told nearly whole [h]; light that shows the day [W/m²]; light in which the array is judged [W/m²];
    // share of the power's range above which the pump is judged: judgement.
    private const double LeastNightH = 5;
    private const double DayWPerM2 = 50;
    private const double ArrayWPerM2 = 200;
    private const double PumpFromShare = 0.2;
    private const double FullShare = 0.97;

    private readonly LogExpectation expectation;
    private readonly Place place;
    private readonly bool hasLight;
    private readonly double tankM2;
    private readonly (double StartW, double FullW, double FullM3PerH) pump;
    private readonly List<LogWeek> weeks = [];
    private WeekSums sums = new();
    private long firstDay = -1;
    private long week;
    private long day = -1;
    private int month;
    private (long First, long Last) lit;
    private (long First, double FirstM, long Last, double LastM) night;
    private (double MH, double H) restNow;
    private double? restM;

    /// <summary>Begins a tally.</summary>
    public LogTally(Design design, bool hasLight)
    {
        (expectation, this.hasLight, place) = (new(design), hasLight, design.Brief.Site.Place);
        var (tank, table) = (design.Choice.Tank, design.Sizing.Table);
        tankM2 = tank.VolumeM3 * design.Choice.TankCount / tank.HeightM;
        pump = (table.StartPowerW, table.FullPowerW, table.FullFlowM3PerH);
    }

    /// <summary>Largest light told [W/m²].</summary>
    public double MostLightWPerM2 { get; private set; }

    /// <summary>The weeks, once all rows are in.</summary>
    public IReadOnlyList<LogWeek> Weeks()
    {
        EndNight();
        EndDay();
        EndWeek();
        return weeks;
    }

    /// <summary>Adds a row.</summary>
    /// <param name="row">The row; later than the one before it.</param>
    /// <param name="hours">Time that it speaks for [h].</param>
    public void Add(in LogRow row, double hours)
    {
        var middle = row.Second - (long)(hours * 1800);
        if (middle / DayS != day)
        {
            BeginDay(middle / DayS);
        }

        var hour = (int)(middle % DayS) / 3600;
        var slot = (month * 24) + hour;
        sums.LoggedH += hours;
        var stands = Stands(row);
        Work(row, hours, slot, stands);
        Night(row, hours, hour, stands);
        if (row.LightWPerM2 is { } light)
        {
            MostLightWPerM2 = Math.Max(MostLightWPerM2, light);
            if (light > DayWPerM2)
            {
                lit = (lit.First == 0 ? middle : lit.First, middle);
            }
        }
    }

    private bool? Stands(in LogRow row) =>
        row.PowerW is { } power ? power < pump.StartW / 2
        : row.FlowM3PerH is { } flow ? flow < 0.02 * pump.FullM3PerH
        : null;

    private void Work(in LogRow row, double hours, int slot, bool? stands)
    {
        var expectedW = hasLight
            ? (row.LightWPerM2 is { } light ? expectation.PowerW(slot, light) : (double?)null)
            : expectation.TypicalW(slot);
        var stood = hasLight && stands == true && expectedW > 1.2 * pump.StartW;
        sums.StoodH += stood ? hours : 0;
        if (row.FlowM3PerH is { } flow)
        {
            sums.WaterM3 += Math.Max(0, flow) * hours;
            sums.ExpectedM3 +=
                expectedW is null || stood ? 0
                : hasLight ? expectation.FlowM3PerH(expectedW.Value, restM) * hours
                : expectation.TypicalM3PerH(slot) * hours;
        }

        if (row.PowerW is not { } power)
        {
            return;
        }

        sums.EnergyWh += Math.Max(0, power) * hours;
        sums.ExpectedWh +=
            expectedW is { } watts && !stood ? (watts >= pump.StartW || !hasLight ? watts : 0) * hours : 0;
        if (row.LightWPerM2 >= ArrayWPerM2 && stands == false && expectedW < FullShare * pump.FullW)
        {
            var array = sums.Array;
            sums.Array = (array.H + hours, array.Wh + (power * hours), array.ExpectedWh + (expectedW.Value * hours));
        }

        if (row.FlowM3PerH is { } pumped && power >= pump.StartW + (PumpFromShare * (pump.FullW - pump.StartW)))
        {
            var so = sums.Pump;
            var promised = expectation.FlowM3PerH(power, restM);
            sums.Pump = (so.H + hours, so.M3 + (pumped * hours), so.ExpectedM3 + (promised * hours));
        }
    }

    private void Night(in LogRow row, double hours, int hour, bool? stands)
    {
        if (hour is >= NightUntilH and < NightFromH)
        {
            EndNight();
        }
        else
        {
            if (row.TankM is { } tankM)
            {
                night =
                    night.First == 0
                        ? (row.Second, tankM, row.Second, tankM)
                        : night with
                        {
                            Last = row.Second,
                            LastM = tankM,
                        };
            }

            if (stands == true && row.FlowM3PerH is { } flow)
            {
                sums.NightFlow = (sums.NightFlow.M3 + (Math.Abs(flow) * hours), sums.NightFlow.H + hours);
            }
        }

        if (hour < RestUntilH && stands == true && row.LevelM is { } level)
        {
            restNow = (restNow.MH + (level * hours), restNow.H + hours);
            sums.Rest = (sums.Rest.MH + (level * hours), sums.Rest.H + hours);
        }
        else if (hour >= RestUntilH && restNow.H > 0)
        {
            (restM, restNow) = (restNow.MH / restNow.H, default);
        }
    }

    private void EndNight()
    {
        var hours = (night.Last - night.First) / 3600.0;
        if (hours >= LeastNightH)
        {
            var lost = (night.FirstM - night.LastM) * tankM2 / hours;
            sums.NightLossM3PerH = Math.Min(sums.NightLossM3PerH ?? lost, lost);
        }

        night = default;
    }

    private void BeginDay(long next)
    {
        if (firstDay < 0)
        {
            firstDay = next;
        }

        EndDay();
        if ((next - firstDay) / 7 != week)
        {
            EndWeek();
            week = (next - firstDay) / 7;
        }

        day = next;
        month = DateOnly.FromDayNumber((int)next).Month - 1;
    }

    // The middle between the first and the last light of a day is the sun's noon, whatever clouds do between them.
    private void EndDay()
    {
        if (lit.Last - lit.First > 6 * 3600)
        {
            var middleH = ((lit.First + lit.Last) / 2.0 % DayS) / 3600;
            var date = DateOnly.FromDayNumber((int)day);
            sums.AddClockOff((middleH - ClockShift.TransitH(place, date.DayOfYear)) * 60);
        }

        lit = default;
    }

    private void EndWeek()
    {
        if (sums.LoggedH > 0)
        {
            weeks.Add(sums.Of(DateOnly.FromDayNumber((int)(firstDay + (7 * week))), hasLight));
        }

        sums = new();
    }
}

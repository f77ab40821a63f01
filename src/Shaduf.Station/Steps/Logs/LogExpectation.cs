using Shaduf.Power;
using Shaduf.Sun;
using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>
/// What the station should do in an interval: with the light that was logged, or, where none was, as in the mean of the
/// design's hours of that month and time of day.
/// </summary>
internal sealed class LogExpectation
{
    private const int Slots = 12 * 24;

    private readonly Design design;
    private readonly ModuleTable module;
    private readonly Dictionary<int, PumpTable> tables = [];
    private readonly double modulesKept;
    private readonly double[] airDegC;
    private readonly double[] atCellsShare;
    private readonly double[] typicalW;
    private readonly double[] typicalM3PerH;

    /// <summary>Prepares the expectation of a design.</summary>
    public LogExpectation(Design design)
    {
        this.design = design;
        module = ModuleTable.Build(DeSotoFit.Of(design.Choice.Module.Sheet).Module);
        modulesKept = design.Choice.ModuleCount * design.Sizing.Losses.KeptShare;
        var (light, trace, table) = (design.Sky.Light, design.Trace, design.Sizing.Table);
        airDegC = Means(hour => design.Sky.Year.AirDegC[hour]);
        var plane = Means(hour => light.PlaneWPerM2[hour]);
        var cells = Means(hour => light.EffectiveWPerM2[hour]);
        atCellsShare = [.. plane.Zip(cells, (front, behind) => front > 1 ? Math.Min(1, behind / front) : 1)];
        typicalM3PerH = Means(hour => trace.PumpedM3[hour]);
        typicalW = Means(hour => trace.PumpedM3[hour] > 0 ? Math.Min(trace.ArrayW[hour], table.FullPowerW) : 0);
    }

    /// <summary>Month and hour of the day in which an interval's middle lies.</summary>
    public static int SlotOf(DateTime middle) => ((middle.Month - 1) * 24) + middle.Hour;

    /// <summary>Mean power at the drive's input in a month and hour of the day [W].</summary>
    public double TypicalW(int slot) => typicalW[slot];

    /// <summary>Mean flow in a month and hour of the day, tank stops included [m³/h].</summary>
    public double TypicalM3PerH(int slot) => typicalM3PerH[slot];

    /// <summary>Power that the array gives in a light, what the pump cannot take left out [W].</summary>
    public double PowerW(int slot, double lightWPerM2)
    {
        var light = Math.Clamp(lightWPerM2, 0, DeSoto.MostWPerM2);
        var cell = CellTemperature.DegCByNoct(light, airDegC[slot], design.Choice.Module.Sheet.NoctDegC);
        return Math.Min(modulesKept * module.PowerW(light * atCellsShare[slot], cell), design.Sizing.Table.FullPowerW);
    }

    /// <summary>Flow at a power with the water at a depth before pumping [m³/h].</summary>
    /// <param name="powerW">Power at the drive's input [W].</param>
    /// <param name="restM">Depth [m]; null for that of the dry season, which the design counts with.</param>
    public double FlowM3PerH(double powerW, double? restM)
    {
        // To the metre: the head of a borehole hardly changes with less.
        var table = restM is { } depth ? At((int)Math.Round(depth)) : design.Sizing.Table;
        return table.FlowM3PerH(powerW);
    }

    private PumpTable At(int restM)
    {
        if (!tables.TryGetValue(restM, out var table))
        {
            table = Promise.TableOfDay(design, restM);
            tables.Add(restM, table);
        }

        return table;
    }

    private static double[] Means(Func<int, double> of)
    {
        var sums = new double[Slots];
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            sums[(YearCalendar.MonthOf(hour) * 24) + (hour % 24)] += of(hour);
        }

        return [.. sums.Select((sum, slot) => sum / YearCalendar.DaysInMonth[slot / 24])];
    }
}

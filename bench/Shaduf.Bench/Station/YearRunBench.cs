using BenchmarkDotNet.Attributes;
using Shaduf.Station;
using Shaduf.Sun;

namespace Shaduf.Bench.Station;

/// <summary>The year run of the hilltop village, its sky and pump table prepared; and the floor it is held against.</summary>
[MemoryDiagnoser]
public class YearRunBench
{
    private readonly YearRoom room = new();
    private YearInputs inputs = null!;

    [GlobalSetup]
    public void Prepare()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Shaduf.slnx")))
        {
            folder = folder.Parent!;
        }

        var brief = Path.Combine(folder.FullName, "examples", "hilltop-village", "station.yaml");
        var design = DesignRun.Run(StationFile.Read(brief));
        inputs = design.Sizing.Inputs(design.Demand);
    }

    [Benchmark]
    public double Run()
    {
        room.Pump(inputs.ModuleW, inputs.ModulesKept, inputs.Table, inputs.Limits);
        room.Hold(inputs.DrawM3, inputs.UsefulM3, inputs.Stops, inputs.Limits);
        return room.EndM3;
    }

    /// <summary>Another tank on the same array.</summary>
    [Benchmark]
    public double Hold()
    {
        room.Hold(inputs.DrawM3, inputs.UsefulM3, inputs.Stops, inputs.Limits);
        return room.EndM3;
    }

    /// <summary>The floor: one table look-up and one addition for each hour.</summary>
    [Benchmark(Baseline = true)]
    public double LookUpsOnly()
    {
        var sum = 0.0;
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            sum += inputs.Table.FlowM3PerH(inputs.ModuleW[hour] * inputs.ModulesKept);
        }

        return sum;
    }
}

using BenchmarkDotNet.Attributes;
using Shaduf.Station;
using Shaduf.Sun;

namespace Shaduf.Bench.Station;

/// <summary>The year run of the hilltop village, its sky and pump table prepared; and the floor it is held against.</summary>
[MemoryDiagnoser]
public class YearRunBench
{
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
    public YearRun Run() => YearRun.Run(inputs);

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

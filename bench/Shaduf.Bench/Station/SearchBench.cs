using BenchmarkDotNet.Attributes;
using Shaduf.Station;

namespace Shaduf.Bench.Station;

/// <summary>The search of arrangements of two examples, sky, demand and well prepared; the prices of racks are not.</summary>
[MemoryDiagnoser]
public class SearchBench
{
    private StationFile file = null!;
    private Design design = null!;

    [Params("hilltop-village", "homestead")]
    public string Example { get; set; } = "";

    [GlobalSetup]
    public void Prepare()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Shaduf.slnx")))
        {
            folder = folder.Parent!;
        }

        file = StationFile.Read(Path.Combine(folder.FullName, "examples", Example, "station.yaml"));
        design = DesignRun.Run(file);
    }

    [Benchmark]
    public Sizing Search() =>
        Sizing.Of(
            new(
                file.Brief,
                design.Survey,
                design.Sky,
                design.Demand,
                design.Source,
                file.Shelf,
                new ArrangementPrices(file.Brief, file.Shelf, file.Prices)
            )
        );
}

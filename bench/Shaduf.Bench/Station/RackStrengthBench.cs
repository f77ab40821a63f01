using BenchmarkDotNet.Attributes;
using Shaduf.Ground;
using Shaduf.Station;

namespace Shaduf.Bench.Station;

/// <summary>An example's rack: loaded, analysed and checked in every combination; the choice of its form and sections; its blocks.</summary>
[MemoryDiagnoser]
public class RackStrengthBench
{
    private Design design = null!;
    private SizingGround ground = null!;
    private RackStrength strength = null!;

    [Params("homestead", "market-garden", "hilltop-village", "river-terrace")]
    public string Example { get; set; } = "";

    [GlobalSetup]
    public void Prepare() => Prepare(PathOf(Example));

    /// <summary>The brief of an example.</summary>
    public static string PathOf(string example)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Shaduf.slnx")))
        {
            folder = folder.Parent!;
        }

        return Path.Combine(folder.FullName, "examples", example, "station.yaml");
    }

    /// <summary>Designs a brief's station, so that its rack can be measured alone.</summary>
    public void Prepare(string brief)
    {
        var file = StationFile.Read(brief);
        design = DesignRun.Run(file);
        strength = design.Works.RackChoice.Taken.Strength!;
        ground = new(
            file.Brief,
            design.Survey,
            design.Sky,
            design.Demand,
            design.Source,
            file.Shelf,
            new ArrangementPrices(file.Brief, file.Shelf, file.Prices)
        );
    }

    [Benchmark]
    public RackStrength? AnalysedAndChecked() =>
        RackStrength.Of(design.Works.Rack, ground.Brief, ground.Survey, ground.Shelf);

    [Benchmark]
    public FootingBlock? FootingsChosen() =>
        FootingChoice.Least(strength, FootingGround.Of(ground.Brief.Site), null, null)?.Block;

    [Benchmark]
    public RackChoice Chosen() =>
        RackChoice.Of(ground, design.Choice.Module, design.Choice.Grid, design.Choice.Facing.TiltDeg);

    [Benchmark]
    public object Footed() => FootingChoice.Of(ground, design.Works.RackChoice.Taken, design.Choice.Module);
}

using BenchmarkDotNet.Attributes;
using Shaduf.Station;

namespace Shaduf.Bench.Station;

/// <summary>Plain school's stand, and one of eight legs with some 150 members: loaded, analysed and checked in every combination; and the choice of its sections.</summary>
[MemoryDiagnoser]
public class StandStrengthBench
{
    private StandSite site = null!;
    private TankCard tank = null!;
    private TankStand small = null!;
    private TankStand large = null!;
    private StandStrength strength = null!;

    [GlobalSetup]
    public void Prepare()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Shaduf.slnx")))
        {
            folder = folder.Parent!;
        }

        var file = StationFile.Read(Path.Combine(folder.FullName, "examples", "plain-school", "station.yaml"));
        var brief = file.Brief with { Tank = file.Brief.Tank with { GivenStandM = 6 } };
        site = new(brief, Survey.Of(brief), file.Shelf);
        tank = file.Shelf.Find<TankCard>("tank-5")!;
        strength = StandDesign.Of(site, tank, 1)!.Strength;
        small = strength.Stand;
        var eight = brief with
        {
            Tank = brief.Tank with { Stand = StandBrief.Open with { LegCount = 8, BayCount = 4 } },
        };
        large = StandDesign.Of(site with { Brief = eight }, file.Shelf.Find<TankCard>("tank-10")!, 1)!.Stand;
        var loads = StandStrength.Of(large, site.Brief, site.Survey, site.Shelf).Combinations.Strength.Count;
        Console.WriteLine(
            $"// {loads} combinations; {small.Skeleton.Members.Count} and {large.Skeleton.Members.Count} members"
        );
    }

    [Benchmark]
    public StandStrength FourLegs() => StandStrength.Of(small, site.Brief, site.Survey, site.Shelf);

    [Benchmark]
    public StandStrength EightLegs() => StandStrength.Of(large, site.Brief, site.Survey, site.Shelf);

    [Benchmark]
    public Footings Footed() => StandFootings.Of(site, strength, 1);

    [Benchmark]
    public StandDesign? Chosen() => StandDesign.Of(site, tank, 1);
}

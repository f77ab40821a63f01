using BenchmarkDotNet.Attributes;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Bench.Steel;

/// <summary>A rack-like frame: posts in two lines, rails along them, rafters across. From 50 to 5,000 members.</summary>
[MemoryDiagnoser]
public class FrameAnalysisBench
{
    private const int CombinationCount = 12;
    private static readonly FrameSection Tube = new(540.8, 194_671, 194_671, 321_347);
    private FrameModel model = Rack(10);
    private FrameAnalysis frame = FrameAnalysis.Of(Rack(10));

    // A bay has five members: two posts, two rails, a rafter.
    [Params(10, 16, 100, 1000)]
    public int BayCount { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        model = Rack(BayCount);
        frame = FrameAnalysis.Of(model);
    }

    [Benchmark]
    public FrameAnalysis Ready() => FrameAnalysis.Of(model);

    [Benchmark]
    public double TwelveCombinations()
    {
        var ready = FrameAnalysis.Of(model);
        var sum = 0.0;
        for (var i = 0; i < CombinationCount; i++)
        {
            sum += ready.Solve(Wind(i)).Reactions[0].Force.ZN;
        }

        return sum;
    }

    [Benchmark]
    public double? Critical() => frame.CriticalFactor(frame.Solve(Wind(0)));

    private LoadCase Wind(int direction)
    {
        var push = new Force(0.1 * direction, 0.3, -0.8 - (0.05 * direction));
        return new("wind", [], [.. Enumerable.Range(0, model.Members.Count).Select(i => new SpreadLoad(i, push))], []);
    }

    private static FrameModel Rack(int bays)
    {
        var nodes = new List<Point>();
        var members = new List<FrameMember>();
        for (var bay = 0; bay <= bays; bay++)
        {
            var x = bay * 1100.0;
            nodes.AddRange([new(x, 0, 0), new(x, 0, 800), new(x, 2000, 0), new(x, 2000, 1400)]);
            var at = bay * 4;
            members.Add(new("front post", at, at + 1, Tube, new(0, 1, 0)));
            members.Add(new("back post", at + 2, at + 3, Tube, new(0, 1, 0)));
            members.Add(new("rafter", at + 1, at + 3, Tube, new(1, 0, 0)));
            if (bay > 0)
            {
                members.Add(new("front rail", at - 3, at + 1, Tube, new(0, 0, 1)));
                members.Add(new("back rail", at - 1, at + 3, Tube, new(0, 0, 1)));
            }
        }

        var feet = Enumerable.Range(0, bays + 1).SelectMany(bay => new[] { bay * 4, (bay * 4) + 2 });
        return new(nodes, members, [.. feet.Select(node => new FrameSupport(node, FrameFix.Clamped))]);
    }
}

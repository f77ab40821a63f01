using System.Text.Json;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

/// <summary>Space frames computed by an independent program (Oracle/frame_*.json, metres and newtons there).</summary>
public sealed class FrameOracleTests
{
    private const double Share = 1e-3;

    public static TheoryData<string> Names => ["cantilever-a", "ell-a", "portal-a", "rack-a"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Movements_reactions_and_end_forces_agree(string name)
    {
        var (root, result) = Solved(name);
        var expected = root.GetProperty("results");
        var nodes = Ids(root.GetProperty("nodes"));
        var members = Ids(root.GetProperty("members"));
        var moved = expected.GetProperty("displacements").EnumerateArray().Select(row => (row, key: "u")).ToList();
        AssertNear(
            moved.SelectMany(each => Six(each.row.GetProperty("u"), 1000, 1)),
            moved.SelectMany(each => SixOf(result.Movements[nodes[Id(each.row, "node")]]))
        );
        var reactions = expected.GetProperty("reactions").EnumerateArray().ToList();
        AssertNear(
            reactions.SelectMany(row => Six(row.GetProperty("r"), 1, 1000)),
            reactions.SelectMany(row => SixOf(result.Reactions.Single(r => r.Node == nodes[Id(row, "node")])))
        );
        var ends = expected.GetProperty("member_end_forces").EnumerateArray().ToList();
        AssertNear(
            ends.SelectMany(row => Six(row.GetProperty("i"), 1, 1000).Concat(Six(row.GetProperty("j"), 1, 1000))),
            ends.SelectMany(row => EndsOf(result, members[Id(row, "member")]))
        );
        Assert.InRange(result.ImbalanceShare, 0, 1e-9);
    }

    internal static (FrameModel Model, LoadCase Loads) Read(JsonElement root)
    {
        var nodes = Ids(root.GetProperty("nodes"));
        var members = Ids(root.GetProperty("members"));
        var rows = root.GetProperty("members").EnumerateArray().ToList();
        return (
            new(
                [.. root.GetProperty("nodes").EnumerateArray().Select(row => PointOf(row, 1000))],
                [.. rows.Select(row => Member(row, nodes))],
                [.. root.GetProperty("supports").EnumerateArray().Select(row => Support(row, nodes))],
                rows[0].GetProperty("E").GetDouble() / 1e6,
                rows[0].GetProperty("G").GetDouble() / 1e6
            ),
            new(
                root.GetProperty("title").GetString()!,
                [
                    .. root.GetProperty("nodal_loads")
                        .EnumerateArray()
                        .Select(row => NodeLoadOf(nodes[Id(row, "node")], [.. Six(row.GetProperty("f"), 1, 1000)])),
                ],
                [
                    .. root.GetProperty("member_loads")
                        .EnumerateArray()
                        .Select(row => new SpreadLoad(
                            members[Id(row, "member")],
                            ForceOf([.. Three(row.GetProperty("w_global"))]) * 1e-3
                        )),
                ],
                []
            )
        );
    }

    internal static JsonElement Root(string name) =>
        JsonDocument
            .Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Oracle", $"frame_{name}.json")))
            .RootElement;

    private static (JsonElement Root, FrameResult Result) Solved(string name)
    {
        var root = Root(name);
        var (model, loads) = Read(root);
        return (root, FrameAnalysis.Of(model).Solve(loads));
    }

    // Within a share of each figure, or of the largest figure of its kind (force or moment) where it is all but nothing.
    private static void AssertNear(IEnumerable<double> expected, IEnumerable<double> obtained)
    {
        var pairs = expected.Zip(obtained).Select((pair, i) => (pair.First, pair.Second, Kind: i % 6 / 3)).ToList();
        Assert.NotEmpty(pairs);
        foreach (var kind in pairs.GroupBy(pair => pair.Kind))
        {
            var largest = kind.Max(pair => Math.Abs(pair.First));
            Assert.All(
                kind,
                pair =>
                    Assert.True(
                        Math.Abs(pair.First - pair.Second) <= Math.Max(Share * Math.Abs(pair.First), 1e-6 * largest),
                        $"expected {pair.First}, obtained {pair.Second}"
                    )
            );
        }
    }

    private static Dictionary<int, int> Ids(JsonElement rows) =>
        rows.EnumerateArray().Select((row, i) => (Id: Id(row, "id"), i)).ToDictionary(each => each.Id, each => each.i);

    private static int Id(JsonElement row, string name) => row.GetProperty(name).GetInt32();

    private static Point PointOf(JsonElement row, double scale) =>
        new(
            row.GetProperty("x").GetDouble() * scale,
            row.GetProperty("y").GetDouble() * scale,
            row.GetProperty("z").GetDouble() * scale
        );

    private static FrameMember Member(JsonElement row, Dictionary<int, int> nodes)
    {
        var side = Three(row.GetProperty("orient")).ToList();
        return new(
            row.GetProperty("id").ToString(),
            nodes[Id(row, "i")],
            nodes[Id(row, "j")],
            new(
                row.GetProperty("A").GetDouble() * 1e6,
                row.GetProperty("Iy").GetDouble() * 1e12,
                row.GetProperty("Iz").GetDouble() * 1e12,
                row.GetProperty("J").GetDouble() * 1e12
            ),
            new(side[0], side[1], side[2])
        );
    }

    private static FrameSupport Support(JsonElement row, Dictionary<int, int> nodes) =>
        new(
            nodes[Id(row, "node")],
            row.GetProperty("fix")
                .EnumerateArray()
                .Select((fix, i) => fix.GetInt32() == 1 ? (FrameFix)(1 << i) : FrameFix.None)
                .Aggregate((a, b) => a | b)
        );

    private static NodeLoad NodeLoadOf(int node, IReadOnlyList<double> f) =>
        new(node, new(f[0], f[1], f[2]), new(f[3], f[4], f[5]));

    private static Force ForceOf(IReadOnlyList<double> f) => new(f[0], f[1], f[2]);

    private static IEnumerable<double> Three(JsonElement row) => row.EnumerateArray().Select(each => each.GetDouble());

    private static IEnumerable<double> Six(JsonElement row, double first, double last) =>
        Three(row).Select((figure, i) => figure * (i < 3 ? first : last));

    private static IEnumerable<double> SixOf(NodeMovement move) =>
        [move.MoveMm.XMm, move.MoveMm.YMm, move.MoveMm.ZMm, move.TurnXRad, move.TurnYRad, move.TurnZRad];

    private static IEnumerable<double> SixOf(Reaction reaction) =>
        [
            reaction.Force.XN,
            reaction.Force.YN,
            reaction.Force.ZN,
            reaction.Moment.XNMm,
            reaction.Moment.YNMm,
            reaction.Moment.ZNMm,
        ];

    private static IEnumerable<double> EndsOf(FrameResult result, int member)
    {
        var (start, end) = result.EndsOf(member);
        return SixOf(new Reaction(0, start.Force, start.Moment)).Concat(SixOf(new Reaction(0, end.Force, end.Moment)));
    }
}

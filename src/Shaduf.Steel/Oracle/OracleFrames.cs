using System.Text.Json;
using Shaduf.Shape;
using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Space frames beside independent figures (metres and newtons in the files).</summary>
internal static class OracleFrames
{
    // What is all but nothing is held to a millionth of the largest figure of its kind.
    private static readonly Margin Met = new(0.1, "%", Least: 1e-3);

    internal static IReadOnlyList<OracleCheck> All { get; } =
    [.. new[] { "cantilever-a", "ell-a", "portal-a", "rack-a" }.SelectMany(Frame)];

    private static IEnumerable<OracleCheck> Frame(string name)
    {
        var file = $"frame_{name}.json";
        var solved = new Lazy<(JsonElement Root, FrameResult Result)>(() => Solved(file));
        OracleCheck Check(string quantity, Func<JsonElement, FrameResult, IEnumerable<Six>> compare, bool isLast) =>
            new(file, quantity, Met, () => Scaled(compare(solved.Value.Root, solved.Value.Result), isLast));
        return
        [
            Check("displacements", Movements, isLast: false),
            Check("rotations", Movements, isLast: true),
            Check("reactions, forces", Reactions, isLast: false),
            Check("reactions, moments", Reactions, isLast: true),
            Check("member end forces", Ends, isLast: false),
            Check("member end moments", Ends, isLast: true),
            new(file, "loads and reactions in balance", new(1e-9, ""), () => [(0, solved.Value.Result.ImbalanceShare)]),
        ];
    }

    private static (JsonElement Root, FrameResult Result) Solved(string file)
    {
        var root = JsonDocument.Parse(Csv.EmbeddedText(typeof(OracleFrames).Assembly, file)).RootElement;
        var (model, loads) = Read(root);
        return (root, FrameAnalysis.Of(model).Solve(loads));
    }

    // The first or the last three of each six, in shares of the largest of them.
    private static IEnumerable<(double Expected, double Obtained)> Scaled(IEnumerable<Six> rows, bool isLast)
    {
        var pairs = rows.SelectMany(row => row.Expected.Zip(row.Obtained).Skip(isLast ? 3 : 0).Take(3)).ToList();
        var largest = pairs.Max(pair => Math.Abs(pair.First));
        var scale = largest > 0 ? largest : 1;
        return pairs.Select(pair => (pair.First / scale, pair.Second / scale));
    }

    private static IEnumerable<Six> Movements(JsonElement root, FrameResult result)
    {
        var nodes = Ids(root.GetProperty("nodes"));
        return Results(root, "displacements")
            .Select(row => new Six(
                SixOf(row.GetProperty("u"), 1000, 1),
                SixOf(result.Movements[nodes[Id(row, "node")]])
            ));
    }

    private static IEnumerable<Six> Reactions(JsonElement root, FrameResult result)
    {
        var nodes = Ids(root.GetProperty("nodes"));
        return Results(root, "reactions")
            .Select(row => new Six(
                SixOf(row.GetProperty("r"), 1, 1000),
                SixOf(result.Reactions.Single(reaction => reaction.Node == nodes[Id(row, "node")]))
            ));
    }

    private static IEnumerable<Six> Ends(JsonElement root, FrameResult result)
    {
        var members = Ids(root.GetProperty("members"));
        return Results(root, "member_end_forces")
            .SelectMany(row =>
            {
                var (start, end) = result.EndsOf(members[Id(row, "member")]);
                return new[]
                {
                    new Six(SixOf(row.GetProperty("i"), 1, 1000), SixOf(new Reaction(0, start.Force, start.Moment))),
                    new Six(SixOf(row.GetProperty("j"), 1, 1000), SixOf(new Reaction(0, end.Force, end.Moment))),
                };
            });
    }

    private static JsonElement.ArrayEnumerator Results(JsonElement root, string name) =>
        root.GetProperty("results").GetProperty(name).EnumerateArray();

    private static (FrameModel Model, LoadCase Loads) Read(JsonElement root)
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
                        .Select(row => NodeLoadOf(nodes[Id(row, "node")], [.. SixOf(row.GetProperty("f"), 1, 1000)])),
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

    private static IEnumerable<double> SixOf(JsonElement row, double first, double last) =>
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

    // Three forces or movements and three moments or turns.
    private sealed record Six(IEnumerable<double> Expected, IEnumerable<double> Obtained);
}

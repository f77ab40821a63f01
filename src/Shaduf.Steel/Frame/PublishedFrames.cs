using Shaduf.Shape;
using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>The frames of the published rows. Figures are in one consistent set of units: those of the row's source.</summary>
internal static class PublishedFrames
{
    private const string Method = "steel/frame-analysis";
    private static readonly FrameSection Stiff = new(1e6, 1, 1, 1);

    internal static IReadOnlyList<PublishedCheck> All { get; } =
    [
        new(Method, "simple-moment", row => Middle(Beam(row, FrameFix.Pinned | FrameFix.AboutX, FrameFix.Pinned))),
        new(Method, "simple-deflection", row => Sag(Beam(row, FrameFix.Pinned | FrameFix.AboutX, FrameFix.Pinned))),
        new(Method, "cantilever-tip", CantileverTip),
        new(Method, "propped-moment", row => Beam(row, FrameFix.Clamped, FrameFix.Pinned).At(0, 0).BendingYNMm),
        new(Method, "propped-reaction", row => Beam(row, FrameFix.Clamped, FrameFix.Pinned).Reactions[1].Force.ZN),
        new(Method, "clamped-end", row => Beam(row, FrameFix.Clamped, FrameFix.Clamped).At(0, 0).BendingYNMm),
        new(Method, "clamped-middle", row => Middle(Beam(row, FrameFix.Clamped, FrameFix.Clamped))),
        new(Method, "clamped-deflection", row => Sag(Beam(row, FrameFix.Clamped, FrameFix.Clamped))),
        new(Method, "spans-reaction", row => Spans(row).Reactions[(int)row["support"]].Force.ZN),
        new(Method, "spans-moment", row => Spans(row).At(1, 0).BendingYNMm),
        new(Method, "portal-base", row => Math.Abs(Portal(row).Reactions[1].Moment.YNMm) / 1e6),
        new(Method, "portal-top", row => Math.Abs(Portal(row).EndsOf(2).End.Moment.YNMm) / 1e6),
        new(Method, "portal-sway", row => Portal(row).Movements[2].MoveMm.XMm),
        new(Method, "ell-tip", EllTip),
        new(Method, "bar-torque", row => Math.Abs(Bar().Reactions[(int)row["end"]].Moment.XNMm)),
        new(Method, "space-move", row => Six(Space())[(int)row["direction"]]),
        new(Method, "space-turn", row => Six(Space())[3 + (int)row["direction"]]),
        new(Method, "euler-load", EulerLoad),
        new(Method, "leaning-beam-moment", row => -LeaningBeam(row["axial"]).At(3, 42).BendingYNMm),
        new(Method, "leaning-beam-move", row => -LeaningBeam(row["axial"]).Movements[5].MoveMm.ZMm),
        new(Method, "leaning-cantilever-moment", row => Math.Abs(LeaningCantilever(row).Reactions[0].Moment.YNMm)),
        new(Method, "leaning-cantilever-move", row => LeaningCantilever(row).Movements[1].MoveMm.XMm),
    ];

    // A beam along x that bends in the upright plane.
    private static FrameMember Level(int start, int end, FrameSection? section = null) =>
        new($"{start}", start, end, section ?? Stiff, new(0, 1, 0));

    private static FrameMember Upright(int start, int end, FrameSection section) =>
        new($"{start}", start, end, section, new(0, 1, 0));

    private static LoadCase Loads(IReadOnlyList<NodeLoad> nodes, IReadOnlyList<SpreadLoad> spread) =>
        new("published", nodes, spread, []);

    private static FrameResult Beam(PublishedCase row, FrameFix start, FrameFix end)
    {
        var stiffness = row.Inputs.TryGetValue("stiffness", out var given) ? given : 1000;
        var model = new FrameModel(
            [new(0, 0, 0), new(row["length"], 0, 0)],
            [Level(0, 1)],
            [new(0, start), new(1, end)],
            stiffness,
            1
        );
        return FrameAnalysis.Of(model).Solve(Loads([], [new(0, new(0, 0, -row["load"]))]));
    }

    // A level beam that sags has a moment below zero about its local y.
    private static double Middle(FrameResult beam) => -beam.Extremes(0).Min(place => place.BendingYNMm);

    private static double Sag(FrameResult beam) => -beam.MovementMm(0, 0.5).ZMm;

    private static double CantileverTip(PublishedCase row)
    {
        var model = new FrameModel(
            [new(0, 0, 0), new(row["length"], 0, 0)],
            [Level(0, 1)],
            [new(0, FrameFix.Clamped)],
            row["stiffness"],
            1
        );
        return -FrameAnalysis.Of(model).Solve(Loads([new(1, new(0, 0, -row["force"]))], [])).Movements[1].MoveMm.ZMm;
    }

    private static FrameResult Spans(PublishedCase row)
    {
        var count = (int)row["spans"];
        var spans = Enumerable.Range(0, count).ToList();
        var model = new FrameModel(
            [.. Enumerable.Range(0, count + 1).Select(i => new Point(i * row["length"], 0, 0))],
            [.. spans.Select(i => Level(i, i + 1))],
            [
                .. Enumerable
                    .Range(0, count + 1)
                    .Select(i => new FrameSupport(i, FrameFix.Pinned | (i == 0 ? FrameFix.AboutX : FrameFix.None))),
            ],
            1000,
            1
        );
        return FrameAnalysis
            .Of(model)
            .Solve(Loads([], [.. spans.Select(i => new SpreadLoad(i, new(0, 0, -row["load"])))]));
    }

    // Columns 3 m (I 111.04 cm4), beam 4 m (I 226.35 cm4), all but rigid along their axes.
    private static FrameResult Portal(PublishedCase row)
    {
        var (column, beam) = (
            new FrameSection(1e9, 111.04e4, 111.04e4, 1e6),
            new FrameSection(1e9, 226.35e4, 226.35e4, 1e6)
        );
        var foot = row["clamped"] == 1 ? FrameFix.Clamped : FrameFix.Pinned | FrameFix.AboutX | FrameFix.AboutZ;
        var model = new FrameModel(
            [new(0, 0, 0), new(4000, 0, 0), new(0, 0, 3000), new(4000, 0, 3000)],
            [Upright(0, 2, column), Upright(1, 3, column), Level(2, 3, beam)],
            [new(0, foot), new(1, foot)]
        );
        return FrameAnalysis
            .Of(model)
            .Solve(Loads([new(2, new(row["side"] * 1000, 0, 0))], [new(2, new(0, 0, -row["load"]))]));
    }

    private static double EllTip(PublishedCase row)
    {
        var section = new FrameSection(1e6, 226.35e4, 226.35e4, 362.01e4);
        var model = new FrameModel(
            [new(0, 0, 0), new(row["first"], 0, 0), new(row["first"], row["second"], 0)],
            [Level(0, 1, section), new("1", 1, 2, section, new(1, 0, 0))],
            [new(0, FrameFix.Clamped)]
        );
        return -FrameAnalysis.Of(model).Solve(Loads([new(2, new(0, 0, -row["force"]))], [])).Movements[2].MoveMm.ZMm;
    }

    private static FrameResult Bar()
    {
        var model = new FrameModel(
            [new(0, 0, 0), new(168, 0, 0), new(36, 0, 0), new(132, 0, 0)],
            [Level(0, 2), Level(2, 3), Level(3, 1)],
            [new(0, FrameFix.Clamped), new(1, FrameFix.Clamped)],
            1,
            1
        );
        return FrameAnalysis
            .Of(model)
            .Solve(Loads([new(2, default, new(5, 0, 0)), new(3, default, new(10, 0, 0))], []));
    }

    private static NodeMovement Space()
    {
        var section = new FrameSection(10, 100, 100, 50);
        var model = new FrameModel(
            [new(0, 0, 0), new(-100, 0, 0), new(0, 0, -100), new(0, -100, 0)],
            [
                new("1", 1, 0, section, new(0, 1, 0)),
                new("2", 2, 0, section, new(0, 1, 0)),
                new("3", 3, 0, section, new(1, 0, 0)),
            ],
            [new(1, FrameFix.Clamped), new(2, FrameFix.Clamped), new(3, FrameFix.Clamped)],
            30_000,
            10_000
        );
        return FrameAnalysis.Of(model).Solve(Loads([new(0, new(0, -50, 0), new(-1000, 0, 0))], [])).Movements[0];
    }

    private static double[] Six(NodeMovement move) =>
        [move.MoveMm.XMm, move.MoveMm.YMm, move.MoveMm.ZMm, move.TurnXRad, move.TurnYRad, move.TurnZRad];

    private static double EulerLoad(PublishedCase row)
    {
        var isClamped = row["clamped"] == 1;
        var section = new FrameSection(1494.8, 226.35e4, 226.35e4, 362.01e4);
        var whole = new FrameModel(
            [new(0, 0, 0), new(0, 0, 4000)],
            [Upright(0, 1, section)],
            isClamped
                ? [new(0, FrameFix.Clamped)]
                : [new(0, FrameFix.Pinned | FrameFix.AboutZ), new(1, FrameFix.AlongX | FrameFix.AlongY)]
        );
        var frame = FrameAnalysis.Of(whole.Divided((int)row["pieces"]));
        var first = frame.Solve(Loads([new(1, new(0, 0, -1000))], []));
        return frame.CriticalFactor(first) ?? throw new InvalidOperationException("a column that does not buckle");
    }

    // Node 5 is the middle of eight pieces: nodes 0 and 1 are the ends.
    private static FrameResult LeaningBeam(double axial)
    {
        var section = new FrameSection(14.1, 484, 484, 1);
        var whole = new FrameModel(
            [new(0, 0, 0), new(336, 0, 0)],
            [Level(0, 1, section)],
            [new(0, FrameFix.Pinned | FrameFix.AboutX), new(1, FrameFix.AlongY | FrameFix.AlongZ)],
            29_000,
            11_200
        );
        var loads = Loads([new(1, new(-axial, 0, 0))], [new(0, new(0, 0, -0.2 / 12))]);
        return SecondOrder(whole, loads, 8);
    }

    private static FrameResult LeaningCantilever(PublishedCase row)
    {
        var whole = new FrameModel(
            [new(0, 0, 0), new(0, 0, 240)],
            [Upright(0, 1, new(20, 100, 100, 1))],
            [new(0, FrameFix.Clamped)],
            29_000,
            11_200
        );
        return SecondOrder(whole, Loads([new(1, new(5, 0, -100))], []), (int)row["pieces"]);
    }

    private static FrameResult SecondOrder(FrameModel whole, LoadCase loads, int pieces)
    {
        var (frame, cut) = (FrameAnalysis.Of(whole.Divided(pieces)), loads.Divided(whole, pieces));
        return frame.SolveSecondOrder(cut, frame.Solve(cut));
    }
}

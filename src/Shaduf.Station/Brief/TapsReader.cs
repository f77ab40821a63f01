namespace Shaduf.Station;

/// <summary>
/// Reads the taps: either one main to a junction with a branch to each tap, or junctions and pipes of a tree.
/// </summary>
internal static class TapsReader
{
    private static IReadOnlyList<(string Word, bool Value)> YesNo { get; } = [("yes", true), ("no", false)];

    private sealed record Point(TapBrief Tap, double? BranchM, string? Pipe);

    public static TapsBrief Read(FieldMap fields)
    {
        var mainM = fields.Known(
            "mainLength",
            Measure.LengthM,
            0,
            20_000,
            "Length of the main from the tank to the one junction; for a tree give junctions and pipes instead."
        );
        var mainPipe = BriefReader.Name(fields, "mainPipe", "Card of the main's pipe.");
        var level = fields.Known("junction", Measure.LengthM, -430, 5500, "Level of the ground at the one junction.");
        var junctions = fields.Items("junctions", 0, 60, "Places where pipes meet, of a tree.", Junction);
        var pipes = fields.Items("pipes", 0, 120, "Pipes of a tree, from the tank or a point to a point.", Pipe);
        var points = fields.Items("points", 1, 60, "The taps.", Tap);
        fields.Done();
        var taps = points.Select(point => point.Tap).ToList();
        if (pipes.Count == 0 || fields.IsDescribing)
        {
            CheckFlat(fields, points, mainM);
            return Flat((mainM ?? 0, mainPipe, level), points);
        }

        CheckForm(fields, points, mainM is not null || mainPipe is not null || level is not null);
        var isSound = fields.AreSound("junctions", "pipes", "points");
        var tree = isSound ? TapTree.FromTank(fields, junctions, [.. pipes.Select(WithField)], taps) : [];
        return new(junctions, tree, taps);
    }

    private static TapPipeBrief WithField(TapPipeBrief pipe, int index) =>
        pipe with
        {
            Field = $"taps.pipes[{index + 1}].pipe",
        };

    private static JunctionBrief Junction(FieldMap fields)
    {
        var junction = new JunctionBrief(
            fields.Text("name", "The junction's name.", 40),
            fields.Known("elevation", Measure.LengthM, -430, 5500, "Level of the ground there.")
        );
        fields.Done();
        return junction;
    }

    private static TapPipeBrief Pipe(FieldMap fields)
    {
        var pipe = new TapPipeBrief(
            fields.Text("from", "Name of the point that feeds it, or 'tank'.", 40),
            fields.Text("to", "Name of the junction or tap it leads to.", 40),
            fields.Quantity("length", Measure.LengthM, 0, 20_000, "Length."),
            BriefReader.Name(fields, "pipe", "Card of the pipe."),
            ""
        );
        fields.Done();
        return pipe;
    }

    private static Point Tap(FieldMap fields)
    {
        var point = new Point(
            new(
                fields.Text("name", "The tap's name.", 40),
                fields.Quantity("elevation", Measure.LengthM, -430, 5500, "Level of the tap's mouth."),
                fields.Quantity("flow", Measure.FlowM3PerH, 0.05, 20, "Flow when open."),
                fields.Known("needs", Measure.LengthM, 0, 60, "Head wanted while it is open."),
                fields.OptionalOneOf(
                    "manifold",
                    YesNo,
                    "Whether drip or sprinkler lines begin there: no tap stand; its head and flow come from their maker."
                ) ?? false
            ),
            fields.Known("branch", Measure.LengthM, 0, 10_000, "Length of its own branch from the one junction."),
            BriefReader.Name(fields, "pipe", "Card of its own branch.")
        );
        fields.Done();
        return point;
    }

    // The two forms do not mix.
    private static void CheckForm(FieldMap fields, IReadOnlyList<Point> points, bool hasMain)
    {
        const string accepted = "either one main with a branch to each tap, or junctions and pipes, is accepted";
        for (var i = 0; i < points.Count && fields.AreSound("points"); i++)
        {
            if (points[i].BranchM is not null || points[i].Pipe is not null)
            {
                fields.Complain($"points[{i + 1}].branch", "stands beside 'pipes'", accepted);
            }
        }

        if (hasMain)
        {
            fields.Complain("mainLength", "stands beside 'pipes'", accepted);
        }
    }

    private static void CheckFlat(FieldMap fields, IReadOnlyList<Point> points, double? mainM)
    {
        if (mainM is null && fields.AreSound("mainLength"))
        {
            fields.Complain("mainLength", "missing", "the length of the main, or 'pipes' for a tree, is needed");
        }

        for (var i = 0; i < points.Count && fields.AreSound("points"); i++)
        {
            if (points[i].BranchM is null)
            {
                fields.Complain($"points[{i + 1}].branch", "missing", "the length of its branch is needed");
            }
        }
    }

    private static TapsBrief Flat((double LengthM, string? Pipe, double? LevelM) main, IReadOnlyList<Point> points) =>
        new(
            [new(TapsBrief.JunctionName, main.LevelM)],
            [
                new(TapsBrief.TankName, TapsBrief.JunctionName, main.LengthM, main.Pipe, "taps.mainPipe"),
                .. points.Select(
                    (point, i) =>
                        new TapPipeBrief(
                            TapsBrief.JunctionName,
                            point.Tap.Name,
                            point.BranchM ?? 0,
                            point.Pipe,
                            $"taps.points[{i + 1}].pipe"
                        )
                ),
            ],
            [.. points.Select(point => point.Tap)]
        );
}

using Shaduf.Ground;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the part of the brief about the fence.</summary>
internal static class FenceReader
{
    private const double LeastSideM = 1;

    /// <summary>Reads the fence; null when there is none.</summary>
    public static FenceBrief? Read(FieldMap? fields)
    {
        var hasFence =
            fields?.OptionalOneOf("fence", [("yes", true), ("no", false)], "Whether there is a fence around the racks.")
            ?? false;
        var marginM = fields?.Chosen("fenceMargin", Measure.LengthM, 1.2, 30, "Free ground between racks and fence.");
        var line =
            fields?.Items(
                "fenceLine",
                0,
                40,
                "Points of the fence in their order round it, three at least; left out: a rectangle round the racks.",
                Corner
            ) ?? [];
        var gate = Gate(
            fields?.OptionalMap("gate", "The gate in the fence; left out: 3 m wide, in the middle of the front side.")
        );
        if (fields is not null && fields.AreSound("fence", "fenceMargin", "fenceLine", "gate"))
        {
            Check(fields, hasFence);
            if (hasFence && line.Count > 0)
            {
                CheckLine(fields, line, gate);
            }
        }

        return hasFence ? new(marginM, line, gate) : null;
    }

    private static FenceCornerBrief Corner(FieldMap fields)
    {
        var corner = new FenceCornerBrief(
            SitePlace.By(
                fields.Quantity("bearing", Measure.AngleDeg, 0, 360, "Direction to it, clockwise from true north."),
                fields.Quantity(
                    "distance",
                    Measure.LengthM,
                    0.5,
                    300,
                    "To it, level, from the middle of the front rack's low edge."
                )
            ),
            fields.Known(
                "level",
                Measure.LengthM,
                -50,
                50,
                "Ground there above that under the low left corner of the front rack; left out: on the slope of rack.groundFall."
            )
        );
        fields.Done();
        return corner;
    }

    private static FenceGateBrief Gate(FieldMap? fields)
    {
        var gate = new FenceGateBrief(
            fields?.OptionalCount(
                "side",
                1,
                40,
                "Side in which it stands: from the point of that number to the next; of the rectangle 1 is before the low edge, then right, behind, left.",
                FieldMap.ChooseWord
            ),
            fields?.Chosen(
                "at",
                Measure.Share,
                0,
                1,
                "Where on that side: 0 % as near to its start as a post can stand, 100 % to its end; left out: in the middle."
            ),
            fields?.Chosen("width", Measure.LengthM, 0.9, 6, "Width between its posts.")
        );
        fields?.Done();
        return gate;
    }

    private static void Check(FieldMap fields, bool hasFence)
    {
        foreach (var field in new[] { "fenceMargin", "fenceLine", "gate" }.Where(fields.Has))
        {
            if (!hasFence)
            {
                fields.Complain(field, "there is no fence", $"'fence: yes', or no {field}, is accepted");
            }
        }

        if (fields.Has("fenceMargin") && fields.Has("fenceLine"))
        {
            fields.Complain(
                "fenceMargin",
                "guard.fenceLine says where the fence stands",
                "fenceLine or fenceMargin is accepted, not both"
            );
        }
    }

    private static void CheckLine(FieldMap fields, IReadOnlyList<FenceCornerBrief> line, FenceGateBrief gate)
    {
        var points = line.Select(corner => new FencePoint(corner.Place.EastM, corner.Place.NorthM, 0)).ToList();
        if (points.Count < 3)
        {
            fields.Complain("fenceLine", Invariant($"{points.Count} points"), "three points at least are accepted");
            return;
        }

        var sidesM = points.Zip(points.Skip(1).Append(points[0]), LengthM).ToList();
        foreach (var (i, sideM) in sidesM.Index().Where(side => side.Item < LeastSideM))
        {
            fields.Complain(
                Invariant($"fenceLine[{i + 1}]"),
                Invariant($"the next point is {sideM:0.00} m away"),
                Invariant($"{LeastSideM:0} m at least is accepted")
            );
            return;
        }

        if (FenceOutline.Crossing(points) is { } crossing)
        {
            fields.Complain(
                Invariant($"fenceLine[{crossing.SecondIndex + 1}]"),
                Invariant(
                    $"the side from point {crossing.SecondIndex + 1} to {Next(crossing.SecondIndex)} meets the side from point {crossing.FirstIndex + 1} to {Next(crossing.FirstIndex)}, {Ways(crossing)}"
                ),
                "a line that crosses or touches itself nowhere is accepted"
            );
            return;
        }

        CheckGate(fields, sidesM, gate);

        int Next(int side) => ((side + 1) % points.Count) + 1;
    }

    private static double LengthM(FencePoint a, FencePoint b) => double.Hypot(b.EastM - a.EastM, b.NorthM - a.NorthM);

    private static string Ways(FenceCrossing at) =>
        Invariant(
            $"{Math.Abs(at.EastM):0.0} m {(at.EastM < 0 ? "west" : "east")} and {Math.Abs(at.NorthM):0.0} m {(at.NorthM < 0 ? "south" : "north")} of the middle of the front rack's low edge"
        );

    private static void CheckGate(FieldMap fields, IReadOnlyList<double> sidesM, FenceGateBrief gate)
    {
        var neededM = StationFence.NeededM(gate.WidthM ?? StationFence.UsualGateM);
        if (gate.Side > sidesM.Count)
        {
            fields.Complain(
                "gate.side",
                Invariant($"the line has {sidesM.Count} sides"),
                Invariant($"1 to {sidesM.Count}, or 'choose' is accepted")
            );
        }
        else if (gate.Side is { } side && sidesM[side - 1] < neededM)
        {
            fields.Complain(
                "gate.side",
                Invariant($"side {side} is {sidesM[side - 1]:0.0} m long"),
                Invariant($"a side of {neededM:0.0} m at least is accepted: the gate and half a metre beside each post")
            );
        }
        else if (sidesM.Max() < neededM)
        {
            fields.Complain(
                "fenceLine",
                Invariant($"no side is long enough for the gate: the longest is {sidesM.Max():0.0} m"),
                Invariant($"a side of {neededM:0.0} m at least is accepted")
            );
        }
    }
}

using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>What stands under a tube across: a column with two struts, or two columns with a brace between them.</summary>
/// <param name="sections">Sections.</param>
/// <param name="depthMm">Length of the tube [mm].</param>
/// <param name="lines">Lines of columns, 1 to 2.</param>
internal sealed class RackSupport(RackSections sections, double depthMm, int lines)
{
    private const string LowerStrut = "lower strut";
    private const string UpperStrut = "upper strut";
    private const string BraceRole = "brace between columns";

    // A shorter brace holds nothing that the columns do not hold themselves: judgement.
    private const double LeastBraceRiseMm = 400;

    // Rise to run of the steepest brace that a saw can cut well: judgement.
    private const double SteepestBraceRatio = 3;

    /// <summary>Whether a member is a strut or a brace.</summary>
    /// <param name="role">What it is.</param>
    public static bool IsBrace(string role) => role is LowerStrut or UpperStrut or BraceRole;

    /// <summary>Where columns and struts hold a tube, up the slope [mm].</summary>
    public IReadOnlyList<double> HeldAtMm => lines == 1 ? [depthMm / 4, depthMm / 2, depthMm * 3 / 4] : ColumnsAtMm;

    /// <summary>Where the columns stand, up the slope [mm].</summary>
    public IReadOnlyList<double> ColumnsAtMm => lines == 1 ? [depthMm / 2] : [depthMm / 4, depthMm * 3 / 4];

    /// <summary>Puts the columns under a tube, with what braces them.</summary>
    /// <param name="steel">The rack's steel.</param>
    /// <param name="tube">Index of the tube.</param>
    public void Under(RackSteel steel, int tube)
    {
        var x = steel[tube].From.XMm;
        var columns = ColumnsAtMm.Select(slope => Column(steel, tube, x, slope)).ToList();
        if (lines == 1)
        {
            Struts(steel, tube, columns[0]);
        }
        else
        {
            Brace(steel, columns[0], columns[1]);
        }
    }

    // A column wider than the tube across is closed by a plate.
    private bool IsCapped => sections.Column.SideMm > sections.Tube.SideMm;

    // The underside of the tubes, at which columns and struts are cut.
    private CutPlane Underside(RackSetting setting, double x, double slope) =>
        new(setting.OnSlope(x, slope, -sections.Tube.SideMm), setting.OffPlane);

    private int Column(RackSteel steel, int tube, double x, double slope)
    {
        var (setting, section) = (steel.Setting, sections.Column);
        var underside = Underside(setting, x, slope);
        var y = underside.At.YMm;
        var foot = new Point(x, y, setting.Ground.ZMm(x, y) - setting.EmbedMm);
        if (setting.AboveGroundMm(underside.At) < section.SideMm)
        {
            throw new ArgumentException("column (C): the tube above it lies on the ground");
        }

        // The plate on a wide column takes its thickness off the column.
        var head = underside with
        {
            At = underside.At - (setting.OffPlane * (IsCapped ? Rack.CapMm : 0)),
        };
        var part = steel.Cut(
            'C',
            "column",
            section,
            () => Cut.Of(foot, underside.At, section.SideMm, new(foot, new(0, 0, 1)), head)
        );
        var index = steel.Add(part, new(1, 0, 0));
        steel.Set(index);
        Feet(steel, foot);
        Head(steel, tube, index);
        return index;
    }

    // A column wider than the tube is closed by a plate, on which the tube is welded along both its sides.
    private void Head(RackSteel steel, int tube, int column)
    {
        var (setting, side, tubeSide) = (steel.Setting, sections.Column.SideMm, sections.Tube.SideMm);
        var top = steel[column].To;
        var (goesOn, ends) = ((tube, OnTube(setting, top)), (column, top));
        if (!IsCapped)
        {
            steel.Weld("column to cross tube", goesOn, ends, AllRound(side, setting.TiltDeg));
            return;
        }

        var runMm = side / Math.Cos(setting.TiltDeg * Math.PI / 180);
        steel.Cap(
            "cross tube to the column's cap plate",
            goesOn,
            ends,
            new(WeldPattern.TwoRuns, RackSteel.WeldLegMm, runMm, tubeSide, setting.UpSlope)
        );
    }

    // An offcut of tube across the foot on either side of the column: it holds the column down in its concrete.
    private void Feet(RackSteel steel, Point foot)
    {
        var half = new Point(sections.Column.SideMm / 2, 0, 0);
        var up = sections.Tube.SideMm / 2;
        foreach (var side in new[] { -1, 1 })
        {
            var middle = foot + new Point(0, side * ((sections.Column.SideMm / 2) + up), up);
            steel.Add(
                Part.Straight(Rack.FootMark, "foot piece in the concrete", sections.Tube, middle - half, middle + half)
            );
        }
    }

    // From the column to the quarter points of the tube.
    private void Struts(RackSteel steel, int tube, int column)
    {
        var setting = steel.Setting;
        var (foot, top) = (steel[column].From, steel[column].To);
        var x = foot.XMm;
        var reach = depthMm / 4 * setting.UpSlope.YMm;
        var low = setting.OnSlope(x, depthMm / 4, -sections.Tube.SideMm / 2);
        var high = setting.OnSlope(x, depthMm * 3 / 4, -sections.Tube.SideMm / 2);

        // The foot of both struts: 45 deg for the upper one, and the lower one still rises.
        var best = Math.Min(high.ZMm - reach, low.ZMm - (reach / 2));
        var joint = top with { ZMm = Math.Max(setting.Ground.ZMm(x, top.YMm) + setting.LeastJointMm, best) };
        foreach (var (role, at, side) in new[] { (LowerStrut, low, -1), (UpperStrut, high, 1) })
        {
            if (at.ZMm <= joint.ZMm)
            {
                throw new ArgumentException($"{role} (B): it would not rise from the column to the tube");
            }

            var face = new CutPlane(joint + new Point(0, side * sections.Column.SideMm / 2, 0), new(0, 1, 0));
            var underside = Underside(setting, x, depthMm / 2);
            var shape = RackSteel.Sawn('B', role, () => Cut.Of(joint, at, sections.Tube.SideMm, face, underside));

            // Under a short steep plane the tube's quarter lies so near to the column that nothing is left to weld in.
            if (shape.ShortPointMm < sections.Tube.SideMm)
            {
                continue;
            }

            var part = steel.Cut('B', role, sections.Tube, () => shape);
            var index = steel.Add(part, new(1, 0, 0));
            steel.Weld(
                "strut to column",
                (column, foot with { ZMm = part.Shape.Start.ZMm }),
                (index, part.Shape.Start),
                AllRound(sections.Tube.SideMm, part.Shape.StartDeg)
            );
            steel.Weld(
                "strut to cross tube",
                (tube, OnTube(setting, part.Shape.End)),
                (index, part.Shape.End),
                AllRound(sections.Tube.SideMm, part.Shape.EndDeg)
            );
        }
    }

    // From near the foot of the low column to near the head of the high one.
    private void Brace(RackSteel steel, int low, int high)
    {
        var setting = steel.Setting;
        var (foot, head) = (steel[low].From, steel[high].To);
        var inset = sections.Column.SideMm / 2;
        var run = head.YMm - foot.YMm - (2 * inset);
        var fall = Math.Tan(setting.TiltDeg * Math.PI / 180) * inset;
        var topMm = head.ZMm - fall - (1.5 * sections.Tube.SideMm);
        var leastMm =
            Math.Max(setting.Ground.ZMm(foot.XMm, foot.YMm), setting.Ground.ZMm(head.XMm, head.YMm))
            + setting.LeastJointMm;
        var bottomMm = Math.Max(leastMm, topMm - (SteepestBraceRatio * run));
        if (topMm - bottomMm < LeastBraceRiseMm || run < 2 * sections.Tube.SideMm)
        {
            return;
        }

        // No brace is wider than the columns that it stands on.
        var section = sections.Tube.SideMm <= sections.Column.SideMm ? sections.Tube : sections.Column;
        var start = foot with { YMm = foot.YMm + inset, ZMm = bottomMm };
        var end = head with { YMm = head.YMm - inset, ZMm = topMm };
        var across = new Point(0, 1, 0);
        var part = steel.Cut(
            'D',
            BraceRole,
            section,
            () => Cut.Of(start, end, section.SideMm, new(start, across), new(end, across))
        );
        var index = steel.Add(part, new(1, 0, 0));
        var weld = AllRound(section.SideMm, part.Shape.StartDeg);
        steel.Weld("brace to column", (low, start with { YMm = foot.YMm }), (index, part.Shape.Start), weld);
        steel.Weld("brace to column", (high, end with { YMm = head.YMm }), (index, part.Shape.End), weld);
    }

    // A slanting end is longer one way than the tube is wide.
    private static JointWeld AllRound(double sideMm, double sawDeg) =>
        new(WeldPattern.AllRound, RackSteel.WeldLegMm, sideMm, sideMm / Math.Cos(sawDeg * Math.PI / 180), new(1, 0, 0));

    private Point OnTube(RackSetting setting, Point at) =>
        setting.OnSlope(at.XMm, setting.SlopeMm(at), -sections.Tube.SideMm / 2);
}

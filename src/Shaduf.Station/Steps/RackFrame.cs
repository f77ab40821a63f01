using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>
/// Generates a slide-in frame on one line of columns as one solid model of marked parts. Axes: x along the row, y away
/// from the low edge, z up, millimetres; the origin lies on the ground under the frame's low corner.
/// </summary>
/// <param name="grid">Rows and columns of modules.</param>
/// <param name="body">Size of a module.</param>
/// <param name="sections">Sections.</param>
/// <param name="setting">Tilt, heights and clearances.</param>
internal sealed class RackFrame(RackGrid grid, ModuleBody body, RackSections sections, RackSetting setting)
{
    /// <summary>Free length up the slope in each row [mm]; common practice, no source.</summary>
    public const double SlopeClearanceMm = 5;

    /// <summary>Length of a stub on each side of a crossing [mm]; common practice, no source.</summary>
    public const double StubMm = 250;

    // Widest distance between cross tubes; common practice (2.75 m in a row of seven 1.1 m modules), no source.
    private const double WidestSpacingMm = 2800;
    internal const double WeldLegMm = 3;
    private readonly double tiltRad = setting.TiltDeg * Math.PI / 180;

    /// <summary>Inside length along the row [mm].</summary>
    public double InsideLengthMm => (grid.Columns * body.WidthMm) + setting.RowClearanceMm;

    /// <summary>Outside length along the row [mm].</summary>
    public double LengthMm => InsideLengthMm + (2 * sections.Channel.WebMm);

    /// <summary>Inside depth up the slope, holders not counted [mm].</summary>
    public double InsideDepthMm => grid.Rows * (body.LengthMm + SlopeClearanceMm);

    /// <summary>Outside depth up the slope [mm].</summary>
    public double DepthMm => InsideDepthMm + (grid.Rows * 2 * sections.Channel.WebMm);

    /// <summary>Height of the top edge above ground [mm].</summary>
    public double TopEdgeMm =>
        setting.LowEdgeMm + (DepthMm * Math.Sin(tiltRad)) + (sections.Channel.OuterDepthMm * Math.Cos(tiltRad));

    /// <summary>Places of the cross tubes along the row [mm].</summary>
    public IReadOnlyList<double> TubePlacesMm
    {
        get
        {
            var first = sections.Channel.WebMm + body.WidthMm;
            if (grid.Columns < 3)
            {
                return [LengthMm / 4, LengthMm * 3 / 4];
            }

            var spans = Math.Max(1, (int)Math.Ceiling((LengthMm - (2 * first)) / WidestSpacingMm));
            return [.. Enumerable.Range(0, spans + 1).Select(i => first + (i * (LengthMm - (2 * first)) / spans))];
        }
    }

    /// <summary>The frame with all its parts and welds, and the lines along which it carries.</summary>
    public (Assembly Steel, Skeleton Skeleton) Built()
    {
        var parts = new List<Part>();
        parts.AddRange(Channels());
        parts.AddRange(
            TubePlacesMm.Select(x =>
                Part.Straight(
                    "T1",
                    "cross tube",
                    sections.Tube,
                    OnSlope(x, 0, TubeAxisMm),
                    OnSlope(x, DepthMm, TubeAxisMm)
                )
            )
        );
        parts.AddRange(Stubs());
        parts.AddRange(TubePlacesMm.SelectMany(Support));
        var skeleton = new RackSkeleton(this, sections).Of(parts);
        return (new("rack", parts, [.. Seams(skeleton)]), skeleton);
    }

    /// <summary>The rows of modules on the channels along the row, which are the first members of the skeleton.</summary>
    public IReadOnlyList<ModuleRow> Rows
    {
        get
        {
            double[] bearers = [0, .. HolderSlopesMm, DepthMm];
            var (web, rowMm) = (sections.Channel.WebMm, body.LengthMm + SlopeClearanceMm);
            return
            [
                .. Enumerable
                    .Range(0, grid.Rows)
                    .Select(i => (i, from: web + (i * ((2 * web) + rowMm))))
                    .Select(row => new ModuleRow(
                        row.from,
                        row.from + rowMm,
                        row.i,
                        bearers[row.i],
                        row.i + 1,
                        bearers[row.i + 1]
                    )),
            ];
        }
    }

    /// <summary>A point of the plane, moved off it.</summary>
    /// <param name="xMm">Along the row.</param>
    /// <param name="slopeMm">Up the slope from the low edge.</param>
    /// <param name="offMm">Off the frame's underside, upwards.</param>
    public Point OnSlope(double xMm, double slopeMm, double offMm) =>
        new(
            xMm,
            (slopeMm * Math.Cos(tiltRad)) - (offMm * Math.Sin(tiltRad)),
            setting.LowEdgeMm + (slopeMm * Math.Sin(tiltRad)) + (offMm * Math.Cos(tiltRad))
        );

    internal double TubeAxisMm => -sections.Tube.SideMm / 2;

    internal IEnumerable<double> HolderSlopesMm =>
        Enumerable
            .Range(1, grid.Rows - 1)
            .Select(i => (i * ((2 * sections.Channel.WebMm) + body.LengthMm + SlopeClearanceMm)));

    // A channel is two angles: one carries the lower lip, one the upper.
    private IEnumerable<Part> Channels()
    {
        foreach (var slope in new[] { 0, DepthMm })
        {
            foreach (
                var part in Channel("F1", "long side of the frame", OnSlope(0, slope, 0), OnSlope(LengthMm, slope, 0))
            )
            {
                yield return part;
            }
        }

        var web = sections.Channel.WebMm;
        foreach (
            var (mark, role, x) in new[] { ("F2", "closed short side", 0.0), ("F3", "removable short side", LengthMm) }
        )
        {
            foreach (var part in Channel(mark, role, OnSlope(x, web, 0), OnSlope(x, DepthMm - web, 0)))
            {
                yield return part;
            }
        }

        foreach (var slope in HolderSlopesMm)
        {
            for (var i = 0; i < 2; i++)
            {
                foreach (
                    var part in Channel(
                        "F4",
                        "middle holder",
                        OnSlope(web, slope, 0),
                        OnSlope(LengthMm - web, slope, 0)
                    )
                )
                {
                    yield return part;
                }
            }
        }
    }

    private IEnumerable<Part> Channel(string mark, string role, Point from, Point to)
    {
        var lower = OnSlope(0, 0, sections.Channel.OuterDepthMm * 0.25) - OnSlope(0, 0, 0);
        var upper = lower * 3;
        yield return Part.Straight(mark, role, sections.Angle, from + lower, to + lower);
        yield return Part.Straight(mark, role, sections.Angle, from + upper, to + upper, isSplicedFromEnd: true);
    }

    private IEnumerable<Part> Stubs() =>
        from x in TubePlacesMm
        from slope in HolderSlopesMm
        from side in new[] { -1, 1 }
        let face = x + (side * sections.Tube.SideMm / 2)
        select Part.Straight(
            "S1",
            "stub under the holder",
            sections.Tube,
            OnSlope(face, slope, TubeAxisMm),
            OnSlope(face + (side * StubMm), slope, TubeAxisMm)
        );

    // A column under the middle of the plane, and a strut to the cross tube on each side of it.
    private IEnumerable<Part> Support(double x)
    {
        var underside = new CutPlane(
            OnSlope(x, DepthMm / 2, -sections.Tube.SideMm),
            OnSlope(0, 0, 1) - OnSlope(0, 0, 0)
        );
        var top = underside.At;
        yield return Column(new(x, top.YMm, -setting.EmbedMm), underside);
        var reach = DepthMm / 4 * Math.Cos(tiltRad);
        var low = OnSlope(x, DepthMm / 4, TubeAxisMm);
        var high = OnSlope(x, DepthMm * 3 / 4, TubeAxisMm);

        // The foot of both struts: 45 deg for the upper one, and the lower one still rises.
        var joint = new Point(
            x,
            top.YMm,
            Math.Max(setting.LeastJointMm, Math.Min(high.ZMm - reach, low.ZMm - (reach / 2)))
        );
        yield return Strut("B1", "lower strut", joint, low, -1, underside);
        yield return Strut("B2", "upper strut", joint, high, 1, underside);
    }

    private Part Column(Point foot, CutPlane underside)
    {
        var section = sections.Column;
        var cut = Cut.Of(foot, underside.At, section.SideMm, new(foot, new(0, 0, 1)), underside);
        return new("C1", "column", section, cut, Part.Splices(cut.LongPointMm, section.LongestPieceMm, false));
    }

    private Part Strut(string mark, string role, Point joint, Point at, int side, CutPlane underside)
    {
        var face = new CutPlane(joint + new Point(0, side * sections.Column.SideMm / 2, 0), new(0, 1, 0));
        var cut = Cut.Of(joint, at, sections.Tube.SideMm, face, underside);
        return new(mark, role, sections.Tube, cut, Part.Splices(cut.LongPointMm, sections.Tube.LongestPieceMm, false));
    }

    // The lap in runs of 40 mm every 150 mm on both sides: common practice, no source. The joints' welds are those of the skeleton.
    private IEnumerable<Seam> Seams(Skeleton skeleton)
    {
        var channelMm = (2 * LengthMm) + (2 * InsideDepthMm) + (2 * (grid.Rows - 1) * InsideLengthMm);
        yield return new("lap of the channels", WeldLegMm, 40, 2 * (int)Math.Ceiling(channelMm / 150));
        var stubs = TubePlacesMm.Count * 2 * (grid.Rows - 1);
        yield return new("stub to cross tube", WeldLegMm, 4 * sections.Tube.SideMm, stubs);
        foreach (var alike in skeleton.Joints.Where(joint => joint.Weld is not null).GroupBy(joint => joint.Name))
        {
            yield return alike.First().Weld!.Seam(alike.Key, alike.Count());
        }
    }
}

/// <summary>Tilt, heights and clearances of a rack.</summary>
/// <param name="TiltDeg">Tilt [deg].</param>
/// <param name="LowEdgeMm">Height of the low edge above ground [mm].</param>
/// <param name="RowClearanceMm">Free length along each row [mm].</param>
/// <param name="EmbedMm">Depth of the column's foot below ground [mm].</param>
/// <param name="LeastJointMm">Lowest place of a strut on the column above ground [mm].</param>
public sealed record RackSetting(
    double TiltDeg,
    double LowEdgeMm,
    double RowClearanceMm,
    double EmbedMm,
    double LeastJointMm
);

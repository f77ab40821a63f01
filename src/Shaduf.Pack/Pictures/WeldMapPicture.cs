using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Station;
using Shaduf.Steel;

namespace Shaduf.Pack;

/// <summary>The lines of an assembly seen from its low left corner, with the symbol of each kind of weld at one of its places.</summary>
internal static class WeldMapPicture
{
    private const double RowMm = 11;
    private const double AsideMm = 14;

    /// <summary>Composes the picture.</summary>
    /// <param name="steel">The parts.</param>
    /// <param name="skeleton">The lines along which they carry.</param>
    /// <param name="welds">The welds.</param>
    /// <param name="widthMm">Width of the lines without the symbols [mm], 80 to 300.</param>
    public static Scene Of(Assembly steel, Skeleton skeleton, IReadOnlyList<WeldMark> welds, double widthMm)
    {
        var seen = steel
            .Parts.SelectMany(part => new[] { part.Shape.Start, part.Shape.End })
            .Select(RackModelPicture.Seen)
            .ToList();
        var (left, right) = (seen.Min(point => point.XMm), seen.Max(point => point.XMm));
        var (bottom, top) = (seen.Min(point => point.YMm), seen.Max(point => point.YMm));
        var scale = Math.Max(1, Math.Max((right - left) / widthMm, (top - bottom) / (widthMm * 0.75)));
        var rows = Math.Max((top - bottom) / scale, RowMm * ((welds.Count + 1) / 2));
        var size = new PaperSize(((right - left) / scale) + (2 * (WeldSymbol.WidthMm + AsideMm + 12)), rows + 16);
        var originMm = (size.WidthMm - ((right - left) / scale)) / 2;
        var view = new SceneBuilder(size).View(new(scale, new(left, top), new(originMm, 10)));
        foreach (var part in steel.Parts)
        {
            view.Line(
                part.Section.Outline == Outline.EqualAngle ? Layer.Thin : Layer.Steel,
                RackModelPicture.Seen(part.Shape.Start),
                RackModelPicture.Seen(part.Shape.End)
            );
        }

        // From axis to axis, where a part ends at another's face.
        foreach (var joint in skeleton.Joints)
        {
            view.Line(Layer.Thin, RackModelPicture.Seen(joint.AtFirst), RackModelPicture.Seen(joint.AtSecond));
            Gap(view, skeleton.Members[joint.Second], joint.AtSecond);
        }

        foreach (var foot in skeleton.Feet)
        {
            view.Builder.Circle(Layer.Ground, view.At(RackModelPicture.Seen(foot.Ground)), 0.7);
        }

        var tips = welds
            .Select(weld => (Weld: weld, Tip: view.At(RackModelPicture.Seen(weld.At))))
            .OrderBy(each => each.Tip.XMm)
            .ToList();
        var half = (tips.Count + 1) / 2;
        Side(view.Builder, tips.Take(half), originMm - AsideMm);
        Side(view.Builder, tips.Skip(half), originMm + ((right - left) / scale) + AsideMm);
        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(
            new(drawn.LeftMm, drawn.BottomMm + 5),
            "seen from the low left corner; lines: axes of the parts, thin: angles; small circle: where the foot enters ground or stands on its plinth",
            TextStyle.Small
        );
        return view.Builder.Build("weld map").Trimmed();
    }

    // The member's own line on to the joint.
    private static void Gap(SiteView view, Member member, Point at)
    {
        var near = (at - member.From).LengthMm < (at - member.To).LengthMm ? member.From : member.To;
        if ((at - near).LengthMm < 300)
        {
            view.Line(Layer.Thin, RackModelPicture.Seen(near), RackModelPicture.Seen(at));
        }
    }

    // From above down in the order of the tips, no symbol nearer to another than a row.
    private static void Side(SceneBuilder builder, IEnumerable<(WeldMark Weld, PaperPoint Tip)> tips, double elbowMm)
    {
        var lastMm = 0.0;
        foreach (var (weld, tip) in tips.OrderBy(each => each.Tip.YMm))
        {
            lastMm = Math.Max(lastMm + RowMm, tip.YMm);
            WeldSymbol.Draw(builder, tip, new(elbowMm, lastMm), weld);
        }
    }
}

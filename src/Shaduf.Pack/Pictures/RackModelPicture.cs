using Shaduf.Shape;
using Shaduf.Station;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The lines along which a rack carries, seen from its low left corner, each member with its number and mark.</summary>
public static class RackModelPicture
{
    // From where it is looked at: left of square on the low edge, and down on it; judgement.
    private const double AsideDeg = 28;
    private const double DownDeg = 32;

    // Numbers without room that are named; more of them are counted.
    private const int MostNamed = 6;

    // Places along a member at which its number is tried, its middle first.
    private static readonly double[] s_shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.65, 0.75, 0.22, 0.78, 0.14, 0.86, 0.92];

    /// <summary>Composes the picture from the skeleton.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="size">Size of the picture, at least 120 x 80 mm.</param>
    /// <returns>The picture, to scale along no axis.</returns>
    public static Scene Of(Rack rack, PaperSize size) => Of(rack.Skeleton, "model of the rack", size);

    /// <summary>Composes the picture of any skeleton.</summary>
    /// <param name="skeleton">The skeleton.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="size">Size of the picture, at least 120 x 80 mm.</param>
    /// <returns>The picture, to scale along no axis.</returns>
    public static Scene Of(Skeleton skeleton, string title, PaperSize size)
    {
        var members = skeleton.Members;
        var all = members.SelectMany(member => new[] { Seen(member.From), Seen(member.To) }).ToList();
        var (leftMm, rightMm) = (all.Min(point => point.XMm), all.Max(point => point.XMm));
        var (bottom, top) = (all.Min(point => point.YMm), all.Max(point => point.YMm));
        var scale = Math.Max((rightMm - leftMm) / (size.WidthMm - 16), (top - bottom) / (size.HeightMm - 18));
        var view = new SceneBuilder(size).View(
            new(
                Math.Max(scale, 1),
                new(leftMm, top),
                new((size.WidthMm - ((rightMm - leftMm) / Math.Max(scale, 1))) / 2, 6)
            )
        );
        foreach (var foot in skeleton.Feet)
        {
            Ground(view, foot.Ground);
        }

        foreach (var member in members)
        {
            view.Line(member.Mark[0] is 'F' or 'R' ? Layer.Outline : Layer.Steel, Seen(member.From), Seen(member.To));
        }

        foreach (var joint in skeleton.Joints)
        {
            view.Line(Layer.Thin, Seen(joint.AtFirst), Seen(joint.AtSecond));
        }

        var left = Numbers(view, skeleton);
        var drawn = view.Builder.Build().Bounds()!.Value;
        var crowded =
            left.Count == 0 ? ""
            : left.Count <= MostNamed ? $"; no room for {string.Join(", ", left)}"
            : Invariant($"; no room for {left.Count} of the numbers");
        view.Builder.Text(
            new(6, drawn.BottomMm + 5),
            Invariant(
                $"{members.Count} members by number and mark, {skeleton.Joints.Count} joints, {skeleton.Feet.Count} feet; not to scale{crowded}"
            ),
            TextStyle.Small
        );
        return view.Builder.Build(title);
    }

    private static void Ground(SiteView view, Point at)
    {
        foreach (var along in new[] { new Point(250, 0, 0), new Point(0, 250, 0) })
        {
            view.Line(Layer.Ground, Seen(at - along), Seen(at + along));
        }
    }

    // Each number stands where it touches no other, as near to the middle of its member as can be; those without room are returned.
    private static IReadOnlyList<string> Numbers(SiteView view, Skeleton skeleton)
    {
        var placed = new List<(PaperPoint At, double HalfMm)>();
        var left = new List<string>();
        foreach (var (i, member) in skeleton.Members.Index())
        {
            var text = Invariant($"{i + 1} {member.Mark}");
            var half = (Lettering.WidthMm(text, Lettering.SmallMm, FontWeight.Regular) / 2) + 0.4;
            var free = s_shares
                .Select(share => view.At(Seen(member.From + ((member.To - member.From) * share))))
                .Where(place => placed.TrueForAll(other => Free(place, half, other) > 0))
                .Take(1)
                .ToList();
            if (free.Count == 0)
            {
                left.Add(text);
                continue;
            }

            placed.Add((free[0], half));
            view.Builder.Rectangle(
                Layer.Grid,
                new(free[0].XMm - half, free[0].YMm - 1.5, free[0].XMm + half, free[0].YMm + 1.5),
                Palette.White
            );
            view.Builder.Text(free[0], text, TextStyle.Small.Centred);
        }

        return left;
    }

    // How far a number is clear of another [mm]: below 0 where they overlap.
    private static double Free(PaperPoint at, double halfMm, (PaperPoint At, double HalfMm) other) =>
        Math.Max(Math.Abs(at.XMm - other.At.XMm) - halfMm - other.HalfMm, Math.Abs(at.YMm - other.At.YMm) - 3.2);

    /// <summary>A point as it is seen from there.</summary>
    internal static SitePoint Seen(Point at)
    {
        var (sin, cos) = Math.SinCos(AsideDeg * Math.PI / 180);
        var (down, flat) = Math.SinCos(DownDeg * Math.PI / 180);
        var away = (at.YMm * cos) + (at.XMm * sin);
        return new((at.XMm * cos) - (at.YMm * sin), (at.ZMm * flat) + (away * down));
    }
}

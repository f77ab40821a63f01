using CsCheck;
using Shaduf.Station;

namespace Shaduf.Pack.Tests;

/// <summary>Wrap-around templates of round tube against plain trigonometry.</summary>
public sealed class CutTemplateTests
{
    private const double TopMm = 8;

    /// <summary>Each point of the line, wrapped round the tube, lies in the plane that cuts it.</summary>
    [Fact]
    public void A_slanting_cut_wrapped_round_the_tube_lies_in_a_plane() =>
        Gen.Select(Gen.Double[10, 340], Gen.Double[5, 60])
            .Sample(
                (diameterMm, sawDeg) =>
                {
                    var (radius, tan) = (diameterMm / 2, Math.Tan(sawDeg * Math.PI / 180));
                    var strips = CutTemplate.Round(
                        "N",
                        diameterMm,
                        deg => radius * tan * (1 + Math.Cos(deg * Math.PI / 180))
                    );
                    foreach (var (alongMm, behindMm) in Line(strips))
                    {
                        // Round the tube by the arc; the seam is the short point, the long one opposite to it.
                        var x = radius * Math.Cos(alongMm / radius);
                        Assert.Equal((radius + x) * tan, behindMm, 1e-6);
                    }

                    Assert.Equal(Math.PI * diameterMm, Line(strips)[^1].AlongMm, 1e-9);
                },
                iter: Math.Max(50, Check.Iter / 4)
            );

    /// <summary>The published ordinates of a tube of 60.3 mm cut at 30 deg, for a tube of 50 mm by proportion.</summary>
    [Fact]
    public void The_ordinates_of_a_cut_at_30_deg_are_the_published_ones()
    {
        double[] published = [0, 1.325, 5.098, 10.746, 17.407, 24.069, 29.716, 33.489, 34.814];
        const double diameterMm = 50;
        var tan = Math.Tan(Math.PI / 6);
        var scene = CutTemplate.Round(
            "N",
            diameterMm,
            deg => diameterMm / 2 * tan * (1 - Math.Cos(deg * Math.PI / 180))
        )[0];
        double[] upright =
        [
            .. scene
                .Items.OfType<LineItem>()
                .Where(line =>
                    line.Layer == Layer.Thin && line.From.XMm == line.To.XMm && line.From.YMm < line.To.YMm - 5
                )
                .Select(line => line.From.YMm - TopMm),
        ];
        Assert.Equal(15, upright.Length);
        foreach (var (i, behindMm) in upright.Take(8).Index())
        {
            Assert.Equal(published[i + 1] * diameterMm / 60.3, behindMm, 0.001);
        }
    }

    /// <summary>Each point of a strut's head, wrapped round the strut, touches the side of its post.</summary>
    [Fact]
    public void The_head_of_a_strut_touches_its_post_all_round()
    {
        var strips = CutTemplate.Round(
            "N3",
            FenceSteel.StrutDiameterMm,
            new FenceSaddle("N3", "on its post", 60.3, 45).BehindMm
        );
        const double post = 60.3 / 2;
        const double inner = (48.3 / 2) - 3.2;
        var (sin, cos) = Math.SinCos(Math.PI / 4);

        // From the post's axis to the long point, along the strut; then outwards by what is cut back.
        var longMm = (post - (inner * cos)) / sin;
        foreach (var (alongMm, behindMm) in Line(strips))
        {
            var around = Math.PI + (alongMm / (48.3 / 2));
            var (along, across, aside) = (longMm + behindMm, inner * Math.Cos(around), inner * Math.Sin(around));
            var off = (along * sin) + (across * cos);
            Assert.Equal(post, double.Hypot(off, aside), 1e-6);
        }
    }

    [Fact]
    public void The_check_bar_is_100_mm_long()
    {
        var scene = CutTemplate.Round("N", 48.3, _ => 0)[0];
        var bar = scene.Items.OfType<LineItem>().Single(line => line.Layer == Layer.Outline);
        Assert.Equal(100, bar.To.XMm - bar.From.XMm, 1e-9);
        Assert.Contains(scene.Items.OfType<TextItem>(), text => text.Text == "100 mm");
    }

    /// <summary>Wider tubes: strips that an A4 page takes, each with its bar and named joins, as long together as the way round.</summary>
    [Theory]
    [InlineData(54, 1)]
    [InlineData(60.3, 2)]
    [InlineData(108, 2)]
    [InlineData(168.3, 4)]
    public void A_wide_tube_has_strips_that_join(double diameterMm, int count)
    {
        var strips = CutTemplate.Round("N", diameterMm, deg => diameterMm / 2 * (1 - Math.Cos(deg * Math.PI / 180)));
        Assert.Equal(count, strips.Count);
        foreach (var (i, strip) in strips.Index())
        {
            Assert.InRange(strip.Size.WidthMm, 100, 175);
            Assert.Empty(strip.TextOverlaps());
            var texts = strip.Items.OfType<TextItem>().Select(text => text.Text).ToList();
            Assert.Contains("100 mm", texts);
            Assert.Equal(i > 0, texts.Contains(FormattableString.Invariant($"join {360.0 * i / count:0}")));
            Assert.Equal(
                i < count - 1,
                texts.Contains(FormattableString.Invariant($"join {360.0 * (i + 1) / count:0}"))
            );
        }

        Assert.Equal(Math.PI * diameterMm, Line(strips)[^1].AlongMm, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => CutTemplate.Round("N", double.NaN, _ => 0));
    }

    // The cut lines of all strips, laid end to end.
    private static List<(double AlongMm, double BehindMm)> Line(IReadOnlyList<Scene> strips)
    {
        var line = new List<(double AlongMm, double BehindMm)>();
        foreach (var strip in strips)
        {
            var from = line.Count == 0 ? 0 : line[^1].AlongMm;
            line.AddRange(
                strip
                    .Items.OfType<PolyItem>()
                    .First(item => item.Layer == Layer.Outline)
                    .Points.Select(point => (from + point.XMm - 1, point.YMm - TopMm))
            );
        }

        return line;
    }
}

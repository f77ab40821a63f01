using Shaduf.Steel;

namespace Shaduf.Station.Tests;

/// <summary>A light column: its tube, its plate on four bolts, and the line along which it carries.</summary>
public sealed class LightColumnTests
{
    [Fact]
    public void Plate_and_gussets_weigh_their_volume_of_steel() =>
        // 250 x 250 x 12 mm and four triangles of 80 x 80 / 2 x 6 mm at 7850 kg/m3, by hand.
        Assert.Equal(
            ((0.25 * 0.25 * 0.012) + (4 * 0.08 * 0.08 / 2 * 0.006)) * 7850,
            LightColumnSize.All[0].Foot.MassKg,
            5e-7
        );

    [Fact]
    public void A_column_stands_clamped_at_its_foot_and_carries_its_own_weight()
    {
        var column = LightColumn.Of(5000, LightColumnSize.All[0]);
        var frame = SkeletonFrame.Of(column.Skeleton, _ => new(700, 5e5, 5e5, 1e6), 0, []);
        var result = FrameAnalysis.Of(frame.Model).Solve(new("own", [], [new(0, new(0, 0, -0.06))], []));
        Assert.Equal(0.06 * 5000, result.Reactions.Single().Force.ZN, 5e-7);
    }

    [Fact]
    public void A_column_longer_than_its_bar_is_spliced_and_the_weld_counted()
    {
        var column = LightColumn.Of(8000, LightColumnSize.All[0]);
        Assert.Single(column.Steel.Parts[0].SplicesMm);
        Assert.Contains(column.Steel.Seams, seam => seam.Name == "splice of Y1" && seam.Count == 1);
        Assert.DoesNotContain(
            LightColumn.Of(4000, LightColumnSize.All[0]).Steel.Seams,
            seam => seam.Name == "splice of Y1"
        );
    }

    [Theory]
    [InlineData(0)]
    [InlineData(double.NaN)]
    public void A_column_without_height_is_refused_by_its_mark(double heightMm)
    {
        var error = Assert.Throws<ArgumentException>(() => LightColumn.Of(heightMm, LightColumnSize.All[0]));
        Assert.Contains("Y1", error.Message, StringComparison.Ordinal);
    }
}

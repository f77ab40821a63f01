using CsCheck;
using Shaduf.Parts;
using Shaduf.Steel;

namespace Shaduf.Station.Tests;

/// <summary>Racks of every form hang together: a frame that stands, parts with length, marks that mean one thing.</summary>
public sealed class RackFormTests
{
    private static readonly StationFile s_file = SmallDesign.File();
    private static readonly ModuleCard s_module = s_file.Shelf.Find<ModuleCard>("module-410")!;

    private static readonly Gen<(RackGrid Grid, RackForm Form, RackBrief Brief, double TiltDeg)> s_racks =
        from rows in Gen.Int[1, 4]
        from columns in Gen.Int[1, 12]
        from type in Gen.Bool
        from lines in Gen.Int[1, 2]
        from tubes in Gen.Int[1, 6]
        from lies in Gen.Bool
        from tiltDeg in Gen.Double[0, 60]
        from along in Gen.Double[-0.2, 0.2]
        from back in Gen.Double[-0.2, 0.2]
        from truckM in Gen.Double[2, 12]
        select (
            new RackGrid(rows, columns, 1),
            new RackForm(
                type ? RackType.SlideIn : RackType.ClampedRails,
                lines,
                tubes == 1 ? 0 : tubes,
                null,
                null,
                null
            ),
            s_file.Brief.Rack with
            {
                LowEdgeM = 2.5,
                Angle = null,
                Way = lies ? ModuleWay.Landscape : ModuleWay.Portrait,
                Ground = new(along, back),
                Crew = new(truckM, null),
            },
            tiltDeg
        );

    [Fact]
    public void Every_rack_stands_in_equilibrium_under_its_own_weight() =>
        s_racks.Sample(
            given =>
            {
                var rack = Of(given);
                var frame = SkeletonFrame.Of(rack.Skeleton, _ => new(1000, 1e6, 1e6, 1e6), 300, []);
                var own = frame.Spans.Select((_, i) => new SpreadLoad(i, new(0, 0, -0.1))).ToList();
                var result = FrameAnalysis.Of(frame.Model).Solve(new("own", [], own, []));
                Assert.InRange(result.ImbalanceShare, 0, 1e-6);
                Assert.Equal(rack.TubePlacesMm.Count * given.Form.Lines, result.Reactions.Count);
            },
            iter: 150
        );

    [Fact]
    public void Parts_have_length_stay_above_the_ground_and_share_a_mark_only_when_alike() =>
        s_racks.Sample(
            given =>
            {
                var rack = Of(given);
                Assert.All(rack.Steel.Parts, part => Assert.True(part.Shape.ShortPointMm > 0));
                Assert.All(
                    rack.Steel.Parts.Where(part => part.Role != "column" && part.Mark != Rack.FootMark),
                    part =>
                    {
                        Assert.True(rack.Setting.AboveGroundMm(part.Shape.Start) > 0, part.Mark);
                        Assert.True(rack.Setting.AboveGroundMm(part.Shape.End) > 0, part.Mark);
                    }
                );
                Assert.Equal(rack.Steel.Parts.Count, rack.Steel.Groups.Sum(group => group.Count));
                Assert.Equal(
                    2 * rack.Skeleton.Feet.Count,
                    rack.Steel.Parts.Count(part =>
                        part.Mark == Rack.FootMark && rack.Setting.AboveGroundMm(part.Shape.Start) < 0
                    )
                );
                Assert.All(
                    rack.Steel.Parts.Where(part => part.Role == "column"),
                    part => Assert.Equal(-rack.Setting.EmbedMm, rack.Setting.AboveGroundMm(part.Shape.Start), 5e-7)
                );
            },
            iter: 300
        );

    [Fact]
    public void The_plane_holds_its_modules_and_clears_the_ground_by_what_was_asked() =>
        s_racks.Sample(
            given =>
            {
                var rack = Of(given);
                var lastMm = rack.Along.FirstMm + ((rack.Grid.Columns - 1) * rack.Along.PitchMm) + rack.Lay.AlongMm;
                Assert.InRange(lastMm, 0, rack.Size.LengthMm);
                Assert.All(rack.Rows, row => Assert.InRange(row.ToMm - row.FromMm, rack.Lay.UpMm, rack.Lay.UpMm + 10));
                Assert.InRange(rack.Rows[^1].ToMm, 0, rack.Size.DepthMm + 1e-6);
                var leastMm = new[] { (0.0, 0.0), (1, 0), (0, 1), (1, 1) }.Min(corner =>
                    rack.Setting.AboveGroundMm(
                        rack.Setting.OnSlope(corner.Item1 * rack.Size.LengthMm, corner.Item2 * rack.Size.DepthMm, 0)
                    )
                );
                Assert.Equal(2500, leastMm, 5e-7);
                Assert.All(rack.Rows, row => Assert.True(row.LowAtMm < row.HighAtMm));
            },
            iter: 300
        );

    [Fact]
    public void No_piece_is_longer_than_the_truck_and_no_splice_lies_on_a_tube_or_in_mid_span() =>
        s_racks.Sample(
            given =>
            {
                var rack = Of(given);
                Assert.All(
                    rack.Steel.Parts.SelectMany(part => part.PiecesMm),
                    mm => Assert.InRange(mm, 1, (given.Brief.Crew.TruckBedM!.Value * 1000) + 1e-6)
                );
                double[] held = [.. rack.TubePlacesMm];

                // Over longer spans no piece reaches from one good place to the next.
                if (held[1] - held[0] > 1.2 * given.Brief.Crew.TruckBedM * 1000)
                {
                    return;
                }

                foreach (var part in rack.Steel.Parts.Where(part => part.Mark is "F1" or "R1"))
                {
                    foreach (var (at, span) in part.SplicesMm.SelectMany(at => SpanOf(at, held)))
                    {
                        Assert.InRange(Math.Min(at, span - at) / span, 0.15 - 1e-9, 0.3 + 1e-9);
                    }
                }
            },
            iter: 300
        );

    [Fact]
    public void The_two_angles_of_a_channel_are_never_spliced_side_by_side() =>
        Gen.Select(Gen.Double[4000, 14_000], Gen.Int[2, 6], Gen.Double[2000, 6000])
            .Sample(
                (lengthMm, tubes, longestMm) =>
                {
                    double[] held =
                    [
                        .. Enumerable.Range(0, tubes).Select(i => 1100 + (i * (lengthMm - 2200) / (tubes - 1))),
                    ];
                    var splices = SplicePlaces.Of(lengthMm, held, longestMm);
                    double[] ends = [0, .. splices, lengthMm];
                    Assert.All(
                        ends.Zip(ends.Skip(1)),
                        piece => Assert.InRange(piece.Second - piece.First, 499.999, longestMm + 1e-6)
                    );
                },
                iter: 2000
            );

    [Fact]
    public void Two_lines_stand_at_the_quarters_of_the_slope()
    {
        var rack = Of((new(2, 7, 1), new(RackType.SlideIn, 2, 0, null, null, null), s_file.Brief.Rack, 15));
        var columns = rack.Steel.Parts.Where(part => part.Role == "column").ToList();
        Assert.Equal(2 * rack.TubePlacesMm.Count, columns.Count);
        Assert.All(
            columns,
            column =>
            {
                var share = rack.HeadSlopeMm(column) / rack.Size.DepthMm;
                Assert.Equal(column.Mark == "C1" ? 0.25 : 0.75, share, 5e-10);
            }
        );
        Assert.Equal(rack.TubePlacesMm.Count, rack.Steel.Parts.Count(part => part.Role == "brace between columns"));
    }

    [Fact]
    public void Rails_lie_in_the_zone_that_the_card_allows()
    {
        var zone = new HoldingLimit(300, 400, 2400, 1600);
        var module = s_module with { Holding = HoldingSheet.Unknown with { LongClamps = zone } };
        var form = new RackForm(RackType.ClampedRails, 2, 0, null, null, null);
        var rack = Rack.Of(s_file.Brief.Rack, module, new(2, 5, 1), 15, s_file.Shelf, form)!;
        Assert.Equal(4, rack.Steel.Parts.Count(part => part.Mark == "R1"));
        Assert.All(rack.Rows, row => Assert.InRange(row.LowAtMm - row.FromMm, 300, 400));
        Assert.All(rack.Rows, row => Assert.InRange(row.ToMm - row.HighAtMm, 300, 400));
    }

    [Fact]
    public void Columns_on_falling_ground_are_longer_by_the_fall()
    {
        var brief = s_file.Brief.Rack with { Ground = new(0.05, 0) };
        var rack = Of((new(2, 7, 1), RackForm.Of(brief), brief, 15));
        var columns = rack.Steel.Parts.Where(part => part.Role == "column").ToList();
        Assert.Equal(["C1", "C2", "C3", "C4"], columns.Select(part => part.Mark));
        var fallMm = 0.05 * (rack.TubePlacesMm[3] - rack.TubePlacesMm[0]);
        Assert.Equal(fallMm, columns[3].LengthMm - columns[0].LengthMm, 5e-7);
    }

    [Fact]
    public void A_rack_that_cannot_be_braced_names_the_part()
    {
        var brief = s_file.Brief.Rack with { LowEdgeM = 0.3 };
        var error = Assert.Throws<ArgumentException>(() => Of((new(1, 4, 1), RackForm.Of(brief), brief, 0)));
        Assert.Contains("strut (B)", error.Message, StringComparison.Ordinal);
    }

    private static IEnumerable<(double AtMm, double SpanMm)> SpanOf(double at, double[] held)
    {
        var i = Array.FindLastIndex(held, x => x <= at);
        return i >= 0 && i < held.Length - 1 ? [(at - held[i], held[i + 1] - held[i])] : [];
    }

    private static Rack Of((RackGrid Grid, RackForm Form, RackBrief Brief, double TiltDeg) given) =>
        Rack.Of(given.Brief, s_module, given.Grid, given.TiltDeg, s_file.Shelf, given.Form)!;
}

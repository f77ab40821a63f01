using CsCheck;
using Shaduf.Workshop;

namespace Shaduf.Trades.Tests.Workshop;

public sealed class EndCutTests
{
    [Fact]
    public void Tubes_of_one_width_halve_the_angle_and_unequal_ones_share_it() =>
        Gen.Select(Gen.Double[30, 150], Gen.Double[20, 200], Gen.Double[20, 200])
            .Sample(
                (includedDeg, oneMm, otherMm) =>
                {
                    var equalDeg = PlaneCut.EqualMitreDeg(includedDeg);
                    Assert.Equal(equalDeg, PlaneCut.UnequalMitreDeg(oneMm, oneMm, includedDeg), 1e-9);
                    var bothDeg =
                        PlaneCut.UnequalMitreDeg(oneMm, otherMm, includedDeg)
                        + PlaneCut.UnequalMitreDeg(otherMm, oneMm, includedDeg);
                    Assert.Equal(180 - includedDeg, bothDeg, 1e-9);
                }
            );

    // The corners of both tubes that touch are equally far from where the outer faces meet.
    [Fact]
    public void Cut_faces_of_two_tubes_are_equally_long() =>
        Gen.Select(Gen.Double[60, 120], Gen.Double[20, 200], Gen.Double[20, 200])
            .Sample(
                (includedDeg, oneMm, otherMm) =>
                {
                    var one = PlaneCut.UnequalMitreDeg(oneMm, otherMm, includedDeg) * Math.PI / 180;
                    var other = PlaneCut.UnequalMitreDeg(otherMm, oneMm, includedDeg) * Math.PI / 180;
                    Assert.Equal(oneMm / Math.Cos(one), otherMm / Math.Cos(other), 1e-6);
                }
            );

    [Fact]
    public void Every_point_of_a_saddle_lies_on_the_header() =>
        Gen.Select(Gen.Double[20, 200], Gen.Double[0.1, 1], Gen.Double[25, 90], Gen.Double[-1, 1], Gen.Double[0, 360])
            .Sample(
                (headerMm, share, angleDeg, aside, aroundDeg) =>
                {
                    var branchMm = Math.Max(1, headerMm * share);
                    var offsetMm = (headerMm - branchMm) * aside * 0.999;
                    var reachMm = Saddle.ReachMm(headerMm, branchMm, angleDeg, offsetMm, aroundDeg);
                    var (sin, cos) = Math.SinCos(aroundDeg * Math.PI / 180);
                    var (sinB, cosB) = Math.SinCos(angleDeg * Math.PI / 180);

                    // Header along x, branch rising in x-z.
                    var z = (reachMm * sinB) + (branchMm * cos * cosB);
                    var y = offsetMm + (branchMm * sin);
                    Assert.Equal(headerMm, double.Hypot(y, z), 1e-6 * headerMm);
                }
            );

    [Fact]
    public void A_brace_meets_both_faces() =>
        Gen.Select(Gen.Double[400, 3000], Gen.Double[400, 3000], Gen.Double[0, 120], Gen.Double[0, 120])
            .Sample(
                (runMm, riseMm, columnMm, beamMm) =>
                {
                    var cut = BraceCut.Of(runMm, riseMm, columnMm, beamMm, braceMm: 40);
                    var angle = cut.RiseDeg * Math.PI / 180;
                    var faceMm = cut.CentreMm * Math.Cos(angle) + (columnMm / 2);
                    var fromBeamMm = beamMm / 2 / Math.Tan(angle);
                    Assert.Equal(runMm, faceMm + fromBeamMm, 1e-6);
                    Assert.Equal(cut.LongMm - cut.ShortMm, 2 * (cut.LongMm - cut.CentreMm), 1e-9);
                }
            );

    [Fact]
    public void What_cannot_be_cut_is_refused()
    {
        Assert.Throws<ArgumentException>(() => BraceCut.Of(60, 60, 60, 60, 40));
        Assert.Throws<ArgumentOutOfRangeException>(() => Saddle.ReachMm(50, 40, 90, 20, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlaneCut.SlantMm(50, 85));
    }

    [Fact]
    public void Vents_of_a_larger_tube_are_larger_and_more_of_them_smaller()
    {
        Assert.True(Vents.HoleMm(9000, 2) > Vents.HoleMm(4000, 2));
        Assert.True(Vents.HoleMm(9000, 4) < Vents.HoleMm(9000, 2));
    }

    [Fact]
    public void Thicker_rods_are_fewer_and_thin_legs_take_thin_rods()
    {
        Assert.True(
            Electrodes.RodCount(2, Electrodes.CoreKg(3.2, 350, 50), 0.9)
                < Electrodes.RodCount(2, Electrodes.CoreKg(2.5, 350, 50), 0.9)
        );
        Assert.Equal([2.5, 3.2, 3.2, 4], new double[] { 3, 4.5, 8, 10 }.Select(Electrodes.RodMm));
    }
}

using CsCheck;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class StandLegsTests
{
    private static FrameSection Bar(double areaMm2) => new(areaMm2, 2_263_500, 2_263_500, 3_620_100);

    // SI-A08b: one face of the worked stand, two bays of 2.0 x 3.0 m, only the tension diagonals.
    [Fact]
    public void The_exact_truss_of_one_face_is_softer_than_the_closed_form()
    {
        const EndRelease pin = EndRelease.BendingY | EndRelease.BendingZ;
        FrameMember Rod(string mark, int from, int to, double areaMm2) =>
            new(mark, from, to, Bar(areaMm2), new(0, 1, 0), pin, pin | EndRelease.Torsion);
        var held = FrameFix.AlongY | FrameFix.AboutX | FrameFix.AboutY | FrameFix.AboutZ;
        var model = new FrameModel(
            [new(0, 0, 0), new(2000, 0, 0), new(0, 0, 3000), new(2000, 0, 3000), new(0, 0, 6000), new(2000, 0, 6000)],
            [
                Rod("C1", 0, 2, 1495),
                Rod("C2", 1, 3, 1495),
                Rod("C1", 2, 4, 1495),
                Rod("C2", 3, 5, 1495),
                Rod("H1", 2, 3, 813),
                Rod("H2", 4, 5, 1626),
                Rod("D1", 0, 3, 582),
                Rod("D2", 2, 5, 582),
            ],
            [
                new(0, FrameFix.Clamped),
                new(1, FrameFix.Clamped),
                .. Enumerable.Range(2, 4).Select(node => new FrameSupport(node, held)),
            ]
        );
        var result = FrameAnalysis.Of(model).Solve(new("unit load", [new(4, new(1000, 0, 0))], [], []));
        var mmPerKN = result.Movements[4].MoveMm.XMm;
        Assert.Equal(0.33833, mmPerKN, 0.33833 * 0.001);
        Assert.Equal(5911, 2 / mmPerKN * 1000, 5911 * 0.001);
        Assert.True(2 / mmPerKN * 1000 < StandLegs.StiffnessNPerMm(6000, 2000, 2, 582, 1495));
    }

    // SI-A09: the frame's own buckling says 1.589 where K h/V says 1.932.
    [Fact]
    public void Legs_without_braces_buckle_before_the_stiffness_says_so()
    {
        // The closed form has legs that do not shorten.
        var leg = new FrameSection(1495e3, 2_263_500, 2_263_500, 3_620_100);
        var stiff = new FrameSection(1495e3, 2.2635e12, 2.2635e12, 3.62e12);
        var foot = FrameFix.Pinned | FrameFix.AboutX | FrameFix.AboutZ;
        var model = new FrameModel(
            [new(0, 0, 0), new(2000, 0, 0), new(0, 0, 6000), new(2000, 0, 6000)],
            [
                new("C1", 0, 2, leg, new(0, 1, 0)),
                new("C2", 1, 3, leg, new(0, 1, 0)),
                new("B1", 2, 3, stiff, new(0, 1, 0)),
            ],
            [
                new(0, foot),
                new(1, foot),
                new(2, FrameFix.AlongY | FrameFix.AboutX | FrameFix.AboutZ),
                new(3, FrameFix.AlongY | FrameFix.AboutX | FrameFix.AboutZ),
            ]
        ).Divided(6);
        var loads = new LoadCase(
            "weight",
            [new(2, new(0, 0, -82_010 / 4.0)), new(3, new(0, 0, -82_010 / 4.0))],
            [],
            []
        );
        var analysis = FrameAnalysis.Of(model);
        var alpha = analysis.CriticalFactor(analysis.Solve(loads))!.Value;
        Assert.Equal(1.589, alpha, 1.589 * 0.002);
        Assert.True(alpha < StandLegs.CriticalFactor(26.41, 6, 82.01));
    }

    [Fact]
    public void More_legs_or_a_wider_foot_take_less_each() =>
        Gen.Select(Gen.Double[1, 500], Gen.Int[4, 8], Gen.Double[0.5, 4])
            .Sample(
                (moment, legs, radius) =>
                {
                    var each = StandLegs.LegKN(moment, legs, radius);
                    Assert.True(StandLegs.LegKN(moment, legs + 1, radius) < each);
                    Assert.True(StandLegs.LegKN(moment, legs, radius * 1.2) < each);
                }
            );

    [Fact]
    public void An_empty_tank_needs_straps_from_a_wind_on_and_never_less_in_a_stronger_one() =>
        Gen.Select(Gen.Double[0, 20_000], Gen.Double[100, 20_000], Gen.Double[0.5, 4], Gen.Double[0.5, 6])
            .Sample(
                (push, weight, height, width) =>
                {
                    var pull = TankHold.StrapN(push, weight, height, width);
                    Assert.True(pull >= 0);
                    Assert.True(TankHold.StrapN(push * 1.1, weight, height, width) >= pull);
                    Assert.True(TankHold.StayKg(push * 1.1, weight) >= TankHold.StayKg(push, weight));
                }
            );

    // The empty worked tank turns over at 15.5 m/s, with factors at 12.0 m/s.
    [Theory]
    [InlineData(11.9, false)]
    [InlineData(12.1, true)]
    public void The_empty_worked_tank_stays_up_to_twelve_metres_a_second(double basicMPerS, bool needsStraps)
    {
        var gust = WindPressure.PeakNPerM2(basicMPerS, Terrain.Of("II"), 8.3);
        var pull = TankHold.StrapN(TankHold.PushN(gust, 0.8, 1.8, 2.1), 120 * 9.80665, 2.1, 1.8);
        Assert.Equal(needsStraps, pull > 0);
    }

    [Fact]
    public void A_longer_span_sags_by_its_fourth_power() =>
        Gen.Select(Gen.Double[0.1, 50], Gen.Double[0.2, 5], Gen.Double[1e4, 1e8])
            .Sample(
                (load, span, inertia) =>
                {
                    Assert.Equal(
                        16,
                        FloorBeam.SagMm(load, 2 * span, inertia) / FloorBeam.SagMm(load, span, inertia),
                        1e-9
                    );
                    Assert.Equal(4, FloorBeam.MomentKNm(load, 2 * span) / FloorBeam.MomentKNm(load, span), 1e-9);
                }
            );
}

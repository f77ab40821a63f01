using CsCheck;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class FrameAnalysisTests
{
    private static readonly FrameSection Tube = new(540.8, 194_671, 194_671, 321_347);

    // The arm starts at a height of 2 m and is 300 mm long at least: next to a much shorter member figures are lost.
    private static readonly Gen<(Point Place, Force Force, Force Spread, double Share)> Case = Gen.Select(
        Gen.Select(
            Gen.Double[-3000, 3000],
            Gen.Double[-3000, 3000],
            Gen.Double[2300, 4000],
            (x, y, z) => new Point(x, y, z)
        ),
        Gen.Select(
            Gen.Double[-5000, 5000],
            Gen.Double[-5000, 5000],
            Gen.Double[-5000, 5000],
            (x, y, z) => new Force(x, y, z)
        ),
        Gen.Select(Gen.Double[-2, 2], Gen.Double[-2, 2], Gen.Double[-2, 2], (x, y, z) => new Force(x, y, z)),
        Gen.Double[0.01, 0.99]
    );

    // A post, an arm to any place, and a strut from there to the ground.
    private static FrameModel Tripod(Point place, EndRelease release = EndRelease.None) =>
        new(
            [new(0, 0, 0), new(0, 0, 2000), place, place + new Point(700, -900, -place.ZMm)],
            [
                new("C1", 0, 1, Tube, new(0, 1, 0)),
                new("A1", 1, 2, Tube, Side(place - new Point(0, 0, 2000))),
                new("S1", 3, 2, Tube, new(0, 1, 0.3), release, release),
            ],
            [new(0, FrameFix.Clamped), new(3, FrameFix.Clamped)]
        );

    private static Point Side(Point along) => Math.Abs(along.ZMm) > Math.Abs(along.XMm) ? new(1, 0, 0) : new(0, 0.1, 1);

    private static LoadCase Loads(Force force, Force spread, double atMm) =>
        new("case", [new(2, force)], [new(0, spread), new(1, spread)], [new(1, atMm, force)]);

    [Fact]
    public void Reactions_carry_any_load() =>
        Case.Sample(
            (place, force, spread, share) =>
            {
                var model = Tripod(place);
                var result = FrameAnalysis.Of(model).Solve(Loads(force, spread, share * model.LengthMm(1)));
                Assert.InRange(result.ImbalanceShare, 0, 1e-6);
            }
        );

    // Loads that pass through the origin have no moment about it: what is left over is rounding, not imbalance.
    [Fact]
    public void Loads_through_the_origin_are_carried_too()
    {
        var model = Tripod(new(-9.431e-12, 0, 3067));
        var result = FrameAnalysis.Of(model).Solve(Loads(new(0, 0, 15), new(0, 0, -0.294), 600));
        Assert.InRange(result.ImbalanceShare, 0, 1e-6);
    }

    [Fact]
    public void Members_in_pieces_move_as_the_whole_ones_do() =>
        Case.Sample(
            (place, force, spread, share) =>
            {
                var model = Tripod(place, EndRelease.BendingY | EndRelease.BendingZ);
                var loads = Loads(force, spread, share * model.LengthMm(1));
                var whole = FrameAnalysis.Of(model).Solve(loads);
                var pieces = FrameAnalysis.Of(model.Divided(4)).Solve(loads.Divided(model, 4));
                var size = whole.Movements.Max(move => move.MoveMm.LengthMm);
                Assert.InRange((whole.Movements[2].MoveMm - pieces.Movements[2].MoveMm).LengthMm, 0, 1e-8 * size);

                // Three nodes inside each member follow the first four; the arm's middle is its second.
                var middle = pieces.Movements[4 + 3 + 1].MoveMm;
                Assert.InRange((whole.MovementMm(1, 0.5) - middle).LengthMm, 0, 1e-8 * Math.Max(size, 1));
            }
        );

    [Fact]
    public void Forces_inside_lead_from_one_end_to_the_other() =>
        Case.Sample(
            (place, force, spread, share) =>
            {
                var model = Tripod(place);
                var result = FrameAnalysis.Of(model).Solve(Loads(force, spread, share * model.LengthMm(1)));
                var (inside, end) = (result.At(1, model.LengthMm(1)), result.EndsOf(1).End);
                var size = Math.Max(1, Math.Abs(end.Moment.YNMm) + Math.Abs(end.Moment.ZNMm));
                Assert.Equal(end.Force.XN, inside.TensionN, 1e-7 * size);
                Assert.Equal(end.Force.YN, inside.ShearYN, 1e-7 * size);
                Assert.Equal(end.Force.ZN, inside.ShearZN, 1e-7 * size);
                Assert.Equal(end.Moment.XNMm, inside.TorsionNMm, 1e-7 * size);
                Assert.Equal(end.Moment.YNMm, inside.BendingYNMm, 1e-7 * size);
                Assert.Equal(end.Moment.ZNMm, inside.BendingZNMm, 1e-7 * size);
            }
        );

    [Fact]
    public void Second_order_moments_inside_lead_from_one_end_to_the_other()
    {
        var model = Tripod(new(1200, 800, 2500));
        var frame = FrameAnalysis.Of(model);
        var loads = Loads(new(400, 300, -2000), new(0.1, 0.2, -0.3), 500);
        var second = frame.SolveSecondOrder(loads, frame.Solve(loads));
        for (var member = 0; member < 3; member++)
        {
            var (inside, end) = (second.At(member, model.LengthMm(member)), second.EndsOf(member).End);
            Near.Share(end.Moment.YNMm, inside.BendingYNMm, 1e-6);
            Near.Share(end.Moment.ZNMm, inside.BendingZNMm, 1e-6);
        }
    }

    [Fact]
    public void No_place_has_a_larger_moment_than_the_extremes_say() =>
        Case.Sample(
            (place, force, spread, share) =>
            {
                var model = Tripod(place);
                var result = FrameAnalysis.Of(model).Solve(Loads(force, spread, share * model.LengthMm(1)));
                var most = result.Extremes(1).Max(at => Math.Abs(at.BendingYNMm));
                for (var i = 0; i <= 50; i++)
                {
                    var here = Math.Abs(result.At(1, model.LengthMm(1) * i / 50).BendingYNMm);
                    Assert.True(here <= (most * (1 + 1e-9)) + 1e-6, $"{here} at {i}/50 against {most}");
                }
            }
        );

    [Fact]
    public void A_pinned_strut_takes_no_moment_at_its_ends() =>
        Case.Sample(
            (place, force, spread, share) =>
            {
                var model = Tripod(place, EndRelease.BendingY | EndRelease.BendingZ);
                var result = FrameAnalysis.Of(model).Solve(Loads(force, spread, share * model.LengthMm(1)));
                var (start, end) = result.EndsOf(2);
                Assert.All(
                    [start.Moment.YNMm, start.Moment.ZNMm, end.Moment.YNMm, end.Moment.ZNMm],
                    moment => Assert.Equal(0, moment, 1e-6)
                );
            }
        );

    [Fact]
    public void Twice_the_load_halves_the_critical_factor() =>
        Gen.Double[0.1, 20]
            .Sample(times =>
            {
                var model = Tripod(new(1500, 200, 2100)).Divided(2);
                var frame = FrameAnalysis.Of(model);
                double Factor(double scale) =>
                    frame
                        .CriticalFactor(frame.Solve(new("down", [new(2, new Force(0, 0, -1000) * scale)], [], [])))!
                        .Value;
                Near.Share(Factor(1) / times, Factor(times), 1e-6);
            });

    [Fact]
    public void A_frame_in_tension_does_not_buckle()
    {
        var model = new FrameModel(
            [new(0, 0, 0), new(0, 0, -2000)],
            [new("H1", 0, 1, Tube, new(0, 1, 0))],
            [new(0, FrameFix.Clamped)]
        );
        var frame = FrameAnalysis.Of(model);
        Assert.Null(frame.CriticalFactor(frame.Solve(new("pull", [new(1, new(0, 0, -1000))], [], []))));
    }

    [Fact]
    public void Above_the_critical_load_there_is_no_second_order_answer()
    {
        var model = Tripod(new(0, 0, 3000));
        var frame = FrameAnalysis.Of(model);
        var unit = new LoadCase("down", [new(1, new(0, 0, -1000))], [], []);
        var factor = frame.CriticalFactor(frame.Solve(unit))!.Value;
        var heavy = LoadCase.Combined("heavy", [(unit, factor * 1.1)]);
        Assert.Throws<MechanismException>(() => frame.SolveSecondOrder(heavy, frame.Solve(heavy)));
    }

    [Fact]
    public void A_loose_frame_is_named_by_its_place()
    {
        var loose = new FrameModel(
            [new(0, 0, 0), new(0, 0, 2000)],
            [new("C7", 0, 1, Tube, new(0, 1, 0))],
            [new(0, FrameFix.Pinned)]
        );
        var said = Assert.Throws<MechanismException>(() => FrameAnalysis.Of(loose)).Message;
        Assert.Contains("C7", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_node_without_a_member_is_loose()
    {
        var model = Tripod(new(100, 0, 2500)) with { };
        var lone = model with { Nodes = [.. model.Nodes, new Point(9, 9, 9)] };
        Assert.Contains(
            "no member",
            Assert.Throws<MechanismException>(() => FrameAnalysis.Of(lone)).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_member_without_length_is_named()
    {
        var model = new FrameModel(
            [new(0, 0, 0), new(0, 0, 0)],
            [new("C3", 0, 1, Tube, new(0, 1, 0))],
            [new(0, FrameFix.Clamped)]
        );
        Assert.Contains(
            "C3",
            Assert.Throws<ArgumentException>(() => FrameAnalysis.Of(model)).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_load_beside_its_member_is_refused()
    {
        var frame = FrameAnalysis.Of(Tripod(new(100, 0, 2500)));
        Assert.Throws<ArgumentException>(() => frame.Solve(new("x", [], [], [new(0, 2001, new(1, 0, 0))])));
        Assert.Throws<ArgumentException>(() => frame.Solve(new("x", [new(9, new(1, 0, 0))], [], [])));
        Assert.Throws<ArgumentException>(() => frame.Solve(new("x", [], [new(0, new(double.NaN, 0, 0))], [])));
    }
}

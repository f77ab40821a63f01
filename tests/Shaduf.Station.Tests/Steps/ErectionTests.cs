using Shaduf.Ground;
using Shaduf.Working;
using Shaduf.Workshop;

namespace Shaduf.Station.Tests;

/// <summary>The rack of the custom on the days before its concrete holds.</summary>
public sealed class ErectionTests
{
    private static readonly RackStrength s_rack = CustomRack.Strength(CustomRack.Brief);
    private static readonly Erection s_works = Works(20);

    /// <summary>By hand: 26 · 0.7764 = 20.19 m/s; gust 20.19²/26² of that of the design.</summary>
    [Fact]
    public void Three_days_see_the_wind_of_two_years_and_no_less_than_20()
    {
        Assert.Equal(20.19, s_works.StageMPerS, 0.005);
        Assert.Equal(s_rack.Wind.PeakKNPerM2 * 0.6028, s_works.StageKNPerM2, 0.0005);
        var calm = s_works with { Wind = s_rack.Wind with { BasicMPerS = 12 } };
        Assert.Equal(20, calm.StageMPerS);
    }

    [Fact]
    public void Ropes_hold_one_and_a_half_times_the_moment_of_the_wind_and_anchors_their_proof()
    {
        var (drag, slope) = (s_works.Worst, Erection.RopeDeg * Math.PI / 180);
        Assert.Equal(
            1.5 * s_works.WindKN * drag.HeightM,
            ((s_works.RopesASide * s_works.RopeKN) - (s_works.LiftKN / 4 / Math.Sin(slope)))
                * Math.Cos(slope)
                * s_works.TiedM,
            1e-6
        );
        Assert.Equal(Math.Max(0, (1.5 * s_works.PressKN) - (0.9 * s_works.FrameKg * 9.80665e-3)), s_works.LiftKN, 1e-9);
        Assert.True(s_works.RopesASide >= 2);
        Assert.True(Erection.ProofFactor * s_works.RopeKN <= Erection.AnchorKN + 1e-9);
        Assert.InRange(s_works.BreakingKN, 5 * s_works.RopeKN, (5 * s_works.RopeKN) + 1);
        Assert.True(drag.DragM2 >= s_works.Across.DragM2 || drag.DragM2 >= s_works.Along.DragM2);
        Assert.InRange(drag.HeightM, 0.5, s_works.Wind.HeightM);
    }

    /// <summary>A frame that is the same from both ends has its middle half way along.</summary>
    [Fact]
    public void The_centre_of_gravity_is_that_of_the_parts()
    {
        var parts = s_rack.Rack.Steel.Parts;
        var by = parts.Sum(part => part.MassKg * (part.Shape.Start.YMm + part.Shape.End.YMm) / 2) / s_works.FrameKg;
        Assert.Equal(by, s_works.CentreMm.YMm, 1e-6);
        Assert.InRange(s_works.CentreMm.XMm - (s_rack.Rack.Size.LengthMm / 2), -60, 60);
    }

    [Fact]
    public void Cold_concrete_waits_longer_and_frozen_months_are_left_out()
    {
        var modules = s_works.Steps[2];
        Assert.True(Works(10).Days(modules, 0) > s_works.Days(modules, 0));
        Assert.Null(Works(4).Days(modules, 0));
        Assert.Equal(0.90, modules.StrengthShare);

        // Share 0.90 with s 0.38: t = 28/(1 − ln 0.9/0.38)² = 17.2 days at 20 degC.
        Assert.Equal(18, s_works.Days(modules, 0));
        Assert.All(
            s_works.Steps.Zip(s_works.Steps.Skip(1)),
            pair => Assert.True(s_works.Days(pair.Second, 0) >= s_works.Days(pair.First, 0))
        );
        var cure = ErectionFindings.Of(Works(4), SoilKind.Sand).Single(finding => finding.Id == "build/cure");
        Assert.Equal(FindingStatus.Look, cure.Status);
    }

    [Fact]
    public void A_load_is_for_so_many_people_or_for_gear()
    {
        Assert.Equal(1, Erection.People(20));
        Assert.Equal(2, Erection.People(21));
        Assert.Equal(8, Erection.People(80));
        Assert.Null(Erection.People(81));
        Assert.Equal(s_works.FrameKg * 9.80665e-3 / (2 * Math.Sin(Math.PI / 3)), s_works.SlingKN, 1e-6);
    }

    [Fact]
    public void A_pit_deeper_than_a_man_may_stand_in_asks_for_boards()
    {
        FindingStatus Of(double depthMm) =>
            ErectionFindings
                .Of(
                    s_works with
                    {
                        Footings = s_works.Footings with { Block = s_works.Footings.Block with { DepthMm = depthMm } },
                    },
                    SoilKind.Sand
                )
                .Single(finding => finding.Id == "build/pits")
                .Status;
        Assert.Equal(FindingStatus.Holds, Of(1000 * PitSide.UprightM));
        Assert.Equal(FindingStatus.Look, Of((1000 * PitSide.UprightM) + 50));
    }

    [Fact]
    public void Work_is_held_before_casting_after_it_and_before_the_load() =>
        Assert.Equal(4, s_works.Work.Count(step => step.StartsWith("Hold:", StringComparison.Ordinal)));

    private static Erection Works(double airDegC) =>
        new(s_rack.Rack, Footings.Of(CustomRack.Brief, s_rack.Rack), s_rack.Wind, [.. Enumerable.Repeat(airDegC, 12)])
        {
            Strength = s_rack,
            GroundKPa = 72,
        };
}

using Shaduf.Steel;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>Raising a stand: ropes, lifting, waiting, by hand calculation.</summary>
public sealed class StandErectionTests
{
    private static readonly Design s_design = Examples.DesignOf("plain-school");
    private static readonly StandErection s_works = s_design.Works.StandErection!;

    // By hand: 24 m/s once in 50 years is 18.6 m/s once in two; 20 m/s is the floor.
    [Fact]
    public void Ropes_hold_a_row_in_the_wind_of_the_stage()
    {
        Assert.Equal(20, s_works.StageMPerS, 1e-9);
        var area = s_design.Works.Stand!.Strength.Drag.Faces.AlongY.SolidM2;
        var gust = WindPressure.PeakNPerM2(20, Terrain.Of("II"), s_works.TiedM) / 1000;
        Assert.Equal(2.0 * area * gust, s_works.WindKN, 1e-6);
        Assert.Equal(1.5 * s_works.WindKN / 2 / Math.Cos(Math.PI / 4), s_works.RopesASide * s_works.RopeKN, 0.01);
        Assert.True(1.5 * s_works.RopeKN <= Erection.AnchorKN);
    }

    [Fact]
    public void A_row_is_half_of_the_legs_and_one_of_four_faces()
    {
        var stand = s_design.Works.Stand!.Stand;
        var tower = StandStrength.TowerKg(stand);
        var legs = stand.Steel.Parts.Where(part => part.Role == TankStand.LegRole).Sum(part => part.MassKg);
        Assert.Equal((legs / 2) + ((tower - legs) / 4), s_works.RowKg, 0.01);
        Assert.InRange(s_works.RowCentreMm, 0.4 * 1000 * s_works.TiedM, 0.65 * 1000 * s_works.TiedM);

        // Pole leaning 15 deg, guy 40 deg: P = 1.3 W cos 40/cos 55.
        var hoisted = 1.3 * s_works.RowKg * 9.80665 / 1000;
        Assert.Equal(hoisted * Math.Cos(40 * Math.PI / 180) / Math.Cos(55 * Math.PI / 180), s_works.PoleKN, 0.01);
        Assert.Equal(s_works.RowKg * 9.80665 / 1000 / 2 / Math.Sin(Math.PI / 3), s_works.SlingKN, 0.01);
    }

    // Push on 1.8 x 2.1 m at 9 m/s: 0.5 · 1.225 · 81 · 1.2 · A.
    [Fact]
    public void A_hanging_tank_is_pushed_as_the_formula_says()
    {
        var tank = s_design.Works.Stand!.Stand.Plan.Tank;
        Assert.Equal(0.5 * 1.225 * 81 * 1.2 * tank.WidthMm * tank.HeightMm * 1e-6, s_works.TankPushN, 0.01);
    }

    [Fact]
    public void The_tank_is_filled_last_and_never_before_two_weeks()
    {
        var filled = s_works.Steps.Single(step => step.Name == "tank filled");
        Assert.Equal(0.90, filled.StrengthShare);
        Assert.All(s_works.AirDegC, air => Assert.True(filled.DaysAt(air) >= 14));
        Assert.Null(filled.DaysAt(2));
        Assert.Contains(s_works.Work, step => step.Contains("bar of 12 mm", StringComparison.Ordinal));
        Assert.Contains(s_works.Work, step => step.Contains("plumb within", StringComparison.Ordinal));
        foreach (var id in new[] { "build/stand-ropes", "build/stand-lift", "build/stand-cure" })
        {
            Assert.NotEqual(FindingStatus.Stop, s_design.Findings.Single(finding => finding.Id == id).Status);
        }
    }
}

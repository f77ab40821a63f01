using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Station.Tests;

/// <summary>A customary rack: two rows of seven modules of 2.2 m x 1.1 m x 35 mm, one line of three columns.</summary>
public sealed class RackStrengthTests
{
    private static readonly RackStrength s_strength = Strength(15)!;

    /// <summary>EN 1991-1-4, table 7.6, at 15 deg: +0.7 and −1.1, square to the plane.</summary>
    [Fact]
    public void Wind_on_the_plane_reaches_the_ground_whole()
    {
        var areaM2 = s_strength.Rack.Size.LengthMm * s_strength.Rack.Size.DepthMm * 1e-6;
        foreach (var edge in new[] { "low", "high" })
        {
            // Between the two the push on tubes and edges drops out.
            var lifted =
                Feet($"wind from the {edge} edge, down").Sum(foot => foot.Force.ZN)
                - Feet($"wind from the {edge} edge, up").Sum(foot => foot.Force.ZN);
            Assert.Equal((0.7 + 1.1) * areaM2 * 1000 * Math.Cos(15 * Math.PI / 180), lifted, 0.002 * lifted);
        }
    }

    /// <summary>The force acts at a quarter of the slope from the windward edge: M = F times its lever about the foot.</summary>
    [Fact]
    public void Wind_turns_the_columns_by_the_lever_of_its_force()
    {
        var (size, setting) = (s_strength.Rack.Size, s_strength.Rack.Setting);
        var (sin, cos) = (Math.Sin(15 * Math.PI / 180), Math.Cos(15 * Math.PI / 180));
        var columnY = s_strength.Rack.Skeleton.Feet[0].Ground.YMm;
        foreach (var (edge, share) in new[] { ("low", 0.25), ("high", 0.75) })
        {
            var (y, z) = (size.DepthMm * share * cos, setting.LowEdgeMm + (size.DepthMm * share * sin));
            var force = (0.7 + 1.1) * size.LengthMm * size.DepthMm * RackActions.UnitNPerMm2;
            var byHand = force * (((y - columnY) * cos) + ((z + RackStrength.FixityMm) * sin));
            var turned =
                Feet($"wind from the {edge} edge, down").Sum(foot => foot.Moment.XNMm)
                - Feet($"wind from the {edge} edge, up").Sum(foot => foot.Moment.XNMm);
            Assert.Equal(byHand, turned, 0.01 * Math.Abs(byHand));
        }
    }

    [Fact]
    public void An_even_load_on_the_modules_reaches_the_bearers_whole()
    {
        var loads = new PlaneLoad(s_strength.Rack, s_strength.Cases.Frame).Even(1e-3, new(0, 0, -1)).ToList();
        var whole = loads.Sum(load => load.PerMm.ZN * s_strength.Cases.Frame.Model.LengthMm(load.Member));
        var byArea = -1e-3 * s_strength.Rack.Size.LengthMm * s_strength.Rack.Size.DepthMm;
        Assert.Equal(byArea, whole, 0.003 * Math.Abs(byArea));
    }

    [Fact]
    public void The_frame_is_in_equilibrium() => Assert.InRange(s_strength.Cases.ImbalanceShare, 0, 5e-6);

    [Fact]
    public void The_customary_rack_does_not_hold_a_storm_and_says_up_to_where_it_does()
    {
        Assert.False(s_strength.Holds);
        Assert.Contains(s_strength.Members, use => use.Result.UtilisationShare > 2);
        var stops = s_strength.Wind.StopsAtMPerS(gust => gust < 0.3);
        Assert.Equal(
            0.3,
            WindPressure.PeakNPerM2(stops, s_strength.Wind.Terrain, s_strength.Wind.HeightM) / 1000,
            0.005
        );
        Assert.Equal(RackWind.MostMPerS, s_strength.Wind.StopsAtMPerS(_ => true));
        Assert.Equal(0, s_strength.Wind.StopsAtMPerS(_ => false));
    }

    [Fact]
    public void Beyond_the_table_of_wind_there_is_no_check() => Assert.Null(Strength(31));

    [Fact]
    public void More_wind_never_uses_the_rack_less() =>
        Gen.Double[0.05, 1.5].Sample(gust => Most(gust * 1.2) >= Most(gust) - 1e-9, iter: 20);

    private static double Most(double gust) =>
        s_strength
            .Rules.Uses(s_strength.Cases, s_strength.Combinations.Strength, gust)
            .Max(use => use.Result.UtilisationShare);

    private static List<Reaction> Feet(string action)
    {
        var index = s_strength.Actions.ToList().FindIndex(each => each.Name == action);
        var factors = Enumerable.Range(0, s_strength.Actions.Count).Select(i => i == index ? 1.0 : 0).ToArray();
        return
        [
            .. Enumerable
                .Range(0, s_strength.Rack.Skeleton.Feet.Count)
                .Select(foot => s_strength.Cases.Foot(foot, factors)),
        ];
    }

    private static RackStrength? Strength(double tiltDeg)
    {
        var file = SmallDesign.File();
        var brief = file.Brief with { Rack = file.Brief.Rack with { RowClearanceMm = 0, Angle = null } };
        var module = file.Shelf.Find<ModuleCard>("module-410")!;
        var body = new ModuleBody(2200, 1100, 35, 25, 27.5);
        var rack = Rack.Of(brief.Rack, module with { Body = body }, new(2, 7, 1), tiltDeg, file.Shelf)!;
        return RackStrength.Of(rack, brief, Survey.Of(brief), file.Shelf);
    }
}

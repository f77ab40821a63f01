using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class RouteProfileTests
{
    [Fact]
    public void A_level_top_is_one_high_place()
    {
        var marks = RouteProfile.Marks([new(0, 0), new(100, 5), new(200, 5), new(300, 1), new(400, 9)]);
        Assert.Equal(
            [(RouteFitting.AirValve, 0.0), (RouteFitting.AirValve, 100), (RouteFitting.Washout, 300)],
            marks.Select(mark => (mark.Fitting, mark.At.ChainageM))
        );
    }

    [Fact]
    public void A_long_even_grade_is_parted_by_air_valves_and_the_main_by_line_valves()
    {
        var marks = RouteProfile.Marks([new(0, 0), new(2500, 50)]);
        Assert.Equal(
            [0, 625, 1250, 1875],
            marks.Where(mark => mark.Fitting == RouteFitting.AirValve).Select(mark => mark.At.ChainageM)
        );
        Assert.Equal(
            [625, 1250, 1875],
            marks.Where(mark => mark.Fitting == RouteFitting.LineValve).Select(mark => Math.Round(mark.At.ChainageM, 1))
        );
        Assert.All(marks, mark => Assert.Equal(mark.At.ChainageM / 50, mark.At.LevelM, 5e-10));
    }

    [Fact]
    public void Between_two_high_points_lies_a_low_one() =>
        Gen.Int[0, 20]
            .Array[3, 30]
            .Sample(levels =>
            {
                var marks = RouteProfile
                    .Marks([.. levels.Select((level, i) => new ProfilePoint(10 * i, level))])
                    .Where(mark => mark.Why is "high point" or "low point")
                    .ToList();
                Assert.All(marks.Zip(marks.Skip(1)), pair => Assert.NotEqual(pair.First.Fitting, pair.Second.Fitting));
            });

    [Fact]
    public void A_chainage_that_runs_back_is_refused() =>
        Assert.Throws<ArgumentException>(() => RouteProfile.Marks([new(0, 0), new(50, 1), new(50, 2)]));
}

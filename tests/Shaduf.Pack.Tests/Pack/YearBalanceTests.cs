using System.Globalization;
using System.Text;

namespace Shaduf.Pack.Tests;

/// <summary>No water is made or lost in year.csv.</summary>
public sealed class YearBalanceTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    // Water is written to 0.1 litre, the level to a litre: the most that rounding can leave in one hour.
    private const double RoundingM3 = 0.0011;

    public static TheoryData<string> Names => ExamplePacks.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Water_in_less_water_out_is_the_change_of_the_tank(string name)
    {
        var pack = packs[name];
        var hours = Hours(pack);
        Assert.Equal(8760, hours.Count);
        var levelM3 = pack.Design.Year.StartM3;
        foreach (var hour in hours)
        {
            Assert.True(
                Math.Abs(levelM3 + hour.PumpedM3 - hour.DeliveredM3 - hour.TankM3) < RoundingM3,
                $"{hour.Ending}: {levelM3} + {hour.PumpedM3} - {hour.DeliveredM3} is not {hour.TankM3}"
            );
            Assert.InRange(hour.TankM3, 0, pack.Design.Choice.UsefulM3 + 0.0005);
            Assert.InRange(hour.DeliveredM3, 0, hour.DemandM3);
            Assert.True(hour.PumpedM3 >= 0);
            Assert.True(hour.PumpedM3 == 0 || hour.ArrayW > 0, $"{hour.Ending}: water is pumped without sun");
            levelM3 = hour.TankM3;
        }

        Assert.Equal(pack.Design.Year.EndM3, levelM3, 0.001);
        var change = pack.Design.Year.EndM3 - pack.Design.Year.StartM3;

        // Each hour is told to a litre: the standard deviation of 2 x 8760 roundings is 0.29 L x 132 = 0.038 m3; four of them.
        Assert.Equal(hours.Sum(hour => hour.PumpedM3) - hours.Sum(hour => hour.DeliveredM3), change, 0.15);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Hours_follow_one_another_from_the_first_to_the_last(string name)
    {
        var hours = Hours(packs[name]);
        Assert.All(
            hours.Zip(hours.Skip(1)),
            pair => Assert.Equal(TimeSpan.FromHours(1), pair.Second.Ending - pair.First.Ending)
        );
        Assert.Equal(new(hours[0].Ending.Year, 1, 1, 1, 0, 0, DateTimeKind.Unspecified), hours[0].Ending);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_array_never_gives_more_than_its_modules_and_pumps_only_what_the_source_may(string name)
    {
        var pack = packs[name];
        var hours = Hours(pack);
        Assert.True(hours.Max(hour => hour.ArrayW) <= 1.2 * pack.Design.Choice.ArrayW);
        Assert.True(hours.Max(hour => hour.ArrayW) >= 0.5 * pack.Design.Choice.ArrayW);
        Assert.True(hours.Max(hour => hour.PumpedM3) <= pack.Design.Source.YieldM3PerH + 0.0001);
    }

    private static List<Hour> Hours(ExamplePacks.Made pack) =>
        [
            .. Encoding
                .UTF8.GetString(pack.Files["year.csv"])
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Where(line => !line.StartsWith('#'))
                .Skip(1)
                .Select(line => line.Split(','))
                .Select(cells => new Hour(
                    DateTime.ParseExact(cells[0], "yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture),
                    Figure(cells[4]),
                    Figure(cells[5]),
                    Figure(cells[6]),
                    Figure(cells[7]),
                    Figure(cells[8])
                )),
        ];

    private static double Figure(string cell) =>
        double.Parse(cell, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private sealed record Hour(
        DateTime Ending,
        double ArrayW,
        double PumpedM3,
        double DemandM3,
        double DeliveredM3,
        double TankM3
    );
}

using CsCheck;
using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class StringSizingTests
{
    private static readonly Gen<ModuleSheet> Module =
        from openV in Gen.Double[20, 70]
        from fill in Gen.Double[0.8, 0.86]
        from voltagePerK in Gen.Double[-0.004, -0.002]
        from powerPerK in Gen.Double[-0.005, -0.0025]
        select Samples.Module with
        {
            OpenCircuitV = openV,
            MaximumPowerV = openV * fill,
            Coefficients = new(powerPerK, voltagePerK, 0.0005),
        };

    [Fact]
    public void Both_ends_are_the_last_counts_that_hold() =>
        Gen.Select(Module, Gen.Double[300, 1000], Gen.Double[-30, 20], Gen.Double[50, 80])
            .Sample(
                (module, largestV, coldDegC, hotDegC) =>
                {
                    var drive = Samples.Drive with { LargestDcV = largestV };
                    var range = StringSizing.Series(module, drive, Samples.Motor, coldDegC, hotDegC, 10);
                    var neededV = Math.Max(drive.WindowLowV, Math.Sqrt(2) * Samples.Motor.RatedV);
                    double ColdV(int count) => StringVoltage.ColdOpenCircuitV(module, count, coldDegC);
                    double HotV(int count) => StringVoltage.AgedHotMaximumPowerV(module, count, hotDegC, 10);
                    Assert.True(ColdV(range.Most) <= largestV * 1.000001);
                    Assert.True(ColdV(range.Most + 1) > largestV);
                    Assert.True(HotV(range.Fewest) >= neededV * 0.999999);
                    Assert.True(range.Fewest == 1 || HotV(range.Fewest - 1) < neededV);
                }
            );

    [Fact]
    public void No_string_names_the_limits_that_bind()
    {
        var range = StringSizing.Series(Samples.Module, Samples.Drive, Samples.Motor, 5, 70, 10);
        Assert.False(range.Exists);
        Assert.Equal((17, 15), (range.Fewest, range.Most));
        Assert.Contains("full speed of a 400 V motor", range.WhyFewest, StringComparison.Ordinal);
        Assert.Contains("800 V that the drive takes", range.WhyMost, StringComparison.Ordinal);
        Assert.Contains("841.5 V", range.WhyMost, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lower_top_speed_can_be_accepted()
    {
        var range = StringSizing.InWindow(Samples.Module, Samples.Drive, 5, 70, 10);
        Assert.True(range.Exists);
        Assert.Equal((8, 15), (range.Fewest, range.Most));
        Assert.Contains("250 V at which the drive's window begins", range.WhyFewest, StringComparison.Ordinal);
    }

    [Fact]
    public void The_module_can_bind_before_the_drive()
    {
        var range = StringSizing.InWindow(Samples.Module with { SystemV = 600 }, Samples.Drive, 5, 70, 10);
        Assert.Equal(11, range.Most);
        Assert.Contains("600 V that the module is rated for", range.WhyMost, StringComparison.Ordinal);
    }

    [Fact]
    public void A_brushless_motor_is_bound_by_the_window_only()
    {
        var range = StringSizing.Series(Samples.Module, Samples.SmallController, Samples.SmallMotor, 5, 70, 10);
        Assert.Equal((2, 3), (range.Fewest, range.Most));
    }

    [Fact]
    public void A_drive_for_another_kind_of_motor_has_no_string()
    {
        var range = StringSizing.Series(Samples.Module, Samples.Drive, Samples.SmallMotor, 5, 70, 10);
        Assert.False(range.Exists);
        Assert.Contains("kind of motor", range.WhyMost, StringComparison.Ordinal);
    }

    [Fact]
    public void One_module_can_be_too_much()
    {
        var range = StringSizing.InWindow(
            Samples.Module,
            Samples.SmallController with
            {
                LargestDcV = 50,
                WindowLowV = 20,
            },
            5,
            70,
            10
        );
        Assert.Equal(0, range.Most);
        Assert.False(range.Exists);
    }

    [Fact]
    public void An_unknown_limit_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            StringSizing.InWindow(Samples.Module, Samples.Drive with { WindowLowV = double.NaN }, 5, 70, 10)
        );

    [Fact]
    public void Strings_are_counted_by_short_circuit_current()
    {
        Assert.Equal(2, StringSizing.MostStrings(Samples.Module, Samples.Drive));
        var exact = Samples.Drive with { LargestShortCircuitA = 3 * 1.25 * Samples.Module.ShortCircuitA };
        Assert.Equal(3, StringSizing.MostStrings(Samples.Module, exact));
        Assert.Equal(0, StringSizing.MostStrings(Samples.Module, Samples.Drive with { LargestShortCircuitA = 10 }));
    }

    [Fact]
    public void Cold_raises_both_voltages_and_age_lowers_the_hot_one()
    {
        Assert.True(
            StringVoltage.ColdMaximumPowerV(Samples.Module, 10, 0)
                < StringVoltage.ColdOpenCircuitV(Samples.Module, 10, 0)
        );
        Assert.True(StringVoltage.ColdMaximumPowerV(Samples.Module, 10, 0) > 10 * Samples.Module.MaximumPowerV);
        Assert.Equal(
            0.975 * StringVoltage.HotMaximumPowerV(Samples.Module, 10, 70),
            StringVoltage.AgedHotMaximumPowerV(Samples.Module, 10, 70, 10),
            5e-10
        );
    }

    [Fact]
    public void Age_lowers_the_hot_voltage_and_can_ask_for_one_module_more()
    {
        Assert.Equal(
            StringVoltage.HotMaximumPowerV(Samples.Module, 10, 70),
            StringVoltage.AgedHotMaximumPowerV(Samples.Module, 10, 70, 0),
            5e-10
        );
        Assert.True(
            StringVoltage.FewestInSeries(Samples.Module, 565.7, 70, 25)
                > StringVoltage.FewestInSeries(Samples.Module, 565.7, 70, 0)
        );
    }
}

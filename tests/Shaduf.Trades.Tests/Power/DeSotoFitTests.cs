using CsCheck;
using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class DeSotoFitTests
{
    // Any data sheet in the ranges of a card.
    internal static readonly Gen<ModuleSheet> Sheet = Gen.Select(
        Gen.Double[10, 120],
        Gen.Double[0.5, 30],
        Gen.Select(Gen.Double[0.72, 0.92], Gen.Double[0.85, 0.99]),
        Gen.Select(Gen.Double[-0.006, 0], Gen.Double[0, 0.002], Gen.Double[-0.006, 0]),
        (openV, shortA, filled, perK) =>
            new ModuleSheet(
                openV * filled.Item1 * shortA * filled.Item2,
                openV,
                shortA,
                openV * filled.Item1,
                shortA * filled.Item2,
                new(perK.Item3, perK.Item1, perK.Item2),
                45,
                1500,
                25
            )
    );

    // Sheets as makers print them.
    internal static readonly Gen<ModuleSheet> Usual = Gen.Select(
        Gen.Double[20, 60],
        Gen.Double[3, 20],
        Gen.Select(Gen.Double[0.8, 0.86], Gen.Double[0.91, 0.96]),
        Gen.Select(Gen.Double[-0.0035, -0.0022], Gen.Double[0.0002, 0.0008]),
        (openV, shortA, filled, perK) =>
            new ModuleSheet(
                openV * filled.Item1 * shortA * filled.Item2,
                openV,
                shortA,
                openV * filled.Item1,
                shortA * filled.Item2,
                new(-0.0035, perK.Item1, perK.Item2),
                45,
                1500,
                25
            )
    );

    [Fact]
    public void Every_usual_sheet_has_a_fit_that_keeps_its_figures() =>
        Usual.Sample(sheet =>
        {
            var fit = DeSotoFit.Of(sheet);
            var diode = fit.Module.Reference;
            var point = SingleDiode.MaximumPower(diode);
            Near(sheet.OpenCircuitV, SingleDiode.OpenCircuitV(diode), 1e-9);
            Near(sheet.ShortCircuitA, SingleDiode.ShortCircuitA(diode), 1e-9);
            Near(sheet.MaximumPowerV * sheet.MaximumPowerA, point.PowerW, 1e-9);
            Near(sheet.MaximumPowerV, point.VoltageV, fit.IsExact ? 1e-5 : DeSotoFit.MostVoltageMissShare);
            var warmerV = SingleDiode.OpenCircuitV(DeSoto.At(fit.Module, 1000, 27));
            Near(sheet.OpenCircuitV * (1 + (2 * sheet.Coefficients.VoltagePerK)), warmerV, 1e-9);
            Assert.InRange(fit.PowerPerK, -0.006, -0.001);
        });

    private static void Near(double expected, double obtained, double share) =>
        Assert.True(Math.Abs(obtained - expected) <= share * expected, $"{expected} expected, {obtained} obtained");

    [Fact]
    public void Any_sheet_is_fitted_or_refused_in_words() =>
        Sheet.Sample(sheet =>
        {
            try
            {
                var fit = DeSotoFit.Of(sheet);
                var point = SingleDiode.MaximumPower(fit.Module.Reference);
                Near(sheet.MaximumPowerV * sheet.MaximumPowerA, point.PowerW, 1e-6);
            }
            catch (ArgumentException refusal)
            {
                Assert.True(refusal.Message.Length > 20, refusal.Message);
                Assert.DoesNotContain("NaN", refusal.Message, StringComparison.Ordinal);
            }
        });

    [Fact]
    public void Fitted_modules_give_a_finite_power_everywhere() =>
        Gen.Select(Usual, Gen.Double[0, 1500], Gen.Double[-40, 100])
            .Sample(
                (sheet, irradianceWPerM2, cellDegC) =>
                {
                    var module = DeSotoFit.Of(sheet).Module;
                    var powerW = DeSoto.MaximumPowerW(module, irradianceWPerM2, cellDegC);
                    Assert.InRange(powerW, 0, 1.5 * 1.5 * sheet.RatedW);
                    Assert.True(irradianceWPerM2 < 1 || powerW > 0);
                    var brighterW = DeSoto.MaximumPowerW(module, Math.Min(1500, irradianceWPerM2 + 1), cellDegC);
                    Assert.True(brighterW >= powerW);
                }
            );

    [Fact]
    public void A_voltage_that_no_diode_gives_is_refused_with_the_one_it_has()
    {
        var sheet = Samples.Module with { RatedW = 530, MaximumPowerV = 44.5, MaximumPowerA = 11.91 };
        var refusal = Assert.Throws<ArgumentException>(() => DeSotoFit.Of(sheet));
        Assert.Contains("not at 44.5 V", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_power_that_no_diode_gives_is_refused_with_what_it_could_give()
    {
        var sheet = Samples.Module with { RatedW = 598, MaximumPowerV = 44.5, MaximumPowerA = 13.44 };
        var refusal = Assert.Throws<ArgumentException>(() => DeSotoFit.Of(sheet));
        Assert.Contains("at most", refusal.Message, StringComparison.Ordinal);
    }
}

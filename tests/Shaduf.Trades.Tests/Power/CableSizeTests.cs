using CsCheck;
using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class CableSizeTests
{
    private static readonly CableOption[] Options =
    [
        .. new[] { 35, 1.5, 2.5, 4, 6, 10, 16, 25 }.Select(size => new CableOption(
            $"{size} mm²",
            size,
            Conductor.CopperClass5,
            Ampacity.SubmersibleA(size)
        )),
    ];

    private static readonly Gen<CableDuty> Duty =
        from currentA in Gen.Double[1, 150]
        from lengthM in Gen.Double[1, 400]
        from systemV in Gen.Double[48, 700]
        from share in Gen.Double[0.005, 0.06]
        from direct in Gen.Bool
        from factor in Gen.Double[0.5, 1.1]
        select new CableDuty(
            currentA,
            currentA,
            systemV,
            share,
            direct ? CableSupply.Dc : CableSupply.ThreePhase(0.82, 50),
            70,
            [new("in the ground", lengthM, 30, factor), new("in the well", 20, 20, 1.2)]
        );

    private static CableDuty Simple(
        double currentA,
        double lengthM,
        double systemV,
        double share,
        CableSupply supply,
        double aroundDegC
    ) => new(currentA, currentA, systemV, share, supply, 70, [new("in air", lengthM, aroundDegC, 1)]);

    [Fact]
    public void The_choice_is_the_smallest_that_fits() =>
        Duty.Sample(duty =>
        {
            var choice = CableSize.Smallest(Options, duty);
            // The same question, asked of every option by itself.
            var smallest = Options
                .Where(option => CableSize.Smallest([option], duty).Fit is not null)
                .MinBy(option => option.SizeMm2);
            Assert.Equal(smallest, choice.Fit?.Option);
            Assert.Equal(
                Options.Where(option => smallest is null || option.SizeMm2 < smallest.SizeMm2).OrderBy(o => o.SizeMm2),
                choice.Rejected.Select(rejection => rejection.Option)
            );
            if (choice.Fit is { } fit)
            {
                Assert.True(fit.AmpacityA >= duty.CurrentA);
                Assert.True(fit.DropV / duty.SystemV <= duty.LargestDropShare);
                Assert.All(fit.Stretches, each => Assert.InRange(each.ConductorDegC, 20, 70));
                Assert.Equal(fit.Stretches.Sum(each => each.LossW), fit.LossW, 5e-10);
                Assert.True(fit.LossW > 0);
            }
        });

    [Fact]
    public void Drop_of_the_choice_is_by_hand()
    {
        var fit = CableSize.Smallest(Options, Simple(10, 100, 400, 0.02, CableSupply.ThreePhase(0.8, 50), 20)).Fit;
        // 4 mm²: T = 20 + 50 (10/32)² = 24.8828 °C; r = 4.95 (1 + 0.00393 · 4.8828) = 5.04499 Ω/km; x = 0.101 Ω/km;
        // √3 · 0.1 · 10 (5.04499 · 0.8 + 0.101 · 0.6) = 7.0955 V; 3 · 0.1 · 10² · 5.04499 = 151.35 W.
        Assert.NotNull(fit);
        Assert.Equal(4, fit.Option.SizeMm2);
        Assert.Equal(7.0955, fit.DropV, 5e-5);
        Assert.Equal(7.0955 / 400, fit.DropShare, 5e-6);
        Assert.Equal(151.35, fit.LossW, 5e-3);
    }

    [Fact]
    public void None_fits_is_said_with_every_reason()
    {
        var choice = CableSize.Smallest(Options, Simple(20, 3000, 200, 0.01, CableSupply.Dc, 30));
        Assert.Null(choice.Fit);
        Assert.Equal(Options.Length, choice.Rejected.Length);
        Assert.Equal("it may carry 18 A in air, less than 20 A", choice.Rejected[0].Why);
        Assert.Contains("more than 1 %", choice.Rejected[^1].Why, StringComparison.Ordinal);
    }

    [Fact]
    public void No_options_and_unknown_duties_are_refused()
    {
        var duty = Simple(10, 100, 400, 0.03, CableSupply.Dc, 20);
        Assert.Throws<ArgumentException>(() => CableSize.Smallest([], duty));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            CableSize.Smallest(Options, duty with { CurrentA = double.NaN })
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            CableSize.Smallest(Options, duty with { LargestConductorDegC = double.NaN })
        );
    }

    [Fact]
    public void The_sheet_shows_the_choices_own_figures()
    {
        var duty = Simple(20, 60, 500, 0.02, CableSupply.Dc, 40);
        var fit = CableSize.Smallest(Options, duty).Fit;
        Assert.NotNull(fit);
        var sheet = CableSize.Show(duty, fit);
        Assert.Equal("Current and voltage drop of 6 mm²", sheet.Title);
        Assert.Equal(
            [
                41,
                fit.Stretches[0].ConductorDegC,
                fit.Stretches[0].Impedance.ResistanceOhmPerM,
                fit.DropV,
                fit.LossW,
                fit.DropV,
                fit.DropShare,
            ],
            sheet.Lines.Select(line => line.Value)
        );
        Assert.Equal("2 · 60 · 20 · 0.003652", sheet.Lines[3].Numbers);
    }

    [Fact]
    public void A_hot_stretch_binds_the_current_and_a_cold_one_drops_less()
    {
        var duty = Simple(20, 60, 500, 0.02, CableSupply.Dc, 40);
        var hot = duty with { Stretches = [.. duty.Stretches, new("at the drive", 1, 60, 0.4)] };
        Assert.Equal(6, CableSize.Smallest(Options, duty).Fit!.Option.SizeMm2);
        var choice = CableSize.Smallest(Options, hot);
        Assert.Equal(10, choice.Fit!.Option.SizeMm2);
        Assert.Equal("it may carry 16.4 A at the drive, less than 20 A", choice.Rejected[^1].Why);
        var cold = duty with { Stretches = [new("in the well", 60, 15, 1)] };
        Assert.True(CableSize.Smallest(Options, cold).Fit!.DropV < CableSize.Smallest(Options, duty).Fit!.DropV);
    }

    [Fact]
    public void A_fuse_asks_for_more_than_the_working_current()
    {
        var duty = Simple(20, 10, 500, 0.02, CableSupply.Dc, 40) with { LeastAmpacityA = 40 };
        Assert.Equal(6, CableSize.Smallest(Options, duty).Fit!.Option.SizeMm2);
    }
}

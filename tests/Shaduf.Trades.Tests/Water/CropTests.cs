using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class CropTests
{
    private static readonly double[] s_evenReference = [.. Enumerable.Repeat(5.0, 12)];
    private static readonly double[] s_noRain = new double[12];

    [Fact]
    public void Dry_air_and_wind_take_more_water()
    {
        double Reference(double vapourKPa, double windMPerS) =>
            Evapotranspiration.PenmanMonteithMmPerDay(34, 20, vapourKPa, windMPerS, 14, 300);
        Assert.True(Reference(1.0, 2) > Reference(2.0, 2));
        Assert.True(Reference(1.0, 3) > Reference(1.0, 2));
    }

    [Fact]
    public void The_swing_of_a_sun_is_the_swing_that_gives_this_sun() =>
        Gen.Select(Gen.Double[5, 40], Gen.Double[0.1, 0.85])
            .Sample(
                (above, clearness) =>
                {
                    var swing = FieldRadiation.SwingK(clearness, 0.16);
                    Assert.Equal(clearness * above, FieldRadiation.FromSwingMJPerM2Day(above, swing, 0.16), 1e-9);
                }
            );

    [Fact]
    public void Every_crop_of_the_table_goes_from_its_start_to_its_end_without_a_leap()
    {
        foreach (var curve in CropCurve.Names.Select(CropCurve.Named).Where(curve => curve.SeasonDays > 0))
        {
            var all = Enumerable.Range(0, curve.SeasonDays).Select(curve.DayCoefficient).ToList();
            Assert.Equal(curve.StartCoefficient, all[0]);
            Assert.Equal(curve.EndCoefficient, all[^1], 0.12);
            Assert.Equal(
                Math.Max(curve.StartCoefficient, Math.Max(curve.FullCoefficient, curve.EndCoefficient)),
                all.Max(),
                0.01
            );
            Assert.All(all.Zip(all.Skip(1)), pair => Assert.InRange(Math.Abs(pair.First - pair.Second), 0, 0.12));
            Assert.NotEmpty(CropCurve.SourceOf(curve.Crop));
        }
    }

    [Fact]
    public void The_season_drinks_the_same_whenever_it_is_planted() =>
        Gen.Select(Gen.Int[0, 364], Gen.Int[0, CropCurve.Names.Count - 1])
            .Sample(
                (planted, crop) =>
                {
                    var curve = CropCurve.Named(CropCurve.Names[crop]);
                    if (curve.SeasonDays == 0)
                    {
                        return;
                    }

                    int[] days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
                    var year = CropMonth.Year(curve, planted, s_evenReference, s_noRain);
                    var season = Enumerable.Range(0, curve.SeasonDays).Sum(curve.DayCoefficient) * 5;
                    Assert.Equal(season, year.Zip(days, (month, n) => month.CropMmPerDay * n).Sum(), 1e-6);
                    Assert.Equal(curve.SeasonDays, year.Sum(month => month.SeasonDays));
                }
            );

    [Fact]
    public void Rain_never_counts_for_more_than_the_crop_drinks() =>
        Gen.Select(Gen.Int[0, 364], Gen.Double[0, 400])
            .Sample(
                (planted, rain) =>
                    Assert.All(
                        CropMonth.Year(
                            CropCurve.Named("tomato"),
                            planted,
                            s_evenReference,
                            [.. Enumerable.Repeat(rain, 12)]
                        ),
                        month => Assert.InRange(month.NetMmPerDay, 0, month.CropMmPerDay)
                    )
            );

    [Fact]
    public void Animals_drink_more_when_it_is_hotter_and_never_less_than_the_coldest_figure() =>
        Assert.All(
            Livestock.Animals.Select(Livestock.Named),
            animal =>
            {
                var litres = Enumerable.Range(-10, 55).Select(degC => animal.LitresAt(degC)).ToList();
                Assert.Equal(animal.LitresPerDay[0], litres[0]);
                Assert.All(litres.Zip(litres.Skip(1)), pair => Assert.True(pair.Second >= pair.First));
            }
        );
}

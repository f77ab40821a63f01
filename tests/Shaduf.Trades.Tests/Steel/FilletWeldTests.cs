using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class FilletWeldTests
{
    private static readonly SteelGrade Mild = SteelGrade.Of("S235");

    // The simplified method is the directional one at its worst direction.
    [Fact]
    public void The_exacter_way_never_asks_for_more_than_the_simple_one() =>
        Gen.Select(Gen.Double[-300, 300], Gen.Double[-300, 300], Gen.Double[-300, 300])
            .Where((n, y, z) => Math.Abs(n) + Math.Abs(y) + Math.Abs(z) > 1)
            .Sample(
                (normal, across, along) =>
                {
                    var stress = FilletWeld.OnThroat(normal, across, along);
                    var force = Math.Sqrt((normal * normal) + (across * across) + (along * along)) * 4;
                    Assert.True(
                        stress.EquivalentNPerMm2 / (360 / (0.8 * 1.25))
                            <= FilletWeld.Utilisation(Mild, force, 4).UtilisationShare + 1e-12
                    );
                }
            );

    [Fact]
    public void The_throat_asked_for_carries_the_force_and_is_never_below_3_mm() =>
        Gen.Double[0, 2500]
            .Sample(force =>
            {
                var throat = FilletWeld.RequiredThroatMm(Mild, force);
                Assert.True(throat >= 3);
                Assert.True(FilletWeld.Utilisation(Mild, force, throat).UtilisationShare <= 1 + 1e-12);
            });

    // A weld of full strength under the wall's yield, pulled square: used to the full by the exacter way.
    [Fact]
    public void Full_strength_is_full_strength()
    {
        foreach (var grade in SteelGrade.All)
        {
            var throat = FilletWeld.FullStrengthThroatMm(grade, 4);
            var stress = FilletWeld.OnThroat(grade.YieldNPerMm2 * 4 / throat, 0, 0);
            Assert.Equal(
                1,
                stress.EquivalentNPerMm2 * grade.WeldCorrelationFactor * 1.25 / grade.UltimateNPerMm2,
                1e-9
            );
        }
    }

    [Fact]
    public void Leg_and_throat_turn_into_each_other() =>
        Gen.Double[2, 20].Sample(throat => Near.Share(throat, FilletWeld.ThroatMm(FilletWeld.LegMm(throat)), 1e-12));

    [Fact]
    public void The_working_ends_in_the_share() =>
        Assert.Equal(FilletWeld.Utilisation(Mild, 400, 3).UtilisationShare, FilletWeld.Lines(Mild, 400, 3)[^1].Value);
}

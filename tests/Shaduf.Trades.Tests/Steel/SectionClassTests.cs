using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class SectionClassTests
{
    [Fact]
    public void A_thinner_wall_or_a_stronger_steel_is_never_of_a_better_class() =>
        Gen.Select(CrossSectionCheckTests.Any, Gen.Double[0, 0.3])
            .Sample(
                (section, share) =>
                {
                    var thin = section.Thinned(share);
                    var (mild, strong) = (SteelGrade.Of("S235"), SteelGrade.Of("S355"));
                    Assert.True(SectionClass.InCompression(thin, mild) >= SectionClass.InCompression(section, mild));
                    Assert.True(
                        SectionClass.InCompression(section, strong) >= SectionClass.InCompression(section, mild)
                    );
                    Assert.True(SectionClass.InBending(section, mild) <= SectionClass.InCompression(section, mild));
                }
            );
}

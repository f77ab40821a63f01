using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class PressureClassTests
{
    [Theory]
    [InlineData(12, 1, 1)]
    [InlineData(25, 0.935, 1)]
    [InlineData(25.1, 0.9337, 0.80)]
    [InlineData(35, 0.805, 0.80)]
    [InlineData(40, 0.74, 0.63)]
    public void Plastic_weakens_as_the_water_warms(double degC, double polyethylene, double pvc)
    {
        Assert.Equal(polyethylene, PressureClass.PolyethyleneFactor(degC), 1e-9);
        Assert.Equal(pvc, PressureClass.PvcFactor(degC), 1e-9);
    }

    [Fact]
    public void Head_and_pressure_turn_into_each_other() =>
        Gen.Double[0, 500]
            .Sample(head =>
                Assert.Equal(head, PressureClass.HeadM(PressureClass.PressureBar(head, 998.2), 998.2), 1e-9)
            );
}

using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class HazenWilliamsTests
{
    [Fact]
    public void Hazen_williams_agrees_with_the_independent_figures() =>
        Assert.All(
            Oracle.Rows("hazen_williams"),
            row =>
                Oracle.Near(
                    row.Number("loss_m_10_67"),
                    HazenWilliams.LossM(
                        row.Number("bore_mm") / 1000,
                        row.Number("length_m"),
                        row.Number("flow_m3_h") / 3600,
                        row.Number("c")
                    ),
                    1e-10
                )
        );
}

using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class ModuleSheetTests
{
    [Fact]
    public void A_sound_sheet_has_no_contradictions() => Assert.Empty(ModuleSheet.Contradictions(Samples.Module));

    [Fact]
    public void Each_contradiction_is_said()
    {
        Says("short-circuit current", Samples.Module with { ShortCircuitA = 13.1 });
        Says("open-circuit voltage", Samples.Module with { OpenCircuitV = 41 });
        Says("within 1 %", Samples.Module with { RatedW = 580 });
        Says("fill factor", Samples.Module with { OpenCircuitV = 75 });
        Says("system voltage", Samples.Module with { SystemV = 60, OpenCircuitV = 60 });
        Says("voltage coefficient", Samples.Module with { Coefficients = new(-0.0035, 0.0027, 0.00048) });
        Says("not per cent", Samples.Module with { Coefficients = new(-0.35, -0.0027, 0.00048) });
        Says("operating cell temperature", Samples.Module with { NoctDegC = double.NaN });
    }

    private static void Says(string words, ModuleSheet sheet) =>
        Assert.Contains(
            ModuleSheet.Contradictions(sheet),
            sentence => sentence.Contains(words, StringComparison.Ordinal)
        );
}

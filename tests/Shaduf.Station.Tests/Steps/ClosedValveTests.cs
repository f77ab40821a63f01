using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>A float valve may close while the pump runs: the main must hold that.</summary>
public sealed class ClosedValveTests
{
    [Fact]
    public void A_main_left_to_choose_holds_the_pump_against_a_closed_valve()
    {
        var finding = Closed(Specimen.Brief);
        Assert.Equal(FindingStatus.Holds, finding.Status);
        Assert.True(finding.Value <= finding.Limit);
    }

    [Fact]
    public void A_named_main_too_weak_for_a_closed_valve_stops_the_design()
    {
        Assert.Contains("main: choose", Specimen.Brief, StringComparison.Ordinal);
        var finding = Closed(Specimen.Brief.Replace("main: choose", "main: pe-63-pn10", StringComparison.Ordinal));
        Assert.Equal(FindingStatus.Stop, finding.Status);
        Assert.True(finding.Value > finding.Limit);
    }

    private static Finding Closed(string brief)
    {
        using var scratch = new Scratch();
        return DesignRun.Run(scratch.Read(brief)).Findings.Single(each => each.Id == "lift/closed-valve");
    }
}

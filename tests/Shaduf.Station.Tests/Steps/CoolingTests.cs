using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>A motor that too little water passes gets a shroud in the bill, or the design stops.</summary>
public sealed class CoolingTests
{
    [Fact]
    public void A_shroud_that_is_needed_stands_in_the_bill_and_in_the_finding()
    {
        var design = Examples.DesignOf("market-garden");
        var finding = design.Findings.Single(each => each.Id == "source/cooling");
        Assert.Equal(FindingStatus.Look, finding.Status);
        Assert.Contains("shroud of the bill", finding.Says, StringComparison.Ordinal);
        Assert.True(finding.Value >= finding.Limit);
        Assert.Single(design.Takeoff.Lines, line => line.Item == "cooling-shroud");
    }

    [Theory]
    [InlineData(0.20, 0.02, true, FindingStatus.Holds)]
    [InlineData(0.05, 0.50, true, FindingStatus.Look)]
    [InlineData(0.05, 0.50, false, FindingStatus.Stop)]
    [InlineData(0.05, 0.08, true, FindingStatus.Stop)]
    public void The_finding_follows_bare_motor_shroud_and_casing(
        double openMPerS,
        double shroudMPerS,
        bool shroudFits,
        FindingStatus status
    ) => Assert.Equal(status, new Cooling(openMPerS, shroudMPerS, 0.1, shroudFits).Finding().Status);
}

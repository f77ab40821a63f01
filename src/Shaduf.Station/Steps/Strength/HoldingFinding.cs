using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Finding on what holds the modules against the wind.</summary>
internal static class HoldingFinding
{
    private const string Id = "rack/module-holding";
    private const string Source = "EN 1991-1-4:2005, table 7.6, zones A to C";

    /// <summary>The finding.</summary>
    /// <param name="strength">The checked rack.</param>
    /// <param name="holding">How its modules are held.</param>
    /// <param name="choice">What would hold, where it does not.</param>
    public static Finding Of(RackStrength strength, RackHolding holding, RackChoice choice)
    {
        var use = holding.UseShare(strength.Wind.PeakKNPerM2);
        var (down, up) = (
            holding.PerGustDown * strength.Wind.PeakKNPerM2,
            holding.PerGustUp * strength.Wind.PeakKNPerM2
        );
        var pull = Invariant($"{down:0.00} kN/m2 presses and {up:0.00} kN/m2 lifts at the edges of the plane");
        var atClamp = holding.ClampN is { } perGust
            ? Invariant($"; a clamp at the end of a row must hold {perGust * strength.Wind.PeakKNPerM2 / 1000:0.00} kN")
            : "";
        var between = Invariant($"; a module bends between bearers {holding.BetweenMm:0} mm apart");
        return strength.Rack.Clamping is { IsAllowed: false } clamping ? Outside(clamping, choice)
            : holding.IsKnown
                ? Finding.AtMost(
                    Id,
                    use,
                    1,
                    "",
                    Invariant(
                        $"{pull}{between}{atClamp}; {(holding.IsByLip(strength.Wind.PeakKNPerM2) ? "the channel's lip is used to" : "the module is used to")} {use:0.00} of what {(holding.IsByLip(strength.Wind.PeakKNPerM2) ? "its steel bears" : "its card allows for this way of holding")}"
                    )
                        + (
                            use > 1
                                ? Invariant(
                                    $". A module whose card allows {down * 1000:0} Pa on the glass and {up * 1000:0} Pa from behind, held so, would do"
                                ) + choice.Advice
                                : ""
                        ),
                    "module's card; " + Source
                )
            : new(
                Id,
                use > 1 ? FindingStatus.Stop : FindingStatus.Unchecked,
                $"{pull}{between}{atClamp}; the module's card does not say what it bears when held so: ask its maker for the pressures allowed for {(holding.LipPerGust is null ? "clamps at their places" : "edges in channels")}",
                use,
                1,
                "",
                Source
            );
    }

    private static Finding Outside(RackClamping clamping, RackChoice choice) =>
        new(
            Id,
            FindingStatus.Stop,
            Invariant(
                $"the rails run {clamping.FromEndMm:0} mm from the modules' ends, and the module's card allows clamps from {clamping.Zone!.Value.FromMm:0} to {clamping.Zone.Value.ToMm:0} mm: the module may break there"
            ) + choice.Advice,
            clamping.FromEndMm,
            clamping.Zone.Value.ToMm,
            "mm",
            "module's card"
        );
}

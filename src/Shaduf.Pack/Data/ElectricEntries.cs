using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The electrics' part of <c>design.json</c>.</summary>
internal static class ElectricEntries
{
    /// <summary>The entry.</summary>
    /// <param name="electrics">The electrics.</param>
    /// <returns>The entry.</returns>
    public static ElectricsEntry Of(Electrics electrics) =>
        new(
            R(electrics.ColdV),
            R(electrics.HotV),
            R(electrics.AgedV),
            electrics.HotCellDegC,
            electrics.Fuse.Needed,
            [
                .. electrics.Cables.Select(cable => new CableEntry(
                    cable.Name,
                    cable.Card?.Name,
                    R(cable.Duty.LengthM),
                    R(cable.Duty.CurrentA),
                    cable.Choice.Fit is { } fit ? R(fit.DropShare) : null,
                    R(cable.BoughtM)
                )),
            ],
            [
                .. electrics.Layout.Strings.Select(route => new StringEntry(
                    route.Number,
                    R(route.HomeM),
                    [.. route.Order.Select(at => Invariant($"{at.Rack + 1}.{at.Row + 1}.{at.Column + 1}"))]
                )),
            ],
            ProtectionOf(electrics)
        );

    private static ProtectionEntry ProtectionOf(Electrics electrics)
    {
        var protection = electrics.Protection;
        return new(
            R(protection.IsolatorV),
            R(protection.IsolatorA),
            protection.Isolator?.Name,
            protection.Fuse?.Name,
            protection.DirectNeed.TypeNumber,
            protection.DirectArrester?.Name,
            protection.MotorArrester?.Name,
            electrics.Filter.Kind.ToString().ToLowerInvariant(),
            electrics.Filter.Card?.Name,
            protection.FrameEarth.SizeMm2,
            protection.EarthCard?.Name,
            electrics.Lowest.SetHz
        );
    }

    private static double R(double value) => DesignEntries.R(value);
}

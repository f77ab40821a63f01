using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>How modules are clamped on rails.</summary>
/// <param name="FromEndMm">Where the rails run under a module, from either end of the sides that the clamps hold [mm].</param>
/// <param name="GapMm">Gap between modules of a row, in which a clamp for two sits [mm].</param>
/// <param name="ModuleThicknessMm">Thickness of the module's frame [mm].</param>
/// <param name="Why">Why the rails lie there.</param>
public sealed record RackClamping(double FromEndMm, double GapMm, double ModuleThicknessMm, string Why)
{
    /// <summary>Gap that a clamp for two modules asks for [mm]; common practice, no source.</summary>
    public const double UsualGapMm = 20;

    /// <summary>Gap between rows, for air, water and growth by heat [mm]; common practice, no source.</summary>
    public const double RowGapMm = 20;

    /// <summary>Rail beyond the last module, for its end clamp [mm]; common practice, no source.</summary>
    public const double RailEndMm = 60;

    // An evenly loaded beam on two supports bends least where the moment over them, w x^2 / 2, is that between them,
    // w (1 - 4 x) / 8: x = (sqrt 2 - 1) / 2.
    private const double BestShare = 0.2071;

    /// <summary>The clamping of a module.</summary>
    /// <param name="brief">The rack as the brief has it.</param>
    /// <param name="module">The module.</param>
    /// <param name="columns">Modules in a row.</param>
    /// <returns>The clamping.</returns>
    public static RackClamping Of(RackBrief brief, ModuleCard module, int columns)
    {
        var sideMm = ModuleLay.Of(module.Body, brief.Way).UpMm;
        var zone = module.Holding.Of(RackType.ClampedRails, brief.Way);
        var bestMm = BestShare * sideMm;
        var (at, why) = zone is { FromMm: { } from, ToMm: { } to }
            ? (
                Math.Clamp(bestMm, from, to),
                Invariant($"the module's card allows clamps {from:0} to {to:0} mm from the end of that side")
            )
            : (
                bestMm,
                "where the module bends least; its card does not say where it may be clamped: ask its maker before drilling"
            );
        var gapMm = brief.RowClearanceMm is { } free && columns > 1 ? free / (columns - 1) : UsualGapMm;
        return new(at, gapMm, module.Body.ThicknessMm, why);
    }
}

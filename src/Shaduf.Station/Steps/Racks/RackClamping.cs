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

    // Least distance between the two rails under a module [mm]: judgement, no source.
    private const double LeastApartMm = 200;

    /// <summary>Where the module's card allows clamps on that side, from its end [mm]; null where it is silent.</summary>
    public (double FromMm, double ToMm)? Zone { get; private init; }

    /// <summary>Whether the module's card allows clamps there, as far as it says.</summary>
    public bool IsAllowed => Zone is not { } zone || (FromEndMm >= zone.FromMm && FromEndMm <= zone.ToMm);

    // An evenly loaded beam on two supports bends least where the moment over them, w x^2 / 2, is that between them,
    // w (1 - 4 x) / 8: x = (sqrt 2 - 1) / 2.
    private const double BestShare = 0.2071;

    /// <summary>The farthest from a module's ends that both its rails can run [mm].</summary>
    /// <param name="module">The module.</param>
    /// <param name="way">Which way it lies.</param>
    public static double FarthestMm(ModuleCard module, ModuleWay way) =>
        (ModuleLay.Of(module.Body, way).UpMm - LeastApartMm) / 2;

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
        (double FromMm, double ToMm)? allowed = zone is { FromMm: { } from, ToMm: { } to } ? (from, to) : null;
        var why = allowed is { } between
            ? Invariant(
                $"the module's card allows clamps {between.FromMm:0} to {between.ToMm:0} mm from the end of that side"
            )
            : "where the module bends least; its card does not say where it may be clamped: ask its maker before drilling";
        var atMm = brief.RailsAtMm ?? (allowed is { } within ? Math.Clamp(bestMm, within.FromMm, within.ToMm) : bestMm);
        var gapMm = brief.RowClearanceMm is { } free && columns > 1 ? free / (columns - 1) : UsualGapMm;
        return new(atMm, gapMm, module.Body.ThicknessMm, why) { Zone = allowed };
    }
}

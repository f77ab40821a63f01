using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Whether each string needs fuses, and between which ratings they must lie.</summary>
/// <param name="Needed">Whether the other strings can drive more current back than the module bears.</param>
/// <param name="ReverseA">Current that the other strings can drive back [A], 0 to 10000.</param>
/// <param name="AboveA">The rating must be above this: 1.5 Isc [A], 0.1 to 75.</param>
/// <param name="AtMostA">The rating must not exceed this: 2.4 Isc or the module's largest fuse [A], 1 to 100.</param>
public sealed record StringFuse(bool Needed, double ReverseA, double AboveA, double AtMostA)
{
    /// <summary>Whether a rating can lie between the two limits at all.</summary>
    public bool Exists => AboveA < AtMostA;

    /// <summary>
    /// The fuse question for one array. A fuse, where needed, is of the photovoltaic kind (gPV), rated for the cold
    /// open-circuit voltage, and stands in both poles of an array that is not earthed.
    /// </summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="strings">Strings side by side, 1 to 200.</param>
    /// <returns>Whether a fuse is needed, and the range of its rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of the sheet, is outside its range.</exception>
    /// <source>IEC 62548:2016, overcurrent protection of strings; IEC 60269-6.</source>
    public static StringFuse For(ModuleSheet module, int strings)
    {
        Within.RequireCount(strings, 1, 200);
        Within.Require(module.ShortCircuitA, 0.1, 50, "A");
        Within.Require(module.SeriesFuseA, 1, 100, "A");
        var reverseA = (strings - 1) * module.ShortCircuitA;
        return new(
            reverseA > module.SeriesFuseA,
            reverseA,
            1.5 * module.ShortCircuitA,
            Math.Min(2.4 * module.ShortCircuitA, module.SeriesFuseA)
        );
    }
}

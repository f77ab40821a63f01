using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Currents that the direct-current side must carry.</summary>
public static class ArrayCurrent
{
    /// <summary>Design current of strings side by side: 1.25 times their short-circuit current, for bright cloud edges.</summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="strings">Strings side by side, 1 to 200.</param>
    /// <returns>Current [A].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of the sheet, is outside its range.</exception>
    /// <source>IEC 62548:2016, design currents; NEC 690.8(A)(1).</source>
    public static double DesignA(ModuleSheet module, int strings)
    {
        Within.RequireCount(strings, 1, 200);
        Within.Require(module.ShortCircuitA, 0.1, 50, "A");
        return BrightnessFactor * strings * module.ShortCircuitA;
    }

    /// <summary>Design current with the further 1.25 for continuous duty of conductors and devices.</summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="strings">Strings side by side, 1 to 200.</param>
    /// <returns>Current [A].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of the sheet, is outside its range.</exception>
    /// <source>NEC 690.8(B).</source>
    public static double Nec690A(ModuleSheet module, int strings) => ContinuousFactor * DesignA(module, strings);

    /// <summary>
    /// Ampacity that a string's cable needs when the string has no fuse: its own current, or what all the other
    /// strings drive back through a fault in it.
    /// </summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="strings">Strings side by side, 1 to 200.</param>
    /// <returns>Current [A].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of the sheet, is outside its range.</exception>
    /// <source>IEC 62548:2016, string cables without overcurrent protection.</source>
    public static double UnfusedStringCableA(ModuleSheet module, int strings)
    {
        Within.RequireCount(strings, 1, 200);
        return DesignA(module, Math.Max(1, strings - 1));
    }

    private const double BrightnessFactor = 1.25;
    private const double ContinuousFactor = 1.25;
}

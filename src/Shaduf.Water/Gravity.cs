namespace Shaduf.Water;

/// <summary>Pull of the Earth.</summary>
public static class Gravity
{
    /// <summary>Standard acceleration of free fall [m/s2].</summary>
    /// <source>3rd CGPM 1901, resolution 2: 9.80665 m/s2 by definition</source>
    public const double MPerS2 = 9.80665;
}

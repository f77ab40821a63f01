namespace Shaduf.Steel;

/// <summary>Density of structural steel.</summary>
public static class SteelDensity
{
    /// <summary>Density of structural steel [kg/m3].</summary>
    /// <source>EN 1991-1-1:2002, Table A.4 gives 77.0 to 78.5 kN/m3; 7850 kg/m3 is the figure of EN 10219-2 and EN 10056-1 masses (from memory)</source>
    public const double KgPerM3 = 7850;
}

namespace Shaduf.Steel;

/// <summary>Partial factors of resistances; a country's annex may set others than the recommended ones.</summary>
/// <param name="SectionFactor">γ_M0, yielding of a cross-section.</param>
/// <param name="BucklingFactor">γ_M1, members that buckle.</param>
/// <param name="JointFactor">γ_M2, bolts, welds, tearing.</param>
/// <param name="TubeJointFactor">γ_M5, joints of hollow sections.</param>
/// <param name="ConcreteFactor">γ_C, γ_Mc, concrete.</param>
/// <param name="LongTermFactor">α_cc, concrete under lasting load; 0.85 for a plain block.</param>
/// <source>EN 1993-1-1:2005, 6.1; EN 1993-1-8:2005, table 2.1; EN 1992-1-1:2004, table 2.1N; EN 1992-4:2018, table 4.1</source>
public sealed record SteelFactors(
    double SectionFactor = 1.0,
    double BucklingFactor = 1.0,
    double JointFactor = 1.25,
    double TubeJointFactor = 1.0,
    double ConcreteFactor = 1.5,
    double LongTermFactor = 0.85
)
{
    /// <summary>The recommended values.</summary>
    public static SteelFactors Recommended { get; } = new();
}

using System.Reflection;
using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>A class of soil with the values that may be taken where nothing is tested.</summary>
/// <param name="Number">Number of the class, 1 to 5.</param>
/// <param name="Name">What it is.</param>
/// <param name="BearingKPa">Allowable pressure under a footing [kPa].</param>
/// <param name="LateralKNPerM3">Allowable pressure at its sides for each metre of depth [kN/m3].</param>
/// <param name="FrictionCoefficient">Friction of concrete cast on it; 0 where its cohesion counts.</param>
/// <param name="CohesionKPa">Cohesion that holds a base against sliding [kPa]; 0 where its friction counts.</param>
/// <source>IBC 2018, table 1806.2</source>
public sealed record SoilClass(
    int Number,
    string Name,
    double BearingKPa,
    double LateralKNPerM3,
    double FrictionCoefficient,
    double CohesionKPa
)
{
    /// <summary>The classes, firmest first.</summary>
    public static IReadOnlyList<SoilClass> Table { get; } =
    [
        .. Csv.Embedded(Assembly.GetExecutingAssembly(), "SoilClass.csv")
            .Select(row => new SoilClass(
                (int)row.Number("class"),
                row["name"],
                row.Number("bearing_kpa"),
                row.Number("lateral_kn_per_m3"),
                row.Number("friction"),
                row.Number("cohesion_kpa")
            )),
    ];

    /// <summary>A class by its number.</summary>
    /// <param name="number">The class, 1 to 5.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such class.</exception>
    /// <source>IBC 2018, table 1806.2</source>
    public static SoilClass Of(int number)
    {
        Within.RequireCount(number, 1, 5);
        return Table[number - 1];
    }
}

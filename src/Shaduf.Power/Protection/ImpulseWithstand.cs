using System.Collections.Immutable;
using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>How hard the surges are that equipment must expect where it is joined.</summary>
public enum OvervoltageCategory
{
    /// <summary>Photovoltaic circuits, and equipment behind a socket.</summary>
    CategoryTwo,

    /// <summary>Fixed installation: motors, distribution boards.</summary>
    CategoryThree,
}

/// <summary>Impulse voltage that equipment withstands when its data sheet does not say.</summary>
public static class ImpulseWithstand
{
    /// <summary>Impulse voltage withstood, 1.2/50; between rows the upper row's figure stands.</summary>
    /// <param name="voltageV">Working voltage to earth [V], 5 to 1500.</param>
    /// <param name="category">Overvoltage category.</param>
    /// <returns>Impulse voltage [kV].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is outside its range, or there is no such category.</exception>
    /// <source>
    /// IEC 60664-1, table F.1: the row at or above the voltage; from memory.
    /// </source>
    public static double WithstandKV(double voltageV, OvervoltageCategory category)
    {
        Within.Require(voltageV, 5, 1500, "V");
        var row = Rows.First(each => each.VoltageV >= voltageV);
        return category switch
        {
            OvervoltageCategory.CategoryTwo => row.TwoKV,
            OvervoltageCategory.CategoryThree => row.ThreeKV,
            _ => throw new ArgumentOutOfRangeException(nameof(category), category, "There is no such category."),
        };
    }

    private static readonly ImmutableArray<(double VoltageV, double TwoKV, double ThreeKV)> Rows =
    [
        .. Csv.Embedded(typeof(ImpulseWithstand).Assembly, "ImpulseWithstand.csv")
            .Select(row =>
                (
                    row.Number("voltage_v"),
                    row.Number(nameof(OvervoltageCategory.CategoryTwo)),
                    row.Number(nameof(OvervoltageCategory.CategoryThree))
                )
            ),
    ];
}

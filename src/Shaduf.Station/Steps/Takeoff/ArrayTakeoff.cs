using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Modules, drive and cables.</summary>
internal static class ArrayTakeoff
{
    /// <summary>Modules, drive and cables.</summary>
    public static IEnumerable<QuantityLine> Electric(Choice choice, Electrics electrics)
    {
        yield return new(
            choice.Module.Name,
            BillSection.ArrayAndElectrics,
            choice.Module.About,
            "nr",
            choice.ModuleCount,
            Invariant($"{choice.SeriesCount} in series x {choice.StringCount} strings")
        );
        yield return new(
            choice.Drive.Name,
            BillSection.ArrayAndElectrics,
            choice.Drive.About,
            "nr",
            1,
            "choice of drive"
        );
        foreach (
            var line in ElectricTakeoff.Cables(choice, electrics).Concat(ElectricTakeoff.Devices(choice, electrics))
        )
        {
            yield return line;
        }

        yield return Labour.Days("modules", choice.ModuleCount, "all modules");
    }
}

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
        foreach (var cable in electrics.Cables)
        {
            // A cable that no card serves stands in the bill under a name that has no rate, so that the total says so.
            yield return new(
                cable.Card?.Name ?? $"{cable.Id}-not-found",
                BillSection.ArrayAndElectrics,
                $"{cable.Name}: {cable.Card?.About ?? "no card carries the duty"}",
                "m",
                cable.BoughtM,
                Invariant($"{cable.BoughtM / (1 + Electrics.CableWasteShare):0.#} m + 5 %")
            );
        }

        yield return new(
            "dc-isolator",
            BillSection.ArrayAndElectrics,
            "direct-current isolator and surge protection in a box",
            "set",
            choice.StringCount,
            "one a string"
        );
        yield return Labour.Days("modules", choice.ModuleCount, "all modules");
        yield return Labour.Days("cable", electrics.Cables.Sum(cable => cable.BoughtM), "all cables");
    }
}

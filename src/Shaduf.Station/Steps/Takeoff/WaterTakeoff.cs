using Shaduf.Money;

namespace Shaduf.Station;

/// <summary>Tanks.</summary>
internal static class WaterTakeoff
{
    /// <summary>Tanks and their floats.</summary>
    public static IEnumerable<QuantityLine> Tank(Brief brief, Choice choice)
    {
        if (!brief.Tank.IsExisting)
        {
            yield return new(
                choice.Tank.Name,
                BillSection.PipesAndTank,
                choice.Tank.About,
                "nr",
                choice.TankCount,
                "choice of tank"
            );
            yield return Labour.Days("tank", choice.TankCount, "choice of tank");
        }

        yield return new(
            "float-valve",
            BillSection.PipesAndTank,
            "float switch or float valve with overflow and screen",
            "set",
            choice.TankCount,
            "one a tank"
        );
    }
}

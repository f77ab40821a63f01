using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What of pump, pipes and tanks goes on the truck.</summary>
internal static class WaterLoad
{
    // A coil of plastic pipe, and a length of steel pipe; common practice, no source.
    private const double CoilM = 50;
    private const double LengthM = 6;

    // A round tank up to so wide leaves room beside it; common practice, no source.
    private const double BesideM = 1.5;

    /// <summary>The pump with what hangs on it, or as it stands beside open water.</summary>
    /// <param name="choice">What was chosen.</param>
    /// <param name="source">What is built at the source.</param>
    public static LoadItem Pump(Choice choice, SourceBuild source) =>
        source is WellBuild well
            ? new("pump with motor, riser, cable and rope", 1, well.Hung.EmptyKg, 0, "")
            : new("pump with motor", 1, choice.Pump.MassKg, 0, "");

    /// <summary>The pipes as they are bought; the riser hangs on its pump.</summary>
    /// <param name="choice">What was chosen.</param>
    /// <param name="works">The works.</param>
    /// <param name="lines">What was taken off.</param>
    public static IEnumerable<LoadItem> Pipes(Choice choice, Works works, IReadOnlyList<QuantityLine> lines)
    {
        BillSection[] sections =
        [
            BillSection.PipesAndTank,
            BillSection.TapsAndDrainage,
            .. works.Source is WellBuild ? Array.Empty<BillSection>() : [BillSection.SourceAndPump],
        ];
        var cards = choice
            .Lift.Lay.Reaches.Select(reach => reach.Pipe)
            .Concat(works.Taps.Heads.Select(head => head.Pipe))
            .Append(choice.Lift.Foot.Card)
            .DistinctBy(card => card.Name);
        foreach (var card in cards)
        {
            var metres = lines
                .Where(line => line.Item == card.Name && sections.Contains(line.Section))
                .Sum(line => line.Quantity);
            var eachM = card.LosesStrengthWhenWarm ? CoilM : LengthM;
            var count = (int)Math.Ceiling(metres / eachM);
            if (count > 0)
            {
                yield return new(
                    Invariant(
                        $"pipe {card.Name}, {metres:0} m in {(card.LosesStrengthWhenWarm ? "coils of 50 m or less" : "lengths of 6 m or less")}"
                    ),
                    count,
                    metres * card.MassKgPerM / count,
                    card.LosesStrengthWhenWarm ? 0 : LengthM * 1000,
                    ""
                );
            }
        }
    }

    /// <summary>The tanks that are bought: a wide round one fills the truck, a square one comes in panels.</summary>
    /// <param name="card">The tank.</param>
    /// <param name="count">How many.</param>
    public static IEnumerable<LoadItem> Tanks(TankCard card, int count)
    {
        var tank = StandTank.Of(card);
        var mass = tank.MassKg is null ? ", mass guessed from its size" : "";
        var (wide, high) = (Math.Ceiling(card.DiameterM / card.PanelM), Math.Ceiling(card.HeightM / card.PanelM));
        var panels = (int)((4 * wide * high) + (2 * wide * wide));
        yield return tank.IsRound
            ? new($"tank {card.Name}, empty{mass}", count, tank.EmptyKg, Math.Max(tank.WidthMm, tank.HeightMm), "")
            {
                IsAlone = card.DiameterM > BesideM,
            }
            : new(
                Invariant($"panels of tank {card.Name} with their share of bolts and stays{mass}"),
                count * panels,
                tank.EmptyKg / panels,
                tank.PanelMm,
                "bolted on site"
            );
    }
}

using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>What stands beside the line from modules to motor: the switches that stop the pump, and the circuit of each lamp.</summary>
internal static class SideCircuits
{
    private const double RowMm = 13;
    private const double LeftMm = 14;
    private const double RightMm = 66;

    // One circuit: what it is drawn with, from the left, and its words.
    private sealed record Circuit(
        string Words,
        IReadOnlyList<(string Sign, Action<SceneBuilder, PaperPoint> Draw)> Signs
    )
    {
        public bool IsSignal { get; init; }
    }

    /// <summary>Height that they take [mm].</summary>
    /// <param name="design">The design.</param>
    public static double HeightMm(Design design) => Circuits(design).Count() * RowMm;

    /// <summary>Draws them.</summary>
    /// <param name="builder">The diagram.</param>
    /// <param name="design">The design.</param>
    /// <param name="topMm">Where they begin on the paper [mm].</param>
    /// <param name="words">Writes words beside a row, their middle at its height.</param>
    public static void Draw(SceneBuilder builder, Design design, double topMm, Action<string, double> words)
    {
        foreach (var (row, circuit) in Circuits(design).Index())
        {
            var atMm = topMm + ((row + 0.5) * RowMm);
            builder.Line(circuit.IsSignal ? Layer.Hidden : ElectricSymbols.Wire, new(LeftMm, atMm), new(RightMm, atMm));
            var stepMm = (RightMm - LeftMm) / Math.Max(1, circuit.Signs.Count - 1);
            foreach (var (i, (sign, draw)) in circuit.Signs.Index())
            {
                var at = new PaperPoint(LeftMm + (i * stepMm), atMm);
                draw(builder, at);
                builder.Text(at.Moved(0, -4.6), sign, TextStyle.Small.Centred);
            }

            words(circuit.Words, atMm);
        }
    }

    private static IEnumerable<Circuit> Circuits(Design design)
    {
        yield return Signal(LowWater(design.Works.Source), "at the water");
        var full = design.Works.Main.TankFull;
        yield return Signal(
            full.Way == TankFullStop.SignalCable
                ? $"full tank: {full.Name}, 2 x 1.5 mm2, closed while the tank wants water; an arrester at both ends, an isolating relay at the drive"
                : $"full tank: {full.Name}; the switch stands behind the check valve",
            full.Way == TankFullStop.SignalCable ? "in the tank" : "at the head"
        );
        if (design.Works.Guard.Light is { } light)
        {
            var (card, each) = (light.Card, light.Lamps.Count);
            yield return new(
                Invariant(
                    $"each of {each} {(each == 1 ? "lamp" : "lamps")} for itself, on its pole: {light.ModulesEach} x {card.Charger.RatedW:0} W module, charge controller, {light.BlocksEach} x {card.Battery.BlockWh:0} Wh battery of {card.Battery.BlockV:0} V with a fuse at its pole, lamp {card.LampW:0} W; no wire to the pump's circuit but the earth"
                ),
                [
                    ("module", ElectricSymbols.Module),
                    ("controller", ElectricSymbols.Terminal),
                    ("battery", ElectricSymbols.Battery),
                    ("lamp", ElectricSymbols.Lamp),
                ]
            );
        }
    }

    private static string LowWater(SourceBuild source) =>
        source is IntakeBuild intake
            ? Invariant($"low water: float switch, stops the pump at {intake.StopM:0.00} m above sea")
            : "low water: dry-run probes on the riser over the pump, in their own cable; an arrester on its line at the drive";

    private static Circuit Signal(string words, string place) =>
        new(words, [("drive", ElectricSymbols.Terminal), (place, ElectricSymbols.Contact)]) { IsSignal = true };
}

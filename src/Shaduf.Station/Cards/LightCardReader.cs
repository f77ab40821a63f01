using Shaduf.Power;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the card of a night light.</summary>
internal static class LightCardReader
{
    // Readings of a lamp's intensity and of its whole light seldom agree better.
    private const double LargestMismatchShare = 0.1;

    private static IReadOnlyList<(string Word, bool Value)> YesNo { get; } = [("yes", true), ("no", false)];

    public static LightCard Read(FieldMap fields, CardReader.CardHead head)
    {
        var card = new LightCard(
            head.Name,
            head.About,
            head.IsPlanningData,
            fields.Quantity(
                "lamp",
                Measure.PowerW,
                1,
                200,
                "Power drawn from the battery, the lamp's driver included."
            ),
            new(
                fields.Quantity("light", Measure.LightLm, 50, 30_000, "Light of the lamp."),
                fields.Items(
                    "intensity",
                    0,
                    40,
                    "Intensity by angle from straight down, alike all round; left out: a flat lamp that looks equally bright from everywhere below.",
                    Beam
                )
            ),
            fields.Quantity("pole", Measure.LengthM, 2, 12, "Usual height of the lamp above ground."),
            new(
                fields.OneOf(
                    "batteryKind",
                    [("lithium-iron-phosphate", BatteryKind.LithiumIronPhosphate), ("lead", BatteryKind.LeadAcid)],
                    "Kind of battery."
                ),
                fields.Quantity("battery", Measure.EnergyWh, 20, 10_000, "Energy of one block of the battery."),
                fields.Quantity("batteryVoltage", Measure.VoltageV, 6, 60, "Voltage of one block."),
                fields.OneOf(
                    "batteryCold",
                    YesNo,
                    "Whether the battery may be charged below 0 degC, or keeps itself from it."
                )
            ),
            new(
                fields.Quantity("module", Measure.PowerW, 5, 800, "Rating of one charging module."),
                fields.Quantity("moduleVoltage", Measure.VoltageV, 6, 200, "Its voltage at maximum power."),
                fields.OneOf("tracking", YesNo, "Whether the charge controller follows the module's maximum power.")
            )
        )
        {
            SailM2 = fields.Known(
                "sail",
                Measure.AreaM2,
                0.02,
                5,
                "Area of lamp, box and charging module of one lamp, as the wind catches it."
            ),
            HungKg = fields.Known("hung", Measure.MassKg, 1, 500, "Mass of lamp, box, battery and module of one lamp."),
        };
        if (fields.AreSound())
        {
            Check(fields, card);
        }

        return card;
    }

    private static Beam Beam(FieldMap fields)
    {
        var beam = new Beam(
            fields.Quantity("angle", Measure.AngleDeg, 0, 90, "From straight down."),
            fields.Quantity("candela", Measure.IntensityCd, 0, 100_000, "Intensity.")
        );
        fields.Done();
        return beam;
    }

    private static void Check(FieldMap fields, LightCard card)
    {
        var beams = card.Luminaire.Beams;
        fields.RefuseUnless(
            card.Charger.MaximumPowerV > card.Battery.BlockV,
            "moduleVoltage",
            "a module that is not above its battery's voltage does not charge it"
        );
        fields.RefuseUnless(
            card.Luminaire.FluxLm / card.LampW is >= 20 and <= 250,
            "light",
            Invariant($"{card.Luminaire.FluxLm / card.LampW:0} lm for each watt, where lamps give 20 to 250")
        );
        if (beams.Count == 0)
        {
            return;
        }

        var rises = beams.Zip(beams.Skip(1)).All(pair => pair.First.AngleDeg < pair.Second.AngleDeg);
        fields.RefuseUnless(
            beams.Count > 1 && beams[0].AngleDeg == 0 && rises,
            "intensity",
            "the angles do not begin at 0 deg and rise"
        );
        if (rises && beams.Count > 1)
        {
            var sumLm = card.Luminaire.BeamsLm;
            fields.RefuseUnless(
                Math.Abs(sumLm - card.Luminaire.FluxLm) <= LargestMismatchShare * card.Luminaire.FluxLm,
                "intensity",
                Invariant($"the intensities add up to {sumLm:0} lm, the light is {card.Luminaire.FluxLm:0} lm")
            );
        }
    }
}

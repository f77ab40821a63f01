using Shaduf.Power;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the card of a pump.</summary>
internal static class PumpCardReader
{
    // 1.5 to 2.5 of the rated torque, from memory.
    private const double UsualBreakawayShare = 2;

    private static IReadOnlyList<(string Word, MotorKind Kind)> MotorKinds { get; } =
    [("three-phase", MotorKind.ThreePhase), ("brushless-dc", MotorKind.BrushlessDc)];

    private static IReadOnlyList<(string Word, bool IsRotor)> Kinds { get; } =
    [("centrifugal", false), ("helical-rotor", true)];

    public static PumpCard Read(FieldMap fields, CardReader.CardHead head)
    {
        var rotor = Rotor(fields);
        var motor = Motor(fields);
        var curve = PumpCurveReader.Read(fields, motor.RatedHz, rotor?.ReliefHeadM);
        var card = new PumpCard(
            head.Name,
            head.About,
            head.IsPlanningData,
            curve!,
            motor,
            fields.Quantity("diameter", Measure.LengthMm, 50, 500, "Largest diameter with the cable guard."),
            fields.Quantity("submergence", Measure.LengthM, 0.2, 20, "Least water above the intake."),
            fields.Quantity("mass", Measure.MassKg, 2, 2000, "Mass of pump and motor."),
            fields.Quantity("coolingSpeed", Measure.SpeedMPerS, 0, 2, "Least speed of water past the motor.")
        )
        {
            Rotor = rotor,
        };
        if (fields.AreSound() && curve is not null)
        {
            fields.RefuseUnless(
                motor.LowestHz >= 0.1 * motor.RatedHz && motor.LowestHz <= motor.RatedHz,
                "lowestFrequency",
                "the lowest frequency is not between a tenth of the rated one and the rated one"
            );
            fields.RefuseUnless(
                motor.DiameterM * 1000 <= card.DiameterMm,
                "motorDiameter",
                "the motor is wider than the whole pump"
            );
            fields.RefusedBy("curve", () => CheckShaft(fields, curve, motor));
            fields.RefusedBy("motorPower", () => CheckMotor(fields, motor));
        }

        return card;
    }

    private static RotorCard? Rotor(FieldMap fields)
    {
        var isRotor = fields.OptionalOneOf("kind", Kinds, "Kind of pump; left out: centrifugal.") ?? false;
        var relief = fields.Chosen(
            "reliefHead",
            Measure.LengthM,
            5,
            1000,
            "Opening head of the relief valve; needed for a helical rotor."
        );
        var breakaway = fields.Chosen(
            "breakawayTorque",
            Measure.Share,
            1,
            4,
            "Torque that breaks the rotor loose, over the rated one; left out: 200 %."
        );
        if (!isRotor)
        {
            fields.RefuseUnless(relief is null, "reliefHead", "only a helical rotor has a relief valve");
            return null;
        }

        if (relief is null && fields.AreSound("reliefHead"))
        {
            fields.Complain(
                "reliefHead",
                "missing for a helical rotor",
                "the opening head of its relief valve is needed"
            );
        }

        return new(relief ?? 1000, breakaway ?? UsualBreakawayShare);
    }

    // Fresh water at its heaviest, at rated speed, along the whole curve.
    private static MotorSheet Motor(FieldMap fields) =>
        new MotorSheet(
            fields.Quantity("motorPower", Measure.PowerW, 50, 200_000, "Power at the motor's shaft.") / 1000,
            fields.Quantity(
                "motorVoltage",
                Measure.VoltageV,
                12,
                700,
                "Rated voltage, line to line for three-phase motors."
            ),
            fields.Quantity("motorCurrent", Measure.CurrentA, 0.5, 400, "Rated current."),
            fields.OneOf("motor", MotorKinds, "Kind of motor."),
            fields.Quantity("motorEfficiency", Measure.Share, 0.3, 0.98, "Motor efficiency at rated power."),
            fields.Quantity(
                "powerFactor",
                Measure.Share,
                0.3,
                1,
                "Power factor at rated power (100 % for brushless motors)."
            ),
            fields.Quantity("ratedFrequency", Measure.FrequencyHz, 10, 400, "Rated frequency."),
            fields.Quantity("lowestFrequency", Measure.FrequencyHz, 0, 200, "Lowest frequency in continuous running."),
            fields.Quantity("motorDiameter", Measure.LengthMm, 50, 400, "Diameter of the motor.") / 1000
        );

    // Power, voltage, current, efficiency and power factor are one data sheet's: within 15 %, for rounding and for service
    // factors; common practice, no source.
    private static void CheckMotor(FieldMap fields, MotorSheet motor)
    {
        const double nearShare = 0.15;
        var phases = motor.Kind == MotorKind.ThreePhase ? Math.Sqrt(3) : 1;
        var shaftKW = phases * motor.RatedV * motor.RatedA * motor.EfficiencyShare * motor.PowerFactor / 1000;
        fields.RefuseUnless(
            Math.Abs(shaftKW - motor.ShaftKW) <= nearShare * motor.ShaftKW,
            "motorPower",
            Invariant(
                $"{motor.RatedV:0.#} V and {motor.RatedA:0.#} A with this efficiency and power factor give {shaftKW:0.00} kW at the shaft, and the card says {motor.ShaftKW:0.00} kW"
            )
        );
    }

    private static void CheckShaft(FieldMap fields, IPumpCurve curve, MotorSheet motor)
    {
        const double mostLoadFactor = 1.15;
        var most = curve is HelicalRotor rotor
            ? rotor.ShaftW(rotor.BestFlowM3PerS, 1, 1000) / 1000
            : Enumerable.Range(0, 100).Max(i => curve.ShaftW(curve.LargestFlowM3PerS * i / 100, 1, 1000)) / 1000;
        fields.RefuseUnless(
            most <= mostLoadFactor * motor.ShaftKW,
            "motorPower",
            Invariant($"the pump takes {most:0.00} kW at the shaft and the motor gives {motor.ShaftKW:0.00} kW")
        );
    }
}

using Shaduf.Power;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the card of a pump.</summary>
internal static class PumpCardReader
{
    private static IReadOnlyList<(string Word, MotorKind Kind)> MotorKinds { get; } =
    [("three-phase", MotorKind.ThreePhase), ("brushless-dc", MotorKind.BrushlessDc)];

    public static PumpCard Read(FieldMap fields, CardReader.CardHead head)
    {
        var points = fields.Items(
            "curve",
            4,
            30,
            "Points of the data sheet at rated speed.",
            point =>
                new PumpPoint(
                    point.Quantity("flow", Measure.FlowM3PerH, 0, 500, "Flow.") / 3600,
                    point.Quantity("head", Measure.LengthM, 0, 1000, "Head."),
                    point.Quantity("efficiency", Measure.Share, 0, 0.9, "Pump efficiency without the motor.")
                ).With(point)
        );
        var motor = Motor(fields);
        var card = new PumpCard(
            head.Name,
            head.About,
            head.IsPlanningData,
            points,
            motor,
            fields.Quantity("diameter", Measure.LengthMm, 50, 500, "Largest diameter with the cable guard."),
            fields.Quantity("submergence", Measure.LengthM, 0.2, 20, "Least water above the intake."),
            fields.Quantity("mass", Measure.MassKg, 2, 2000, "Mass of pump and motor."),
            fields.Quantity("coolingSpeed", Measure.SpeedMPerS, 0, 2, "Least speed of water past the motor.")
        );
        if (fields.AreSound())
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
            fields.RefusedBy("curve", () => CheckShaft(fields, PumpCurve.Fit(points), motor));
            fields.RefusedBy("motorPower", () => CheckMotor(fields, motor));
        }

        return card;
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

    private static void CheckShaft(FieldMap fields, PumpCurve curve, MotorSheet motor)
    {
        const double mostLoadFactor = 1.15;
        var most = Enumerable.Range(0, 100).Max(i => curve.ShaftW(curve.LargestFlowM3PerS * i / 100, 1, 1000)) / 1000;
        fields.RefuseUnless(
            most <= mostLoadFactor * motor.ShaftKW,
            "motorPower",
            Invariant($"the pump takes {most:0.00} kW at the shaft and the motor gives {motor.ShaftKW:0.00} kW")
        );
    }

    private static PumpPoint With(this PumpPoint point, FieldMap fields)
    {
        fields.Done();
        return point;
    }
}

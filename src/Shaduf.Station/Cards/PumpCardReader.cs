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

    private enum PumpKind
    {
        Centrifugal,
        HelicalRotor,
        Surface,
    }

    private static IReadOnlyList<(string Word, PumpKind Kind)> Kinds { get; } =
    [("centrifugal", PumpKind.Centrifugal), ("helical-rotor", PumpKind.HelicalRotor), ("surface", PumpKind.Surface)];

    public static PumpCard Read(FieldMap fields, CardReader.CardHead head)
    {
        var kind =
            fields.OptionalOneOf(
                "kind",
                Kinds,
                "Kind of pump: a submersible centrifugal pump (left out), a submersible helical rotor, or a centrifugal pump that stands beside the water with a dry motor."
            ) ?? PumpKind.Centrifugal;
        var rotor = Rotor(fields, kind == PumpKind.HelicalRotor);
        var motor = Motor(fields);
        var (curve, npsh) = PumpCurveReader.Read(fields, motor.RatedHz, rotor?.ReliefHeadM);
        var card = new PumpCard(
            head.Name,
            head.About,
            head.IsPlanningData,
            curve!,
            motor,
            fields.Quantity("mass", Measure.MassKg, 2, 2000, "Mass of pump and motor."),
            kind == PumpKind.Surface ? Surface(fields, npsh) : Submersible(fields, npsh)
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
            fields.RefusedBy("curve", () => CheckShaft(fields, curve, motor));
            fields.RefusedBy("motorPower", () => CheckMotor(fields, motor));
            fields.RefusedBy("motorLoads", () => CheckLoads(fields, motor));
        }

        return card;
    }

    // In the water: its size, its water, its cooling.
    private static SubmersibleBody Submersible(FieldMap fields, NpshCurve? npsh)
    {
        double Needed(string name, Measure measure, double lowest, double highest, string about)
        {
            var value = fields.Known(name, measure, lowest, highest, about);
            if (value is null && fields.AreSound(name))
            {
                fields.Complain(name, "missing for a submersible pump", $"'{name}: ...' is needed");
            }

            return value ?? lowest;
        }

        var body = new SubmersibleBody(
            Needed("diameter", Measure.LengthMm, 50, 500, "Largest diameter of a submersible with the cable guard."),
            Needed("motorDiameter", Measure.LengthMm, 50, 400, "Diameter of a submersible motor."),
            Needed("submergence", Measure.LengthM, 0.2, 20, "Least water above the intake of a submersible pump."),
            Needed("coolingSpeed", Measure.SpeedMPerS, 0, 2, "Least speed of water past a submersible motor.")
        );
        if (fields.AreSound("diameter", "motorDiameter"))
        {
            fields.RefuseUnless(
                body.MotorMm <= body.DiameterMm,
                "motorDiameter",
                "the motor is wider than the whole pump"
            );
            fields.RefuseUnless(npsh is null, "curve", "only a surface pump's points tell the suction head required");
        }

        return body;
    }

    // Beside the water: the head that it asks for at its inlet.
    private static SurfaceBody Surface(FieldMap fields, NpshCurve? npsh)
    {
        if (npsh is null && fields.AreSound("curve"))
        {
            fields.Complain(
                "curve",
                "no point of a surface pump tells the suction head required",
                "'npsh: ...' on two points or more at the rated frequency is needed"
            );
        }

        return new(npsh!);
    }

    private static RotorCard? Rotor(FieldMap fields, bool isRotor)
    {
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
            fields.Quantity("lowestFrequency", Measure.FrequencyHz, 0, 200, "Lowest frequency in continuous running.")
        )
        {
            ByLoad = fields.Items("motorLoads", 0, 8, "Motor efficiency at other loads than the rated one.", Load),
        };

    private static LoadEfficiency Load(FieldMap fields)
    {
        var point = new LoadEfficiency(
            fields.Quantity("load", Measure.Share, 0.1, 1.2, "Power at the shaft over the rated one."),
            fields.Quantity("efficiency", Measure.Share, 0.1, 0.98, "Motor efficiency there.")
        );
        fields.Done();
        return point;
    }

    // Each load once, and more at the shaft takes more from the cable.
    private static void CheckLoads(FieldMap fields, MotorSheet motor)
    {
        fields.RefuseUnless(
            motor.ByLoad.Select(point => point.LoadRatio).Append(1).Distinct().Count() == motor.ByLoad.Count + 1,
            "motorLoads",
            "a load stands twice, or the rated one stands here too: motorEfficiency tells that"
        );
        if (fields.AreSound("motorLoads"))
        {
            double[] takenW =
            [
                .. Enumerable.Range(0, 121).Select(i => MotorInput.ElectricalW(motor, i * 10 * motor.ShaftKW)),
            ];
            fields.RefuseUnless(
                takenW.Zip(takenW.Skip(1), (less, more) => more > less).All(grows => grows),
                "motorLoads",
                "with these efficiencies the motor would take less for more"
            );
        }
    }

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

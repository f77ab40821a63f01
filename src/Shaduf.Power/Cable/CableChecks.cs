using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>The part of <see cref="PublishedChecks"/> that concerns cables.</summary>
internal static class CableChecks
{
    internal static IEnumerable<PublishedCheck> All() => [.. OfCable(), .. OfAmpacity()];

    private static IEnumerable<PublishedCheck> OfCable() =>
        [
            AtTwenty("copper class 2 at 20 °C", Conductor.CopperClass2),
            AtTwenty("copper class 5 at 20 °C", Conductor.CopperClass5),
            AtTwenty("tinned copper class 5 at 20 °C", Conductor.CopperClass5Tinned),
            AtTwenty("aluminium class 2 at 20 °C", Conductor.AluminiumClass2),
            new(
                "power/conductor-resistance",
                "copper class 5 at temperature",
                row =>
                    ConductorResistance.AtTemperatureOhmPerKm(
                        Conductor.CopperClass5,
                        row["sizeMm2"],
                        row["conductorDegC"]
                    )
            ),
            new(
                "power/conductor-resistance",
                "annex B factor",
                row => ConductorResistance.AnnexBFactor(row["measuredDegC"])
            ),
            new(
                "power/conductor-resistance",
                "smallest standard copper size",
                row => ConductorResistance.StandardMm2(Conductor.CopperClass2, row["leastMm2"])
            ),
            new(
                "power/cable-reactance",
                "submersible at 50 Hz",
                row => CableReactance.SubmersibleOhmPerKm(row["sizeMm2"], 50)
            ),
            new("power/cable-reactance", "annex G at 50 Hz", _ => CableReactance.AnnexGOhmPerKm(50)),
            new("power/voltage-drop", "three-phase drop", ThreePhaseV),
            new("power/voltage-drop", "three-phase drop share", row => ThreePhaseV(row) / row["systemV"]),
            new("power/voltage-drop", "annex G drop of copper", AnnexGV),
            new("power/voltage-drop", "annex G drop share", row => AnnexGV(row) / row["phaseV"]),
            new(
                "power/voltage-drop",
                "direct-current drop",
                row => VoltageDrop.DirectV(row["currentA"], row["lengthM"], row["ohmPerKm"] / 1000)
            ),
            new(
                "power/voltage-drop",
                "direct-current loss",
                row => VoltageDrop.LossW(CableKind.Dc, row["currentA"], row["lengthM"], row["ohmPerKm"] / 1000)
            ),
            new("power/cable-size", "smallest size for direct current", row => DirectChoice(row).Option.SizeMm2),
            new("power/cable-size", "drop for direct current", row => DirectChoice(row).DropV),
        ];

    private static IEnumerable<PublishedCheck> OfAmpacity() =>
        [
            AirFactor("PVC air factor", Insulation.Pvc70),
            AirFactor("XLPE air factor", Insulation.Xlpe90),
            new("power/ampacity", "under water", row => Ampacity.SubmersibleA(row["sizeMm2"])),
            new(
                "power/ampacity",
                "photovoltaic cable free in air",
                row => Ampacity.PvCableA(row["sizeMm2"], PvLaying.FreeInAir, row["airDegC"])
            ),
            Laid("in conduit B2", LayingMethod.B2),
            Laid("on a wall C", LayingMethod.C),
            Laid("in a buried duct D1", LayingMethod.D1),
            new(
                "power/ampacity",
                "on a wall C in air",
                row =>
                    Ampacity.InstalledA(row["sizeMm2"], LayingMethod.C)
                    * Ampacity.AirTemperatureFactor(Insulation.Pvc70, row["airDegC"])
            ),
            new(
                "power/ampacity",
                "ground factor of XLPE",
                row => Ampacity.GroundTemperatureFactor(Insulation.Xlpe90, row["groundDegC"])
            ),
            new(
                "power/ampacity",
                "ground factor of PVC",
                row => Ampacity.GroundTemperatureFactor(Insulation.Pvc70, row["groundDegC"])
            ),
            new("power/ampacity", "soil factor", row => Ampacity.SoilFactor(row["soilMKPerW"])),
            new("power/ampacity", "depth factor", row => Ampacity.DepthFactor(row["depthM"])),
            new("power/ampacity", "grouping factor", row => Ampacity.GroupingFactor((int)row["count"])),
        ];

    private static PublishedCheck AtTwenty(string quantity, Conductor conductor) =>
        new("power/conductor-resistance", quantity, row => ConductorResistance.OhmPerKm(conductor, row["sizeMm2"]));

    private static PublishedCheck AirFactor(string quantity, Insulation insulation) =>
        new("power/ampacity", quantity, row => Ampacity.AirTemperatureFactor(insulation, row["airDegC"]));

    private static PublishedCheck Laid(string quantity, LayingMethod method) =>
        new("power/ampacity", quantity, row => Ampacity.InstalledA(row["sizeMm2"], method));

    private static double ThreePhaseV(PublishedCase row) =>
        VoltageDrop.ThreePhaseV(
            row["currentA"],
            row["lengthM"],
            new(row["resistanceOhmPerKm"] / 1000, row["reactanceOhmPerKm"] / 1000),
            row["powerFactor"]
        );

    private static double AnnexGV(PublishedCase row) =>
        VoltageDrop.AnnexGV(
            CableSupply.ThreePhase(row["powerFactor"], row["frequencyHz"]),
            row["currentA"],
            row["lengthM"],
            Conductor.CopperClass2,
            row["sizeMm2"]
        );

    private static CableFit DirectChoice(PublishedCase row) =>
        CableSize
            .Smallest(
                [
                    new("4 mm²", 4, Conductor.CopperClass5, 32),
                    new("6 mm²", 6, Conductor.CopperClass5, 41),
                    new("10 mm²", 10, Conductor.CopperClass5, 57),
                ],
                new(
                    row["currentA"],
                    row["currentA"],
                    row["systemV"],
                    row["largestDropShare"],
                    CableSupply.Dc,
                    70,
                    [new("in air", row["lengthM"], 40, 1)]
                )
            )
            .Fit
        ?? throw new ArgumentException($"No cable fits the duty of row {row.Id}.", nameof(row));
}

using Shaduf.Power;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on light, lightning and earth.</summary>
internal static class GuardChapter
{
    // Spacing of four pins and size of a test rod that a builder can carry.
    private const double PinsM = 2;
    private const double TestRodM = 1;
    private const double TestRodDiameterM = 0.012;

    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        var guard = design.Works.Guard;
        yield return new Heading(1, "Light, lightning and earth");
        yield return new Paragraph(Summary(guard));
        if (guard.Lightning.Protection is not null)
        {
            yield return new Figure(
                LightningSection.Of(guard, design.Works.Rack, PicturePaper.Full).Trimmed(),
                "Lightning section. The sphere rolls over ground and tips; what lies under it is protected."
            );
        }

        yield return new Figure(
            GuardPlan.Of(guard, design.Choice.Facing.AzimuthDeg, PicturePaper.Full).Trimmed(),
            "Poles, earth electrodes and fence. Keep gate, taps and resting places 3 m from masts and buried wires."
        );
        if (guard.Light is { } light)
        {
            yield return new Figure(
                GuardPlan.OfLight(guard, PicturePaper.Full).Trimmed(),
                Invariant(
                    $"Night light: least {light.MinLux:0.0} lx, mean {light.MeanLux:0.0} lx, least over mean {light.EvenRatio:0.00}, out of the racks' shade; {(light.Card.Luminaire.Beams.Count > 0 ? "by the card's intensities" : "as a flat lamp that looks equally bright from everywhere below")}, 30 % taken off for dirt and age."
                )
            );
            yield return Supply(light);
        }

        foreach (var (pole, block) in guard.PoleStrengths.Zip(design.Works.PoleBlocks))
        {
            yield return new Figure(
                LightColumnPicture.Of(pole.Column, block.Block, PicturePaper.Half).Trimmed(),
                $"Foot of a {pole.Name}. Cast the bolts with a template of the plate; level the plate on the lower nuts, fill under it with stiff mortar and leave a gap for water to run out; tighten the upper nuts and lock them."
                    + BlockText(block)
            );
        }

        yield return Electrodes(guard.Earth);
        yield return new Paragraph(Pits(guard.Earth));
        yield return Bonds();
        yield return new Heading(3, "How to find out the soil's resistivity, and whether the earth is good");
        yield return new Bullets([.. HowToMeasure(guard.Earth).Select(RichText.From)]);
    }

    private static string Pits(GuardEarth earth) =>
        Invariant(
            $"An earth pit stands round the head of each rod, so that its clamp can be seen and measured: a ring of concrete {GuardEarth.PitM * 1000:0} x {GuardEarth.PitM * 1000:0} x {GuardEarth.PitM * 1000:0} mm with a lid level with the ground, gravel in its bottom, no cable drawn through its walls. Places from the low left corner of the first rack, along the row and behind its low edge: "
        )
        + RodPlaces(earth)
        + ".";

    /// <summary>Places of the earth rods, along the row and behind the low edge of the first rack.</summary>
    public static string RodPlaces(GuardEarth earth) =>
        string.Join("; ", earth.Rods.Select((rod, i) => Invariant($"{i + 1}: {rod.XM:0.0}, {rod.YM:0.0} m")));

    private static string BlockText(PoleBlock pole) =>
        Invariant(
            $" Its block: {pole.Block.LengthMm:0} x {pole.Block.WidthMm:0} mm, {pole.Block.DepthMm:0} mm deep, cast against grown ground."
        );

    private static string Summary(Guard guard)
    {
        var lightning = guard.Lightning;
        var need = lightning.Protection is { } asked
            ? Invariant(
                $"{lightning.FlashesPerKm2Year:0.#} flashes a square kilometre and year: {lightning.Rods.Count} lightning masts of class {asked}, tips at {lightning.RodM:0.0} m, {GuardField.BehindM} m behind the racks, each with one down conductor of 50 mm2 and a joint for measuring."
            )
            : Invariant(
                $"{lightning.FlashesPerKm2Year:0.#} flashes a square kilometre and year: no lightning masts are set."
            );
        return $"{need} The local code and a licensed electrician decide; the standards are IEC 62305 and BS 7430. Rods lower the chance of damage; nothing prevents lightning.";
    }

    private static Table Supply(GuardLight light) =>
        new(
            [new("night light", 2), new("needed", 1, HorizontalAnchor.Right), new("bought", 1, HorizontalAnchor.Right)],
            [
                TableRow.Of("lamps", "", Invariant($"{light.Lamps.Count} x {light.Card.Name}")),
                TableRow.Of(
                    Invariant($"battery of one lamp, {light.Nights:0.#} nights of {light.HoursPerNight:0.0} h"),
                    Invariant($"{light.NeededWh:0} Wh"),
                    Invariant($"{light.BlocksEach} x {light.Card.Battery.BlockWh:0} Wh")
                ),
                TableRow.Of(
                    Invariant($"charging module of one lamp, worst month {light.WorstSunKWhPerM2Day:0.0} kWh/m2/d"),
                    light.NeededW is { } neededW ? Invariant($"{neededW:0} W") : "too little sun",
                    Invariant($"{light.ModulesEach} x {light.Card.Charger.RatedW:0} W")
                ),
            ]
        )
        {
            Caption = "Battery and charging module; fuse at the battery's pole, module tilted like the array",
        };

    private static Table Electrodes(GuardEarth earth) =>
        new(
            [new("earth", 3), new("expected, ohm", 1, HorizontalAnchor.Right)],
            [
                TableRow.Of(
                    Invariant($"one rod of {GuardEarth.RodM:0.0} m, 16 mm, in soil of {earth.ResistivityOhmM:0} ohm m"),
                    Invariant($"{earth.RodOhm:0.0}")
                ),
                .. earth.RingWireM > 0
                    ? new[]
                    {
                        TableRow.Of(
                            Invariant(
                                $"ring of {earth.RingWireM:0} m bare copper 50 mm2, {GuardEarth.WireDepthM} m deep"
                            ),
                            Invariant($"{earth.RingOhm:0.0}")
                        ),
                    }
                    : [],
                TableRow.Total(
                    Invariant(
                        $"{earth.Rods.Count} rods{(earth.RingWireM > 0 ? " and ring" : ", two lengths apart")}; aim {earth.AimOhm:0} ohm"
                    ),
                    Invariant($"{earth.EarthOhm:0.0}")
                ),
            ]
        )
        {
            Caption = "Electrodes; one earth for masts, racks, drive, pump, fence and poles",
        };

    private static Table Bonds() =>
        new(
            [
                new("bond or conductor", 2.2),
                new("copper, mm2", 0.8, HorizontalAnchor.Right),
                new("aluminium, mm2", 0.9, HorizontalAnchor.Right),
                new("steel, mm2", 0.8, HorizontalAnchor.Right),
                new("source", 2),
            ],
            [
                .. BondSize.Table.Select(row =>
                    TableRow.Of(
                        row.Use,
                        Invariant($"{row.CopperMm2:0}"),
                        row.AluminiumMm2 is { } aluminium ? Invariant($"{aluminium:0}") : "not used",
                        Invariant($"{row.SteelMm2:0}"),
                        row.Source
                    )
                ),
            ]
        )
        {
            SizeMm = 2.6,
            Caption =
                "Least sizes. Bond: every module frame to the rack, each rack, drive, light column, both sides of the gate, wellhead or surface pump, and a metal tank; no bare copper on zinc without a bimetal clamp",
        };

    private static IEnumerable<string> HowToMeasure(GuardEarth earth)
    {
        var pinsOhm = earth.ResistivityOhmM / SoilTest.FourPinsOhmM(PinsM, 1);
        var rodOhm = EarthRod.ResistanceOhm(earth.ResistivityOhmM, TestRodM, TestRodDiameterM);
        yield return Invariant(
            $"Four equal pins in a line, {PinsM:0} m apart and 10 cm deep: current through the outer two, voltage over the inner two. Resistivity is {SoilTest.FourPinsOhmM(PinsM, 1):0.0} times volts over amperes; this design takes {earth.ResistivityOhmM:0} ohm m, which would read {pinsOhm:0.0} ohm."
        );
        yield return Invariant(
            $"Or one rod driven {TestRodM:0} m deep, {TestRodDiameterM * 1000:0} mm thick, current pin at 10 m, voltage pin at 6.2 m: it would read {rodOhm:0} ohm."
        );
        yield return "Source: 12 to 24 V alternating from an isolating transformer, never the mains. Read at two currents and with the leads exchanged. At the end of the dry season; otherwise double the figure.";
        yield return Invariant(
            $"Before the drive is energised: open the joint for measuring, read the electrodes alone, write down ohm, date and season. Above {earth.AimOhm:0} ohm add rods or wire and read again."
        );
    }
}

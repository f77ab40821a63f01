using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The steps of the works, in the order in which they are done.</summary>
internal static class MethodSteps
{
    /// <summary>The steps of a design.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The steps.</returns>
    public static IReadOnlyList<MethodStep> Of(Design design) =>
        [
            SetOut(design),
            Steel(design),
            Pits(design),
            Concrete(design),
            Modules(design),
            .. AtTheSource(design),
            Main(design),
            .. StandErectionSteps.Step(design),
            Tank(design),
            .. Taps(design),
            Earth(design),
            Electrics(design),
            FirstRun(design),
            Disinfect(design),
            HandOver(design),
        ];

    private static string Counted(int count, string what) => Invariant($"{count} {what}{(count == 1 ? "" : "s")}");

    private static MethodStep SetOut(Design design)
    {
        var (facing, guard) = (design.Choice.Facing, design.Works.Guard);
        return new(
            "set-out",
            "Walk the site and set out",
            [
                "Ask the owner and the neighbours for pipes and cables; mark them. Agree the pegs with the client.",
                Invariant(
                    $"True north by the shadow at noon or by two equal shadows; the modules face {facing.AzimuthDeg:0} deg clockwise from it, within 2 deg. A compass stays 5 m from steel."
                ),
                Invariant(
                    $"Peg {Counted(design.Works.Rack.Grid.RackCount, "rack")} of {design.Works.Rack.Size.LengthMm / 1000:0.00} m along the row: drive pegs A and B {design.Works.Pits.BaseM:0.000} m apart in front of the low edge, swing two tapes to the middle of each pit by the table, check the diagonals: 5 mm. Two people read every distance."
                ),
                guard.Fence is null
                    ? "No fence is built: keep animals off the open pits by ropes."
                    : Invariant($"Fence {guard.Fence.Says}: peg corners and gate by the fence sheet."),
            ],
            null
        );
    }

    private static MethodStep Steel(Design design)
    {
        var bars = design.Takeoff.BarPlans.Sum(plan => plan.Bought.Sum(bar => bar.Count));
        return new(
            "steel",
            "Cut, weld and paint",
            [
                Invariant(
                    $"{bars} bars; measure the first bar and one slot of the saw ({design.Brief.Rack.Workshop.KerfMm:0.#} mm is reckoned with) before the rest is cut. Marks are stencilled at the datum end."
                ),
                "Tack on a flat bed, measure the diagonals, weld in turns from corner to corner, cool, measure again. Zinc and paint off 50 mm each side of every weld.",
                Invariant(
                    $"Clean to bright metal, stripe the welds, one coat of primer and two of finish: {SteelFinish.AreaM2(design.Works.Rack):0.0} m2 of racks a coat. Two days to dry."
                ),
            ],
            "Hold: every weld seen by a competent person before it is painted; diagonals within 5 mm."
        );
    }

    private static MethodStep Pits(Design design)
    {
        var (footings, block) = (design.Works.Footings, design.Works.Footings.Block);
        return new(
            "pits",
            "Dig the pits",
            [
                Invariant(
                    $"{Counted(footings.Count, "pit")} of {block.LengthMm:0} x {block.WidthMm:0} mm, {block.DepthMm:0} mm deep: {footings.ExcavationM3:0.00} m3 as it lies. Sides upright, bottom flat and clean, spoil 1 m back."
                ),
                "Boards over every pit that nobody works at. From 1.2 m nobody goes in without a slope or shoring.",
            ],
            "Hold: pits before concrete. Size, depth, soil as the drawing says, no water, no loose earth; signed."
        );
    }

    private static MethodStep Concrete(Design design)
    {
        var (works, footings) = (design.Works, design.Works.Footings);
        var erection = works.Erection;
        return new(
            "concrete",
            "Stand the frames, prop, pour",
            [
                .. erection?.Work
                    ?? ["Lift, prop and pour as the engineer of this rack says: its tilt is beyond the method."],
                Invariant(
                    $"{footings.ConcreteM3:0.00} m3 of {footings.Mix.Name} by volume: {footings.PerM3.BagCount:0.0} bags, {footings.PerM3.SandM3:0.00} m3 of sand and {footings.PerM3.StoneM3:0.00} m3 of stone a cubic metre; at most 27 L of water a bag, less what damp sand brings. No water after mixing."
                ),
            ],
            "Hold: plumb, level, tilt and diagonals before the pour; ages of the table before ropes, load and modules."
        );
    }

    private static MethodStep Modules(Design design)
    {
        var choice = design.Choice;
        return new(
            "modules",
            "Set the modules",
            [
                Invariant(
                    $"{Counted(choice.ModuleCount, "module")} of {choice.Module.Body.MassKg:0.0} kg, carried upright by two; bond each frame as it is set. Nobody stands on glass or frame."
                ),
                Invariant(
                    $"{Counted(choice.StringCount, "string")} of {choice.SeriesCount}: {design.Works.Electrics.ColdV:0} V open and cold. Leave one connector of each string apart until the drive is wired."
                ),
            ],
            "Hold: age of the concrete before loading, by the table; signed with the date of the pour."
        );
    }

    private static IEnumerable<MethodStep> AtTheSource(Design design) =>
        design.Works.Source switch
        {
            WellBuild well =>
            [
                new(
                    "well",
                    "Set the pump in the borehole",
                    well.LoweringSteps(design.Choice),
                    "Hold: insulation of motor and cable before lowering and after, 2 Mohm and more at the top; depth from the casing's top written down."
                ),
            ],
            _ =>
            [
                new(
                    "intake",
                    "Set the pump at the water",
                    [
                        Invariant(
                            $"Pump {design.Choice.Pump.Name} on its plinth or raft; bolts tight, shaft turns by hand."
                        ),
                        Invariant(
                            $"Suction pipe of {design.Choice.Lift.Foot.LengthM:0.0} m rising all the way to the pump, every joint tight: prime it and watch for an hour that the water stays."
                        ),
                    ],
                    "Hold: suction pipe full an hour after priming."
                ),
            ],
        };

    private static MethodStep Main(Design design)
    {
        var (main, lift) = (design.Works.Main, design.Choice.Lift);
        return new(
            "main",
            "Trench, lay and test the main",
            [
                Invariant(
                    $"Trench {main.Trench.LengthM:0} m, {main.Trench.WidthM:0.00} m wide, to {main.Trench.DepthM:0.00} m deep: {main.Trench.DigM3:0.0} m3. Bed free of stones; tape with tracing wire 0.3 m over the crown."
                ),
                Invariant(
                    $"{lift.Lay.Name}: ends capped while work rests. {Counted(main.Blocks.Count, "thrust block")}, a week old before the test."
                ),
                Invariant(
                    $"Fill from below with the air valves open, {main.Test.TestBar:0.0} bar at the lowest point for an hour with the joints bare; let down {main.Test.LetDownBar:0.0} bar: at most {main.Test.MostReleasedL:0.0} L may come out. Never test with air."
                ),
            ],
            "Hold: tested tight before any joint is covered."
        );
    }

    private static MethodStep Tank(Design design)
    {
        var choice = design.Choice;
        return new(
            "tank",
            "Tank",
            [
                design.Works.Stand is null
                    ? "Level bed, rammed, without a stone; the tank empty until its joints are made."
                    : "The stand has its age and is signed; the tank is tied down before it is left empty overnight.",
                Invariant(
                    $"{choice.TankCount} x {choice.Tank.Name}: overflow and vent screened, {design.Works.Main.TankFull.Name}. A cubic metre of water weighs a tonne."
                ),
            ],
            null
        );
    }

    private static IEnumerable<MethodStep> Taps(Design design)
    {
        if (design.Works.Taps.Heads.Count > 0)
        {
            var trench = design.Works.TapTrench;
            yield return new(
                "taps",
                "Pipes to the taps",
                [
                    Invariant(
                        $"Trench {trench.LengthM:0} m to {trench.DepthM:0.00} m deep, {trench.DigM3:0.0} m3; {Counted(design.Works.TapStands?.Count ?? 0, "tap stand")} with apron and soakaway."
                    ),
                ],
                null
            );
        }
    }

    private static MethodStep Earth(Design design)
    {
        var (works, earth) = (design.Works, design.Works.Guard.Earth);
        return new(
            "earth",
            "Earth, masts and light",
            [
                Invariant(
                    $"{Counted(earth.Rods.Count, "rod")} of {GuardEarth.RodM:0.0} m{(earth.RingWireM > 0 ? Invariant($" and a ring of {earth.RingWireM:0} m of bare wire") : "")} at the marks of the plan; every metal part of rack, fence, wellhead and drive joined to it."
                ),
                .. works.PoleBlocks.Select(pole =>
                    Invariant(
                        $"{pole.BlocksText(works.CountOf(pole))}, their bolts set by a template; the pole is raised and plumbed a week after the pour, by its top nuts."
                    )
                ),
                "Nobody on masts, racks or in trenches with an earth wire when thunder is heard.",
            ],
            Invariant(
                $"Hold: earth measured, {earth.AimOhm:0} ohm aimed at, and joints at 0.1 ohm, before anything is energised."
            )
        );
    }

    private static MethodStep Electrics(Design design)
    {
        var electrics = design.Works.Electrics;
        return new(
            "electrics",
            "Cables, boxes and drive",
            [
                Invariant(
                    $"Direct current to the drive, {electrics.MotorCable.Duty.LengthM:0} m to the motor; cables in duct or with tape. A licensed electrician where the law asks for one."
                ),
                "Wait five minutes after switching a drive off, and prove it dead, before its cover is opened.",
            ],
            "Hold: insulation of every string and of the motor before energising; polarity of every string read twice."
        );
    }

    private static MethodStep FirstRun(Design design) =>
        new(
            "first-run",
            "First run",
            [
                Invariant(
                    $"Lowest frequency {design.Sizing.Hydraulics.LowestHz:0} Hz, highest {design.Choice.Pump.Motor.RatedHz * design.Sizing.Table.HighestRatio:0} Hz. Valves open, dry-run probes tried by lifting them out of the water."
                ),
                "Water to waste until it is clear and free of sand; then the readings of the test sheets in steady sun about noon.",
            ],
            "Hold: test sheets filled in and judged."
        );

    private static MethodStep Disinfect(Design design)
    {
        var doses = Disinfection.Of(design);
        return new(
            "disinfect",
            "Flush and disinfect",
            [.. doses.Select(dose => dose.Says), Disinfection.Caution],
            "Hold: result of the water test, by a laboratory, before anyone drinks."
        );
    }

    private static MethodStep HandOver(Design design) =>
        new(
            "hand-over",
            "Hand over",
            [
                $"{(design.Works.Guard.Fence is null ? "Signs" : "Fence closed, signs")} up, ground levelled, paint made good, spares and keys counted.",
                $"People taught: daily look, log, safe switch-off, cleaning, what never to touch, whom to call{(design.Brief.Head.Builder.Length > 0 ? $" ({design.Brief.Head.Builder})" : "")}.",
            ],
            "Hold: certificate signed by owner, builder and operator."
        );
}

using Shaduf.Ground;
using Shaduf.Working;
using Shaduf.Workshop;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What is done, and looked at, from a stand's pegs to the first water; and the findings and the calculation of it.</summary>
internal static class StandErectionSteps
{
    private const double PlumbDivisor = 500;
    private const int MostRopes = 6;

    /// <summary>The steps in order.</summary>
    /// <param name="works">The works.</param>
    /// <returns>The steps; each that begins with 'Hold' is a point at which work stops until it is ticked.</returns>
    public static IReadOnlyList<string> Of(StandErection works)
    {
        var (stands, plan) = (works.Stands, works.Stands.Stand.Plan);
        var (block, foot) = (stands.Footings.Block, stands.Stand.Plates.Foot);
        return
        [
            Invariant(
                $"Peg the legs: {plan.SideMm:0} mm apart both ways, diagonals of the outer four equal within 5 mm. Ask for buried pipes and cables before the first spade."
            ),
            Invariant(
                $"Dig to {block.DepthMm:0} mm with upright sides, the bottom flat and clean, spoil 1 m away; nobody deeper than {PitSide.UprightM:0.0} m without boards and struts. Boards over every pit that nobody works at."
            ),
            "Hold: look into every pit. Soil as on the drawing, no water, no loose earth, no fill. Drive a bar of 12 mm with a hammer of 5 kg half a metre into the bottom and count the blows for each 0.1 m: a pit that takes less than half the blows of the others is soft, and work stops there.",
            Invariant(
                $"Set the {StandFoot.BoltCount} bolts {foot.BoltName} of each leg in a template of board, {foot.SpacingMm:0} mm apart and upright, {foot.InConcreteMm:0} mm in the concrete; all heads level within 5 mm by a water tube. Cast each footing with its plinth in one go. Hold: measure bolts and diagonals again an hour after."
            ),
            "Keep the concrete wet and covered for seven days. Legs, deck and water wait for their days in the table.",
            Invariant(
                $"Weld the two rows of legs lying on the ground, with their horizontals and diagonals: the heavier one weighs {works.RowKg:0} kg, its middle {works.RowCentreMm:0} mm from the feet. {Raise(works)}"
            ),
            Invariant(
                $"Before its sling is slack each row stands on ropes from its heads, {works.RopesASide} to each of the four sides, {Erection.RopeDeg:0} deg from level, {works.RopeKN:0.0} kN in each; pull at each anchor with {Erection.ProofFactor * works.RopeKN:0.0} kN first. Nuts on the bolts. Ropes stay until every horizontal and diagonal across the rows is in."
            ),
            "Horizontals and diagonals across, the lowest bay first; nobody climbs above a bay that is not closed.",
            Invariant(
                $"Hold: plumb within {1000 * works.TiedM / PlumbDivisor:0} mm over the legs ({PlumbDivisor:0} to one), diagonals of every bay equal within 5 mm, all gussets welded, all bolts tight, grout of {foot.GroutMm:0} mm rammed under every plate and three days old."
            ),
            "Beams, joists and deck; then rail, ladder and gate, before anybody works on the platform without a rope.",
            Invariant(
                $"The tank, {works.TankKg:0} kg, {People(works.TankKg)}; the wind pushes it with {works.TankPushN:0} N at {Erection.StopsMPerS.Lifting:0} m/s, two tag lines hold it. Straps on the same day."
            ),
            "Fill not before its days in the table: a quarter at a time, nobody under it, every joint and the plumb of all legs looked at after each quarter; leave it full for a day before the taps are opened.",
            Invariant(
                $"Stop lifting at a mean wind of {Erection.StopsMPerS.Lifting:0} m/s, and anybody on the stand at {Erection.StopsMPerS.Ladders:0} (small trees sway). Thunder heard: off the steel and out of the pits."
            ),
        ];
    }

    /// <summary>The step of the method; how to raise what may not be built is not told.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The step; none where no stand is built.</returns>
    public static IEnumerable<MethodStep> Step(Design design)
    {
        if (design.Works is { Stand: { } stand, StandErection: { } erection })
        {
            var isWithheld = design.StandWithheldBy.Count > 0;
            yield return new(
                "stand",
                "Raise the stand of the tank",
                [
                    Invariant(
                        $"{stand.Count} {(stand.Count == 1 ? "stand" : "stands")} of {stand.Stand.Steel.MassKg:0} kg on {stand.Footings.Count} blocks: built only from released drawings{(isWithheld ? ", and they are WITHHELD" : "")}."
                    ),
                    .. isWithheld ? [] : erection.Work,
                ],
                "Hold: levels of the anchor bolts before legs are set; stand plumb and bolted before the tank goes up."
            );
        }
    }

    /// <summary>The findings.</summary>
    /// <param name="works">The works.</param>
    public static IEnumerable<Finding> Findings(StandErection works)
    {
        var ropes = Finding.AtMost(
            "build/stand-ropes",
            works.RopesASide,
            MostRopes,
            "",
            Invariant(
                $"until its rows are braced to each other, {works.RopesASide} ropes to each side hold a row of legs in a wind of {works.StageMPerS:0.0} m/s (once in {Erection.StageYears:0} years, for up to three days): {works.RopeKN:0.0} kN in each, {GuyRope.UpKN(works.RopeKN, Erection.RopeDeg):0.0} kN up at its anchor"
            )
                + (
                    works.RopesASide <= MostRopes
                        ? ""
                        : ". So many are not set right: raise the legs by a crane, or in shorter lengths"
                ),
            "statics; EN 1991-1-6:2005, table 3.1, from memory; number of ropes: judgement"
        );
        yield return works.Stands.Strength.Wind.IsKnown
            ? ropes
            : ropes with
            {
                Status = FindingStatus.Unchecked,
                Says = $"the wind speed is unknown, so this is only a plan: {ropes.Says}",
            };
        yield return new(
            "build/stand-lift",
            Erection.People(works.RowKg) is null || Erection.People(works.TankKg) is null
                ? FindingStatus.Look
                : FindingStatus.Holds,
            Invariant(
                $"a row of legs weighs {works.RowKg:0} kg, its middle {works.RowCentreMm / 1000:0.0} m from the feet: {Raise(works)} The empty tank weighs {works.TankKg:0} kg: {People(works.TankKg)}. The heaviest single piece, {works.Heaviest.Mark}, weighs {works.Heaviest.MassKg:0} kg: {People(works.Heaviest.MassKg)}"
            ),
            works.RowKg,
            null,
            "kg",
            "filter of the UK Health and Safety Executive, not a legal limit; teams from memory; statics"
        );
        var filled = works.Steps[2];
        var days = works.AirDegC.Select(filled.DaysAt).ToList();
        yield return new(
            "build/stand-cure",
            days.Contains(null) ? FindingStatus.Look : FindingStatus.Holds,
            Invariant(
                $"the tank waits for {filled.StrengthShare:0.00} of the concrete's strength: up to {days.Max() ?? 0:0} days, by the month"
            ) + (days.Contains(null) ? "; in months whose air is colder than 5 degC do not cast" : ""),
            days.Max(),
            null,
            "d",
            "EN 1992-1-1:2004, equations 3.2 and B.10, slow or unknown cement; shares: judgement"
        );
    }

    /// <summary>The calculation.</summary>
    /// <param name="works">The works.</param>
    public static WorkingSheet Show(StandErection works) =>
        new(
            "Stand: raising a row of legs",
            [
                new(
                    "v",
                    "v_b c_prob, 20 m/s at least",
                    Invariant(
                        $"{works.Stands.Strength.Wind.BasicMPerS:0.0} · {Steel.WindPressure.ReturnFactor(Erection.StageYears):0.0000}"
                    ),
                    works.StageMPerS,
                    "m/s",
                    "steel/wind-pressure",
                    "EN 1991-1-4:2005, 4.2(2); EN 1991-1-6:2005, table 3.1, from memory"
                ),
                new(
                    "F",
                    "c A q_p of the bare row",
                    Invariant(
                        $"2.0 · {works.Stands.Strength.Drag.Faces.AlongY.SolidM2:0.00} m2, q_p at {works.TiedM:0.00} m"
                    ),
                    works.WindKN,
                    "kN",
                    "workshop/guy-rope",
                    "coefficient 2.0 of sharp edges, EN 1991-1-4:2005, 7.7"
                ),
                new(
                    "T",
                    "1.5 F (h/2)/(h cos θ n)",
                    Invariant($"h = {works.TiedM:0.00} m, θ = {Erection.RopeDeg:0} deg, n = {works.RopesASide}"),
                    works.RopeKN,
                    "kN",
                    "workshop/guy-rope",
                    "statics"
                ),
                new(
                    "S",
                    "W/(2 sin 60°), two legs",
                    Invariant($"{works.RowKg:0} kg"),
                    works.SlingKN,
                    "kN",
                    "workshop/sling",
                    "statics"
                ),
                new(
                    "P",
                    "1.3 W cos γ/cos(δ + γ)",
                    Invariant(
                        $"pole leaning δ = {StandErection.PoleLeanDeg:0} deg, guy γ = {StandErection.PoleGuyDeg:0} deg; the guy pulls with {works.PoleGuyKN:0.0} kN"
                    ),
                    works.PoleKN,
                    "kN",
                    "workshop/lifting-pole",
                    "statics"
                ),
            ]
        );

    private static string Raise(StandErection works) =>
        Erection.People(works.RowKg) is { } people
            ? Invariant($"{people} people tilt it up, one commands, two hold it with ropes from the other side.")
            : Invariant(
                $"Gear for {StandErection.LiftFactor * works.RowKg:0} kg tilts it up over its feet: a hoist on a pole that leans {StandErection.PoleLeanDeg:0} deg, {works.PoleKN:0.0} kN along the pole and {works.PoleGuyKN:0.0} kN in its back guy, two slings at 60 deg with {works.SlingKN:0.0} kN in each, above its middle; tag lines; nobody under it."
            );

    private static string People(double massKg) =>
        Erection.People(massKg) is { } people
            ? Invariant($"{people} {(people == 1 ? "person" : "people")}")
            : "with gear";
}

using Shaduf.Steel;
using Shaduf.Workshop;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What is done, and looked at, from the open pits to the first module.</summary>
internal static class ErectionSteps
{
    private const double PlumbDivisor = 300;

    /// <summary>The steps in order.</summary>
    /// <param name="erection">The works.</param>
    /// <returns>The steps; each that begins with 'Hold' is a point at which work stops until it is ticked.</returns>
    public static IReadOnlyList<string> Of(Erection erection)
    {
        var (rack, props) = (erection.Rack, erection.Props);
        var topMm = 1000 * erection.TiedM;
        return
        [
            .. erection.Strength.IsWallMeasured ? (string[])[] : [Walls(rack)],
            "Peg the column centres from the front line, measure both diagonals: equal within 10 mm. Ask for buried pipes and cables before the first spade.",
            $"Dig the pits {(erection.Footings.IsPlan ? "by the geotechnical design" : Invariant($"to {erection.Footings.Block.DepthMm:0} mm"))} with upright sides, the bottom flat and clean, spoil 1 m away. Boards over every pit that nobody works at.",
            "Hold: look into every pit. Soil as on the drawing, no water, no loose earth at the bottom, no fill.",
            Invariant(
                $"Set the anchors: {erection.RopesASide} to each of the four sides of a frame, {erection.TiedM:0.0} m and more from the columns and {Erection.ClearOfPitMm / 1000:0.0} m clear of any pit. A log of 0.3 x 0.3 x 0.6 m buried crosswise, or two stakes of 1.2 m in line. Pull at each with {Erection.ProofFactor * erection.RopeKN:0.0} kN: it must not creep."
            ),
            Invariant(
                $"Lay the boards of the props before the frame comes: {props.Count} in all, {(props.IsAlong ? "on both sides along the row" : "beyond the pits at both ends")} of each {props.TubeRole}, {props.BoardMm:0} x {props.BoardMm:0} mm and 50 mm thick, level on trodden ground, {PropPlaces.ClearOfPitMm / 1000:0.0} m and more from every pit; {props.StakesASide} {(props.StakesASide == 1 ? "stake" : "stakes")} of 1.2 m driven behind each place. Nothing else stands nearer to a pit."
            ),
            LiftStep(erection),
            Invariant(
                $"The frame rests on its props, not on the pits: {props.Count} straight tubes of {Propping.TubeMm:0.0} x {Propping.TubeWallMm:0.0} mm or stronger under its {props.TubeRole}s as drawn, {props.LengthsSay}, leaning {Propping.MostLeanDeg:0} deg from upright at most, {props.MostAlongKN:0.0} kN along each; heads in a fork or lashed, feet wedged by hardwood pairs that are nailed when the level is right. Column feet then hang {Rack.CoverMm:0} mm over the bottom: nobody puts stones under them."
            ),
            Invariant(
                $"Before the sling is slack tie the ropes at the column heads, {Erection.RopeDeg:0} deg from level or flatter, to anchors on all four sides, with turnbuckles or a windlass of rope, tight by hand and no tighter: they press on the props. One diagonal brace in the plane. A spacer of tube across the heads keeps them apart as drawn."
            ),
            Invariant(
                $"Hold: plumb within {topMm / PlumbDivisor:0} mm over the column ({PlumbDivisor:0} to one), columns 5 mm, heads in line 5 mm in 3 m, both diagonals 10 mm, tilt half a degree, direction 2 deg; every prop bears, wedges nailed, no column touches the bottom. Level with a water tube, not with a telephone."
            ),
            "Cast each pit in one go, rammed or vibrated round the column's foot, plinth with it. Three cubes or cylinders a day where someone can press them; count the bags.",
            "Hold: an hour after casting measure plumb, distances and tilt again, and put right what moved while it still can be.",
            Invariant(
                $"Keep the concrete wet and covered for seven days. No module, no ladder and nobody on the frame. Ropes stay tight and props wedged: look at them every morning and after every gust."
            ),
            Invariant($"Hold: ropes and props off, frame loaded, modules on: each not before its days in the table."),
            Invariant(
                $"Stop work with modules at a mean wind of {Erection.StopsMPerS.Modules:0} m/s (dust and paper blow, small branches move), lifting at {Erection.StopsMPerS.Lifting:0}, ladders at {Erection.StopsMPerS.Ladders:0} (small trees sway). Thunder heard: off the steel and out of the pits."
            ),
        ];
    }

    // What the checks take of a wall that nobody measured.
    private static string Walls(Rack rack)
    {
        var least = rack
            .Steel.Parts.Select(part => part.Section)
            .DistinctBy(section => section.Name)
            .Select(section =>
                Invariant($"{section.Name} {section.WallMm * (1 - MemberSection.UnmeasuredShare):0.0} mm")
            );
        return $"Hold, before a bar is sawn: measure the wall of each lot by calliper at a cut end, inside the weld bead, mean of four. No less than {string.Join(", ", least)}: what is thinner goes back.";
    }

    private static string LiftStep(Erection erection)
    {
        var (centre, piece) = (erection.CentreMm, erection.Heaviest);
        var each =
            piece.MassKg > HandLift.TwoMenKg ? "hoist"
            : piece.MassKg > HandLift.OneManKg ? "two people and more"
            : "one person";
        return Erection.People(erection.FrameKg) is { } people
            ? Invariant(
                $"Lift the frame in by hand, {people} people, one commands: {erection.FrameKg:0} kg, its middle {centre.XMm:0} mm from the left end and {centre.YMm:0} mm from the low edge."
            )
            : Invariant(
                $"Put the frame together in its place, piece by piece (the heaviest, {piece.Mark}, {piece.MassKg:0} kg: {each}), or lift it whole with gear for {1.3 * erection.FrameKg:0} kg: four slings at 60 deg, {erection.SlingKN:0.0} kN in each, hooked round its middle, {centre.XMm:0} mm from the left end and {centre.YMm:0} mm from the low edge; two tag lines; nobody under it."
            );
    }
}

using Shaduf.Power;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>
/// The single-line diagram: strings, what protects them, drive, filter and motor from the top down, one line for all
/// conductors; the earth bar at the left, words at the right.
/// </summary>
public static class SingleLineDiagram
{
    private const double EarthMm = 10;
    private const double LineMm = 52;
    private const double WordsMm = 76;
    private const double TopMm = 26;
    private const int MostDrawn = 4;
    private const double StringPitchMm = 16;

    // A step down the line: its symbol, its words, its box.
    private sealed record Step(
        string Place,
        double HeightMm,
        string Words,
        Action<SceneBuilder, PaperPoint> Draw,
        bool IsEarthed = false
    );

    /// <summary>Composes the picture.</summary>
    /// <param name="design">The design.</param>
    /// <param name="widthMm">Width of the picture [mm], at least 150.</param>
    /// <returns>The picture, not to scale.</returns>
    public static Scene Of(Design design, double widthMm)
    {
        var steps = Steps(design).ToList();
        var heightMm = TopMm + steps.Sum(step => step.HeightMm) + 24 + SideCircuits.HeightMm(design);
        var builder = new SceneBuilder(new(widthMm, heightMm));
        var bottomMm = TopMm + steps.Sum(step => step.HeightMm) - (steps[^1].HeightMm / 2);
        builder.Line(ElectricSymbols.Wire, new(LineMm, TopMm), new(LineMm, bottomMm));
        Strings(builder, design, widthMm);
        var atMm = TopMm;
        foreach (var step in steps)
        {
            var at = new PaperPoint(LineMm, atMm + (step.HeightMm / 2));
            if (step.IsEarthed)
            {
                builder.Line(Layer.Earthing, at, new(EarthMm, at.YMm));
                ElectricSymbols.Joint(builder, new(EarthMm, at.YMm));
            }

            step.Draw(builder, at);
            Words(builder, step.Words, at.YMm, widthMm);
            atMm += step.HeightMm;
        }

        Places(builder, steps);
        Earth(builder, design, (bottomMm + 10, widthMm));
        SideCircuits.Draw(builder, design, bottomMm + 22, (words, atMm) => Words(builder, words, atMm, widthMm));
        return builder.Build("single-line diagram");
    }

    private static void Strings(SceneBuilder builder, Design design, double widthMm)
    {
        var (choice, works) = (design.Choice, design.Works.Electrics);
        var drawn = Math.Min(choice.StringCount, MostDrawn);
        var firstMm = LineMm - ((drawn - 1) * StringPitchMm / 2);
        for (var i = 0; i < drawn; i++)
        {
            var at = new PaperPoint(firstMm + (i * StringPitchMm), 10);
            builder.Line(ElectricSymbols.Wire, at, new(at.XMm, TopMm - 2));
            ElectricSymbols.Module(builder, at);
            var isLast = i == drawn - 1 && choice.StringCount > drawn;
            builder.Text(
                at.Moved(0, -4.5),
                isLast ? Invariant($"... {choice.StringCount}") : Invariant($"{i + 1}"),
                TextStyle.Small with
                {
                    Horizontal = HorizontalAnchor.Centre,
                }
            );
            if (works.Fuse.Needed)
            {
                ElectricSymbols.Fuse(builder, at.Moved(0, 8.5));
            }
        }

        var busMm = TopMm - 2;
        if (drawn > 1)
        {
            builder.Line(
                ElectricSymbols.Wire,
                new(firstMm, busMm),
                new(firstMm + ((drawn - 1) * StringPitchMm), busMm)
            );
        }

        builder.Line(ElectricSymbols.Wire, new(LineMm, busMm), new(LineMm, TopMm));
        builder.Line(Layer.Earthing, new(firstMm - 4, 10), new(EarthMm, 10));
        ElectricSymbols.Joint(builder, new(EarthMm, 10));
        var leftMm = Math.Max(WordsMm, firstMm + ((drawn - 1) * StringPitchMm) + 8);
        var fuse = works.Fuse.Needed
            ? $"; fuse {works.Protection.Fuse?.Name ?? "(no card)"} in both poles of each"
            : "; no string fuses";
        builder.Add(
            WrappedText
                .Of(
                    Invariant(
                        $"{choice.StringCount} x {choice.SeriesCount} {choice.Module.Name}: {works.ColdV:0} V cold and open, {works.AgedV:0} V hot and old, {choice.Module.Sheet.ShortCircuitA:0.0} A a string short-circuited{fuse}"
                    ),
                    widthMm - leftMm,
                    Lettering.SmallMm
                )
                .DrawAll(new(leftMm, 5), widthMm - leftMm, HorizontalAnchor.Left)
        );
    }

    private static IEnumerable<Step> Steps(Design design)
    {
        var (works, choice) = (design.Works.Electrics, design.Choice);
        var direct = works.Cables.SkipLast(1).ToList();
        var motor = choice.Pump.Motor;
        var hasMagnets = motor.Kind == MotorKind.BrushlessDc;
        yield return Cable(direct[0], 2);
        if (works.Protection.IsFar)
        {
            // One string has one cable from the rack to the drive; the box at the array stands in it.
            foreach (var step in Box(works.Protection, "box at the array", works.Protection.DirectNeed.IsAtBothEnds))
            {
                yield return step;
            }

            yield return direct.Count > 1 ? Cable(direct[1], 2) : new("", 8, "", (_, _) => { });
        }

        foreach (var step in Box(works.Protection, "box at the drive", true))
        {
            yield return step;
        }

        yield return new(
            "",
            16,
            Invariant(
                $"drive {choice.Drive.Name}: in {choice.Drive.Sheet.WindowLowV:0} to {choice.Drive.Sheet.WindowHighV:0} V direct; out to the motor {choice.Drive.Sheet.LargestMotorA * works.DeratingShare:0.0} A at most in this heat and height, {works.Lowest.SetHz:0.0} to {Math.Floor(works.Lowest.HighestHz * 10) / 10:0.0} Hz"
            ),
            ElectricSymbols.Drive,
            IsEarthed: true
        );
        if (works.Filter.Kind != FilterKind.None)
        {
            yield return new(
                "",
                13,
                $"{works.Filter.Words} {works.Filter.Card?.Name ?? "(no card)"}",
                (builder, at) => ElectricSymbols.Filter(builder, at, works.Filter.Kind == FilterKind.Sine)
            );
        }

        yield return Cable(works.MotorCable, 3);
        if (works.Protection.MotorNeed is not null)
        {
            yield return new(
                design.Source.Head,
                17,
                $"arresters {works.Protection.MotorArrester?.Name ?? "(no card)"}, only if the drive's maker allows it",
                (builder, at) => ElectricSymbols.Arrester(builder, at, EarthMm)
            );
        }

        yield return new(
            "",
            20,
            Invariant(
                $"{(hasMagnets ? "brushless motor with magnets" : "three-phase motor")} of {choice.Pump.Name}: {motor.ShaftKW:0.##} kW, {motor.RatedV:0} V, {motor.RatedA:0.0} A, {motor.RatedHz:0} Hz at its rating; three cores and an earth core in its cable"
            ),
            (builder, at) => ElectricSymbols.Motor(builder, at, hasMagnets),
            IsEarthed: true
        );
    }

    private static Step Cable(CableRun run, int conductors) =>
        new("", 14, Label(run), (builder, at) => ElectricSymbols.Conductors(builder, at, conductors));

    private static string Label(CableRun run) =>
        run is { Card: { } card, Choice.Fit: { } fit }
            ? Invariant(
                $"{run.Name}: {card.Name}, {card.SizeMm2:0.#} mm², {run.Duty.LengthM:0} m; carries {run.Duty.CurrentA:0.0} A, may carry {fit.AmpacityA:0} A; drop {fit.DropV:0.0} V, {fit.DropShare * 100:0.0} %"
            )
            : $"{run.Name}: no cable fits";

    private static IEnumerable<Step> Box(Protection protection, string place, bool hasArresters)
    {
        yield return new(
            place,
            12,
            Invariant(
                $"isolator {protection.Isolator?.Name ?? "(no card)"}, both poles: {protection.IsolatorV:0} V, {protection.IsolatorA:0.0} A to break"
            ),
            ElectricSymbols.Isolator
        );
        if (hasArresters)
        {
            yield return new(
                place,
                12,
                Invariant(
                    $"arresters {protection.DirectArrester?.Name ?? "(no card)"}, type {protection.DirectNeed.TypeNumber}, plus and minus to earth; leads together 0.5 m at most"
                ),
                (builder, at) => ElectricSymbols.Arrester(builder, at, EarthMm)
            );
        }
    }

    private static void Words(SceneBuilder builder, string words, double middleMm, double widthMm)
    {
        if (words.Length == 0)
        {
            return;
        }

        var text = WrappedText.Of(words, widthMm - WordsMm, Lettering.SmallMm);
        builder.Add(
            text.DrawAll(new(WordsMm, middleMm - (text.HeightMm / 2)), widthMm - WordsMm, HorizontalAnchor.Left)
        );
    }

    // A dashed box round the steps of one place, its name along its left edge.
    private static void Places(SceneBuilder builder, List<Step> steps)
    {
        var atMm = TopMm;
        foreach (var group in steps.Select((step, i) => (step, i)).ToList())
        {
            var (step, i) = group;
            var isFirst = step.Place.Length > 0 && (i == 0 || steps[i - 1].Place != step.Place);
            if (isFirst)
            {
                var heightMm = steps.Skip(i).TakeWhile(each => each.Place == step.Place).Sum(each => each.HeightMm);
                builder.Rectangle(Layer.Hidden, new(18, atMm + 0.5, WordsMm - 3, atMm + heightMm - 0.5));
                builder.Text(
                    new(20, atMm + 3.6),
                    step.Place,
                    TextStyle.Small with
                    {
                        Weight = FontWeight.Bold,
                        IsOpaque = true,
                    }
                );
            }

            atMm += step.HeightMm;
        }
    }

    private static void Earth(SceneBuilder builder, Design design, (double BottomMm, double WidthMm) paper)
    {
        var protection = design.Works.Electrics.Protection;
        builder.Line(Layer.Earthing, new(EarthMm, 10), new(EarthMm, paper.BottomMm));
        ElectricSymbols.Earth(builder, new(EarthMm, paper.BottomMm));
        Words(
            builder,
            Invariant(
                $"one earth for frames, drive, arresters and pump: {protection.EarthCard?.Name ?? "(no card)"}, {protection.FrameEarth.SizeMm2:0.#} mm², to the earth rods; not to scale"
            ),
            paper.BottomMm + 1,
            paper.WidthMm
        );
    }
}

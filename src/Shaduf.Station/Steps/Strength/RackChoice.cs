using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>A form of the rack that was tried, with its sections.</summary>
/// <param name="Rack">The rack; its welds as large as they have to be.</param>
/// <param name="Strength">Its check; null where the method ends.</param>
/// <param name="Cost">Steel, concrete and labour of all racks, in the price book's currency.</param>
public sealed record RackTried(Rack Rack, RackStrength? Strength, double Cost)
{
    /// <summary>Whether it holds.</summary>
    public bool Holds => Strength?.Holds == true;
}

/// <summary>The rack that is built, and the others that were looked at.</summary>
/// <param name="Taken">The one that is built.</param>
/// <param name="Others">The others, the cheapest that holds first.</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record RackChoice(RackTried Taken, IReadOnlyList<RackTried> Others, IReadOnlyList<ChoiceNote> Notes)
{
    // Cross tubes tried beyond the customary number; closer ones are no longer a rack but a floor.
    private const int MostMoreTubes = 4;

    /// <summary>
    /// The cheapest rack that holds: lines of columns, cross tubes along the row, then the lightest tube, column and
    /// angle of the cards for each. What the brief gives is not changed; where nothing holds the customary form stays,
    /// and the others are what would hold if the brief gave way.
    /// </summary>
    /// <param name="ground">Brief, survey, cards and prices.</param>
    /// <param name="module">The module.</param>
    /// <param name="grid">Rows and columns of modules.</param>
    /// <param name="tiltDeg">Tilt [deg].</param>
    /// <returns>The choice.</returns>
    public static RackChoice Of(SizingGround ground, ModuleCard module, RackGrid grid, double tiltDeg)
    {
        var found = Found(ground, module, grid, tiltDeg);
        return found.Taken.Holds || found.Taken.Strength is null
            ? found
            : found with
            {
                Others = [.. RackAdvice.Of(ground, module, grid, tiltDeg), .. found.Others],
            };
    }

    /// <summary>A rack in few words.</summary>
    /// <param name="tried">The rack.</param>
    /// <returns>Lines, tubes, sections, tilt and mass of steel.</returns>
    public static string Says(RackTried tried)
    {
        var (form, sections) = (tried.Rack.Form, tried.Rack.Sections);
        var lines = form.Lines == 1 ? "one line" : "two lines";
        var kind = form.Type == RackType.SlideIn ? "channels" : "clamped rails";
        return Invariant(
            $"{lines} of columns {sections.Column.Name}, {form.TubeCount} cross tubes {sections.Tube.Name}, {kind} of {sections.Angle.Name}, tilt {tried.Rack.Setting.TiltDeg:0.#} deg ({tried.Rack.MassKg:0} kg of steel)"
        );
    }

    internal static RackChoice Found(SizingGround ground, ModuleCard module, RackGrid grid, double tiltDeg)
    {
        var search = new RackSearch(ground, module, grid, tiltDeg);
        var usual = search.UsualRack;
        if (usual.Setting.TiltDeg > MonopitchCanopy.SteepestDeg)
        {
            return new(search.Usual, [], []);
        }

        var tried = new List<RackTried>();
        var counts = search.Tubes(usual.TubePlacesMm.Count, MostMoreTubes).ToList();
        foreach (var lines in search.Lines)
        {
            // What does not hold with most tubes holds with none fewer: one line, which seldom holds, is asked that
            // first, two lines as soon as the customary number does not hold.
            var inOrder =
                lines == 1 && search.Lines.Count > 1
                    ? counts.AsEnumerable().Reverse()
                    : [.. counts.Take(1), counts[^1], .. counts];
            foreach (var tubes in inOrder.Distinct())
            {
                var best = tried
                    .Where(each => each.Holds)
                    .Select(each => each.Cost)
                    .DefaultIfEmpty(double.PositiveInfinity)
                    .Min();
                if (search.Sized(usual.Form with { Lines = lines, TubeCount = tubes }, best) is { } sized)
                {
                    tried.Add(sized);
                    if (tubes == counts[^1] && !sized.Holds)
                    {
                        break;
                    }
                }
            }
        }

        var taken = tried.Where(each => each.Holds).MinBy(each => each.Cost) ?? search.Usual;
        var others = tried
            .Where(each => !ReferenceEquals(each, taken))
            .OrderBy(each => !each.Holds)
            .ThenBy(each => each.Cost)
            .ToList();
        taken = search.Welded(taken);
        return new(taken, others, [.. NotesOf(taken, others, search)]);
    }

    private static IEnumerable<ChoiceNote> NotesOf(RackTried taken, IReadOnlyList<RackTried> others, RackSearch search)
    {
        var form = taken.Rack.Form;
        var why = taken.Holds
            ? Invariant(
                $"the cheapest of {others.Count + 1} forms looked at that holds at {taken.Strength!.Wind.BasicMPerS:0.#} m/s"
            )
            : "nothing that the brief leaves open holds: the customary form is kept, and must not be built so";
        yield return new(
            "form of the rack",
            Invariant($"{(form.Lines == 1 ? "one line" : "two lines")} of columns, {form.TubeCount} cross tubes"),
            why + Reason(others, search)
        );
        if (taken.Strength is { } strength)
        {
            yield return new(
                "code of steel and wind",
                strength.National.Name,
                Invariant(
                    $"factors {strength.National.PermanentFactor:0.##} on weight, {strength.National.VariableFactor:0.##} on wind, snow and people, {strength.National.Steel.JointFactor:0.##} on welds; site.national takes the figures of the country's annex, and a licensed engineer knows them"
                )
            );
        }

        if (taken.Holds)
        {
            yield return new(
                "sections of the rack",
                $"tubes {taken.Rack.Sections.Tube.Name}, columns {taken.Rack.Sections.Column.Name}, angles {taken.Rack.Sections.Angle.Name}",
                "the lightest on the cards that hold in this form; one size less of any of them does not, or there is none"
            );
        }
    }

    private static string Reason(IReadOnlyList<RackTried> others, RackSearch search)
    {
        var oneLine = others.Where(each => each.Rack.Form.Lines == 1).ToList();
        return
            search.Lines.Contains(1)
            && search.Lines.Contains(2)
            && oneLine.Count > 0
            && !oneLine.Exists(each => each.Holds)
            ? "; one line of columns does not hold with any tube on the cards: the wind turns the plane over its one line"
            : "";
    }
}

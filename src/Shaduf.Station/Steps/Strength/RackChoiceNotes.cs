using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Why a rack was chosen.</summary>
internal static class RackChoiceNotes
{
    /// <summary>The notes of a choice.</summary>
    /// <param name="search">What was searched.</param>
    /// <param name="taken">The rack that was taken.</param>
    /// <param name="others">The others.</param>
    /// <returns>The notes.</returns>
    public static IEnumerable<ChoiceNote> Of(RackSearch search, RackTried taken, IReadOnlyList<RackTried> others)
    {
        var form = taken.Rack.Form;
        yield return new(
            "form of the rack",
            Invariant($"{RackChoice.LinesOf(form)} of columns, {form.TubeCount} cross tubes"),
            (
                taken.Holds
                    ? Invariant(
                        $"the cheapest of {others.Count + 1} forms looked at that holds at {taken.Strength!.Wind.BasicMPerS:0.#} m/s"
                    )
                    : Invariant(
                        $"nothing that the brief leaves open holds: of {others.Count + 1} forms looked at this comes nearest, and must not be built so"
                    )
            )
                + Reason(search, taken, others)
                + Ends(taken)
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

        var sections = taken.Rack.Sections;
        yield return new(
            "sections of the rack",
            $"tubes {sections.Tube.Name}, columns {sections.Column.Name}, {(form.Type == RackType.SlideIn ? "angles" : "rails")} {sections.Angle.Name}",
            taken.SteelHolds
                ? "the lightest on the cards that hold in this form; one size less of any of them does not, or there is none"
                : "those that the brief leaves open are raised as far as it helps: the nearest to holding that the cards offer"
        );
    }

    private static string Ends(RackTried taken) =>
        taken.Rack.Form.EndShare < RackForm.UsualEndShare
            ? Invariant(
                $"; the bars along the row go on {taken.Rack.TubePlacesMm[0]:0} mm beyond the outermost tubes, less than usual: with longer free ends none holds a person who stands on one"
            )
            : "";

    // Why there are two lines where one could have been had.
    private static string Reason(RackSearch search, RackTried taken, IReadOnlyList<RackTried> others)
    {
        var oneLine = others.Where(each => each.Rack.Form.Lines == 1).ToList();
        if (taken.Rack.Form.Lines == 1 || !search.Lines.Contains(1) || oneLine.Count == 0)
        {
            return "";
        }

        return oneLine switch
        {
            _ when oneLine.Exists(each => each.Holds) => "; one line of columns holds too, but costs more",
            _ when oneLine.Exists(each => each is { RackHolds: true }) =>
                $"; one line of columns holds in its steel, but {(search.HasOpenFootings ? "no footing dug by hand holds it" : "no footing of the size that the brief gives holds it")}: the wind turns the plane over its one line",
            _ when oneLine.Exists(each => each.SteelHolds) => "",
            _ =>
                $"; one line of columns does not hold with {(search.HasOpenSections ? "any tube on the cards" : "the sections that the brief gives")}: the wind turns the plane over its one line",
        };
    }
}

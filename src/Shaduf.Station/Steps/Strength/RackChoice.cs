using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The rack that is built, and the others that were looked at.</summary>
/// <param name="Taken">The one that is built, on its footings.</param>
/// <param name="Others">The others, the cheapest that holds first.</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record RackChoice(RackTried Taken, IReadOnlyList<RackTried> Others, IReadOnlyList<ChoiceNote> Notes)
{
    /// <summary>
    /// The cheapest rack that holds, its modules and footings with it: lines of columns, cross tubes along the row, then
    /// the lightest tube, column and angle of the cards for each. What the brief gives is not changed; where nothing
    /// holds the rack nearest to holding stays, and the others are what would hold if the brief gave way.
    /// </summary>
    /// <param name="ground">Brief, survey, cards and prices.</param>
    /// <param name="module">The module.</param>
    /// <param name="grid">Rows and columns of modules.</param>
    /// <param name="tiltDeg">Tilt [deg].</param>
    /// <returns>The choice.</returns>
    public static RackChoice Of(SizingGround ground, ModuleCard module, RackGrid grid, double tiltDeg)
    {
        var known = new RackKnown();
        var found = Found(new(ground, module, (grid, tiltDeg), known));
        if (ground.Memory is not null)
        {
            return found with { IsHeld = true };
        }

        return found.Taken.Holds || found.Taken.Strength is null
            ? found
            : found with
            {
                Others = [.. RackAdvice.Of(ground, module, (grid, tiltDeg), known), .. found.Others],
            };
    }

    /// <summary>Whether it was held as it stood, so that nothing else was looked for.</summary>
    public bool IsHeld { get; init; }

    /// <summary>A rack in few words.</summary>
    /// <param name="tried">The rack.</param>
    /// <returns>What the brief gives way in for it, then rows, lines, tubes, sections, tilt and mass of steel.</returns>
    public static string Says(RackTried tried)
    {
        var (form, sections, grid) = (tried.Rack.Form, tried.Rack.Sections, tried.Rack.Grid);
        var kind = form.Type == RackType.SlideIn ? "channels" : "clamped rails";
        var ends =
            form.EndShare < RackForm.UsualEndShare
                ? Invariant($" with free ends of {tried.Rack.TubePlacesMm[0]:0} mm")
                : "";
        return (tried.Instead.Length > 0 ? $"with {tried.Instead}: " : "")
            + Invariant(
                $"{grid.RackCount} x {grid.Rows} x {grid.Columns} modules on {LinesOf(form)} of columns {sections.Column.Name}, {form.TubeCount} cross tubes {sections.Tube.Name}{ends}, {kind} of {sections.Angle.Name}, tilt {tried.Rack.Setting.TiltDeg:0.#} deg ({tried.Rack.MassKg:0} kg of steel)"
            );
    }

    private const string Unsaid =
        ", as far as steel and ground go: the module's card does not say what it bears when held so, ask its maker";

    /// <summary>What would hold where this rack does not, the cheapest first, those last of which the module's card says nothing; begins with a full stop.</summary>
    public string Advice
    {
        get
        {
            if (IsHeld)
            {
                return ". What would hold is looked for when the choice is made anew";
            }

            var would = Others
                .Where(each => each.Holds)
                .OrderBy(each => each.LacksWord)
                .Take(3)
                .Select(each => Says(each) + (each.LacksWord ? Unsaid : ""))
                .ToList();
            return would.Count > 0
                ? $". What would hold, the cheapest first: {string.Join("; or ", would)}"
                : $". Nothing that was looked at holds either: {RackAdvice.LookedAt}; fewer modules in a rack, heavier sections on the cards, or an engineer's design";
        }
    }

    /// <summary>The choice alone, without what would hold where nothing does.</summary>
    internal static RackChoice Found(RackSizing sizing)
    {
        var search = new RackSearch(sizing);
        if (sizing.UsualRack.Setting.TiltDeg > MonopitchCanopy.SteepestDeg)
        {
            return new(sizing.Footed(search.Usual), [], []);
        }

        var tried = search.All();
        if (!tried.Any(each => each.Holds))
        {
            var nearest = tried.Any(each => each.SteelHolds) ? tried : [.. tried, .. search.Nearest()];
            tried = [.. nearest.Select(each => each.SteelHolds ? sizing.Footed(each) : each)];
        }

        var taken =
            Cheapest(tried)
            ?? tried.OrderBy(each => Math.Round(each.Lack, 2)).ThenBy(each => each.Cost).FirstOrDefault()
            ?? search.Usual;
        var others = tried
            .Where(each => !ReferenceEquals(each, taken))
            .OrderBy(each => !each.Holds)
            .ThenBy(each => each.Cost)
            .ToList();
        return new(sizing.Footed(taken), others, [.. RackChoiceNotes.Of(search, taken, others)]);
    }

    /// <summary>The cheapest of some racks that holds; null where none does.</summary>
    internal static RackTried? Cheapest(IEnumerable<RackTried> tried) =>
        tried.Where(each => each.Holds).MinBy(each => each.Cost);

    internal static string LinesOf(RackForm form) => form.Lines == 1 ? "one line" : "two lines";
}

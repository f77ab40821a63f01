using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Tries the forms of racks of one grid of modules.</summary>
/// <param name="sizing">Finds the bars of each.</param>
internal sealed class RackSearch(RackSizing sizing)
{
    // Cross tubes tried beyond the customary number; closer ones are no longer a rack but a floor.
    private const int MostMoreTubes = 4;

    // Forms of which the bars are sought where none holds.
    private const int MostClimbed = 2;

    // Cost of the cheapest that holds so far.
    private double cheapest = double.PositiveInfinity;

    /// <summary>The customary rack, or the one that the brief fixes, checked.</summary>
    public RackTried Usual => sizing.Usual;

    /// <summary>Lines of columns that may be taken.</summary>
    public IReadOnlyList<int> Lines =>
        Brief.Rack.Lines is { } given ? [given]
        : Brief.Rack.Type == RackType.SlideIn ? [1, 2]
        : [2];

    /// <summary>Whether tubes and columns are left open.</summary>
    public bool HasOpenSections => Brief.Rack is { Tube: null, Column: null };

    private Brief Brief => sizing.Brief;

    /// <summary>
    /// Those nearest to holding, where none holds: forms with the customary and with most cross tubes, with the heaviest bars,
    /// and the two that come nearest so with bars raised only as far as it helps.
    /// </summary>
    public IReadOnlyList<RackTried> Nearest()
    {
        var counts = Tubes(sizing.UsualRack.TubePlacesMm.Count).ToList();
        var heaviest = (
            from lines in Lines
            from count in new[] { counts[0], counts[^1] }.Distinct()
            from endShare in new[] { RackForm.UsualEndShare, RackForm.ShortEndShare }
            select FormOf(lines, count, endShare)
        )
            .AsParallel()
            .AsOrdered()
            .Select(form => (Form: form, Tried: sizing.Tried(sizing.Heaviest(form))))
            .AsEnumerable()
            .OrderBy(each => Math.Round(each.Tried?.Lack ?? double.PositiveInfinity, 2))
            .ThenBy(each => each.Tried?.Cost)
            .ToList();
        return
        [
            .. heaviest
                .Take(MostClimbed)
                .Select(each => sizing.Climbed(each.Form, double.PositiveInfinity))
                .OfType<RackTried>(),
            .. heaviest.Select(each => each.Tried).OfType<RackTried>(),
        ];
    }

    /// <summary>The rack of each form that is worth a try, with its footings where its steel and modules hold.</summary>
    public IReadOnlyList<RackTried> All() => WithEnds(share => [.. Lines.SelectMany(lines => OfLines(lines, share))]);

    /// <summary>The first rack that holds, on two lines of columns before one: enough to advise it.</summary>
    public IReadOnlyList<RackTried> First() =>
        WithEnds(share =>
        {
            var tried = new List<RackTried>();
            foreach (var lines in Lines.Reverse().TakeWhile(_ => !tried.Exists(each => each.Holds)))
            {
                tried.AddRange(FirstOf(lines, share));
            }

            return tried;
        });

    // Shorter free ends where the bars along the row hold in no form with the usual ones.
    private static IReadOnlyList<RackTried> WithEnds(Func<double, IReadOnlyList<RackTried>> all)
    {
        var usual = all(RackForm.UsualEndShare);
        return usual.Any(each => each.Holds) || !usual.Any(each => RackLack.Of(each.Strength!).Bearer > 1)
            ? usual
            : [.. usual, .. all(RackForm.ShortEndShare)];
    }

    private IReadOnlyList<RackTried> OfLines(int lines, double endShare)
    {
        var (tried, counts) = (new List<RackTried>(), Counts(endShare));

        // What does not hold with most tubes holds with none fewer: one line, which seldom holds, is asked that
        // first, two lines as soon as the customary number does not hold.
        var inOrder =
            lines == 1 && Lines.Count > 1
                ? counts.AsEnumerable().Reverse()
                : [.. counts.Take(1), counts[^1], .. counts];
        foreach (var count in inOrder.Distinct())
        {
            if (sizing.Sized(FormOf(lines, count, endShare), cheapest) is { } sized)
            {
                tried.Add(sized);
                cheapest = sized.Holds ? Math.Min(cheapest, sized.Cost) : cheapest;
                if (count == counts[^1] && !sized.Holds && (sized.ModulesHold || !sized.SteelHolds))
                {
                    break;
                }
            }
        }

        return tried;
    }

    // With the customary number of tubes, with two more, with most: the first that holds.
    private IReadOnlyList<RackTried> FirstOf(int lines, double endShare)
    {
        var counts = Counts(endShare);
        RackTried? Of(int count) => sizing.Sized(FormOf(lines, count, endShare), double.PositiveInfinity);
        var tried = Of(counts[0]);
        if (tried is not { Holds: true } && counts.Count > 1)
        {
            var most = Of(counts[^1]);
            tried = most is { Holds: true }
                ? Of(counts[counts.Count / 2]) is { Holds: true } fewer
                    ? fewer
                    : most
                : most;
        }

        return tried is null ? [] : [tried];
    }

    private RackForm FormOf(int lines, int count, double endShare) =>
        sizing.UsualRack.Form with
        {
            Lines = lines,
            TubeCount = count,
            EndShare = endShare,
        };

    // Every second number is enough where the ends are short.
    private List<int> Counts(double endShare) =>
        [
            .. Tubes(sizing.UsualRack.TubePlacesMm.Count)
                .Where((_, i) => i % 2 == 0 || endShare == RackForm.UsualEndShare),
        ];

    /// <summary>Whether the size of a footing is left open.</summary>
    public bool HasOpenFootings => Brief.Rack is { FootingSideMm: null, FootingDepthMm: null };

    private IEnumerable<int> Tubes(int usual) =>
        Brief.Rack.Tubes is { } given ? [given] : Enumerable.Range(usual, MostMoreTubes + 1);
}

using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Tries racks of one grid of modules.</summary>
internal sealed class RackSearch
{
    private readonly SizingGround ground;
    private readonly ModuleCard module;
    private readonly RackGrid grid;
    private readonly double tiltDeg;
    private readonly List<string> tubes;
    private readonly List<string> angles;
    private readonly Dictionary<string, double> modulus;
    private readonly Dictionary<RackForm, RackTried?> known = [];

    /// <summary>A search for a grid of modules.</summary>
    public RackSearch(SizingGround ground, ModuleCard module, RackGrid grid, double tiltDeg)
    {
        (this.ground, this.module, this.grid, this.tiltDeg) = (ground, module, grid, tiltDeg);
        var cards = ground.Shelf.All<SectionCard>().ToList();
        var square = cards
            .Where(card => card.Shape == SectionShape.SquareHollow && card.WallMm >= 2.5)
            .OrderBy(card => RackSections.SectionOf(card).MassKgPerM)
            .ToList();
        modulus = square.ToDictionary(
            card => card.Name,
            card => MemberSection.OfSquare(card.SizeMm, card.WallMm).ElasticModulusYMm3
        );

        // A heavier tube that is no stronger is never the lightest that holds.
        var strongest = 0.0;
        tubes = [];
        foreach (var name in square.Select(card => card.Name))
        {
            if (modulus[name] > strongest)
            {
                strongest = modulus[name];
                tubes.Add(name);
            }
        }

        angles =
        [
            .. cards
                .Where(card => card.Shape == SectionShape.EqualAngle)
                .OrderBy(card => RackSections.SectionOf(card).MassKgPerM)
                .Select(card => card.Name),
        ];
        UsualRack =
            Built(RackForm.Of(Brief.Rack)) ?? throw new ArgumentException("no angle makes a channel for the module");
    }

    /// <summary>The customary form, or the one that the brief fixes.</summary>
    public Rack UsualRack { get; }

    /// <summary>The same, checked.</summary>
    public RackTried Usual => Checked(UsualRack);

    /// <summary>Lines of columns that may be taken.</summary>
    public IReadOnlyList<int> Lines =>
        Brief.Rack.Lines is { } given ? [given]
        : Brief.Rack.Type == RackType.SlideIn ? [1, 2]
        : [2];

    private Brief Brief => ground.Brief;

    /// <summary>Cross tubes that may be taken.</summary>
    /// <param name="usual">The customary number.</param>
    /// <param name="more">How many more at most.</param>
    public IEnumerable<int> Tubes(int usual, int more) =>
        Brief.Rack.Tubes is { } given ? [given] : Enumerable.Range(usual, more + 1);

    /// <summary>The lightest sections that hold in a form, or the heaviest where none does; null when it costs more than a limit.</summary>
    /// <param name="form">Lines and cross tubes.</param>
    /// <param name="most">Cost beyond which it is passed over.</param>
    public RackTried? Sized(RackForm form, double most)
    {
        var at = form with { Tube = Brief.Rack.Tube ?? tubes[0], Column = Brief.Rack.Column ?? tubes[0] };
        var tried = CostsMore(at, most) ? null : Tried(at);
        while (tried is { Holds: false } && Raised(at, Failing(tried.Strength!)) is { } next)
        {
            if (CostsMore(next, most))
            {
                return null;
            }

            if (Tried(next) is not { } heavier)
            {
                break;
            }

            (at, tried) = (next, heavier);
        }

        return tried is { Holds: true } ? Lowered(at, tried) : tried;
    }

    /// <summary>A rack with its welds as large as they have to be.</summary>
    /// <param name="tried">The rack, checked with the least welds.</param>
    public RackTried Welded(RackTried tried)
    {
        var rack = tried.Rack.WithLegs(tried.Strength!.LegsMm());
        return tried with { Rack = rack, Strength = RackStrength.Of(rack, Brief, ground.Survey, ground.Shelf) };
    }

    private static RackStrength Failing(RackStrength strength) => strength.HoldsItself ? strength.AtSurface : strength;

    // One size up for each group of members that does not hold; by as much as it lacks.
    private RackForm? Raised(RackForm form, RackStrength strength)
    {
        var (tube, column, bearer) = Lacks(strength);
        var next = form with
        {
            Tube = tube > 1 && Brief.Rack.Tube is null ? Above(form.Tube!, tube) : form.Tube,
            Column = column > 1 && Brief.Rack.Column is null ? Above(form.Column!, column) : form.Column,
        };
        if (bearer > 1)
        {
            var isFixed = (form.Type == RackType.SlideIn ? Brief.Rack.Angle : Brief.Rack.Rail) is not null;
            next = next with { Angle = isFixed ? null : HeavierBearer(next, strength.Rack) };
        }

        return next.Tube is null || next.Column is null || next == form || (bearer > 1 && next.Angle is null)
            ? null
            : next;
    }

    // How many times over its resistance each group is used.
    private static (double Tube, double Column, double Bearer) Lacks(RackStrength strength)
    {
        var (tube, column, bearer) = (0.0, 0.0, 0.0);
        var feet = strength.Rack.Skeleton.Feet.Select(foot => foot.Member).ToHashSet();
        var tubeName = strength.Rack.Sections.Tube.Name;
        foreach (var use in strength.Members)
        {
            var share = use.Result.UtilisationShare;
            if (feet.Contains(use.Member))
            {
                column = Math.Max(column, share);
            }
            else if (strength.Rack.Skeleton.Members[use.Member].Profile.Bar.Name == tubeName)
            {
                tube = Math.Max(tube, share);
            }
            else
            {
                bearer = Math.Max(bearer, share);
            }
        }

        var firm = RackMoves.Firm(strength).Select(move => move.Value / move.Limit).DefaultIfEmpty(0).Max();
        column = Math.Max(column, firm > 1 ? Math.Min(firm, 1.3) : 0);
        foreach (var use in strength.Faces.Where(use => use.UseShare > 1))
        {
            var isColumn = feet.Contains(strength.Rack.Skeleton.Joints[use.Joint].First);
            (tube, column) = isColumn ? (tube, Math.Max(column, 1.01)) : (Math.Max(tube, 1.01), column);
        }

        foreach (var use in strength.Splices.Where(use => use.UseShare > 1))
        {
            var name = strength.Rack.Skeleton.Members[use.Place.Member].Profile.Bar.Name;
            (tube, bearer) = name == tubeName ? (Math.Max(tube, 1.01), bearer) : (tube, Math.Max(bearer, 1.01));
        }

        var welds = strength.Joints.Select(use => use.RequiredLegMm / RackStrength.MostLegMm).DefaultIfEmpty(0).Max();
        return (
            welds > 1 ? Math.Max(tube, 1.01) : tube,
            strength.CriticalFactor < RackStrength.LeastCriticalFactor ? Math.Max(column, 1.01) : column,
            bearer
        );
    }

    private string? Above(string name, double times)
    {
        var wanted = modulus[name] * Math.Min(times, 8) * 0.9;
        var heavier = tubes.SkipWhile(each => each != name).Skip(1).ToList();
        if (!modulus.ContainsKey(name) || heavier.Count == 0)
        {
            return null;
        }

        return heavier.Find(each => modulus[each] >= wanted) ?? heavier[^1];
    }

    private string? HeavierBearer(RackForm form, Rack rack) =>
        (form.Type == RackType.SlideIn ? angles : tubes)
            .SkipWhile(each => each != rack.Sections.Angle.Name)
            .Skip(1)
            .FirstOrDefault(each => Built(form with { Angle = each }) is not null);

    // One size less of tube or column at a time, while it holds.
    private RackTried Lowered(RackForm form, RackTried holding)
    {
        foreach (var isTube in new[] { true, false })
        {
            while (
                (isTube ? Brief.Rack.Tube : Brief.Rack.Column) is null
                && Below(isTube ? form.Tube! : form.Column!) is { } less
                && Tried(isTube ? form with { Tube = less } : form with { Column = less }) is { Holds: true } lighter
            )
            {
                form = isTube ? form with { Tube = less } : form with { Column = less };
                holding = lighter;
            }
        }

        return holding;
    }

    private string? Below(string name) => tubes.TakeWhile(each => each != name).LastOrDefault();

    // None where a part cannot be cut so, or no angle makes a channel.
    private RackTried? Tried(RackForm form)
    {
        if (!known.TryGetValue(form, out var tried))
        {
            try
            {
                tried = Built(form) is { } rack ? Checked(rack) : null;
            }
            catch (ArgumentException) when (form != RackForm.Of(Brief.Rack))
            {
                tried = null;
            }

            known[form] = tried;
        }

        return tried;
    }

    // Told by the bill alone, before anything is analysed.
    private bool CostsMore(RackForm form, double most)
    {
        try
        {
            return double.IsFinite(most) && Built(form) is { } rack && ground.Prices.CostOf(rack) > most;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    private Rack? Built(RackForm form) => Rack.Of(Brief.Rack, module, grid, tiltDeg, ground.Shelf, form);

    private RackTried Checked(Rack rack) =>
        new(rack, RackStrength.Of(rack, Brief, ground.Survey, ground.Shelf), ground.Prices.CostOf(rack));
}

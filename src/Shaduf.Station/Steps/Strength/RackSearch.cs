using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Tries racks of one grid of modules.</summary>
internal sealed class RackSearch
{
    // Cross tubes tried beyond the customary number; closer ones are no longer a rack but a floor.
    private const int MostMoreTubes = 4;

    private readonly SizingGround ground;
    private readonly ModuleCard module;
    private readonly RackGrid grid;
    private readonly double tiltDeg;
    private readonly RackBars bars;
    private readonly Dictionary<RackForm, RackTried?> known = [];

    /// <summary>A search for a grid of modules.</summary>
    public RackSearch(SizingGround ground, ModuleCard module, RackGrid grid, double tiltDeg)
    {
        (this.ground, this.module, this.grid, this.tiltDeg) = (ground, module, grid, tiltDeg);
        bars = RackBars.Of(ground.Shelf);
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

    /// <summary>Whether tubes and columns are left open.</summary>
    public bool HasOpenSections => Brief.Rack is { Tube: null, Column: null };

    private Brief Brief => ground.Brief;

    /// <summary>The nearest to holding of every form, where none holds.</summary>
    public IReadOnlyList<RackTried> Nearest() =>
        [
            .. from lines in Lines
            from count in Tubes(UsualRack.TubePlacesMm.Count)
            let sized = Sized(lines, count, double.PositiveInfinity)
            where sized is not null
            select sized,
        ];

    /// <summary>The rack of each form that is worth a try, with its footings where its steel and modules hold.</summary>
    public IReadOnlyList<RackTried> All()
    {
        var tried = new List<RackTried>();
        var counts = Tubes(UsualRack.TubePlacesMm.Count).ToList();
        foreach (var lines in Lines)
        {
            // What does not hold with most tubes holds with none fewer: one line, which seldom holds, is asked that
            // first, two lines as soon as the customary number does not hold.
            var inOrder =
                lines == 1 && Lines.Count > 1
                    ? counts.AsEnumerable().Reverse()
                    : [.. counts.Take(1), counts[^1], .. counts];
            foreach (var count in inOrder.Distinct())
            {
                var best = tried.Where(each => each.Holds).Select(each => each.Cost);
                if (Sized(lines, count, best.DefaultIfEmpty(double.PositiveInfinity).Min()) is { } sized)
                {
                    tried.Add(sized);
                    if (count == counts[^1] && !sized.Holds)
                    {
                        break;
                    }
                }
            }
        }

        return tried;
    }

    /// <summary>A rack on its footings, its welds as large as they have to be.</summary>
    /// <param name="tried">The rack.</param>
    public RackTried Footed(RackTried tried) =>
        tried.Footings is null ? FootingChoice.Of(ground, tried, module) : tried;

    /// <summary>Whether the size of a footing is left open.</summary>
    public bool HasOpenFootings => Brief.Rack is { FootingSideMm: null, FootingDepthMm: null };

    private IEnumerable<int> Tubes(int usual) =>
        Brief.Rack.Tubes is { } given ? [given] : Enumerable.Range(usual, MostMoreTubes + 1);

    // The lightest sections that hold in a form, on footings; where none does, those that come nearest to it; none when
    // it costs more than a limit.
    private RackTried? Sized(int lines, int tubeCount, double most)
    {
        var form = UsualRack.Form with { Lines = lines, TubeCount = tubeCount };
        var at = form with { Tube = Brief.Rack.Tube ?? bars.Tubes[0], Column = Brief.Rack.Column ?? bars.Tubes[0] };
        var tried = CostsMore(at, most) ? null : Tried(at);
        var nearest = tried;
        while (tried is { SteelHolds: false } && Raised(at, Failing(tried.Strength!)) is { } next)
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
            nearest = heavier.Lack < nearest!.Lack ? heavier : nearest;
        }

        return tried is { SteelHolds: true } ? Settled(Lowered(at, tried)) : nearest;
    }

    private RackTried Settled(RackTried holding) => holding.ModulesHold ? Footed(holding) : holding;

    private static RackStrength Failing(RackStrength strength) => strength.HoldsItself ? strength.AtSurface : strength;

    // One size up for each group of members that does not hold and is left open; by as much as it lacks.
    private RackForm? Raised(RackForm form, RackStrength strength)
    {
        var (tube, column, bearer) = Lacks(strength);
        var given = Brief.Rack;
        var isBearerOpen = (form.Type == RackType.SlideIn ? given.Angle : given.Rail) is null;
        var next = form with
        {
            Tube = tube > 1 && given.Tube is null ? bars.Above(form.Tube!, tube) ?? form.Tube : form.Tube,
            Column = column > 1 && given.Column is null ? bars.Above(form.Column!, column) ?? form.Column : form.Column,
        };
        next =
            bearer > 1 && isBearerOpen ? next with { Angle = HeavierBearer(next, strength.Rack) ?? next.Angle } : next;
        return next == form ? null : next;
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
            if (feet.Contains(use.Pressed))
            {
                column = Math.Max(column, 1.01);
            }
            else if (strength.Rack.Skeleton.Members[use.Pressed].Profile.Bar.Name == tubeName)
            {
                tube = Math.Max(tube, 1.01);
            }
            else
            {
                bearer = Math.Max(bearer, 1.01);
            }
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

    private string? HeavierBearer(RackForm form, Rack rack) =>
        bars.Bearers(form.Type)
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
                && bars.Below(isTube ? form.Tube! : form.Column!) is { } less
                && Tried(isTube ? form with { Tube = less } : form with { Column = less })
                    is { SteelHolds: true } lighter
            )
            {
                form = isTube ? form with { Tube = less } : form with { Column = less };
                holding = lighter;
            }
        }

        return holding;
    }

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

    // Told by the bill alone, before anything is analysed: no footing costs less than the least block.
    private bool CostsMore(RackForm form, double most)
    {
        try
        {
            return double.IsFinite(most)
                && Built(form) is { } rack
                && ground.Prices.CostOf(rack, FootingChoice.LeastOf(Brief.Rack, rack)) > most;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    private Rack? Built(RackForm form) => Rack.Of(Brief.Rack, module, grid, tiltDeg, ground.Shelf, form);

    private RackTried Checked(Rack rack)
    {
        var strength = RackStrength.Of(rack, Brief, ground.Survey, ground.Shelf);
        return new(rack, strength, ground.Prices.CostOf(rack, Footings.Of(Brief.Rack, rack)))
        {
            Holding = strength is null ? null : RackHolding.Of(strength, module, Brief.Rack.Way),
        };
    }
}

using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Finds the bars of a rack of one form: checks, raises and lowers them.</summary>
internal sealed class RackSizing
{
    // A form that is used so many times over with the heaviest bars does not hold with any.
    private const double HopelessShare = 1.05;

    private readonly SizingGround ground;
    private readonly ModuleCard module;
    private readonly RackGrid grid;
    private readonly double tiltDeg;
    private readonly RackBars bars;
    private readonly RackKnown known;
    private RackTried? customary;

    /// <summary>The bars for a grid of modules.</summary>
    /// <param name="ground">Brief, survey, cards and prices.</param>
    /// <param name="module">The module.</param>
    /// <param name="at">Rows and columns of modules, and tilt [deg].</param>
    /// <param name="known">Racks that were checked already.</param>
    public RackSizing(SizingGround ground, ModuleCard module, (RackGrid Grid, double TiltDeg) at, RackKnown known)
    {
        (this.ground, this.module, (grid, tiltDeg), this.known) = (ground, module, at, known);
        bars = RackBars.Of(ground.Shelf);
        UsualRack =
            Built(RackForm.Of(Brief.Rack)) ?? throw new ArgumentException("no angle makes a channel for the module");
    }

    /// <summary>The customary form, or the one that the brief fixes.</summary>
    public Rack UsualRack { get; }

    /// <summary>The same, checked.</summary>
    public RackTried Usual => customary ??= Checked(UsualRack);

    /// <summary>The brief.</summary>
    public Brief Brief => ground.Brief;

    /// <summary>A rack on its footings, its welds as large as they have to be.</summary>
    /// <param name="tried">The rack.</param>
    public RackTried Footed(RackTried tried) =>
        tried.Footings is null ? FootingChoice.Of(ground, tried, module) : tried;

    /// <summary>
    /// The lightest sections that hold in a form, on footings; where none does, what was tried last. What the heaviest bars
    /// do not mend is not climbed to.
    /// </summary>
    /// <param name="form">The form.</param>
    /// <param name="most">Cost above which it is not wanted.</param>
    /// <returns>The rack; null when it costs more.</returns>
    public RackTried? Sized(RackForm form, double most) =>
        CostsMore(Lightest(form), most) ? null
        : Hopeless(form) is { } hopeless ? hopeless
        : Climbed(form, most);

    // A form with the heaviest bars, where even these are far from holding it. Asked only where the lightest fail in what
    // heavier bars seldom mend: one line of columns, or bars along the row of which there are no heavier ones.
    private RackTried? Hopeless(RackForm form)
    {
        if (Tried(Lightest(form))?.Strength is not { HoldsItself: false } light)
        {
            return null;
        }

        var heaviest = Heaviest(form);
        var isAsked =
            form.Lines == 1 || (heaviest.Angle == light.Rack.Sections.Angle.Name && RackLack.Of(light).Bearer > 1);
        return
            isAsked
            && Tried(heaviest) is { Strength: { HoldsItself: false } heavy } tried
            && RackLack.Of(heavy).IsBeyond(HopelessShare)
            ? tried
            : null;
    }

    private RackForm Lightest(RackForm form) =>
        form with
        {
            Tube = Brief.Rack.Tube ?? bars.Tubes[0],
            Column = Brief.Rack.Column ?? bars.Tubes[0],
        };

    /// <summary>A form with the heaviest bars that the brief leaves open.</summary>
    /// <param name="form">The form.</param>
    public RackForm Heaviest(RackForm form) =>
        form with
        {
            Tube = Brief.Rack.Tube ?? bars.Tubes[^1],
            Column = Brief.Rack.Column ?? bars.Tubes[^1],
            Angle = GivenBearer ?? bars.Bearers(form.Type).LastOrDefault(each => HasBearer(form, each)),
        };

    private string? GivenBearer => Brief.Rack.Type == RackType.SlideIn ? Brief.Rack.Angle : Brief.Rack.Rail;

    private bool HasBearer(RackForm form, string bearer) =>
        RackSections.Of(Brief.Rack, module, ground.Shelf, form with { Angle = bearer }) is not null;

    /// <summary>A form's bars from the lightest up, by what each group lacks; then down again where it holds.</summary>
    /// <param name="form">The form.</param>
    /// <param name="most">Cost above which it is not wanted.</param>
    public RackTried? Climbed(RackForm form, double most)
    {
        var at = Lightest(form);
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

        return tried is { SteelHolds: true } ? Settled(Lowered(at, tried), most) : nearest;
    }

    // Footings are chosen only where steel and modules hold, and the bill is not above the limit before them.
    private RackTried? Settled(RackTried holding, double most) =>
        !holding.ModulesHold ? holding
        : CostsMore(holding.Rack.Form, most) ? null
        : Footed(holding);

    private static RackStrength Failing(RackStrength strength) => strength.HoldsItself ? strength.AtSurface : strength;

    // One size up for each group of members that does not hold and is left open; by as much as it lacks.
    private RackForm? Raised(RackForm form, RackStrength strength)
    {
        var (tube, column, bearer) = RackLack.Of(strength);
        var given = Brief.Rack;
        var next = form with
        {
            Tube = tube > 1 && given.Tube is null ? bars.Above(form.Tube!, tube) ?? form.Tube : form.Tube,
            Column = column > 1 && given.Column is null ? bars.Above(form.Column!, column) ?? form.Column : form.Column,
        };
        var heavier = bearer > 1 && GivenBearer is null ? HeavierBearer(next, strength.Rack) : null;
        next = heavier is null ? next : next with { Angle = heavier };
        return next != form ? next
            : bearer > 1 ? Stiffer(form, bearer)
            : null;
    }

    // Bars along the row of which there are no heavier ones carry less on stiffer tubes, and on stiffer columns: as far as
    // the heaviest of these mend it.
    private RackForm? Stiffer(RackForm form, double bearer) =>
        Tried(Heaviest(form))?.Strength is not { } heavy || RackLack.Of(heavy).Bearer > HopelessShare ? null
        : Brief.Rack.Tube is null && bars.Above(form.Tube!, bearer) is { } tube ? form with { Tube = tube }
        : Brief.Rack.Column is null && bars.Above(form.Column!, bearer) is { } column ? form with { Column = column }
        : null;

    private string? HeavierBearer(RackForm form, Rack rack) =>
        bars.Bearers(form.Type)
            .SkipWhile(each => each != rack.Sections.Angle.Name)
            .Skip(1)
            .FirstOrDefault(each => HasBearer(form, each));

    // One size less of tube, column or bar along the row at a time, until none of the three can be less.
    private RackTried Lowered(RackForm form, RackTried holding)
    {
        while (
            Lighter(form, holding.Rack)
                .Select(less => (Form: less, Tried: Tried(less)))
                .FirstOrDefault(each => each.Tried is { SteelHolds: true })
                is { Tried: { } lighter } less
        )
        {
            (form, holding) = (less.Form, lighter);
        }

        return holding;
    }

    private IEnumerable<RackForm> Lighter(RackForm form, Rack rack)
    {
        if (Brief.Rack.Tube is null && bars.Below(form.Tube!) is { } tube)
        {
            yield return form with
            {
                Tube = tube,
            };
        }

        if (Brief.Rack.Column is null && bars.Below(form.Column!) is { } column)
        {
            yield return form with
            {
                Column = column,
            };
        }

        var lighter = bars.Bearers(form.Type).TakeWhile(each => each != rack.Sections.Angle.Name);
        if (GivenBearer is null && lighter.LastOrDefault(each => HasBearer(form, each)) is { } bearer)
        {
            yield return form with
            {
                Angle = bearer,
            };
        }
    }

    /// <summary>A form as it is, checked; null where a part cannot be cut so, or no angle makes a channel.</summary>
    /// <param name="form">The form.</param>
    public RackTried? Tried(RackForm form) =>
        known.Of(
            Brief.Rack,
            (grid, tiltDeg, form),
            () =>
            {
                try
                {
                    return Built(form) is { } rack ? Checked(rack) : null;
                }
                catch (ArgumentException) when (form != RackForm.Of(Brief.Rack))
                {
                    return null;
                }
            }
        );

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

using Shaduf.Ground;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>A footing of some shape.</summary>
/// <param name="Form">Its shape.</param>
/// <param name="Block">Its sizes.</param>
internal sealed record FootingOption(FootingForm Form, FootingBlock Block);

/// <summary>
/// Footings for a rack: those of the brief, or the least that hold: square blocks, and where these grow silly beams
/// across the row or strips along it.
/// </summary>
internal static class FootingChoice
{
    // Deepest pit dug by hand without support, and the widest block that is still a block: judgement, no source.
    internal const double DeepestMm = 1500;
    internal const double WidestMm = 1500;
    private const double LargestM3 = 1;
    private const double ShallowestMm = 600;
    private const double NarrowestMm = 400;
    private const double StepMm = 50;

    // Beams and strips: trenches, in steps of 100 mm; judgement, no source.
    private const double TrenchStepMm = 100;
    private const double ShallowestTrenchMm = 500;
    private const double DeepestTrenchMm = 900;
    private const double LongestBeamMm = 4000;
    private const double WidestStripMm = 2500;
    private const double LongestStripMm = 25_000;
    private const double EndMm = 300;

    /// <summary>A rack on its footings: columns of the right length for them, welds as large as they have to be.</summary>
    /// <param name="ground">Brief, survey, cards and prices.</param>
    /// <param name="tried">The rack, its columns in blocks of the customary depth or the brief's.</param>
    /// <param name="module">The module.</param>
    /// <returns>The rack with its footings, and what both cost.</returns>
    public static RackTried Of(SizingGround ground, RackTried tried, ModuleCard module)
    {
        var brief = ground.Brief.Rack;
        var usual = Footings.Of(brief, tried.Rack);
        if (tried.Strength is not { } strength)
        {
            return tried with { Footings = usual };
        }

        var soil = FootingGround.Of(ground.Brief.Site);
        var isOpen = brief.FootingSideMm is null || brief.FootingDepthMm is null;
        var least = isOpen ? Least(strength, soil, brief.FootingSideMm, brief.FootingDepthMm) : null;
        var taken = least ?? new FootingOption(FootingForm.Block, usual.Block);
        var settled = brief with { FootingSideMm = taken.Block.WidthMm, FootingDepthMm = taken.Block.DepthMm };
        var rack = (
            taken.Block.DepthMm == usual.Block.DepthMm
                ? tried.Rack
                : Rebuilt(ground with { Brief = ground.Brief with { Rack = settled } }, tried.Rack, module)
        ).WithLegs(strength.LegsMm());
        var checkedRack = RackStrength.Of(rack, ground.Brief with { Rack = settled }, ground.Survey, ground.Shelf)!;
        var footings = Footings.Of(settled, rack, taken) with
        {
            Strength = FootingStrength.Of(checkedRack, soil, taken.Block, checkedRack.Wind.PeakKNPerM2, taken.Form),
            IsPlan = SoilFindings.Refused(ground.Brief.Site.Soil, soil) is not null,
            Hold = ColumnHold.Of(checkedRack, taken.Block, usual.Mix),
            Notes = [.. isOpen ? [Note(taken, least is not null, strength, soil)] : (ChoiceNote[])[], .. usual.Notes],
        };
        return tried with
        {
            Rack = rack,
            Strength = checkedRack,
            Footings = footings,
            Cost = ground.Prices.CostOf(rack, footings),
        };
    }

    /// <summary>The smallest block that is looked at, or the brief's, under each column.</summary>
    /// <param name="brief">The rack as the brief has it.</param>
    /// <param name="rack">The rack.</param>
    public static Footings LeastOf(RackBrief brief, Rack rack) =>
        Footings.Of(
            brief,
            rack,
            new(
                FootingForm.Block,
                Footings.BlockOf(
                    brief.FootingSideMm ?? NarrowestMm,
                    brief.FootingDepthMm ?? ShallowestMm,
                    rack.Sections.Column.SideMm
                )
            )
        );

    /// <summary>
    /// The footings with the least concrete that hold: square blocks; where none does, or one takes more than a cubic
    /// metre, and neither side nor depth is given, beams or strips too.
    /// </summary>
    /// <param name="strength">The analysed rack.</param>
    /// <param name="soil">The ground.</param>
    /// <param name="sideMm">Side of a square block, where that is given [mm].</param>
    /// <param name="depthMm">Its depth, where that is given [mm].</param>
    /// <returns>The footing; null when none holds.</returns>
    public static FootingOption? Least(RackStrength strength, FootingGround soil, double? sideMm, double? depthMm)
    {
        var block = Least(strength, soil, FootingForm.Block, Blocks(strength, sideMm, depthMm));
        return block?.Block.ConcreteM3 <= LargestM3 || sideMm is not null || depthMm is not null
            ? block
            : new[]
            {
                block,
                Least(strength, soil, FootingForm.Beam, Beams(strength)),
                Least(strength, soil, FootingForm.Strip, Strips(strength)),
            }
                .OfType<FootingOption>()
                .MinBy(option => Count(strength, option.Form) * option.Block.ConcreteM3);
    }

    /// <summary>How many footings of a form a rack stands on.</summary>
    /// <param name="strength">The analysed rack.</param>
    /// <param name="form">The form.</param>
    public static int Count(RackStrength strength, FootingForm form) =>
        FootGroups.Of(strength.Rack.Skeleton, form).Count;

    private static FootingOption? Least(
        RackStrength strength,
        FootingGround soil,
        FootingForm form,
        IEnumerable<FootingBlock> blocks
    )
    {
        FootingStrength? any = null;
        return blocks
            .OrderBy(block => block.ConcreteM3)
            .ThenBy(block => block.DepthMm)
            .Where(block =>
                (
                    any = (any ?? FootingStrength.Of(strength, soil, block, strength.Wind.PeakKNPerM2, form)) with
                    {
                        Block = block,
                    }
                ).Holds
            )
            .Select(block => new FootingOption(form, block))
            .FirstOrDefault();
    }

    private static IEnumerable<FootingBlock> Blocks(RackStrength strength, double? sideMm, double? depthMm)
    {
        var column = strength.Rack.Sections.Column.SideMm;
        var narrowest = Math.Max(NarrowestMm, Math.Ceiling((column + 150) / StepMm) * StepMm);
        return from side in Steps(sideMm, narrowest, WidestMm, StepMm)
            from depth in Steps(depthMm, ShallowestMm, DeepestMm, StepMm)
            select Footings.BlockOf(side, depth, column);
    }

    private static IEnumerable<FootingBlock> Beams(RackStrength strength)
    {
        var (column, together) = (strength.Rack.Sections.Column.SideMm, Largest(strength, FootingForm.Beam));
        var shortest = Whole(FootGroups.Spread(together).AcrossMm + column + (2 * EndMm));
        return from across in Steps(null, Math.Max(shortest, 1000), Math.Max(shortest, LongestBeamMm), TrenchStepMm)
            from along in Steps(null, Math.Max(NarrowestMm, Whole(column + 150)), WidestMm, TrenchStepMm)
            from depth in Steps(null, ShallowestTrenchMm, DeepestTrenchMm, TrenchStepMm)
            where along < across
            select Footings.BlockOf(along, depth, column) with
            {
                WidthMm = across,
                PlinthCount = together.Count,
            };
    }

    private static IEnumerable<FootingBlock> Strips(RackStrength strength)
    {
        var (column, together) = (strength.Rack.Sections.Column.SideMm, Largest(strength, FootingForm.Strip));
        var length = Whole(FootGroups.Spread(together).AlongMm + column + (2 * EndMm));
        return from across in Steps(null, Whole(column + 150), WidestStripMm, TrenchStepMm)
            from depth in Steps(null, ShallowestTrenchMm, DeepestTrenchMm, TrenchStepMm)
            where length <= LongestStripMm
            select Footings.BlockOf(across, depth, column) with
            {
                LengthMm = length,
                PlinthCount = together.Count,
            };
    }

    // All footings of a rack are cast alike: as the one with the most columns.
    private static IReadOnlyList<FootPlace> Largest(RackStrength strength, FootingForm form) =>
        FootGroups.Of(strength.Rack.Skeleton, form).MaxBy(columns => columns.Count)!;

    private static double Whole(double mm) => Math.Ceiling((mm / TrenchStepMm) - 1e-9) * TrenchStepMm;

    internal static IEnumerable<double> Steps(double? givenMm, double fromMm, double toMm, double stepMm)
    {
        if (givenMm is { } given)
        {
            yield return given;
            yield break;
        }

        for (var mm = fromMm; mm <= toMm; mm += stepMm)
        {
            yield return mm;
        }
    }

    // The same rack with its columns as deep as the footings want them; customary places of tubes are none of a counted form.
    private static Rack Rebuilt(SizingGround ground, Rack was, ModuleCard module) =>
        new[] { was.Form, null }
            .Select(form => Rack.Of(ground.Brief.Rack, module, was.Grid, was.Setting.TiltDeg, ground.Shelf, form)!)
            .First(each => each.TubePlacesMm.SequenceEqual(was.TubePlacesMm));

    private static ChoiceNote Note(FootingOption taken, bool holds, RackStrength strength, FootingGround soil) =>
        new(
            taken.Form == FootingForm.Block ? "footing block" : "footing",
            Footings.Says(taken.Form, taken.Block),
            (holds, taken.Form) switch
            {
                (true, FootingForm.Block) => Invariant(
                    $"the least concrete that holds at {strength.Wind.BasicMPerS:0.#} m/s in {soil.Name}, dug by hand: no deeper than {DeepestMm:0} mm"
                ),
                (true, _) => Invariant(
                    $"square blocks that hold at {strength.Wind.BasicMPerS:0.#} m/s in {soil.Name} would take more than {LargestM3:0} m3 each; of blocks, beams across the row and strips along it this holds with the least concrete"
                ),
                _ => Invariant(
                    $"a customary block, no source, which does not hold: no square block up to {WidestMm:0} mm wide and {DeepestMm:0} mm deep, no beam up to {LongestBeamMm / 1000:0} m and no strip up to {WidestStripMm / 1000:0.0} m wide does at {strength.Wind.BasicMPerS:0.#} m/s in {soil.Name}"
                ),
            }
        );
}

using Shaduf.Ground;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Blocks for a rack: those of the brief, or the least that hold.</summary>
internal static class FootingChoice
{
    // Deepest pit dug by hand without support, and the widest block that is still a block: judgement, no source.
    internal const double DeepestMm = 1500;
    internal const double WidestMm = 1500;
    private const double ShallowestMm = 600;
    private const double NarrowestMm = 400;
    private const double StepMm = 50;

    /// <summary>The blocks, and the rack with columns of the right length for them.</summary>
    /// <param name="ground">Brief, survey and cards.</param>
    /// <param name="racks">The rack, its columns in blocks of the customary depth or the brief's.</param>
    /// <param name="module">The module.</param>
    /// <returns>Rack and blocks.</returns>
    public static (RackChoice Racks, Footings Footings) Of(SizingGround ground, RackChoice racks, ModuleCard module)
    {
        var brief = ground.Brief.Rack;
        var usual = Footings.Of(brief, racks.Taken.Rack);
        if (racks.Taken.Strength is not { } strength)
        {
            return (racks, usual);
        }

        var soil = FootingStrength.ClassOf(ground.Brief.Site.Soil);
        var isOpen = brief.FootingSideMm is null || brief.FootingDepthMm is null;
        var least = isOpen ? Least(strength, soil, brief.FootingSideMm, brief.FootingDepthMm) : null;
        var block = least ?? usual.Block;
        var settled = brief with { FootingSideMm = block.LengthMm, FootingDepthMm = block.DepthMm };
        var (rack, checkedRack) =
            block.DepthMm == usual.Block.DepthMm
                ? (racks.Taken.Rack, strength)
                : Rebuilt(ground with { Brief = ground.Brief with { Rack = settled } }, racks.Taken, module);
        var footings = Footings.Of(settled, rack) with
        {
            Strength = FootingStrength.Of(checkedRack, soil, block, checkedRack.Wind.PeakKNPerM2),
            Notes = [.. isOpen ? [Note(block, least is not null, strength, soil)] : (ChoiceNote[])[], .. usual.Notes],
        };
        return (racks with { Taken = racks.Taken with { Rack = rack, Strength = checkedRack } }, footings);
    }

    /// <summary>The block with the least concrete that holds, in steps of 50 mm.</summary>
    /// <param name="strength">The analysed rack.</param>
    /// <param name="soil">The soil.</param>
    /// <param name="sideMm">Its side, where that is given [mm].</param>
    /// <param name="depthMm">Its depth, where that is given [mm].</param>
    /// <returns>The block; null when none holds.</returns>
    public static FootingBlock? Least(RackStrength strength, SoilClass soil, double? sideMm, double? depthMm)
    {
        var column = strength.Rack.Sections.Column.SideMm;
        var narrowest = Math.Max(NarrowestMm, Math.Ceiling((column + 150) / StepMm) * StepMm);
        var any = FootingStrength.Of(
            strength,
            soil,
            Footings.BlockOf(sideMm ?? narrowest, depthMm ?? ShallowestMm, column),
            strength.Wind.PeakKNPerM2
        );
        return Steps(sideMm, narrowest, WidestMm)
            .SelectMany(side =>
                Steps(depthMm, ShallowestMm, DeepestMm).Select(depth => Footings.BlockOf(side, depth, column))
            )
            .OrderBy(block => block.ConcreteM3)
            .ThenBy(block => block.DepthMm)
            .FirstOrDefault(block => (any with { Block = block }).Holds);
    }

    private static IEnumerable<double> Steps(double? givenMm, double fromMm, double toMm)
    {
        if (givenMm is { } given)
        {
            yield return given;
            yield break;
        }

        for (var mm = fromMm; mm <= toMm; mm += StepMm)
        {
            yield return mm;
        }
    }

    // The same rack with its columns as deep as the blocks want them; customary places of tubes are none of a counted form.
    private static (Rack, RackStrength) Rebuilt(SizingGround ground, RackTried taken, ModuleCard module)
    {
        var (was, brief) = (taken.Rack, ground.Brief);
        var rack = new[] { was.Form, null }
            .Select(form => Rack.Of(brief.Rack, module, was.Grid, was.Setting.TiltDeg, ground.Shelf, form)!)
            .First(each => each.TubePlacesMm.SequenceEqual(was.TubePlacesMm))
            .WithLegs(taken.Strength!.LegsMm());
        return (rack, RackStrength.Of(rack, brief, ground.Survey, ground.Shelf)!);
    }

    private static ChoiceNote Note(FootingBlock block, bool holds, RackStrength strength, SoilClass soil) =>
        new(
            "footing block",
            Invariant($"{block.LengthMm:0} x {block.WidthMm:0} x {block.DepthMm:0} mm"),
            holds
                ? Invariant(
                    $"the least concrete that holds at {strength.Wind.BasicMPerS:0.#} m/s in {soil.Name}, dug by hand: no deeper than {DeepestMm:0} mm"
                )
                : Invariant(
                    $"a customary block, no source, which does not hold: no square block up to {WidestMm:0} mm wide and {DeepestMm:0} mm deep does at {strength.Wind.BasicMPerS:0.#} m/s in {soil.Name}"
                )
        );
}

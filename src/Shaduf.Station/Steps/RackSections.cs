using Shaduf.Parts;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The sections that a rack is made of.</summary>
/// <param name="Angle">Angle of the channels.</param>
/// <param name="Channel">The channel that two of them make.</param>
/// <param name="Tube">Cross tubes, stubs and struts.</param>
/// <param name="Column">Columns.</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record RackSections(
    Section Angle,
    SlideInChannel Channel,
    Section Tube,
    Section Column,
    IReadOnlyList<ChoiceNote> Notes
)
{
    /// <summary>Free depth in the channel when the brief leaves it open [mm]; common practice, no source.</summary>
    public const double UsualDepthClearanceMm = 3;

    private const string NotForStrength = "not checked for wind yet: strength comes with the structural check";

    /// <summary>Takes the brief's sections, or chooses: the lightest angle that makes the channel, tubes by custom.</summary>
    /// <param name="rack">The rack as the brief has it.</param>
    /// <param name="module">The module.</param>
    /// <param name="shelf">The cards.</param>
    /// <returns>The sections; null when no angle makes a channel for the module.</returns>
    public static RackSections? Of(RackBrief rack, ModuleCard module, CardShelf shelf)
    {
        var angles = shelf
            .All<SectionCard>()
            .Where(card => card.Shape == SectionShape.EqualAngle && (rack.Angle ?? card.Name) == card.Name)
            .ToList();
        var clearanceMm = rack.DepthClearanceMm ?? UsualDepthClearanceMm;
        var choice = SlideInChannel.Choose(
            [.. angles.Select(card => new AngleSize(card.Name, card.SizeMm, card.WallMm, SectionOf(card).MassKgPerM))],
            module.Body.ThicknessMm,
            clearanceMm
        );
        if (choice.Channel is null)
        {
            return null;
        }

        var tube = TubeOf(shelf, rack.Tube, 60, 3);
        var column = TubeOf(shelf, rack.Column, 100, 4);
        return new(
            SectionOf(angles.Single(card => card.Name == choice.Angle!.Name)),
            choice.Channel,
            SectionOf(tube),
            SectionOf(column),
            [.. NotesOf(rack, module, choice, tube, column)]
        );
    }

    private static IEnumerable<ChoiceNote> NotesOf(
        RackBrief rack,
        ModuleCard module,
        SlideInChoice choice,
        SectionCard tube,
        SectionCard column
    )
    {
        if (rack.Angle is null)
        {
            var others = string.Join("; ", choice.Others.Select(other => $"{other.Name}: {other.Why}"));
            yield return new(
                "angle of the frame",
                choice.Angle!.Name,
                Invariant($"the lightest that makes a channel for a {module.Body.ThicknessMm:0.#} mm module. {others}")
            );
        }

        if (rack.Tube is null)
        {
            yield return ByCustom("cross tubes and struts", tube, "60 mm and 3 mm wall");
        }

        if (rack.Column is null)
        {
            yield return ByCustom("columns", column, "100 mm and 4 mm wall");
        }
    }

    private static ChoiceNote ByCustom(string what, SectionCard tube, string size) =>
        new(what, tube.Name, $"smallest square tube of {size}, common practice, no source; {NotForStrength}");

    /// <summary>The section of a card, with mass and perimeter computed from its sizes.</summary>
    /// <param name="card">The card.</param>
    /// <returns>The section.</returns>
    public static Section SectionOf(SectionCard card)
    {
        var (outline, properties) = card.Shape switch
        {
            SectionShape.EqualAngle => (
                Outline.EqualAngle,
                EqualAngle.Of(card.SizeMm, card.WallMm, card.RootRadiusMm, card.RootRadiusMm / 2).Section
            ),
            SectionShape.CircularHollow => (Outline.RoundTube, CircularHollow.Of(card.SizeMm, card.WallMm)),
            _ => (Outline.SquareTube, SquareHollow.ColdFormed(card.SizeMm, card.WallMm)),
        };
        return new(
            card.Name,
            outline,
            card.SizeMm,
            card.WallMm,
            properties.MassKgPerM,
            properties.PerimeterMm,
            card.BarM * 1000,
            (card.BarM * 1000) - Takeoff.EndTrimMm
        );
    }

    private static SectionCard TubeOf(CardShelf shelf, string? name, double leastSizeMm, double leastWallMm)
    {
        var tubes = shelf
            .All<SectionCard>()
            .Where(card => card.Shape == SectionShape.SquareHollow)
            .OrderBy(card => card.SizeMm)
            .ThenBy(card => card.WallMm)
            .ToList();
        return tubes.FirstOrDefault(card => card.Name == name)
            ?? tubes.FirstOrDefault(card => card.SizeMm >= leastSizeMm && card.WallMm >= leastWallMm)
            ?? tubes[^1];
    }
}

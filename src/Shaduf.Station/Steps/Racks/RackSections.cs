using Shaduf.Parts;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The sections that a rack is made of.</summary>
/// <param name="Angle">Bars along the row: angle of the channels, or rail.</param>
/// <param name="Channel">The channel that two angles make; null for rails.</param>
/// <param name="Tube">Cross tubes or rafters, stubs, struts and braces.</param>
/// <param name="Column">Columns.</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record RackSections(
    Section Angle,
    SlideInChannel? Channel,
    Section Tube,
    Section Column,
    IReadOnlyList<ChoiceNote> Notes
)
{
    /// <summary>Free depth in the channel when the brief leaves it open [mm]; common practice, no source.</summary>
    public const double UsualDepthClearanceMm = 3;

    /// <summary>Takes the sections asked for, or chooses: the lightest angle that makes the channel, all else by custom.</summary>
    /// <param name="rack">The rack as the brief has it.</param>
    /// <param name="module">The module.</param>
    /// <param name="shelf">The cards.</param>
    /// <param name="form">The rack's form; null for the brief's.</param>
    /// <returns>The sections; null when no angle makes a channel for the module.</returns>
    public static RackSections? Of(RackBrief rack, ModuleCard module, CardShelf shelf, RackForm? form = null)
    {
        var asked = RackForm.Of(rack);
        var (type, angle) = form is null ? (asked.Type, asked.Angle) : (form.Type, form.Angle ?? asked.Angle);
        var (tubeAsked, columnAsked) = (form?.Tube ?? asked.Tube, form?.Column ?? asked.Column);
        var tube = TubeOf(shelf, tubeAsked, 60, 3);
        var column = TubeOf(shelf, columnAsked, 100, 4);
        List<ChoiceNote> notes =
        [
            .. tubeAsked is null ? [ByCustom("cross tubes and struts", tube, "60 mm and 3 mm wall")] : (ChoiceNote[])[],
            .. columnAsked is null ? [ByCustom("columns", column, "100 mm and 4 mm wall")] : (ChoiceNote[])[],
        ];
        if (type == RackType.ClampedRails)
        {
            var rail = shelf.Find<SectionCard>(angle ?? "") ?? TubeOf(shelf, null, 40, 3);
            var why = angle is null ? [ByCustom("rails", rail, "40 mm and 3 mm wall")] : (ChoiceNote[])[];
            return new(Carried(rail, rack), null, Carried(tube, rack), Carried(column, rack), [.. why, .. notes]);
        }

        var angles = shelf
            .All<SectionCard>()
            .Where(card => card.Shape == SectionShape.EqualAngle && (angle ?? card.Name) == card.Name)
            .ToList();
        var choice = SlideInChannel.Choose(
            [.. angles.Select(card => new AngleSize(card.Name, card.SizeMm, card.WallMm, SectionOf(card).MassKgPerM))],
            module.Body.ThicknessMm,
            rack.DepthClearanceMm ?? UsualDepthClearanceMm
        );
        return choice.Channel is null
            ? null
            : new(
                Carried(angles.Single(card => card.Name == choice.Angle!.Name), rack),
                choice.Channel,
                Carried(tube, rack),
                Carried(column, rack),
                [.. angle is null ? [ForChannel(module, choice)] : (ChoiceNote[])[], .. notes]
            );
    }

    /// <summary>The section of a card, its pieces no longer than bar and truck.</summary>
    /// <param name="card">The card.</param>
    /// <param name="rack">Workshop and crew.</param>
    /// <returns>The section.</returns>
    internal static Section Carried(SectionCard card, RackBrief rack)
    {
        var section = SectionOf(card);
        return section with
        {
            LongestPieceMm = Math.Min(
                section.BarMm - rack.Workshop.EndTrimMm,
                rack.Crew.TruckBedM * 1000 ?? double.MaxValue
            ),
        };
    }

    private static ChoiceNote ForChannel(ModuleCard module, SlideInChoice choice)
    {
        var others = string.Join("; ", choice.Others.Select(other => $"{other.Name}: {other.Why}"));
        return new(
            "angle of the frame",
            choice.Angle!.Name,
            Invariant($"the lightest that makes a channel for a {module.Body.ThicknessMm:0.#} mm module. {others}")
        );
    }

    private static ChoiceNote ByCustom(string what, SectionCard tube, string size) =>
        new(what, tube.Name, $"smallest square tube of {size}, common practice, no source");

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
            (card.BarM * 1000) - WorkshopBrief.Unknown.EndTrimMm
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

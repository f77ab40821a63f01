using Shaduf.Parts;

namespace Shaduf.Station;

/// <summary>The sections that a stand is made of.</summary>
/// <param name="Leg">Legs.</param>
/// <param name="Diagonal">Diagonals and plan braces, an angle.</param>
/// <param name="Horizontal">Horizontals between the legs.</param>
/// <param name="Beam">Beams on the rows of legs.</param>
/// <param name="Joist">Joists under the deck.</param>
/// <param name="Rail">Guard posts, rails and stiles of the ladder.</param>
public sealed record StandSections(
    Section Leg,
    Section Diagonal,
    Section Horizontal,
    Section Beam,
    Section Joist,
    Section Rail
)
{
    // A guard rail is gripped: no thicker than a hand holds. Judgement, no source.
    private const double LeastRailMm = 40;

    /// <summary>The sections of a form.</summary>
    /// <param name="form">The form, all sections named.</param>
    /// <param name="shelf">The cards.</param>
    /// <param name="rack">Workshop and crew: no piece is longer than its bar or its truck.</param>
    /// <returns>The sections.</returns>
    public static StandSections Of(StandForm form, CardShelf shelf, RackBrief rack)
    {
        Section Named(string name) => RackSections.Carried(shelf.Find<SectionCard>(name)!, rack);

        var tubes = shelf.All<SectionCard>().Where(card => card.Shape == SectionShape.SquareHollow).ToList();
        var rail =
            tubes
                .Where(card => card.SizeMm >= LeastRailMm)
                .OrderBy(card => card.SizeMm)
                .ThenBy(card => card.WallMm)
                .FirstOrDefault()
            ?? tubes.MaxBy(card => card.SizeMm)!;
        return new(
            Named(form.Leg),
            Named(form.Diagonal),
            Named(form.Horizontal),
            Named(form.Beam),
            Named(form.Joist),
            Named(rail.Name)
        );
    }
}

/// <summary>A form of the stand: legs, bays and the names of its sections' cards.</summary>
/// <param name="LegCount">Legs, 4 to 8, in two rows.</param>
/// <param name="BayCount">Bays of diagonals; null by the height and the distance of the legs.</param>
/// <param name="Leg">Card of the legs.</param>
/// <param name="Diagonal">Card of the diagonals.</param>
/// <param name="Horizontal">Card of the horizontals.</param>
/// <param name="Beam">Card of the row beams.</param>
/// <param name="Joist">Card of the joists.</param>
public sealed record StandForm(
    int LegCount,
    int? BayCount,
    string Leg,
    string Diagonal,
    string Horizontal,
    string Beam,
    string Joist
);

namespace Shaduf.Station;

/// <summary>Reads the part of the brief about the stand under the tank.</summary>
internal static class StandReader
{
    private const double SteepestShare = 0.5;

    /// <summary>Reads the stand.</summary>
    /// <param name="fields">The mapping <c>tank.standing</c>; null when it is left out.</param>
    /// <returns>The stand.</returns>
    public static StandBrief Read(FieldMap? fields)
    {
        if (fields is null)
        {
            return StandBrief.Open;
        }

        var stand = new StandBrief(
            fields.OptionalOneOf(
                "kind",
                [("steel", StandKind.Steel), ("masonry", StandKind.Masonry), ("mound", StandKind.Mound)],
                "What holds the tank up; steel is designed here, left out: steel."
            ) ?? StandKind.Steel,
            fields.OptionalCount(
                "legs",
                4,
                8,
                "Legs in two rows; of 5 or 7 one more stands in the back row.",
                FieldMap.ChooseWord
            ),
            fields.OptionalCount("bays", 1, 8, "Bays of diagonals one over the other.", FieldMap.ChooseWord),
            fields.Chosen("platform", Measure.LengthM, 0.5, 8, "Side of the square platform."),
            fields.Known("groundFall", Measure.Share, 0, SteepestShare, "Fall of the ground under it.") ?? 0
        )
        {
            Leg = BriefReader.Name(fields, "leg", "Section card of the legs, a square tube."),
            Diagonal = BriefReader.Name(fields, "diagonal", "Section card of the diagonals, an equal angle."),
            Horizontal = BriefReader.Name(fields, "horizontal", "Section card of the horizontals, a square tube."),
            Beam = BriefReader.Name(fields, "beam", "Section card of the beams on the legs, a square tube."),
            Joist = BriefReader.Name(fields, "joist", "Section card of the joists under the deck, a square tube."),
            FootingSideMm = fields.Chosen("footingSide", Measure.LengthMm, 300, 3000, "Side of a square block."),
            FootingDepthMm = fields.Chosen(
                "footingDepth",
                Measure.LengthMm,
                300,
                3000,
                "Depth of a block below ground."
            ),
        };
        fields.Done();
        return stand;
    }
}

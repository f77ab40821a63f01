namespace Shaduf.Station;

/// <summary>Reads the part of the brief about the saw and the yard.</summary>
internal static class WorkshopReader
{
    /// <summary>Reads the workshop.</summary>
    /// <param name="fields">Its mapping; null when it is left out.</param>
    /// <returns>The workshop.</returns>
    public static WorkshopBrief Read(FieldMap? fields)
    {
        if (fields is null)
        {
            return WorkshopBrief.Unknown;
        }

        var workshop = new WorkshopBrief(
            fields.Known("kerf", Measure.LengthMm, 0.5, 10, "What a cut eats: saw one slot and measure it."),
            fields.Known("endTrim", Measure.LengthMm, 0, 200, "Cut off both ends of a bar together."),
            fields.Items("offcuts", 0, 60, "Offcuts in the yard; they are used before bars are bought.", Offcut),
            fields.Items(
                "otherBars",
                0,
                30,
                "Other lengths that the merchant sells; the rate is the price book's item section-length, as SHS60x3-12m.",
                OtherBar
            )
        );
        fields.Done();
        return workshop;
    }

    private static OffcutBrief Offcut(FieldMap fields)
    {
        var offcut = new OffcutBrief(
            fields.Text("section", "Card of the section.", 40),
            fields.Quantity("length", Measure.LengthMm, 250, 14_000, "Length of each."),
            fields.OptionalCount("count", 1, 1000, "How many; left out: one.", FieldMap.ChooseWord) ?? 1
        );
        fields.Done();
        return offcut;
    }

    private static OtherBarBrief OtherBar(FieldMap fields)
    {
        var bar = new OtherBarBrief(
            fields.Text("section", "Card of the section.", 40),
            fields.Quantity("length", Measure.LengthMm, 1000, 14_000, "Length of a bar.")
        );
        fields.Done();
        return bar;
    }
}

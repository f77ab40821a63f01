namespace Shaduf.Station;

/// <summary>Holds the figures of a card against one another.</summary>
internal static class CardChecks
{
    public static void RefuseUnless(this FieldMap fields, bool holds, string field, string contradiction)
    {
        if (!holds)
        {
            fields.Contradiction(field, contradiction);
        }
    }

    // A kernel that refuses the card's figures says why; without this it would do so in the middle of a design.
    public static void RefusedBy(this FieldMap fields, string field, Action kernel)
    {
        try
        {
            if (fields.AreSound())
            {
                kernel();
            }
        }
        catch (ArgumentException refusal)
        {
            fields.Contradiction(field, refusal.Message.Split(" (Parameter")[0]);
        }
    }

    public static void Contradiction(this FieldMap fields, string field, string contradiction) =>
        fields.Complain(
            field,
            $"the card contradicts itself: {contradiction}",
            "figures of one data sheet are accepted"
        );
}

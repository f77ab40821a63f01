namespace Shaduf.Station;

/// <summary>Reads the part of the brief about light, lightning, earth and fence.</summary>
internal static class GuardReader
{
    public static GuardBrief Read(FieldMap? fields)
    {
        var guard = new GuardBrief(
            Light(fields),
            Lightning(fields),
            fields?.OptionalCount("earthRods", 1, 20, "Earth rods.", FieldMap.ChooseWord),
            FenceReader.Read(fields)
        );
        fields?.Done();
        if (fields is not null && fields.AreSound())
        {
            Check(fields, guard);
        }

        return guard;
    }

    // What is asked of a thing that the brief does not want.
    private static void Check(FieldMap fields, GuardBrief guard)
    {
        var light = guard.Light;
        (string Field, bool IsGiven)[] ofLight =
        [
            ("lights", light.Count is not null),
            ("lightPole", light.HeightM is not null),
            ("lightLeast", light.LeastLux is not null),
            ("lightHours", light.HoursPerNight is not null),
            ("lightDays", light.Nights is not null),
        ];
        foreach (var (field, _) in ofLight.Where(each => each.IsGiven && light.Card is null))
        {
            fields.Complain(field, "there is no night light", "a card in guard.light, or no such field, is accepted");
        }

        if (guard.Lightning is { Wish: LightningWish.None, RodM: not null })
        {
            fields.Complain(
                "rodHeight",
                "no lightning rods are wanted",
                "a class in guard.lightning, or no rodHeight, is accepted"
            );
        }
    }

    private static LightBrief Light(FieldMap? fields) =>
        new(
            fields?.OptionalText("light", "Card of the night light; left out: no light.", 40),
            fields?.OptionalCount("lights", 1, 6, "How many lamps.", FieldMap.ChooseWord),
            fields?.Chosen("lightPole", Measure.LengthM, 2, 15, "Height of the lamps above ground."),
            fields?.Chosen(
                "lightLeast",
                Measure.IlluminanceLux,
                0.2,
                50,
                "Least light on the ground and on the modules."
            ),
            fields?.Chosen(
                "lightHours",
                Measure.TimeH,
                0.5,
                24,
                "Hours that the lamps burn; 'choose': the longest night."
            ),
            fields?.Chosen("lightDays", Measure.TimeDays, 1, 15, "Nights without sun that the batteries carry.")
        );

    private static LightningBrief Lightning(FieldMap? fields) =>
        new(
            fields?.OptionalOneOf(
                "lightning",
                [
                    ("choose", LightningWish.Choose),
                    ("none", LightningWish.None),
                    ("I", LightningWish.I),
                    ("II", LightningWish.II),
                    ("III", LightningWish.III),
                    ("IV", LightningWish.IV),
                ],
                "Class of lightning protection; 'choose': class III where the flash density asks for rods; 'none': no rods."
            ) ?? LightningWish.Choose,
            fields?.Known(
                "flashDensity",
                Measure.FlashesPerKm2Year,
                0,
                150,
                "Lightning flashes to ground, from a map."
            ),
            fields?.Known("thunderDays", Measure.TimeDays, 0, 300, "Days of a year on which thunder is heard."),
            fields?.Chosen("rodHeight", Measure.LengthM, 2, 60, "Height of the lightning rods' tips above ground."),
            fields?.Known(
                "tankDistance",
                Measure.LengthM,
                0,
                60,
                "From the end of the racks to the middle of the tank, where the tank is to stand under the same rods."
            )
        );
}

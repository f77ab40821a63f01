using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What was chosen for light, lightning and earth, and why.</summary>
internal static class GuardNotes
{
    public static IEnumerable<ChoiceNote> Of(
        Brief brief,
        GuardLight? light,
        GuardLightning lightning,
        GuardEarth earth
    ) => [.. Lightning(brief.Guard.Lightning, lightning), .. Earth(brief, earth), .. Light(brief.Guard.Light, light)];

    private static IEnumerable<ChoiceNote> Lightning(LightningBrief asked, GuardLightning lightning)
    {
        if (asked.Wish == LightningWish.Choose)
        {
            yield return new(
                "class of lightning protection",
                lightning.Protection is { } chosen ? $"{chosen}" : "no rods",
                Invariant(
                    $"rods above {GuardLightning.LargestBareFlashesPerKm2Year} flashes a square kilometre and year, class {GuardLightning.UsualClass} for arrays in the open: judgement and common practice, no source; the owner decides with the local code"
                )
            );
        }

        if (lightning.Protection is not null)
        {
            yield return new(
                "place of the lightning masts",
                Invariant($"{lightning.Rods.Count}, {GuardField.BehindM} m behind the top edge"),
                "on the side away from the low edge, so that they shade least; the lamps' poles where they serve, few before many, and behind the last rack before behind every rack; common practice, no source"
            );
        }

        if (lightning.Protection is not null && asked.RodM is null)
        {
            yield return new(
                "height of the lightning rods",
                Invariant($"{lightning.RodM:0.0} m"),
                Invariant(
                    $"the least, in tenths of a metre, at which the sphere of {lightning.SphereM:0} m touches no edge of the racks, no lamp and no tank named"
                )
            );
        }
    }

    private static IEnumerable<ChoiceNote> Earth(Brief brief, GuardEarth earth)
    {
        if (brief.Guard.EarthRodCount is null)
        {
            yield return new(
                "earth rods",
                Invariant(
                    $"{earth.Rods.Count} of {GuardEarth.RodM:0.0} m{(earth.RingWireM > 0 ? " and a ring of bare wire" : "")}"
                ),
                Invariant(
                    $"towards {earth.AimOhm:0} ohm: rods in a line, two lengths apart; with lightning rods a ring with rods on it where a line does not reach it, or where there are several masts"
                )
            );
        }
    }

    private static IEnumerable<ChoiceNote> Light(LightBrief asked, GuardLight? light)
    {
        if (light is null)
        {
            yield break;
        }

        if (asked.Count is null)
        {
            yield return new(
                "lamps",
                Invariant($"{light.Lamps.Count} of {light.Card.Name}"),
                Invariant(
                    $"the fewest that give {light.LeastLux:0.#} lx everywhere out of the racks' shade, or else the most light"
                )
            );
        }

        if (asked.LeastLux is null)
        {
            yield return new(
                "least light",
                Invariant($"{light.LeastLux:0.#} lx"),
                "enough to see a person by; EN 12464-2 in order of magnitude, from memory"
            );
        }

        if (asked.HeightM is null)
        {
            yield return new(
                "height of the lamps",
                Invariant($"{light.Lamps[0].HeightM:0.0} m"),
                "the card's usual height, or 2 m above the racks' top edge where that is more; common practice, no source"
            );
        }

        if (asked.HoursPerNight is null)
        {
            yield return new(
                "hours of light",
                Invariant($"{light.HoursPerNight:0.0} h"),
                "the longest night of the year, sunset to sunrise"
            );
        }

        if (asked.Nights is null)
        {
            yield return new(
                "nights without sun",
                Invariant($"{light.Nights:0.#}"),
                "3 in the dry tropics, up to 5 elsewhere; from memory"
            );
        }
    }
}

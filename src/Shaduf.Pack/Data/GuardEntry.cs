using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>A mast or light column: x along the row from its left end, y from the low edge of the first rack.</summary>
public sealed record PoleEntry(double XM, double YM, double HeightM, bool HasRod, bool HasLamp);

/// <summary>Night light: least and mean on racks and ground; battery and module of one lamp.</summary>
public sealed record LightEntry(
    string Card,
    int LampCount,
    double LeastLux,
    double MeanLux,
    double ShadeShare,
    double HoursPerNight,
    double Nights,
    double NeededBatteryWh,
    int BatteryBlocksEach,
    double? NeededModuleW,
    int ModulesEach
);

/// <summary>Lightning: class null without rods, needed height null where no height will do.</summary>
public sealed record LightningEntry(
    double FlashesPerKm2Year,
    double StrikesPerYear,
    string? Class,
    int RodCount,
    double RodM,
    double? NeededM,
    int BarePoints,
    bool KeepsDistance
);

/// <summary>Earth: ring 0 without one.</summary>
public sealed record EarthEntry(
    double ResistivityOhmM,
    int RodCount,
    double RodOhm,
    double RingWireM,
    double EarthOhm,
    double AimOhm,
    IReadOnlyList<EarthPitEntry> Pits
);

/// <summary>An earth pit round a rod's head, from the low left corner of the first rack.</summary>
public sealed record EarthPitEntry(double XM, double YM);

/// <summary>Blocks under light columns or masts, all of one kind alike; with concrete and earth of all of them.</summary>
public sealed record PoleBlockEntry(
    string Under,
    int Count,
    double LengthMm,
    double WidthMm,
    double DepthMm,
    double ConcreteM3,
    double ExcavationM3
);

/// <summary>Light, lightning, earth and fence; light and fence null for none.</summary>
public sealed record GuardEntry(
    LightEntry? Light,
    LightningEntry Lightning,
    EarthEntry Earth,
    IReadOnlyList<PoleEntry> Poles,
    FenceEntry? Fence,
    IReadOnlyList<PartEntry> PoleParts,
    IReadOnlyList<PoleBlockEntry> PoleBlocks
)
{
    /// <summary>The entry of a guard.</summary>
    /// <param name="works">The works that hold the guard.</param>
    /// <returns>Its entry, figures to four decimals.</returns>
    internal static GuardEntry Of(Works works)
    {
        var guard = works.Guard;
        return new(
            guard.Light is { } light ? LightOf(light) : null,
            LightningOf(guard.Lightning),
            EarthOf(guard.Earth),
            [
                .. guard.Poles.Select(pole => new PoleEntry(
                    R(pole.Place.XM),
                    R(pole.Place.YM),
                    R(pole.HeightM),
                    pole.HasRod,
                    pole.HasLamp
                )),
            ],
            guard.Fence is { } fence ? FenceEntry.Of(fence) : null,
            [.. guard.PoleStrengths.SelectMany(pole => DesignEntries.PartsOf(pole.Column.Steel, guard.CountOf(pole)))],
            [.. works.PoleBlocks.Select(pole => BlockOf(pole, works.CountOf(pole)))]
        );
    }

    private static PoleBlockEntry BlockOf(PoleBlock pole, int count) =>
        new(
            pole.Name,
            count,
            R(pole.Block.LengthMm),
            R(pole.Block.WidthMm),
            R(pole.Block.DepthMm),
            R(count * pole.Block.ConcreteM3),
            R(count * pole.Block.ExcavationM3)
        );

    private static LightEntry LightOf(GuardLight light) =>
        new(
            light.Card.Name,
            light.Lamps.Count,
            R(light.MinLux),
            R(light.MeanLux),
            R(light.ShadeShare),
            R(light.HoursPerNight),
            R(light.Nights),
            R(light.NeededWh),
            light.BlocksEach,
            light.NeededW is { } neededW ? R(neededW) : null,
            light.ModulesEach
        );

    private static LightningEntry LightningOf(GuardLightning lightning) =>
        new(
            R(lightning.FlashesPerKm2Year),
            R(lightning.StrikesPerYear),
            lightning.Protection?.ToString(),
            lightning.Rods.Count,
            R(lightning.RodM),
            lightning.NeededM is { } neededM ? R(neededM) : null,
            lightning.Bare.Count,
            lightning.KeepsDistance
        );

    private static EarthEntry EarthOf(GuardEarth earth) =>
        new(
            R(earth.ResistivityOhmM),
            earth.Rods.Count,
            R(earth.RodOhm),
            R(earth.RingWireM),
            R(earth.EarthOhm),
            R(earth.AimOhm),
            [.. earth.Rods.Select(rod => new EarthPitEntry(R(rod.XM), R(rod.YM)))]
        );

    private static double R(double value) => Math.Round(value, 4, MidpointRounding.AwayFromZero);
}

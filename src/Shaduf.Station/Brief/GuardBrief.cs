using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>What is asked against lightning.</summary>
public enum LightningWish
{
    /// <summary>Rods where the flash density asks for them.</summary>
    Choose,

    /// <summary>No rods, whatever the flash density.</summary>
    None,

    /// <summary>Rods of class I.</summary>
    I,

    /// <summary>Rods of class II.</summary>
    II,

    /// <summary>Rods of class III.</summary>
    III,

    /// <summary>Rods of class IV.</summary>
    IV,
}

/// <summary>Lightning: what is known and what is asked.</summary>
/// <param name="Wish">What is asked.</param>
/// <param name="FlashesPerKm2Year">Flashes to ground [1/km²/year].</param>
/// <param name="ThunderDays">Days with thunder in a year [days].</param>
/// <param name="RodM">Height of the rods' tips above ground [m].</param>
/// <param name="TankAwayM">From the end of the racks to the middle of the tank, which is to stand under the same rods [m].</param>
public sealed record LightningBrief(
    LightningWish Wish,
    double? FlashesPerKm2Year,
    double? ThunderDays,
    double? RodM,
    double? TankAwayM
)
{
    /// <summary>The class that is asked by name; null when none is.</summary>
    public LightningClass? Asked =>
        Wish is LightningWish.Choose or LightningWish.None ? null : Enum.Parse<LightningClass>(Wish.ToString());
}

/// <summary>Night light, as asked.</summary>
/// <param name="Card">Card of the lamp; null for none.</param>
/// <param name="Count">Lamps.</param>
/// <param name="HeightM">Height of the lamps above ground [m].</param>
/// <param name="LeastLux">Least light on ground and modules [lx].</param>
/// <param name="HoursPerNight">Hours that it burns in a night [h].</param>
/// <param name="Nights">Nights without sun that its battery carries [days].</param>
public sealed record LightBrief(
    string? Card,
    int? Count,
    double? HeightM,
    double? LeastLux,
    double? HoursPerNight,
    double? Nights
);

/// <summary>Light, lightning, earth, fence.</summary>
/// <param name="Light">Night light.</param>
/// <param name="Lightning">Lightning.</param>
/// <param name="EarthRodCount">Earth rods; null to choose.</param>
/// <param name="Fence">The fence; null for none.</param>
public sealed record GuardBrief(LightBrief Light, LightningBrief Lightning, int? EarthRodCount, FenceBrief? Fence);

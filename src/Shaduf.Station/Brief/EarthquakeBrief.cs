namespace Shaduf.Station;

/// <summary>What an earthquake may do at the site.</summary>
/// <param name="RockShare">Acceleration of rock a_gR, once in 475 years, over gravity.</param>
/// <param name="Ground">Ground A to E; null when unknown.</param>
/// <param name="SpectrumNumber">1 for strong far quakes, 2 for weak near ones.</param>
/// <param name="ImportanceFactor">Importance factor γ_I of the tank.</param>
/// <param name="From">Where the figure comes from.</param>
public sealed record EarthquakeBrief(
    double RockShare,
    string? Ground,
    int SpectrumNumber,
    double ImportanceFactor,
    string From
)
{
    /// <summary>Importance of a tank that a village lives on (EN 1998-4:2006, from memory).</summary>
    public const double VillageFactor = 1.2;

    /// <summary>Ground that is taken when nobody knows: the one that shakes most stands hardest.</summary>
    public const string WorstGround = "D";
}

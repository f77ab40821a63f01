using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>The earthquake that a stand is checked for.</summary>
/// <param name="Quake">Ground and strength.</param>
/// <param name="IsKnown">Whether the brief gives it.</param>
/// <param name="From">Where the figure comes from.</param>
public sealed record StandQuake(Quake Quake, bool IsKnown, string From)
{
    /// <summary>Shaking a_g S up to which none is looked at.</summary>
    /// <source>EN 1998-1:2004, 3.2.1(5) (from memory)</source>
    public const double CalmRatio = 0.05;

    /// <summary>Shaking a_g S beyond which an engineer designs.</summary>
    /// <source>judgement, no source</source>
    public const double MostRatio = 0.30;

    /// <summary>a_g S over gravity.</summary>
    public double ShakenRatio => Quake.GroundRatio * Quake.Ground.SoilFactor;

    /// <summary>Whether the ground is so quiet that nothing is checked.</summary>
    public bool IsCalm => ShakenRatio <= CalmRatio;

    /// <summary>The earthquake of a site; a planning one where none is known, so that sections can be chosen.</summary>
    /// <param name="site">The site.</param>
    /// <param name="survey">The survey: the acceleration that is taken where none is known.</param>
    /// <returns>The earthquake.</returns>
    public static StandQuake Of(SiteBrief site, Survey survey)
    {
        var given = site.Earthquake;
        var ground = GroundType.Of(given?.Ground ?? EarthquakeBrief.WorstGround, given?.SpectrumNumber ?? 1);
        var rock = given?.RockShare ?? survey["earthquake"];
        return new(
            new(rock * (given?.ImportanceFactor ?? EarthquakeBrief.VillageFactor), ground, Quake.PlainFactor),
            given is not null,
            given is null
                ? "not known: a planning figure is taken so that sections can be chosen"
                : FormattableString.Invariant(
                    $"rock {given.RockShare * 100:0.#} % of gravity ({given.From}), importance {given.ImportanceFactor:0.0}"
                )
        );
    }
}

/// <summary>A stand shaken along x or along y with its tank full or half full.</summary>
/// <param name="Tank">Masses and stiffness.</param>
/// <param name="Push">What it comes to.</param>
public sealed record StandShake(ElevatedTank Tank, TankPush Push);

using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>A sling of several legs from one hook.</summary>
public static class Sling
{
    /// <summary>Slope below which a lift is not planned [deg].</summary>
    /// <source>Sling makers' tables</source>
    public const double PlannedDeg = 45;

    /// <summary>Slope below which a lift is forbidden [deg].</summary>
    /// <source>Sling makers' tables</source>
    public const double ForbiddenDeg = 30;

    /// <summary>Pull in one leg; of three or four legs on a stiff load only two are counted.</summary>
    /// <param name="weightKN">Weight of the load [kN], 0 to 1000.</param>
    /// <param name="legCount">Legs, 1 to 4.</param>
    /// <param name="slopeDeg">Slope of the legs from level [deg], 30 to 90.</param>
    /// <returns>Pull [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics: W/(n sin α); two counted legs by sling makers' practice</source>
    public static double LegKN(double weightKN, int legCount, double slopeDeg)
    {
        Within.Require(weightKN, 0, 1000, "kN");
        Within.RequireCount(legCount, 1, 4);
        Within.Require(slopeDeg, ForbiddenDeg, 90, "deg");
        return weightKN / (Math.Min(2, legCount) * Math.Sin(slopeDeg * Math.PI / 180));
    }
}

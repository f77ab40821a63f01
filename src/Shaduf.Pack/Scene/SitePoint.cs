using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>A point of the thing that is drawn, in its own plane. y up.</summary>
/// <param name="XMm">To the right [mm].</param>
/// <param name="YMm">Up [mm].</param>
public readonly record struct SitePoint(double XMm, double YMm)
{
    /// <summary>A point given in metres.</summary>
    /// <param name="xM">To the right [m].</param>
    /// <param name="yM">Up [m].</param>
    /// <returns>The point.</returns>
    public static SitePoint Metres(double xM, double yM) => new(xM * 1000, yM * 1000);
}

/// <summary>How a part of the site lies on the paper: a scale 1:n and one point that both share.</summary>
/// <param name="OneToFactor">The n of the scale 1:n, 0.01 to 1 000 000.</param>
/// <param name="SiteOrigin">A point of the site.</param>
/// <param name="PaperOrigin">Where that point lies on the paper.</param>
public sealed record SiteToPaper(double OneToFactor, SitePoint SiteOrigin, PaperPoint PaperOrigin)
{
    /// <summary>The n of the scale 1:n upwards; equal to <see cref="OneToFactor"/> unless a long section is stretched.</summary>
    public double VerticalOneToFactor
    {
        get;
        init => field = Scale(value);
    } = Scale(OneToFactor);

    /// <summary>Whether lengths upwards have another scale than lengths across.</summary>
    public bool IsStretched => VerticalOneToFactor != OneToFactor;

    /// <summary>Where a point of the site lies on the paper.</summary>
    /// <param name="point">The point of the site.</param>
    /// <returns>Its place on the paper.</returns>
    public PaperPoint ToPaper(SitePoint point) =>
        new(
            PaperOrigin.XMm + ((point.XMm - SiteOrigin.XMm) / OneToFactor),
            PaperOrigin.YMm - ((point.YMm - SiteOrigin.YMm) / VerticalOneToFactor)
        );

    /// <summary>A length on the paper.</summary>
    /// <param name="siteMm">Length on the site [mm].</param>
    /// <returns>Length on the paper [mm].</returns>
    /// <exception cref="InvalidOperationException">The view is stretched: lengths depend on their direction.</exception>
    public double LengthMm(double siteMm) =>
        IsStretched
            ? throw new InvalidOperationException("A stretched view has no single scale; draw a polyline instead.")
            : siteMm / OneToFactor;

    /// <summary>The largest of the standard scales at which a piece of the site fits the room given.</summary>
    /// <param name="siteMm">Length on the site [mm], 0 to 1E9.</param>
    /// <param name="roomMm">Room on the paper [mm], above 0.</param>
    /// <returns>The n of the scale 1:n.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range, or no standard scale is small enough.</exception>
    /// <source>ISO 5455:1979, recommended scales 1:1 to 1:10 000, carried on in the same steps (from memory).</source>
    public static double FittingOneToFactor(double siteMm, double roomMm)
    {
        Within.Require(siteMm, 0, 1e9, "mm");
        Within.Require(roomMm, 0.1, 1e5, "mm");
        for (var decade = 1.0; decade <= 1e6; decade *= 10)
        {
            foreach (var step in (double[])[1, 2, 5])
            {
                if (siteMm / (decade * step) <= roomMm)
                {
                    return decade * step;
                }
            }
        }

        throw new ArgumentOutOfRangeException(nameof(siteMm), siteMm, "No standard scale is small enough.");
    }

    private static double Scale(double oneToFactor)
    {
        Within.Require(oneToFactor, 0.01, 1e6, "");
        return oneToFactor;
    }
}

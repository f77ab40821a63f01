using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>A set of coefficients of the sky of Perez and others.</summary>
public sealed class PerezSet
{
    /// <summary>Cosine of 85 deg: near the horizon the glow around the sun is set against a sun 5 deg up.</summary>
    internal const double LowestCosine = 0.08715574274765817;

    // Upper ends of the bins of sky clearness, overcast first; the eighth bin has none.
    private static readonly IReadOnlyList<double> BinEnds = [1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2];

    private readonly double[][] bins;

    private PerezSet(string name) =>
        bins = [
            .. Csv.Embedded(typeof(PerezSet).Assembly, "PerezSet.csv")
                .Where(row => row["set"] == name)
                .Select(row => new[] { "f11", "f12", "f13", "f21", "f22", "f23" }.Select(row.Number).ToArray()),
        ];

    /// <summary>All sites, 1990: for year runs.</summary>
    public static PerezSet AllSites1990 { get; } = new("all-sites-1990");

    /// <summary>All sites, 1988.</summary>
    public static PerezSet AllSites1988 { get; } = new("all-sites-1988");

    /// <summary>Sandia, 1988.</summary>
    public static PerezSet Sandia1988 { get; } = new("sandia-1988");

    /// <summary>USA, 1988.</summary>
    public static PerezSet Usa1988 { get; } = new("usa-1988");

    /// <summary>France, 1988.</summary>
    public static PerezSet France1988 { get; } = new("france-1988");

    /// <summary>
    /// Where the diffuse light of a moment comes from. A sun that is down, no diffuse light, or more of it than leaves the
    /// sun (brightness above 1, which only a spoilt record has) count as an evenly bright sky.
    /// </summary>
    internal SkyGlow Glow(SkyMoment sky, double zenithDeg)
    {
        Within.Require(zenithDeg, 0, 180, "deg");
        if (zenithDeg >= 90 || sky.DiffuseWPerM2 <= 0 || sky.ExtraterrestrialNormalWPerM2 <= 0)
        {
            return new(0, 0);
        }

        var brightness = sky.DiffuseWPerM2 * AirMass.KastenYoungRatio(zenithDeg) / sky.ExtraterrestrialNormalWPerM2;
        if (brightness > 1)
        {
            return new(0, 0);
        }

        var zenithRad = Angle.ToRad(zenithDeg);
        var low = 1.041 * zenithRad * zenithRad * zenithRad;
        var clearness = (1 + (sky.DirectNormalWPerM2 / sky.DiffuseWPerM2) + low) / (1 + low);
        var f = bins[Bin(clearness)];
        return new(
            Math.Max(0, f[0] + (f[1] * brightness) + (f[2] * zenithRad)),
            f[3] + (f[4] * brightness) + (f[5] * zenithRad)
        );
    }

    private static int Bin(double clearness)
    {
        var bin = 0;
        while (bin < BinEnds.Count && clearness >= BinEnds[bin])
        {
            bin++;
        }

        return bin;
    }
}

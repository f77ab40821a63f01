using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>How the wind pulls at the modules, and what holds them.</summary>
/// <param name="PerGustDown">Pressure on the worst module over that of the gust, onto the glass.</param>
/// <param name="PerGustUp">The same from behind, by size.</param>
/// <param name="AllowedDownPa">What the module's card allows for this way of holding [Pa]; null where it is silent.</param>
/// <param name="AllowedUpPa">The same from behind [Pa].</param>
/// <param name="LipPerGust">Use of a channel's lip in a gust of 1 kN/m2; null for clamps.</param>
/// <param name="ClampN">Force on the worst clamp in a gust of 1 kN/m2, the factor on wind in it [N]; null for channels.</param>
public sealed record RackHolding(
    double PerGustDown,
    double PerGustUp,
    double? AllowedDownPa,
    double? AllowedUpPa,
    double? LipPerGust,
    double? ClampN
)
{
    /// <summary>Distance between the two bearers on which a module lies and over which it bends [mm].</summary>
    public double BetweenMm { get; private init; }

    /// <summary>Whether the card says what the module bears.</summary>
    public bool IsKnown => AllowedDownPa is not null && AllowedUpPa is not null;

    /// <summary>The holding of a rack's modules: the worst zone of the plane on any of them.</summary>
    /// <param name="strength">The checked rack.</param>
    /// <param name="module">The module.</param>
    /// <param name="way">Which way the modules lie.</param>
    /// <returns>The holding.</returns>
    /// <source>EN 1991-1-4:2005, table 7.6, zones A to C</source>
    public static RackHolding Of(RackStrength strength, ModuleCard module, ModuleWay way)
    {
        var (canopy, rack) = (strength.Canopy, strength.Rack);
        CanopyPair[] zones = [canopy.Middle, canopy.Sides, canopy.Edges];
        var (down, up) = (zones.Max(zone => zone.DownCoefficient), -zones.Min(zone => zone.UpCoefficient));
        var allowed = module.Holding.Of(rack.Form.Type, way);
        var factored = strength.National.VariableFactor * up * 1000;
        double? lip = null;
        if (rack.Sections.Channel is { } channel)
        {
            var edge = Steel.ModuleHolding.EdgeNPerMm(factored, rack.Lay.UpMm);
            lip = Steel
                .ModuleHolding.Lip(
                    strength.Rules.Grade,
                    edge,
                    channel.LegMm - channel.ThicknessMm,
                    channel.ThicknessMm,
                    strength.Rules.Factors
                )
                .UtilisationShare;
        }

        var areaM2 = module.Body.LengthMm * module.Body.WidthMm * 1e-6;
        return new(
            down,
            up,
            allowed.DownPa,
            allowed.UpPa,
            lip,
            lip is null ? Steel.ModuleHolding.ClampN(factored, areaM2, 4, 1) : null
        )
        {
            BetweenMm = rack.Rows.Max(row => row.HighAtMm - row.LowAtMm),
        };
    }

    /// <summary>Whether the channel's lip is used more than the module itself.</summary>
    /// <param name="peakKNPerM2">Pressure of the gust [kN/m2].</param>
    public bool IsByLip(double peakKNPerM2) => LipPerGust * peakKNPerM2 >= UseShare(peakKNPerM2) && peakKNPerM2 > 0;

    /// <summary>Use of module and lip in a gust.</summary>
    /// <param name="peakKNPerM2">Pressure of the gust [kN/m2].</param>
    /// <returns>The larger use; what the card does not say is left out.</returns>
    public double UseShare(double peakKNPerM2) =>
        new[]
        {
            PerGustDown * peakKNPerM2 * 1000 / AllowedDownPa,
            PerGustUp * peakKNPerM2 * 1000 / AllowedUpPa,
            LipPerGust * peakKNPerM2,
        }.Max() ?? 0;
}

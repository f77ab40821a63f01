namespace Shaduf.Station;

/// <summary>Which way modules lie on the rack.</summary>
public enum ModuleWay
{
    /// <summary>Long side up the slope.</summary>
    Portrait,

    /// <summary>Long side along the row.</summary>
    Landscape,
}

/// <summary>Sides of a module as it lies.</summary>
/// <param name="AlongMm">Side along the row [mm].</param>
/// <param name="UpMm">Side up the slope [mm].</param>
public readonly record struct ModuleLay(double AlongMm, double UpMm)
{
    /// <summary>A module laid one way or the other.</summary>
    /// <param name="body">Its size.</param>
    /// <param name="way">Which way.</param>
    /// <returns>Its sides.</returns>
    public static ModuleLay Of(ModuleBody body, ModuleWay way) =>
        way == ModuleWay.Portrait ? new(body.WidthMm, body.LengthMm) : new(body.LengthMm, body.WidthMm);
}

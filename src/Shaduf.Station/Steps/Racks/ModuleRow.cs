namespace Shaduf.Station;

/// <summary>One row of modules and the two members of the rack's skeleton that carry it, as beams along the row.</summary>
/// <param name="FromMm">Lower edge of the row, up the slope from the plane's low edge [mm].</param>
/// <param name="ToMm">Upper edge of the row [mm].</param>
/// <param name="Low">Index of the member below.</param>
/// <param name="LowAtMm">Where it carries, up the slope [mm].</param>
/// <param name="High">Index of the member above.</param>
/// <param name="HighAtMm">Where it carries, up the slope [mm].</param>
public sealed record ModuleRow(double FromMm, double ToMm, int Low, double LowAtMm, int High, double HighAtMm);

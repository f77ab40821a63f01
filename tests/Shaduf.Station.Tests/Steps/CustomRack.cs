using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>The rack of the custom: two rows of seven modules of 2.2 m x 1.1 m at 15 deg on one line of three columns, with a wind.</summary>
internal static class CustomRack
{
    public static RackBrief Brief { get; } =
        SmallDesign.File().Brief.Rack with
        {
            RowClearanceMm = 0,
            Angle = null,
            FootingSideMm = 500,
            FootingDepthMm = 1000,
        };

    /// <summary>Sand, water far below.</summary>
    public static SiteBrief Sand { get; } =
        SmallDesign.File().Brief.Site with
        {
            Soil = SoilKind.Sand,
            GroundwaterM = 20,
            EdgeM = 20,
        };

    public static RackStrength Strength(RackBrief rackBrief, double windMPerS = 26)
    {
        var file = SmallDesign.File();
        var brief = file.Brief with
        {
            Rack = rackBrief,
            Site = file.Brief.Site with { Wind = new(windMPerS, 600, 50, "map") },
        };
        var module = file.Shelf.Find<ModuleCard>("module-410")!;
        var body = new ModuleBody(2200, 1100, 35, 25, 27.5);
        var rack = Rack.Of(rackBrief, module with { Body = body }, new(2, 7, 1), 15, file.Shelf)!;
        return RackStrength.Of(rack, brief, Survey.Of(brief), file.Shelf)!;
    }

    /// <summary>Findings on its footings by their names.</summary>
    public static IReadOnlyDictionary<string, Finding> Found(RackBrief brief, SiteBrief site, double windMPerS = 26)
    {
        var rack = Strength(brief, windMPerS);
        var footings = Footings.Of(brief, rack.Rack);
        var blocks = FootingStrength.Of(rack, FootingGround.Of(site), footings.Block, rack.Wind.PeakKNPerM2);
        return FootingFindings.Of(footings with { Strength = blocks }, rack, site).ToDictionary(finding => finding.Id);
    }
}

using Shaduf.Pack;
using Shaduf.Station;

namespace Shaduf.Desk;

/// <summary>The drawings on the desk, from the same scenes as the pack's.</summary>
internal static class Drawings
{
    private static readonly PaperSize s_wide = new(240, 130);

    public static string Section(Design design) => SvgRenderer.Write(LongSection.Of(design, s_wide));

    public static string Plan(Design design) => SvgRenderer.Write(GuardPlan.Of(design.Works.Guard, s_wide));

    public static string Water(Design design) => SvgRenderer.Write(Charts.Water(design, s_wide));
}

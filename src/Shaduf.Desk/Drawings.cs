using Shaduf.Pack;
using Shaduf.Station;

namespace Shaduf.Desk;

/// <summary>The drawings on the desk, from the same scenes as the pack's.</summary>
internal static class Drawings
{
    /// <summary>Room of a drawing.</summary>
    public static PaperSize Wide { get; } = new(240, 130);

    public static Scene Section(Design design) => LongSection.Of(design, Wide);

    public static Scene Plan(Design design) => SitePlanView.Of(design, Wide);
}

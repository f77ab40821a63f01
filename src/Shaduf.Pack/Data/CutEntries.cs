using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>The cut plans in <c>design.json</c>.</summary>
internal static class CutEntries
{
    /// <summary>The bars of one section.</summary>
    public static BarsEntry Of(SectionPlan section)
    {
        var plan = section.Plan;
        return new(
            section.Section.Name,
            section.Section.BarMm,
            plan.BarCount,
            Math.Min(plan.BarCount, plan.LeastBarCount ?? plan.BarCount)
        )
        {
            Proved = plan.IsProven,
            Cuts =
            [
                .. plan.Alike.Select(alike => new CutBarEntry(
                    alike.Bar.Stock.LengthMm,
                    alike.Bar.Stock.IsOffcut,
                    alike.Count,
                    DesignEntries.R(alike.Bar.RemainderMm),
                    [
                        .. alike.Bar.Pieces.Select(piece => new CutPieceEntry(
                            piece.Mark,
                            DesignEntries.R(piece.FromMm),
                            piece.LengthMm,
                            DesignEntries.R(piece.StartDeg),
                            DesignEntries.R(piece.EndDeg)
                        )),
                    ]
                )),
            ],
        };
    }
}

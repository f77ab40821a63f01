using Shaduf.Ground;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What legs and ground do to the concrete of a stand's footing without bars.</summary>
/// <param name="ReachMm">How far it reaches beyond a plinth, or half of the clear distance between two [mm].</param>
/// <param name="PressureKPa">Largest design pressure under it [kPa].</param>
/// <param name="NeededDepthMm">Depth that this asks for without bars [mm].</param>
/// <param name="DepthMm">Its depth [mm].</param>
/// <param name="PunchShare">How far the concrete round the hardest pressed plinth is used in shear.</param>
public sealed record StandConcrete(
    double ReachMm,
    double PressureKPa,
    double NeededDepthMm,
    double DepthMm,
    double PunchShare
)
{
    // Beyond it no pad is reckoned: no ground bears it.
    private const double MostKPa = 1000;

    /// <summary>How far it is used.</summary>
    public double UseShare => Math.Max(NeededDepthMm / DepthMm, PunchShare);

    /// <summary>Whether it holds without bars.</summary>
    public bool Holds => UseShare <= 1;

    /// <summary>The concrete of a footing.</summary>
    /// <param name="strength">The checked stand.</param>
    /// <param name="blocks">The footing with its loads.</param>
    /// <param name="form">Its shape.</param>
    /// <param name="pressKN">Press of the hardest pressed leg, with partial factors [kN].</param>
    public static StandConcrete Of(StandStrength strength, FootingStrength blocks, FootingForm form, double pressKN)
    {
        var (block, plan) = (blocks.Block, strength.Stand.Plan);
        var between = form == FootingForm.Strip ? plan.SideMm / (plan.RowCount - 1) : 0;
        var ends = block.LengthMm - (form == FootingForm.Strip ? plan.SideMm : 0);
        var reach = new[] { block.WidthMm, ends, between }.Max(mm => (mm - block.PlinthSideMm) / 2);
        var (pressure, cylinder) = (blocks.PeakKPa, strength.ConcreteNPerMm2);
        return new(
            reach,
            pressure,
            pressure <= MostKPa
                ? PlainConcrete.PadDepthMm(Math.Max(0, reach), pressure, cylinder)
                : double.PositiveInfinity,
            block.DepthMm,
            pressKN / PlainConcrete.ShearKN(4 * block.PlinthSideMm * block.DepthMm, cylinder)
        );
    }

    /// <summary>The finding.</summary>
    /// <param name="footings">The footings.</param>
    /// <param name="advice">What would hold.</param>
    public Finding Finding(Footings footings, string advice)
    {
        var depth = double.IsFinite(NeededDepthMm)
            ? Invariant($"{NeededDepthMm:0} mm of depth are needed")
            : "no depth is enough";
        return Shaduf.Working.Finding.AtMost(
            "stand/concrete",
            Math.Min(99, UseShare),
            1,
            "",
            Invariant(
                $"concrete of {footings.CylinderNPerMm2:0} N/mm2 ({footings.ConcreteName}) without bars: up to {Math.Min(9999, PressureKPa):0} kPa under it bend what reaches {ReachMm:0} mm beyond a plinth or half way to the next, for which {depth}, and it is {DepthMm:0} mm deep; the hardest pressed leg uses {PunchShare:0.00} of what the concrete round its plinth passes in shear"
            ) + (Holds ? "" : advice),
            "EN 1992-1-1:2004, 12.6.3 and 12.9.3, from memory"
        );
    }
}

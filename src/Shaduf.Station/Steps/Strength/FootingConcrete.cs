using Shaduf.Ground;

namespace Shaduf.Station;

/// <summary>What column and ground do to the concrete of a footing without bars.</summary>
/// <param name="PressKN">Column pressing down, with partial factors [kN].</param>
/// <param name="PullKN">Column pulling up, with partial factors [kN].</param>
/// <param name="UnderKN">What the concrete under the column's foot passes in shear round it [kN].</param>
/// <param name="RoundKN">What the concrete round the column in the ground passes [kN].</param>
/// <param name="ProjectionMm">How far the footing reaches beyond the column's face [mm].</param>
/// <param name="NeededDepthMm">Depth that this asks for without bars [mm].</param>
internal sealed record FootingConcrete(
    double PressKN,
    double PullKN,
    double UnderKN,
    double RoundKN,
    double ProjectionMm,
    double NeededDepthMm
)
{
    /// <summary>How far the concrete round a column is used against its being pulled out.</summary>
    public double PullShare => PullKN / RoundKN;

    /// <summary>Concrete that a pressed column needs under its foot [mm].</summary>
    public double NeededUnderMm => Rack.CoverMm * PressKN / UnderKN;

    /// <summary>The concrete of a rack's footings.</summary>
    /// <param name="footings">The footings.</param>
    /// <param name="blocks">Their check.</param>
    /// <param name="strength">The analysed rack.</param>
    /// <returns>The check.</returns>
    public static FootingConcrete Of(Footings footings, FootingStrength blocks, RackStrength strength)
    {
        var columnMm = strength.Rack.Sections.Column.SideMm;
        var each = FootLoad.Of(strength, strength.Combinations.Ground, strength.Wind.PeakKNPerM2);
        var cylinder = footings.CylinderNPerMm2;
        var projectionMm = Math.Max(0, (Math.Max(footings.Block.LengthMm, footings.Block.WidthMm) - columnMm) / 2);
        return new(
            Math.Max(0, each.Max(load => load.DownKN)),
            Math.Max(0, -each.Min(load => load.DownKN)),
            PlainConcrete.ShearKN(4 * columnMm * Rack.CoverMm, cylinder),
            PlainConcrete.ShearKN(4 * columnMm * strength.Rack.Setting.EmbedMm, cylinder),
            projectionMm,
            PlainConcrete.PadDepthMm(projectionMm, Math.Min(1000, blocks.DesignKPa), cylinder)
        );
    }
}

using Shaduf.Water;
using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>What the soil means for a pipe trench.</summary>
/// <param name="ThrustKPa">Horizontal resistance to a thrust block [kPa].</param>
/// <param name="SoakageMmPerDay">Soakage of waste water [L/m²/d].</param>
/// <param name="NeedsBedding">Whether the pipe lies on a bed of sand and under one.</param>
/// <param name="SwellShare">Swell of the soil when dug.</param>
public sealed record PipeGround(double ThrustKPa, double SoakageMmPerDay, bool NeedsBedding, double SwellShare)
{
    private static readonly IReadOnlyList<CsvRow> Table = Csv.Embedded(typeof(PipeGround).Assembly, "PipeGround.csv");

    /// <summary>The ground of a site.</summary>
    /// <param name="soil">Its soil; null when nobody looked.</param>
    /// <returns>The ground.</returns>
    public static PipeGround Of(SoilKind? soil)
    {
        var row = Table.Single(each => each["soil"] == (soil?.ToString() ?? "unknown"));
        return new(
            ThrustBlock.GroundKPa(row["thrust_ground"]),
            Soakaway.SoakageMmPerDay(row["soakage_ground"]),
            row.Number("needs_bedding") > 0,
            row.Number("swell_share")
        );
    }
}

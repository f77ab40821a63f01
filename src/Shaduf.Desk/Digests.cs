using System.Collections.Concurrent;
using Shaduf.Pack;
using Shaduf.Station;
using Shaduf.Store;
using Shaduf.Working;

namespace Shaduf.Desk;

/// <summary>The figures that matter of a designed station, and its picture in small.</summary>
/// <param name="WorstShare">Share of the demand met in the worst month.</param>
/// <param name="DemandM3PerDay">Demand of that month [m³/d].</param>
/// <param name="Cost">The offer's total.</param>
/// <param name="Currency">Its currency.</param>
/// <param name="StopCount">Findings that stop.</param>
/// <param name="UncheckedCount">Findings that are unchecked.</param>
/// <param name="Picture">The long section as SVG.</param>
public sealed record Digest(
    double WorstShare,
    double DemandM3PerDay,
    decimal Cost,
    string Currency,
    int StopCount,
    int UncheckedCount,
    string Picture
)
{
    private static readonly PaperSize s_small = new(180, 90);

    public static Digest Of(Design design) =>
        new(
            design.Year.WorstShare,
            design.Months[design.Year.WorstMonth].DemandM3PerDay,
            design.Offer.Total,
            design.Offer.Currency,
            design.Findings.Count(finding => finding.Status == FindingStatus.Stop),
            design.Findings.Count(finding => finding.Status == FindingStatus.Unchecked),
            SvgRenderer.Write(LongSection.Of(design, s_small))
        );
}

/// <summary>The last digest of each station; made again when the station was edited since.</summary>
public sealed class Digests
{
    // A design is some megabytes: those of the stations that were edited last are at hand.
    private const int MostDesigns = 24;

    private readonly ConcurrentDictionary<Guid, (int EditNumber, Digest Digest)> kept = new();
    private readonly ConcurrentDictionary<Guid, (long Turn, Design Design)> designs = new();
    private long turn;

    /// <summary>Remembers a design that was made at the desk.</summary>
    public Digest Keep(StationText station, Design design)
    {
        var digest = Digest.Of(design);
        kept[station.Id] = (station.EditNumber, digest);
        designs[station.Id] = (Interlocked.Increment(ref turn), design);
        foreach (var (id, _) in designs.OrderByDescending(each => each.Value.Turn).Skip(MostDesigns))
        {
            designs.TryRemove(id, out _);
        }

        return digest;
    }

    /// <summary>The design of a station that was made last; null when it is not at hand.</summary>
    public Design? DesignOf(Guid id) => designs.TryGetValue(id, out var last) ? last.Design : null;

    /// <summary>The digest of a station as it is now; null when it was not designed since its last edit.</summary>
    public Digest? Of(Guid id, int editNumber) =>
        kept.TryGetValue(id, out var last) && last.EditNumber == editNumber ? last.Digest : null;
}

using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>What every page and sheet of the pack bears.</summary>
/// <param name="Status">Whether one may build from it.</param>
/// <param name="Revision">Revision of the brief.</param>
/// <param name="BriefHash">First digits of the brief's SHA-256.</param>
/// <param name="ProgramVersion">Version of the program.</param>
/// <param name="Dated">Date printed.</param>
public sealed record Stamp(string Status, string Revision, string BriefHash, string ProgramVersion, DateOnly Dated)
{
    /// <summary>The mark at the foot of a page.</summary>
    public DocumentMark Mark => new(Status, Revision, BriefHash);

    /// <summary>The stamp of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="programVersion">Version of the program.</param>
    /// <param name="today">Date for a brief that gives none.</param>
    /// <returns>The stamp.</returns>
    public static Stamp Of(Design design, string programVersion, DateOnly today)
    {
        var stops = design.Findings.Count(finding => finding.Status == FindingStatus.Stop);
        var open = design.Findings.Count(finding => finding.Status == FindingStatus.Unchecked);
        var status = (stops, open) switch
        {
            (> 0, _) => Invariant($"NOT FOR BUILDING: {stops} stop, {open} unchecked"),
            (_, > 0) => Invariant($"PRELIMINARY: {open} unchecked"),
            _ => "for the engineer's check",
        };
        return new(
            status,
            design.Brief.Head.Revision,
            design.File.Hash,
            programVersion,
            design.Brief.Head.Issued ?? today
        );
    }

    /// <summary>The stamp as one line.</summary>
    public string Line =>
        Invariant($"{Status} - revision {Revision} - brief {BriefHash} - {Dated:yyyy-MM-dd} - shaduf {ProgramVersion}");
}

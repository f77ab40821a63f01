using Shaduf.Parts;
using Shaduf.Station;
using Shaduf.Steel;
using Shaduf.Working;

namespace Shaduf.Desk;

/// <summary>What is known of the parts with one mark: their cuts, and how far their governing check uses them.</summary>
/// <param name="Mark">The mark.</param>
/// <param name="Group">Section, cuts, count and mass.</param>
/// <param name="Use">The worst check; null where no member bears the mark.</param>
/// <param name="IsOpen">Whether the strength that it is part of is unchecked: the wind is not known.</param>
public sealed record MarkChecks(string Mark, PartGroup Group, CheckResult? Use, bool IsOpen)
{
    /// <summary>Used more than this, a part is near its limit.</summary>
    public const double NearShare = 0.9;

    /// <summary>The status that its colour shows.</summary>
    public FindingStatus Status =>
        Use is not { } use ? FindingStatus.Unchecked
        : !use.Holds ? FindingStatus.Stop
        : IsOpen ? FindingStatus.Unchecked
        : use.UtilisationShare > NearShare ? FindingStatus.Look
        : FindingStatus.Holds;

    /// <summary>The marks of rack and stand.</summary>
    public static IReadOnlyList<MarkChecks> Of(Design design)
    {
        var rack = design.Works.Rack;
        var uses = design.Works.RackChoice.Taken.Strength is { } strength
            ? Worst(strength.Members, member => rack.Skeleton.Members[member].Mark)
            : [];
        var isRackOpen = IsUnchecked(design, "rack/strength");
        var ofRack = rack.Steel.Groups.Select(group => Of(group, uses, isRackOpen));
        if (design.Works.Stand is not { } stand)
        {
            return [.. ofRack];
        }

        var frame = stand.Stand;
        var standing = Worst(stand.Strength.Members, member => frame.Skeleton.Members[member].Mark);
        var isStandOpen = IsUnchecked(design, "stand/strength");
        return [.. ofRack, .. frame.Steel.Groups.Select(group => Of(group, standing, isStandOpen))];
    }

    private static bool IsUnchecked(Design design, string id) =>
        design.Findings.Any(finding => finding.Id == id && finding.Status == FindingStatus.Unchecked);

    private static MarkChecks Of(PartGroup group, Dictionary<string, CheckResult> uses, bool isOpen) =>
        new(group.Mark, group, uses.TryGetValue(group.Mark, out var use) ? use : null, isOpen);

    private static Dictionary<string, CheckResult> Worst(IReadOnlyList<MemberUse> uses, Func<int, string> markOf) =>
        uses.GroupBy(use => markOf(use.Member))
            .ToDictionary(
                group => group.Key,
                group => group.Select(use => use.Result).MaxBy(result => result.UtilisationShare)
            );
}

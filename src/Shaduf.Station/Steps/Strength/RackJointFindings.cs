using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings and working of the rack's splices, and of the faces of tubes on which other tubes end.</summary>
internal static class RackJointFindings
{
    private const string Butt = "EN 1993-1-8:2005, 4.7; places of splices: common practice, no source";
    private const string Face = "EN 1993-1-8:2005, 7.5, tables 7.8 to 7.14";

    /// <summary>The findings.</summary>
    /// <param name="strength">The checked rack.</param>
    /// <param name="advice">What would hold, where something does not.</param>
    /// <returns>The findings; none of splices where no member is longer than its bar.</returns>
    public static IEnumerable<Finding> Of(RackStrength strength, string advice)
    {
        if (strength.BothDepths.Worst(each => each.Splices, use => use.UseShare) is var (_, splice))
        {
            yield return Splices(strength, splice, advice);
        }

        if (strength.BothDepths.Worst(each => each.Faces, use => use.UseShare) is var (held, face))
        {
            yield return Faces(held, face, advice);
        }

        yield return SlenderFindings.Of(
            "rack/slender",
            strength.Rack.Skeleton.Members,
            [.. strength.BothDepths.SelectMany(each => each.Slender)],
            advice
        );
        var beyond = strength.Faces.Where(use => use.UseShare is null).ToList();
        if (beyond.Count > 0)
        {
            yield return Beyond(beyond);
        }
    }

    /// <summary>The working of the splice and of the face that are used most.</summary>
    /// <param name="strength">The checked rack.</param>
    /// <returns>The sheets.</returns>
    public static IEnumerable<WorkingSheet> Show(RackStrength strength)
    {
        if (strength.BothDepths.Worst(each => each.Splices, use => use.UseShare) is var (_, splice))
        {
            var member = strength.Rack.Skeleton.Members[splice.Place.Member];
            yield return new(
                Invariant($"Splice of {member.Role} {member.Mark}, {splice.Place.AtMm / 1000:0.00} m from its start: ")
                    + strength.Combinations.Strength[splice.Combination].Name,
                splice.Lines(strength.Rules.Section(member), strength.Rules.Grade, strength.Rules.Factors)
            );
        }

        foreach (var name in strength.Faces.Where(use => use.UseShare is not null).Select(use => use.Name).Distinct())
        {
            var (held, use) = strength
                .BothDepths.Worst<TubeFaceUse>(
                    each => [.. each.Faces.Where(use => use.Name == name)],
                    use => use.UseShare
                )!
                .Value;
            yield return new(
                $"Face of the tube at '{name}': {strength.Combinations.Strength[use.Combination].Name}{held.HeldSays}",
                use.Lines
            );
        }
    }

    private static Finding Splices(RackStrength strength, SpliceUse worst, string advice)
    {
        var member = strength.Rack.Skeleton.Members[worst.Place.Member];
        var highest = strength.Splices.MaxBy(use => use.MomentShare)!;
        var finding = Finding.AtMost(
            "rack/splices",
            worst.ThroatMm,
            worst.WallMm,
            "mm",
            Invariant(
                $"the butt weld of {member.Role} {member.Mark} {worst.Place.AtMm / 1000:0.00} m from its start needs the deepest throat, {worst.ThroatMm:0.0} mm of a wall of {worst.WallMm:0.0} mm; the moment there is {worst.MomentShare:0.00} of the member's highest"
            )
                + Invariant(
                    $" ({strength.Splices.Count} splices, at most {highest.MomentShare:0.00}, on {strength.Rack.Skeleton.Members[highest.Place.Member].Mark}). Weld them through the wall all round, with a gap of the wall's thickness"
                )
                + (worst.UseShare <= 1 ? "" : ", or set a sleeve inside" + advice),
            Butt
        );
        var faults = Faults(strength.Rack);
        return faults.Length > 0 && finding.Status == FindingStatus.Holds
            ? finding with
            {
                Status = FindingStatus.Look,
                Says = finding.Says + faults,
            }
            : finding with
            {
                Says = finding.Says + faults,
            };
    }

    private static string Faults(Rack rack)
    {
        var (anywhere, crowded) = (RackSplices.Anywhere(rack), RackSplices.Crowded(rack));
        return (
                anywhere.Count == 0
                    ? ""
                    : $". Good places for a splice lie further apart than a piece of {string.Join(", ", anywhere)} is long: whole bars are laid from one end, and the splices lie where these end; longer bars, a longer truck or more tubes across mend it"
            )
            + (
                crowded.Count == 0
                    ? ""
                    : $". Two bars of {string.Join(", ", crowded)} are spliced within 300 mm of each other: no other good place is within reach"
            );
    }

    private static Finding Faces(RackStrength strength, TubeFaceUse worst, string advice)
    {
        var joint = strength.Rack.Skeleton.Joints[worst.Joint];
        var members = strength.Rack.Skeleton.Members;
        return Finding.AtMost(
            "rack/tube-faces",
            worst.UseShare!.Value,
            1,
            "",
            Invariant(
                $"where {members[joint.Second].Role} {members[joint.Second].Mark} {(worst.IsAcross ? "lies across" : "ends on")} {members[joint.First].Role} {members[joint.First].Mark} ('{worst.Name}') the wall under it is used most, {worst.UseShare:0.00}, {strength.Combinations.Strength[worst.Combination].Name}{strength.HeldSays}"
            ) + (worst.UseShare <= 1 ? "" : advice),
            Face
        );
    }

    // A plate or a person's judgement where the formulas end.
    private static Finding Beyond(IReadOnlyList<TubeFaceUse> beyond) =>
        new(
            "rack/tube-faces-beyond",
            FindingStatus.Look,
            "the formulas for tube on tube do not reach: "
                + string.Join("; ", beyond.Select(use => $"'{use.Name}': {use.WhyNot}"))
                + ". Take other sections, or let an engineer look at these joints",
            null,
            null,
            "",
            Face
        );
}

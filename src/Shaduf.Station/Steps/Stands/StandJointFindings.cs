using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings and working of a stand's splices, and of the faces of its tubes on which others end.</summary>
internal static class StandJointFindings
{
    private const string Butt = "EN 1993-1-8:2005, 4.7; places of splices: common practice, no source";
    private const string Face = "EN 1993-1-8:2005, 7.5, tables 7.8 to 7.14";

    /// <summary>The findings.</summary>
    /// <param name="strength">The stand.</param>
    /// <param name="advice">What would hold, where something does not.</param>
    /// <returns>The findings; none of splices where no member is longer than its bar.</returns>
    public static IEnumerable<Finding> Of(StandStrength strength, string advice)
    {
        yield return Faces(strength, advice);
        if (strength.Splices.MaxBy(use => use.UseShare) is { } worst)
        {
            yield return Splice(strength, worst, advice);
        }
    }

    /// <summary>The working of the faces, each kind of joint once, and of the splice that is used most.</summary>
    /// <param name="strength">The stand.</param>
    /// <returns>The sheets.</returns>
    public static IEnumerable<WorkingSheet> Show(StandStrength strength)
    {
        foreach (var use in strength.Faces.Where(use => use.UseShare is not null))
        {
            yield return new(
                $"Stand, face of the tube at '{use.Name}': {strength.Combinations.Strength[use.Combination].Name}",
                use.Lines
            );
        }

        if (strength.Splices.MaxBy(use => use.UseShare) is { } worst)
        {
            var member = strength.Stand.Skeleton.Members[worst.Place.Member];
            yield return new(
                Invariant(
                    $"Stand, splice of {member.Role} {member.Mark}, {worst.Place.AtMm / 1000:0.00} m from its start: "
                ) + strength.Combinations.Strength[worst.Combination].Name,
                worst.Lines(strength.Rules.Section(member), strength.Rules.Grade, strength.Rules.Factors)
            );
        }
    }

    // Beyond the formulas nothing is checked: tonnes of water stand on it.
    private static Finding Faces(StandStrength strength, string advice)
    {
        if (strength.Faces.FirstOrDefault(use => use.UseShare is null) is { } beyond)
        {
            return new(
                "stand/tube-faces",
                FindingStatus.Unchecked,
                $"the formulas for tube on tube do not reach '{beyond.Name}': {beyond.WhyNot}{advice}",
                null,
                null,
                "",
                Face
            );
        }

        var worst = strength.Faces.MaxBy(use => use.UseShare)!;
        var joint = strength.Stand.Skeleton.Joints[worst.Joint];
        var members = strength.Stand.Skeleton.Members;
        return Finding.AtMost(
            "stand/tube-faces",
            worst.UseShare!.Value,
            1,
            "",
            Invariant(
                $"where {members[joint.Second].Role} {members[joint.Second].Mark} ends on {members[joint.First].Role} {members[joint.First].Mark} ('{worst.Name}') the wall that it stands on is used most, {worst.UseShare:0.00}, {strength.Combinations.Strength[worst.Combination].Name}"
            ) + (worst.UseShare <= 1 ? "" : advice),
            Face
        );
    }

    private static Finding Splice(StandStrength strength, SpliceUse worst, string advice)
    {
        var member = strength.Stand.Skeleton.Members[worst.Place.Member];
        return Finding.AtMost(
            "stand/splices",
            worst.ThroatMm,
            worst.WallMm,
            "mm",
            Invariant(
                $"the butt weld of {member.Role} {member.Mark} {worst.Place.AtMm / 1000:0.00} m from its start needs the deepest throat, {worst.ThroatMm:0.0} mm of a wall of {worst.WallMm:0.0} mm ({strength.Splices.Count} splices). Weld them through the wall all round, with a gap of the wall's thickness, before the leg or beam is set"
            ) + (worst.UseShare <= 1 ? "" : advice),
            Butt
        );
    }
}

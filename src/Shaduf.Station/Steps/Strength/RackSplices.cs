using Shaduf.Parts;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Where the members of a rack are spliced.</summary>
public static class RackSplices
{
    /// <summary>The splices of all parts, on the members that the parts belong to.</summary>
    /// <param name="rack">The rack.</param>
    /// <returns>The places.</returns>
    public static IReadOnlyList<SplicePlace> PlacesOf(Rack rack) => PlacesOf(rack.Steel, rack.Skeleton);

    /// <summary>The splices of all parts that belong to members.</summary>
    /// <param name="steel">The parts.</param>
    /// <param name="skeleton">The members.</param>
    /// <returns>The places.</returns>
    public static IReadOnlyList<SplicePlace> PlacesOf(Assembly steel, Skeleton skeleton) =>
        [
            .. from part in steel.Parts
            where part.SplicesMm.Count > 0 && skeleton.Members.Any(member => member.Mark == part.Mark)
            let member = MemberOf(skeleton, part)
            from atMm in part.SplicesMm
            select new SplicePlace(member, AlongMm(skeleton.Members[member], part, atMm)),
        ];

    /// <summary>Parts whose splices lie where bars end, since good places lie further apart than a piece.</summary>
    /// <param name="rack">The rack.</param>
    /// <returns>Their marks.</returns>
    public static IReadOnlyList<string> Anywhere(Rack rack) =>
        [.. rack.Steel.Parts.Where(part => part.IsSplicedAnywhere).Select(part => part.Mark).Distinct()];

    /// <summary>Marks of members of two bars or rails side by side whose splices lie side by side too.</summary>
    /// <param name="rack">The rack.</param>
    /// <returns>Their marks.</returns>
    public static IReadOnlyList<string> Crowded(Rack rack) =>
        [
            .. PlacesOf(rack)
                .GroupBy(place => place.Member)
                .Where(alike =>
                    alike.Select(place => place.AtMm).Distinct().Order().ToList() is var at && IsCrowded(at)
                )
                .Select(alike => rack.Skeleton.Members[alike.Key].Mark)
                .Distinct(),
        ];

    private static bool IsCrowded(List<double> at) =>
        at.Zip(at.Skip(1)).Any(pair => pair.Second - pair.First < SplicePlaces.StaggerMm - 1);

    // A channel's angles lie beside the axis of their member.
    private static int MemberOf(Skeleton skeleton, Part part)
    {
        var middle = (part.Shape.Start + part.Shape.End) * 0.5;
        return Enumerable
            .Range(0, skeleton.Members.Count)
            .Where(i => skeleton.Members[i].Mark == part.Mark)
            .MinBy(i => (((skeleton.Members[i].From + skeleton.Members[i].To) * 0.5) - middle).LengthMm);
    }

    private static double AlongMm(Member member, Part part, double atMm)
    {
        var axis = (member.To - member.From) * (1 / member.LengthMm);
        var at = part.Shape.Start + ((part.Shape.End - part.Shape.Start) * (atMm / part.LengthMm));
        return Math.Clamp(axis.DotMm2(at - member.From), 0, member.LengthMm);
    }
}

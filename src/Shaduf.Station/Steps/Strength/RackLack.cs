using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>How many times over what it holds each group of a rack's bars is used; what a heavier bar mends only by the way counts as just beyond.</summary>
/// <param name="Tube">Cross tubes or rafters, struts and braces.</param>
/// <param name="Column">Columns.</param>
/// <param name="Bearer">Bars along the row.</param>
internal readonly record struct RackLack(double Tube, double Column, double Bearer)
{
    private const double JustBeyond = 1.01;

    // Stiffness grows faster than the modulus by which bars are stepped up.
    private const double LargestMoveStep = 1.3;

    /// <summary>What a checked rack lacks.</summary>
    /// <param name="strength">The rack at one depth of its columns.</param>
    public static RackLack Of(RackStrength strength)
    {
        var feet = strength.Rack.Skeleton.Feet.Select(foot => foot.Member).ToHashSet();
        var tubeName = strength.Rack.Sections.Tube.Name;
        var lack = new RackLack();
        foreach (var use in strength.Members)
        {
            lack = lack.With(Group(use.Member), use.Result.UtilisationShare);
        }

        foreach (var use in strength.Faces.Where(use => use.UseShare > 1))
        {
            lack = lack.With(Group(use.Pressed), JustBeyond);
        }

        foreach (var use in strength.Splices.Where(use => use.UseShare > 1))
        {
            lack = lack.With(Group(use.Place.Member), JustBeyond);
        }

        foreach (var use in strength.Slender.Where(use => use.UseShare > 1))
        {
            lack = lack.With(Group(use.Member), Math.Min(use.UseShare, LargestMoveStep));
        }

        var welds = strength.Joints.Select(use => use.RequiredLegMm / RackStrength.MostLegMm).DefaultIfEmpty(0).Max();
        var firm = RackMoves.Firm(strength).Select(move => move.Value / move.Limit).DefaultIfEmpty(0).Max();
        return lack with
        {
            Tube = Math.Max(lack.Tube, welds > 1 ? JustBeyond : 0),
            Column = new[]
            {
                lack.Column,
                firm > 1 ? Math.Min(firm, LargestMoveStep) : 0,
                strength.CriticalFactor < RackStrength.LeastCriticalFactor ? JustBeyond : 0,
            }.Max(),
        };

        char Group(int member) =>
            feet.Contains(member) ? 'C'
            : strength.Rack.Skeleton.Members[member].Profile.Bar.Name == tubeName ? 'T'
            : 'B';
    }

    /// <summary>Whether a group is used more than so many times over.</summary>
    /// <param name="share">How many times.</param>
    public bool IsBeyond(double share) => Tube > share || Column > share || Bearer > share;

    private RackLack With(char group, double share) =>
        group switch
        {
            'C' => this with { Column = Math.Max(Column, share) },
            'T' => this with { Tube = Math.Max(Tube, share) },
            _ => this with { Bearer = Math.Max(Bearer, share) },
        };
}

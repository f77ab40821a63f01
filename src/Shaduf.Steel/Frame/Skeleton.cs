using Shaduf.Parts;
using Shaduf.Shape;

namespace Shaduf.Steel;

/// <summary>What a member is made up of.</summary>
public enum MakeUp
{
    /// <summary>One bar.</summary>
    Single,

    /// <summary>Two angles lapped and welded to a channel.</summary>
    Channel,

    /// <summary>Two such channels, web to web.</summary>
    DoubleChannel,
}

/// <summary>The section of a member: bars of one size, put together.</summary>
/// <param name="MakeUp">How they are put together.</param>
/// <param name="Bar">The bars.</param>
/// <param name="InsideDepthMm">Clear depth between the lips of a channel [mm]; 0 for a single bar.</param>
public sealed record Profile(MakeUp MakeUp, Section Bar, double InsideDepthMm = 0);

/// <summary>A straight run of steel that carries as one. Local x runs from start to end, z is the section's height.</summary>
/// <param name="Mark">The mark of its parts.</param>
/// <param name="Role">What it is in the station.</param>
/// <param name="Profile">Its section.</param>
/// <param name="From">Start of its axis.</param>
/// <param name="To">End of its axis.</param>
/// <param name="Width">Direction of the section's width, local y; not along the axis, any length.</param>
public sealed record Member(string Mark, string Role, Profile Profile, Point From, Point To, Point Width)
{
    /// <summary>Length of the axis [mm].</summary>
    public double LengthMm => (To - From).LengthMm;
}

/// <summary>How a joint passes forces on.</summary>
public enum JointKind
{
    /// <summary>Welded all round or on both sides: rigid.</summary>
    Welded,

    /// <summary>Welded at its seat where it lies across another: rigid, but free to turn about the other's axis.</summary>
    Seated,

    /// <summary>Bolted so that it may turn: passes forces only; the second member ends there.</summary>
    Pinned,
}

/// <summary>A place where one member sits on, or ends at, another.</summary>
/// <param name="Name">Its name, shared by joints that are alike: 'strut to column'.</param>
/// <param name="Kind">How it passes forces on.</param>
/// <param name="First">Index of the member that goes on.</param>
/// <param name="AtFirst">Place on the axis of the first.</param>
/// <param name="Second">Index of the member that sits on it or ends at it.</param>
/// <param name="AtSecond">Place on the axis of the second.</param>
public sealed record Joint(string Name, JointKind Kind, int First, Point AtFirst, int Second, Point AtSecond)
{
    /// <summary>Its weld; null where it is bolted.</summary>
    public JointWeld? Weld { get; init; }

    /// <summary>Whether the second member, wider than the first, is closed by a plate on which the first lies.</summary>
    public bool HasCap { get; init; }
}

/// <summary>How the runs of a joint's weld lie.</summary>
public enum WeldPattern
{
    /// <summary>All round the end of a tube.</summary>
    AllRound,

    /// <summary>Two runs side by side.</summary>
    TwoRuns,
}

/// <summary>The weld of a joint, seen in the plane where the two members touch.</summary>
/// <param name="Pattern">How its runs lie.</param>
/// <param name="LegMm">Leg of the fillet [mm].</param>
/// <param name="WidthMm">Width of the pattern; the length of a run where there are two [mm].</param>
/// <param name="HeightMm">Height of the pattern; the distance of the runs where there are two [mm].</param>
/// <param name="Along">Direction of the width, any length.</param>
public sealed record JointWeld(WeldPattern Pattern, double LegMm, double WidthMm, double HeightMm, Point Along)
{
    /// <summary>Length of a run [mm].</summary>
    public double RunMm => Pattern == WeldPattern.AllRound ? 2 * (WidthMm + HeightMm) : WidthMm;

    /// <summary>The runs as a seam of a number of joints.</summary>
    /// <param name="name">Name of the joints.</param>
    /// <param name="count">How many joints.</param>
    /// <returns>The seam.</returns>
    public Seam Seam(string name, int count) =>
        Pattern == WeldPattern.AllRound
            ? new(name, LegMm, 2 * (WidthMm + HeightMm), count) { IsAllRound = true }
            : new(name, LegMm, WidthMm, 2 * count);
}

/// <summary>A member's end in the ground.</summary>
/// <param name="Member">Index of the member.</param>
/// <param name="Ground">Where its axis passes the ground.</param>
public sealed record Foot(int Member, Point Ground);

/// <summary>The lines of an assembly along which it carries, and how they hang together.</summary>
/// <param name="Members">The members.</param>
/// <param name="Joints">The joints.</param>
/// <param name="Feet">The ends in the ground.</param>
public sealed record Skeleton(IReadOnlyList<Member> Members, IReadOnlyList<Joint> Joints, IReadOnlyList<Foot> Feet);

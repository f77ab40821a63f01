using Shaduf.Shape;

namespace Shaduf.Steel;

/// <summary>What a member's end passes on to its node; a released direction passes nothing. Local axes of the member.</summary>
[Flags]
public enum EndRelease
{
    /// <summary>Rigid: a welded joint.</summary>
    None = 0,

    /// <summary>No force along the member.</summary>
    Axial = 1,

    /// <summary>No force along local y.</summary>
    ShearY = 2,

    /// <summary>No force along local z.</summary>
    ShearZ = 4,

    /// <summary>No torque.</summary>
    Torsion = 8,

    /// <summary>No moment about local y.</summary>
    BendingY = 16,

    /// <summary>No moment about local z.</summary>
    BendingZ = 32,
}

/// <summary>Directions of a node that are held. Axes of the station.</summary>
[Flags]
public enum FrameFix
{
    /// <summary>Free.</summary>
    None = 0,

    /// <summary>No movement along x.</summary>
    AlongX = 1,

    /// <summary>No movement along y.</summary>
    AlongY = 2,

    /// <summary>No movement along z.</summary>
    AlongZ = 4,

    /// <summary>Held at its place, free to turn.</summary>
    Pinned = AlongX | AlongY | AlongZ,

    /// <summary>No turning about x.</summary>
    AboutX = 8,

    /// <summary>No turning about y.</summary>
    AboutY = 16,

    /// <summary>No turning about z.</summary>
    AboutZ = 32,

    /// <summary>Held at its place and against turning.</summary>
    Clamped = Pinned | AboutX | AboutY | AboutZ,
}

/// <summary>Section of a member as the frame sees it.</summary>
/// <param name="AreaMm2">Area A [mm2], above 0.</param>
/// <param name="InertiaYMm4">Second moment about local y, resists bending in the local x-z plane [mm4], above 0.</param>
/// <param name="InertiaZMm4">Second moment about local z, resists bending in the local x-y plane [mm4], above 0.</param>
/// <param name="TorsionConstantMm4">Torsion constant [mm4], above 0.</param>
public sealed record FrameSection(double AreaMm2, double InertiaYMm4, double InertiaZMm4, double TorsionConstantMm4);

/// <summary>
/// A straight member between two nodes. Local x runs from start to end; local y lies in the plane of x and
/// <paramref name="Towards"/>, on that side; local z makes the axes right-handed.
/// </summary>
/// <param name="Mark">Name of the part it stands for.</param>
/// <param name="Start">Index of the node at its start.</param>
/// <param name="End">Index of the node at its end.</param>
/// <param name="Section">Its section.</param>
/// <param name="Towards">A direction that is not along the member; any length.</param>
/// <param name="StartRelease">What the start does not pass on.</param>
/// <param name="EndRelease">What the end does not pass on.</param>
public sealed record FrameMember(
    string Mark,
    int Start,
    int End,
    FrameSection Section,
    Point Towards,
    EndRelease StartRelease = EndRelease.None,
    EndRelease EndRelease = EndRelease.None
);

/// <summary>A node held by ground or concrete.</summary>
/// <param name="Node">Index of the node.</param>
/// <param name="Fix">Directions that are held.</param>
public sealed record FrameSupport(int Node, FrameFix Fix);

/// <summary>A frame of beams in space: linear elastic, rigid joints unless released, centre lines, no shear deformation.</summary>
/// <param name="Nodes">Places of the nodes.</param>
/// <param name="Members">The members.</param>
/// <param name="Supports">The held nodes.</param>
/// <param name="ElasticModulusNPerMm2">Modulus of elasticity E [N/mm2], above 0; steel 210,000.</param>
/// <param name="ShearModulusNPerMm2">Shear modulus G [N/mm2], above 0; steel 81,000.</param>
public sealed record FrameModel(
    IReadOnlyList<Point> Nodes,
    IReadOnlyList<FrameMember> Members,
    IReadOnlyList<FrameSupport> Supports,
    double ElasticModulusNPerMm2 = FrameModel.SteelElasticModulusNPerMm2,
    double ShearModulusNPerMm2 = FrameModel.SteelShearModulusNPerMm2
)
{
    /// <summary>Modulus of elasticity of steel [N/mm2] (EN 1993-1-1:2005, 3.2.6).</summary>
    public const double SteelElasticModulusNPerMm2 = 210_000;

    /// <summary>Shear modulus of steel [N/mm2] (EN 1993-1-1:2005, 3.2.6: about 81,000).</summary>
    public const double SteelShearModulusNPerMm2 = 81_000;

    /// <summary>Length of a member [mm].</summary>
    /// <param name="member">Index of the member, 0 to one less than their number.</param>
    /// <returns>Distance of its nodes [mm].</returns>
    public double LengthMm(int member) => (Nodes[Members[member].End] - Nodes[Members[member].Start]).LengthMm;

    /// <summary>
    /// The same frame with each member cut into pieces of equal length, for buckling and second order, where one
    /// element a member is coarse. The first nodes stay; the pieces of member m are m·n to m·n + n − 1.
    /// </summary>
    /// <param name="pieceCount">Pieces n of each member, 1 to 100.</param>
    /// <returns>The divided frame.</returns>
    public FrameModel Divided(int pieceCount)
    {
        var nodes = Nodes.ToList();
        var members = new List<FrameMember>(Members.Count * pieceCount);
        foreach (var member in Members)
        {
            var (from, to) = (Nodes[member.Start], Nodes[member.End]);
            var at = member.Start;
            for (var piece = 0; piece < pieceCount; piece++)
            {
                var isLast = piece == pieceCount - 1;
                var next = isLast ? member.End : nodes.Count;
                if (!isLast)
                {
                    nodes.Add(from + ((to - from) * ((piece + 1.0) / pieceCount)));
                }

                members.Add(
                    member with
                    {
                        Start = at,
                        End = next,
                        StartRelease = piece == 0 ? member.StartRelease : EndRelease.None,
                        EndRelease = isLast ? member.EndRelease : EndRelease.None,
                    }
                );
                at = next;
            }
        }

        return this with
        {
            Nodes = nodes,
            Members = members,
        };
    }
}

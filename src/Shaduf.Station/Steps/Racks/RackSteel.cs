using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>The steel of a rack or a stand while it is put together: its parts, and the lines along which it carries.</summary>
/// <param name="setting">Tilt and heights of a rack; null for a stand.</param>
internal sealed class RackSteel(RackSetting? setting)
{
    internal const double WeldLegMm = 4.5;

    private readonly List<Part> parts = [];
    private readonly List<Member> members = [];
    private readonly List<Joint> joints = [];
    private readonly List<Foot> feet = [];

    /// <summary>Tilt and heights.</summary>
    public RackSetting Setting => setting ?? throw new InvalidOperationException("a stand has no tilt");

    /// <summary>The parts so far.</summary>
    public IReadOnlyList<Part> Parts => parts;

    /// <summary>The skeleton so far.</summary>
    public Skeleton Skeleton => new(members, joints, feet);

    /// <summary>The welds of the joints: joints of one name and one length of run together.</summary>
    public IEnumerable<Seam> JointSeams =>
        joints
            .Where(joint => joint.Weld is not null)
            .GroupBy(joint => (joint.Name, RunMm: Math.Round(joint.Weld!.RunMm)))
            .OrderBy(alike => joints.FindIndex(joint => joint.Name == alike.Key.Name))
            .Select(alike => alike.First().Weld!.Seam(alike.Key.Name, alike.Count()));

    /// <summary>A member of the skeleton.</summary>
    /// <param name="index">Its index.</param>
    public Member this[int index] => members[index];

    /// <summary>Adds a part that is no member of its own.</summary>
    /// <param name="part">The part.</param>
    public void Add(Part part) => parts.Add(part);

    /// <summary>Adds a part and the member that it is.</summary>
    /// <param name="part">The part.</param>
    /// <param name="width">Direction of the section's width.</param>
    /// <returns>Index of the member.</returns>
    public int Add(Part part, Point width) => Add(part, (part.Shape.Start, part.Shape.End), width);

    /// <summary>Adds a part and the member that it is, which carries along another line than the part's own: to the middle of what it meets.</summary>
    /// <param name="part">The part.</param>
    /// <param name="axis">The line.</param>
    /// <param name="width">Direction of the section's width.</param>
    /// <returns>Index of the member.</returns>
    public int Add(Part part, (Point From, Point To) axis, Point width)
    {
        parts.Add(part);
        return Add(new Member(part.Mark, part.Role, new(MakeUp.Single, part.Section), axis.From, axis.To, width));
    }

    /// <summary>Adds a member that is made of several parts.</summary>
    /// <param name="member">The member.</param>
    /// <returns>Its index.</returns>
    public int Add(Member member)
    {
        members.Add(member);
        return members.Count - 1;
    }

    /// <summary>
    /// A part cut at both ends; parts that are alike share a mark, and others take the next number of its letter.
    /// </summary>
    /// <param name="letter">Letter of the mark.</param>
    /// <param name="role">What it is.</param>
    /// <param name="section">Its section.</param>
    /// <param name="cut">How it is cut.</param>
    /// <returns>The part, not added yet.</returns>
    /// <exception cref="ArgumentException">The part has no length or cannot be sawn so; the message names it.</exception>
    public Part Cut(char letter, string role, Section section, Func<Cut> cut)
    {
        var shape = Sawn(
            letter,
            role,
            () =>
                cut() is { ShortPointMm: > 0 } sawn
                    ? sawn
                    : throw new ArgumentException("nothing is left of it between its two cuts")
        );
        var alike = parts
            .DistinctBy(part => part.Mark)
            .FirstOrDefault(part =>
                part.Mark[0] == letter
                && part.Role == role
                && part.Section == section
                && Math.Abs(part.Shape.LongPointMm - shape.LongPointMm) < 0.05
                && Math.Abs(part.Shape.ShortPointMm - shape.ShortPointMm) < 0.05
            );
        var mark =
            alike?.Mark
            ?? $"{letter}{parts.Select(part => part.Mark).Where(mark => mark[0] == letter).Distinct().Count() + 1}";
        return new(mark, role, section, shape, Part.Splices(shape.AlongBarMm(section.SideMm), section.LongestPieceMm));
    }

    /// <summary>Welds a member to another.</summary>
    /// <param name="name">Name of the joint.</param>
    /// <param name="goesOn">The member that goes on, and where.</param>
    /// <param name="sits">The member that sits on it, and where.</param>
    /// <param name="weld">The weld.</param>
    public void Weld(string name, (int Member, Point At) goesOn, (int Member, Point At) sits, JointWeld weld) =>
        joints.Add(new(name, JointKind.Welded, goesOn.Member, goesOn.At, sits.Member, sits.At) { Weld = weld });

    /// <summary>Lays a member on the plate that closes another's end.</summary>
    /// <param name="name">Name of the joint.</param>
    /// <param name="goesOn">The member that goes on, and where.</param>
    /// <param name="capped">The member with the plate, and where.</param>
    /// <param name="weld">The weld of the first to the plate.</param>
    public void Cap(string name, (int Member, Point At) goesOn, (int Member, Point At) capped, JointWeld weld)
    {
        Weld(name, goesOn, capped, weld);
        joints[^1] = joints[^1] with { HasCap = true };
    }

    /// <summary>Seats a member on another that it lies across.</summary>
    /// <param name="name">Name of the joint.</param>
    /// <param name="goesOn">The member under it, and where.</param>
    /// <param name="sits">The member that lies on it, and where.</param>
    /// <param name="weld">The weld.</param>
    public void Seat(string name, (int Member, Point At) goesOn, (int Member, Point At) sits, JointWeld weld) =>
        joints.Add(new(name, JointKind.Seated, goesOn.Member, goesOn.At, sits.Member, sits.At) { Weld = weld });

    /// <summary>Bolts a member's end to another.</summary>
    /// <param name="name">Name of the joint.</param>
    /// <param name="goesOn">The member that goes on, and where.</param>
    /// <param name="ends">The member that ends there, and where.</param>
    public void Bolt(string name, (int Member, Point At) goesOn, (int Member, Point At) ends) =>
        joints.Add(new(name, JointKind.Pinned, goesOn.Member, goesOn.At, ends.Member, ends.At));

    /// <summary>Sets a leg's foot on what holds it.</summary>
    /// <param name="leg">Index of the leg.</param>
    /// <param name="ground">Where its axis meets that.</param>
    public void Set(int leg, Point ground) => feet.Add(new(leg, ground));

    /// <summary>Sets a column's foot in the ground.</summary>
    /// <param name="column">Index of the column.</param>
    public void Set(int column)
    {
        var foot = members[column].From;
        feet.Add(new(column, foot with { ZMm = Setting.Ground.ZMm(foot.XMm, foot.YMm) }));
    }

    /// <summary>A cut whose failure names the part.</summary>
    /// <param name="letter">Letter of its mark.</param>
    /// <param name="role">What it is.</param>
    /// <param name="cut">How it is cut.</param>
    /// <returns>The cut.</returns>
    /// <exception cref="ArgumentException">It cannot be sawn so; the message names the part.</exception>
    public static Cut Sawn(char letter, string role, Func<Cut> cut)
    {
        try
        {
            return cut();
        }
        catch (ArgumentException error)
        {
            throw new ArgumentException($"{role} ({letter}): {error.Message}", error);
        }
    }
}

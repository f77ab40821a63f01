using Shaduf.Parts;
using Shaduf.Shape;

namespace Shaduf.Station;

/// <summary>Guard rail and ladder of a platform.</summary>
/// <param name="PostSpacingMm">Largest distance of two posts [mm].</param>
/// <param name="LadderMm">Length of the ladder's stiles [mm]: from the ground to the top rail's height over the deck.</param>
/// <param name="RungCount">Rungs, the last level with the deck; above it only the stiles go on, as hand holds.</param>
/// <param name="FallMm">How far one can fall from the platform [mm].</param>
public sealed record StandAccess(double PostSpacingMm, double LadderMm, int RungCount, double FallMm)
{
    /// <summary>Height of the top rail over the deck [mm] (EN ISO 14122-3:2016, from memory).</summary>
    public const double RailMm = 1100;

    /// <summary>Height of the knee rail [mm]: no gap above 500 mm (EN ISO 14122-3:2016, from memory).</summary>
    public const double KneeMm = 550;

    /// <summary>Largest distance of posts [mm] (EN ISO 14122-3:2016, from memory).</summary>
    public const double MostPostsMm = 1500;

    /// <summary>Distance of rungs at most [mm]: 225 to 300 (EN ISO 14122-4:2016, from memory).</summary>
    public const double RungPitchMm = 280;

    /// <summary>Clear width of the ladder [mm]: 400 to 600, and 500 to 700 between hand holds that one steps through (EN ISO 14122-4:2016, from memory).</summary>
    public const double LadderWidthMm = 500;

    /// <summary>Fall from which a ladder needs a cage or an arrester that is led on it [mm] (EN ISO 14122-4:2016).</summary>
    public const double CageFromMm = 3000;

    /// <summary>Opening of the rail before the ladder, with a gate that closes itself [mm].</summary>
    public const double GateMm = 600;

    /// <summary>Diameter of a rung [mm].</summary>
    public const double RungMm = 20;

    // Round bar of that diameter.
    private const double RungKgPerM = 2.47;

    /// <summary>Role of the posts of the guard rail.</summary>
    public const string PostRole = "guard post";

    /// <summary>Role of its rails.</summary>
    public const string RailRole = "guard rail";

    internal const string StileRole = "stile of the ladder";

    /// <summary>Roles of its parts.</summary>
    internal static IReadOnlyList<string> Roles { get; } = [PostRole, RailRole, StileRole];

    /// <summary>Name of the welds of posts.</summary>
    internal const string PostName = "guard post to deck";

    /// <summary>Name of the welds of rails.</summary>
    internal const string RailName = "guard rail to post";

    /// <summary>Name of the welds of rungs.</summary>
    internal const string RungName = "rung to stile";

    /// <summary>Posts.</summary>
    public required int PostCount { get; init; }

    /// <summary>Places where a rail meets a post.</summary>
    public required int RailJointCount { get; init; }

    /// <summary>Its welds.</summary>
    /// <param name="railMm">Side of rails and posts [mm].</param>
    internal IEnumerable<Seam> Seams(double railMm) =>
        [
            new(PostName, 4, 4 * railMm, PostCount) { IsOnSite = true, IsAllRound = true },
            new(RailName, 4, railMm, 2 * RailJointCount) { IsOnSite = true },
            new(RungName, 4, Math.PI * RungMm, 2 * RungCount) { IsOnSite = true, IsAllRound = true },
        ];

    /// <summary>Distance of the rungs, the first from the ground [mm].</summary>
    public double RungSpacingMm => FallMm / RungCount;

    /// <summary>How far the stiles go on above the last rung [mm].</summary>
    public double HoldMm => LadderMm - FallMm;

    /// <summary>Mass of the rungs [kg].</summary>
    public double RungKg => RungCount * LadderWidthMm / 1000 * RungKgPerM;

    /// <summary>Whether the ladder needs a cage or an arrester.</summary>
    public bool NeedsCage => FallMm > CageFromMm;

    /// <summary>Adds posts, rails and the ladder's stiles.</summary>
    /// <param name="steel">The stand's steel.</param>
    /// <param name="plan">Its lines.</param>
    /// <returns>What was added.</returns>
    internal static StandAccess Add(RackSteel steel, StandPlan plan)
    {
        var (left, right) = plan.WidthMm;
        var (front, back) = plan.DepthMm;
        var rail = plan.Sections.Rail;
        var half = rail.SideMm / 2;
        var deck = plan.FloorMm;
        var corners = (Left: left + half, Right: right - half, Front: front + half, Back: back - half);
        var gate = corners.Left + GateMm + rail.SideMm;
        (Point From, Point To)[] sides =
        [
            (new(gate, corners.Front, deck), new(corners.Right, corners.Front, deck)),
            (new(corners.Right, corners.Front, deck), new(corners.Right, corners.Back, deck)),
            (new(corners.Right, corners.Back, deck), new(corners.Left, corners.Back, deck)),
            (new(corners.Left, corners.Back, deck), new(corners.Left, corners.Front, deck)),
        ];
        var (widest, railJoints) = (0.0, 0);
        foreach (var (from, to) in sides)
        {
            var length = (to - from).LengthMm;
            var bays = Math.Max(1, (int)Math.Ceiling((length / MostPostsMm) - 1e-9));
            widest = Math.Max(widest, length / bays);
            for (var i = 0; i < bays; i++)
            {
                Upright(steel, rail, from + ((to - from) * ((double)i / bays)), RailMm);
            }

            foreach (var up in new[] { KneeMm, RailMm })
            {
                var rise = new Point(0, 0, up);
                steel.Add(Straight(steel, 'U', RailRole, rail, from + rise, to + rise));
                railJoints += bays + 1;
            }
        }

        // The last corner, beside the gate, has its post too.
        Upright(steel, rail, sides[^1].To, RailMm);
        var ladder = deck + RailMm;

        // In the middle of the opening between the corner's post and the gate's.
        var (middle, apart) = ((corners.Left + gate) / 2, (LadderWidthMm / 2) + half);
        foreach (var x in new[] { middle - apart, middle + apart })
        {
            var foot = new Point(x, front - half, 0);
            steel.Add(Straight(steel, 'V', StileRole, rail, foot, foot + new Point(0, 0, ladder)));
        }

        return new(widest, ladder, (int)Math.Ceiling((deck / RungPitchMm) - 1e-9), deck)
        {
            PostCount = steel.Parts.Count(part => part.Role == PostRole),
            RailJointCount = railJoints,
        };
    }

    private static void Upright(RackSteel steel, Section rail, Point at, double heightMm) =>
        steel.Add(Straight(steel, 'Q', PostRole, rail, at, at + new Point(0, 0, heightMm)));

    private static Part Straight(RackSteel steel, char letter, string role, Section section, Point from, Point to) =>
        steel.Cut(
            letter,
            role,
            section,
            () => Cut.Of(from, to, section.SideMm, new(from, to - from), new(to, to - from))
        );
}

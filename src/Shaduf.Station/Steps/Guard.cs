using Shaduf.Ground;
using Shaduf.Power;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Light, earth and fence.</summary>
/// <param name="Light">Night light; null for none.</param>
/// <param name="RodCount">Earth rods.</param>
/// <param name="RodOhm">Expected resistance of one rod [Ω].</param>
/// <param name="EarthOhm">Expected resistance of all rods in a line, two rod lengths apart [Ω].</param>
/// <param name="FenceLengthM">Side of the fence along the racks [m]; 0 without a fence.</param>
/// <param name="FenceDepthM">Side of the fence across the racks [m]; 0 without a fence.</param>
/// <param name="Fence">Posts and mesh; null without a fence.</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record Guard(
    LightCard? Light,
    int RodCount,
    double RodOhm,
    double EarthOhm,
    double FenceLengthM,
    double FenceDepthM,
    FenceTakeoff? Fence,
    IReadOnlyList<ChoiceNote> Notes
)
{
    /// <summary>Length of an earth rod [m].</summary>
    public const double RodM = 2.4;

    /// <summary>Diameter of an earth rod [m].</summary>
    public const double RodDiameterM = 0.016;

    /// <summary>Distance between fence posts [m]; common practice, no source.</summary>
    public const double PostSpacingM = 2.5;

    /// <summary>Width of the gate [m]; common practice, no source.</summary>
    public const double GateM = 3;

    // Aimed at for the rods together; common practice, no source. More than four rods: ask for an earthing design.
    private const double AimOhm = 30;
    private const int MostRods = 4;
    private const double UsualMarginM = 3;

    /// <summary>Sizes light, earth and fence.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="rack">The racks.</param>
    /// <param name="shelf">The cards.</param>
    /// <returns>The guard.</returns>
    public static Guard Of(Brief brief, Survey survey, Rack rack, CardShelf shelf)
    {
        var rodOhm = EarthRod.ResistanceOhm(survey["soil-resistivity"], RodM, RodDiameterM);
        var rods = brief.Guard.EarthRodCount ?? Math.Clamp((int)Math.Ceiling(rodOhm / AimOhm), 2, MostRods);
        var notes = new List<ChoiceNote>();
        if (brief.Guard.EarthRodCount is null)
        {
            notes.Add(
                new(
                    "earth rods",
                    Invariant($"{rods} of {RodM} m"),
                    Invariant(
                        $"towards {AimOhm} ohm, two at least and {MostRods} at most; at least one rod length apart; common practice, no source"
                    )
                )
            );
        }

        var marginM = brief.Guard.FenceMarginM ?? UsualMarginM;
        if (brief.Guard is { HasFence: true, FenceMarginM: null })
        {
            notes.Add(
                new(
                    "free ground inside the fence",
                    Invariant($"{UsualMarginM} m"),
                    "room to wash modules and to keep the fence's shade away; common practice, no source"
                )
            );
        }

        var lengthM = (rack.Size.LengthMm / 1000) + (2 * marginM);
        var depthM = RacksDepthM(rack) + (2 * marginM);
        var hasFence = brief.Guard.HasFence;
        return new(
            brief.Guard.Light is { } light ? shelf.Find<LightCard>(light) : null,
            rods,
            rodOhm,
            RodsOhm(survey, rods),
            hasFence ? lengthM : 0,
            hasFence ? depthM : 0,
            hasFence ? Ground.Fence.Along(2 * (lengthM + depthM), PostSpacingM, GateM) : null,
            notes
        );
    }

    // More than ten in a line gain next to nothing, and the formula ends there.
    private static double RodsOhm(Survey survey, int rods) =>
        EarthRod.InLineOhm(survey["soil-resistivity"], RodM, RodDiameterM, Math.Min(10, rods), 2 * RodM);

    /// <summary>Ground depth that the racks take, one behind the other with a free way between them [m].</summary>
    /// <param name="rack">The racks.</param>
    /// <returns>Depth [m].</returns>
    public static double RacksDepthM(Rack rack)
    {
        var planM = rack.Size.DepthMm / 1000 * Math.Cos(rack.Setting.TiltDeg * Math.PI / 180);
        return (rack.Grid.RackCount * planM) + ((rack.Grid.RackCount - 1) * PitchWayM(rack));
    }

    /// <summary>
    /// Free way between racks [m]: three times the rise of the plane keeps the sun at 18 deg of elevation free of shade.
    /// </summary>
    /// <param name="rack">The racks.</param>
    /// <returns>Way [m].</returns>
    public static double PitchWayM(Rack rack) =>
        Math.Max(2, 3 * rack.Size.DepthMm / 1000 * Math.Sin(rack.Setting.TiltDeg * Math.PI / 180));

    /// <summary>Findings of light, earth and fence.</summary>
    /// <returns>The findings.</returns>
    public IEnumerable<Finding> Findings()
    {
        yield return new(
            "guard/earth",
            FindingStatus.Look,
            Invariant(
                $"one {RodM} m rod should give about {RodOhm:0} ohm, {RodCount} in a line, {2 * RodM} m apart, about {EarthOhm:0} ohm; measure in the dry season and add rods until the target of the local rules is met"
            ),
            EarthOhm,
            AimOhm,
            "ohm",
            "BS 7430 rod formula; the aim is common practice, no source"
        );
        yield return new(
            "guard/lightning",
            FindingStatus.Unchecked,
            "need and height of a lightning rod: not worked out in this version",
            null,
            null,
            "",
            ""
        );
        if (Light is not null)
        {
            yield return new(
                "guard/light",
                FindingStatus.Unchecked,
                "battery and light on the ground of the night light: not worked out in this version",
                null,
                null,
                "",
                ""
            );
        }
    }
}

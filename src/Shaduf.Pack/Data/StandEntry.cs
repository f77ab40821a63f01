using Shaduf.Station;
using static Shaduf.Pack.DesignEntries;

namespace Shaduf.Pack;

/// <summary>The stands under the tanks; masses and counts are of all of them, sizes of one.</summary>
/// <param name="StandCount">Stands, one for each tank.</param>
/// <param name="LegCount">Legs of one.</param>
/// <param name="BayCount">Bays of diagonals.</param>
/// <param name="FloorMm">Underside of the tank above ground.</param>
/// <param name="SideMm">Distance of the outer legs, both ways.</param>
/// <param name="JoistPitchMm">Distance of the joists.</param>
/// <param name="MassKg">Steel with plates.</param>
/// <param name="SwayFactor">Factor on the full load at which it sways out of place.</param>
/// <param name="SteelStopsMPerS">Wind at which its steel and feet stop holding.</param>
/// <param name="BlocksStopMPerS">Wind at which its blocks stop holding.</param>
/// <param name="BlockMm">Side of a block.</param>
/// <param name="BlockDepthMm">Depth of a block.</param>
/// <param name="BlockWidthMm">Its side across the rows; a strip is longer along them.</param>
/// <param name="FootingCount">Footings of all stands.</param>
/// <param name="FootingForm">Block under each leg, or strip under each row.</param>
/// <param name="ConcreteM3">Concrete of all blocks.</param>
/// <param name="IsDrawingReleased">Whether the book has its drawings: none while a finding of it stops or is unchecked.</param>
/// <param name="Parts">Parts that are alike, of all stands.</param>
public sealed record StandEntry(
    int StandCount,
    int LegCount,
    int BayCount,
    double FloorMm,
    double SideMm,
    double JoistPitchMm,
    double MassKg,
    double SwayFactor,
    double SteelStopsMPerS,
    double BlocksStopMPerS,
    double BlockMm,
    double BlockDepthMm,
    double BlockWidthMm,
    int FootingCount,
    string FootingForm,
    double ConcreteM3,
    bool IsDrawingReleased,
    IReadOnlyList<PartEntry> Parts
)
{
    /// <summary>The entry of a design.</summary>
    internal static StandEntry? Of(Design design)
    {
        if (design.Works.Stand is not { } stands)
        {
            return null;
        }

        var (plan, strength) = (stands.Stand.Plan, stands.Strength);
        return new(
            stands.Count,
            plan.LegCount,
            plan.BayCount,
            R(plan.FloorMm),
            R(plan.SideMm),
            R(plan.PitchMm),
            R(stands.MassKg),
            Math.Round(strength.Buckling.SwayFactor, 1, MidpointRounding.AwayFromZero),
            Math.Round(
                Math.Min(strength.SteelStopsMPerS(), strength.FeetStopMPerS()),
                1,
                MidpointRounding.AwayFromZero
            ),
            Math.Round(stands.BlocksStopMPerS(), 1, MidpointRounding.AwayFromZero),
            R(stands.Footings.Block.LengthMm),
            R(stands.Footings.Block.DepthMm),
            R(stands.Footings.Block.WidthMm),
            stands.Footings.Count,
            stands.Footings.Form.ToString().ToLowerInvariant(),
            R(stands.Footings.ConcreteM3),
            StandChapter.Withholding(design).Count == 0,
            PartsOf(stands.Stand.Steel, stands.Count)
        );
    }
}

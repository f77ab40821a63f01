using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What the chosen array would do in another plane.</summary>
/// <param name="Facing">Tilt and direction.</param>
/// <param name="WorstMonth">Month with the least light for the demand, 0 to 11.</param>
/// <param name="LightShare">Light for the demand in that month, over that of the chosen plane in its own worst month.</param>
/// <param name="MetShare">Share of the demand that the chosen station would meet in its worst month.</param>
public sealed record FacingRow(PlaneFacing Facing, int WorstMonth, double LightShare, double MetShare);

/// <summary>The chosen tilt and direction beside others.</summary>
/// <param name="Chosen">The chosen plane.</param>
/// <param name="ByThumb">The plane by the rule of thumb: tilted by the latitude, at least 10 deg, towards the equator.</param>
/// <param name="Rows">Tilts from flat to 45 deg, or to the chosen one if that is steeper, in the chosen direction, flattest first.</param>
public sealed record FacingTable(FacingRow Chosen, FacingRow ByThumb, IReadOnlyList<FacingRow> Rows)
{
    private const double StepDeg = 5;
    private const double UsualMostTiltDeg = 45;

    /// <summary>Runs the chosen station in other planes, behind the shade of the chosen one.</summary>
    /// <param name="design">The design so far.</param>
    /// <returns>The table.</returns>
    public static FacingTable Of(Design design)
    {
        var (sky, sizing, demand) = (design.Sky, design.Sizing, design.Demand);
        var (_, chosenLight) = FacingSearch.WorstMonth(sky.Light, demand.M3PerDay);
        FacingRow Row(PlaneFacing facing)
        {
            var light = PlaneYear.Of(sky.Ready, sky.Plane.Setting with { Facing = facing });
            var (month, worst) = FacingSearch.WorstMonth(light, demand.M3PerDay);
            var moduleW = Sizing.ModuleYearW(sizing.Choice.Module, sky.Year, light);
            var run = YearRun.Run(sizing.Inputs(demand) with { ModuleW = moduleW });
            return new(facing, month, chosenLight > 0 ? worst / chosenLight : 1, run.WorstShare);
        }

        var latitudeDeg = design.Brief.Site.LatitudeDeg;
        var thumb = new PlaneFacing(
            Math.Clamp(Math.Round(Math.Abs(latitudeDeg)), FacingSearch.LeastTiltDeg, 90),
            latitudeDeg >= 0 ? 180 : 0
        );
        return new(
            Row(sky.Facing),
            Row(thumb),
            [
                .. Enumerable
                    .Range(0, 1 + (int)Math.Ceiling(Math.Max(UsualMostTiltDeg, sky.Facing.TiltDeg) / StepDeg))
                    .Select(i => Row(new(StepDeg * i, sky.Facing.AzimuthDeg))),
            ]
        );
    }

    /// <summary>Flattest tilt that is chosen [deg]: flatter glass is not washed by the rain.</summary>
    public const double LeastTiltDeg = FacingSearch.LeastTiltDeg;

    /// <summary>The rule of thumb beside the choice.</summary>
    public ChoiceNote Note =>
        new(
            "tilt and direction by the rule of thumb",
            Invariant($"{ByThumb.Facing.TiltDeg:0} deg towards {Towards(ByThumb.Facing.AzimuthDeg)}"),
            Invariant(
                $"shown, not used: tilted by the latitude and at least {FacingSearch.LeastTiltDeg:0} deg, towards the equator (common practice, no source). It gives {Compared(ByThumb.LightShare)} light for the demand in the worst month and would meet {ByThumb.MetShare * 100:0.0} % of it with this array; the chosen plane meets {Chosen.MetShare * 100:0.0} %"
            )
        );

    /// <summary>A direction in words.</summary>
    /// <param name="azimuthDeg">Clockwise from true north [deg], 0 to 360.</param>
    /// <returns>'true north', or degrees.</returns>
    public static string Towards(double azimuthDeg) =>
        azimuthDeg switch
        {
            0 or 360 => "true north",
            90 => "true east",
            180 => "true south",
            270 => "true west",
            _ => Invariant($"{azimuthDeg:0} deg clockwise from true north"),
        };

    private static string Compared(double share) =>
        Math.Abs(share - 1) < 0.0005
            ? "the same"
            : Invariant($"{Math.Abs(share - 1) * 100:0.0} % {(share < 1 ? "less" : "more")}");
}

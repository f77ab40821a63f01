using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>How the wind pushes on a stand and its tank, over the pressure of the gust at the tank's top.</summary>
/// <param name="TankCoefficient">c_f of the tank.</param>
/// <param name="TowerShare">Gust at the platform over that at the tank's top.</param>
/// <param name="Faces">Solid and gross area of the face that looks along y, and of that along x.</param>
public sealed record StandWind(double TankCoefficient, double TowerShare, (StandFace AlongY, StandFace AlongX) Faces)
{
    // Ribs and pipes on a round tank; a cube of panels. Judgement, no source.
    private const double LeastRoundCoefficient = 0.80;
    private const double LeastSquareCoefficient = 1.4;

    // Smooth plastic.
    private const double RoughnessMm = 0.05;

    /// <summary>Area of platform, rail, ladder and pipes at the platform, its coefficient in it [m²]; judgement, no source.</summary>
    public const double PlatformM2 = 2.0;

    /// <summary>The same for each metre of height [m²/m]; judgement, no source.</summary>
    public const double LadderM2PerM = 0.30;

    /// <summary>The wind on a stand.</summary>
    /// <param name="stand">The stand.</param>
    /// <param name="wind">The wind at the tank's top.</param>
    /// <returns>Its coefficients.</returns>
    public static StandWind Of(TankStand stand, RackWind wind)
    {
        var tank = stand.Plan.Tank;
        var (widthM, heightM) = (tank.WidthMm / 1000, tank.HeightMm / 1000);
        var coefficient = tank.IsRound
            ? Math.Max(
                LeastRoundCoefficient,
                CylinderDrag.Coefficient(widthM, Math.Max(1, wind.PeakKNPerM2 * 1000), RoughnessMm)
            )
            : Math.Max(LeastSquareCoefficient, BlockDrag.Coefficient(widthM, widthM, heightM));
        return new(
            coefficient,
            WindPressure.ExposureFactor(wind.Terrain, stand.Plan.FloorMm / 1000)
                / WindPressure.ExposureFactor(wind.Terrain, wind.HeightM),
            (StandFace.Of(stand, new(0, 1, 0)), StandFace.Of(stand, new(1, 0, 0)))
        );
    }

    /// <summary>Push on the tower along a heading in a gust of 1 kN/m² at the tank's top [N].</summary>
    /// <param name="way">Heading, length 1.</param>
    public double TowerN(Point way)
    {
        var (y, x) = (Math.Abs(way.YMm), Math.Abs(way.XMm));
        var (alongY, alongX) = (Faces.AlongY, Faces.AlongX);
        var face =
            y > 0.9 ? alongY.PushM2
            : x > 0.9 ? alongX.PushM2
            : Math.Max(alongY.PushM2 * alongY.DiagonalFactor, alongX.PushM2 * alongX.DiagonalFactor);
        return face * TowerShare * 1000;
    }
}

/// <summary>A face of the tower that looks into the wind.</summary>
/// <param name="SolidM2">Solid area of one face [m²].</param>
/// <param name="GrossM2">Its outline [m²].</param>
/// <param name="FrameCount">Braced frames one behind the other: two, or more where legs stand between.</param>
public sealed record StandFace(double SolidM2, double GrossM2, int FrameCount)
{
    private double SolidityShare => Math.Min(1, SolidM2 / GrossM2);

    /// <summary>Coefficient times area of all frames: front and rear by the tower's coefficient, each between them as half of it [m²].</summary>
    public double PushM2 => TowerDrag.SquareCoefficient(SolidityShare) * SolidM2 * FrameCount / 2;

    /// <summary>Coefficient of front and rear face.</summary>
    public double Coefficient => TowerDrag.SquareCoefficient(SolidityShare);

    /// <summary>Factor for wind on the diagonal.</summary>
    public double DiagonalFactor => TowerDrag.DiagonalFactor(SolidityShare);

    /// <summary>The outer face across a heading, the one of both with more steel.</summary>
    /// <param name="stand">The stand.</param>
    /// <param name="way">Heading along x or y, length 1.</param>
    internal static StandFace Of(TankStand stand, Point way)
    {
        var plan = stand.Plan;
        double Along(Point at) => at.DotMm2(way);
        double Solid(double atMm) =>
            stand
                .Skeleton.Members.Where(member => IsTower(member.Role))
                .Where(member => Math.Abs(Along(member.From) - atMm) < 1 && Math.Abs(Along(member.To) - atMm) < 1)
                .Sum(member => member.LengthMm * member.Profile.Bar.SideMm * 1e-6);
        var solid = Math.Max(Solid(0), Solid(plan.SideMm));
        return new(
            solid,
            (plan.SideMm + plan.Sections.Leg.SideMm) * (plan.TopMm - StandPlan.FootMm) * 1e-6,
            way.XMm > 0.5 ? plan.LegCount - plan.RowCount : 2
        );
    }

    /// <summary>Whether a member belongs to the tower.</summary>
    internal static bool IsTower(string role) =>
        role is TankStand.LegRole or TankStand.DiagonalRole or TankStand.HorizontalRole or TankStand.PlanRole;
}

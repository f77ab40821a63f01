using Shaduf.Parts;
using Shaduf.Steel;
using Shaduf.Water;
using Shaduf.Workshop;

namespace Shaduf.Station;

/// <summary>A stand between its pegs and the first water: waiting for the concrete, raising its rows on ropes, setting the tank.</summary>
/// <param name="Stands">The stands.</param>
/// <param name="AirDegC">Mean air of the twelve months [°C].</param>
public sealed record StandErection(StandDesign Stands, IReadOnlyList<double> AirDegC)
{
    /// <summary>Lean of the lifting pole from upright [deg].</summary>
    public const double PoleLeanDeg = 15;

    /// <summary>Slope of its back guy from level [deg].</summary>
    public const double PoleGuyDeg = 40;

    /// <summary>Lift over the mass: start and friction.</summary>
    /// <source>judgement, no source</source>
    public const double LiftFactor = 1.3;

    // A tank in the wind while it is lifted: the coefficient of a module held square. Judgement.
    private const double HeldCoefficient = 1.2;
    private const double AirKgPerM3 = 1.225;
    private const double SlingSlopeDeg = 60;

    private StandPlan Plan => Stands.Stand.Plan;

    private RackWind Wind => Stands.Strength.Wind;

    /// <summary>Basic wind speed of the stage: once in two years, up to three days, 20 m/s at least [m/s].</summary>
    public double StageMPerS =>
        Math.Max(Erection.LeastStageMPerS, Wind.BasicMPerS * WindPressure.ReturnFactor(Erection.StageYears));

    /// <summary>Height of the legs' heads, where ropes are tied [m].</summary>
    public double TiedM => Plan.TopMm / 1000;

    /// <summary>Force of the stage's wind on a row of legs that stands on ropes, without partial factors [kN].</summary>
    public double WindKN =>
        Erection.DragCoefficient
        * Stands.Strength.Drag.Faces.AlongY.SolidM2
        * WindPressure.PeakNPerM2(StageMPerS, Wind.Terrain, Math.Max(1, TiedM), Wind.HillFactor, Wind.AirKgPerM3)
        / 1000;

    private double PullKN =>
        GuyRope.PullKN(Erection.UnfavourableFactor * WindKN, TiedM / 2, Math.Max(0.5, TiedM), Erection.RopeDeg);

    /// <summary>Ropes to each side of a row: two at least, and so many that an anchor holds the pull that proves it.</summary>
    public int RopesASide => Math.Max(2, (int)Math.Ceiling((Erection.ProofFactor * PullKN / Erection.AnchorKN) - 1e-9));

    /// <summary>Pull of one rope [kN].</summary>
    public double RopeKN => PullKN / RopesASide;

    private IReadOnlyList<Part> Row =>
        [
            .. Stands.Stand.Steel.Parts.Where(part =>
                StandFace.IsTower(part.Role)
                && Math.Abs(part.Shape.Start.YMm - Plan.SideMm) < 1
                && Math.Abs(part.Shape.End.YMm - Plan.SideMm) < 1
            ),
        ];

    /// <summary>Mass of the heavier row of legs with its horizontals and diagonals [kg].</summary>
    public double RowKg => Row.Sum(part => part.MassKg);

    /// <summary>Height of its centre of gravity over the feet [mm].</summary>
    public double RowCentreMm =>
        (Row.Sum(part => part.MassKg * (part.Shape.Start.ZMm + part.Shape.End.ZMm) / 2) / RowKg) - StandPlan.FootMm;

    /// <summary>Heaviest single piece.</summary>
    public Part Heaviest => Stands.Stand.Steel.Parts.MaxBy(part => part.MassKg)!;

    /// <summary>Pull in a leg of a sling of two at 60 deg with the row on it [kN].</summary>
    public double SlingKN => Sling.LegKN(RowKg * Gravity.MPerS2 / 1000, 2, SlingSlopeDeg);

    private double HoistedKN => LiftFactor * RowKg * Gravity.MPerS2 / 1000;

    /// <summary>Force along the lifting pole that carries the row [kN].</summary>
    public double PoleKN => LiftingPole.PoleKN(HoistedKN, PoleLeanDeg, PoleGuyDeg);

    /// <summary>Pull of the pole's back guy [kN].</summary>
    public double PoleGuyKN => LiftingPole.GuyKN(HoistedKN, PoleLeanDeg, PoleGuyDeg);

    /// <summary>Mass of the empty tank [kg].</summary>
    public double TankKg => Plan.Tank.EmptyKg;

    /// <summary>Push on the tank that hangs in the wind at which lifting stops [N].</summary>
    public double TankPushN =>
        HeldCoefficient
        * AirKgPerM3
        / 2
        * Math.Pow(Erection.StopsMPerS.Lifting, 2)
        * Plan.Tank.WidthMm
        * Plan.Tank.HeightMm
        * 1e-6;

    /// <summary>Steps that wait for the concrete.</summary>
    /// <source>judgement, no source</source>
    public IReadOnlyList<CureStep> Steps { get; } =
    [
        new("legs set on their bolts", 0.60, 3),
        new("deck and empty tank", 0.70, 7),
        new("tank filled", 0.90, 14),
        new("the wind of the design", 1, 28),
    ];

    /// <summary>What is done, and looked at, from the pegs to the first water.</summary>
    public IReadOnlyList<string> Work => StandErectionSteps.Of(this);
}

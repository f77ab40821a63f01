using Shaduf.Ground;
using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Steel;
using Shaduf.Water;
using Shaduf.Workshop;

namespace Shaduf.Station;

/// <summary>The bare frame in a wind from one side.</summary>
/// <param name="DragM2">Drag coefficient times the area that the wind sees [m2].</param>
/// <param name="HeightM">Height of its middle above the ground [m].</param>
public sealed record FrameDrag(double DragM2, double HeightM);

/// <summary>A rack on the days between its open pits and the concrete that holds it: wind, ropes, lifting, waiting.</summary>
/// <param name="Rack">The rack.</param>
/// <param name="Footings">Its footings.</param>
/// <param name="Wind">The wind of the finished rack.</param>
/// <param name="AirDegC">Mean air of the twelve months [°C].</param>
public sealed record Erection(Rack Rack, Footings Footings, RackWind Wind, IReadOnlyList<double> AirDegC)
{
    /// <summary>The rack. No copy takes another one: what is worked out of it alone is kept.</summary>
    public Rack Rack { get; } = Rack;

    /// <summary>The checked rack.</summary>
    public required RackStrength Strength { get; init; }

    /// <summary>Pressure that may be put on the ground under a footing [kPa].</summary>
    public required double GroundKPa { get; init; }

    /// <summary>What would hold where ropes or props do not, in words; begins with a full stop.</summary>
    public string Advice { get; init; } = "";

    /// <summary>Most ropes to each side of a frame.</summary>
    /// <source>judgement, no source: more are not set and kept tight alike</source>
    public const int MostRopes = 6;

    /// <summary>Whether ropes and props hold it.</summary>
    public bool Holds => RopesASide <= MostRopes && Props.Holds;

    /// <summary>What carries the frame while its columns hang in the open pits.</summary>
    public Propping Props => Propping.Of(this, Strength, GroundKPa);

    /// <summary>Return period of the wind while the frame stands on ropes: up to three days [years].</summary>
    /// <source>EN 1991-1-6:2005, table 3.1, from memory</source>
    public const double StageYears = 2;

    /// <summary>Pull that proves an anchor over the pull it is for.</summary>
    /// <source>judgement, no source</source>
    public const double ProofFactor = 1.5;

    /// <summary>Least distance of an anchor from a pit [mm]: beyond the boards of the props.</summary>
    /// <source>judgement, no source</source>
    public const double ClearOfPitMm = 1500;

    /// <summary>Steepest slope of the ropes from level [deg].</summary>
    public const double RopeDeg = 45;

    /// <summary>Thickness of a log that is buried as an anchor [mm].</summary>
    public const double LogMm = 300;

    /// <summary>Its length, along the row [mm].</summary>
    public const double LogLongMm = 600;

    /// <summary>Ground over it [mm]; judgement, no source.</summary>
    public const double LogDepthMm = 800;

    /// <summary>What a buried log of 0.3 x 0.3 x 0.6 m holds [kN]; from memory, to be proved by a pull.</summary>
    public const double AnchorKN = 4;

    /// <summary>Mean winds at which work with modules stops, lifting stops, and nobody is on a ladder [m/s].</summary>
    /// <source>judgement, no source</source>
    public static (double Modules, double Lifting, double Ladders) StopsMPerS { get; } = (8, 9, 10);

    /// <summary>Mean air below which no concrete is cast [°C].</summary>
    public const double ColdestDegC = 5;

    // Advised for stages of up to three months; from memory.
    internal const double LeastStageMPerS = 20;
    internal const double UnfavourableFactor = 1.5;
    internal const double FavourableWeightFactor = 0.9;
    internal const double DragCoefficient = 2;

    private const double LiftSlopeDeg = 60;
    private const int MostPeople = 8;

    /// <summary>Basic wind speed of the stage [m/s].</summary>
    public double StageMPerS => Math.Max(LeastStageMPerS, Wind.BasicMPerS * WindPressure.ReturnFactor(StageYears));

    /// <summary>Pressure of a gust of the stage at the top edge [kN/m2].</summary>
    public double StageKNPerM2 => WindPressure.PeakNPerM2(StageMPerS, Wind.Terrain, Wind.HeightM) / 1000;

    /// <summary>The bare frame in a wind across the row.</summary>
    public FrameDrag Across => field ??= Drag(step => step.YMm);

    /// <summary>The bare frame in a wind along the row.</summary>
    public FrameDrag Along => field ??= Drag(step => step.XMm);

    /// <summary>The bare frame as it is seen from above.</summary>
    public FrameDrag Above => field ??= Drag(step => step.ZMm);

    /// <summary>Push square to the wind over the push along it.</summary>
    /// <source>judgement, no source: bars of sharp edges, gusts that come down or up</source>
    public const double SquareShare = 0.5;

    /// <summary>Force of the stage's wind straight down or up on the bare frame, without partial factors [kN].</summary>
    public double PressKN => SquareShare * Above.DragM2 * StageKNPerM2;

    /// <summary>The same in the wind at which nobody is on a ladder any more [kN].</summary>
    public double PressAtStopKN =>
        SquareShare * Above.DragM2 * WindPressure.PeakNPerM2(StopsMPerS.Ladders, Wind.Terrain, Wind.HeightM) / 1000;

    /// <summary>What the stage's wind lifts beyond the frame's weight, with partial factors: the ropes hold it down [kN].</summary>
    public double LiftKN =>
        Math.Max(0, (UnfavourableFactor * PressKN) - (FavourableWeightFactor * FrameKg * Gravity.MPerS2 / 1000));

    /// <summary>The worse of both.</summary>
    public FrameDrag Worst => new[] { Across, Along }.MaxBy(drag => drag.DragM2 * drag.HeightM)!;

    /// <summary>Force of the stage's wind on the bare frame, without partial factors [kN].</summary>
    public double WindKN => Worst.DragM2 * StageKNPerM2;

    /// <summary>Height of the lowest column's head, where ropes are tied [m].</summary>
    public double TiedM =>
        Rack.Skeleton.Feet.Min(foot => Rack.Setting.AboveGroundMm(Rack.Skeleton.Members[foot.Member].To)) / 1000;

    /// <summary>Pull of all ropes of one side together, with the partial factor: the wind's moment, and its lift on all four sides [kN].</summary>
    public double PullKN =>
        GuyRope.PullKN(UnfavourableFactor * WindKN, Worst.HeightM, TiedM, RopeDeg)
        + (LiftKN / 4 / Math.Sin(RopeDeg * Math.PI / 180));

    /// <summary>Ropes to each side of one frame: two at least, and so many that an anchor holds the pull that proves it.</summary>
    public int RopesASide => Math.Max(2, (int)Math.Ceiling((ProofFactor * PullKN / AnchorKN) - 1e-9));

    /// <summary>Pull of one rope [kN].</summary>
    public double RopeKN => PullKN / RopesASide;

    /// <summary>Least breaking load of a rope, in whole kilonewtons [kN]: five times its pull, for knots, wear and old rope.</summary>
    /// <source>judgement, no source</source>
    public double BreakingKN => Math.Ceiling((5 * RopeKN) - 1e-9);

    /// <summary>Mass of one frame without modules [kg].</summary>
    public double FrameKg => Rack.Steel.MassKg;

    /// <summary>Centre of gravity of the frame from its low left corner: along, away from the low edge, above the ground there [mm].</summary>
    public Point CentreMm => Rack.Steel.CentreMm;

    /// <summary>Heaviest piece that is lifted when the frame is put together in its place.</summary>
    public Part Heaviest => Rack.Steel.Parts.MaxBy(part => part.MassKg)!;

    /// <summary>Pull in a leg of a sling of four at 60 deg with the whole frame on it [kN].</summary>
    public double SlingKN => Sling.LegKN(FrameKg * Gravity.MPerS2 / 1000, 4, LiftSlopeDeg);

    /// <summary>People for a mass at knuckle or shoulder height; null when it takes gear.</summary>
    /// <param name="massKg">The mass [kg].</param>
    /// <returns>How many.</returns>
    public static int? People(double massKg) =>
        Enumerable
            .Range(1, MostPeople)
            .Cast<int?>()
            .FirstOrDefault(people =>
                HandLift.TeamKg(HandLift.ManKg(LiftHeight.KnuckleOrShoulder), people!.Value) >= massKg
            );

    /// <summary>Steps that wait for the concrete; on one line of columns the modules wait longer.</summary>
    /// <source>judgement, no source</source>
    public IReadOnlyList<CureStep> Steps =>
        [
            new("props and ropes off", 0.50, 3),
            new("frame and rails loaded", 0.60, 3),
            Rack.Form.Lines == 1 ? new("modules, on one line of columns", 0.90, 7) : new("modules", 0.70, 7),
            new("the wind of the design", 1, 28),
        ];

    /// <summary>What is done, and looked at, from the open pits to the first module.</summary>
    public IReadOnlyList<string> Work => ErectionSteps.Of(this);

    /// <summary>Days from casting to a step in a month; null when it is too cold to cast.</summary>
    /// <param name="step">The step.</param>
    /// <param name="month">The month, January 0.</param>
    /// <returns>Days.</returns>
    public double? Days(CureStep step, int month) => step.DaysAt(AirDegC[month]);

    // Shape by shape: the length above ground, seen from the side that the wind comes from.
    private FrameDrag Drag(Func<Point, double> downwind)
    {
        var seen = Rack
            .Steel.Parts.Select(part =>
            {
                var (from, to) = (part.Shape.Start, part.Shape.End);
                var (low, high) = (Rack.Setting.AboveGroundMm(from), Rack.Setting.AboveGroundMm(to));
                var share = Math.Min(low, high) < 0 ? Math.Max(low, high) / Math.Abs(high - low) : 1;
                var (lengthMm, alongMm) = ((to - from).LengthMm, downwind(to - from));
                var acrossMm = Math.Sqrt(Math.Max(0, (lengthMm * lengthMm) - (alongMm * alongMm)));
                return (
                    AreaM2: Math.Max(0, share) * acrossMm * part.Section.SideMm * 1e-6,
                    HeightM: (Math.Max(0, Math.Min(low, high)) + Math.Max(low, high)) / 2000
                );
            })
            .ToList();
        var areaM2 = seen.Sum(each => each.AreaM2);
        return new(DragCoefficient * areaM2, seen.Sum(each => each.AreaM2 * each.HeightM) / areaM2);
    }
}

using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Between which speeds a pump may run, and how much water it may take.</summary>
/// <param name="LowestRatio">Lowest speed over the curve's own, 0.1 to 1.5.</param>
/// <param name="HighestRatio">Highest speed over the curve's own, from the lowest to 1.5.</param>
/// <param name="LargestFlowM3PerS">Most that source or licence allow [m3/s], above 0; may be infinite.</param>
public readonly record struct SpeedRange(double LowestRatio, double HighestRatio, double LargestFlowM3PerS);

/// <summary>An operating point with the power it takes.</summary>
/// <param name="Operating">The operating point.</param>
/// <param name="ShaftW">Power at the pump's shaft [W].</param>
/// <param name="PowerW">Power that must be had ahead of motor and drive [W]: what the point draws, or more if a slower one draws more.</param>
public sealed record PoweredPoint(OperatingPoint Operating, double ShaftW, double PowerW);

/// <summary>
/// What a pump delivers from the power it is given, made once for a pump in a system and then read hour by hour. The
/// drive turns the pump as fast as the power allows, up to the highest speed.
/// </summary>
/// <source>operating points over the speed; straight lines between them; this project's own, no source</source>
public sealed record PumpTable
{
    private const int Speeds = 64;
    private const int Cells = 512;
    private const double SPerH = 3600;

    // The operating points themselves are good to 1e-9 m.
    private const double CurveEndToleranceM = 1e-8;

    private readonly double[] flowsM3PerH;
    private readonly double cellsPerW;

    private PumpTable(IReadOnlyList<PoweredPoint> points)
    {
        Points = points;
        if (points.Count == 0)
        {
            flowsM3PerH = [0];
            return;
        }

        StartPowerW = points[0].PowerW;
        FullPowerW = points[^1].PowerW;
        FullFlowM3PerH = points[^1].Operating.FlowM3PerS * SPerH;
        HighestRatio = points[^1].Operating.SpeedRatio;
        flowsM3PerH = Grid(points);
        cellsPerW = points.Count > 1 ? Cells / (FullPowerW - StartPowerW) : 0;

        // Along a straight line flow over power rises or falls throughout, so its largest value is at an end of a cell.
        BestM3PerWh = flowsM3PerH
            .Select((flow, cell) => flow / (StartPowerW + (cellsPerW > 0 ? cell / cellsPerW : 0)))
            .Max();
    }

    /// <summary>The most water that any power lifts for each watt-hour [m3/Wh]; 0 when none is lifted.</summary>
    public double BestM3PerWh { get; }

    /// <summary>Power below which no water comes [W].</summary>
    public double StartPowerW { get; }

    /// <summary>Power at the highest speed [W]; more is of no use.</summary>
    public double FullPowerW { get; }

    /// <summary>Flow at the highest speed [m3/h].</summary>
    public double FullFlowM3PerH { get; }

    /// <summary>Highest speed used, over the curve's own; 0 when the pump is of no use here.</summary>
    public double HighestRatio { get; }

    /// <summary>
    /// Operating points from start to full power, each taking more power than the one before; empty when no speed in
    /// the range lifts water.
    /// </summary>
    public IReadOnlyList<PoweredPoint> Points { get; }

    /// <summary>Whether the highest speed was lowered to keep to the largest flow allowed.</summary>
    public bool CappedByFlow { get; private init; }

    /// <summary>Whether the highest speed was lowered to stay on the maker's curve: the lift is small for this pump.</summary>
    public bool CappedByCurve { get; private init; }

    /// <summary>Flow at a power; 0 below <see cref="StartPowerW"/>, the full flow above <see cref="FullPowerW"/>.</summary>
    /// <param name="powerW">Power offered to the drive [W], any number.</param>
    /// <returns>Flow [m3/h].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The power is NaN.</exception>
    /// <source>straight lines on an even grid of power; this project's own, no source</source>
    public double FlowM3PerH(double powerW)
    {
        if (powerW >= FullPowerW)
        {
            return FullFlowM3PerH;
        }

        if (powerW >= StartPowerW)
        {
            var place = (powerW - StartPowerW) * cellsPerW;
            var cell = Math.Min((int)place, Cells - 1);
            return flowsM3PerH[cell] + ((place - cell) * (flowsM3PerH[cell + 1] - flowsM3PerH[cell]));
        }

        Within.Require(powerW, double.NegativeInfinity, StartPowerW, "W");
        return 0;
    }

    /// <summary>Makes the table of a pump in a system.</summary>
    /// <param name="curve">The pump.</param>
    /// <param name="lift">The system, with the density of its water.</param>
    /// <param name="range">The speeds and the flow allowed.</param>
    /// <param name="inputWFromShaftW">Power drawn ahead of motor and drive [W] for a shaft power [W]; not less than it.</param>
    /// <returns>The table; without points, and zero throughout, when no speed in the range lifts water.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A figure is outside its range, or NaN, or the drive draws less than the shaft takes.
    /// </exception>
    /// <source>operating points over the speed, P = rho g Q H/eta; this project's own, no source</source>
    public static PumpTable Build(
        IPumpCurve curve,
        LiftSystem lift,
        SpeedRange range,
        Func<double, double> inputWFromShaftW
    )
    {
        RequireInRange(range);
        var lowest = Math.Max(range.LowestRatio, OperatingPoint.LeastSpeedRatio(curve, lift));
        if (lowest >= range.HighestRatio && lowest > range.LowestRatio)
        {
            return new([]);
        }

        var highest = range.HighestRatio;
        var cappedByCurve = OperatingPoint.Solve(curve, lift, highest).BeyondCurve;
        if (cappedByCurve)
        {
            highest = CurveEndRatio(curve, lift, lowest, highest);
        }

        var cappedByFlow = highest >= lowest && FlowM3PerS(curve, lift, highest) > range.LargestFlowM3PerS;
        if (cappedByFlow)
        {
            highest = JustBelow(curve.SpeedRatio(range.LargestFlowM3PerS, lift.HeadM(range.LargestFlowM3PerS)));
        }

        return new(highest >= lowest ? Rising(curve, lift, (lowest, highest), inputWFromShaftW) : [])
        {
            CappedByFlow = cappedByFlow,
            CappedByCurve = cappedByCurve,
        };
    }

    private static void RequireInRange(SpeedRange range)
    {
        Within.Require(range.LowestRatio, 0.1, 1.5, "of the curve's speed");
        Within.Require(range.HighestRatio, range.LowestRatio, 1.5, "of the curve's speed");
        Within.Require(range.LargestFlowM3PerS, double.Epsilon, double.PositiveInfinity, "m3/s");
    }

    private static double FlowM3PerS(IPumpCurve curve, LiftSystem lift, double speedRatio) =>
        OperatingPoint.Solve(curve, lift, speedRatio).FlowM3PerS;

    // Highest speed at which the operating point is still on the maker's curve; below the lowest when there is none.
    private static double CurveEndRatio(IPumpCurve curve, LiftSystem lift, double lowest, double highest)
    {
        double RoomM(double speedRatio) => curve.RoomM(lift, speedRatio);

        var atLowestM = RoomM(lowest);
        return atLowestM <= 0 ? 0 : JustBelow(Crossing.Of(RoomM, (lowest, atLowestM), highest, CurveEndToleranceM).X);
    }

    // A hair lower, so that rounding cannot put the flow above its limit.
    private static double JustBelow(double speedRatio) => speedRatio * (1 - 1e-9);

    // Close together where the pump starts: there the flow rises steeply with the speed.
    private static List<PoweredPoint> Rising(
        IPumpCurve curve,
        LiftSystem lift,
        (double Lowest, double Highest) speeds,
        Func<double, double> inputWFromShaftW
    )
    {
        var points = new List<PoweredPoint>(Speeds + 1);
        for (var i = 0; i <= Speeds; i++)
        {
            var share = (double)i / Speeds;
            var speedRatio = speeds.Lowest + (share * share * (speeds.Highest - speeds.Lowest));
            var operating = OperatingPoint.Solve(curve, lift, speedRatio);
            var shaftW = curve.ShaftW(operating.FlowM3PerS, speedRatio, lift.DensityKgPerM3);
            var powerW = inputWFromShaftW(shaftW);
            Within.Require(powerW, shaftW, 1e9, "W", nameof(inputWFromShaftW));

            // A faster point that takes no more power than a slower one is had as soon as the slower one can be passed.
            if (points.Count > 0 && powerW <= points[^1].PowerW)
            {
                powerW = points[^1].PowerW;
                points.RemoveAt(points.Count - 1);
            }

            points.Add(new(operating, shaftW, powerW));
        }

        return points;
    }

    private static double[] Grid(IReadOnlyList<PoweredPoint> points)
    {
        double[] powersW = [.. points.Select(point => point.PowerW)];
        double[] flows = [.. points.Select(point => point.Operating.FlowM3PerS * SPerH)];
        if (points.Count == 1)
        {
            return flows;
        }

        var grid = new double[Cells + 1];
        for (var i = 0; i <= Cells; i++)
        {
            var powerW = powersW[0] + ((double)i / Cells * (powersW[^1] - powersW[0]));
            grid[i] = StraightLine.Between(powersW, flows, Math.Min(powerW, powersW[^1]));
        }

        return grid;
    }
}

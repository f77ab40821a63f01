using Shaduf.Power;
using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>What gives the water, and how a pump draws from it. Depths are below the ground where the main begins.</summary>
/// <param name="RestDryM">Depth to the water in the morning, at the end of the dry season [m]; below 0 when it stands higher.</param>
/// <param name="YieldM3PerH">Largest flow that may be drawn [m³/h].</param>
/// <param name="Notes">What was chosen and why.</param>
public abstract record Source(double RestDryM, double YieldM3PerH, IReadOnlyList<ChoiceNote> Notes)
{
    /// <summary>What the main begins at, in words.</summary>
    public abstract string Head { get; }

    /// <summary>Lowest point of the source below the ground [m].</summary>
    public abstract double BottomM { get; }

    /// <summary>Fall of the level while the pump runs; null for open water, which does not fall.</summary>
    public abstract StepDrawdown? Drawdown { get; }

    /// <summary>What may be taken, month by month.</summary>
    public virtual SourceLimits Limits => SourceLimits.None;

    /// <summary>Settles the source of a brief.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="demand">The demand, whose season of pumping lowers the level of a well.</param>
    /// <returns>The source.</returns>
    public static Source Of(Brief brief, Survey survey, DemandYear demand) =>
        survey.Source switch
        {
            WellSurvey well => Well.Of(well, survey, demand),
            IntakeSurvey intake => Intake.Of(intake),
            _ => throw new InvalidOperationException("a kind of source without a step"),
        };

    /// <summary>Depth to the water at the end of a pumping day of the dry season at a flow [m].</summary>
    /// <param name="flowM3PerH">Flow [m³/h], 0 to 500.</param>
    /// <returns>Depth [m].</returns>
    public double LevelM(double flowM3PerH) => RestDryM + (Drawdown?.DrawdownM(flowM3PerH / 3600) ?? 0);

    /// <summary>Whether a pump is of the kind that draws from such a source.</summary>
    /// <param name="pump">The pump.</param>
    /// <returns>True when it is.</returns>
    public abstract bool Takes(PumpCard pump);

    /// <summary>Why a pump of the right kind does not go in; null when it does.</summary>
    /// <param name="pump">The pump.</param>
    /// <param name="survey">Settled figures.</param>
    /// <returns>Kind of the limit, and the reason in words.</returns>
    internal abstract (string Kind, string Says)? Refuses(PumpCard pump, Survey survey);

    /// <summary>Why a pump on its pipes must not run at its largest flow; null when it may.</summary>
    /// <param name="hydraulics">The pump on its pipes.</param>
    /// <param name="flowM3PerH">Its largest flow [m³/h].</param>
    /// <returns>The reason in words.</returns>
    internal abstract string? Forbids(Hydraulics hydraulics, double flowM3PerH);

    /// <summary>Why the source cannot give what is asked, whatever pump draws; null when it can.</summary>
    /// <param name="demand">What is asked.</param>
    /// <returns>The limit that binds.</returns>
    internal abstract BindingLimit? Exhausted(DemandYear demand);

    /// <summary>Pipes that may join the water to the main, cheapest first.</summary>
    /// <param name="ground">All that is settled before the choice.</param>
    /// <param name="pump">The pump.</param>
    /// <param name="flowM3PerH">Flow that suits it [m³/h].</param>
    /// <param name="shutOffM">Its head against a shut valve [m].</param>
    /// <returns>At least one pipe.</returns>
    internal abstract IReadOnlyList<SourcePipe> Pipes(
        SizingGround ground,
        PumpCard pump,
        double flowM3PerH,
        double shutOffM
    );

    /// <summary>What the motor asks of its speed.</summary>
    /// <param name="pump">The pump.</param>
    /// <param name="table">Its flow by power.</param>
    /// <param name="survey">Settled figures.</param>
    /// <returns>What it asks.</returns>
    internal abstract MotorNeed NeedOf(PumpCard pump, PumpTable table, Survey survey);

    /// <summary>What is built at the source.</summary>
    /// <param name="ground">All that was settled before the choice.</param>
    /// <param name="sizing">The choice.</param>
    /// <param name="electrics">Cables.</param>
    /// <returns>The works.</returns>
    internal abstract SourceBuild Build(SizingGround ground, Sizing sizing, Electrics electrics);

    /// <summary>The source in a year that is drier than a common one.</summary>
    /// <param name="pump">The pump.</param>
    /// <param name="pipe">Its pipe.</param>
    /// <param name="survey">Settled figures.</param>
    /// <returns>The year.</returns>
    internal abstract DryYear Drier(PumpCard pump, SourcePipe pipe, Survey survey);

    /// <summary>The working of the fall of the level at a flow; none for open water.</summary>
    /// <param name="flowM3PerS">Flow [m³/s].</param>
    /// <returns>The lines.</returns>
    internal abstract IEnumerable<Working.Line> Show(double flowM3PerS);

    /// <summary>The largest flow up to a limit at which something still holds.</summary>
    /// <param name="mostM3PerH">The limit [m³/h].</param>
    /// <param name="holds">What must hold; once it fails it fails at every larger flow.</param>
    /// <returns>Flow [m³/h].</returns>
    private protected static double LargestM3PerH(double mostM3PerH, Func<double, bool> holds)
    {
        var (most, tooMuch) = (1e-3, mostM3PerH);
        for (var round = 0; round < 40; round++)
        {
            var middle = (most + tooMuch) / 2;
            (most, tooMuch) = holds(middle) ? (middle, tooMuch) : (most, middle);
        }

        return most;
    }
}

/// <summary>A source in a year that is drier than a common one.</summary>
/// <param name="Says">What is lower, and by how much.</param>
/// <param name="Source">The source with its lower water.</param>
/// <param name="MostM3PerH">Largest flow that it then lets the pump draw [m³/h].</param>
internal sealed record DryYear(string Says, Source Source, double MostM3PerH);

/// <summary>What a motor asks of its speed.</summary>
/// <param name="LeastHz">Lowest frequency in continuous running [Hz].</param>
/// <param name="CoolingM3PerS">Least flow that cools it [m³/s]; 0 for a motor with its own fan.</param>
/// <param name="Says">What cools it, in words; null when it is the water.</param>
internal sealed record MotorNeed(double LeastHz, double CoolingM3PerS, string? Says)
{
    // Thrust bearing of a two-pole submersible motor in continuous running; makers' rule.
    internal const double LeastThreePhaseHz = 30;

    /// <summary>A motor in the water.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="coolingM3PerS">Least flow that cools it [m³/s].</param>
    /// <returns>What it asks.</returns>
    public static MotorNeed InWater(MotorSheet motor, double coolingM3PerS) =>
        new(
            motor.Kind == MotorKind.ThreePhase ? Math.Max(LeastThreePhaseHz, motor.LowestHz) : motor.LowestHz,
            coolingM3PerS,
            null
        );

    /// <summary>A dry motor.</summary>
    /// <param name="motor">The motor.</param>
    /// <returns>What it asks.</returns>
    public static MotorNeed InAir(MotorSheet motor) => new(motor.LowestHz, 0, "its own fan cools it down to that");
}

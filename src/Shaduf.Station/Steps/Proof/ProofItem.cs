using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>What a reading is of.</summary>
public enum ProofKind
{
    /// <summary>Open voltage of a string.</summary>
    OpenVoltage,

    /// <summary>Short-circuit current of a string.</summary>
    ShortCurrent,

    /// <summary>Insulation of a string.</summary>
    Insulation,

    /// <summary>Resistance of the earth.</summary>
    Earth,

    /// <summary>Insulation of motor and cable.</summary>
    MotorInsulation,

    /// <summary>Power of the array.</summary>
    ArrayPower,

    /// <summary>Flow at the measured power.</summary>
    Flow,

    /// <summary>Fall of the water level at the measured flow.</summary>
    Drawdown,

    /// <summary>Pressure at the start of the main at the measured flow.</summary>
    Gauge,

    /// <summary>Time in which the tank takes a volume.</summary>
    TankTime,
}

/// <summary>What counts as a miss.</summary>
public enum ProofSense
{
    /// <summary>Too much and too little.</summary>
    Both,

    /// <summary>Too little.</summary>
    AtLeast,

    /// <summary>Too much.</summary>
    AtMost,
}

/// <summary>How a reading was judged.</summary>
public enum ProofVerdict
{
    /// <summary>Within the tolerance.</summary>
    Meets,

    /// <summary>Outside the tolerance, but not by more than the reading is uncertain.</summary>
    Uncertain,

    /// <summary>Outside both.</summary>
    Misses,
}

/// <summary>One reading held against its promise.</summary>
/// <param name="Kind">What it is of.</param>
/// <param name="Where">Which string, or which run.</param>
/// <param name="Measured">The reading.</param>
/// <param name="Promised">What it should be in the conditions of the reading.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="ToleranceShare">Share of the promise by which it may differ.</param>
/// <param name="UncertainShare">How uncertain reading and conditions make the comparison, as a share of the promise.</param>
/// <param name="Sense">What counts as a miss.</param>
public sealed record ProofItem(
    ProofKind Kind,
    string Where,
    double Measured,
    double Promised,
    string Unit,
    double ToleranceShare,
    double UncertainShare,
    ProofSense Sense
)
{
    /// <summary>How much the reading differs, as a share of the promise.</summary>
    public double OffShare => Promised != 0 ? (Measured / Promised) - 1 : 0;

    // Only what counts as a miss.
    private double CountedShare =>
        Sense switch
        {
            ProofSense.AtLeast => Math.Min(0, OffShare),
            ProofSense.AtMost => Math.Max(0, OffShare),
            _ => OffShare,
        };

    /// <summary>The verdict.</summary>
    public ProofVerdict Verdict =>
        Math.Abs(CountedShare) <= ToleranceShare ? ProofVerdict.Meets
        : Math.Abs(CountedShare) <= ToleranceShare + UncertainShare ? ProofVerdict.Uncertain
        : ProofVerdict.Misses;

    /// <summary>-1 for a reading that misses because it is too small, 1 because it is too large, 0 for one that does not miss.</summary>
    public int Way => Verdict == ProofVerdict.Misses ? Math.Sign(CountedShare) : 0;

    /// <summary>The verdict as a status: a miss is for the certificate to tell, not for the design.</summary>
    public FindingStatus Status => Verdict == ProofVerdict.Meets ? FindingStatus.Holds : FindingStatus.Look;
}

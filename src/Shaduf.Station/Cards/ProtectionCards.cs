using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>A direct-current switch-disconnector of category DC-PV1 or DC-PV2, both poles.</summary>
/// <param name="Name">The name that briefs and price books use.</param>
/// <param name="About">What it is, for people.</param>
/// <param name="IsPlanningData">A generic card for planning.</param>
/// <param name="LargestV">Largest direct voltage [V].</param>
/// <param name="LargestA">Largest current at that voltage [A].</param>
public sealed record IsolatorCard(string Name, string About, bool IsPlanningData, double LargestV, double LargestA)
    : Card(Name, About, IsPlanningData);

/// <summary>A string fuse of the photovoltaic kind (gPV).</summary>
/// <param name="Name">The name that briefs and price books use.</param>
/// <param name="About">What it is, for people.</param>
/// <param name="IsPlanningData">A generic card for planning.</param>
/// <param name="RatedA">Rated current [A].</param>
/// <param name="LargestV">Largest direct voltage [V].</param>
public sealed record FuseCard(string Name, string About, bool IsPlanningData, double RatedA, double LargestV)
    : Card(Name, About, IsPlanningData);

/// <summary>Where an arrester may be used.</summary>
public enum ArresterSide
{
    /// <summary>Between array and drive.</summary>
    Direct,

    /// <summary>Behind the drive's filter.</summary>
    Motor,
}

/// <summary>A set of surge arresters for all conductors of one place.</summary>
/// <param name="Name">The name that briefs and price books use.</param>
/// <param name="About">What it is, for people.</param>
/// <param name="IsPlanningData">A generic card for planning.</param>
/// <param name="Side">Where it may be used.</param>
/// <param name="TypeNumber">Type, 1 (with 2) or 2.</param>
/// <param name="ContinuousV">Largest continuous voltage, Ucpv or Uc [V].</param>
/// <param name="LetThroughKV">Protection level Up [kV].</param>
/// <param name="DischargeKA">Nominal discharge current, 8/20 [kA].</param>
/// <param name="ImpulseKA">Impulse current a pole, 10/350 [kA]; 0 for type 2.</param>
public sealed record ArresterCard(
    string Name,
    string About,
    bool IsPlanningData,
    ArresterSide Side,
    int TypeNumber,
    double ContinuousV,
    double LetThroughKV,
    double DischargeKA,
    double ImpulseKA
) : Card(Name, About, IsPlanningData)
{
    // 1.1 times 400 V is a hair above 440 V in a computer.
    private const double ToleranceV = 1e-6;

    /// <summary>Whether it does what is needed.</summary>
    /// <param name="side">Where it would stand.</param>
    /// <param name="need">What is needed.</param>
    /// <returns>True when it does.</returns>
    public bool Serves(ArresterSide side, SurgeNeed need) =>
        Side == side
        && TypeNumber <= need.TypeNumber
        && ContinuousV >= need.LeastContinuousV - ToleranceV
        && LetThroughKV <= need.MostLetThroughKV
        && DischargeKA >= need.LeastDischargeKA
        && ImpulseKA >= need.LeastImpulseKA;
}

/// <summary>A filter between a drive and its motor's cable.</summary>
/// <param name="Name">The name that briefs and price books use.</param>
/// <param name="About">What it is, for people.</param>
/// <param name="IsPlanningData">A generic card for planning.</param>
/// <param name="Kind">Kind of filter.</param>
/// <param name="LargestA">Largest motor current [A].</param>
/// <param name="LargestV">Largest rated voltage of the motor [V].</param>
/// <param name="LongestCableM">Longest motor cable behind it [m].</param>
/// <param name="DropShare">Drop at its largest current as a share of the motor's voltage.</param>
public sealed record FilterCard(
    string Name,
    string About,
    bool IsPlanningData,
    FilterKind Kind,
    double LargestA,
    double LargestV,
    double LongestCableM,
    double DropShare
) : Card(Name, About, IsPlanningData);

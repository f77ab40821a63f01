using System.Reflection;
using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>A pump's flow and head.</summary>
/// <param name="FlowM3PerH">Flow [m³/h], 0 to 10000.</param>
/// <param name="HeadM">Head [m], 0 to 2000.</param>
public readonly record struct PumpDuty(double FlowM3PerH, double HeadM);

/// <summary>A grade of acceptance of rotodynamic pumps: how far a measured point may lie from the guaranteed one.</summary>
/// <param name="Name">Its name: 3B.</param>
/// <param name="FlowLowShare">Flow may be less by this share.</param>
/// <param name="FlowHighShare">Flow may be more by this share.</param>
/// <param name="HeadLowShare">Head may be less by this share.</param>
/// <param name="HeadHighShare">Head may be more by this share.</param>
/// <param name="PowerShare">Power may be more by this share.</param>
/// <param name="EfficiencyShare">Efficiency may be less by this share.</param>
/// <source>ISO 9906:2012, table 8, from memory; classes 1 and 2 of ISO 9906:1999 looked up</source>
public sealed record PumpGrade(
    string Name,
    double FlowLowShare,
    double FlowHighShare,
    double HeadLowShare,
    double HeadHighShare,
    double PowerShare,
    double EfficiencyShare
)
{
    /// <summary>All grades.</summary>
    public static IReadOnlyList<PumpGrade> All { get; } =
    [
        .. Csv.Embedded(Assembly.GetExecutingAssembly(), "PumpGrade.csv")
            .Select(row => new PumpGrade(
                row["grade"],
                row.Number("flow_low"),
                row.Number("flow_high"),
                row.Number("head_low"),
                row.Number("head_high"),
                row.Number("power"),
                row.Number("efficiency")
            )),
    ];

    /// <summary>A grade by its name.</summary>
    /// <param name="name">Name.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="InvalidOperationException">No such grade.</exception>
    public static PumpGrade Of(string name) => All.Single(grade => grade.Name == name);

    /// <summary>
    /// Whether a measured curve passes through or touches the cross of the guarantee. Near one measured point the curve is
    /// the line through it that falls as the maker's curve does there.
    /// </summary>
    /// <param name="guaranteed">The guaranteed point; flow and head above 0.</param>
    /// <param name="measured">The measured point, at the guaranteed speed.</param>
    /// <param name="fallMPerM3PerH">Fall of head for a rise of flow, 0 to 1000 [m per m³/h].</param>
    /// <returns>True when it does.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure outside its range, or NaN.</exception>
    /// <source>ISO 9906:2012: head within its tolerance at the guaranteed flow, or flow at the guaranteed head; a pump maker's lexicon</source>
    public bool IsTouched(PumpDuty guaranteed, PumpDuty measured, double fallMPerM3PerH)
    {
        Within.Require(guaranteed.FlowM3PerH, 1e-6, 10_000, "m³/h");
        Within.Require(guaranteed.HeadM, 1e-6, 2000, "m");
        Within.Require(measured.FlowM3PerH, 0, 10_000, "m³/h");
        Within.Require(measured.HeadM, 0, 2000, "m");
        Within.Require(fallMPerM3PerH, 0, 1000, "m per m³/h");
        var head = measured.HeadM - (fallMPerM3PerH * (guaranteed.FlowM3PerH - measured.FlowM3PerH));
        var isHead = Holds(head / guaranteed.HeadM, HeadLowShare, HeadHighShare);
        if (isHead || fallMPerM3PerH < 1e-9)
        {
            return isHead;
        }

        var flow = measured.FlowM3PerH + ((measured.HeadM - guaranteed.HeadM) / fallMPerM3PerH);
        return Holds(flow / guaranteed.FlowM3PerH, FlowLowShare, FlowHighShare);
    }

    private static bool Holds(double ratio, double lowShare, double highShare) =>
        ratio >= 1 - lowShare - 1e-12 && ratio <= 1 + highShare + 1e-12;
}

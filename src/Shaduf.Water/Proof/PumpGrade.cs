using System.Reflection;
using Shaduf.Working;

namespace Shaduf.Water;

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
}

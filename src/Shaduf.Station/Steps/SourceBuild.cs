using Shaduf.Money;
using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>What is built at the source: in a well, or beside open water.</summary>
public abstract record SourceBuild
{
    /// <summary>Findings on source, pump and what holds them.</summary>
    /// <param name="design">The design so far.</param>
    /// <returns>The findings.</returns>
    public abstract IEnumerable<Finding> Findings(Design design);

    /// <summary>The workings.</summary>
    /// <param name="choice">What was chosen.</param>
    /// <returns>The workings.</returns>
    public abstract IEnumerable<WorkingSheet> Show(Choice choice);

    /// <summary>Row of the table of labour for setting a pump.</summary>
    public abstract string SettingLabour { get; }

    /// <summary>The quantities.</summary>
    /// <param name="choice">What was chosen.</param>
    /// <returns>The quantities.</returns>
    public abstract IEnumerable<QuantityLine> Lines(Choice choice);
}

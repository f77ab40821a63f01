using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Cross-section of a pipe trench.</summary>
/// <param name="WidthM">Width [m].</param>
/// <param name="CoverM">Ground over the crown of the pipe [m].</param>
/// <param name="BeddingM">Bedding under the pipe [m]; 0 in ground free of stones.</param>
/// <param name="OverM">Chosen fill over the crown, free of stones [m].</param>
public sealed record TrenchSection(double WidthM, double CoverM, double BeddingM, double OverM);

/// <summary>What a metre of pipe trench is made of.</summary>
/// <param name="DigM2">Dug [m2, m3 a metre].</param>
/// <param name="BeddingM2">Bedding under the pipe [m2].</param>
/// <param name="SurroundM2">Chosen fill beside and over the pipe [m2].</param>
/// <param name="BackfillM2">Ground filled back above it [m2].</param>
/// <param name="PipeM2">Taken up by the pipe [m2].</param>
public sealed record TrenchParts(double DigM2, double BeddingM2, double SurroundM2, double BackfillM2, double PipeM2);

/// <summary>Quantities of a pipe trench.</summary>
public static class PipeTrench
{
    /// <summary>Parts of a metre of trench; together they fill what was dug.</summary>
    /// <param name="section">Width 0.2 to 2 [m] and wider than the pipe, cover 0.1 to 4 [m], bedding 0 to 0.5 [m], fill over the crown 0 to the cover [m].</param>
    /// <param name="outerMm">Outside diameter of the pipe [mm], 10 to 1000.</param>
    /// <returns>The parts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>geometry</source>
    public static TrenchParts Of(TrenchSection section, double outerMm)
    {
        Within.Require(outerMm, 10, 1000, "mm");
        var outerM = outerMm / 1000;
        Within.Require(section.WidthM, Math.Max(0.2, outerM), 2, "m");
        Within.Require(section.CoverM, 0.1, 4, "m");
        Within.Require(section.BeddingM, 0, 0.5, "m");
        Within.Require(section.OverM, 0, section.CoverM, "m");
        var pipeM2 = Math.PI / 4 * outerM * outerM;
        return new(
            section.WidthM * (section.BeddingM + outerM + section.CoverM),
            section.WidthM * section.BeddingM,
            (section.WidthM * (outerM + section.OverM)) - pipeM2,
            section.WidthM * (section.CoverM - section.OverM),
            pipeM2
        );
    }
}

using Shaduf.Ground;
using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>Digging and filling for pipes.</summary>
/// <param name="LengthM">Length [m].</param>
/// <param name="DepthM">Deepest [m].</param>
/// <param name="WidthM">Widest [m].</param>
/// <param name="DigM3">Dug, as it lies [m³].</param>
/// <param name="SandM3">Sand bought for bed and surround [m³]; 0 where the dug soil serves.</param>
/// <param name="FillM3">Filled back, as it lies in the end [m³].</param>
/// <param name="SurplusM3">Left over, loose [m³].</param>
public sealed record Trenches(
    double LengthM,
    double DepthM,
    double WidthM,
    double DigM3,
    double SandM3,
    double FillM3,
    double SurplusM3
)
{
    /// <summary>Chosen fill under the pipe [m]; from memory and judgement.</summary>
    public const double BedM = 0.10;

    // Widths, and how compacted fill shrinks; from memory and judgement.
    private const double NarrowM = 0.40;
    private const double WideM = 0.60;
    private const double DeepM = 1.1;
    private const double SlenderMm = 90;
    private const double BankToFillFactor = 0.9;

    /// <summary>Trenches for lengths of pipe.</summary>
    /// <param name="pipes">Each pipe with its length [m].</param>
    /// <param name="coverM">Ground over the crown [m].</param>
    /// <param name="ground">The ground.</param>
    /// <returns>The trenches; all zero for no pipe.</returns>
    public static Trenches Of(IEnumerable<(PipeCard Pipe, double LengthM)> pipes, double coverM, PipeGround ground)
    {
        var total = new Trenches(0, 0, 0, 0, 0, 0, 0);
        foreach (var (pipe, lengthM) in pipes.Where(each => each.LengthM > 0))
        {
            var section = SectionOf(pipe, coverM, ground);
            var parts = PipeTrench.Of(section, pipe.OuterMm);
            var sandM2 = ground.NeedsBedding ? parts.BeddingM2 + parts.SurroundM2 : 0;
            var fillM2 = parts.BackfillM2 + (ground.NeedsBedding ? 0 : parts.SurroundM2);
            var bankM2 = Math.Min(parts.DigM2, Spoil.BackfillBankM3(fillM2, BankToFillFactor));
            total = new(
                total.LengthM + lengthM,
                Math.Max(total.DepthM, section.BeddingM + (pipe.OuterMm / 1000) + section.CoverM),
                Math.Max(total.WidthM, section.WidthM),
                total.DigM3 + (lengthM * parts.DigM2),
                total.SandM3 + (lengthM * sandM2),
                total.FillM3 + (lengthM * fillM2),
                total.SurplusM3 + (lengthM * Spoil.SurplusLooseM3(parts.DigM2, bankM2, ground.SwellShare))
            );
        }

        return total;
    }

    private static TrenchSection SectionOf(PipeCard pipe, double coverM, PipeGround ground)
    {
        var bedM = ground.NeedsBedding ? BedM : 0;
        var outerM = pipe.OuterMm / 1000;
        var widthM =
            pipe.OuterMm <= SlenderMm && bedM + outerM + coverM <= DeepM ? NarrowM : Math.Max(WideM, outerM + NarrowM);
        return new(widthM, coverM, bedM, Math.Min(BedM, coverM));
    }
}

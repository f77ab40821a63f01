using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Depths to the water that this source cannot have, although each is a depth by itself.</summary>
internal static class MeasuredLimits
{
    /// <summary>Notes the depths of the brief's part <c>measured</c> that cannot be.</summary>
    /// <param name="fields">The brief's top mapping.</param>
    /// <param name="measured">What was measured; null when nothing was.</param>
    /// <param name="source">Where the water comes from.</param>
    public static void Check(FieldMap fields, MeasuredBrief? measured, SourceBrief source)
    {
        if (fields.AreSound("measured", "source"))
        {
            CheckAt(fields, "measured.", measured, source);
        }
    }

    /// <summary>Notes the depths that cannot be: below the bottom, or higher while it is pumped than before.</summary>
    /// <param name="fields">The mapping from which they were read.</param>
    /// <param name="before">What stands before the names of the readings in it.</param>
    /// <param name="measured">What was measured; null when nothing was.</param>
    /// <param name="source">Where the water comes from.</param>
    public static void CheckAt(FieldMap fields, string before, MeasuredBrief? measured, SourceBrief source)
    {
        if (measured is null)
        {
            return;
        }

        var bottomM = (source as BoreholeBrief)?.DepthM;
        Deep(fields, before + "rest", measured.RestM, bottomM);
        foreach (var (i, run) in measured.Runs.Index())
        {
            var place = Invariant($"{before}pump[{i + 1}].level");
            Deep(fields, place, run.LevelM, bottomM);
            if (run.LevelM < measured.RestM - measured.Instruments.LevelM)
            {
                fields.Complain(
                    place,
                    Invariant(
                        $"the water stands {run.LevelM:0.##} m deep while it is pumped, higher than before pumping at {measured.RestM:0.##} m"
                    ),
                    Invariant($"at least {measured.RestM:0.##} m, or a right 'rest', is accepted")
                );
            }
        }
    }

    private static void Deep(FieldMap fields, string place, double? depthM, double? bottomM)
    {
        if (depthM > bottomM)
        {
            fields.Complain(
                place,
                Invariant($"{depthM:0.##} m is below the bottom, {bottomM:0.##} m deep"),
                Invariant($"at most {bottomM:0.##} m is accepted")
            );
        }
    }
}

namespace Shaduf.Station;

/// <summary>How a rack holds its modules.</summary>
public enum RackType
{
    /// <summary>Modules slide into channels of two angles each.</summary>
    SlideIn,

    /// <summary>Modules are clamped on rails that lie on rafters.</summary>
    ClampedRails,
}

/// <summary>The form of a rack: what a search may change.</summary>
/// <param name="Type">How it holds its modules.</param>
/// <param name="Lines">Lines of columns, 1 to 2.</param>
/// <param name="TubeCount">Cross tubes or rafters along the row, 2 to 30; 0 for as many as the customary spacing asks for.</param>
/// <param name="Tube">Card of cross tubes and struts; null for the brief's, or the customary one.</param>
/// <param name="Column">Card of the columns; null likewise.</param>
/// <param name="Angle">Card of the bars along the row, the channels' angles or the rails; null likewise.</param>
public sealed record RackForm(RackType Type, int Lines, int TubeCount, string? Tube, string? Column, string? Angle)
{
    /// <summary>Free end over the span beside it at which the moment over the first tube is about that between the tubes: 0.41 where the load is even and the beam runs on over many.</summary>
    public const double UsualEndShare = 0.4;

    /// <summary>The same under a load at one place, a person: shorter ends, which is looked at where the usual ones do not hold; judgement, no source.</summary>
    public const double ShortEndShare = 0.2;

    /// <summary>Longest free end of the bars along the row over the span beside it, where custom has not fewer tubes.</summary>
    public double EndShare { get; init; } = UsualEndShare;

    /// <summary>The form that a brief asks for; what it leaves open by custom: channels on one line, rails on two.</summary>
    /// <param name="brief">The rack as the brief has it.</param>
    /// <returns>The form.</returns>
    public static RackForm Of(RackBrief brief) =>
        new(
            brief.Type,
            brief.Lines ?? (brief.Type == RackType.SlideIn ? 1 : 2),
            brief.Tubes ?? 0,
            brief.Tube,
            brief.Column,
            brief.Type == RackType.SlideIn ? brief.Angle : brief.Rail
        );
}

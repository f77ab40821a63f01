namespace Shaduf.Steel;

/// <summary>How slender a member of a frame is.</summary>
/// <param name="Member">Index of the member in the skeleton.</param>
/// <param name="Duty">What it is there for.</param>
/// <param name="LengthMm">Length over which it buckles [mm].</param>
/// <param name="GyrationMm">Least radius of gyration of its section [mm].</param>
public sealed record SlenderUse(int Member, MemberDuty Duty, double LengthMm, double GyrationMm)
{
    /// <summary>Buckling length over radius of gyration.</summary>
    public double SlendernessRatio => LengthMm / GyrationMm;

    /// <summary>The largest that is allowed.</summary>
    public double LimitRatio => SlendernessLimit.LimitRatio(Duty);

    /// <summary>One over the other; up to 1 holds.</summary>
    public double UseShare => SlendernessRatio / LimitRatio;
}

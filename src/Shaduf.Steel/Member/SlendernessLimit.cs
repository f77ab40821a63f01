using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>What a member is there for, as far as its slenderness goes.</summary>
public enum MemberDuty
{
    /// <summary>A column or a leg, pressed all the time.</summary>
    Column,

    /// <summary>A strut or a brace, pressed by wind or shaking.</summary>
    Brace,

    /// <summary>A tie, only pulled.</summary>
    Tie,
}

/// <summary>How slender a member may be whatever its forces are: one that bends by a kick or its own weight is no good neighbour to the sums.</summary>
public static class SlendernessLimit
{
    /// <summary>Largest buckling length over the radius of gyration.</summary>
    /// <param name="duty">What the member is there for.</param>
    /// <returns>180 for columns, 250 for braces, 350 for ties.</returns>
    /// <source>judgement, no source; older codes of steel building had such limits</source>
    public static double LimitRatio(MemberDuty duty) =>
        duty switch
        {
            MemberDuty.Column => 180,
            MemberDuty.Brace => 250,
            _ => 350,
        };

    /// <summary>Buckling length that a bar's share of a frame's buckling load stands for.</summary>
    /// <param name="inertiaMm4">Second moment of its section [mm4], 1 to 1e10.</param>
    /// <param name="criticalN">Its force when the frame buckles [N], 1 to 1e9.</param>
    /// <returns>π √(E I / N_cr) [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Euler; EN 1993-1-1:2005, 6.3.1.2 and 6.3.1.3 read backwards</source>
    public static double BucklingMm(double inertiaMm4, double criticalN)
    {
        Within.Require(inertiaMm4, 1, 1e10, "mm4");
        Within.Require(criticalN, 1, 1e9, "N");
        return Math.PI * Math.Sqrt(FrameModel.SteelElasticModulusNPerMm2 * inertiaMm4 / criticalN);
    }
}

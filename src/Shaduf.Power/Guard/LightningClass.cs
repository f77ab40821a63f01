namespace Shaduf.Power;

/// <summary>Class of lightning protection (IEC 62305): I lets the fewest flashes by, IV the most.</summary>
public enum LightningClass
{
    /// <summary>Class I: sphere of 20 m.</summary>
    I,

    /// <summary>Class II: sphere of 30 m.</summary>
    II,

    /// <summary>Class III: sphere of 45 m.</summary>
    III,

    /// <summary>Class IV: sphere of 60 m.</summary>
    IV,
}

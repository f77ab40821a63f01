namespace Shaduf.Working;

/// <summary>What a check came to.</summary>
public enum FindingStatus
{
    /// <summary>The check was made and the value is within its limit.</summary>
    Holds,

    /// <summary>The value is within its limit but leans on an assumption, or is close: a person should look.</summary>
    Look,

    /// <summary>The check could not be made: an input is unknown or the method is missing.</summary>
    Unchecked,

    /// <summary>The value breaks its limit: do not build this.</summary>
    Stop,
}

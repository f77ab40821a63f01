namespace Shaduf.Steel;

/// <summary>A frame can move without resistance: it is not a structure. The message names the place.</summary>
public sealed class MechanismException : InvalidOperationException
{
    /// <summary>An error without a place.</summary>
    public MechanismException() { }

    /// <summary>An error.</summary>
    /// <param name="message">What is loose.</param>
    public MechanismException(string message)
        : base(message) { }

    /// <summary>An error with its cause.</summary>
    /// <param name="message">What is loose.</param>
    /// <param name="cause">The cause.</param>
    public MechanismException(string message, Exception cause)
        : base(message, cause) { }
}

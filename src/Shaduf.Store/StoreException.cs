namespace Shaduf.Store;

/// <summary>
/// The store cannot do what was asked, for a reason outside the program: a full disk, a file that may not be written, a
/// database that does not answer, a store of a newer version. The message is for the person at the screen. What was
/// confirmed before stays kept.
/// </summary>
public sealed class StoreException : Exception
{
    /// <summary>A trouble in one sentence.</summary>
    /// <param name="message">What is wrong and what helps.</param>
    /// <param name="inner">What the database said; null when the store itself found it.</param>
    public StoreException(string message, Exception? inner = null)
        : base(message, inner) { }
}

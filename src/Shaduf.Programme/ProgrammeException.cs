namespace Shaduf.Programme;

/// <summary>A programme that cannot be: a ring of links, an unknown activity, a calendar without a working day.</summary>
/// <param name="message">What is wrong, by the names of the activities.</param>
public sealed class ProgrammeException(string message) : Exception(message);

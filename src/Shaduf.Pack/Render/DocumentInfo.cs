namespace Shaduf.Pack;

/// <summary>What a PDF file says about itself. The date is given, never read from a clock.</summary>
/// <param name="Title">Title.</param>
/// <param name="Author">Who issues it.</param>
/// <param name="Subject">What it is about: the station, the brief's hash.</param>
/// <param name="Program">Program and version that made it.</param>
/// <param name="Dated">Date of issue.</param>
public sealed record DocumentInfo(string Title, string Author, string Subject, string Program, DateTimeOffset Dated);

namespace Shaduf.Station;

/// <summary>Something that the design chose because the brief left it open, and why.</summary>
/// <param name="What">What was chosen: 'tilt of the modules'.</param>
/// <param name="Chosen">The choice, with its unit.</param>
/// <param name="Why">Why, in one sentence.</param>
public sealed record ChoiceNote(string What, string Chosen, string Why);

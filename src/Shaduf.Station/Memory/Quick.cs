namespace Shaduf.Station;

/// <summary>What makes a run quick while a person types: the choice is held, and steps are remembered.</summary>
/// <param name="Pin">The choice that is held.</param>
/// <param name="Memory">What the steps of the runs before came to.</param>
public sealed record Quick(Pin Pin, StepMemory Memory);

namespace Shaduf.Store.Writer;

/// <summary>Tells the tests where this program lies.</summary>
public sealed class Place;

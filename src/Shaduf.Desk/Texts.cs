namespace Shaduf.Desk;

/// <summary>Names the resource file of the desk's texts, Texts.resx: the English text is the key, and another language is another file beside it.</summary>
public sealed class Texts;

namespace Shaduf.Station;

/// <summary>One thing wrong in a file that a person wrote, with its place and what would be accepted.</summary>
/// <param name="File">The file's name as the user gave it.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1.</param>
/// <param name="Field">The field's path: <c>source.steps[2].drawdown</c>; 'file' for the file as a whole.</param>
/// <param name="Problem">What is wrong, in plain words.</param>
/// <param name="Accepted">What is accepted there.</param>
public sealed record FileError(string File, int Line, int Column, string Field, string Problem, string Accepted)
{
    private const int LongestShown = 240;

    /// <summary>The field's path, on one line.</summary>
    public string Field { get; } = OnOneLine(Field);

    /// <summary>What is wrong, on one line.</summary>
    public string Problem { get; } = OnOneLine(Problem);

    /// <summary>The error as one line: <c>file:line:column: field: what is wrong; what is accepted</c>.</summary>
    /// <returns>The line.</returns>
    public override string ToString() => $"{File}:{Line}:{Column}: {Field}: {Problem}; {Accepted}";

    // What a file holds is shown to people: no line ends, no control characters, no page of it.
    private static string OnOneLine(string text)
    {
        var line = string.Concat(
            text.Select(each => char.IsControl(each) || each is '\u2028' or '\u2029' ? ' ' : each)
        );
        return line.Length <= LongestShown ? line : $"{line[..LongestShown]}...";
    }
}

/// <summary>A file that a person wrote cannot be used; every error in it is listed.</summary>
/// <param name="errors">All that is wrong, in file order.</param>
public sealed class BadInputException(IReadOnlyList<FileError> errors)
    : Exception(string.Join('\n', errors.Select(error => error.ToString())))
{
    /// <summary>All that is wrong, in file order.</summary>
    public IReadOnlyList<FileError> Errors { get; } = errors;
}

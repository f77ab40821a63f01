namespace Shaduf.Station;

/// <summary>Collects every error of one file while it is read.</summary>
/// <param name="file">The file's name as the user gave it.</param>
internal sealed class FieldLog(string file)
{
    private readonly List<FileError> errors = [];

    /// <summary>The file's name as the user gave it.</summary>
    public string File { get; } = file;

    /// <summary>How many errors there are.</summary>
    public int Count => errors.Count;

    /// <summary>Whether anything is wrong with a field, or with a field inside it.</summary>
    public bool HasErrorsIn(string field) =>
        errors.Any(error =>
            error.File == File
            && error.Field.StartsWith(field, StringComparison.Ordinal)
            && (error.Field.Length == field.Length || error.Field[field.Length] is '.' or '[')
        );

    /// <summary>Notes one error.</summary>
    public void Add(FilePlace place, string field, string problem, string accepted) =>
        errors.Add(new(File, place.Line, place.Column, field, problem, accepted));

    /// <summary>Notes errors found in another file.</summary>
    public void AddRange(IEnumerable<FileError> others) => errors.AddRange(others);

    /// <summary>Refuses the file when anything is wrong.</summary>
    /// <exception cref="BadInputException">There are errors; all of them, in file order.</exception>
    public void ThrowIfAny()
    {
        if (errors.Count > 0)
        {
            throw new BadInputException([
                .. errors
                    .Distinct()
                    .OrderBy(error => error.File == File ? 0 : 1)
                    .ThenBy(error => error.File, StringComparer.Ordinal)
                    .ThenBy(error => error.Line)
                    .ThenBy(error => error.Column),
            ]);
        }
    }
}

namespace Shaduf.House.Tests;

/// <summary>Something that breaks a rule, and what to do about it.</summary>
/// <param name="Subject">What breaks it; the name by which an exceptions file lists it.</param>
/// <param name="Problem">What is wrong and what to do.</param>
internal sealed record Offence(string Subject, string Problem)
{
    public override string ToString() => $"{Subject}: {Problem}";
}

/// <summary>
/// A rule with its accepted exceptions: Exceptions/&lt;rule&gt;.txt, one <c>subject: reason</c> a line, # for remarks.
/// A line without a reason, or one that excuses nothing any more, is an offence itself. A rule without such a file
/// has no exceptions.
/// </summary>
internal static class Rule
{
    /// <summary>Fails unless there is no offence beyond those listed.</summary>
    public static void Holds(string rule, IEnumerable<Offence> offences)
    {
        var list = $"Exceptions/{rule}.txt";
        var file = Path.Combine(House.Home, list);
        var hasList = File.Exists(file);
        var left = Left(hasList ? File.ReadAllLines(file) : [], [.. offences]);
        Assert.True(
            left.Count == 0,
            $"{left.Count} against the rule '{rule}' ({(hasList ? $"exceptions, with a reason: {list}" : "no exceptions")}):\n"
                + string.Join('\n', left)
        );
    }

    /// <summary>The offences that the exceptions do not excuse, and what is wrong with the exceptions.</summary>
    public static IReadOnlyList<Offence> Left(IEnumerable<string> exceptions, IReadOnlyList<Offence> offences)
    {
        var listed = exceptions
            .Where(line => !string.IsNullOrWhiteSpace(line) && !line.StartsWith('#'))
            .Select(line => line.Split(": ", 2, StringSplitOptions.TrimEntries))
            .ToLookup(pair => pair[0], pair => pair.Length > 1 ? pair[1] : "");
        var found = offences.Select(offence => offence.Subject).ToHashSet();
        return
        [
            .. offences.Where(offence => !listed.Contains(offence.Subject)),
            .. listed
                .Where(line => line.Any(string.IsNullOrWhiteSpace))
                .Select(line => new Offence(line.Key, "give its exception a reason, 'subject: reason'.")),
            .. listed
                .Where(line => !found.Contains(line.Key))
                .Select(line => new Offence(line.Key, "needs no exception any more: remove its line.")),
        ];
    }
}

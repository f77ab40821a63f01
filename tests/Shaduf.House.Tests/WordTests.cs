namespace Shaduf.House.Tests;

/// <summary>Nothing in the tree leads to one machine.</summary>
public sealed class WordTests
{
    // Written apart, so that the list does not find itself.
    private static readonly IReadOnlyList<string> s_refused =
    [
        "/wo" + "rk/",
        "/ro" + "ot/",
        "/ho" + "me/",
        "/Us" + "ers/",
        @":\Us" + @"ers\",
        "/tmp/" + "bash",
    ];

    private static readonly IReadOnlyList<string> s_binary = [".pdf", ".png", ".ttf", ".xlsx", ".glb", ".db"];

    [Fact]
    public void No_file_names_a_path_of_a_machine() =>
        Rule.Holds(
            "words",
            House
                .Files(House.Root, "*")
                .Where(path => !s_binary.Contains(Path.GetExtension(path)))
                .SelectMany(path => Refused(House.Relative(path), File.ReadLines(path)))
        );

    internal static IEnumerable<Offence> Refused(string path, IEnumerable<string> lines) =>
        from line in lines.Index()
        from word in s_refused
        where line.Item.Contains(word, StringComparison.Ordinal)
        select new Offence(path, $"line {line.Index + 1} holds '{word}': name no path of a machine.");
}

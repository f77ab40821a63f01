using System.Globalization;
using System.Resources;
using System.Text.RegularExpressions;

namespace Shaduf.Desk.Tests;

public sealed partial class TextsTests
{
    [Fact]
    public void Every_text_of_the_pages_stands_in_the_resource_file()
    {
        var texts = new ResourceManager(typeof(Texts)).GetResourceSet(CultureInfo.InvariantCulture, true, false)!;
        var pages = Directory.GetFiles(
            Path.Combine(Root(AppContext.BaseDirectory), "src", "Shaduf.Desk", "Pages"),
            "*.razor"
        );
        var used = pages
            .SelectMany(page => Asked().Matches(File.ReadAllText(page)))
            .SelectMany(asked => Quoted().Matches(asked.Value))
            .Select(quoted => quoted.Groups["text"].Value)
            .Distinct()
            .ToList();
        Assert.True(used.Count > 100);
        Assert.DoesNotContain(used, text => texts.GetString(text) is null);
    }

    private static string Root(string folder) =>
        File.Exists(Path.Combine(folder, "Shaduf.slnx")) ? folder : Root(Path.GetDirectoryName(folder)!);

    [GeneratedRegex("""\bT\[(?>[^\]"]|"[^"]*")*\]""")]
    private static partial Regex Asked();

    [GeneratedRegex(@"""(?<text>[^""]*)""")]
    private static partial Regex Quoted();
}

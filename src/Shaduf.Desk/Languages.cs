using System.Globalization;

namespace Shaduf.Desk;

/// <summary>The languages in which the desk can be read: English, and each whose texts lie beside the program.</summary>
internal static class Languages
{
    private static readonly string s_texts = $"{typeof(Languages).Assembly.GetName().Name}.resources.dll";

    /// <summary>Their names, without English.</summary>
    /// <param name="folder">The program's folder: the texts of a language lie in a folder of its name.</param>
    public static IReadOnlyList<string> In(string folder) =>
        [
            .. Directory
                .GetDirectories(folder)
                .Where(each => File.Exists(Path.Combine(each, s_texts)))
                .Select(each => Path.GetFileName(each))
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>Pages follow the language that the browser asks for; numbers and dates stay as the brief writes them.</summary>
    public static RequestLocalizationOptions Followed(string folder) =>
        new()
        {
            DefaultRequestCulture = new(CultureInfo.InvariantCulture),
            SupportedCultures = [CultureInfo.InvariantCulture],
            SupportedUICultures = [CultureInfo.InvariantCulture, .. In(folder).Select(name => new CultureInfo(name))],
        };
}

namespace Shaduf.Desk.Tests;

public class LanguagesTests
{
    [Fact]
    public void A_language_is_known_when_its_texts_lie_beside_the_program()
    {
        var folder = Directory.CreateTempSubdirectory("shaduf-languages-").FullName;
        foreach (
            var (name, file) in new[]
            {
                ("sw", "Shaduf.Desk.resources.dll"),
                ("ar", "Shaduf.Desk.resources.dll"),
                ("cards", "x.yaml"),
            }
        )
        {
            Directory.CreateDirectory(Path.Combine(folder, name));
            File.WriteAllText(Path.Combine(folder, name, file), "");
        }

        Assert.Equal(["ar", "sw"], Languages.In(folder));
        var followed = Languages.Followed(folder);
        Assert.Equal(["", "ar", "sw"], followed.SupportedUICultures!.Select(culture => culture.Name));
        Assert.Equal([""], followed.SupportedCultures!.Select(culture => culture.Name));
        Directory.Delete(folder, recursive: true);
    }
}

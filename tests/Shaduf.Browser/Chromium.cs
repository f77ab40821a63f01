using Microsoft.Playwright;

namespace Shaduf.Browser;

/// <summary>The system's own Chromium, started once; nothing is downloaded.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <summary>Where it is; null where there is none.</summary>
    public static string? Program { get; } =
        (
            Environment.GetEnvironmentVariable("SHADUF_CHROMIUM") is { Length: > 0 } named ? [named] : Found()
        ).FirstOrDefault(File.Exists);

    /// <summary>Opens a window as wide as a small phone.</summary>
    /// <param name="width">Its width [px].</param>
    /// <returns>The window; what it keeps is gone when it closes.</returns>
    public Task<IBrowserContext> PhoneAsync(int width = 360)
    {
        Assert.SkipWhen(browser is null, "no Chromium on this machine (Debian: chromium; or SHADUF_CHROMIUM names it)");
        return browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = width, Height = 640 },
                DeviceScaleFactor = 2,
                HasTouch = true,
                IsMobile = true,
                AcceptDownloads = true,
            }
        );
    }

    /// <summary>Opens a window as on a desk.</summary>
    /// <param name="width">Its width [px].</param>
    /// <param name="isDark">Whether the person asks for dark pages.</param>
    /// <returns>The window.</returns>
    public Task<IBrowserContext> WindowAsync(int width = 1280, bool isDark = false)
    {
        Assert.SkipWhen(browser is null, "no Chromium on this machine (Debian: chromium; or SHADUF_CHROMIUM names it)");
        return browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = width, Height = 900 },
                ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light,
                AcceptDownloads = true,
            }
        );
    }

    public async ValueTask InitializeAsync()
    {
        if (Program is null)
        {
            return;
        }

        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(
            new() { ExecutablePath = Program, Args = ["--no-sandbox", "--disable-gpu"] }
        );
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
    }

    private static IEnumerable<string> Found() =>
        from folder in (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        from name in new[] { "chromium", "chromium-browser", "google-chrome" }
        select Path.Combine(folder, name);
}

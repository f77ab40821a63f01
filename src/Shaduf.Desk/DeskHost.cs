using System.Net;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http.Features;
using Shaduf.Desk.Pages;
using Shaduf.Store;

namespace Shaduf.Desk;

/// <summary>The desk as a program: a web server that listens on this computer only.</summary>
internal static class DeskHost
{
    private const int LargestMessage = 512 * 1024;

    private static readonly string[] s_names = ["localhost", "127.0.0.1", "[::1]"];

    /// <summary>Runs the desk until it is stopped.</summary>
    /// <param name="args">The command line.</param>
    /// <returns>Exit code: 0 stopped, 2 it could not be started for a reason that the person can mend.</returns>
    public static async Task<int> RunAsync(string[] args)
    {
        try
        {
            var setting = DeskSetting.Of(args, Environment.GetEnvironmentVariable(StoreSetting.Variable));
            await using var desk = await StartAsync(setting);
            Console.WriteLine($"The desk is open: {Address(desk)}  (stop it with Ctrl+C)");
            await desk.WaitForShutdownAsync();
            return 0;
        }
        catch (Exception trouble) when (trouble is ArgumentException or StoreException or IOException)
        {
            await Console.Error.WriteLineAsync(trouble.Message);
            return 2;
        }
    }

    /// <summary>The address to open.</summary>
    public static string Address(WebApplication desk) =>
        desk.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();

    /// <summary>Opens the store and starts the server.</summary>
    /// <exception cref="StoreException">The store cannot be opened.</exception>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task<WebApplication> StartAsync(DeskSetting setting)
    {
        var store = await StationStore.OpenAsync(setting.Store, TimeProvider.System);
        var builder = WebApplication.CreateBuilder(
            new WebApplicationOptions
            {
                ApplicationName = typeof(DeskHost).Assembly.GetName().Name,
                ContentRootPath = AppContext.BaseDirectory,
            }
        );
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(server => server.Listen(IPAddress.Loopback, setting.Port));
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        builder.Services.AddSignalR(hub => hub.MaximumReceiveMessageSize = LargestMessage);
        builder.Services.Configure<FormOptions>(form => form.MultipartBodyLengthLimit = long.MaxValue);
        builder.Services.AddSingleton(store);
        builder.Services.AddSingleton<Digests>();
        builder.Services.AddSingleton<DigestWork>();
        builder.Services.AddSingleton<PackJobs>();
        builder.Services.AddSingleton<Pictures>();
        builder.Services.AddSingleton<Pastes>();
        builder.Services.AddScoped<DeskUnits>();
        builder.Services.AddLocalization();
        var desk = builder.Build();
        desk.Use(OnlyHereAsync);
        desk.UseRequestLocalization(Languages.Followed(AppContext.BaseDirectory));
        desk.UseAntiforgery();
        desk.MapStaticAssets();
        desk.MapRazorComponents<App>().AddInteractiveServerRenderMode();
        Downloads.Map(desk);
        Pictures.Map(desk);
        Pastes.Map(desk);
        await desk.StartAsync();
        return desk;
    }

    // A page elsewhere must not reach the desk through a name that it made point here.
    private static Task OnlyHereAsync(HttpContext http, RequestDelegate next)
    {
        var isHere =
            http.Connection.RemoteIpAddress is { } from
            && IPAddress.IsLoopback(from)
            && s_names.Contains(http.Request.Host.Host, StringComparer.OrdinalIgnoreCase);
        if (isHere)
        {
            var headers = http.Response.Headers;
            headers.ContentSecurityPolicy =
                "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; frame-ancestors 'none'; base-uri 'self'; form-action 'self'";
            headers.XContentTypeOptions = "nosniff";
            // With none at all a browser would not say that a form was our own page's.
            headers["Referrer-Policy"] = "same-origin";
            return next(http);
        }

        http.Response.StatusCode = StatusCodes.Status403Forbidden;
        return http.Response.WriteAsync("The desk answers on the computer that it runs on, and nowhere else.");
    }
}

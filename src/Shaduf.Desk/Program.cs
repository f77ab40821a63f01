namespace Shaduf.Desk;

/// <summary>Starts the desk.</summary>
internal static class Program
{
    private static Task<int> Main(string[] args) => DeskHost.RunAsync(args);
}

using System.Globalization;
using Shaduf.Store;

namespace Shaduf.Desk;

/// <summary>How the desk is started.</summary>
/// <param name="Port">Port on this computer, 0 for any free one.</param>
/// <param name="Store">Where the stations are kept.</param>
public sealed record DeskSetting(int Port, StoreSetting Store)
{
    /// <summary>The port when none is named.</summary>
    public const int UsualPort = 5317;

    private const int HighestPort = 65535;

    /// <summary>Reads the command line.</summary>
    /// <param name="args">Nothing, or <c>--port N</c>.</param>
    /// <param name="store">The variable that names the store; null for the user's data folder.</param>
    /// <returns>The setting.</returns>
    /// <exception cref="ArgumentException">An argument is none that is known; the message says it plainly.</exception>
    /// <exception cref="StoreException">The store's setting cannot be read.</exception>
    public static DeskSetting Of(IReadOnlyList<string> args, string? store) =>
        args switch
        {
            [] => new(UsualPort, StoreSetting.Of(store)),
            ["--port", var text]
                when int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var port)
                    && port <= HighestPort => new(port, StoreSetting.Of(store)),
            _ => throw new ArgumentException(
                $"'{string.Join(' ', args)}' is not known; nothing, or --port with a number up to {HighestPort}, is accepted. The desk listens on this computer only."
            ),
        };
}

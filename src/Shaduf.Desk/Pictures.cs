using System.Security.Cryptography;
using System.Text;

namespace Shaduf.Desk;

/// <summary>Pictures that pages show: each is fetched over plain HTTP, under the hash of what it shows.</summary>
public sealed class Pictures
{
    // A browser may still be on its way to a picture that a page has just replaced.
    private const int MostLeft = 64;

    private readonly Lock changing = new();
    private readonly Queue<string> left = [];
    private readonly Dictionary<string, (byte[] Svg, int PageCount)> shown = [];

    /// <summary>Adds the way of pictures.</summary>
    public static void Map(WebApplication desk) =>
        desk.MapGet(
            "/pictures/{key}",
            (string key, Pictures pictures) =>
                pictures.Of(key) is { } svg ? Results.Bytes(svg, "image/svg+xml") : Results.NotFound()
        );

    /// <summary>A page begins to show a picture.</summary>
    /// <param name="svg">The picture.</param>
    /// <returns>Its key.</returns>
    public string Show(string svg)
    {
        var bytes = Encoding.UTF8.GetBytes(svg);
        var key = Convert.ToHexStringLower(SHA256.HashData(bytes));
        lock (changing)
        {
            shown[key] = (bytes, shown.GetValueOrDefault(key).PageCount + 1);
        }

        return key;
    }

    /// <summary>A page shows a picture no more.</summary>
    /// <param name="key">Its key.</param>
    public void Leave(string key)
    {
        lock (changing)
        {
            var (svg, pageCount) = shown[key];
            shown[key] = (svg, pageCount - 1);
            left.Enqueue(key);
            if (
                left.Count > MostLeft
                && left.Dequeue() is var old
                && shown.GetValueOrDefault(old).PageCount <= 0
                && !left.Contains(old)
            )
            {
                shown.Remove(old);
            }
        }
    }

    /// <summary>A picture that is shown, or was a moment ago; null when there is none of that key.</summary>
    public byte[]? Of(string key)
    {
        lock (changing)
        {
            return shown.GetValueOrDefault(key).Svg;
        }
    }
}

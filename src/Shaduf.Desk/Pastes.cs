using System.Collections.Concurrent;

namespace Shaduf.Desk;

/// <summary>Boxes that texts are pasted into: what stands in one comes over plain HTTP, each time that it changes.</summary>
public sealed class Pastes
{
    /// <summary>Longest text that a box takes [characters].</summary>
    public const int LongestText = 20_000;

    private readonly ConcurrentDictionary<Guid, Func<string?, Task>> open = new();

    /// <summary>Adds the way of pasted texts.</summary>
    public static void Map(WebApplication desk) => desk.MapPost("/pasted/{box:guid}", TakeAsync);

    /// <summary>Opens a box.</summary>
    /// <param name="take">What is done with its text; null for one that is too long.</param>
    /// <returns>Its number.</returns>
    public Guid Open(Func<string?, Task> take)
    {
        var box = Guid.NewGuid();
        open[box] = take;
        return box;
    }

    /// <summary>Closes a box.</summary>
    public void Close(Guid box) => open.TryRemove(box, out _);

    private static async Task<IResult> TakeAsync(Guid box, HttpRequest request, Pastes pastes)
    {
        if (!Downloads.IsOwnPage(request))
        {
            return Results.StatusCode(StatusCodes.Status403Forbidden);
        }

        if (!pastes.open.TryGetValue(box, out var take))
        {
            return Results.NotFound();
        }

        var text = new char[LongestText + 1];
        using var reader = new StreamReader(request.Body);
        var length = await reader.ReadBlockAsync(text);
        await take(length > LongestText ? null : new string(text, 0, length));
        return Results.NoContent();
    }
}

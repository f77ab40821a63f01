namespace Shaduf.Desk;

/// <summary>One after the other: who takes the turn has it until they let it go.</summary>
internal sealed class Turn : IDisposable
{
    private readonly SemaphoreSlim free = new(1);

    /// <summary>Waits for the turn.</summary>
    public async Task<IDisposable> TakeAsync()
    {
        await free.WaitAsync();
        return new Taken(free);
    }

    public void Dispose() => free.Dispose();

    private sealed class Taken(SemaphoreSlim free) : IDisposable
    {
        public void Dispose()
        {
            try
            {
                free.Release();
            }
            catch (ObjectDisposedException)
            {
                // The page was closed meanwhile: nobody waits any more.
            }
        }
    }
}

namespace ShopPlanner.Services.Common;

/// <summary>Lets few costly things be made at once, so that pages and the bench stay quick while many packets are asked for. The
/// others wait their turn; who no longer waits is passed over.</summary>
internal sealed class CostlyWork : IDisposable
{
    /// <summary>Two at most, and a core stays free.</summary>
    public static readonly int Most = Math.Clamp(Environment.ProcessorCount - 1, 1, 2);

    private readonly SemaphoreSlim turns = new(Most);

    /// <summary>Makes something, away from the thread that asks.</summary>
    /// <exception cref="OperationCanceledException">Nobody waits for it any longer.</exception>
    public async Task<T> RunAsync<T>(Func<Task<T>> make, CancellationToken cancel)
    {
        await turns.WaitAsync(cancel);
        try
        {
            return await Task.Run(make, cancel);
        }
        finally
        {
            turns.Release();
        }
    }

    public void Dispose() => turns.Dispose();
}

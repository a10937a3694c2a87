using Microsoft.AspNetCore.Components.Server.Circuits;

namespace ShopPlanner.Web.Features.Shop;

/// <summary>Counts the pages that are open with a live connection.</summary>
internal sealed class OpenPages : CircuitHandler
{
    private int count;

    /// <summary>How many there are now.</summary>
    public int Count => Volatile.Read(ref count);

    /// <inheritdoc />
    public override Task OnConnectionUpAsync(Circuit circuit, CancellationToken cancellationToken)
    {
        Interlocked.Increment(ref count);
        return Task.CompletedTask;
    }

    /// <inheritdoc />
    public override Task OnConnectionDownAsync(Circuit circuit, CancellationToken cancellationToken)
    {
        Interlocked.Decrement(ref count);
        return Task.CompletedTask;
    }
}

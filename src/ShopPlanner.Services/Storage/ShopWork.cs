using System.Diagnostics;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Storage;

/// <summary>
/// Runs each operation in a context and a transaction of its own. Writers stand in one queue: the database admits one at a time
/// anyway, and waiting in a queue is fairer and quicker than retrying on a lock. Readers never wait.
/// </summary>
internal sealed class ShopWork(ShopContextFactory contexts) : IDisposable
{
    private readonly SemaphoreSlim writer = new(1, 1);
    private long changes;

    /// <summary>How long changes take, waiting for earlier ones included.</summary>
    public WriteTimes Times { get; } = new();

    /// <summary>A number that rises with every change: while it stays, so does the shop.</summary>
    public long Changes => Interlocked.Read(ref changes);

    /// <summary>Reads from one state of the database, however many queries it takes.</summary>
    public async Task<T> ReadAsync<T>(Func<ShopContext, Task<T>> read, CancellationToken cancel)
    {
        await using var db = contexts.CreateDbContext();
        db.ChangeTracker.QueryTrackingBehavior = QueryTrackingBehavior.NoTracking;
        await using var transaction = await contexts.BeginReadAsync(db, cancel);
        return await read(db);
    }

    /// <summary>Changes everything or nothing: an outcome that is not <see cref="OutcomeKind.Ok"/> leaves no trace.</summary>
    public Task<Outcome<T>> WriteAsync<T>(Func<ShopContext, Task<Outcome<T>>> change, CancellationToken cancel)
        where T : class => WriteAsync(change, null, cancel);

    /// <summary>Changes everything or nothing, and says how <see cref="Changes"/> counts it.</summary>
    /// <param name="change">Changes the shop.</param>
    /// <param name="written">Called with the change's own number once it is stored, before anybody else writes; not called
    /// where nothing was changed.</param>
    /// <param name="cancel">Stops it before it is stored.</param>
    public async Task<Outcome<T>> WriteAsync<T>(
        Func<ShopContext, Task<Outcome<T>>> change,
        Action<long>? written,
        CancellationToken cancel
    )
        where T : class
    {
        if (contexts.IsReadOnly)
            return Outcome.Faulty<T>(StorageFaults.OnlyRead);
        var asked = Stopwatch.GetTimestamp();
        await writer.WaitAsync(cancel);
        try
        {
            return await ChangeAsync(change, written, cancel);
        }
        catch (Exception problem) when (StorageFaults.Find(problem) is { } refusal)
        {
            return new Outcome<T>(refusal.Kind, null, [refusal.Fault]);
        }
        finally
        {
            writer.Release();
            Times.Add(Stopwatch.GetElapsedTime(asked));
        }
    }

    /// <summary>Holds the writers until disposed; readers go on.</summary>
    public async Task<IDisposable> PauseAsync(CancellationToken cancel)
    {
        await writer.WaitAsync(cancel);
        return new Turn(writer);
    }

    public void Dispose() => writer.Dispose();

    private async Task<Outcome<T>> ChangeAsync<T>(
        Func<ShopContext, Task<Outcome<T>>> change,
        Action<long>? written,
        CancellationToken cancel
    )
        where T : class
    {
        await using var db = contexts.CreateDbContext();
        await using var transaction = await contexts.BeginWriteAsync(db, cancel);
        var outcome = await change(db);
        if (!outcome.Ok)
            return outcome;
        await db.SaveChangesAsync(cancel);
        long number;
        try
        {
            await transaction.CommitAsync(CancellationToken.None);
        }
        finally
        {
            // Also where it failed: whether anything was written is not known then.
            number = Interlocked.Increment(ref changes);
        }

        written?.Invoke(number);
        return outcome;
    }

    private sealed class Turn(SemaphoreSlim held) : IDisposable
    {
        public void Dispose() => held.Release();
    }
}

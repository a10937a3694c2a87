using System.Collections.Concurrent;
using System.Threading.Channels;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans;

/// <summary>The queue of planning runs and where each stands; the database remembers them beyond this program's life.</summary>
internal sealed class PlanJobs(
    ShopWork work,
    ShopCommands commands,
    IDbContextFactory<ShopContext> contexts,
    ILogger<PlanJobs> log
) : IDisposable
{
    private const int RememberedJobs = 100;

    private readonly Channel<Guid> queue = Channel.CreateUnbounded<Guid>();
    private readonly ConcurrentDictionary<Guid, LiveJob> live = [];

    public event Action<Guid>? Changed;

    public ChannelReader<Guid> Queue => queue.Reader;

    /// <summary>Queues a run once; asked again, answers with where that run stands.</summary>
    /// <param name="order">What to plan.</param>
    /// <param name="command">Made by the device.</param>
    /// <param name="refuse">Answers null where the order can be planned.</param>
    /// <param name="cancel">Stops it before it is queued.</param>
    public async Task<Outcome<PlanJobView>> AddAsync(
        PlanOrder order,
        CommandId command,
        Func<ShopContext, Task<Outcome<PlanJobView>?>> refuse,
        CancellationToken cancel
    )
    {
        var job = new LiveJob(Guid.CreateVersion7(), order);
        var outcome = await commands.RunAsync(
            new Making<PlanJobView>(command, Making.Asked("plan", order))
            {
                Make = async db => await refuse(db) ?? await StoreAsync(db, job, cancel),
                Made = view => Making.Text(view.Id),
                Find = (db, made) => FindAsync(db, Guid.Parse(made), cancel),
                What = "planning run",
            },
            cancel
        );
        if (outcome.Value?.Id != job.View.Id)
        {
            job.Dispose();
            return outcome;
        }

        live[job.View.Id] = job;
        ForgetOld();
        queue.Writer.TryWrite(job.View.Id);
        return outcome;
    }

    public LiveJob? FindLive(Guid id) => live.GetValueOrDefault(id);

    public PlanJobView? Find(Guid id)
    {
        if (FindLive(id) is { } job)
            return job.View;
        using var db = contexts.CreateDbContext();
        return db.Jobs.AsNoTracking().SingleOrDefault(stored => stored.Id == id) is { } found ? View(found) : null;
    }

    public void Tell(Guid id)
    {
        foreach (var listener in Changed?.GetInvocationList() ?? [])
            Tell((Action<Guid>)listener, id);
    }

    /// <summary>Notes how a run ended.</summary>
    public async Task EndAsync(LiveJob job, PlanJobState state, Guid? planId, params IReadOnlyList<Fault> faults)
    {
        await work.WriteAsync<Done>(
            async db =>
            {
                var stored = await db.Jobs.SingleAsync(j => j.Id == job.View.Id);
                (stored.State, stored.PlanId, stored.FaultsJson) = (state, planId, ShopJson.Write(faults));
                return Done.Value;
            },
            CancellationToken.None
        );
        job.Change(view => view with { State = state, PlanId = planId, Faults = [.. faults] });
        Tell(job.View.Id);
    }

    public void Dispose()
    {
        foreach (var job in live.Values)
            job.Dispose();
    }

    // A page that fails to show progress must not end the run.
    private void Tell(Action<Guid> listener, Guid id)
    {
        try
        {
            listener(id);
        }
        catch (Exception problem)
        {
            log.LogWarning(problem, "A listener to planning run {Job} failed", id);
        }
    }

    private static async Task<Outcome<PlanJobView>> StoreAsync(ShopContext db, LiveJob job, CancellationToken cancel)
    {
        db.Jobs.Add(
            new StoredJob
            {
                Id = job.View.Id,
                Number = await db.NextAsync(Counters.Jobs, cancel),
                OrderJson = ShopJson.Write(job.Order),
                Seconds = job.Order.Seconds,
            }
        );
        return job.View;
    }

    private async Task<PlanJobView?> FindAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        FindLive(id)?.View ?? (await db.Jobs.FindAsync([id], cancel) is { } found ? View(found) : null);

    private void ForgetOld()
    {
        var ended = live.Values.Where(job => job.View.State is not (PlanJobState.Waiting or PlanJobState.Running));
        foreach (var job in ended.OrderByDescending(job => job.View.Id).Skip(RememberedJobs))
            if (live.TryRemove(job.View.Id, out var old))
                old.Dispose();
    }

    private static PlanJobView View(StoredJob job) =>
        new(
            job.Id,
            job.State,
            "",
            null,
            Money.Zero,
            TimeSpan.Zero,
            job.Seconds,
            job.PlanId,
            [.. ShopJson.Read<List<Fault>>(job.FaultsJson)]
        );
}

using System.Collections.Concurrent;
using System.Threading.Channels;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Documents;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Running;

/// <summary>The queue of planning runs and where each stands; the database remembers them beyond this program's life.</summary>
internal sealed class PlanJobs(
    ShopCommands commands,
    PlanJobEnds ends,
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
        Func<ShopContext, LiveJob, Task<Outcome<PlanJobView>?>> refuse,
        CancellationToken cancel
    )
    {
        var job = new LiveJob(Guid.CreateVersion7(), order);
        var outcome = await commands.RunAsync(
            new Making<PlanJobView>(command, CommandTexts.Asked("plan", order))
            {
                Make = async db => await refuse(db, job) ?? await StoreAsync(db, job, cancel),
                Made = view => CommandTexts.Text(view.Id),
                Find = (db, made) => FindAsync(db, Guid.Parse(made), cancel),
                Written = job.KeepDraft,
                NeedsRoom = true,
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

    /// <summary>Shows how a run ended and writes it down. Where it cannot be written, the view says so, and it is tried
    /// again.</summary>
    public async Task EndAsync(LiveJob job, PlanJobState state, Guid? planId, params IReadOnlyList<Fault> faults)
    {
        var refused = await ends.WriteAsync(new PlanJobEnd(job.View.Id, state, planId, [.. faults]));
        job.Change(view => view with { State = state, PlanId = planId, Faults = [.. faults, .. refused] });
        Tell(job.View.Id);
    }

    /// <summary>Tries again to write down how runs ended, and takes back what their views said about it.</summary>
    public async Task WriteEndsAsync()
    {
        foreach (var end in await ends.WriteAgainAsync())
        {
            FindLive(end.Job)?.Change(view => view with { Faults = end.Faults });
            Tell(end.Job);
        }
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
                OrderJson = PlanOrderDocument.Write(job.Order),
                Seconds = job.Order.Seconds,
            }
        );
        return job.View;
    }

    private async Task<PlanJobView?> FindAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        FindLive(id)?.View ?? (await db.Jobs.FindAsync([id], cancel) is { } found ? View(found) : null);

    private void ForgetOld()
    {
        var ended = live.Values.Where(job =>
            job.View.State is not (PlanJobState.Waiting or PlanJobState.Running) && !ends.IsUnwritten(job.View.Id)
        );
        foreach (var job in ended.OrderByDescending(job => job.View.Id).Skip(RememberedJobs))
            if (live.TryRemove(job.View.Id, out var old))
                old.Dispose();
    }

    private static PlanJobView View(StoredJob job) =>
        new(job.Id, job.State, "", null, Money.Zero, TimeSpan.Zero, job.Seconds, job.PlanId, FaultsDocument.Read(job.FaultsJson));
}

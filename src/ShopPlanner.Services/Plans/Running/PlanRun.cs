using Microsoft.Extensions.Logging;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Plans.Running;

/// <summary>One planning run from order to stored plan.</summary>
internal sealed class PlanRun(
    PlanJobs jobs,
    PlanStorage storage,
    PlanReading reading,
    ShopWork work,
    PlanDrafts drafts,
    ICutPlanner planner,
    TimeProvider clock,
    ILogger<PlanRun> log
)
{
    /// <summary>Pages are told of progress at most this often.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(250);

    /// <summary>Runs a job to its end, whatever that is.</summary>
    /// <param name="job">The job.</param>
    /// <param name="shutdown">The program is being stopped.</param>
    public async Task RunAsync(LiveJob job, CancellationToken shutdown)
    {
        try
        {
            await PlanAsync(job, again: false, shutdown);
        }
        catch (OperationCanceledException) when (shutdown.IsCancellationRequested)
        {
            await jobs.EndAsync(job, PlanJobState.Stopped, null, PlanJobStore.CutShort);
        }
        catch (Exception problem)
        {
            log.LogError(problem, "Planning run {Job} failed", job.View.Id);
            await jobs.EndAsync(
                job,
                PlanJobState.Failed,
                null,
                new Fault(
                    "planner",
                    "the run",
                    $"ended with an error ({problem.GetType().Name}): nothing was changed, and the log has the details"
                )
            );
        }
    }

    private async Task PlanAsync(LiveJob job, bool again, CancellationToken shutdown)
    {
        // Once a plan was found, planning again is worth a short look even when the run is being stopped.
        if (!again && (job.Stopped.IsCancellationRequested || shutdown.IsCancellationRequested))
        {
            await StopAsync(job, shutdown);
            return;
        }

        job.Change(view => view with { State = PlanJobState.Running });
        jobs.Tell(job.View.Id);
        var draft = await DraftAsync(job, again ? CancellationToken.None : shutdown);
        if (!draft.Ok)
            await jobs.EndAsync(job, PlanJobState.Failed, null, draft.Faults);
        else
            await SearchAsync(job, draft.Value, again, shutdown);
    }

    private async Task SearchAsync(LiveJob job, PlanDraft draft, bool again, CancellationToken shutdown)
    {
        using var either = CancellationTokenSource.CreateLinkedTokenSource(job.Stopped, shutdown);
        var control = new SearchControl
        {
            Time = TimeSpan.FromSeconds(draft.Request.Limits.Seconds),
            Cancel = either.Token,
            Progress = progress => Tell(job, progress),
        };
        var earlier = await EarlierAsync(job.Order, again ? CancellationToken.None : shutdown);
        var (bought, compared) = await Task.Factory.StartNew(
            () => PlanComparing.Plan(draft, planner, control with { Earlier = earlier }),
            CancellationToken.None,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default
        );
        if (either.IsCancellationRequested && compared.Plan.Layouts.IsEmpty)
            await StopAsync(job, shutdown);
        else
            await StoreAsync(job, bought, compared, again, shutdown);
    }

    private Task StopAsync(LiveJob job, CancellationToken shutdown) =>
        shutdown.IsCancellationRequested && !job.Stopped.IsCancellationRequested
            ? jobs.EndAsync(job, PlanJobState.Stopped, null, PlanJobStore.CutShort)
            : jobs.EndAsync(job, PlanJobState.Stopped, null);

    // Planning again begins from the plan that is replaced; of several, from the one with the most boards and sheets.
    private async Task<EarlierPlan?> EarlierAsync(PlanOrder order, CancellationToken cancel)
    {
        PlanView? most = null;
        foreach (var id in order.Replaces)
            if (
                await work.ReadAsync(db => reading.FindAsync(db, id, cancel), cancel) is { } replaced
                && replaced.Summary.Stocks > (most?.Summary.Stocks ?? -1)
            )
                most = replaced;
        return most is null ? null : new EarlierPlan(most.Request, most.Plan);
    }

    private async Task StoreAsync(LiveJob job, PlanDraft draft, ComparedPlan compared, bool again, CancellationToken shutdown)
    {
        var plan = compared.Plan;
        var faults = planner.Check(draft.Request, plan);
        if (faults.Length > 0)
        {
            log.LogError("The planner made a plan that cannot be cut: {Faults}", string.Join("; ", faults));
            await jobs.EndAsync(job, PlanJobState.Failed, null, faults);
            return;
        }

        // Not given up for a shutdown: the program waits for it.
        var outcome = await storage.StoreAsync(draft, compared, planner.Version, job.View.Id, CancellationToken.None);
        job.Change(view => view with { Cost = plan.Cost, Bound = plan.CostLowerBound });
        if (outcome.Ok)
            await jobs.EndAsync(job, PlanJobState.Done, outcome.Value.Id);
        else if (outcome.Kind == OutcomeKind.Conflict && !again)
            await PlanAsync(job, again: true, shutdown);
        else
            await jobs.EndAsync(job, PlanJobState.Failed, null, outcome.Faults);
    }

    private void Tell(LiveJob job, SearchProgress progress)
    {
        if (job.Take(progress, clock, Pause))
            jobs.Tell(job.View.Id);
    }

    // The draft made when the run was queued, where the shop is still as it was then. A run that had to wait, and one that
    // lost a piece to another plan while it searched, read the shop again: a request of yesterday's prices and pieces would
    // be planned for nothing.
    private async Task<Outcome<PlanDraft>> DraftAsync(LiveJob job, CancellationToken cancel)
    {
        var queued = job.Draft;
        job.Draft = null;
        if (queued is not null && drafts.IsCurrent(queued))
            return queued.Draft;
        return (await work.ReadAsync(db => drafts.MakeAsync(db, job.Order, cancel), cancel)).Draft;
    }
}

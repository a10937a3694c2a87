using Microsoft.Extensions.Hosting;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Plans;

/// <summary>Takes planning runs from the queue, one at a time: each uses all cores.</summary>
internal sealed class PlanWorker(ShopDatabase database, PlanJobs jobs, PlanRun run) : BackgroundService
{
    public override async Task StartAsync(CancellationToken cancellationToken)
    {
        await database.OpenAsync(cancellationToken);
        await base.StartAsync(cancellationToken);
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            await foreach (var id in jobs.Queue.ReadAllAsync(stoppingToken))
                if (jobs.FindLive(id) is { } job)
                    await run.RunAsync(job, stoppingToken);
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            await StopWaitingAsync();
        }
    }

    private async Task StopWaitingAsync()
    {
        while (jobs.Queue.TryRead(out var id))
            if (jobs.FindLive(id) is { } job)
                await jobs.EndAsync(job, PlanJobState.Stopped, null);
    }
}

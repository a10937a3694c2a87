using Microsoft.Extensions.Hosting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Plans.Keeping;

namespace ShopPlanner.Services.Plans.Running;

/// <summary>Takes planning runs from the queue, one at a time: each uses all cores. Once a minute it tries again what could not
/// be saved of their ends.</summary>
internal sealed class PlanWorker(ShopDatabase database, PlanJobs jobs, PlanRun run, TimeProvider clock) : BackgroundService
{
    private static readonly TimeSpan Pause = TimeSpan.FromMinutes(1);

    public override async Task StartAsync(CancellationToken cancellationToken)
    {
        await database.OpenAsync(cancellationToken);
        await base.StartAsync(cancellationToken);
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await Task.WhenAll(RunAsync(stoppingToken), WriteEndsAsync(stoppingToken));
        await jobs.WriteEndsAsync();
    }

    private async Task RunAsync(CancellationToken stopping)
    {
        try
        {
            await foreach (var id in jobs.Queue.ReadAllAsync(stopping))
                if (jobs.FindLive(id) is { } job)
                    await run.RunAsync(job, stopping);
        }
        catch (OperationCanceledException) when (stopping.IsCancellationRequested)
        {
            await StopWaitingAsync();
        }
    }

    private async Task WriteEndsAsync(CancellationToken stopping)
    {
        using var timer = new PeriodicTimer(Pause, clock);
        using var stop = stopping.Register(timer.Dispose);
        while (await timer.WaitForNextTickAsync(CancellationToken.None))
            await jobs.WriteEndsAsync();
    }

    private async Task StopWaitingAsync()
    {
        while (jobs.Queue.TryRead(out var id))
            if (jobs.FindLive(id) is { } job)
                await jobs.EndAsync(job, PlanJobState.Stopped, null, PlanJobStore.CutShort);
    }
}

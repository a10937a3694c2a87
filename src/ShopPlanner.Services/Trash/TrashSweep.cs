using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Trash;

/// <summary>Empties the trash of what has lain in it long enough: at each start, and once a day while the program
/// runs.</summary>
internal sealed class TrashSweep(ShopWork work, ShopDatabase database, TimeProvider clock, ILogger<TrashSweep> log)
    : BackgroundService
{
    private static readonly TimeSpan Pause = TimeSpan.FromDays(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await database.OpenAsync(stoppingToken);
        using var timer = new PeriodicTimer(Pause, clock);
        try
        {
            do await SweepAsync(stoppingToken);
            while (await timer.WaitForNextTickAsync(stoppingToken));
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            log.LogDebug("The trash is no longer emptied: the program is stopping");
        }
    }

    private async Task SweepAsync(CancellationToken cancel)
    {
        var now = clock.GetUtcNow().UtcDateTime;
        try
        {
            // What changes nothing is not counted as a change.
            if (!await work.ReadAsync(db => TrashedProjects.Old(db, now).AnyAsync(cancel), cancel))
                return;
            var outcome = await work.WriteAsync(db => TrashedProjects.RemoveOldAsync(db, now, cancel), cancel);
            if (!outcome.Ok)
                log.LogError("The trash was not emptied; trying again in a day: {Faults}", string.Join("; ", outcome.Faults));
        }
        catch (Exception problem) when (problem is DbException or DbUpdateException)
        {
            log.LogError(problem, "The trash was not emptied; trying again in a day");
        }
    }
}

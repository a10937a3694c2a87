using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Backups;

/// <summary>Backs up at each start that is a day after the last good backup, and once a day while the program runs.</summary>
internal sealed class DailyBackup(
    CopyMaker maker,
    GoodCopies copies,
    ShopDatabase database,
    TimeProvider clock,
    ILogger<DailyBackup> log
) : BackgroundService
{
    // A little less than a day, so that a shop opened every Saturday at about the same hour has one each time.
    private static readonly TimeSpan Due = TimeSpan.FromHours(20);
    private static readonly TimeSpan Pause = TimeSpan.FromHours(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await database.OpenAsync(stoppingToken);
        using var timer = new PeriodicTimer(Pause, clock);
        if (!database.IsNew)
            await TryAsync(stoppingToken);
        try
        {
            while (await timer.WaitForNextTickAsync(stoppingToken))
                await TryAsync(stoppingToken);
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            log.LogDebug("No more backups: the program is stopping");
        }
    }

    private async Task TryAsync(CancellationToken cancel)
    {
        try
        {
            if (copies.Newest() is { } last && clock.GetUtcNow() - BackupFile.MadeAt(last) < Due)
                maker.CatchUp(last);
            else
                await maker.MakeAsync(GoodCopies.Daily, cancel);
        }
        catch (Exception problem) when (CopyMaker.IsTrouble(problem))
        {
            log.LogError(problem, "No backup could be made; trying again in an hour");
        }
    }
}

using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using ShopPlanner.Services.Health;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Backups;

/// <summary>Looks after the disk's room every few minutes and after every page of the database once a day, and tells every page
/// what it finds. The first look is some minutes after the start, which checks the database by itself.</summary>
internal sealed class DataWatch(
    ServicesOptions options,
    DataFolder folder,
    LowDisk disk,
    GoodCopies copies,
    ShopHealth health,
    ShopDatabase database,
    PageCheck check,
    TimeProvider clock,
    ILogger<DataWatch> log
) : BackgroundService
{
    private static readonly TimeSpan Pause = TimeSpan.FromMinutes(5);
    private static readonly TimeSpan Due = TimeSpan.FromDays(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await database.OpenAsync(stoppingToken);
        using var timer = new PeriodicTimer(Pause, clock);
        try
        {
            LookAtDisk();
            while (await timer.WaitForNextTickAsync(stoppingToken))
            {
                LookAtDisk();
                LookAtPages();
            }
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            log.LogDebug("The data is no longer looked after: the program is stopping");
        }
    }

    private void LookAtDisk()
    {
        if (disk.Fault() is not { } fault)
        {
            health.Clear(HealthTopic.LowDisk);
            return;
        }

        health.Tell(
            HealthTopic.LowDisk,
            $"The disk that holds {folder.Root} {fault}. Until then no backups are made, no files imported and no cuts "
                + "planned. What you mark at the bench and type is still saved."
        );
    }

    private void LookAtPages()
    {
        // A server looks after its own pages.
        if (options.Database is not null)
            return;
        var now = clock.GetUtcNow().UtcDateTime;
        if (check.DoneUtc is { } last && (now - last).Duration() < Due)
            return;
        check.DoneUtc = now;
        if (LiveFile.Fault(folder.Database) is not { } fault)
        {
            health.Clear(HealthTopic.Damage);
            return;
        }

        log.LogError("{Database} {Fault}", folder.Database, fault);
        health.Tell(
            HealthTopic.Damage,
            $"The shop's database {fault}. Figures on these pages may be wrong or missing: don't cut by them. {WhatToDo()}"
        );
    }

    private string WhatToDo() =>
        copies.Newest() is { } newest
            ? $"Restore the newest good backup, {Path.GetFileName(newest)}, in Setup. What is there now is kept."
            : "There is no good backup: export what can still be read as an archive, in Setup under Import and export.";
}

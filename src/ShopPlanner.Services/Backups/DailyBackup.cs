using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Backups;

/// <summary>Backs up at each start that is a day after the last backup, and once a day while the program runs; of its own backups
/// it keeps the newest.</summary>
internal sealed class DailyBackup(
    IDbContextFactory<ShopContext> contexts,
    BackupFile backups,
    DataFolder folder,
    ShopDatabase database,
    TimeProvider clock,
    ILogger<DailyBackup> log
) : BackgroundService
{
    private const string Why = "daily";
    private const int Kept = 14;

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
            if (Copies().Select(BackupFile.MadeAt).Max() is { } last && clock.GetUtcNow() - last < Due)
                return;
            await using var db = await contexts.CreateDbContextAsync(cancel);
            await backups.WriteAsync(db, Why, cancel);
            foreach (var old in Own().OrderDescending(StringComparer.Ordinal).Skip(Kept))
                File.Delete(old);
        }
        catch (Exception problem) when (problem is IOException or SqliteException or UnauthorizedAccessException)
        {
            log.LogError(problem, "No backup could be written to {Folder}; trying again in an hour", folder.Backups);
        }
    }

    private IEnumerable<string> Copies() => Directory.EnumerateFiles(folder.Backups, "*.db");

    private IEnumerable<string> Own() => Directory.EnumerateFiles(folder.Backups, $"*-{Why}.db");
}

using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using ShopPlanner.Services.Health;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Backups;

/// <summary>Makes one backup at a time, brings it to the second folder, removes those no longer kept, and says where that
/// fails.</summary>
internal sealed class CopyMaker(
    IDbContextFactory<ShopContext> contexts,
    ShopWork work,
    BackupFile backups,
    GoodCopies copies,
    SecondFolder second,
    LowDisk disk,
    ShopHealth health,
    ILogger<CopyMaker> log
) : IDisposable
{
    // A copy takes its time, and the shop's writers do not wait for it: only other copies do.
    private readonly SemaphoreSlim copying = new(1, 1);

    /// <summary>What keeps a backup from being made; a bug is not among them.</summary>
    public static bool IsTrouble(Exception problem) => problem is IOException or DbException or UnauthorizedAccessException;

    /// <summary>Makes one.</summary>
    /// <exception cref="IOException">It could not be made, and every page says so.</exception>
    public async Task<string> MakeAsync(string why, CancellationToken cancel)
    {
        await copying.WaitAsync(cancel);
        try
        {
            if (disk.Fault() is { } low)
                throw new IOException($"the disk {low}");
            await using var db = await contexts.CreateDbContextAsync(cancel);
            var made = await backups.WriteAsync(db, why, cancel, work.PauseAsync);
            health.Clear(HealthTopic.Backups);
            Settle(made);
            return made;
        }
        catch (Exception problem) when (IsTrouble(problem))
        {
            health.Tell(
                HealthTopic.Backups,
                $"The last backup could not be made: {problem.Message.ReplaceLineEndings(" ").TrimEnd('.')}. "
                    + $"What you enter is saved. {Earlier()} It is tried again every hour."
            );
            throw;
        }
        finally
        {
            copying.Release();
        }
    }

    /// <summary>Brings the newest backup to the second folder where it is missing there.</summary>
    public void CatchUp(string newest) => second.Bring(newest, []);

    public void Dispose() => copying.Dispose();

    private string Earlier() => copies.List().Count > 0 ? "Earlier backups are there." : "There is no backup yet.";

    private void Settle(string made)
    {
        var whole = copies.List();
        var surplus = CopyRotation
            .Surplus(Of(whole, GoodCopies.Daily).Select(file => (file, BackupFile.MadeAt(file)!.Value)))
            .Concat(whole.Where(IsUpgrade).Skip(CopyRotation.Others))
            .Concat(Of(whole, GoodCopies.BeforeRestore).Skip(CopyRotation.Others))
            .ToList();
        Remove(surplus);
        second.Bring(made, surplus);
    }

    private void Remove(List<string> surplus)
    {
        try
        {
            surplus.ForEach(File.Delete);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            log.LogWarning(problem, "Old backups were not removed; it is tried again with the next one");
        }
    }

    private static IEnumerable<string> Of(IEnumerable<string> files, string why) =>
        files.Where(file => BackupFile.Why(file) == why);

    private static bool IsUpgrade(string file) =>
        BackupFile.Why(file) is { } why
        && why.StartsWith(GoodCopies.BeforeUpgrade, StringComparison.Ordinal)
        && why != GoodCopies.BeforeRestore;
}

using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Backups;

internal sealed class BackupService(
    IDbContextFactory<ShopContext> contexts,
    ShopWork work,
    ShopCommands commands,
    BackupFile backups,
    DataFolder folder
) : IBackupService, IDisposable
{
    // A copy takes its time, and the shop's writers do not wait for it: only other copies do.
    private readonly SemaphoreSlim copying = new(1, 1);

    public async Task<Outcome<BackupView>> CreateAsync(CommandId command, CancellationToken cancel = default)
    {
        await copying.WaitAsync(cancel);
        try
        {
            return await CreateOnceAsync(command, cancel);
        }
        finally
        {
            copying.Release();
        }
    }

    public IReadOnlyList<BackupView> List() =>
        [.. Directory.EnumerateFiles(folder.Backups, "*.db").OrderDescending(StringComparer.Ordinal).Select(View)];

    public void Dispose() => copying.Dispose();

    private async Task<Outcome<BackupView>> CreateOnceAsync(CommandId command, CancellationToken cancel)
    {
        BackupView? written = null;
        var making = new Making<BackupView>(command, "backup")
        {
            Make = _ => Task.FromResult<Outcome<BackupView>>(written!),
            Made = copy => Path.GetFileName(copy.File),
            Find = (_, name) => Task.FromResult(Find(name)),
            What = "backup",
        };
        try
        {
            if (await work.ReadAsync(db => ShopCommands.FindAsync(db, making, cancel), cancel) is { } known)
                return known;
            written = await WriteAsync(cancel);
            // The copy is there: that it was made is noted whatever becomes of the asker.
            return await commands.RunAsync(making, CancellationToken.None);
        }
        catch (Exception problem) when (problem is IOException or SqliteException or UnauthorizedAccessException)
        {
            return Outcome.Faulty<BackupView>(
                new Fault("backup", folder.Backups, "could not be saved: " + problem.Message.ReplaceLineEndings(" "))
            );
        }
    }

    private async Task<BackupView> WriteAsync(CancellationToken cancel)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        return View(await backups.WriteAsync(db, "by-hand", cancel));
    }

    private BackupView? Find(string name)
    {
        var file = Path.Combine(folder.Backups, name);
        return File.Exists(file) ? View(file) : null;
    }

    private static BackupView View(string file)
    {
        var info = new FileInfo(file);
        return new BackupView(file, info.Length, info.LastWriteTimeUtc);
    }
}

using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Backups;

internal sealed class BackupService(IDbContextFactory<ShopContext> contexts, BackupFile backups, DataFolder folder)
    : IBackupService
{
    public async Task<Outcome<BackupView>> CreateAsync(CancellationToken cancel = default)
    {
        try
        {
            await using var db = await contexts.CreateDbContextAsync(cancel);
            return View(await backups.WriteAsync(db, "by-hand", cancel));
        }
        catch (Exception problem) when (problem is IOException or SqliteException or UnauthorizedAccessException)
        {
            return Outcome.Faulty<BackupView>(
                new Fault("backup", folder.Backups, "could not be written: " + problem.Message.ReplaceLineEndings(" "))
            );
        }
    }

    public IReadOnlyList<BackupView> List() =>
        [.. Directory.EnumerateFiles(folder.Backups, "*.db").OrderDescending(StringComparer.Ordinal).Select(View)];

    private static BackupView View(string file)
    {
        var info = new FileInfo(file);
        return new BackupView(file, info.Length, info.LastWriteTimeUtc);
    }
}

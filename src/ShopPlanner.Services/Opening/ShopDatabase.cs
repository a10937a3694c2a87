using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using ShopPlanner.Services.Demo;
using ShopPlanner.Services.Health;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Postgres;

namespace ShopPlanner.Services.Opening;

/// <summary>The shop's database as a whole: opened once by the program that owns the data folder, before anything else is
/// asked.</summary>
public sealed class ShopDatabase : IDisposable
{
    private readonly ServicesOptions options;
    private readonly DataFolder folder;
    private readonly ShopContextFactory contexts;
    private readonly BackupFile backups;
    private readonly DemoSeed demo;
    private readonly TimeProvider clock;
    private readonly ShopRestore restore;
    private readonly ShopHealth health;
    private readonly ILogger<ShopDatabase> log;
    private readonly SemaphoreSlim opening = new(1, 1);
    private FileStream? held;
    private ServerLease? lease;

    internal ShopDatabase(
        ServicesOptions options,
        DataFolder folder,
        ShopContextFactory contexts,
        BackupFile backups,
        DemoSeed demo,
        TimeProvider clock,
        ShopRestore restore,
        ShopHealth health,
        ILogger<ShopDatabase> log
    )
    {
        (this.options, this.folder, this.contexts, this.backups, this.demo) = (options, folder, contexts, backups, demo);
        (this.clock, this.restore, this.health, this.log) = (clock, restore, health, log);
    }

    /// <summary>The folder for keys that must survive a restart; never part of a backup.</summary>
    public string KeysFolder => folder.Keys;

    /// <summary>True when this start made the database.</summary>
    internal bool IsNew { get; private set; }

    /// <summary>Takes the data folder, makes or upgrades the database and fills what a new shop starts with. Asking again does
    /// nothing.</summary>
    /// <exception cref="ShopStartException">The shop cannot be opened; the message is one line for the person.</exception>
    public async Task OpenAsync(CancellationToken cancel = default)
    {
        await opening.WaitAsync(cancel);
        try
        {
            if (held is null)
                held = await TakeAndOpenAsync(cancel);
        }
        finally
        {
            opening.Release();
        }
    }

    /// <summary>Puts a backup in the shop's place; refused where the shop is open. The shop stays closed.</summary>
    /// <param name="copy">Full path of the backup.</param>
    /// <param name="cancel">Stops it; everything is as it was then.</param>
    /// <exception cref="ShopStartException">It was not restored, and everything is as it was.</exception>
    public async Task<RestoreResult> RestoreAsync(string copy, CancellationToken cancel = default)
    {
        SqliteFacts.CheckVersion(SqliteFacts.LibraryVersion());
        try
        {
            folder.Prepare();
            using var taken = folder.TakeLock();
            restore.GoBackIfUnfinished();
            folder.RemoveUnfinished();
            return await restore.RunAsync(copy, UpgradeAsync, cancel);
        }
        catch (Exception problem) when (FullDisk.Explains(problem, folder))
        {
            throw FullDisk.Say(problem, folder);
        }
    }

    /// <summary>Lets the data folder go.</summary>
    public void Dispose()
    {
        contexts.Release();
        lease?.Dispose();
        held?.Dispose();
        opening.Dispose();
    }

    private async Task<FileStream> TakeAndOpenAsync(CancellationToken cancel)
    {
        SqliteFacts.CheckVersion(SqliteFacts.LibraryVersion());
        try
        {
            folder.Prepare();
            return contexts is PostgresContextFactory server
                ? await OpenServerAsync(server, folder.TakeLock(), cancel)
                : await OpenHeldAsync(folder.TakeLock(), cancel);
        }
        catch (Exception problem) when (FullDisk.Explains(problem, folder))
        {
            throw FullDisk.Say(problem, folder);
        }
    }

    private async Task<FileStream> OpenServerAsync(PostgresContextFactory server, FileStream taken, CancellationToken cancel)
    {
        try
        {
            (lease, IsNew) = await new ServerShop(server, folder, backups, health, log).OpenAsync(FillAsync, cancel);
            return taken;
        }
        catch
        {
            taken.Dispose();
            throw;
        }
    }

    private async Task<FileStream> OpenHeldAsync(FileStream taken, CancellationToken cancel)
    {
        try
        {
            if (restore.GoBackIfUnfinished())
                health.Tell(
                    HealthTopic.Restore,
                    "A restore was cut short, so it was taken back. The shop is as it was before it."
                );
            folder.RemoveUnfinished();
            await RestoreAsAskedAsync(cancel);
            if (!File.Exists(folder.Database))
                await CreateAsync(cancel);
            else if (DatabaseFile.IsReadOnly(folder))
                await OpenForReadingAsync(cancel);
            else
                await UpgradeAsync(cancel);
            return taken;
        }
        catch (Exception problem)
        {
            contexts.Release();
            taken.Dispose();
            if (problem is SqliteException or DbUpdateException or IOException or UnauthorizedAccessException)
                throw Explain(problem);
            throw;
        }
    }

    // The wish is gone before it is tried: one that fails is not tried at every start.
    private async Task RestoreAsAskedAsync(CancellationToken cancel)
    {
        if (!File.Exists(folder.RestoreRequest))
            return;
        var copy = (await File.ReadAllTextAsync(folder.RestoreRequest, cancel)).Trim();
        File.Delete(folder.RestoreRequest);
        try
        {
            var result = await restore.RunAsync(copy, UpgradeAsync, cancel);
            var before = result.Kept is { } kept ? $" What was there before is kept in {kept}." : "";
            health.Tell(HealthTopic.Restore, $"The backup {Path.GetFileName(copy)} was restored.{before}");
        }
        catch (ShopStartException problem)
        {
            log.LogError(problem, "The restore that was asked for in Setup failed; the shop is as it was");
            health.Tell(HealthTopic.Restore, problem.Message);
        }
    }

    private ShopStartException Explain(Exception problem) =>
        new(
            $"The shop in {folder.Root} cannot be opened: {Cause(problem).Message.ReplaceLineEndings(" ").TrimEnd('.')}. "
                + $"What was saved is still in {folder.Database}; backups are in {folder.Backups}.",
            problem
        );

    // The message of an inner one would leave out the file.
    private static Exception Cause(Exception problem) => problem is DbUpdateException ? problem.GetBaseException() : problem;

    private async Task UpgradeAsync(CancellationToken cancel)
    {
        DatabaseFile.CheckIsShop(folder);
        await new Migrator(contexts, folder, backups).UpgradeAsync(cancel);
        await FillAsync(contexts, cancel);
        log.LogDebug("The shop's data is in {Folder}", folder.Root);
    }

    // Nothing of what a start brings up to date can be written.
    private async Task OpenForReadingAsync(CancellationToken cancel)
    {
        DatabaseFile.CheckIsShop(folder, isReadOnly: true);
        contexts.OnlyRead();
        await new Migrator(contexts, folder, backups).CheckIsCurrentAsync(cancel);
        health.Tell(
            HealthTopic.ReadOnly,
            $"The shop is open for reading only: {folder.Database} is read-only for user '{Environment.UserName}'. Pages, "
                + "downloads and backups work, but nothing you enter or mark is saved. Let that user write the file, then "
                + "start the program again."
        );
    }

    private async Task CreateAsync(CancellationToken cancel)
    {
        DatabaseFile.CheckFolderIsNew(folder);
        var unfinished = new SqliteContextFactory(folder.Unfinished);
        try
        {
            await new Migrator(unfinished, folder, backups).CreateAsync(cancel);
            await FillAsync(unfinished, cancel);
            await GatherAsync(unfinished, cancel);
        }
        finally
        {
            unfinished.Release();
        }

        File.Move(folder.Unfinished, folder.Database);
        IsNew = true;
        log.LogDebug("A new shop was made in {Folder}", folder.Root);
    }

    private async Task FillAsync(ShopContextFactory file, CancellationToken cancel)
    {
        await using var db = file.CreateDbContext();
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        await BringUpAsync(db, log, cancel);
        await PlanJobStore.StopAbandonedAsync(db, cancel);
        await ShopCommands.ForgetOldAsync(db, clock, cancel);
        if (options.Demo)
            await demo.AddToEmptyShopAsync(db, cancel);
        await db.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
    }

    /// <summary>Brings rows that an earlier program wrote to what this one expects, and adds materials that it knows.</summary>
    internal static async Task BringUpAsync(ShopContext db, ILogger log, CancellationToken cancel)
    {
        await new DocumentUpgrade(db, log).RunAsync(cancel);
        await new PurchaseUpgrade(db, log).RunAsync(cancel);
        await MaterialSeed.AddMissingAsync(db, cancel);
        await new FigureUpgrade(db, log).RunAsync(cancel);
    }

    // Everything into the one file, which can be renamed once it is closed.
    private static async Task GatherAsync(ShopContextFactory file, CancellationToken cancel)
    {
        await using var db = file.CreateDbContext();
        await db.Database.ExecuteSqlRawAsync("PRAGMA wal_checkpoint(TRUNCATE)", cancel);
    }
}

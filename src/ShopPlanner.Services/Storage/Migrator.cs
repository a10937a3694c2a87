using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage;

/// <summary>Brings a database to this program's schema. The data folder's lock is held, so nobody else migrates.</summary>
internal sealed class Migrator(ShopContextFactory contexts, DataFolder folder, BackupFile backups)
{
    /// <summary>The fact that names the program which wrote the database.</summary>
    public const string WrittenBy = "written by";

    /// <summary>This program's version.</summary>
    public static string ProgramVersion { get; } = typeof(Migrator).Assembly.GetName().Version!.ToString(3);

    /// <summary>Fills a new file.</summary>
    public async Task CreateAsync(CancellationToken cancel)
    {
        await using var db = contexts.CreateDbContext();
        await db.Database.MigrateAsync(cancel);
        await SignAsync(db, cancel);
    }

    /// <summary>Refuses a newer schema; copies the database before an older one is changed.</summary>
    public async Task UpgradeAsync(CancellationToken cancel)
    {
        await using var db = contexts.CreateDbContext();
        var applied = await db.Database.GetAppliedMigrationsAsync(cancel);
        var unknown = applied.Except(db.Database.GetMigrations()).ToList();
        if (unknown.Count > 0)
            throw await RefuseNewerAsync(db, unknown[0], cancel);
        await contexts.ClearAbandonedAsync(db, cancel);
        var pending = (await db.Database.GetPendingMigrationsAsync(cancel)).ToList();
        if (pending.Count > 0)
        {
            if (contexts.CanCopyOlder)
                await backups.WriteOnceAsync(db, $"before-{pending[0]}", cancel);
            await db.Database.MigrateAsync(cancel);
        }

        await SignAsync(db, cancel);
    }

    /// <summary>Refuses a database that cannot be written unless this very version left it: any other must be brought up to
    /// date, or is newer.</summary>
    public async Task CheckIsCurrentAsync(CancellationToken cancel)
    {
        await using var db = contexts.CreateDbContext();
        var applied = await db.Database.GetAppliedMigrationsAsync(cancel);
        if (applied.Except(db.Database.GetMigrations()).FirstOrDefault() is { } unknown)
            throw await RefuseNewerAsync(db, unknown, cancel);
        var pending = await db.Database.GetPendingMigrationsAsync(cancel);
        var writer = await WriterAsync(db, cancel);
        if (pending.Any() || writer != ProgramVersion)
            throw new ShopStartException(
                $"{contexts.Name} cannot be written and was left by Shop Planner {writer ?? "of an earlier version"}; this is "
                    + $"{ProgramVersion}, which must bring it up to date first. Let user '{Environment.UserName}' write the file "
                    + "and start again."
            );
    }

    private static async Task SignAsync(ShopContext db, CancellationToken cancel)
    {
        var fact = await db.Facts.FindAsync([WrittenBy], cancel);
        if (fact is null)
            db.Facts.Add(new StoredFact { Name = WrittenBy, Value = ProgramVersion });
        else
            fact.Value = ProgramVersion;
        await db.SaveChangesAsync(cancel);
    }

    private async Task<ShopStartException> RefuseNewerAsync(ShopContext db, string migration, CancellationToken cancel)
    {
        var writer = await WriterAsync(db, cancel);
        return new ShopStartException(
            $"{contexts.Name} was written by Shop Planner {writer ?? "of a later version"} (schema {migration}); "
                + $"this is {ProgramVersion}. "
                + $"Install that version, or put the copy made before the upgrade back from {folder.Backups}."
        );
    }

    private static Task<string?> WriterAsync(ShopContext db, CancellationToken cancel) =>
        db.Database.SqlQuery<string>($"SELECT \"Value\" FROM \"Facts\" WHERE \"Name\" = {WrittenBy}").FirstOrDefaultAsync(cancel);
}

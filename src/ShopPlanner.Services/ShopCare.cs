using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Backups;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services;

/// <summary>Whether a data folder is sound.</summary>
/// <param name="Lines">What was found, a line each, whole sentences.</param>
/// <param name="IsSound">Whether the shop in it can be opened and every page of its database is whole.</param>
/// <param name="HasFreshBackup">Whether a good backup is at most <see cref="ShopCare.Fresh"/> old.</param>
public sealed record ShopCheck(IReadOnlyList<string> Lines, bool IsSound, bool HasFreshBackup);

/// <summary>Looks after a data folder from outside the program that serves it.</summary>
public sealed class ShopCare : IAsyncDisposable
{
    private const int Tries = 5;

    private readonly ServiceProvider services;
    private readonly DataFolder folder;

    /// <summary>How old the newest backup of a shop in use may be.</summary>
    public static readonly TimeSpan Fresh = TimeSpan.FromDays(3);

    /// <param name="dataFolder">The shop's data folder.</param>
    /// <param name="clock">Tells the time.</param>
    public ShopCare(string dataFolder, TimeProvider clock)
    {
        var all = new ServiceCollection();
        all.AddSingleton(clock);
        all.AddShopPlanner(new ServicesOptions(dataFolder, Demo: false));
        services = all.BuildServiceProvider();
        folder = services.GetRequiredService<DataFolder>();
    }

    /// <summary>Makes a verified backup, also while the program runs on the folder.</summary>
    /// <returns>The file.</returns>
    /// <exception cref="ShopStartException">None could be made; the message is one line.</exception>
    public async Task<string> BackUpAsync(CancellationToken cancel = default)
    {
        RefuseWithoutShop();
        try
        {
            for (var attempt = 1; ; attempt++)
                try
                {
                    await using var db = services.GetRequiredService<ShopContextFactory>().CreateDbContext();
                    return await services.GetRequiredService<BackupFile>().WriteAsync(db, GoodCopies.ByHand, cancel);
                }
                catch (CopyDiffersException) when (attempt < Tries)
                {
                    // The program wrote between the two looks; the next copy is likely to fall between two writes.
                    await Task.Delay(TimeSpan.FromMilliseconds(50 * attempt), cancel);
                }
        }
        catch (Exception problem) when (CopyMaker.IsTrouble(problem))
        {
            throw new ShopStartException(
                $"No backup of {folder.Database} could be made: {problem.Message.ReplaceLineEndings(" ")}",
                problem
            );
        }
    }

    /// <summary>Brings a backup to another file, whole or not at all.</summary>
    /// <exception cref="ShopStartException">It could not be written.</exception>
    public static void Bring(string backup, string to)
    {
        try
        {
            Disk.CopyWhole(backup, Path.GetFullPath(to));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new ShopStartException(
                $"The backup is {backup}, but '{to}' cannot be written: {problem.Message.ReplaceLineEndings(" ")}",
                problem
            );
        }
    }

    /// <summary>Puts a backup in the shop's place. Refused while the program runs on the folder.</summary>
    /// <exception cref="ShopStartException">It was not restored, and everything is as it was.</exception>
    public Task<RestoreResult> RestoreAsync(string copy, CancellationToken cancel = default) =>
        services.GetRequiredService<ShopDatabase>().RestoreAsync(Path.GetFullPath(copy), cancel);

    /// <summary>Says whether the folder is sound. Changes nothing.</summary>
    public ShopCheck Check()
    {
        var lines = new List<string>();
        var sound = IsDatabaseSound(lines) & IsRestoreFinished(lines);
        var fresh = IsBackupFresh(lines);
        return new ShopCheck(lines, sound, fresh);
    }

    /// <inheritdoc />
    public ValueTask DisposeAsync() => services.DisposeAsync();

    private bool IsDatabaseSound(List<string> lines)
    {
        if (LiveFile.Fault(folder.Database) is { } fault)
        {
            lines.Add($"{folder.Database} {fault}. See the newest good backup below.");
            return false;
        }

        using var live = LiveFile.OpenForReading(folder.Database);
        var facts = CopyFacts.Of(live);
        using var db = services.GetRequiredService<ShopContextFactory>().CreateDbContext();
        var known = db.Database.GetMigrations().ToList();
        if (facts.NewerFault(known) is { } newer)
        {
            lines.Add($"{folder.Database} {newer}.");
            return false;
        }

        var steps = known.Count - facts.Migrations.Count;
        lines.Add($"{folder.Database} is whole: every page, every reference. {Holds(facts)}");
        lines.Add(
            $"Written by Shop Planner {facts.Program}; "
                + (steps == 0 ? "its schema is this program's." : $"the next start upgrades its schema by {steps} steps.")
        );
        return true;
    }

    private bool IsRestoreFinished(List<string> lines)
    {
        if (!File.Exists(folder.RestoreMarker))
            return true;
        lines.Add("A restore was cut short. The next start puts back what was there before.");
        return false;
    }

    private bool IsBackupFresh(List<string> lines)
    {
        var copies = services.GetRequiredService<GoodCopies>();
        lines.AddRange(copies.Others().Select(one => $"{one.File} {one.Fault}: it is not a backup."));
        lines.AddRange(
            copies
                .List()
                .Select(file => (file, Fault: copies.Fault(file)))
                .Where(one => one.Fault is not null)
                .Select(one => $"{one.file} {one.Fault}: it is not a backup.")
        );
        if (copies.Newest() is not { } newest)
        {
            lines.Add($"There is no good backup in {folder.Backups}.");
            return false;
        }

        var age = services.GetRequiredService<TimeProvider>().GetUtcNow() - BackupFile.MadeAt(newest)!.Value;
        lines.Add($"The newest good backup is {newest}, {Age(age)} old.");
        return age <= Fresh;
    }

    private static string Age(TimeSpan age) =>
        age < TimeSpan.FromDays(2) ? $"{Math.Max(0, (int)age.TotalHours)} hours" : $"{(int)age.TotalDays} days";

    private static string Holds(CopyFacts facts) =>
        $"It holds {facts.Projects} projects, {facts.Plans} cut plans, {facts.Pieces} pieces of stock.";

    private void RefuseWithoutShop()
    {
        if (!File.Exists(folder.Database))
            throw new ShopStartException($"There is no shop in {folder.Root}: name its data folder with --data.");
        if (CopyFile.QuickFault(folder.Database, countsPages: false) is { } fault)
            throw new ShopStartException($"{folder.Database} {fault}. No backup was made.");
    }
}

using ShopPlanner.Services.Health;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Backups;

internal sealed class ConditionService(DataFolder folder, FreeSpace space, IBackupService backups, ShopWork work, PageCheck check)
    : IConditionService
{
    private const double Usual = 0.5,
        Slow = 0.99;

    private static readonly string Sqlite = SqliteFacts.LibraryVersion();

    public ShopCondition Get()
    {
        var copies = backups.List();
        return new(
            Migrator.ProgramVersion,
            Sqlite,
            folder.Root,
            Size(folder.Database) + Size(folder.Database + "-wal"),
            space.Of(folder.Root),
            check.DoneUtc,
            copies is [var newest, ..] ? newest.MadeUtc : null,
            copies.Count,
            backups.Second.Folder
        )
        {
            UsualChange = work.Times.Within(Usual),
            SlowChange = work.Times.Within(Slow),
        };
    }

    private static long Size(string file) => new FileInfo(file) is { Exists: true } there ? there.Length : 0;
}

using System.Collections.Concurrent;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Backups;

/// <summary>Tells backups from files that only have the name of one: empty, cut off, damaged, or dated in the future.</summary>
internal sealed class GoodCopies(DataFolder folder, TimeProvider clock)
{
    /// <summary>Names of the reasons why a backup is made.</summary>
    public const string Daily = "daily",
        ByHand = "by-hand",
        BeforeUpgrade = "before-",
        BeforeRestore = ShopRestore.Why;

    // Two programs' clocks, or one that was set meanwhile.
    private static readonly TimeSpan Slack = TimeSpan.FromMinutes(10);

    private readonly ConcurrentDictionary<(string File, long Bytes, DateTime Written), string?> checkedFiles = new();

    // What is dated later was made under a clock that ran ahead, or by no program of ours.
    private DateTimeOffset Latest => clock.GetUtcNow() + Slack;

    /// <summary>Returns the backups that look whole, newest first. Each was checked when it was made.</summary>
    public IReadOnlyList<string> List() => [.. Dated().Where(file => CopyFile.QuickFault(file) is null)];

    /// <summary>Returns files with a backup's ending that are none, each with what is wrong with it.</summary>
    public IReadOnlyList<(string File, string Fault)> Others() =>
        [
            .. Files()
                .Select(file => (file, Fault: NameFault(file) ?? CopyFile.QuickFault(file)))
                .Where(one => one.Fault is not null)
                .Select(one => (one.file, one.Fault!)),
        ];

    /// <summary>Returns the newest backup that was now found whole, every page of it; null where there is none.</summary>
    public string? Newest() => List().FirstOrDefault(file => Fault(file) is null);

    /// <summary>Checks every page of a backup, once as long as the file stays as it is.</summary>
    public string? Fault(string file)
    {
        var info = new FileInfo(file);
        return info.Exists
            ? checkedFiles.GetOrAdd((file, info.Length, info.LastWriteTimeUtc), _ => CopyFile.Fault(file))
            : "is no longer there";
    }

    private IEnumerable<string> Dated() =>
        Files().Where(file => NameFault(file) is null).OrderByDescending(file => BackupFile.MadeAt(file)!.Value);

    private string? NameFault(string file) =>
        BackupFile.MadeAt(file) switch
        {
            null => "does not have a backup's name",
            var made when made > Latest => "is dated in the future",
            _ => null,
        };

    private IEnumerable<string> Files() =>
        Directory.Exists(folder.Backups) ? Directory.EnumerateFiles(folder.Backups, "*.db") : [];
}

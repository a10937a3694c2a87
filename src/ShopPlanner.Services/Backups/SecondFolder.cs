using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Health;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Backups;

/// <summary>Another folder, on another disk or a share, that every backup is copied to.</summary>
internal sealed class SecondFolder(ServicesOptions options, DataFolder folder, ShopHealth health)
{
    public const string Field = "second-folder";

    private const int Longest = 500;

    /// <summary>Whether the program was started with it, so that Setup cannot change it.</summary>
    public bool IsByOption => options.SecondBackups is not null;

    /// <summary>The folder; null where there is none.</summary>
    public string? Where => options.SecondBackups ?? Stored();

    /// <summary>Chooses it; a blank text means none.</summary>
    public Outcome<Done> Choose(string text)
    {
        var path = text.Trim();
        if (IsByOption)
            return Refuse(path, "was not stored: the folder is set by --backups");
        if (path.Length > 0 && Hindrance(path) is { } why)
            return Refuse(path, why);
        try
        {
            if (path.Length == 0)
                File.Delete(folder.SecondBackups);
            else
                File.WriteAllText(folder.SecondBackups, path);
            health.Clear(HealthTopic.SecondFolder);
            return Done.Value;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return Refuse(path, "was not stored: " + problem.Message.ReplaceLineEndings(" "));
        }
    }

    /// <summary>Copies a backup there unless it is there already, and removes there what is removed here.</summary>
    public void Bring(string backup, IEnumerable<string> removed)
    {
        if (Where is not { } second)
            return;
        try
        {
            if (Hindrance(second) is { } why)
                throw new IOException($"'{second}' {why}");
            var there = Path.Combine(second, Path.GetFileName(backup));
            if (!File.Exists(there) || new FileInfo(there).Length != new FileInfo(backup).Length)
                Disk.CopyWhole(backup, there);
            foreach (var old in removed)
                File.Delete(Path.Combine(second, Path.GetFileName(old)));
            health.Clear(HealthTopic.SecondFolder);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            health.Tell(
                HealthTopic.SecondFolder,
                $"Backups do not reach the second folder: {problem.Message.ReplaceLineEndings(" ").TrimEnd('.')}. "
                    + "Those in the data folder are made. It is tried again every hour."
            );
        }
    }

    // A folder that is not there is not made: where a share is not mounted, the backups would fill this disk.
    private string? Hindrance(string path)
    {
        if (path.Length > Longest || !Path.IsPathFullyQualified(path))
            return "is not a full path: write it like /mnt/usb/shop or D:\\Shop";
        if (!Directory.Exists(path))
            return "isn't there: connect the disk or share, or make the folder first";
        return IsInside(path) ? "is in the data folder: choose a folder on another disk" : null;
    }

    private bool IsInside(string path) =>
        (Path.GetFullPath(path) + Path.DirectorySeparatorChar).StartsWith(
            folder.Root + Path.DirectorySeparatorChar,
            OperatingSystem.IsWindows() ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal
        );

    private string? Stored()
    {
        try
        {
            return File.ReadAllText(folder.SecondBackups).Trim() is { Length: > 0 } path ? path : null;
        }
        catch (Exception problem) when (problem is FileNotFoundException or DirectoryNotFoundException)
        {
            return null;
        }
    }

    private static Outcome<Done> Refuse(string path, string why) => Outcome.Faulty<Done>(Fault.Of(Field, path, why));
}

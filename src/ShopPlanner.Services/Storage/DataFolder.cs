namespace ShopPlanner.Services.Storage;

/// <summary>The folder that holds a shop's data: <c>shop.db</c>, <c>backups/</c>, <c>keys/</c>, and a lock held while it is
/// open.</summary>
internal sealed class DataFolder(string path)
{
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    public string Root { get; } = Path.GetFullPath(path);

    public string Database => Path.Combine(Root, "shop.db");

    /// <summary>A new database grows here and takes its name when it is whole, so that a half-made one is never opened.</summary>
    public string Unfinished => Path.Combine(Root, "shop.db.new");

    public string Backups => Path.Combine(Root, "backups");

    public string Keys => Path.Combine(Root, "keys");

    /// <summary>Says who may open the shop; in no backup, and a restore does not change it.</summary>
    public string Access => Path.Combine(Root, "access.json");

    /// <summary>Names the second folder for backups; a restore does not change it.</summary>
    public string SecondBackups => Path.Combine(Root, "second-backups.txt");

    /// <summary>A copy on its way into the database's place.</summary>
    public string Restored => Path.Combine(Root, "shop.db.restored");

    /// <summary>Stands while a restore is not finished; see <see cref="RestoreSwap"/>.</summary>
    public string RestoreMarker => Path.Combine(Root, "restore-unfinished.json");

    /// <summary>Names the backup that the next start restores.</summary>
    public string RestoreRequest => Path.Combine(Root, "restore-at-start.txt");

    private string Lock => Path.Combine(Root, "shop.lock");

    /// <summary>Makes the folders, for the owner alone, and sees that files can be written and the keys read.</summary>
    public void Prepare()
    {
        try
        {
            foreach (var folder in new[] { Root, Backups, Keys })
            {
                Make(folder);
                TryWriting(folder);
            }

            // A key written by another user cannot be read, and every form would be refused.
            foreach (var key in Directory.EnumerateFiles(Keys))
                File.OpenRead(key).Dispose();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new ShopStartException(
                $"The data folder {Root} cannot be used by user '{Environment.UserName}': {OneLine(problem)} "
                    + "Let that user read and write it, or choose another with --data.",
                problem
            );
        }
    }

    /// <summary>Holds the folder until disposed; a second program that asks is refused.</summary>
    public FileStream TakeLock()
    {
        try
        {
            return new FileStream(Lock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (UnauthorizedAccessException problem)
        {
            throw new ShopStartException(
                $"{Lock} belongs to another user: {OneLine(problem)} Start the program as that user, or choose "
                    + $"another folder with --data.",
                problem
            );
        }
        catch (IOException problem)
        {
            throw new ShopStartException(
                $"Another Shop Planner is running on the data folder {Root}. Stop it, or choose another folder with --data.",
                problem
            );
        }
    }

    /// <summary>Sweeps away what a killed program left half-made. Only to be called while the lock is held.</summary>
    public void RemoveUnfinished()
    {
        foreach (var file in Directory.EnumerateFiles(Root, "shop.db.new*"))
            File.Delete(file);
        foreach (var file in Directory.EnumerateFiles(Root, "shop.db.restored*"))
            File.Delete(file);
        foreach (var aside in Directory.EnumerateDirectories(Root, "set-aside-*"))
            if (!Directory.EnumerateFileSystemEntries(aside).Any())
                Directory.Delete(aside);
        foreach (var file in Directory.EnumerateFiles(Backups, "*.part*"))
            File.Delete(file);
    }

    private static void Make(string folder)
    {
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(folder);
        else
            Directory.CreateDirectory(folder, OwnerOnly);
    }

    private static void TryWriting(string folder)
    {
        var probe = Path.Combine(folder, $"writable-{Guid.CreateVersion7():N}.tmp");
        File.WriteAllText(probe, "");
        File.Delete(probe);
    }

    private static string OneLine(Exception problem) => problem.Message.ReplaceLineEndings(" ");
}

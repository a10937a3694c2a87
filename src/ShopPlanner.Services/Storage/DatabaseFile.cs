using System.Globalization;
using Microsoft.Data.Sqlite;

namespace ShopPlanner.Services.Storage;

/// <summary>Looks at an existing file before anything is done to it: one that is not a whole shop database is refused, never
/// replaced.</summary>
internal static class DatabaseFile
{
    // EROFS of Linux and macOS.
    private const int ReadOnlyDisk = 30;

    private const UnixFileMode Writable = UnixFileMode.UserWrite | UnixFileMode.GroupWrite | UnixFileMode.OtherWrite;

    private static readonly byte[] Header = "SQLite format 3\0"u8.ToArray();

    /// <summary>Refuses a folder whose database is gone while traces of one are there.</summary>
    public static void CheckFolderIsNew(DataFolder folder)
    {
        var traces = Directory
            .EnumerateFiles(folder.Backups, "*.db")
            .Concat(Directory.EnumerateFiles(folder.Root, "shop.db-*"))
            .Concat(Directory.EnumerateFiles(folder.Keys, "*.xml"));
        if (traces.FirstOrDefault() is { } trace)
            throw new ShopStartException(
                $"{folder.Database} is missing, but {trace} shows that there was one. {Advice(folder)}, "
                    + "or choose an empty folder with --data."
            );
    }

    /// <summary>Whether the database may be read and not written. One that is marked so is left alone also by a superuser, who
    /// may write any file.</summary>
    public static bool IsReadOnly(DataFolder folder)
    {
        if (IsMarkedReadOnly(folder.Database))
            return true;
        try
        {
            File.OpenHandle(folder.Database, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite).Dispose();
            return false;
        }
        catch (Exception problem) when (problem is UnauthorizedAccessException or IOException { HResult: ReadOnlyDisk })
        {
            return true;
        }
    }

    /// <summary>Refuses a file that is empty, not SQLite, another program's or damaged. Where it may be written, a backup put in
    /// its place, one file without a write-ahead log, gets one.</summary>
    public static void CheckIsShop(DataFolder folder, bool isReadOnly = false)
    {
        CheckHeader(folder);
        try
        {
            CheckInside(folder, isReadOnly);
        }
        catch (SqliteException problem)
        {
            throw Refuse(folder, $"cannot be opened ({problem.Message.ReplaceLineEndings(" ")})", problem);
        }
    }

    private static bool IsMarkedReadOnly(string file) =>
        OperatingSystem.IsWindows()
            ? File.GetAttributes(file).HasFlag(FileAttributes.ReadOnly)
            : (File.GetUnixFileMode(file) & Writable) == 0;

    private static void CheckHeader(DataFolder folder)
    {
        using var file = new FileStream(folder.Database, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var start = new byte[Header.Length];
        var read = file.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
        if (read == 0)
            throw Refuse(folder, "is empty");
        if (!start.AsSpan(0, read).SequenceEqual(Header))
            throw Refuse(folder, "is not a SQLite database");
    }

    private static void CheckInside(DataFolder folder, bool isReadOnly)
    {
        using var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder
            {
                DataSource = folder.Database,
                Mode = isReadOnly ? SqliteOpenMode.ReadOnly : SqliteOpenMode.ReadWrite,
                Pooling = false,
            }.ToString()
        );
        connection.Open();
        var id = SqliteFacts.Ask(connection, "PRAGMA application_id");
        if (id != SqliteFacts.ApplicationId.ToString(CultureInfo.InvariantCulture))
            throw Refuse(folder, "is another program's database");
        var damage = SqliteFacts.Ask(connection, "PRAGMA quick_check(1)");
        if (damage != "ok")
            throw Refuse(folder, $"is damaged ({damage.ReplaceLineEndings(" ")})");
        if (!isReadOnly)
            SqliteFacts.Ask(connection, "PRAGMA journal_mode = WAL");
    }

    private static ShopStartException Refuse(DataFolder folder, string what, Exception? inner = null)
    {
        var message = $"{folder.Database} {what}. It was left as it is. {Advice(folder)}, or choose another folder with --data.";
        return inner is null ? new ShopStartException(message) : new ShopStartException(message, inner);
    }

    // Names in order are copies in order.
    private static string Advice(DataFolder folder) =>
        Directory
            .EnumerateFiles(folder.Backups, "*.db")
            .Where(file => BackupFile.MadeAt(file) is not null && CopyFile.QuickFault(file) is null)
            .Max(StringComparer.Ordinal)
            is { } newest
            ? $"Restore the newest backup with 'shop-planner restore {newest} --data {folder.Root}'"
            : $"There is no backup in {folder.Backups}: restore one kept elsewhere with "
                + $"'shop-planner restore FILE --data {folder.Root}'";
}

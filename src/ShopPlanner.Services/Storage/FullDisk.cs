using System.Globalization;
using Microsoft.Data.Sqlite;

namespace ShopPlanner.Services.Storage;

/// <summary>Tells a disk without room from a shop that cannot be opened. Nothing is wrong with the shop then, and nothing is to
/// be put in its place.</summary>
internal static class FullDisk
{
    private const int SqliteIo = 10,
        SqliteFull = 13,
        SqliteCannotOpen = 14;

    // ENOSPC (28), EDQUOT of Linux (122) and of macOS (69, from memory); ERROR_DISK_FULL and ERROR_HANDLE_DISK_FULL of Windows
    // (112 and 39, from memory).
    private static readonly int[] SystemCodes = [28, 122, 69, unchecked((int)0x80070070), unchecked((int)0x80070027)];

    private const long Megabyte = 1_000_000;

    // A new shop takes 0.3 MB (measured), its write-ahead log about 4 MB before it is gathered (1,000 pages: sqlite.org/wal.html,
    // section 2.1); as much again for the first day's work.
    private const long LeastRoom = 10 * Megabyte;

    // SQLite tells a shared-memory file that cannot grow as an input error, a log that cannot be made as one that cannot be
    // opened.
    private const long NextToNothing = Megabyte;

    /// <summary>Whether the start failed because the disk is full.</summary>
    public static bool Explains(Exception problem, DataFolder folder)
    {
        for (var at = problem; at is not null; at = at.InnerException)
            if (IsFull(at) || (MayBeFull(at) && Free(folder) < NextToNothing))
                return true;
        return false;
    }

    /// <summary>Returns what to tell the person who started the program.</summary>
    public static ShopStartException Say(Exception problem, DataFolder folder) =>
        new(
            $"The disk that holds {folder.Root} is full: {Room(Free(folder))} free, at least {Room(Needed(folder))} needed. "
                + "Make room on it and start again, or choose a folder on another disk with --data. "
                + "Nothing is damaged, and what was saved is still there.",
            problem
        );

    // An upgrade copies the database and may then write all of it once more.
    private static long Needed(DataFolder folder) =>
        LeastRoom + (File.Exists(folder.Database) ? 2 * new FileInfo(folder.Database).Length : 0);

    private static bool IsFull(Exception problem) =>
        problem is SqliteException { SqliteErrorCode: SqliteFull }
        || (problem is IOException && SystemCodes.Contains(problem.HResult));

    private static bool MayBeFull(Exception problem) =>
        problem is SqliteException { SqliteErrorCode: SqliteIo or SqliteCannotOpen };

    private static long Free(DataFolder folder) => new DriveInfo(Existing(folder.Root)).AvailableFreeSpace;

    private static string Existing(string path) =>
        Directory.Exists(path) || Path.GetDirectoryName(path) is not { } parent ? path : Existing(parent);

    private static string Room(long bytes) =>
        bytes < Megabyte ? "less than 1 MB" : string.Create(CultureInfo.InvariantCulture, $"{bytes / Megabyte} MB");
}

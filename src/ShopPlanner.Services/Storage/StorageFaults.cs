using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Storage;

/// <summary>What the disk or another device may do to a save, told so that a person can act on it. Bugs are not among
/// them.</summary>
internal static class StorageFaults
{
    private const int ReadOnly = 8,
        Io = 10,
        Corrupt = 11,
        Full = 13;
    private const int UniqueViolated = 2067,
        KeyViolated = 1555;

    /// <summary>Refuses every change of a shop that is open for reading only.</summary>
    public static Fault OnlyRead { get; } =
        new(
            "storage",
            "the shop",
            "is open for reading only: nothing was saved; let the program write shop.db and start it again"
        );

    public static (OutcomeKind Kind, Fault Fault)? Find(Exception problem) =>
        problem switch
        {
            DbUpdateConcurrencyException => (
                OutcomeKind.Conflict,
                Storage("was changed by another device meanwhile: load it again")
            ),
            DbUpdateException { InnerException: SqliteException inner } => Find(inner),
            SqliteException sqlite => Find(sqlite),
            _ => null,
        };

    private static (OutcomeKind, Fault)? Find(SqliteException problem) =>
        problem switch
        {
            { SqliteExtendedErrorCode: UniqueViolated or KeyViolated } => (
                OutcomeKind.Conflict,
                Storage("was written by another device meanwhile: load it again")
            ),
            { SqliteErrorCode: Full } => Refused("is full: nothing was saved; make room on the disk and save again"),
            { SqliteErrorCode: ReadOnly } => Refused(
                "is read-only: nothing was saved; allow writing to the data folder and save again"
            ),
            { SqliteErrorCode: Io } => Refused(
                "could not be written: nothing was saved; see that it is connected and save again"
            ),
            { SqliteErrorCode: Corrupt } => Refused(
                "holds a damaged database: nothing was saved; restore the newest good backup in Setup"
            ),
            _ => null,
        };

    private static (OutcomeKind, Fault) Refused(string message) =>
        (OutcomeKind.Faulty, new Fault("storage", "the disk", message));

    private static Fault Storage(string message) => new("storage", "this", message);
}

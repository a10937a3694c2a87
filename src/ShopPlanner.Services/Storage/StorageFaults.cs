using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;
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
            DbUpdateException { InnerException: NpgsqlException inner } => Find(inner),
            NpgsqlException server => Find(server),
            // What a second try might mend comes wrapped.
            InvalidOperationException { InnerException: NpgsqlException server } => Find(server),
            InvalidOperationException { InnerException: DbUpdateException { InnerException: NpgsqlException server } } => Find(
                server
            ),
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

    private static (OutcomeKind, Fault)? Find(NpgsqlException problem) =>
        problem switch
        {
            PostgresException { SqlState: PostgresErrorCodes.UniqueViolation or PostgresErrorCodes.DeadlockDetected } => (
                OutcomeKind.Conflict,
                Storage("was written by another device meanwhile: load it again")
            ),
            PostgresException { SqlState: PostgresErrorCodes.DiskFull } => Server(
                "has no room left: nothing was saved; make room on its disk and save again"
            ),
            PostgresException { SqlState: PostgresErrorCodes.ReadOnlySqlTransaction } => Server(
                "is read-only: nothing was saved; allow writing and save again"
            ),
            PostgresException { IsTransient: false } => null,
            // Whether a save whose answer was lost came through is not known; asked again with its command it counts once.
            _ => Server("can't be reached: this may not be saved; see that it runs, then load the page again and check"),
        };

    private static (OutcomeKind, Fault) Server(string message) =>
        (OutcomeKind.Faulty, new Fault("storage", "the database server", message));

    private static (OutcomeKind, Fault) Refused(string message) =>
        (OutcomeKind.Faulty, new Fault("storage", "the disk", message));

    private static Fault Storage(string message) => new("storage", "this", message);
}

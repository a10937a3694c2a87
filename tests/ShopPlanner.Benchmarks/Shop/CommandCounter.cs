using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace ShopPlanner.Benchmarks;

/// <summary>Counts the commands sent to the database. Beginning and ending a transaction, and what is set on a connection when it
/// is opened, are not among them.</summary>
internal sealed class CommandCounter : DbCommandInterceptor
{
    private int commands;

    /// <summary>Returns the commands since the last call.</summary>
    public int Take() => Interlocked.Exchange(ref commands, 0);

    public override InterceptionResult<DbDataReader> ReaderExecuting(
        DbCommand command,
        CommandEventData eventData,
        InterceptionResult<DbDataReader> result
    ) => Count(result);

    public override ValueTask<InterceptionResult<DbDataReader>> ReaderExecutingAsync(
        DbCommand command,
        CommandEventData eventData,
        InterceptionResult<DbDataReader> result,
        CancellationToken cancellationToken = default
    ) => ValueTask.FromResult(Count(result));

    public override ValueTask<InterceptionResult<int>> NonQueryExecutingAsync(
        DbCommand command,
        CommandEventData eventData,
        InterceptionResult<int> result,
        CancellationToken cancellationToken = default
    ) => ValueTask.FromResult(IsTurn(command) ? result : Count(result));

    public override ValueTask<InterceptionResult<object>> ScalarExecutingAsync(
        DbCommand command,
        CommandEventData eventData,
        InterceptionResult<object> result,
        CancellationToken cancellationToken = default
    ) => ValueTask.FromResult(Count(result));

    // A server lets writers in one by one, and asking for the turn belongs to the transaction's beginning.
    private static bool IsTurn(DbCommand command) =>
        command.CommandText.Contains("pg_advisory_xact_lock", StringComparison.Ordinal);

    private T Count<T>(T result)
    {
        Interlocked.Increment(ref commands);
        return result;
    }
}

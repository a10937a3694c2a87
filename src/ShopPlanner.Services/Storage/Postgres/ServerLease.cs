using Npgsql;

namespace ShopPlanner.Services.Storage.Postgres;

/// <summary>Holds a database of the server for one program: released when it ends, however it ends, and taken again where the
/// server was gone for a while.</summary>
internal sealed class ServerLease : IDisposable
{
    private const long OwnerKey = 0x53686F70_4F776E65;

    private const string Foreign = """
        SELECT EXISTS (SELECT FROM pg_tables WHERE schemaname = 'public')
          AND NOT EXISTS (SELECT FROM pg_tables WHERE schemaname = 'public' AND tablename = 'StockLedger')
        """;

    private const string Held =
        "SELECT EXISTS (SELECT FROM pg_locks WHERE locktype = 'advisory' AND pid = pg_backend_pid() AND granted)";

    private const int Tries = 10;

    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(2);

    private readonly PostgresContextFactory contexts;
    private readonly CancellationTokenSource ending = new();
    private readonly Task watching;
    private NpgsqlConnection held;

    private ServerLease(PostgresContextFactory contexts, NpgsqlConnection held, Action<bool> lost)
    {
        (this.contexts, this.held) = (contexts, held);
        watching = Task.Run(() => WatchAsync(lost, ending.Token));
    }

    /// <summary>Takes it.</summary>
    /// <param name="contexts">The database.</param>
    /// <param name="lost">Told true while another program has what this one held, and false once it is held again.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="ShopStartException">Another program has it, or it is no shop's.</exception>
    /// <exception cref="NpgsqlException">The server cannot be reached.</exception>
    public static async Task<ServerLease> TakeAsync(PostgresContextFactory contexts, Action<bool> lost, CancellationToken cancel)
    {
        var held = await OpenAsync(contexts, cancel);
        try
        {
            if (!await LockPatientlyAsync(held, cancel))
                throw new ShopStartException(
                    $"Another Shop Planner is running on the database {contexts.Name}. Stop it, or name another with --database."
                );
            if (await AskAsync(held, Foreign, cancel))
                throw new ShopStartException(
                    $"The database {contexts.Name} holds another program's tables. It was left as it is. Make one for the shop "
                        + "alone, and name it with --database."
                );
            return new(contexts, held, lost);
        }
        catch
        {
            await held.DisposeAsync();
            throw;
        }
    }

    /// <inheritdoc />
    public void Dispose()
    {
        ending.Cancel();
        watching.Wait();
        ending.Dispose();
        held.Dispose();
    }

    // A server that was restarted knows of no lock from before.
    private async Task WatchAsync(Action<bool> lost, CancellationToken cancel)
    {
        using var timer = new PeriodicTimer(Pause);
        try
        {
            while (await timer.WaitForNextTickAsync(cancel))
                if (!await IsHeldAsync(cancel))
                    lost(await IsTakenByAnotherAsync(cancel));
        }
        catch (OperationCanceledException) when (cancel.IsCancellationRequested)
        {
            // The program ends.
        }
    }

    private async Task<bool> IsHeldAsync(CancellationToken cancel)
    {
        try
        {
            return await AskAsync(held, Held, cancel);
        }
        catch (Exception problem) when (problem is NpgsqlException or InvalidOperationException)
        {
            // Broken: that is the answer.
            return false;
        }
    }

    private async Task<bool> IsTakenByAnotherAsync(CancellationToken cancel)
    {
        try
        {
            var again = await OpenAsync(contexts, cancel);
            await held.DisposeAsync();
            held = again;
            return !await LockAsync(held, cancel);
        }
        catch (NpgsqlException)
        {
            // The server is still gone: nobody has it.
            return false;
        }
    }

    // A connection of its own, not one of the pool, which would hand the lock on.
    private static async Task<NpgsqlConnection> OpenAsync(PostgresContextFactory contexts, CancellationToken cancel)
    {
        var settings = new NpgsqlConnectionStringBuilder(contexts.ConnectionString) { Pooling = false };
        var connection = new NpgsqlConnection(settings.ToString());
        try
        {
            await connection.OpenAsync(cancel);
            return connection;
        }
        catch
        {
            await connection.DisposeAsync();
            throw;
        }
    }

    // A server notices a moment late that the program before has ended.
    private static async Task<bool> LockPatientlyAsync(NpgsqlConnection connection, CancellationToken cancel)
    {
        for (var tried = 1; !await LockAsync(connection, cancel); tried++)
        {
            if (tried == Tries)
                return false;
            await Task.Delay(Pause / Tries, cancel);
        }

        return true;
    }

    private static Task<bool> LockAsync(NpgsqlConnection connection, CancellationToken cancel) =>
        AskAsync(connection, $"SELECT pg_try_advisory_lock({OwnerKey})", cancel);

    private static async Task<bool> AskAsync(NpgsqlConnection connection, string sql, CancellationToken cancel)
    {
        await using var command = new NpgsqlCommand(sql, connection);
        return (bool)(await command.ExecuteScalarAsync(cancel))!;
    }
}

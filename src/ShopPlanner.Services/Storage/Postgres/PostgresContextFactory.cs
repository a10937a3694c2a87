using System.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.EntityFrameworkCore.Storage;
using Npgsql;

namespace ShopPlanner.Services.Storage.Postgres;

/// <summary>Makes contexts on a database of a PostgreSQL server.</summary>
internal sealed class PostgresContextFactory : ShopContextFactory
{
    // One writer at a time, on however many computers: a key that no other program of the server is likely to use.
    private const long WriterKey = 0x53686F70_57726974;

    private readonly DbContextOptions<PostgresShopContext> options;
    private readonly NpgsqlConnectionStringBuilder connection;

    /// <param name="connection">The server, the database and who signs in, as Npgsql writes it.</param>
    /// <param name="interceptors">What is told of each command.</param>
    /// <exception cref="ShopStartException">It cannot be read, or names no database.</exception>
    public PostgresContextFactory(string connection, params IEnumerable<IInterceptor> interceptors)
    {
        this.connection = Read(connection);
        ConnectionString = this.connection.ToString();
        options = new DbContextOptionsBuilder<PostgresShopContext>()
            .UseNpgsql(ConnectionString)
            .AddInterceptors(interceptors)
            .Options;
    }

    /// <inheritdoc />
    public override string Name => $"{connection.Database} on {connection.Host}:{connection.Port}";

    /// <inheritdoc />
    public override bool CanCopyOlder => false;

    /// <summary>With the password, where one is named: never to be shown.</summary>
    public string ConnectionString { get; }

    /// <inheritdoc />
    public override ShopContext CreateDbContext() => new PostgresShopContext(options);

    /// <inheritdoc />
    public override void OnlyRead() => IsReadOnly = true;

    /// <inheritdoc />
    public override void Release()
    {
        using var pooled = new NpgsqlConnection(ConnectionString);
        NpgsqlConnection.ClearPool(pooled);
    }

    /// <inheritdoc />
    public override Task<IDbContextTransaction> BeginReadAsync(ShopContext db, CancellationToken cancel) =>
        db.Database.BeginTransactionAsync(IsolationLevel.RepeatableRead, cancel);

    /// <inheritdoc />
    // Each statement sees what is committed before it, so the first after the lock sees what the writer before left.
    public override async Task<IDbContextTransaction> BeginWriteAsync(ShopContext db, CancellationToken cancel)
    {
        var transaction = await db.Database.BeginTransactionAsync(IsolationLevel.ReadCommitted, cancel);
        await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({WriterKey})", cancel);
        return transaction;
    }

    /// <inheritdoc />
    // The server rolls back by itself what a killed program left open.
    public override Task ClearAbandonedAsync(ShopContext db, CancellationToken cancel) => Task.CompletedTask;

    private static NpgsqlConnectionStringBuilder Read(string connection)
    {
        NpgsqlConnectionStringBuilder read;
        try
        {
            read = new(connection);
        }
        catch (Exception problem) when (problem is ArgumentException or FormatException)
        {
            throw new ShopStartException($"--database cannot be read: {problem.Message.ReplaceLineEndings(" ")}", problem);
        }

        if (string.IsNullOrEmpty(read.Host) || string.IsNullOrEmpty(read.Database))
            throw new ShopStartException(
                "--database names no server or no database: write Host=SERVER;Database=NAME;Username=USER;Password=SECRET."
            );
        return read;
    }
}

/// <summary>Lets the migrations tool make a context; the server it names is never asked for adding a migration.</summary>
internal sealed class PostgresContextAtDesign : IDesignTimeDbContextFactory<PostgresShopContext>
{
    public PostgresShopContext CreateDbContext(string[] args) =>
        (PostgresShopContext)new PostgresContextFactory("Host=design-time-only;Database=none").CreateDbContext();
}

using System.Data;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.EntityFrameworkCore.Storage;

namespace ShopPlanner.Services.Storage;

/// <summary>Makes contexts on one database file.</summary>
internal sealed class SqliteContextFactory : ShopContextFactory
{
    private readonly string file;
    private readonly IReadOnlyList<IInterceptor> interceptors;
    private DbContextOptions<ShopContext> options;
    private string connectionString;

    /// <param name="file">The database file.</param>
    /// <param name="interceptors">What else is told of each command, besides what this program does itself.</param>
    public SqliteContextFactory(string file, params IEnumerable<IInterceptor> interceptors)
    {
        this.file = file;
        this.interceptors = [new PragmaInterceptor(), .. interceptors];
        (connectionString, options) = On(SqliteOpenMode.ReadWriteCreate);
    }

    /// <inheritdoc />
    public override string Name => file;

    /// <inheritdoc />
    public override bool CanCopyOlder => true;

    /// <inheritdoc />
    public override void OnlyRead()
    {
        Release();
        (connectionString, options) = On(SqliteOpenMode.ReadOnly);
        IsReadOnly = true;
    }

    /// <inheritdoc />
    public override ShopContext CreateDbContext() => new(options);

    /// <inheritdoc />
    public override void Release()
    {
        using var connection = new SqliteConnection(connectionString);
        SqliteConnection.ClearPool(connection);
    }

    /// <inheritdoc />
    // Deferred: a plain transaction would ask for the right to write at once.
    public override async Task<IDbContextTransaction> BeginReadAsync(ShopContext db, CancellationToken cancel)
    {
        await db.Database.OpenConnectionAsync(cancel);
        var connection = (SqliteConnection)db.Database.GetDbConnection();
        return (await db.Database.UseTransactionAsync(connection.BeginTransaction(deferred: true), cancel))!;
    }

    /// <inheritdoc />
    public override Task<IDbContextTransaction> BeginWriteAsync(ShopContext db, CancellationToken cancel) =>
        db.Database.BeginTransactionAsync(IsolationLevel.Serializable, cancel);

    /// <inheritdoc />
    // A program killed while migrating leaves this row, and the next would wait for it for ever.
    public override async Task ClearAbandonedAsync(ShopContext db, CancellationToken cancel)
    {
        const string Exists = "SELECT COUNT(*) AS Value FROM sqlite_master WHERE type = 'table' AND name = '__EFMigrationsLock'";
        if (await db.Database.SqlQueryRaw<int>(Exists).SingleAsync(cancel) == 1)
            await db.Database.ExecuteSqlRawAsync("DELETE FROM \"__EFMigrationsLock\"", cancel);
    }

    private (string Text, DbContextOptions<ShopContext> Options) On(SqliteOpenMode mode)
    {
        var text = new SqliteConnectionStringBuilder
        {
            DataSource = file,
            Mode = mode,
            ForeignKeys = true,
        }.ToString();
        return (text, new DbContextOptionsBuilder<ShopContext>().UseSqlite(text).AddInterceptors(interceptors).Options);
    }
}

/// <summary>Lets the migrations tool make a context; the file it names is never opened for adding a migration.</summary>
internal sealed class ShopContextAtDesign : IDesignTimeDbContextFactory<ShopContext>
{
    public ShopContext CreateDbContext(string[] args) => new SqliteContextFactory("design-time-only.db").CreateDbContext();
}

using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace ShopPlanner.Services.Storage;

/// <summary>Makes contexts on one database file.</summary>
internal sealed class ShopContextFactory : IDbContextFactory<ShopContext>
{
    private readonly DbContextOptions<ShopContext> options;
    private readonly string connectionString;

    /// <param name="file">The database file.</param>
    /// <param name="interceptors">What else is told of each command, besides what this program does itself.</param>
    public ShopContextFactory(string file, params IEnumerable<IInterceptor> interceptors)
    {
        connectionString = new SqliteConnectionStringBuilder { DataSource = file, ForeignKeys = true }.ToString();
        options = new DbContextOptionsBuilder<ShopContext>()
            .UseSqlite(connectionString)
            .AddInterceptors([new PragmaInterceptor(), .. interceptors])
            .Options;
    }

    public ShopContext CreateDbContext() => new(options);

    /// <summary>Lets go of the file: connections are kept open for the next operation otherwise.</summary>
    public void CloseFile()
    {
        using var connection = new SqliteConnection(connectionString);
        SqliteConnection.ClearPool(connection);
    }
}

/// <summary>Lets the migrations tool make a context; the file it names is never opened for adding a migration.</summary>
internal sealed class ShopContextAtDesign : IDesignTimeDbContextFactory<ShopContext>
{
    public ShopContext CreateDbContext(string[] args) => new ShopContextFactory("design-time-only.db").CreateDbContext();
}

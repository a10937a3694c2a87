using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace ShopPlanner.Services.Storage;

/// <summary>Makes contexts on one database file.</summary>
internal sealed class ShopContextFactory : IDbContextFactory<ShopContext>
{
    private readonly DbContextOptions<ShopContext> options;
    private readonly string connectionString;

    public ShopContextFactory(string file)
    {
        connectionString = new SqliteConnectionStringBuilder { DataSource = file, ForeignKeys = true }.ToString();
        options = new DbContextOptionsBuilder<ShopContext>()
            .UseSqlite(connectionString)
            .AddInterceptors(new PragmaInterceptor())
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

using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace ShopPlanner.Services.Storage;

/// <summary>Makes contexts on one database file.</summary>
internal sealed class ShopContextFactory : IDbContextFactory<ShopContext>
{
    private readonly string file;
    private readonly IReadOnlyList<IInterceptor> interceptors;
    private DbContextOptions<ShopContext> options;
    private string connectionString;

    /// <param name="file">The database file.</param>
    /// <param name="interceptors">What else is told of each command, besides what this program does itself.</param>
    public ShopContextFactory(string file, params IEnumerable<IInterceptor> interceptors)
    {
        this.file = file;
        this.interceptors = [new PragmaInterceptor(), .. interceptors];
        (connectionString, options) = On(SqliteOpenMode.ReadWriteCreate);
    }

    /// <summary>Whether nothing can be written.</summary>
    public bool IsReadOnly { get; private set; }

    /// <summary>Makes contexts that only read from here on.</summary>
    public void OnlyRead()
    {
        CloseFile();
        (connectionString, options) = On(SqliteOpenMode.ReadOnly);
        IsReadOnly = true;
    }

    public ShopContext CreateDbContext() => new(options);

    /// <summary>Lets go of the file: connections are kept open for the next operation otherwise.</summary>
    public void CloseFile()
    {
        using var connection = new SqliteConnection(connectionString);
        SqliteConnection.ClearPool(connection);
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
    public ShopContext CreateDbContext(string[] args) => new ShopContextFactory("design-time-only.db").CreateDbContext();
}

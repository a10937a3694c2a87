using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Postgres;

namespace ShopPlanner.Services.Tests.Storage;

public sealed class SchemaTests
{
    [Fact]
    public void The_migrations_say_all_that_the_model_says()
    {
        using var file = new ShopContextAtDesign().CreateDbContext([]);
        Assert.False(file.Database.HasPendingModelChanges());
        using var server = new PostgresContextAtDesign().CreateDbContext([]);
        Assert.False(server.Database.HasPendingModelChanges());
    }

    [Fact]
    public async Task Every_connection_writes_ahead_checks_keys_and_syncs_fully()
    {
        await using var shop = await TestShop.OpenAsync();
        await using var db = shop.Get<IDbContextFactory<ShopContext>>().CreateDbContext();
        await db.Database.OpenConnectionAsync(TestShop.Cancel);
        var connection = db.Database.GetDbConnection();
        Assert.Equal("wal", SqliteFacts.Ask(connection, "PRAGMA journal_mode"));
        Assert.Equal("1", SqliteFacts.Ask(connection, "PRAGMA foreign_keys"));
        Assert.Equal("2", SqliteFacts.Ask(connection, "PRAGMA synchronous"));
        Assert.Equal("0", SqliteFacts.Ask(connection, "PRAGMA trusted_schema"));
    }

    [Fact]
    public async Task A_row_that_points_at_nothing_is_refused()
    {
        await using var shop = await TestShop.OpenAsync();
        await using var db = shop.Get<IDbContextFactory<ShopContext>>().CreateDbContext();
        db.Parts.Add(new() { Id = Guid.CreateVersion7(), ProjectId = Guid.CreateVersion7() });
        await Assert.ThrowsAsync<DbUpdateException>(() => db.SaveChangesAsync(TestShop.Cancel));
    }

    [Fact]
    public async Task A_ledger_line_is_never_changed()
    {
        await using var shop = await TestShop.OpenAsync();
        await shop.Stock.AddAsync(Some.Offcut("20"), Some.Inch, "test", CommandId.New(), TestShop.Cancel);
        await using var db = shop.Get<IDbContextFactory<ShopContext>>().CreateDbContext();
        db.Entries.Remove(await db.Entries.SingleAsync(TestShop.Cancel));
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(TestShop.Cancel));
    }

    // 3.51.3 is the first without the WAL-reset bug: sqlite.org/wal.html.
    [Theory]
    [InlineData("3.40.1")]
    [InlineData("3.49.1")]
    [InlineData("3.51.2")]
    public void An_old_sqlite_is_refused(string version) =>
        Assert.Contains(version, Assert.Throws<ShopStartException>(() => SqliteFacts.CheckVersion(version)).Message);

    [Fact]
    public void The_sqlite_that_is_shipped_is_new_enough() => SqliteFacts.CheckVersion(SqliteFacts.LibraryVersion());
}

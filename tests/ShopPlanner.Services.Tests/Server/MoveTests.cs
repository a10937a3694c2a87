using Npgsql;
using ShopPlanner.Services.Archives;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Moving;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Server;

/// <summary>A shop moves to a PostgreSQL server and back, and stays the same.</summary>
public sealed class MoveTests : IDisposable
{
    private readonly string home = TestShop.NewFolder();
    private readonly string away = TestShop.NewFolder();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_shop_moves_to_a_server_and_back_with_the_same_hash()
    {
        Assert.SkipUnless(PostgresServer.Missing is null, PostgresServer.Missing ?? "");
        var (rows, before) = await FillAsync();
        var there = await new ShopMove(home, TestServer.For(home), TimeProvider.System).ToServerAsync(Cancel);
        Assert.Equal(before, there.Hash);
        await ServesAsync();
        var back = await new ShopMove(away, TestServer.For(home), TimeProvider.System).ToFolderAsync(Cancel);
        Assert.Equal(before, back.Hash);
        await using var again = await TestShop.OpenAsync(folder: away, keptBy: null);
        Assert.Equal(before, await HashAsync(again));
        var after = again.CountRows();
        Assert.Equal(rows["StockLedger"], after["StockLedger"]);
        Assert.Equal(rows["Commands"], after["Commands"]);
    }

    [Fact]
    public async Task Nothing_is_written_over_a_shop()
    {
        Assert.SkipUnless(PostgresServer.Missing is null, PostgresServer.Missing ?? "");
        await FillAsync();
        var move = new ShopMove(home, TestServer.For(home), TimeProvider.System);
        await move.ToServerAsync(Cancel);
        var twice = await Assert.ThrowsAsync<ShopStartException>(() => move.ToServerAsync(Cancel));
        Assert.Contains("holds a shop already", twice.Message, StringComparison.Ordinal);
        var onto = await Assert.ThrowsAsync<ShopStartException>(() => move.ToFolderAsync(Cancel));
        Assert.Contains("holds a shop already", onto.Message, StringComparison.Ordinal);
        var none = await Assert.ThrowsAsync<ShopStartException>(() =>
            new ShopMove(away, TestServer.For(away), TimeProvider.System).ToFolderAsync(Cancel)
        );
        Assert.Contains("holds no shop", none.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_program_has_the_database_and_another_programs_tables_are_left_alone()
    {
        Assert.SkipUnless(PostgresServer.Missing is null, PostgresServer.Missing ?? "");
        await using (await TestShop.OpenAsync(folder: home, keptBy: TestServer.For(home)))
        {
            await using var second = TestShop.Make(away, ownsFolder: false, keptBy: TestServer.For(home));
            var refused = await Assert.ThrowsAsync<ShopStartException>(() => second.Database.OpenAsync(Cancel));
            Assert.Contains("Another Shop Planner is running on the database", refused.Message, StringComparison.Ordinal);
        }

        await using (var other = new NpgsqlConnection(TestServer.For(away)))
        {
            await other.OpenAsync(Cancel);
            await using var make = new NpgsqlCommand("CREATE TABLE invoices (id int)", other);
            await make.ExecuteNonQueryAsync(Cancel);
        }

        await using var shop = TestShop.Make(away, ownsFolder: false, keptBy: TestServer.For(away));
        var foreign = await Assert.ThrowsAsync<ShopStartException>(() => shop.Database.OpenAsync(Cancel));
        Assert.Contains("another program's tables", foreign.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_server_that_is_not_there_is_told_in_one_line_without_the_password()
    {
        var nowhere = $"Host={away};Database=shop;Username=builder;Password=hidden-7;Timeout=2";
        await using var shop = TestShop.Make(away, ownsFolder: false, keptBy: nowhere);
        var refused = await Assert.ThrowsAsync<ShopStartException>(() => shop.Database.OpenAsync(Cancel));
        Assert.Contains($"The database shop on {away}", refused.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("hidden-7", refused.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', refused.Message);
    }

    [Fact]
    public async Task A_shop_on_a_server_is_backed_up_as_a_file_and_restored_from_it()
    {
        Assert.SkipUnless(PostgresServer.Missing is null, PostgresServer.Missing ?? "");
        string before;
        string file;
        await using (var shop = await TestShop.OpenAsync(demo: true, folder: home, keptBy: TestServer.For(home)))
        {
            before = await HashAsync(shop);
            var made = await shop.Get<ShopPlanner.Services.Backups.IBackupService>().CreateAsync(CommandId.New(), Cancel);
            Assert.True(made.Ok, string.Join("; ", made.Faults));
            file = made.Value.File;
            await Some.ProjectAsync(shop);
            Assert.NotEqual(before, await HashAsync(shop));
            var asked = shop.Get<ShopPlanner.Services.Backups.IRestoreService>().Ask(Path.GetFileName(file));
            Assert.True(asked.Ok, string.Join("; ", asked.Faults));
        }

        await using var again = await TestShop.OpenAsync(folder: home, keptBy: TestServer.For(home));
        Assert.Equal(before, await HashAsync(again));
    }

    public void Dispose()
    {
        foreach (var folder in new[] { home, away })
        {
            if (PostgresServer.Missing is null)
                TestServer.Drop(folder);
            Directory.Delete(folder, recursive: true);
        }
    }

    private async Task<(IReadOnlyDictionary<string, long> Rows, string Hash)> FillAsync()
    {
        await using var shop = await TestShop.OpenAsync(demo: true, folder: home, keptBy: null);
        return (shop.CountRows(), await HashAsync(shop));
    }

    private async Task ServesAsync()
    {
        await using var shop = await TestShop.OpenAsync(folder: home, keptBy: TestServer.For(home));
        Assert.NotEmpty(await shop.Projects.ListAsync(cancel: Cancel));
        Assert.NotEmpty(await shop.Stock.ListAsync(Cancel));
    }

    private static async Task<string> HashAsync(TestShop shop)
    {
        var zip = await shop.Get<IArchiveService>().ExportAsync(Cancel);
        var (archive, fault) = ArchiveReading.Read(zip);
        Assert.Null(fault);
        return archive!.Head.Hash;
    }
}

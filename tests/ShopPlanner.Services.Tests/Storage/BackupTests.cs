using Microsoft.Data.Sqlite;
using ShopPlanner.Services.Backups;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Storage;

public sealed class BackupTests : IAsyncLifetime
{
    private TestShop shop = null!;

    public async ValueTask InitializeAsync() => shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task A_copy_holds_all_rows_in_one_file_of_its_own()
    {
        await Some.ProjectAsync(shop);
        var copied = shop.CountRows();
        var backup = (await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel)).Value!;
        using var connection = new SqliteConnection($"Data Source={backup.File};Pooling=False;Mode=ReadOnly");
        connection.Open();
        foreach (var (table, rows) in copied)
            Assert.Equal($"{rows}", SqliteFacts.Ask(connection, $"SELECT COUNT(*) FROM \"{table}\""));
        Assert.Equal(
            [Path.GetFileName(backup.File)],
            Directory.EnumerateFiles(Path.Combine(shop.Folder, "backups")).Select(Path.GetFileName)
        );
        Assert.Equal(backup.File, shop.Get<IBackupService>().List().Single().File);
    }

    [Fact]
    public async Task A_copy_put_in_the_databases_place_opens()
    {
        var project = await Some.ProjectAsync(shop);
        var backup = (await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel)).Value!;
        var folder = TestShop.NewFolder();
        File.Copy(backup.File, Path.Combine(folder, "shop.db"));
        await using (var restored = await TestShop.OpenAsync(folder: folder))
            Assert.Equal(project, await restored.Projects.GetAsync(project.Id, TestShop.Cancel));
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task A_start_a_day_later_makes_a_copy_and_one_the_same_day_does_not()
    {
        var folder = TestShop.NewFolder();
        for (var start = 0; start < 2; start++)
            await using (var first = await TestShop.OpenAsync(folder: folder))
                Assert.Equal(start, await CopiesAsync(first, start));
        await using (var later = await TestShop.OpenAsync(folder: folder))
        {
            Assert.Equal(1, await CopiesAsync(later, 1));
            later.Clock.Advance(TimeSpan.FromHours(25));
            Assert.Equal(2, await CopiesAsync(later, 2));
        }

        Directory.Delete(folder, recursive: true);
    }

    // May 3 is a Sunday: it stays as the last of its week, the Monday after it does not.
    [Fact]
    public async Task Only_the_newest_daily_copies_are_kept_and_those_made_by_hand_all()
    {
        await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel);
        for (var day = 1; day <= 16; day++)
        {
            shop.Clock.Advance(TimeSpan.FromHours(24));
            await CopiesAsync(shop, Math.Min(day, 15) + 1);
        }

        var last = shop.Get<IBackupService>();
        for (var i = 0; i < 100 && !last.List()[0].File.Contains("2026-05-18", StringComparison.Ordinal); i++)
            await Task.Delay(50, TestShop.Cancel);

        var names = shop.Get<IBackupService>().List().Select(copy => Path.GetFileName(copy.File)).ToList();
        Assert.Equal(
            (15, 1),
            (names.Count(name => name.EndsWith("-daily.db")), names.Count(name => name.EndsWith("-by-hand.db")))
        );
        Assert.StartsWith("shop-2026-05-18", names[0]);
        Assert.Contains(names, name => name.StartsWith("shop-2026-05-03", StringComparison.Ordinal));
        Assert.DoesNotContain(names, name => name.StartsWith("shop-2026-05-04", StringComparison.Ordinal));
    }

    // The copy is made in the background: it is waited for, and no longer than it may take.
    private static async Task<int> CopiesAsync(TestShop shop, int expected)
    {
        for (var i = 0; i < 100 && shop.Get<IBackupService>().List().Count < expected; i++)
            await Task.Delay(50, TestShop.Cancel);
        return shop.Get<IBackupService>().List().Count;
    }

    [Fact]
    public async Task A_copy_that_cannot_be_written_is_told()
    {
        Directory.Delete(Path.Combine(shop.Folder, "backups"), recursive: true);
        var outcome = await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel);
        Assert.Equal("backup", outcome.Faults.Single().Field);
        Directory.CreateDirectory(Path.Combine(shop.Folder, "backups"));
    }
}

using Microsoft.Data.Sqlite;
using ShopPlanner.Services.Backups;
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
        var backup = (await shop.Get<IBackupService>().CreateAsync(TestShop.Cancel)).Value!;
        using var connection = new SqliteConnection($"Data Source={backup.File};Pooling=False;Mode=ReadOnly");
        connection.Open();
        foreach (var (table, rows) in shop.CountRows())
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
        var backup = (await shop.Get<IBackupService>().CreateAsync(TestShop.Cancel)).Value!;
        var folder = TestShop.NewFolder();
        File.Copy(backup.File, Path.Combine(folder, "shop.db"));
        await using (var restored = await TestShop.OpenAsync(folder: folder))
            Assert.Equal(project, await restored.Projects.GetAsync(project.Id, TestShop.Cancel));
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task A_copy_that_cannot_be_written_is_told()
    {
        Directory.Delete(Path.Combine(shop.Folder, "backups"), recursive: true);
        var outcome = await shop.Get<IBackupService>().CreateAsync(TestShop.Cancel);
        Assert.Equal("backup", outcome.Faults.Single().Field);
        Directory.CreateDirectory(Path.Combine(shop.Folder, "backups"));
    }
}

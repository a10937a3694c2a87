using ShopPlanner.Services.Archives;
using ShopPlanner.Services.Backups;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Health;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Storage;

/// <summary>A database that may be read and not written is opened for reading.</summary>
public sealed class ReadOnlyTests : IAsyncLifetime
{
    private readonly string folder = TestShop.NewFolder();
    private Guid project;

    private static CancellationToken Cancel => TestShop.Cancel;

    private FileInfo Database => new(Path.Combine(folder, "shop.db"));

    public async ValueTask InitializeAsync()
    {
        await using (var shop = await TestShop.OpenAsync(folder: folder))
            project = (await Some.ProjectAsync(shop)).Id;
        Database.IsReadOnly = true;
    }

    public ValueTask DisposeAsync()
    {
        Database.IsReadOnly = false;
        Directory.Delete(folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task What_is_in_it_is_read_and_every_change_is_refused_in_words()
    {
        var before = await File.ReadAllBytesAsync(Database.FullName, Cancel);
        await using (var shop = await TestShop.OpenAsync(folder: folder))
        {
            Assert.Contains(Database.FullName, Assert.Single(shop.Get<IShopHealth>().Notices).Text, StringComparison.Ordinal);
            Assert.Equal("Boot-room bench", (await shop.Projects.GetAsync(project, Cancel))!.Name);
            Assert.NotEmpty(await shop.Get<IArchiveService>().ExportAsync(Cancel));
            Refuses(await shop.Projects.CreateAsync("Shelf", Some.Inch, CommandId.New(), Cancel));
            Refuses(await shop.Parts.SaveAsync(project, [Some.New(Some.Part())], Cancel));
            Refuses(await shop.Stock.AddAsync(Some.Offcut("40"), Some.Inch, Some.Device, CommandId.New(), Cancel));
        }

        Assert.Equal(before, await File.ReadAllBytesAsync(Database.FullName, Cancel));
    }

    [Fact]
    public async Task Backups_are_made_of_it_and_one_is_restored_at_the_next_start()
    {
        await using (var shop = await TestShop.OpenAsync(folder: folder))
        {
            var made = await shop.Get<IBackupService>().CreateAsync(CommandId.New(), Cancel);
            Assert.True(made.Ok, string.Join("; ", made.Faults));
            Assert.True(shop.Get<IRestoreService>().Ask(Path.GetFileName(made.Value.File)).Ok);
        }

        await using var again = await TestShop.OpenAsync(folder: folder);
        Assert.Equal(HealthTopic.Restore, Assert.Single(again.Get<IShopHealth>().Notices).Topic);
        Assert.True((await again.Projects.CreateAsync("Shelf", Some.Inch, CommandId.New(), Cancel)).Ok);
    }

    [Fact]
    public async Task Written_again_it_is_a_shop_as_any()
    {
        await using (await TestShop.OpenAsync(folder: folder)) { }

        Database.IsReadOnly = false;
        await using var shop = await TestShop.OpenAsync(folder: folder);
        Assert.Empty(shop.Get<IShopHealth>().Notices);
        Assert.True((await shop.Projects.CreateAsync("Shelf", Some.Inch, CommandId.New(), Cancel)).Ok);
    }

    [Fact]
    public async Task One_that_another_version_left_is_refused_until_it_can_be_brought_up_to_date()
    {
        Database.IsReadOnly = false;
        await using (var shop = await TestShop.OpenAsync(folder: folder))
            shop.Ask($"UPDATE Facts SET Value = '0.0.9' WHERE Name = '{Migrator.WrittenBy}'");
        Database.IsReadOnly = true;
        await using var later = TestShop.Make(folder, ownsFolder: false);
        var refusal = await Assert.ThrowsAsync<ShopStartException>(() => later.Database.OpenAsync(Cancel));
        Assert.Contains("left by Shop Planner 0.0.9", refusal.Message, StringComparison.Ordinal);
        Assert.Contains(Migrator.ProgramVersion, refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', refusal.Message);
    }

    // Marked so by somebody who wanted to be safe.
    [Fact]
    public async Task A_backup_that_is_marked_read_only_becomes_a_shop_that_can_be_written()
    {
        Database.IsReadOnly = false;
        string copy;
        await using (var shop = await TestShop.OpenAsync(folder: folder))
            copy = (await shop.Get<IBackupService>().CreateAsync(CommandId.New(), Cancel)).Value!.File;
        new FileInfo(copy).IsReadOnly = true;
        await using (var closed = TestShop.Make(folder, ownsFolder: false))
            await closed.Database.RestoreAsync(copy, Cancel);
        Assert.False(Database.IsReadOnly);
        Assert.True(new FileInfo(copy).IsReadOnly);
    }

    private static void Refuses<T>(Outcome<T> outcome)
        where T : class
    {
        var fault = Assert.Single(outcome.Faults);
        Assert.Equal("storage", fault.Field);
        Assert.Contains("is open for reading only: nothing was saved", fault.Message, StringComparison.Ordinal);
    }
}

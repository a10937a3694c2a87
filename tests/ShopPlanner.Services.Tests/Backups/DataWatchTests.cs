using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Archives;
using ShopPlanner.Services.Backups;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Health;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Backups;

public sealed class DataWatchTests
{
    private const int PageSize = 4096;

    [Fact]
    public async Task Low_disk_is_told_and_refuses_backups_and_archives_while_entries_are_saved()
    {
        var disk = new FakeDisk { Free = 400_000_000 };
        await using var shop = await TestShop.OpenAsync(change: services => services.AddSingleton<FreeSpace>(disk));
        Assert.Contains("400 MB left", (await ToldAsync(shop, HealthTopic.LowDisk)).Text, StringComparison.Ordinal);
        await Some.ProjectAsync(shop);
        var backup = await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel);
        Assert.Contains("at least 512 MB", Assert.Single(backup.Faults).Message, StringComparison.Ordinal);
        var archive = await shop.Get<IArchiveService>().ExportAsync(TestShop.Cancel);
        var import = await shop.Get<IArchiveService>().ImportAsync(archive, CommandId.New(), TestShop.Cancel);
        Assert.Contains("at least 512 MB", Assert.Single(import.Faults).Message, StringComparison.Ordinal);
        disk.Free = 600_000_000;
        shop.Clock.Advance(TimeSpan.FromMinutes(6));
        await ClearAsync(shop, HealthTopic.LowDisk);
        Assert.True((await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel)).Ok);
    }

    [Fact]
    public async Task Flipped_bytes_are_found_within_the_day_and_told_with_the_newest_good_backup()
    {
        await using var shop = await TestShop.OpenAsync();
        await Some.ProjectAsync(shop);
        var good = (await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel)).Value!.File;
        shop.Ask("PRAGMA wal_checkpoint(TRUNCATE)");
        var root = long.Parse(shop.Ask("SELECT rootpage FROM sqlite_master WHERE name = 'Materials'"));
        StrangeFileTests.Flip(Path.Combine(shop.Folder, "shop.db"), (root - 1) * PageSize, 40);
        shop.Clock.Advance(TimeSpan.FromMinutes(6));
        var told = (await ToldAsync(shop, HealthTopic.Damage)).Text;
        Assert.Contains("is damaged", told, StringComparison.Ordinal);
        Assert.Contains(Path.GetFileName(good), told, StringComparison.Ordinal);
        Assert.True(File.Exists(good));
    }

    private static async Task<HealthNotice> ToldAsync(TestShop shop, HealthTopic topic)
    {
        for (var i = 0; i < 100 && shop.Get<IShopHealth>().Notices.All(one => one.Topic != topic); i++)
            await Task.Delay(50, TestShop.Cancel);
        return shop.Get<IShopHealth>().Notices.Single(one => one.Topic == topic);
    }

    private static async Task ClearAsync(TestShop shop, HealthTopic topic)
    {
        for (var i = 0; i < 100 && shop.Get<IShopHealth>().Notices.Any(one => one.Topic == topic); i++)
            await Task.Delay(50, TestShop.Cancel);
        Assert.DoesNotContain(shop.Get<IShopHealth>().Notices, one => one.Topic == topic);
    }
}

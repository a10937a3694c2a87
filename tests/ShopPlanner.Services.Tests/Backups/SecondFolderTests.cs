using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Backups;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Health;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Backups;

public sealed class SecondFolderTests : IDisposable
{
    private readonly string second = TestShop.NewFolder();

    public void Dispose() => Directory.Delete(second, recursive: true);

    [Fact]
    public async Task Every_backup_is_brought_there_byte_by_byte_and_the_choice_survives_a_start()
    {
        var folder = TestShop.NewFolder();
        await using (var shop = await TestShop.OpenAsync(folder: folder))
            Assert.True(shop.Get<IBackupService>().ChooseSecond(second).Ok);
        await using (var shop = await TestShop.OpenAsync(folder: folder))
        {
            Assert.Equal(new SecondFolderView(second, false), shop.Get<IBackupService>().Second);
            var made = (await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel)).Value!;
            Assert.Equal(Disk.Hash(made.File), Disk.Hash(Path.Combine(second, Path.GetFileName(made.File))));
            Assert.Empty(Directory.EnumerateFiles(second, "*.part"));
        }

        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task A_folder_that_is_gone_is_told_is_not_made_and_gets_the_newest_backup_when_it_is_back()
    {
        await using var shop = await TestShop.OpenAsync();
        var away = Path.Combine(second, "usb");
        Directory.CreateDirectory(away);
        Assert.True(shop.Get<IBackupService>().ChooseSecond(away).Ok);
        Directory.Delete(away);
        var made = (await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel)).Value!;
        var notice = Assert.Single(shop.Get<IShopHealth>().Notices);
        Assert.Equal(HealthTopic.SecondFolder, notice.Topic);
        Assert.Contains(away, notice.Text, StringComparison.Ordinal);
        Assert.False(Directory.Exists(away));
        Directory.CreateDirectory(away);
        shop.Clock.Advance(TimeSpan.FromHours(1));
        for (var i = 0; i < 100 && shop.Get<IShopHealth>().Notices.Count > 0; i++)
            await Task.Delay(50, TestShop.Cancel);
        Assert.True(File.Exists(Path.Combine(away, Path.GetFileName(made.File))));
        Assert.Empty(shop.Get<IShopHealth>().Notices);
    }

    [Fact]
    public async Task Wrong_folders_are_refused_in_words()
    {
        await using var shop = await TestShop.OpenAsync();
        var backups = shop.Get<IBackupService>();
        Assert.Contains("is not a full path", Refusal(backups, "usb"), StringComparison.Ordinal);
        Assert.Contains("isn't there", Refusal(backups, Path.Combine(second, "none")), StringComparison.Ordinal);
        Assert.Contains("in the data folder", Refusal(backups, Path.Combine(shop.Folder, "keys")), StringComparison.Ordinal);
        Assert.Equal("", backups.Second.Folder);
    }

    [Fact]
    public async Task The_option_wins_and_setup_says_so()
    {
        await using var shop = await TestShop.OpenAsync(change: services =>
            services.AddSingleton(given => new SecondFolder(
                new ServicesOptions("unused", false, second),
                given.GetRequiredService<DataFolder>(),
                given.GetRequiredService<ShopHealth>()
            ))
        );
        Assert.Equal(new SecondFolderView(second, true), shop.Get<IBackupService>().Second);
        Assert.Contains("--backups", Refusal(shop.Get<IBackupService>(), ""), StringComparison.Ordinal);
    }

    private static string Refusal(IBackupService backups, string folder) =>
        Assert.Single(backups.ChooseSecond(folder).Faults).Message;
}

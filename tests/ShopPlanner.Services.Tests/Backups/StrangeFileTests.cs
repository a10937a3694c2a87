using ShopPlanner.Services.Backups;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Health;

namespace ShopPlanner.Services.Tests.Backups;

/// <summary>Files that only look like backups neither count as one nor keep the daily ones from being made.</summary>
public sealed class StrangeFileTests : IAsyncLifetime
{
    private readonly string folder = TestShop.NewFolder();

    private string Copies => Path.Combine(folder, "backups");

    public async ValueTask InitializeAsync()
    {
        await using var shop = await TestShop.OpenAsync(folder: folder);
        await Some.ProjectAsync(shop);
    }

    public ValueTask DisposeAsync()
    {
        Directory.Delete(folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    [Theory]
    [InlineData("shop-2027-05-02T093000.000Z-daily.db", true, "is dated in the future")]
    [InlineData("shop-2026-05-02T092900.000Z-daily.db", false, "is empty")]
    [InlineData("shop-copy.db", true, "does not have a backup's name")]
    public async Task A_strange_file_does_not_stop_the_daily_backup_and_is_named(string name, bool isWhole, string why)
    {
        if (isWhole)
            File.Copy(await MadeAsync(), Path.Combine(Copies, name));
        else
            await File.WriteAllTextAsync(Path.Combine(Copies, name), "", TestShop.Cancel);
        await RemoveGoodAsync(name);
        await using var shop = await TestShop.OpenAsync(folder: folder);
        Assert.EndsWith("-daily.db", (await FirstAsync(shop)).File, StringComparison.Ordinal);
        var strange = Assert.Single(shop.Get<IBackupService>().Strange());
        Assert.Equal((name, why), (Path.GetFileName(strange.File), strange.Fault));
        Assert.True(File.Exists(strange.File));
    }

    [Fact]
    public async Task A_cut_off_copy_of_today_is_none()
    {
        var made = await MadeAsync();
        var bytes = await File.ReadAllBytesAsync(made, TestShop.Cancel);
        await RemoveGoodAsync("");
        var today = Path.Combine(Copies, "shop-2026-05-02T092900.000Z-daily.db");
        await File.WriteAllBytesAsync(today, bytes[..(bytes.Length / 2)], TestShop.Cancel);
        await using var shop = await TestShop.OpenAsync(folder: folder);
        Assert.NotEqual(today, (await FirstAsync(shop)).File);
        Assert.Contains("cut off", Assert.Single(shop.Get<IBackupService>().Strange()).Fault, StringComparison.Ordinal);
    }

    // Its header is whole: only reading every page tells.
    [Fact]
    public async Task A_copy_of_today_with_flipped_bytes_does_not_count()
    {
        var made = await MadeAsync();
        Flip(made, 3 * 4096, 4096);
        await using var shop = await TestShop.OpenAsync(folder: folder);
        for (var i = 0; i < 100 && shop.Get<IBackupService>().List().Count < 2; i++)
            await Task.Delay(50, TestShop.Cancel);
        Assert.Contains(shop.Get<IBackupService>().List(), copy => copy.Why == "daily");
    }

    [Fact]
    public async Task A_failing_backup_is_told_on_every_page_until_one_is_made()
    {
        await using var shop = await TestShop.OpenAsync(folder: folder);
        await FirstAsync(shop);
        Directory.Move(Copies, Copies + "-away");
        Assert.False((await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel)).Ok);
        var notice = Assert.Single(shop.Get<IShopHealth>().Notices);
        Assert.Equal(HealthTopic.Backups, notice.Topic);
        Assert.Contains("What you enter is saved", notice.Text, StringComparison.Ordinal);
        Directory.Move(Copies + "-away", Copies);
        Assert.True((await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel)).Ok);
        Assert.Empty(shop.Get<IShopHealth>().Notices);
    }

    internal static void Flip(string file, long at, int many)
    {
        using var stream = new FileStream(file, FileMode.Open, FileAccess.ReadWrite);
        var bytes = new byte[many];
        stream.Position = at;
        stream.ReadExactly(bytes);
        for (var i = 0; i < many; i++)
            bytes[i] ^= 0xA5;
        stream.Position = at;
        stream.Write(bytes);
    }

    private async Task<string> MadeAsync()
    {
        await using var shop = await TestShop.OpenAsync(folder: folder);
        return (await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel)).Value!.File;
    }

    private Task RemoveGoodAsync(string but)
    {
        foreach (var file in Directory.EnumerateFiles(Copies).Where(file => Path.GetFileName(file) != but))
            File.Delete(file);
        return Task.CompletedTask;
    }

    private static async Task<BackupView> FirstAsync(TestShop shop)
    {
        for (var i = 0; i < 100 && shop.Get<IBackupService>().List().Count == 0; i++)
            await Task.Delay(50, TestShop.Cancel);
        return shop.Get<IBackupService>().List()[0];
    }
}

using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Storage;

/// <summary>Starting on a disk without room: nothing is wrong with the shop, and it must not be said that there is.</summary>
public sealed class FullDiskTests
{
    private const int Kilobytes = 4096;

    [Theory]
    [InlineData(0)]
    [InlineData(4096)]
    [InlineData(16_384)]
    [InlineData(36_864)]
    public async Task A_sound_shop_on_a_full_disk_is_not_called_damaged(long left)
    {
        using var disk = SmallDisk.Mount(Kilobytes);
        var project = await MakeShopAsync(disk);
        disk.Fill(left);

        var problem = await StartAsync(disk);

        Assert.NotNull(problem);
        SaysFull(problem, disk);
        Assert.Contains("Nothing is damaged", problem.Message, StringComparison.Ordinal);
        disk.Clear();
        await using var shop = await TestShop.OpenAsync(folder: disk.Folder);
        Assert.NotNull(await shop.Projects.GetAsync(project, TestShop.Cancel));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(4096)]
    [InlineData(65_536)]
    [InlineData(262_144)]
    public async Task A_new_shop_on_a_full_disk_says_so_and_starts_once_there_is_room(long left)
    {
        using var disk = SmallDisk.Mount(Kilobytes);
        disk.Fill(left);

        var problem = await StartAsync(disk);

        Assert.NotNull(problem);
        SaysFull(problem, disk);
        disk.Clear();
        await using var shop = await TestShop.OpenAsync(folder: disk.Folder);
        Assert.Empty(await shop.Projects.ListAsync(cancel: TestShop.Cancel));
    }

    private static void SaysFull(ShopStartException problem, SmallDisk disk)
    {
        Assert.Contains($"The disk that holds {disk.Folder} is full", problem.Message, StringComparison.Ordinal);
        Assert.Matches(@"at least \d+ MB", problem.Message);
        Assert.DoesNotContain("Put a backup", problem.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("Another Shop Planner", problem.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("belongs to", problem.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', problem.Message);
    }

    private static async Task<Guid> MakeShopAsync(SmallDisk disk)
    {
        await using var shop = await TestShop.OpenAsync(folder: disk.Folder);
        return (await Some.ProjectAsync(shop)).Id;
    }

    private static async Task<ShopStartException?> StartAsync(SmallDisk disk)
    {
        await using var shop = TestShop.Make(disk.Folder, ownsFolder: false);
        return await Record.ExceptionAsync(() => shop.Database.OpenAsync(TestShop.Cancel)) switch
        {
            null => null,
            ShopStartException problem => problem,
            var other => throw new InvalidOperationException("another kind of exception", other),
        };
    }
}

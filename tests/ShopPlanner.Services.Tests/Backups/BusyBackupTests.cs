using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Backups;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Backups;

/// <summary>Backups while others write, and backups that a killed program left half made.</summary>
public sealed class BusyBackupTests
{
    [Fact]
    public async Task Rows_are_counted_in_the_state_that_is_copied_however_busy_the_shop_is()
    {
        await using var shop = await TestShop.OpenAsync(demo: true);
        using var stop = new CancellationTokenSource();
        var writes = 0;
        var writer = Task.Run(
            async () =>
            {
                while (!stop.IsCancellationRequested)
                {
                    await Some.ProjectAsync(shop, $"Shelf {Interlocked.Increment(ref writes)}");
                    await Task.Delay(5, TestShop.Cancel);
                }
            },
            TestShop.Cancel
        );
        for (var i = 0; i < 8; i++)
        {
            // On a busy computer the writer waits for its turn: it is given one between two backups.
            while (Volatile.Read(ref writes) <= 2 * i)
                await Task.Delay(5, TestShop.Cancel);
            shop.Clock.Advance(TimeSpan.FromSeconds(1));
            var made = await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel);
            Assert.True(made.Ok, string.Join("; ", made.Faults));
        }

        await stop.CancelAsync();
        await writer;
    }

    // At each step the folder is kept as a killed program would leave it.
    [Fact]
    public async Task Killed_at_any_step_a_backup_leaves_whole_files_alone_under_their_names()
    {
        using var killed = new KilledFolders();
        await using (var shop = await TestShop.OpenAsync(change: services => services.AddSingleton<StorageSteps>(killed)))
        {
            await Some.ProjectAsync(shop);
            killed.Watch(shop.Folder);
            Assert.True((await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel)).Ok);
        }

        Assert.True(killed.Folders.Count >= 5, "the steps of a backup were not passed");
        foreach (var (step, folder) in killed.Folders)
        {
            Assert.All(
                Directory.EnumerateFiles(Path.Combine(folder, "backups"), "*.db"),
                file => Assert.Null(CopyFile.Fault(file))
            );
            await using var again = TestShop.Make(folder, ownsFolder: false);
            await again.Database.OpenAsync(TestShop.Cancel);
            Assert.True(
                !Directory.EnumerateFiles(Path.Combine(folder, "backups"), "*.part*").Any(),
                $"killed at '{step}' something half made was left"
            );
            Assert.Single(await again.Projects.ListAsync(cancel: TestShop.Cancel));
        }
    }
}

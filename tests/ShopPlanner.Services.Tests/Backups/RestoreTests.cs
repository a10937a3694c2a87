using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Backups;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Health;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Backups;

/// <summary>A restore puts a backup in the shop's place wholly, or leaves everything as it was.</summary>
public sealed class RestoreTests : IAsyncLifetime
{
    private readonly string folder = TestShop.NewFolder();
    private string copy = "";

    private string Database => Path.Combine(folder, "shop.db");

    // The backup holds one project; the shop afterwards two.
    public async ValueTask InitializeAsync()
    {
        await using var shop = TestShop.Make(folder, ownsFolder: false);
        await shop.Database.OpenAsync(TestShop.Cancel);
        await Some.ProjectAsync(shop, "In the backup");
        copy = (await shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel)).Value!.File;
        await Some.ProjectAsync(shop, "Entered later");
    }

    public ValueTask DisposeAsync()
    {
        Directory.Delete(folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_backup_is_restored_and_what_was_there_is_a_backup_now()
    {
        string kept;
        await using (var shop = TestShop.Make(folder, ownsFolder: false))
            kept = (await shop.Database.RestoreAsync(copy, TestShop.Cancel)).Kept!;
        Assert.Equal(["In the backup"], await NamesAsync(folder));
        Assert.EndsWith("-before-restore.db", kept, StringComparison.Ordinal);
        Assert.Null(CopyFile.Fault(kept));
        Assert.Equal(2, CopyFacts.Of(kept).Projects);
        Assert.True(File.Exists(copy));
        AssertNothingLeft(folder);
    }

    [Fact]
    public async Task A_log_that_lies_beside_the_backup_is_never_applied()
    {
        await File.WriteAllBytesAsync(copy + "-wal", await LogOfAnotherAsync(), TestShop.Cancel);
        await using (var shop = TestShop.Make(folder, ownsFolder: false))
            await shop.Database.RestoreAsync(copy, TestShop.Cancel);
        Assert.Equal(["In the backup"], await NamesAsync(folder));
    }

    [Theory]
    [InlineData("empty", "is empty")]
    [InlineData("half", "is cut off")]
    [InlineData("flipped", "is damaged")]
    [InlineData("text", "is not a SQLite database")]
    [InlineData("newer", "was written by Shop Planner 9.9.9")]
    [InlineData("missing", "isn't there")]
    public async Task What_is_no_whole_backup_of_this_program_is_refused_and_nothing_changes(string kind, string said)
    {
        await SpoiledFile.MakeAsync(copy, kind);
        await using var shop = TestShop.Make(folder, ownsFolder: false);
        var problem = await Assert.ThrowsAsync<ShopStartException>(() => shop.Database.RestoreAsync(copy, TestShop.Cancel));
        Assert.Contains(said, problem.Message, StringComparison.Ordinal);
        Assert.Contains("Nothing was changed", problem.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', problem.Message);
        Assert.Equal(["Entered later", "In the backup"], await NamesAsync(folder));
    }

    [Fact]
    public async Task While_the_program_runs_nothing_is_restored()
    {
        await using var running = await TestShop.OpenAsync(folder: folder);
        await using var other = TestShop.Make(folder, ownsFolder: false);
        var problem = await Assert.ThrowsAsync<ShopStartException>(() => other.Database.RestoreAsync(copy, TestShop.Cancel));
        Assert.Contains("Another Shop Planner is running", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_damaged_database_is_set_aside_as_it_is_and_replaced()
    {
        StrangeFileTests.Flip(Database, 2 * 4096, 30_000);
        var damaged = Disk.Hash(Database);
        await using (var shop = TestShop.Make(folder, ownsFolder: false))
        {
            var kept = (await shop.Database.RestoreAsync(copy, TestShop.Cancel)).Kept!;
            Assert.Equal(damaged, Disk.Hash(Path.Combine(kept, "shop.db")));
        }

        Assert.Equal(["In the backup"], await NamesAsync(folder));
    }

    [Fact]
    public async Task Into_a_folder_without_a_shop_a_backup_is_restored_too()
    {
        var empty = TestShop.NewFolder();
        await using (var shop = TestShop.Make(empty, ownsFolder: false))
            Assert.Null((await shop.Database.RestoreAsync(copy, TestShop.Cancel)).Kept);
        Assert.Equal(["In the backup"], await NamesAsync(empty));
        Directory.Delete(empty, recursive: true);
    }

    // At each step the folder is kept as a killed program would leave it; the next start must be whole.
    [Fact]
    public async Task Killed_at_any_step_the_next_start_is_wholly_old_or_wholly_restored()
    {
        using var killed = new KilledFolders();
        await using (var shop = TestShop.Make(folder, false, change: With(killed)))
        {
            killed.Watch(folder);
            await shop.Database.RestoreAsync(copy, TestShop.Cancel);
        }

        Assert.True(killed.Folders.Count >= 12, "the steps of a restore were not passed");
        foreach (var (step, left) in killed.Folders)
        {
            var isDone = step == "remove what was set aside";
            string[] expected = isDone ? ["In the backup"] : ["Entered later", "In the backup"];
            Assert.True(expected.SequenceEqual(await NamesAsync(left)), $"killed at '{step}' the shop is another");
            Assert.False(File.Exists(Path.Combine(left, "restore-unfinished.json")), step);
            Assert.Null(LiveFile.Fault(Path.Combine(left, "shop.db")));
        }
    }

    [Fact]
    public async Task A_step_that_fails_takes_everything_back_by_itself()
    {
        for (var at = 0; ; at++)
        {
            var failing = new FailingStep(at);
            await using var shop = TestShop.Make(folder, false, change: With(failing));
            var problem = await Record.ExceptionAsync(() => shop.Database.RestoreAsync(copy, TestShop.Cancel));
            AssertNothingLeft(folder);
            if (failing.Failed is not { } step || step == "remove what was set aside")
            {
                Assert.True(at >= 12, $"only {at} steps were passed");
                Assert.Null(problem);
                return;
            }

            Assert.Contains(
                "The shop is as it was before",
                Assert.IsType<ShopStartException>(problem).Message,
                StringComparison.Ordinal
            );
            Assert.True((await NamesAsync(folder)).SequenceEqual(["Entered later", "In the backup"]), step);
        }
    }

    // Going back may be cut short too.
    [Fact]
    public async Task Killed_while_going_back_the_next_start_goes_on_with_it()
    {
        using var going = new KilledFolders();
        using (var killed = new KilledFolders())
        {
            await using (var shop = TestShop.Make(folder, false, change: With(killed)))
            {
                killed.Watch(folder);
                await shop.Database.RestoreAsync(copy, TestShop.Cancel);
            }

            var left = killed.Folders.Single(one => one.Step == "open what was restored").Folder;
            await using (var shop = TestShop.Make(left, false, change: With(going)))
            {
                going.Watch(left);
                await shop.Database.OpenAsync(TestShop.Cancel);
            }
        }

        Assert.True(going.Folders.Count >= 4, "the steps of going back were not passed");
        foreach (var (step, left) in going.Folders)
            Assert.True(
                (await NamesAsync(left)).SequenceEqual(["Entered later", "In the backup"]),
                $"killed at '{step}' the shop is another"
            );
    }

    [Fact]
    public async Task Asked_for_in_setup_the_next_start_restores_and_tells()
    {
        await using (var shop = await TestShop.OpenAsync(folder: folder))
        {
            var restores = shop.Get<IRestoreService>();
            var preview = (await restores.PreviewAsync(Path.GetFileName(copy), TestShop.Cancel)).Value!;
            Assert.Equal((1L, 2L), (preview.Then.Projects, preview.Now.Projects));
            Assert.Equal(Migrator.ProgramVersion, preview.Program);
            Assert.False(restores.IsAsked);
            Assert.True(restores.Ask(Path.GetFileName(copy)).Ok);
            Assert.True(restores.IsAsked);
        }

        await using var again = await TestShop.OpenAsync(folder: folder);
        Assert.False(again.Get<IRestoreService>().IsAsked);
        Assert.Contains("was restored", Told(again).Text, StringComparison.Ordinal);
        Assert.Equal("In the backup", Assert.Single(await again.Projects.ListAsync(cancel: TestShop.Cancel)).Name);
    }

    [Fact]
    public async Task A_restore_that_fails_at_the_start_leaves_the_shop_open_and_tells()
    {
        await using (var shop = await TestShop.OpenAsync(folder: folder))
            Assert.True(shop.Get<IRestoreService>().Ask(Path.GetFileName(copy)).Ok);
        await SpoiledFile.MakeAsync(copy, "flipped");
        for (var start = 0; start < 2; start++)
        {
            await using var again = await TestShop.OpenAsync(folder: folder);
            Assert.Equal(2, (await again.Projects.ListAsync(cancel: TestShop.Cancel)).Count);
            if (start == 0)
                Assert.Contains("is damaged", Told(again).Text, StringComparison.Ordinal);
            else
                Assert.Empty(again.Get<IShopHealth>().Notices);
        }
    }

    [Fact]
    public async Task A_name_that_is_a_path_is_no_backup()
    {
        await using var shop = await TestShop.OpenAsync(folder: folder);
        Assert.Equal(OutcomeKind.Missing, shop.Get<IRestoreService>().Ask("../shop.db").Kind);
        Assert.Equal(OutcomeKind.Missing, shop.Get<IRestoreService>().Ask(copy).Kind);
    }

    private static HealthNotice Told(TestShop shop) =>
        shop.Get<IShopHealth>().Notices.Single(one => one.Topic == HealthTopic.Restore);

    private static Action<IServiceCollection> With(StorageSteps steps) => services => services.AddSingleton(steps);

    private static async Task<IReadOnlyList<string>> NamesAsync(string folder)
    {
        await using var shop = TestShop.Make(folder, ownsFolder: false);
        await shop.Database.OpenAsync(TestShop.Cancel);
        return [.. (await shop.Projects.ListAsync(cancel: TestShop.Cancel)).Select(project => project.Name).Order()];
    }

    private static void AssertNothingLeft(string folder)
    {
        Assert.Empty(Directory.EnumerateFiles(folder, "shop.db.restored*"));
        Assert.Empty(Directory.EnumerateFiles(folder, "restore-*"));
    }

    private static async Task<byte[]> LogOfAnotherAsync()
    {
        await using var other = await TestShop.OpenAsync();
        await Some.ProjectAsync(other, "Another shop's");
        var log = Path.Combine(other.Folder, "shop.db-wal");
        await using var stream = new FileStream(log, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var bytes = new byte[stream.Length];
        await stream.ReadExactlyAsync(bytes, TestShop.Cancel);
        Assert.NotEmpty(bytes);
        return bytes;
    }

    private sealed class FailingStep(int at) : StorageSteps
    {
        private int passed;

        public string? Failed { get; private set; }

        public override void Reach(string step)
        {
            if (passed++ != at)
                return;
            Failed = step;
            throw new IOException($"made to fail at '{step}'");
        }
    }
}

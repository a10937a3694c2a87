using Microsoft.Data.Sqlite;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Storage;

public sealed class OpeningTests : IDisposable
{
    private readonly string folder = TestShop.NewFolder();

    private string File => Path.Combine(folder, "shop.db");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_first_run_makes_folders_for_the_owner_alone_and_a_whole_database()
    {
        var inner = Path.Combine(folder, "new", "shop");
        await using (var shop = await TestShop.OpenAsync(folder: inner))
            Assert.NotEmpty(await shop.Materials.ListAsync(TestShop.Cancel));
        Assert.Equal(
            ["backups", "keys", "shop.db", "shop.lock"],
            Directory.EnumerateFileSystemEntries(inner).Select(Path.GetFileName).Order()
        );
        if (!OperatingSystem.IsWindows())
            Assert.Equal(
                UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute,
                System.IO.File.GetUnixFileMode(inner)
            );
    }

    [Fact]
    public async Task What_was_saved_is_there_after_the_next_start()
    {
        Guid id;
        await using (var shop = await TestShop.OpenAsync(folder: folder))
            id = (await Some.ProjectAsync(shop)).Id;
        await using var again = await TestShop.OpenAsync(folder: folder);
        Assert.Equal("Boot-room bench", (await again.Projects.GetAsync(id, TestShop.Cancel))!.Name);
    }

    [Fact]
    public async Task A_second_program_on_the_folder_is_refused_and_the_first_goes_on()
    {
        await using var first = await TestShop.OpenAsync(folder: folder);
        await RefusesAsync("Another Shop Planner is running");
        await Some.ProjectAsync(first);
    }

    [Fact]
    public async Task A_folder_that_cannot_be_made_is_named()
    {
        System.IO.File.WriteAllText(Path.Combine(folder, "file"), "");
        await using var shop = TestShop.Make(Path.Combine(folder, "file", "shop"), false);
        var refusal = await Assert.ThrowsAsync<ShopStartException>(() => shop.Database.OpenAsync(TestShop.Cancel));
        Assert.Contains(Path.Combine(folder, "file", "shop"), refusal.Message);
        Assert.DoesNotContain('\n', refusal.Message);
    }

    [Fact]
    public async Task An_empty_database_file_is_refused_and_left()
    {
        System.IO.File.WriteAllText(File, "");
        await RefusesAsync("is empty");
        Assert.Equal(0, new FileInfo(File).Length);
    }

    [Fact]
    public async Task A_file_that_is_no_database_is_refused_and_left()
    {
        System.IO.File.WriteAllText(File, "Dear diary, today I cut the wrong side of the line.");
        await RefusesAsync("is not a SQLite database");
        Assert.StartsWith("Dear diary", System.IO.File.ReadAllText(File));
    }

    [Fact]
    public async Task Another_programs_database_is_refused_and_left()
    {
        Run("CREATE TABLE recipes (name TEXT); INSERT INTO recipes VALUES ('bread')");
        await RefusesAsync("another program's database");
        Assert.Equal("bread", Run("SELECT name FROM recipes"));
    }

    [Fact]
    public async Task A_damaged_database_is_refused()
    {
        await CreateAsync();
        using (var file = new FileStream(File, FileMode.Open))
        {
            file.Position = 4096;
            file.Write(new byte[40_000]);
        }

        await RefusesAsync("shop.db");
    }

    [Fact]
    public async Task A_database_that_is_gone_is_not_silently_replaced()
    {
        await CreateAsync();
        System.IO.File.Move(File, Path.Combine(folder, "backups", "shop-copy.db"));
        await RefusesAsync("is missing");
        Assert.False(System.IO.File.Exists(File));
    }

    [Fact]
    public async Task Keys_alone_show_that_there_was_a_database()
    {
        await CreateAsync();
        System.IO.File.Delete(File);
        await System.IO.File.WriteAllTextAsync(Path.Combine(folder, "keys", "key-1.xml"), "<key />", TestShop.Cancel);
        await RefusesAsync("is missing", "key-1.xml");
    }

    [Fact]
    public async Task A_newer_programs_database_is_refused_naming_both_versions()
    {
        await CreateAsync();
        Run(
            "INSERT INTO __EFMigrationsHistory VALUES ('29990101000000_Later', '30.0.0'); UPDATE Facts SET Value = '7.5.0' WHERE Name = 'written by'"
        );
        await RefusesAsync("written by Shop Planner 7.5.0", "29990101000000_Later", $"this is {Migrator.ProgramVersion}");
    }

    // A program killed while migrating leaves this row; without clearing it the next start waits for ever.
    [Fact]
    public async Task A_migration_lock_left_by_a_killed_program_does_not_hang_the_next_start()
    {
        await CreateAsync();
        Run(
            "CREATE TABLE IF NOT EXISTS \"__EFMigrationsLock\" (\"Id\" INTEGER PRIMARY KEY, \"Timestamp\" TEXT NOT NULL); "
                + "INSERT OR REPLACE INTO \"__EFMigrationsLock\" VALUES (1, '2026-01-01')"
        );
        await using var shop = TestShop.Make(folder, false);
        await shop.Database.OpenAsync(TestShop.Cancel).WaitAsync(TimeSpan.FromSeconds(30), TestShop.Cancel);
        Assert.Equal("0", shop.Ask("SELECT COUNT(*) FROM \"__EFMigrationsLock\""));
    }

    // Without its history the database looks like an older one, whose upgrade must fail since the tables are there.
    [Fact]
    public async Task Before_an_upgrade_a_copy_is_made_and_a_failed_one_leaves_the_old_database()
    {
        await using (var shop = await TestShop.OpenAsync(folder: folder))
            await Some.ProjectAsync(shop);
        Run("DELETE FROM __EFMigrationsHistory");
        await RefusesAsync("cannot be opened", "already exists");
        Assert.Equal("Boot-room bench", Run("SELECT Name FROM Projects"));
        Assert.Contains("before-", Path.GetFileName(Directory.EnumerateFiles(Path.Combine(folder, "backups"), "*.db").Single()));
        Assert.Equal("0", Run("SELECT COUNT(*) FROM __EFMigrationsHistory"));
        await RefusesAsync("already exists");
        Assert.Single(Directory.EnumerateFiles(Path.Combine(folder, "backups"), "*.db"));
    }

    [Fact]
    public async Task What_a_killed_first_run_left_is_swept_away()
    {
        System.IO.File.WriteAllText(Path.Combine(folder, "shop.db.new"), "half");
        Directory.CreateDirectory(Path.Combine(folder, "backups"));
        System.IO.File.WriteAllText(Path.Combine(folder, "backups", "x.part"), "half");
        await using var shop = await TestShop.OpenAsync(folder: folder);
        Assert.False(System.IO.File.Exists(Path.Combine(folder, "shop.db.new")));
        Assert.Empty(Directory.EnumerateFiles(Path.Combine(folder, "backups")));
    }

    private async Task CreateAsync()
    {
        await using var shop = await TestShop.OpenAsync(folder: folder);
    }

    private async Task RefusesAsync(params string[] said)
    {
        await using var shop = TestShop.Make(folder, false);
        var refusal = await Assert.ThrowsAsync<ShopStartException>(() => shop.Database.OpenAsync(TestShop.Cancel));
        Assert.All(said, words => Assert.Contains(words, refusal.Message));
        Assert.DoesNotContain('\n', refusal.Message);
    }

    private string Run(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={File};Pooling=False");
        connection.Open();
        return SqliteFacts.Ask(connection, sql);
    }
}

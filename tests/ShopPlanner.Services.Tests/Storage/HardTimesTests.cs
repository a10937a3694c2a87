using System.Diagnostics;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Storage;

public sealed class HardTimesTests
{
    private const string WriterFolder = "SHOP_PLANNER_TEST_WRITER_FOLDER";
    private const int Kills = 3,
        AcknowledgedBeforeKill = 15;

    // max_page_count stands in for a full disk: SQLite answers the same way.
    [Fact]
    public async Task A_full_disk_is_told_nothing_is_half_saved_and_reading_goes_on()
    {
        await using var shop = await TestShop.OpenAsync();
        var project = await Some.ProjectAsync(shop);
        var rows = shop.CountRows();
        var outcome = await shop.Work.WriteAsync<Done>(
            async db =>
            {
                await db.Database.ExecuteSqlRawAsync("PRAGMA max_page_count = 1", TestShop.Cancel);
                for (var i = 0; i < 2_000; i++)
                    db.Parts.Add(
                        new()
                        {
                            Id = Guid.CreateVersion7(),
                            ProjectId = project.Id,
                            Note = new string('x', 1_000),
                        }
                    );
                await db.SaveChangesAsync(TestShop.Cancel);
                return Done.Value;
            },
            TestShop.Cancel
        );
        Assert.Equal((OutcomeKind.Faulty, "storage"), (outcome.Kind, outcome.Faults.Single().Field));
        Assert.Contains("full", outcome.Faults.Single().Message);
        Assert.Equal(rows, shop.CountRows());
        Assert.NotNull(await shop.Projects.GetAsync(project.Id, TestShop.Cancel));
    }

    // Kills a program at a random moment under mixed writes: what it acknowledged is there, nothing is there by half.
    [Fact]
    public async Task Nothing_acknowledged_is_lost_when_the_program_is_killed()
    {
        var folder = TestShop.NewFolder();
        var random = new Random(20260502);
        for (var round = 0; round < Kills; round++)
        {
            var acknowledged = await KillAsync(folder, random.Next(0, 200));
            await using var shop = await TestShop.OpenAsync(folder: folder);
            Assert.Equal("ok", shop.Ask("PRAGMA integrity_check"));
            Assert.Equal("0", shop.Ask("SELECT COUNT(*) FROM pragma_foreign_key_check"));
            foreach (var project in acknowledged)
                Assert.Equal("2", shop.Ask($"SELECT COUNT(*) FROM Parts WHERE ProjectId = '{project:D}' COLLATE NOCASE"));
            Assert.Equal("0", shop.Ask("SELECT COUNT(*) FROM (SELECT 1 FROM Parts GROUP BY ProjectId HAVING COUNT(*) <> 2)"));
        }

        Directory.Delete(folder, recursive: true);
    }

    /// <summary>The killed program: runs only when another test starts it.</summary>
    [Fact(Explicit = true)]
    public async Task Writes_until_it_is_killed()
    {
        var folder = Environment.GetEnvironmentVariable(WriterFolder)!;
        await using var shop = await TestShop.OpenAsync(folder: folder);
        await using var log = new StreamWriter(Path.Combine(folder, "acknowledged.txt"), append: true) { AutoFlush = true };
        while (true)
        {
            var project = (await shop.Projects.CreateAsync("Bench", LengthUnit.Inch, CommandId.New(), TestShop.Cancel)).Value!;
            var saved = await shop.Parts.SaveAsync(project.Id, [Some.New(Some.Part()), Some.New(Some.Part())], TestShop.Cancel);
            if (saved.Ok)
                await log.WriteLineAsync($"{project.Id}");
        }
    }

    private static async Task<IReadOnlyList<Guid>> KillAsync(string folder, int moreMilliseconds)
    {
        var log = Path.Combine(folder, "acknowledged.txt");
        var before = Read(log).Count;
        var start = new ProcessStartInfo(
            Environment.ProcessPath!,
            ["-explicit", "only", "-method", $"{typeof(HardTimesTests).FullName}.{nameof(Writes_until_it_is_killed)}"]
        )
        {
            RedirectStandardOutput = true,
        };
        start.Environment[WriterFolder] = folder;
        using var writer = Process.Start(start)!;
        var said = writer.StandardOutput.ReadToEndAsync(TestShop.Cancel);
        while (Read(log).Count < before + AcknowledgedBeforeKill)
        {
            Assert.False(writer.HasExited, writer.HasExited ? await said : "");
            await Task.Delay(20, TestShop.Cancel);
        }

        await Task.Delay(moreMilliseconds, TestShop.Cancel);
        writer.Kill(entireProcessTree: true);
        await writer.WaitForExitAsync(TestShop.Cancel);
        return Read(log);
    }

    // The last line may be cut off in the middle: it was not acknowledged then.
    private static IReadOnlyList<Guid> Read(string log)
    {
        if (!File.Exists(log))
            return [];
        using var reader = new StreamReader(new FileStream(log, FileMode.Open, FileAccess.Read, FileShare.ReadWrite));
        return [.. reader.ReadToEnd().Split('\n').Where(line => Guid.TryParse(line, out _)).Select(Guid.Parse)];
    }
}

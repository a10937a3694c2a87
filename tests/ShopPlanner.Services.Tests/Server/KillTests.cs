using System.Diagnostics;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Server;

/// <summary>
/// Kills a program at random moments under mixed writes, and the database server under it: what was acknowledged is there,
/// nothing is there by half. SHOP_PLANNER_KILLS says how often.
/// </summary>
public sealed class KillTests
{
    private const string WriterFolder = "SHOP_PLANNER_TEST_WRITER_FOLDER",
        WriterDatabase = "SHOP_PLANNER_TEST_WRITER_DATABASE";

    private const int AcknowledgedBeforeKill = 15;

    private static readonly int Kills = int.Parse(
        Environment.GetEnvironmentVariable("SHOP_PLANNER_KILLS") ?? "3",
        CultureInfo.InvariantCulture
    );

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Nothing_acknowledged_is_lost_when_the_program_is_killed()
    {
        var folder = TestShop.NewFolder();
        var random = new Random(20260502);
        for (var round = 0; round < Kills; round++)
        {
            var acknowledged = await KillAsync(folder, null, random.Next(0, 200), () => { });
            Assert.Null(LiveFile.Fault(Path.Combine(folder, "shop.db")));
            await CheckAsync(folder, null, acknowledged);
            Say("file", round, acknowledged.Count);
        }

        Directory.Delete(folder, recursive: true);
    }

    // Every second time the server goes first, in the middle of the program's writes.
    [Fact]
    public async Task Nothing_acknowledged_is_lost_when_the_program_or_its_server_is_killed()
    {
        Assert.SkipUnless(PostgresServer.Missing is null, PostgresServer.Missing ?? "");
        using var server = new PostgresServer(isDurable: true);
        server.Ask("CREATE DATABASE killed");
        var folder = TestShop.NewFolder();
        var random = new Random(20260503);
        for (var round = 0; round < Kills; round++)
        {
            var killsServer = round % 2 == 1;
            Action first = killsServer ? server.Kill : () => { };
            var acknowledged = await KillAsync(folder, server.To("killed"), random.Next(0, 200), first);
            if (killsServer)
                server.Start();
            await CheckAsync(folder, server.To("killed"), acknowledged);
            Say("server", round, acknowledged.Count);
        }

        Directory.Delete(folder, recursive: true);
    }

    /// <summary>The killed program: runs only when another test starts it.</summary>
    [Fact(Explicit = true)]
    public async Task Writes_until_it_is_killed()
    {
        var folder = Environment.GetEnvironmentVariable(WriterFolder)!;
        var database = Environment.GetEnvironmentVariable(WriterDatabase);
        await using var shop = await TestShop.OpenAsync(folder: folder, keptBy: database);
        await using var log = new StreamWriter(Path.Combine(folder, "acknowledged.txt"), append: true) { AutoFlush = true };
        while (true)
        {
            var made = await shop.Projects.CreateAsync("Bench", LengthUnit.Inch, CommandId.New(), Cancel);
            if (made.Value is not { } project)
                continue;
            var saved = await shop.Parts.SaveAsync(project.Id, [Some.New(Some.Part()), Some.New(Some.Part())], Cancel);
            if (saved.Ok)
                await log.WriteLineAsync($"{project.Id}");
        }
    }

    private static async Task CheckAsync(string folder, string? database, IReadOnlyList<Guid> acknowledged)
    {
        await using var shop = await TestShop.OpenAsync(folder: folder, keptBy: database);
        var parts = await shop.Work.ReadAsync(
            db => db.Parts.GroupBy(part => part.ProjectId).ToDictionaryAsync(one => one.Key, one => one.Count(), Cancel),
            Cancel
        );
        Assert.All(acknowledged, project => Assert.Equal(2, parts.GetValueOrDefault(project)));
        Assert.All(parts.Values, count => Assert.Equal(2, count));
    }

    private static void Say(string store, int round, int acknowledged)
    {
        if (Kills > 10 && (round + 1) % 10 == 0)
            TestContext.Current.SendDiagnosticMessage($"{store}: {round + 1} kills, {acknowledged} acknowledged, all there");
    }

    private static async Task<IReadOnlyList<Guid>> KillAsync(string folder, string? database, int moreMilliseconds, Action first)
    {
        var log = Path.Combine(folder, "acknowledged.txt");
        var before = Read(log).Count;
        var start = new ProcessStartInfo(
            Environment.ProcessPath!,
            ["-explicit", "only", "-method", $"{typeof(KillTests).FullName}.{nameof(Writes_until_it_is_killed)}"]
        )
        {
            RedirectStandardOutput = true,
        };
        start.Environment[WriterFolder] = folder;
        start.Environment[WriterDatabase] = database;
        using var writer = Process.Start(start)!;
        var said = writer.StandardOutput.ReadToEndAsync(Cancel);
        while (Read(log).Count < before + AcknowledgedBeforeKill)
        {
            Assert.False(writer.HasExited, writer.HasExited ? await said : "");
            await Task.Delay(20, Cancel);
        }

        await Task.Delay(moreMilliseconds, Cancel);
        first();
        writer.Kill(entireProcessTree: true);
        await writer.WaitForExitAsync(Cancel);
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

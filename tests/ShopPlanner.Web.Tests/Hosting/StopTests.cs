using System.Diagnostics;
using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stores;
using ShopPlanner.Web.Hosting;

namespace ShopPlanner.Web.Tests.Hosting;

/// <summary>The program as a process of its own that a service manager stops in the middle of a search.</summary>
public sealed class StopTests : IDisposable
{
    private const string ServedFolder = "SHOP_PLANNER_TEST_SERVED_FOLDER";
    private readonly string folder = Directory.CreateTempSubdirectory("shop-planner-stop-").FullName;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task The_best_plan_is_there_after_an_orderly_stop()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "needs a system that stops programs by SIGTERM");
        using var served = Process.Start(ServedProgram())!;
        var said = served.StandardOutput.ReadToEndAsync(Cancel);
        while (!File.Exists(JobFile(folder)))
        {
            Assert.False(served.HasExited, served.HasExited ? await said : "");
            await Task.Delay(10, Cancel);
        }

        var watch = Stopwatch.StartNew();
        using var kill = Process.Start("kill", ["-TERM", served.Id.ToString(CultureInfo.InvariantCulture)]);
        await served.WaitForExitAsync(Cancel);
        Assert.True(served.ExitCode == 0, await said);
        Assert.True(watch.Elapsed < Listening.StopTime, $"the stop took {watch.Elapsed}");

        await using var app = Build(folder);
        await app.Services.GetRequiredService<ShopDatabase>().OpenAsync(Cancel);
        var plans = app.Services.GetRequiredService<IPlanService>();
        var job = plans.FindJob(Guid.Parse(await File.ReadAllTextAsync(JobFile(folder), Cancel)))!;
        Assert.Equal(PlanJobState.Done, job.State);
        Assert.NotEmpty((await plans.GetAsync(job.PlanId!.Value, Cancel))!.Plan.Layouts);
    }

    // A stop has to end before the service manager kills the program.
    [Fact]
    public async Task The_service_unit_waits_longer_than_the_program_takes_to_stop()
    {
        var unit = await File.ReadAllLinesAsync(Path.Combine(Root(), "deploy", "shop-planner.service"), Cancel);
        var line = unit.Single(line => line.StartsWith("TimeoutStopSec=", StringComparison.Ordinal));
        var waits = TimeSpan.FromSeconds(int.Parse(line.Split('=')[1], CultureInfo.InvariantCulture));
        await using var app = Build(folder);
        var host = app.Services.GetRequiredService<IOptions<HostOptions>>().Value;
        Assert.True(host.ShutdownTimeout + TimeSpan.FromSeconds(10) <= waits, $"{host.ShutdownTimeout} against {waits}");
        Assert.True(host.ServicesStopConcurrently);
    }

    /// <summary>The program that is stopped: runs only when another test starts it.</summary>
    [Fact(Explicit = true)]
    public async Task Plans_until_it_is_stopped()
    {
        var folder = Environment.GetEnvironmentVariable(ServedFolder)!;
        await using var app = Build(folder);
        await app.Services.GetRequiredService<ShopDatabase>().OpenAsync(Cancel);
        var running = app.RunShopAsync(Settings(folder));
        var job = await BeginAsync(app.Services);
        await File.WriteAllTextAsync(JobFile(folder) + ".part", $"{job}", Cancel);
        File.Move(JobFile(folder) + ".part", JobFile(folder));
        Assert.Equal(0, await running);
    }

    private static async Task<Guid> BeginAsync(IServiceProvider shop)
    {
        var plans = shop.GetRequiredService<IPlanService>();
        var projects = await shop.GetRequiredService<IProjectService>().ListAsync(cancel: Cancel);
        var stores = await shop.GetRequiredService<IStoreService>().ListAsync(Cancel);
        var order = new PlanOrder(
            [.. projects.Select(project => project.Id)],
            null,
            [.. stores.Select(store => store.Id)],
            UseRack: true,
            UseBin: true,
            Seconds: 3600,
            Replaces: []
        );
        var job = await plans.StartAsync(order, CommandId.New(), Cancel);
        Assert.True(job.Ok, string.Join('\n', job.Faults));
        while (plans.FindJob(job.Value.Id) is { State: PlanJobState.Waiting or PlanJobState.Running, Cost: null })
            await Task.Delay(10, Cancel);
        Assert.Equal(PlanJobState.Running, plans.FindJob(job.Value.Id)!.State);
        return job.Value.Id;
    }

    private ProcessStartInfo ServedProgram()
    {
        var start = new ProcessStartInfo(
            Environment.ProcessPath!,
            ["-explicit", "only", "-method", $"{typeof(StopTests).FullName}.{nameof(Plans_until_it_is_stopped)}"]
        )
        {
            RedirectStandardOutput = true,
        };
        start.Environment[ServedFolder] = folder;
        return start;
    }

    private static WebApplication Build(string folder) =>
        Program.Build(Settings(folder), builder => builder.Logging.SetMinimumLevel(LogLevel.Critical));

    private static WebSettings Settings(string folder) =>
        new(Path.Combine(folder, "data"), Demo: true, Port: 0, [], OnlyThisComputer: true, []);

    private static string JobFile(string folder) => Path.Combine(folder, "job.txt");

    private static string Root()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at.FullName, "ShopPlanner.sln")))
            at = at.Parent!;
        return at.FullName;
    }
}

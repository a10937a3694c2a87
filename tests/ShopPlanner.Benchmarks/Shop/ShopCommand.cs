using System.Diagnostics;
using System.Globalization;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Search;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Workings;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// <c>shop [--runs N]</c>: makes a shop of 40 projects, 200 plans and 1,500 pieces of stock in a temporary folder and prints,
/// warm, the median of so many runs and the commands sent to the database for what its pages ask and for a tick at the bench.
/// </summary>
internal static class ShopCommand
{
    private const int WarmRuns = 3;

    public static int Run(IReadOnlyList<string> words)
    {
        var runs = Options.ParseWithoutPath(words, ["runs"], []).Whole("runs", 15);
        RunAsync(runs).GetAwaiter().GetResult();
        return 0;
    }

    private static async Task RunAsync(int runs)
    {
        await using var shop = await LargeShop.MakeAsync();
        var (plan, project) = (shop.Plan, shop.Project);
        await TickAsync(shop, plan, 2, true);
        var made = false;
        Console.WriteLine("| what | median ms | least ms | database commands |");
        Console.WriteLine("| --- | --- | --- | --- |");
        await MeasureAsync(shop, runs, "bench tick", () => TickAsync(shop, plan, 1, made = !made));
        await MeasureAsync(shop, runs, "bench page", () => shop.Get<IBenchService>().GetAsync(plan));
        await MeasureAsync(shop, runs, "search", () => shop.Get<ISearchService>().FindAsync("4x8 3/4 ply", 5));
        await MeasureAsync(
            shop,
            runs,
            "bench tick, then search",
            async () =>
            {
                await TickAsync(shop, plan, 1, made = !made);
                await shop.Get<ISearchService>().FindAsync("leg pine", 5);
            }
        );
        foreach (var (name, ask) in Lists(shop).Concat(Tabs(shop, project, plan)))
            await MeasureAsync(shop, runs, name, ask);
    }

    private static IEnumerable<(string Name, Func<Task> Ask)> Lists(LargeShop shop)
    {
        var (plans, projects) = (shop.Get<IPlanService>(), shop.Get<IProjectService>());
        yield return ("projects", () => EachAsync(shop.Get<IShopService>().GetAsync, projects.ListAsync));
        yield return ("home", () => EachAsync(shop.Get<IShopService>().GetAsync, plans.ListAsync, projects.ListAsync));
        yield return ("bench list", () => plans.ListAsync());
        yield return ("cut plans", () => EachAsync(shop.Get<IShopService>().GetAsync, plans.ListAsync));
    }

    // What the pages and the parts on them ask, one after the other.
    private static IEnumerable<(string Name, Func<Task> Ask)> Tabs(LargeShop shop, Guid project, Guid plan)
    {
        var (plans, projects) = (shop.Get<IPlanService>(), shop.Get<IProjectService>());
        yield return (
            "project, idea",
            async () =>
            {
                await projects.GetAsync(project);
                await shop.Get<IMaterialService>().ListAsync();
                await shop.Get<IPieceService>().ReachAsync();
                await shop.Get<IShopService>().GetAsync();
                await shop.Get<IIdeaService>().GetAsync(project);
                await plans.ListAsync();
            }
        );
        yield return (
            "project, parts",
            async () =>
            {
                await shop.Get<IMaterialService>().ListAsync();
                await projects.GetAsync(project);
                await shop.Get<IPartService>().GetAsync(project);
                await plans.ListAsync();
                await shop.Get<IWorkingService>().ListAsync(project);
            }
        );
        yield return (
            "project, cuts",
            async () =>
            {
                await shop.Get<IShopService>().GetAsync();
                await plans.GetAsync(plan);
            }
        );
    }

    private static async Task TickAsync(LargeShop shop, Guid plan, int cut, bool made)
    {
        var outcome = await shop.Get<IBenchService>().SetCutAsync(plan, 0, 1, cut, made, "benchmark", CommandId.New());
        if (!outcome.Ok)
            throw new InvalidOperationException(string.Join("; ", outcome.Faults));
    }

    private static async Task EachAsync(
        Func<CancellationToken, Task> first,
        params IReadOnlyList<Func<bool, CancellationToken, Task>> lists
    )
    {
        await first(default);
        foreach (var list in lists)
            await list(false, default);
    }

    private static async Task MeasureAsync(LargeShop shop, int runs, string name, Func<Task> ask)
    {
        for (var i = 0; i < WarmRuns; i++)
            await ask();
        shop.Counter.Take();
        await ask();
        var commands = shop.Counter.Take();
        var times = new List<double>();
        for (var i = 0; i < runs; i++)
        {
            var watch = Stopwatch.StartNew();
            await ask();
            times.Add(watch.Elapsed.TotalMilliseconds);
        }

        times.Sort();
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"| {name} | {times[times.Count / 2]:0.0} | {times[0]:0.0} | {commands} |"
            )
        );
    }
}

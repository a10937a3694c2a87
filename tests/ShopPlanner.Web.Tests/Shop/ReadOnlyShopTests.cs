using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stores;
using ShopPlanner.Web.Features.Bench;
using ShopPlanner.Web.Features.Bench.Outbox;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Shop;

/// <summary>A shop whose database may be read and not written.</summary>
public sealed class ReadOnlyShopTests : IAsyncLifetime
{
    private readonly string folder = Directory.CreateTempSubdirectory("shop-planner-web-").FullName;
    private ShopServer server = null!;
    private PlainBrowser browser = null!;
    private Guid project;
    private Guid plan;

    private FileInfo Database => new(Path.Combine(folder, "shop.db"));

    public async ValueTask InitializeAsync()
    {
        await ShopServer.FillAsync(folder);
        Database.IsReadOnly = true;
        server = await ShopServer.OpenAsync(folder);
        browser = server.Browse();
        project = (await server.Get<IProjectService>().ListAsync(cancel: ShopServer.Cancel))[0].Id;
        plan = (await server.Get<IPlanService>().ListAsync(cancel: ShopServer.Cancel))[0].Id;
    }

    public async ValueTask DisposeAsync()
    {
        browser.Dispose();
        Database.IsReadOnly = false;
        await server.DisposeAsync();
    }

    [Fact]
    public async Task Every_page_opens_and_says_so()
    {
        foreach (
            var address in new[]
            {
                Links.Home,
                Links.Projects,
                Links.Parts(project),
                Links.Idea(project),
                Links.Plan(plan),
                Links.Stock,
                Links.Stores,
                Links.Weekends,
                Links.Shop,
                Links.Files,
                Links.Bench,
                Links.BenchPlan(plan),
                Links.ShoppingList(plan),
            }
        )
        {
            var lines = (await browser.OpenAsync(address)).QuerySelectorAll("[data-health=ReadOnly]");
            Assert.True(lines.Length == 1, $"{address} says so {lines.Length} times");
            Assert.Contains("open for reading only", lines[0].TextContent, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Files_go_out()
    {
        var store = (await server.Get<IStoreService>().ListAsync(ShopServer.Cancel))[0].Id;
        foreach (
            var address in new[]
            {
                Links.Archive,
                Links.PartsCsv(project),
                Links.PriceCsv(store),
                Links.PlanDocument(plan, answer: true),
                Links.Packet(plan, PaperSize.A4),
            }
        )
        {
            using var answer = await browser.GetAsync(address);
            Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{address} answered {answer.StatusCode}");
            Assert.NotEmpty(await answer.Content.ReadAsByteArrayAsync(ShopServer.Cancel));
        }
    }

    // The tablet keeps what is refused so, and sends it again.
    [Fact]
    public async Task A_tick_of_a_tablet_is_refused_in_words_and_may_be_sent_again()
    {
        var tick = new BenchCommand(Guid.CreateVersion7(), 1, "cut")
        {
            Plan = plan,
            Stock = 1,
            Cut = 1,
            Done = true,
        };
        using var answer = await browser.SendFormAsync(
            Links.BenchCommands,
            JsonContent.Create(new BenchSending(Guid.CreateVersion7(), plan, null, [tick]), options: BenchPlanStanding.Format)
        );
        var heard = JsonSerializer.Deserialize<BenchHeard>(
            await answer.Content.ReadAsStringAsync(ShopServer.Cancel),
            BenchPlanStanding.Format
        )!;
        var one = Assert.Single(heard.Answers);
        Assert.Equal((false, true), (one.Ok, one.Again));
        Assert.Contains("is open for reading only: nothing was saved", one.Say, StringComparison.Ordinal);
    }
}

using System.Globalization;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stores;
using ShopPlanner.Web.Frame;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Pages;

/// <summary>Programs that only look whether something is there ask for its head (RFC 9110, section 9.3.2).</summary>
public sealed class HeadTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private string Own => string.Create(CultureInfo.InvariantCulture, $"localhost:{web.Port}");

    [Fact]
    public async Task A_head_is_what_get_answers_without_the_body()
    {
        var cancel = TestContext.Current.CancellationToken;
        var project = (await web.Service<IProjectService>().ListAsync(cancel: cancel))[0].Id;
        var (plan, store) = (await Planned.OneAsync(web), (await web.Service<IStoreService>().ListAsync(cancel))[0].Id);
        foreach (
            var address in new[]
            {
                Links.Home,
                Links.Projects,
                Links.Parts(project),
                Links.Plan(plan),
                Links.BenchPlan(plan),
                Links.Packet(plan, PaperSize.A4),
                Links.PlanDocument(plan, answer: true),
                Links.PlanDocument(plan, answer: false),
                Links.PriceCsv(store),
                DrawingStyles.Path,
                "/assets/styles/tokens.css",
                "/assets/fonts/SourceSans3-Regular.woff2",
                "/nowhere",
                Links.Plan(Guid.NewGuid()),
                Links.Packet(Guid.NewGuid(), PaperSize.A4),
            }
        )
            await CompareAsync(address);
    }

    [Fact]
    public async Task A_head_of_what_only_takes_forms_changes_nothing()
    {
        var plan = await Planned.OneAsync(web);
        foreach (var path in new[] { "cuts", "finished", "reopened" })
            Assert.InRange((await web.SendAsync("HEAD", $"/bench/{plan}/{path}", Own, null)).Status, 404, 405);
    }

    private async Task CompareAsync(string address)
    {
        var (get, head) = (await web.SendAsync("GET", address, Own, null), await web.SendAsync("HEAD", address, Own, null));
        Assert.True(get.Status == head.Status, $"{address}: GET {get.Status}, HEAD {head.Status}");
        Assert.NotEqual("", get.Body);
        Assert.True(head.Body.Length == 0, $"{address}: HEAD has a body");
        foreach (var name in new[] { "Content-Type", "Content-Disposition", "Cache-Control", "X-Content-Type-Options" })
            Assert.True(
                get.Header(name) == head.Header(name),
                $"{address}: {name} is {get.Header(name)}, HEAD {head.Header(name)}"
            );
    }
}

using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Benchmarks;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>Lists of plans read what stands beside the documents, and never open one.</summary>
public sealed class PlanListTests : IAsyncLifetime
{
    private readonly CommandCounter counter = new();
    private PlannedShop given = null!;
    private PlanView plan = null!;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync(change: services => services.AddSingleton<IInterceptor>(counter));
        await given.OffcutAsync("41 3/8");
        plan = await given.PlanAsync();
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task A_list_takes_one_command_and_says_what_the_plan_says()
    {
        counter.Take();
        var listed = Assert.Single(await given.Shop.Plans.ListAsync(cancel: TestShop.Cancel));
        Assert.Equal(1, counter.Take());
        Assert.Equal(plan.Summary with { Projects = [] }, listed with { Projects = [] });
        Assert.Equal(plan.Order.Projects, listed.Projects);
    }

    [Fact]
    public async Task Damaged_documents_do_not_stop_a_list()
    {
        given.Shop.Ask("UPDATE Plans SET PlanJson = '{', RequestJson = '{', OrderJson = '{', NamesJson = '{' RETURNING Id");
        Assert.Equal(plan.Summary.Id, Assert.Single(await given.Shop.Plans.ListAsync(cancel: TestShop.Cancel)).Id);
        await Assert.ThrowsAsync<StoredDocumentException>(() => given.ReadAsync(plan.Summary.Id));
    }

    [Fact]
    public async Task A_tick_opens_the_plan_alone()
    {
        given.Shop.Ask("UPDATE Plans SET RequestJson = '{', OrderJson = '{', NamesJson = '{' RETURNING Id");
        var id = plan.Summary.Id;
        var outcome = await given.Shop.Bench.SetCutAsync(id, 0, 1, 1, true, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.True(outcome.Ok);
        Assert.Equal(PlanState.Cutting, Assert.Single(await given.Shop.Plans.ListAsync(cancel: TestShop.Cancel)).State);
    }
}

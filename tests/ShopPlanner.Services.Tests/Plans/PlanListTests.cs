using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Benchmarks;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Keeping;
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
    public async Task The_plans_of_a_project_take_one_command_and_leave_out_those_of_others()
    {
        var other = await Some.ProjectAsync(given.Shop, "Plant stand");
        counter.Take();
        Assert.Equal(plan.Summary.Id, Assert.Single(await ListOfAsync(given.Project.Id)).Id);
        Assert.Equal(1, counter.Take());
        Assert.Empty(await ListOfAsync(other.Id));
        Assert.True((await given.Shop.Plans.WithdrawAsync(plan.Summary.Id, TestShop.Cancel)).Ok);
        Assert.Empty(await ListOfAsync(given.Project.Id));
    }

    [Fact]
    public async Task A_plan_of_two_projects_is_listed_for_both_in_the_order_asked_for()
    {
        var other = await Some.ProjectAsync(given.Shop, "Plant stand");
        await given.Shop.Parts.PasteAsync(other.Id, "A\tLeg\tpine-1x3\t20\t\t4", CommandId.New(), TestShop.Cancel);
        var both = await given.PlanAsync(given.Order() with { Projects = [other.Id, given.Project.Id] });
        var listed = Assert.Single(await ListOfAsync(other.Id));
        Assert.Equal(both.Summary.Id, listed.Id);
        Assert.Equal(both.Order.Projects, listed.Projects);
        Assert.Equal([both.Summary.Id, plan.Summary.Id], (await ListOfAsync(given.Project.Id)).Select(one => one.Id));
    }

    [Fact]
    public async Task Plans_of_the_same_projects_are_numbered_whatever_their_order()
    {
        var other = await Some.ProjectAsync(given.Shop, "Plant stand");
        await given.Shop.Parts.PasteAsync(other.Id, "A\tLeg\tpine-1x3\t20\t\t4", CommandId.New(), TestShop.Cancel);
        Guid[][] ordered =
        [
            [other.Id, given.Project.Id],
            [other.Id],
            [given.Project.Id, other.Id],
            [given.Project.Id],
        ];
        foreach (var projects in ordered)
            await given.PlanAsync(given.Order() with { Projects = [.. projects] });
        int[] versions = [1, 1, 1, 2, 2];
        for (var number = 1; number <= versions.Length; number++)
        {
            Guid[] projects = number == 1 ? [given.Project.Id] : ordered[number - 2];
            var (at, told) = (number, versions[number - 1]);
            Assert.Equal(
                told,
                await given.Shop.Work.ReadAsync(
                    db => PlanHeaders.VersionAsync(db, at, projects, TestShop.Cancel),
                    TestShop.Cancel
                )
            );
        }
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

    private Task<IReadOnlyList<PlanSummary>> ListOfAsync(Guid project) => given.Shop.Plans.ListOfAsync(project, TestShop.Cancel);
}

using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>Planning again: a new plan takes the place of those before it and frees what they held.</summary>
public sealed class ReplacingTests : IAsyncLifetime
{
    private PlannedShop given = null!;
    private ProjectView stand = null!;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        await given.OffcutAsync("41 3/8");
        stand = await Some.ProjectAsync(given.Shop, "Plant stand");
        await given.Shop.Parts.SaveAsync(stand.Id, [Some.New(Some.Part("20", "A", "2"))], TestShop.Cancel);
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task One_plan_takes_the_place_of_two_and_what_they_held_passes_over()
    {
        var bench = await given.PlanAsync();
        var other = await given.PlanAsync(Of(stand.Id));
        Assert.Equal(bench.Summary.Id, await PromisedAsync());
        var both = await given.PlanAsync(Of(given.Project.Id, stand.Id) with { Replaces = [other.Summary.Id, bench.Summary.Id] });
        Assert.Equal(both.Summary.Id, await PromisedAsync());
        Assert.Equal(both.Summary.Id, Assert.Single(await given.Shop.Plans.ListAsync(cancel: TestShop.Cancel)).Id);
        Assert.Equal([other.Summary.Id, bench.Summary.Id], (await given.ReadAsync(both.Summary.Id)).Order.Replaces);
    }

    [Fact]
    public async Task A_plan_gives_way_only_where_all_that_it_is_for_is_planned_or_archived()
    {
        var both = await given.PlanAsync(Of(given.Project.Id, stand.Id));
        var order = given.Order(replaces: both.Summary.Id);
        var refused = await given.Shop.Plans.StartAsync(order, CommandId.New(), TestShop.Cancel);
        Assert.Equal((OutcomeKind.Faulty, "Replaces", "Plant stand"), (refused.Kind, Fault(refused).Field, Fault(refused).Value));
        Assert.Equal(PlanState.Ready, (await given.ReadAsync(both.Summary.Id)).Summary.State);
        await given.Shop.Projects.MoveAsync(stand.Id, ProjectState.PutAway, TestShop.Cancel);
        await given.PlanAsync(order);
        Assert.Equal(PlanState.Withdrawn, (await given.ReadAsync(both.Summary.Id)).Summary.State);
    }

    [Fact]
    public async Task Open_plans_tell_their_rows_and_why_they_cannot_give_way()
    {
        var plan = (await given.PlanAsync()).Summary;
        var canceled = (await given.PlanAsync(Of(stand.Id))).Summary;
        Assert.True((await given.Shop.Plans.WithdrawAsync(canceled.Id, TestShop.Cancel)).Ok);
        var open = Assert.Single(await given.Shop.Plans.ListOpenAsync(TestShop.Cancel));
        Assert.Equal((plan.Id, null), (open.Summary.Id, open.Refusal));
        Assert.Equal(
            (await given.Shop.Parts.GetAsync(given.Project.Id, TestShop.Cancel))!.Rows.Select(row => row.Texts.Id),
            open.Rows
        );
        await given.Shop.Bench.SetCutAsync(plan.Id, 1, 1, 1, true, Some.Device, CommandId.New(), TestShop.Cancel);
        var begun = Assert.Single(await given.Shop.Plans.ListOpenAsync(TestShop.Cancel));
        Assert.StartsWith("2 of ", begun.Refusal!.Value, StringComparison.Ordinal);
        Assert.Equal(1, begun.Summary.Progress.CutsMade);
    }

    [Fact]
    public async Task A_plan_that_cannot_be_read_does_not_stop_the_others()
    {
        var plan = (await given.PlanAsync()).Summary;
        await given.Shop.Bench.SetCutAsync(plan.Id, 1, 1, 1, true, Some.Device, CommandId.New(), TestShop.Cancel);
        given.Shop.Ask("UPDATE Plans SET PlanJson = '{' RETURNING Id");
        var open = Assert.Single(await given.Shop.Plans.ListOpenAsync(TestShop.Cancel));
        Assert.Contains("is damaged", open.Refusal!.Message);
    }

    private PlanOrder Of(params Guid[] projects) => given.Order() with { Projects = [.. projects] };

    private static Core.Measures.Fault Fault(Outcome<PlanJobView> outcome) => Assert.Single(outcome.Faults);

    private async Task<Guid?> PromisedAsync() =>
        (await given.Shop.Stock.ListAsync(TestShop.Cancel)).Single(piece => piece.Tag == "B1").PromisedPlanId;
}

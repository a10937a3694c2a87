using ShopPlanner.Services.Ahead;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Tests.Making;

namespace ShopPlanner.Services.Tests.Ahead;

/// <summary>What is ahead in the shop.</summary>
public sealed class AheadTests
{
    [Fact]
    public async Task What_is_to_be_bought_is_added_up_by_store()
    {
        await using var given = await PlannedShop.OpenAsync();
        var stand = await Some.ProjectAsync(given.Shop, "Plant stand");
        await given.Shop.Parts.SaveAsync(stand.Id, [Some.New(Some.Part("60", "A", "1"))], TestShop.Cancel);
        var first = await given.PlanAsync();
        var second = await given.PlanAsync(given.Order() with { Projects = [stand.Id] });
        var trip = Assert.Single((await AheadAsync(given.Shop)).Trips);
        Assert.Equal(("Corner lumber", 2, 12.96m), (trip.Store, trip.Stocks, trip.Left.Amount));
        Assert.Equal([second.Summary.Id, first.Summary.Id], trip.For.Select(one => one.Plan));
        await given.Shop.Plans.WithdrawAsync(first.Summary.Id, TestShop.Cancel);
        Assert.Equal(1, (await AheadAsync(given.Shop)).Trips.Single().Stocks);
    }

    [Fact]
    public async Task Glue_cures_and_what_waits_for_it_says_until_when()
    {
        await using var given = await WorkProjects.OfDesignAsync();
        Assert.Empty((await AheadAsync(given.Shop)).Steps);
        await given.Shop.Projects.MoveAsync(given.Project, ProjectState.Building, TestShop.Cancel);
        var first = (await given.ReadAsync()).Steps[0];
        Assert.Equal(
            (first.Title, null),
            ((await AheadAsync(given.Shop)).Steps[0].Title, (await AheadAsync(given.Shop)).Steps[0].UntilUtc)
        );
        var wet = await DoUntilWetAsync(given);
        var until = given.Shop.Clock.GetUtcNow().UtcDateTime.AddMinutes(wet.Step.Wait!.Minutes);
        var ahead = await AheadAsync(given.Shop);
        var curing = Assert.Single(ahead.Curing);
        Assert.Equal((wet.Title, wet.Step.Wait.What, until), (curing.Title, curing.What, curing.UntilUtc));
        Assert.All(
            ahead.Steps.Where(step => step.WaitsFor.Length > 0),
            step => Assert.Equal((wet.Title, until), (step.WaitsFor, step.UntilUtc))
        );
        given.Shop.Clock.Advance(TimeSpan.FromMinutes(wet.Step.Wait.Minutes));
        Assert.Empty((await AheadAsync(given.Shop)).Curing);
        Assert.All((await AheadAsync(given.Shop)).Steps, step => Assert.Null(step.UntilUtc));
    }

    private static Task<WorkAhead> AheadAsync(TestShop shop) => shop.Get<IAheadService>().GetAsync(TestShop.Cancel);

    private static async Task<WorkStepView> DoUntilWetAsync(WorkProjects given)
    {
        foreach (var step in (await given.ReadAsync()).Steps)
        {
            await given.MarkAsync(step.Step.Id, StepMark.Done);
            if (step.Step.Wait is not null)
                return step;
        }

        throw new InvalidOperationException("nothing of this piece has to cure");
    }
}

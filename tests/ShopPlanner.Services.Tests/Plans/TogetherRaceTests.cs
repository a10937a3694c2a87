using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>Many orders for the same wood at once.</summary>
public sealed class TogetherRaceTests
{
    private const int Racers = 64;

    [Fact]
    public async Task Of_64_orders_at_once_for_one_offcut_one_plan_gets_it()
    {
        await using var given = await PlannedShop.OpenAsync();
        var stand = await Some.ProjectAsync(given.Shop, "Plant stand");
        await given.Shop.Parts.SaveAsync(stand.Id, [Some.New(Some.Part("20", "A", "1"))], TestShop.Cancel);
        await given.OffcutAsync("95");
        var order = given.Order() with { Projects = [given.Project.Id, stand.Id] };
        var started = await Task.WhenAll(
            Enumerable
                .Range(0, Racers)
                .Select(_ => Task.Run(() => given.Shop.Plans.StartAsync(order, CommandId.New(), TestShop.Cancel)))
        );
        foreach (var job in started)
            Assert.Equal(PlanJobState.Done, (await given.EndOfAsync(job.Value!.Id)).State);
        var rows = given.Shop.CountRows();
        Assert.Equal((Racers, 1L, Racers), (rows["Plans"], rows["Promises"], rows["PlanComparisons"]));
        Assert.Single(await given.Shop.Stock.ListAsync(TestShop.Cancel), piece => piece.PromisedPlanId is not null);
    }
}

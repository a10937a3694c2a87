using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Making.Stored;
using static ShopPlanner.Services.Tests.Making.WorkProjects;

namespace ShopPlanner.Services.Tests.Making;

/// <summary>What the finish takes, on the shopping list.</summary>
public sealed class FinishListTests
{
    [Fact]
    public async Task Each_thing_is_on_the_list_once_however_often_it_is_asked_for()
    {
        await using var given = await OfDesignAsync();
        var buy = (await given.ReadAsync()).Finish!.Buy;
        Assert.NotEmpty(buy);
        var before = (await LinesAsync(given)).Count;
        Assert.True((await ListAsync(given)).IsFinishListed);
        Assert.True((await ListAsync(given)).IsFinishListed);
        var lines = await LinesAsync(given);
        Assert.Equal(before + buy.Select(item => item.Name).Distinct().Count(), lines.Count);
        Assert.All(buy, item => Assert.Equal(FinishListing.Amount(item), lines.Single(line => line.Name == item.Name).Amount));
    }

    [Fact]
    public async Task What_was_put_there_takes_the_amount_that_is_needed_now_unless_it_is_bought_or_typed()
    {
        await using var given = await OfDesignAsync();
        var item = (await given.ReadAsync()).Finish!.Buy[0];
        var buying = given.Shop.Get<IBuyingService>();
        Value(await buying.AddSupplyAsync(given.Project, item.Name, "77", Some.Device, CommandId.New(), Cancel));
        // Put there by this program for a smaller piece.
        await given.StoreAsync(WorkDocument.Empty with { Listed = WorkDocument.Empty.Listed.Add(item.Name, "77") });
        await ListAsync(given);
        Assert.Equal(FinishListing.Amount(item), await AmountAsync(given, item.Name));

        await given.StoreAsync(WorkDocument.Empty with { Listed = WorkDocument.Empty.Listed.Add(item.Name, "5") });
        Value(await buying.RemoveSupplyAsync(given.Project, TextRules.Key(item.Name), Cancel));
        Value(await buying.AddSupplyAsync(given.Project, item.Name, "78", Some.Device, CommandId.New(), Cancel));
        Assert.False((await ListAsync(given)).IsFinishListed);
        Assert.Equal("78", await AmountAsync(given, item.Name));
    }

    private static async Task<WorkView> ListAsync(WorkProjects given) =>
        Value(await given.Work.ListFinishAsync(given.Project, Some.Device, CommandId.New(), Cancel));

    private static async Task<string> AmountAsync(WorkProjects given, string name) =>
        (await LinesAsync(given)).Single(line => line.Name == name).Amount;

    private static async Task<IReadOnlyList<SupplyLine>> LinesAsync(WorkProjects given)
    {
        var list = await given.Shop.Get<IBuyingService>().OfProjectAsync(given.Project, Cancel);
        return [.. list!.Supplies.SelectMany(project => project.Lines)];
    }
}

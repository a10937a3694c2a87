using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Storage;

/// <summary>A shop from before pieces had bad places and edges as bought, made by going back and forth again.</summary>
public sealed class ConditionUpgradeTests : IDisposable
{
    private const string Before = "ProjectTrash";

    private readonly string folder = TestShop.NewFolder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task What_lies_in_the_rack_is_as_bought_and_what_lies_in_the_bin_is_true()
    {
        await using (var given = await PlannedShop.OpenAsync(folder))
        {
            await AddAsync(given.Shop, new(StockPlace.Bin, Some.Pine, "12", "", "1", ""));
            await AddAsync(given.Shop, new(StockPlace.Rack, Some.Birch, "96", "48", "1", ""));
            await AddAsync(given.Shop, new(StockPlace.Rack, Some.Pine, "20", "", "1", ""));
        }

        await GoBackAsync();
        await using var shop = await TestShop.OpenAsync(folder: folder);
        Assert.Equal([("B1", StockEdges.None), ("R1", StockEdges.All), ("R2", StockEdges.Near)], await EdgesAsync(shop));
    }

    // R1 was planned as it is: the plan would otherwise be out of date from one start to the next.
    [Fact]
    public async Task A_piece_that_an_open_plan_counts_on_stays_true()
    {
        Guid plan;
        await using (var given = await PlannedShop.OpenAsync(folder))
        {
            await AddAsync(given.Shop, new(StockPlace.Rack, Some.Pine, "41 3/8", "", "2", ""));
            foreach (var piece in await given.Shop.Stock.ListAsync(TestShop.Cancel))
                await TrimmedAsync(given.Shop, piece.Id);
            plan = (await given.PlanAsync()).Summary.Id;
            await AddAsync(given.Shop, new(StockPlace.Rack, Some.Pine, "20", "", "1", ""));
        }

        await GoBackAsync();
        await using var shop = await TestShop.OpenAsync(folder: folder);
        Assert.Equal([("R1", StockEdges.None), ("R2", StockEdges.None), ("R3", StockEdges.Near)], await EdgesAsync(shop));
        Assert.Empty((await shop.Plans.GetAsync(plan, TestShop.Cancel))!.Changes);
    }

    [Fact]
    public async Task Going_back_loses_no_line_of_the_ledger()
    {
        string before;
        await using (var given = await PlannedShop.OpenAsync(folder))
        {
            var board = await AddAsync(given.Shop, new(StockPlace.Rack, Some.Pine, "41 3/8", "", "1", ""));
            await TrimmedAsync(given.Shop, board);
            before = given.Shop.Ask(Lines);
        }

        await GoBackAsync();
        await using var shop = await TestShop.OpenAsync(folder: folder);
        Assert.Equal(before, shop.Ask(Lines));
    }

    private const string Lines =
        "SELECT group_concat(Line, '; ') FROM (SELECT Number || ' ' || Kind || ' ' || Length || ' ' || Reason AS Line "
        + "FROM StockLedger ORDER BY Number)";

    private async Task GoBackAsync()
    {
        var file = new SqliteContextFactory(Path.Combine(folder, "shop.db"));
        await using (var db = file.CreateDbContext())
            await db.GetService<IMigrator>().MigrateAsync(Before, TestShop.Cancel);
        file.Release();
    }

    private static async Task<Guid> AddAsync(TestShop shop, StockAddition addition)
    {
        var added = await shop.Stock.AddAsync(addition, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.True(added.Ok, string.Join("; ", added.Faults));
        return added.Value[0].Id;
    }

    private static async Task TrimmedAsync(TestShop shop, Guid piece)
    {
        var service = shop.Get<IStockConditionService>();
        Assert.True((await service.SetEdgeAsync(piece, StockEdges.Near, false, Some.Device, TestShop.Cancel)).Ok);
    }

    private static async Task<IEnumerable<(string, StockEdges)>> EdgesAsync(TestShop shop) =>
        (await shop.Stock.ListAsync(TestShop.Cancel))
            .Select(piece => (piece.Tag, piece.Condition.Untrimmed))
            .OrderBy(one => one.Tag, StringComparer.Ordinal);
}

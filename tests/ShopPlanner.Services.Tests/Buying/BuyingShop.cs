using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Buying;

/// <summary>A plan of nine legs of 30 in from three boards of 96 in at 6.48, and what is done with its shopping list.</summary>
internal sealed class BuyingShop(PlannedShop given, Guid plan, string line) : IAsyncDisposable
{
    public const string PlanPrice = "";

    public static readonly Money Each = Money.From(6.48m);

    public PlannedShop Given => given;

    public TestShop Shop => given.Shop;

    public IBuyingService Buying => Shop.Get<IBuyingService>();

    /// <summary>The plan.</summary>
    public Guid Plan => plan;

    /// <summary>Its only line of new stock.</summary>
    public string Line => line;

    private static CancellationToken Cancel => TestShop.Cancel;

    public static async Task<BuyingShop> OpenAsync(bool real = false, string? folder = null)
    {
        var given = await PlannedShop.OpenAsync(
            folder,
            services =>
            {
                if (real)
                    services.AddSingleton<ICutPlanner, ShopCutPlanner>();
            }
        );
        var row = (await given.Shop.Parts.GetAsync(given.Project.Id, Cancel))!.Rows[0];
        await given.Shop.Parts.SaveAsync(
            given.Project.Id,
            [new PartEdit(row.Texts with { Quantity = "9" }, row.Version)],
            Cancel
        );
        var made = await given.PlanAsync();
        return new BuyingShop(given, made.Summary.Id, made.Plan.Buy.Single().Stock);
    }

    public async Task<ShoppingList> ListAsync(Guid? of = null) => (await Buying.OfPlanAsync(of ?? plan, Cancel))!;

    /// <summary>The line as it stands.</summary>
    public async Task<StockLine> LineAsync() => (await ListAsync()).Lines.Single();

    public Task<Outcome<ShoppingList>> BuyAsync(string price, params int[] places) =>
        Buying.BuyAsync(plan, new PiecesBought(line, [.. places], price), Some.Device, CommandId.New(), Cancel);

    public Task<Outcome<ShoppingList>> BuyRestAsync(Guid? of = null) =>
        Buying.BuyRestAsync(of ?? plan, given.Store.Name, Some.Device, CommandId.New(), Cancel);

    public Task<Outcome<ShoppingList>> ReturnAsync(params int[] places) =>
        Buying.ReturnAsync(plan, new PiecesReturned(line, [.. places]), Some.Device, CommandId.New(), Cancel);

    public async Task<StockLine> BoughtAsync(params int[] places)
    {
        Sure(await BuyAsync(PlanPrice, places));
        return await LineAsync();
    }

    public Task<Outcome<BenchView>> TryFinishAsync(int number, bool allCutsMade = true, params string[] leftovers) =>
        FinishAsync(Shop, plan, number, allCutsMade, leftovers);

    public async Task<BenchView> FinishAsync(int number, bool allCutsMade = true, params string[] leftovers) =>
        Sure(await TryFinishAsync(number, allCutsMade, leftovers));

    /// <summary>Finishes a board of a plan by its number.</summary>
    public static async Task<Outcome<BenchView>> FinishAsync(
        TestShop shop,
        Guid plan,
        int number,
        bool allCutsMade = true,
        params string[] leftovers
    )
    {
        var at = (await shop.Bench.FindAsync(plan, number, Cancel))!;
        var measured = leftovers.Select(length => new MeasuredLeftover(-1, length, "", true));
        var finished = new FinishedStock(at.Layout, at.Copy, allCutsMade, [.. measured]);
        return await shop.Bench.FinishAsync(plan, finished, Some.Device, CommandId.New(), Cancel);
    }

    public async Task<Outcome<BenchView>> ReopenAsync(int number)
    {
        var at = (await Shop.Bench.FindAsync(plan, number, Cancel))!;
        return await Shop.Bench.ReopenAsync(plan, at.Layout, at.Copy, Some.Device, CommandId.New(), Cancel);
    }

    /// <summary>Tags on hand with the plan each is promised to.</summary>
    public async Task<IReadOnlyList<(string Tag, Guid? Plan)>> RackAsync() =>
        [.. (await Shop.Stock.ListAsync(Cancel)).Select(piece => (piece.Tag, piece.PromisedPlanId)).OrderBy(one => one.Tag)];

    public async Task<Money> SpentAsync() => (await ListAsync()).Totals.Spent;

    public static T Sure<T>(Outcome<T> outcome)
        where T : class
    {
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value!;
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();
}

using ShopPlanner.Cutting;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Tests.Buying;

/// <summary>What may be done in a shop that buys and cuts, chosen by two numbers. Refusals are answers too.</summary>
internal sealed class Steps(BuyingShop given)
{
    /// <summary>How many kinds of steps there are.</summary>
    public const int Kinds = 13;

    private const int Boards = 3;

    private static CancellationToken Cancel => TestShop.Cancel;

    private TestShop Shop => given.Shop;

    /// <summary>Does one of them.</summary>
    public async Task TakeAsync(int kind, int pick)
    {
        var plans = await Shop.Plans.ListAsync(true, Cancel);
        var plan = plans[pick % plans.Count].Id;
        var (number, more) = (1 + (pick / 7 % Boards), pick / 31);
        Task step = kind switch
        {
            0 => BuyAsync(plan, Enumerable.Range(number, 1 + (more % 2)), ""),
            1 when more % 2 == 0 => given.BuyRestAsync(plan),
            1 => BuyAsync(plan, Enumerable.Range(1, Boards), ""),
            2 => BuyAsync(plan, Enumerable.Range(1, Boards + 2), more % 2 == 0 ? "7.25" : ""),
            3 => ReturnAsync(plan, Enumerable.Range(number, 1 + (more % 3))),
            4 => FinishAsync(plan, number, all: true, more % 2 == 0 ? [] : ["20"]),
            5 => MiscutAsync(plan, number),
            6 => ReopenAsync(plan, number),
            7 => Shop.Plans.WithdrawAsync(plan, Cancel),
            8 => Shop.Plans.ReinstateAsync(plan, Cancel),
            9 => UndoAsync(more),
            10 => LoseAsync(more),
            11 => SpoilAsync(more),
            _ => PlanAgainAsync(plan),
        };
        await step;
    }

    // The store sells one size: it is the line of every plan that buys.
    private Task<Outcome<ShoppingList>> BuyAsync(Guid plan, IEnumerable<int> places, string price) =>
        given.Buying.BuyAsync(plan, new PiecesBought(given.Line, [.. places], price), Some.Device, CommandId.New(), Cancel);

    private Task<Outcome<ShoppingList>> ReturnAsync(Guid plan, IEnumerable<int> places) =>
        given.Buying.ReturnAsync(plan, new PiecesReturned(given.Line, [.. places]), Some.Device, CommandId.New(), Cancel);

    private async Task FinishAsync(Guid plan, int number, bool all, string[] leftovers)
    {
        if (await Shop.Bench.FindAsync(plan, number, Cancel) is not null)
            await BuyingShop.FinishAsync(Shop, plan, number, all, leftovers);
    }

    private async Task MiscutAsync(Guid plan, int number)
    {
        if (await Shop.Bench.FindAsync(plan, number, Cancel) is not { } at)
            return;
        await Shop.Bench.SetCutAsync(plan, at.Layout, at.Copy, 1, true, Some.Device, CommandId.New(), Cancel);
        await FinishAsync(plan, number, all: false, ["14"]);
    }

    private async Task ReopenAsync(Guid plan, int number)
    {
        if (await Shop.Bench.FindAsync(plan, number, Cancel) is { } at)
            await Shop.Bench.ReopenAsync(plan, at.Layout, at.Copy, Some.Device, CommandId.New(), Cancel);
    }

    private async Task UndoAsync(int pick)
    {
        if (await Shop.Stock.HistoryAsync(null, 12, Cancel) is { Count: > 0 } entries)
            await Shop.Stock.UndoAsync(entries[pick % entries.Count].Id, Some.Device, Cancel);
    }

    // Thrown away, or measured again.
    private async Task LoseAsync(int pick)
    {
        var stock = await Shop.Stock.ListAsync(Cancel);
        if (stock.Count == 0)
            return;
        var piece = stock[pick % stock.Count];
        if (pick % 2 == 0)
            await Shop.Stock.DiscardAsync(piece.Id, piece.Version, "split", Some.Device, Cancel);
        else
            await Shop.Stock.CorrectAsync(piece.Id, piece.Version, "90 3/8", "", "", Some.Inch, Some.Device, Cancel);
    }

    // A bad end that grows, or an end that is as bought, or no longer.
    private async Task SpoilAsync(int pick)
    {
        var (stock, conditions) = (await Shop.Stock.ListAsync(Cancel), Shop.Get<IStockConditionService>());
        if (stock.Count == 0)
            return;
        var piece = stock[pick % stock.Count];
        var end = new BadPlaceTyped(BadPlaceKind.End, StockEdges.Far, $"{1 + piece.Condition.BadPlaces.Count}", "");
        if (pick % 3 == 0)
            await conditions.SetEdgeAsync(piece.Id, StockEdges.Near, pick % 2 == 0, Some.Device, Cancel);
        else
            await conditions.AddBadPlaceAsync(piece.Id, end, Some.Inch, Some.Device, CommandId.New(), Cancel);
    }

    // Past the queue of runs, which would be waited for: the same draft, planner and storing.
    private async Task PlanAgainAsync(Guid replaced)
    {
        var (order, plans) = (given.Given.Order(replaces: replaced), Shop.Get<ReadPlans>());
        var shop = await Shop.Work.ReadAsync(db => Snapshot.ForOrderAsync(db, plans, order, Cancel), Cancel);
        if (RequestBuilder.Build(order, shop) is not { Ok: true, Value: var draft })
            return;
        var plan = new FirstFitPlanner().Plan(draft.Request, new SearchControl());
        await Shop.Get<PlanStorage>().StoreAsync(draft, plan, "test", null, Cancel);
    }
}

using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Bought;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Buying;

internal sealed class BuyingService(
    ShopWork work,
    ShopCommands commands,
    ReadPlans plans,
    ListReading reading,
    SupplyKeeping supplies,
    TimeProvider clock
) : IBuyingService
{
    public Task<ShoppingList?> OfPlanAsync(Guid plan, CancellationToken cancel = default) =>
        work.ReadAsync(db => reading.OfPlanAsync(db, plan, cancel), cancel);

    public Task<ShoppingList?> OfProjectAsync(Guid project, CancellationToken cancel = default) =>
        work.ReadAsync(db => reading.OfProjectAsync(db, project, cancel), cancel);

    public Task<Outcome<ShoppingList>> BuyAsync(
        Guid plan,
        PiecesBought bought,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        RunAsync(
            plan,
            command,
            CommandTexts.Asked("buy", plan, bought),
            (db, record) => new StockBuying(db, record, device, clock, cancel).BuyAsync(bought),
            cancel
        );

    public Task<Outcome<ShoppingList>> BuyRestAsync(
        Guid plan,
        string store,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        RunAsync(
            plan,
            command,
            CommandTexts.Asked("rest", plan, store),
            async (db, record) =>
            {
                var list = await reading.OfPlanAsync(db, plan, cancel);
                return await new StockBuying(db, record, device, clock, cancel).BuyRestAsync(list!, store);
            },
            cancel
        );

    public Task<Outcome<ShoppingList>> ReturnAsync(
        Guid plan,
        PiecesReturned returned,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        RunAsync(
            plan,
            command,
            CommandTexts.Asked("return", plan, returned),
            (db, record) => new StockBuying(db, record, device, clock, cancel).ReturnAsync(returned),
            cancel
        );

    public Task<Outcome<ShoppingList>> CorrectPriceAsync(
        Guid plan,
        string stock,
        string price,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        RunAsync(
            plan,
            command,
            CommandTexts.Asked("paid", plan, stock, price),
            (db, record) => PriceKeeping.CorrectAsync(db, record, stock, price, cancel),
            cancel
        );

    public Task<Outcome<ShoppingList>> NoteAsync(
        Guid plan,
        SeenInStore seen,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        RunAsync(
            plan,
            command,
            CommandTexts.Asked("seen", plan, seen),
            (db, record) => PriceKeeping.NoteAsync(db, record, seen, DateOnly.FromDateTime(clock.GetLocalNow().DateTime), cancel),
            cancel
        );

    public Task<Outcome<SupplyLine>> SetSupplyAsync(
        Guid project,
        string key,
        SupplyEdit edit,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.RunAsync(
            new Making<SupplyLine>(command, CommandTexts.Asked("supply", project, key, edit))
            {
                Make = db => supplies.SetAsync(db, (project, key), edit, device, cancel),
                Made = line => line.Key,
                Find = (db, made) => supplies.FindAsync(db, project, made, cancel),
                What = "line",
            },
            cancel
        );

    public Task<Outcome<SupplyLine>> AddSupplyAsync(
        Guid project,
        string name,
        string amount,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.RunAsync(
            new Making<SupplyLine>(command, CommandTexts.Asked("new supply", project, name, amount))
            {
                Make = db => supplies.AddAsync(db, project, (name, amount), device, cancel),
                Made = line => line.Key,
                Find = (db, made) => supplies.FindAsync(db, project, made, cancel),
                What = "line",
            },
            cancel
        );

    public Task<Outcome<Done>> RemoveSupplyAsync(Guid project, string key, CancellationToken cancel = default) =>
        work.WriteAsync(db => SupplyKeeping.RemoveAsync(db, project, key, cancel), cancel);

    private Task<Outcome<ShoppingList>> RunAsync(
        Guid plan,
        CommandId command,
        string asked,
        Func<ShopContext, PlanRecord, Task<Outcome<ShoppingList>?>> change,
        CancellationToken cancel
    ) =>
        commands.RunAsync(
            new Making<ShoppingList>(command, asked)
            {
                Make = db => ChangeAsync(db, plan, change, cancel),
                Made = _ => CommandTexts.Text(plan),
                Find = (db, _) => reading.OfPlanAsync(db, plan, cancel),
                What = "plan",
            },
            cancel
        );

    private async Task<Outcome<ShoppingList>> ChangeAsync(
        ShopContext db,
        Guid plan,
        Func<ShopContext, PlanRecord, Task<Outcome<ShoppingList>?>> change,
        CancellationToken cancel
    )
    {
        if (await db.Plans.FindAsync([plan], cancel) is not { } stored)
            return Outcome.Missing<ShoppingList>("plan");
        var record = plans.Read(stored);
        if (await change(db, record) is { } refusal)
            return refusal;
        await db.SaveChangesAsync(cancel);
        await BoughtPromises.SettleAsync(db, record, cancel);
        return (await reading.OfPlanAsync(db, plan, cancel))!;
    }
}

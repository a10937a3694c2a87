using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Commands;

internal static partial class MakingCases
{
    private static IEnumerable<MakingCase> Buying() =>
        [
            Bought(
                nameof(IBuyingService.BuyAsync),
                0,
                (buying, plan, line, id) => buying.BuyAsync(plan, new PiecesBought(line, [1], ""), Some.Device, id, Cancel)
            ),
            Bought(
                nameof(IBuyingService.BuyRestAsync),
                0,
                (buying, plan, _, id) => buying.BuyRestAsync(plan, "Corner lumber", Some.Device, id, Cancel)
            ),
            Bought(
                nameof(IBuyingService.ReturnAsync),
                1,
                (buying, plan, line, id) => buying.ReturnAsync(plan, new PiecesReturned(line, [1]), Some.Device, id, Cancel)
            ),
            Bought(
                nameof(IBuyingService.CorrectPriceAsync),
                1,
                (buying, plan, line, id) => buying.CorrectPriceAsync(plan, line, "7.29", id, Cancel)
            ),
            Bought(
                nameof(IBuyingService.NoteAsync),
                0,
                (buying, plan, line, id) => buying.NoteAsync(plan, new SeenInStore(line, "7.29", true), id, Cancel)
            ),
            Of<IBuyingService, SupplyLine>(
                nameof(IBuyingService.AddSupplyAsync),
                given =>
                    (shop, id) =>
                        shop.Get<IBuyingService>().AddSupplyAsync(given.Project.Id, "Sandpaper", "", Some.Device, id, Cancel)
            ),
            Of<IBuyingService, SupplyLine>(
                nameof(IBuyingService.SetSupplyAsync),
                async given =>
                {
                    var (project, edit) = (given.Project.Id, new SupplyEdit(true, "4"));
                    var buying = given.Shop.Get<IBuyingService>();
                    var line = await buying.AddSupplyAsync(project, "Sandpaper", "", Some.Device, CommandId.New(), Cancel);
                    var key = line.Value!.Key;
                    return (shop, id) => shop.Get<IBuyingService>().SetSupplyAsync(project, key, edit, Some.Device, id, Cancel);
                }
            ),
        ];

    private static MakingCase Bought(
        string method,
        int before,
        Func<IBuyingService, Guid, string, CommandId, Task<Outcome<ShoppingList>>> send
    ) =>
        Of<IBuyingService, ShoppingList>(
            method,
            async given =>
            {
                var plan = await given.PlanAsync();
                var (id, line) = (plan.Summary.Id, plan.Plan.Buy.Single().Stock);
                var places = Enumerable.Range(1, before).ToArray();
                if (before > 0)
                    await given
                        .Shop.Get<IBuyingService>()
                        .BuyAsync(id, new PiecesBought(line, [.. places], ""), Some.Device, CommandId.New(), Cancel);
                return (shop, command) => send(shop.Get<IBuyingService>(), id, line, command);
            }
        );
}

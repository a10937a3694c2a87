using ShopPlanner.Services.Bench.Bin;
using ShopPlanner.Services.Bench.Wrong;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Commands;

internal static partial class MakingCases
{
    private static IEnumerable<MakingCase> WrongCuts() =>
        [
            Of<IWrongCutService, WrongCutView>(
                nameof(IWrongCutService.NoteAsync),
                async given =>
                {
                    var wrong = await WrongAsync(given);
                    return (shop, id) => shop.Get<IWrongCutService>().NoteAsync(wrong, Some.Device, id, Cancel);
                },
                Say
            ),
            Of<IWrongCutService, WrongCutView>(
                nameof(IWrongCutService.AcceptAsync),
                async given =>
                {
                    var wrong = await WrongAsync(given);
                    var proposal = (await given.Shop.Get<IWrongCutService>().ProposeAsync(wrong, Cancel)).Value!.Key;
                    return (shop, id) => shop.Get<IWrongCutService>().AcceptAsync(wrong, proposal, Some.Device, id, Cancel);
                },
                Say
            ),
            Of<IWrongCutService, WrongCutView>(
                nameof(IWrongCutService.UndoAsync),
                async given =>
                {
                    var service = given.Shop.Get<IWrongCutService>();
                    var noted = await service.NoteAsync(await WrongAsync(given), Some.Device, CommandId.New(), Cancel);
                    return (shop, id) => shop.Get<IWrongCutService>().UndoAsync(noted.Value!.Id, Some.Device, id, Cancel);
                },
                Say
            ),
        ];

    private static IEnumerable<MakingCase> Bin() =>
        [
            Of<IBinService, Done>(
                nameof(IBinService.TakeAsync),
                async given =>
                {
                    var piece = await given.OffcutAsync("20");
                    return (shop, id) => shop.Get<IBinService>().TakeAsync(piece, 1, given.Project.Id, Some.Device, id, Cancel);
                }
            ),
            Of<IBinService, Done>(
                nameof(IBinService.PutBackAsync),
                async given =>
                {
                    var piece = await given.OffcutAsync("20");
                    var taken = await given
                        .Shop.Get<IBinService>()
                        .TakeAsync(piece, 1, null, Some.Device, CommandId.New(), Cancel);
                    Assert.True(taken.Ok);
                    return (shop, id) => shop.Get<IBinService>().PutBackAsync(piece, 2, "12", "", Some.Device, id, Cancel);
                }
            ),
            Of<IBinService, Done>(
                nameof(IBinService.CorrectAsync),
                async given =>
                {
                    var piece = await given.OffcutAsync("20");
                    return (shop, id) => shop.Get<IBinService>().CorrectAsync(piece, 1, "19 1/2", "", Some.Device, id, Cancel);
                }
            ),
            Of<IBinService, Done>(
                nameof(IBinService.DiscardAsync),
                async given =>
                {
                    var piece = await given.OffcutAsync("20");
                    return (shop, id) => shop.Get<IBinService>().DiscardAsync(piece, 1, Some.Device, id, Cancel);
                }
            ),
            Of<IBinService, Done>(
                nameof(IBinService.UndoAsync),
                async given =>
                {
                    var piece = await given.OffcutAsync("20");
                    var entry = (await given.Shop.Stock.HistoryAsync(piece, 1, Cancel)).Single().Id;
                    return (shop, id) => shop.Get<IBinService>().UndoAsync(entry, Some.Device, id, Cancel);
                }
            ),
        ];

    // The first leg of the first board.
    private static async Task<WrongCut> WrongAsync(PlannedShop given)
    {
        var plan = (await given.PlanAsync()).Summary.Id;
        return new WrongCut(plan, 1, 1, WrongReason.Short, [new WrongPiece(0, "20", "", Keep: true)], []);
    }

    private static string Say(WrongCutView view) =>
        $"{view.Id} {view.RestPlan} {view.Standing} {string.Join(' ', view.Marks)} {string.Join(' ', view.Left)}";
}

using System.Text;
using ShopPlanner.Services.Archives;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Tests.Commands;

internal static partial class MakingCases
{
    private static IEnumerable<MakingCase> FromFiles() =>
        [
            Of<IStockExchange, IReadOnlyList<StockPiece>>(
                nameof(IStockExchange.ImportCsvAsync),
                _ =>
                    (shop, id) =>
                        shop.Get<IStockExchange>()
                            .ImportCsvAsync(Encoding.UTF8.GetBytes("material,length\npine-1x3,20\n"), Some.Device, id, Cancel)
            ),
            Of<IBillTaking, PartSheet>(
                nameof(IBillTaking.AddBillAsync),
                given =>
                    (shop, id) =>
                        shop.Get<IBillTaking>().AddBillAsync(given.Project.Id, "4 posts, 2 by 2 by 30 in.\n4 hinges", id, Cancel)
            ),
            Of<IArchiveService, ArchiveView>(
                nameof(IArchiveService.ImportAsync),
                async given =>
                {
                    var zip = await given.Shop.Get<IArchiveService>().ExportAsync(Cancel);
                    await EmptyAsync(given.Shop);
                    return (shop, id) => shop.Get<IArchiveService>().ImportAsync(zip, id, Cancel);
                }
            ),
        ];
}

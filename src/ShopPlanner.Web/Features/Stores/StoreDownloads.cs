using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Services.Stores;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Stores;

/// <summary>Files that a store gives.</summary>
internal static class StoreDownloads
{
    /// <summary>Maps the addresses.</summary>
    public static void MapStoreDownloads(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/stores/{id:guid}/prices.csv", PricesAsync);

    private static async Task<Results<FileContentHttpResult, NotFound>> PricesAsync(
        Guid id,
        IStoreService stores,
        CancellationToken cancel
    )
    {
        if (await stores.GetAsync(id, cancel) is not { } store || await stores.ExportCsvAsync(id, cancel) is not { } csv)
            return TypedResults.NotFound();
        return Download.Text(csv, "text/csv", $"prices {store.Name}", "csv");
    }
}

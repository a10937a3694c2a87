using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Services.Archives;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Stock;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Files;

/// <summary>Files that the shop as a whole gives.</summary>
internal static class FilesDownloads
{
    /// <summary>Maps the addresses.</summary>
    public static void MapFilesDownloads(this IEndpointRouteBuilder routes)
    {
        routes.MapGet(Links.Archive, ArchiveAsync);
        routes.MapGet(Links.StockCsv, StockAsync);
        routes.MapGet(Links.DesignFile("{key}"), DesignAsync);
    }

    // The whole shop is in it: no cache keeps a copy of its own.
    private static async Task<FileContentHttpResult> ArchiveAsync(
        HttpContext context,
        IArchiveService archives,
        TimeProvider clock,
        CancellationToken cancel
    )
    {
        context.Response.Headers.CacheControl = "no-store";
        var day = clock.GetLocalNow().ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        return Download.Bytes(await archives.ExportAsync(cancel), "application/zip", $"shop {day}", "zip");
    }

    // Without the mark at its start spreadsheets take the text for another encoding, and ½ for two letters.
    private static async Task<FileContentHttpResult> StockAsync(IStockExchange stock, CancellationToken cancel)
    {
        byte[] content = [.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(await stock.ExportCsvAsync(cancel))];
        return Download.Bytes(content, "text/csv; charset=utf-8", "rack and bin", "csv");
    }

    private static async Task<Results<FileContentHttpResult, NotFound>> DesignAsync(
        string key,
        IDesignService designs,
        CancellationToken cancel
    ) =>
        await designs.GetAsync(key, cancel) is { } design
            ? Download.Text(DesignJson.Write(design.Document), "application/json", design.Document.Name, "json")
            : TypedResults.NotFound();
}

using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Services.Book;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Book;

/// <summary>Files that the shop's book gives.</summary>
internal static class BookDownloads
{
    /// <summary>Maps the addresses.</summary>
    public static void MapBookDownloads(this IEndpointRouteBuilder routes) => routes.MapGet(Links.BookCsv, EntriesAsync);

    private static async Task<FileContentHttpResult> EntriesAsync(IBookService books, CancellationToken cancel) =>
        Download.Text(await books.ExportCsvAsync(cancel), "text/csv", "shop book", "csv");
}

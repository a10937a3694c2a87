using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Projects;

/// <summary>Files that a project gives.</summary>
internal static class ProjectDownloads
{
    /// <summary>Maps the addresses.</summary>
    public static void MapProjectDownloads(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/projects/{id:guid}/parts.csv", PartsAsync);

    private static async Task<Results<FileContentHttpResult, NotFound>> PartsAsync(
        Guid id,
        IProjectService projects,
        IPartExchange parts,
        CancellationToken cancel
    )
    {
        if (await projects.GetAsync(id, cancel) is not { } project || await parts.ExportCsvAsync(id, cancel) is not { } csv)
            return TypedResults.NotFound();
        // Without the mark at its start spreadsheets take the text for another encoding, and ½ for two letters.
        byte[] content = [.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(csv)];
        return Download.Bytes(content, "text/csv; charset=utf-8", $"parts {project.Name}", "csv");
    }
}

using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Services.Designs;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>Files that an idea gives.</summary>
internal static class IdeaDownloads
{
    /// <summary>Maps the addresses.</summary>
    public static void MapIdeaDownloads(this IEndpointRouteBuilder routes)
    {
        var files = routes.MapGroup("/projects/{id:guid}/idea").AddEndpointFilter(KeepNowhereAsync);
        files.MapGet("/design.json", DesignAsync);
    }

    private static ValueTask<object?> KeepNowhereAsync(EndpointFilterInvocationContext call, EndpointFilterDelegate next)
    {
        call.HttpContext.Response.Headers.CacheControl = "no-store";
        return next(call);
    }

    // With the values that are set, so that it starts elsewhere where it stands here.
    private static async Task<Results<FileContentHttpResult, NotFound>> DesignAsync(Guid id, IIdeaService ideas, CancellationToken cancel)
    {
        if (await ideas.GetAsync(id, cancel) is not { } view) return TypedResults.NotFound();
        var document = view.Idea.Document.WithValues(view.Idea.Changed);
        return Download.Text(DesignJson.Write(document), "application/json", document.Name, "json");
    }
}

using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Publishing;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Publish;

/// <summary>Publications as files.</summary>
internal static class PublishDownloads
{
    /// <summary>Maps the address.</summary>
    public static void MapPublishDownloads(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/projects/{id:guid}/publish.zip", ZipAsync);

    private static async Task<Results<FileContentHttpResult, NotFound, ProblemHttpResult>> ZipAsync(
        Guid id,
        [AsParameters] PublishParameters asked,
        IPublishService publishing,
        PhotoShelf shelf,
        HttpContext context,
        TimeProvider clock,
        CancellationToken cancel
    )
    {
        context.Response.Headers.CacheControl = "no-store";
        var photos = asked.Photos is { } key ? shelf.Find(key) : [];
        if (photos is null)
            return TypedResults.Problem(
                "The photos are no longer there: choose them again.",
                statusCode: StatusCodes.Status410Gone
            );
        var choices = PublishQuery.Read(asked.License, asked.By, asked.Prices, asked.Stores, asked.Stock);
        var made = await publishing.PublishAsync(id, choices, photos.Value, cancel);
        if (made.Kind == OutcomeKind.Missing)
            return TypedResults.NotFound();
        if (made.Value is not { } publication)
            return TypedResults.Problem(
                string.Join(Environment.NewLine, made.Faults),
                statusCode: StatusCodes.Status400BadRequest
            );
        var day = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        return Download.Bytes(publication.Zip(day), "application/zip", $"plan {publication.Name}", "zip");
    }

    /// <summary>What an address asks for.</summary>
    private sealed record PublishParameters(
        string? License,
        string? By,
        string? Prices,
        string? Stores,
        string? Stock,
        Guid? Photos
    );
}

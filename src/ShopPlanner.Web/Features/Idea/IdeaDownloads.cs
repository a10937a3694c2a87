using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Services.Designs;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>Files that an idea gives.</summary>
internal static class IdeaDownloads
{
    /// <summary>Ending of a drawing for a phone.</summary>
    public const string Phone = "-phone.svg";

    /// <summary>Maps the addresses.</summary>
    public static void MapIdeaDownloads(this IEndpointRouteBuilder routes)
    {
        var files = routes.MapGroup("/projects/{id:guid}/idea").AddEndpointFilter(KeepNowhereAsync);
        files.MapGet("/design.json", DesignAsync);
        files.MapGet(
            "/scene.gltf",
            (Guid id, IIdeaService ideas, CancellationToken cancel) =>
                PieceAsync(id, PieceGltf.Write, "model/gltf+json", "gltf", ideas, cancel)
        );
        files.MapGet(
            "/parts.csv",
            (Guid id, IIdeaService ideas, CancellationToken cancel) =>
                PieceAsync(id, PartsCsv.Write, "text/csv", "csv", ideas, cancel)
        );
        files.MapGet("/outline/{part}", OutlineAsync);
        files.MapGet("/view/{name}", ViewAsync);
    }

    private static ValueTask<object?> KeepNowhereAsync(EndpointFilterInvocationContext call, EndpointFilterDelegate next)
    {
        call.HttpContext.Response.Headers.CacheControl = "no-store";
        return next(call);
    }

    // With the values that are set, so that it starts elsewhere where it stands here.
    private static async Task<Results<FileContentHttpResult, NotFound>> DesignAsync(
        Guid id,
        IIdeaService ideas,
        CancellationToken cancel
    )
    {
        if (await ideas.GetAsync(id, cancel) is not { } view)
            return TypedResults.NotFound();
        var document = view.Idea.Document.WithValues(view.Idea.Changed);
        return Download.Text(DesignJson.Write(document), "application/json", document.Name, "json");
    }

    private static async Task<Results<FileContentHttpResult, NotFound>> PieceAsync(
        Guid id,
        Func<Piece, string> write,
        string type,
        string ending,
        IIdeaService ideas,
        CancellationToken cancel
    ) =>
        await FindAsync(id, ideas, cancel) is { } piece
            ? Download.Text(write(piece), type, piece.Name, ending)
            : TypedResults.NotFound();

    private static async Task<Results<FileContentHttpResult, NotFound>> OutlineAsync(
        Guid id,
        string part,
        IIdeaService ideas,
        CancellationToken cancel
    )
    {
        var piece = await FindAsync(id, ideas, cancel);
        return piece?.Parts.FirstOrDefault(one => one.Id + ".svg" == part) is { } found
            ? Download.Text(PartSvg.Write(found), "image/svg+xml", $"{piece.Name} {found.Id} {found.Name}", "svg")
            : TypedResults.NotFound();
    }

    // Shown, not saved: a phone opens it over the whole screen, drawn for its width.
    private static async Task<Results<ContentHttpResult, NotFound>> ViewAsync(
        Guid id,
        string name,
        IIdeaService ideas,
        CancellationToken cancel
    ) =>
        PieceView.All.FirstOrDefault(one => name == one.Key + ".svg" || name == one.Key + Phone) is { } view
        && await FindAsync(id, ideas, cancel) is { } piece
        && PiecePictures.Large(piece, view, isNarrow: name.EndsWith(Phone, StringComparison.Ordinal)) is { } svg
            ? TypedResults.Text(svg, "image/svg+xml", Encoding.UTF8)
            : TypedResults.NotFound();

    // An idea that cannot be worked out gives no file of its piece.
    private static async Task<Piece?> FindAsync(Guid id, IIdeaService ideas, CancellationToken cancel) =>
        await ideas.GetAsync(id, cancel) is { } view
            ? DesignEvaluator.Evaluate(view.Idea.Document, view.Idea.Changed).Piece
            : null;
}

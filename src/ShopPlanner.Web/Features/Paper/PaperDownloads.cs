using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Services.Paper;
using ShopPlanner.Services.Shop;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Paper;

/// <summary>Labels and templates as files.</summary>
internal static class PaperDownloads
{
    /// <summary>Maps the addresses.</summary>
    public static void MapPaper(this IEndpointRouteBuilder routes)
    {
        var files = routes.MapGroup("/paper").AddEndpointFilter(KeepNowhereAsync);
        files.MapGet("/labels.pdf", LabelsAsync);
        files.MapGet("/templates/{id:guid}/templates.pdf", TemplatesAsync);
    }

    // What is kept by the browser would be stuck on wood after the parts have changed.
    private static ValueTask<object?> KeepNowhereAsync(EndpointFilterInvocationContext call, EndpointFilterDelegate next)
    {
        call.HttpContext.Response.Headers.CacheControl = "no-store";
        return next(call);
    }

    private static async Task<Results<FileContentHttpResult, NotFound, RedirectHttpResult>> LabelsAsync(
        [AsParameters] LabelQuery query,
        HttpContext context,
        ILabelService labels,
        IShopService shop,
        CancellationToken cancel
    )
    {
        if (query.Source is not { } source || await labels.FindAsync(source, cancel) is null)
            return TypedResults.NotFound();
        // What is wrong is told on the page, beside what was typed.
        if (query.Read((await shop.GetAsync(cancel)).Unit).Print is not { } print)
            return TypedResults.Redirect(query.PageLink);
        var site = $"{context.Request.Scheme}://{context.Request.Host}{context.Request.PathBase}";
        var made = await labels.PrintAsync(
            source,
            query.Only,
            print,
            query.HasCodes ? (project, mark) => site + Links.BenchSteps(project, mark) : null,
            cancel
        );
        if (!made.Ok)
            return TypedResults.Redirect(query.PageLink);
        context.Response.Cookies.Append(
            LabelQuery.Cookie,
            query.Kept,
            new()
            {
                HttpOnly = true,
                IsEssential = true,
                MaxAge = TimeSpan.FromDays(400),
                SameSite = SameSiteMode.Lax,
            }
        );
        return Download.Bytes(made.Value.Content, "application/pdf", $"labels {made.Value.Name}", "pdf");
    }

    private static async Task<Results<FileContentHttpResult, NotFound, RedirectHttpResult>> TemplatesAsync(
        Guid id,
        string? paper,
        string? pull,
        string? only,
        ITemplateService templates,
        IShopService shop,
        CancellationToken cancel
    )
    {
        var settings = await shop.GetAsync(cancel);
        var asked = TemplateQuery.Pull(pull, settings.Unit);
        if (!asked.Ok)
            return TypedResults.Redirect(Links.WithQuery(Links.TemplatesPage(id), ("paper", paper), ("pull", pull)));
        string[] ids = only is null ? [] : [only];
        var made = await templates.PrintAsync(id, ids, asked.Value, TemplateQuery.Paper(paper) ?? settings.Paper, cancel);
        return made.Ok
            ? Download.Bytes(made.Value.Content, "application/pdf", $"templates {made.Value.Name}", "pdf")
            : TypedResults.NotFound();
    }
}

using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Packets.Model;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Shop;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Plans;

/// <summary>Files that a plan gives.</summary>
internal static class PlanDownloads
{
    /// <summary>Maps the addresses.</summary>
    public static void MapPlanDownloads(this IEndpointRouteBuilder routes)
    {
        var files = routes.MapGroup("/plans/{id:guid}").AddEndpointFilter(KeepNowhereAsync);
        files.MapGet("/packet.pdf", PacketAsync);
        files.MapGet(
            "/plan.json",
            (Guid id, IPlanService plans, CancellationToken cancel) => DocumentAsync(id, true, plans, cancel)
        );
        files.MapGet(
            "/request.json",
            (Guid id, IPlanService plans, CancellationToken cancel) => DocumentAsync(id, false, plans, cancel)
        );
    }

    // A packet kept by the browser would be taken to the saw after the plan has changed.
    private static ValueTask<object?> KeepNowhereAsync(EndpointFilterInvocationContext call, EndpointFilterDelegate next)
    {
        call.HttpContext.Response.Headers.CacheControl = "no-store";
        return next(call);
    }

    private static async Task<Results<FileContentHttpResult, NotFound>> PacketAsync(
        Guid id,
        string? paper,
        string? sections,
        IPlanService plans,
        IShopService shop,
        CancellationToken cancel
    )
    {
        var size = paper switch
        {
            "a4" => Services.Common.PaperSize.A4,
            "letter" => Services.Common.PaperSize.Letter,
            _ => (await shop.GetAsync(cancel)).Paper,
        };
        // What a withdrawn plan would cut is free for others: nobody is to cut by it.
        if (await plans.GetAsync(id, cancel) is not { Summary.State: not PlanState.Withdrawn } plan)
            return TypedResults.NotFound();
        if (await plans.PacketAsync(id, size, PacketSections.Read(sections ?? "", out _), cancel) is not { } packet)
            return TypedResults.NotFound();
        return Download.Bytes(packet, "application/pdf", $"packet {plan.Summary.Name}", "pdf");
    }

    private static async Task<Results<FileContentHttpResult, NotFound>> DocumentAsync(
        Guid id,
        bool answer,
        IPlanService plans,
        CancellationToken cancel
    )
    {
        if (await plans.GetAsync(id, cancel) is not { } plan || await plans.ExportAsync(id, answer, cancel) is not { } text)
            return TypedResults.NotFound();
        return Download.Text(text, "application/json", $"{(answer ? "plan" : "request")} {plan.Summary.Name}", "json");
    }
}

using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Core.Measures;
using ShopPlanner.Packets.Model;
using ShopPlanner.Services.Access;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Shop;
using ShopPlanner.Web.Frame;
using ShopPlanner.Web.Hosting;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Access;

/// <summary>Sharing plans by link, and what such a link shows: one plan, for reading. A link that is unknown, has ended or was
/// taken back is answered as any address where nothing is.</summary>
internal static class ShareEndpoints
{
    /// <summary>Maps the addresses.</summary>
    public static void MapShares(this IEndpointRouteBuilder routes)
    {
        var forms = routes.MapGroup(AccessLinks.Page).DisableAntiforgery();
        forms.MapPost("/share", ShareAsync);
        forms.MapPost("/unshare", EndAsync);
        var shared = routes.MapGroup(AccessLinks.Shared + "/{token}").AddEndpointFilter(KeepSecretAsync);
        shared.MapGet("", ShowAsync);
        shared.MapGet("/packet.pdf", PacketAsync);
    }

    // Kept nowhere on the way, found by no search, and the address is told to no other page.
    private static ValueTask<object?> KeepSecretAsync(EndpointFilterInvocationContext call, EndpointFilterDelegate next)
    {
        var headers = call.HttpContext.Response.Headers;
        headers.CacheControl = "no-store";
        headers["X-Robots-Tag"] = "noindex, nofollow";
        headers["Referrer-Policy"] = "no-referrer";
        return next(call);
    }

    private static async Task<IResult> ShowAsync(string token, IShareService shares, IPlanService plans, HttpContext context) =>
        await FindAsync(token, shares, plans, context.RequestAborted) is { } share
            ? AccessForm.Answer<SharedPlanView>(
                context,
                StatusCodes.Status200OK,
                share.Name,
                (nameof(SharedPlanView.Share), share),
                (nameof(SharedPlanView.Packet), AccessLinks.SharedPacket(token))
            )
            : Nothing(context);

    private static async Task<IResult> PacketAsync(
        string token,
        IShareService shares,
        IPlanService plans,
        IShopService shop,
        HttpContext context
    )
    {
        var cancel = context.RequestAborted;
        if (await FindAsync(token, shares, plans, cancel) is not { } share)
            return Nothing(context);
        var paper = (await shop.GetAsync(cancel)).Paper;
        return await plans.PacketAsync(share.Plan, paper, PacketSections.Read("", out _), cancel) is { } packet
            ? Download.Bytes(packet, "application/pdf", $"packet {share.Name}", "pdf")
            : Nothing(context);
    }

    private static RazorComponentResult<PlainDocument> Nothing(HttpContext context) =>
        AccessForm.Answer<NothingShared>(context, StatusCodes.Status404NotFound, "Nothing here");

    // What a withdrawn plan would cut is free for others: nobody is to cut by it.
    private static async Task<SharedPlan?> FindAsync(
        string token,
        IShareService shares,
        IPlanService plans,
        CancellationToken cancel
    ) =>
        shares.Find(token) is { } share && await plans.GetAsync(share.Plan, cancel) is { Summary.State: not PlanState.Withdrawn }
            ? share
            : null;

    private static async Task<IResult> ShareAsync(HttpContext context, IShareService shares, IPlanService plans, LanAddresses lan)
    {
        await AccessEndpoints.ReadAsync(context);
        if (
            !Guid.TryParse(AccessForm.Text(context, "Plan"), out var id)
            || await plans.GetAsync(id, context.RequestAborted) is not { } plan
        )
            return AccessEndpoints.Refuse(context, OutcomeKind.Missing, Outcome.Missing<Done>("plan").Faults);
        if (
            !Guid.TryParse(AccessForm.Text(context, "Share"), out var share)
            || !int.TryParse(AccessForm.Text(context, "Days"), NumberStyles.None, CultureInfo.InvariantCulture, out var days)
        )
            return AccessEndpoints.Refuse(
                context,
                OutcomeKind.Faulty,
                [new Fault("", "", "This form is incomplete: open Access again")]
            );
        var outcome = shares.Share(share, id, plan.Summary.Name, days);
        return outcome.Ok
            ? AccessForm.Answer<ShareOffered>(
                context,
                StatusCodes.Status200OK,
                "Shared",
                (nameof(ShareOffered.Offer), outcome.Value),
                (nameof(ShareOffered.Address), $"{OwnAddress.For(context, lan)}{AccessLinks.Shared}/{outcome.Value.Token}")
            )
            : AccessEndpoints.Refuse(context, outcome.Kind, outcome.Faults);
    }

    private static async Task<IResult> EndAsync(HttpContext context, IShareService shares)
    {
        await AccessEndpoints.ReadAsync(context);
        var outcome = shares.End(Guid.TryParse(AccessForm.Text(context, "Share"), out var id) ? id : Guid.Empty);
        return outcome.Kind is OutcomeKind.Ok or OutcomeKind.Missing
            ? new SeeOther(AccessLinks.Page)
            : AccessEndpoints.Refuse(context, outcome.Kind, outcome.Faults);
    }
}

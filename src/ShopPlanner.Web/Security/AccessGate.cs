using System.Net;
using ShopPlanner.Services.Access;
using ShopPlanner.Web.Hosting;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Security;

/// <summary>
/// Lets in who may come in. Until the shop has an owner, only this computer is served; from then on everybody signs in, but for
/// the demo on this computer. A paired tablet gets the addresses of its role and no live connection.
/// </summary>
internal sealed class AccessGate(RequestDelegate next, IAccessService access, WebSettings settings, ILogger<AccessGate> log)
{
    /// <summary>Lets the request through or answers it.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        if (DeviceCookie.Read(context) is { } token && access.Find(token) is { } device)
        {
            Caller.Note(context, device);
            return ForDevice(context, device);
        }

        var path = context.Request.Path;
        if (!access.HasOwner)
            return
                Caller.IsHere(context)
                || HealthEndpoints.IsOne(path)
                || (IsClaimedFromOutside && AccessRules.IsOpenBeforeOwner(path))
                ? next(context)
                : RefuseNoOwner(context);
        if (settings.Demo && Caller.IsHere(context))
            return next(context);
        Caller.NoteStranger(context);
        return AccessRules.IsOpen(path) ? next(context) : AskToSignIn(context);
    }

    // A container's own loopback is nobody's browser: the owner comes from outside, with the code on the console.
    private static bool IsClaimedFromOutside => Announcement.InContainer();

    private Task ForDevice(HttpContext context, AccessDevice device)
    {
        var path = context.Request.Path;
        if (AccessRules.May(device.Role, path) || AccessRules.IsOpen(path))
            return next(context);
        if (path == Links.Home && IsLook(context))
            return Lead(context, AccessRules.Home(device.Role));
        log.LogWarning("Refused {Method} {Path} to a device of the {Role}", context.Request.Method, path, device.Role);
        var name = WebUtility.HtmlEncode(device.Name);
        return RefusalPage.AnswerAsync(
            context,
            StatusCodes.Status403Forbidden,
            "Not for this device",
            $"""
            <h1>This page is the owner's</h1>
            <p><b>{name}</b> was paired for {Words.Of(device.Role)}.</p>
            <p><a href="{AccessRules.Home(device.Role)}">Go there</a></p>
            """
        );
    }

    private Task RefuseNoOwner(HttpContext context)
    {
        log.LogWarning("Refused {Method} {Path}: the shop has no owner yet", context.Request.Method, context.Request.Path);
        return RefusalPage.AnswerAsync(
            context,
            StatusCodes.Status403Forbidden,
            "No owner yet",
            """
            <h1>This shop has no owner yet</h1>
            <p>Until it has one, Shop Planner serves only the computer that it runs on.</p>
            <p>Make the owner's account there: open the link that Shop Planner printed when it started, or Setup › Access. Then
            pair this device.</p>
            """
        );
    }

    // A page is asked for anew after signing in; what was sent is refused, and stays with its sender.
    private static Task AskToSignIn(HttpContext context)
    {
        if (IsLook(context))
            return Lead(context, AccessLinks.SignInFor(context.Request.Path + context.Request.QueryString));
        context.Response.StatusCode = StatusCodes.Status401Unauthorized;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync("Sign in or pair this device first, then try again.\n");
    }

    private static Task Lead(HttpContext context, string address)
    {
        context.Response.StatusCode = StatusCodes.Status303SeeOther;
        context.Response.Headers.Location = address;
        context.Response.Headers.CacheControl = "no-store";
        return Task.CompletedTask;
    }

    private static bool IsLook(HttpContext context) =>
        (HttpMethods.IsGet(context.Request.Method) || HttpMethods.IsHead(context.Request.Method))
        && !context.Request.Path.StartsWithSegments(OriginGate.LiveConnection, StringComparison.OrdinalIgnoreCase);
}

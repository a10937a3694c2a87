namespace ShopPlanner.Web.Security;

/// <summary>
/// Lets only pages of this program change anything or open the live connection. Cookies and SameSite do not tell ports of one
/// computer apart; the Origin header, which a page cannot forge, does.
/// </summary>
internal sealed class OriginGate(RequestDelegate next, ILogger<OriginGate> log)
{
    /// <summary>The path of the live connection.</summary>
    public const string LiveConnection = "/_blazor";

    /// <summary>Lets the request through or answers it with 403.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        var origin = context.Request.Headers.Origin.ToString();
        if (origin.Length == 0 ? !NeedsOrigin(context) : IsOwn(origin, context.Request.Host) || !IsGuarded(context))
            return next(context);
        log.LogWarning(
            "Refused {Method} {Path} from the origin '{Origin}'",
            context.Request.Method,
            context.Request.Path,
            origin
        );
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(
            "Refused: this didn't come from a page of Shop Planner. Open the page again and try again.\n"
        );
    }

    private static bool IsGuarded(HttpContext context) =>
        IsUnsafe(context.Request.Method)
        || context.Request.Path.StartsWithSegments(LiveConnection, StringComparison.OrdinalIgnoreCase);

    // Browsers send no Origin with a plain GET of their own page; they do with every POST and every WebSocket.
    private static bool NeedsOrigin(HttpContext context) =>
        IsUnsafe(context.Request.Method) || context.WebSockets.IsWebSocketRequest || context.Request.Headers.Upgrade.Count > 0;

    private static bool IsUnsafe(string method) =>
        !(HttpMethods.IsGet(method) || HttpMethods.IsHead(method) || HttpMethods.IsOptions(method));

    // The scheme is left out: behind a proxy the browser speaks HTTPS and this program does not see it.
    private static bool IsOwn(string origin, HostString host) =>
        Uri.TryCreate(origin, UriKind.Absolute, out var uri)
        && uri.Scheme is "http" or "https"
        && Authority(uri.Host, uri.Port) == Authority(host.Host, host.Port ?? DefaultPort(uri));

    private static int DefaultPort(Uri uri) => uri.Scheme == "https" ? 443 : 80;

    private static (string Name, int Port) Authority(string name, int port) => (name.ToUpperInvariant(), port);
}

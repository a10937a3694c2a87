namespace ShopPlanner.Web.Security;

/// <summary>
/// The secret of a device that is signed in. Cookies are shared by all ports of one computer, so the name is this program's own;
/// over https it can be neither read nor set by a page without it (<c>__Host-</c>).
/// </summary>
internal static class DeviceCookie
{
    private const string Name = "shop-planner-device";

    // The longest that browsers keep one.
    private static readonly TimeSpan Life = TimeSpan.FromDays(400);

    /// <summary>The secret; null where there is none.</summary>
    public static string? Read(HttpContext context) =>
        context.Request.Cookies[NameOf(context)] is { Length: > 0 and <= 200 } token ? token : null;

    /// <summary>Gives it to the browser.</summary>
    public static void Give(HttpContext context, string token) =>
        context.Response.Cookies.Append(NameOf(context), token, Options(context, Life));

    /// <summary>Takes it away.</summary>
    public static void Take(HttpContext context) => context.Response.Cookies.Delete(NameOf(context), Options(context, null));

    private static string NameOf(HttpContext context) => context.Request.IsHttps ? "__Host-" + Name : Name;

    // Lax: a link on paper or in a message opens the bench. Nothing is changed by following a link.
    private static CookieOptions Options(HttpContext context, TimeSpan? life) =>
        new()
        {
            HttpOnly = true,
            IsEssential = true,
            MaxAge = life,
            Path = "/",
            SameSite = SameSiteMode.Lax,
            Secure = context.Request.IsHttps,
        };
}

namespace ShopPlanner.Web.Look;

/// <summary>
/// Light, dark, bright for a tablet in the sun, or as the system wishes: kept by the browser, because one shop has a bright
/// desk and a dim bench.
/// </summary>
internal static class LookCookie
{
    /// <summary>The cookie; written by the switch in the page.</summary>
    public const string Name = "shop-planner-look";

    /// <summary><c>light</c>, <c>dark</c>, <c>bright</c>, or null to follow the system.</summary>
    public static string? Read(HttpContext context) =>
        context.Request.Cookies[Name] is "light" or "dark" or "bright" ? context.Request.Cookies[Name] : null;
}

namespace ShopPlanner.Web.Frame;

/// <summary>What plain pages ask of the browser.</summary>
internal static class PlainPages
{
    /// <summary>Lets the browser keep the page, so that the Back button has it also where there is no network; with a network it
    /// asks for it anew.</summary>
    public static void MayBeKept(HttpContext context) =>
        context.Response.OnStarting(() =>
        {
            context.Response.Headers.CacheControl = "private, no-cache";
            return Task.CompletedTask;
        });
}

using ShopPlanner.Web.Hosting;

namespace ShopPlanner.Web.Features.Access;

/// <summary>The address that another device reaches this program by.</summary>
internal static class OwnAddress
{
    /// <summary>The address by which the page was opened; where that leads to this computer alone, the one on its
    /// network.</summary>
    public static string For(HttpContext context, LanAddresses lan)
    {
        var here = new UriBuilder(context.Request.Scheme, context.Request.Host.Host);
        if (context.Request.Host.Port is { } port)
            here.Port = port;
        if (here.Uri.IsLoopback && IsReachable(context) && lan.ForTablet() is { } address)
            here.Host = address.ToString();
        return here.Uri.GetLeftPart(UriPartial.Authority);
    }

    private static bool IsReachable(HttpContext context) =>
        context.RequestServices.GetRequiredService<WebSettings>() is { OnlyThisComputer: false, Urls.Count: 0 };
}

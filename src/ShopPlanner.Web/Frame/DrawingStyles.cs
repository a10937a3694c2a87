using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Drawing.Svg;
using ShopPlanner.Web.Security;

namespace ShopPlanner.Web.Frame;

/// <summary>Serves the rules that drawings in a page look by; they belong to the drawing, so they are not a file here.</summary>
internal static class DrawingStyles
{
    private static readonly byte[] Content = Encoding.UTF8.GetBytes(SvgStyle.Sheet);

    /// <summary>The address; another one whenever the rules change, so that it may be kept for ever.</summary>
    public static string Path { get; } =
        $"{AccessRules.DrawingSheet}{Convert.ToHexStringLower(SHA256.HashData(Content)[..5])}.css";

    /// <summary>Maps the address.</summary>
    public static void MapDrawingStyles(this IEndpointRouteBuilder routes) => routes.MapGet(Path, Serve);

    private static FileContentHttpResult Serve(HttpContext context)
    {
        context.Response.Headers.CacheControl = "public, max-age=31536000, immutable";
        return TypedResults.Bytes(Content, "text/css; charset=utf-8");
    }
}

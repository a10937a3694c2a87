using ShopPlanner.Services.Access;
using ShopPlanner.Web.Hosting;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Security;

/// <summary>Which addresses are whose. What is named nowhere is the owner's alone.</summary>
internal static class AccessRules
{
    /// <summary>What the address of the drawings' style sheet begins with.</summary>
    public const string DrawingSheet = "/drawings.";

    // What pages load, and the pages by which one comes in. A link with a secret in it answers for itself.
    private static readonly string[] Open =
    [
        "/assets",
        "/_content",
        "/_framework",
        "/scripts",
        "/kept-pages-worker.js",
        AccessLinks.SignIn,
        AccessLinks.SignOut,
        AccessLinks.Pair,
        AccessLinks.Owner,
        AccessLinks.Shared,
        Links.WeekendsFeed.TrimEnd('/'),
        Links.BenchAuthority,
        HealthEndpoints.Alive,
        HealthEndpoints.Ready,
    ];

    // While the shop has no owner, other devices get these alone.
    private static readonly string[] BeforeOwner = ["/assets", "/_content", "/_framework", "/scripts", AccessLinks.Owner];

    /// <summary>Whether anybody may ask for an address.</summary>
    public static bool IsOpen(PathString path) => IsIn(path, Open) || IsDrawingSheet(path);

    /// <summary>Whether another device may ask for an address in a container that has no owner yet.</summary>
    public static bool IsOpenBeforeOwner(PathString path) => IsIn(path, BeforeOwner);

    /// <summary>Whether a device may ask for an address.</summary>
    public static bool May(AccessRole role, PathString path) =>
        role switch
        {
            AccessRole.Owner => true,
            AccessRole.Bench => IsIn(path, Links.Bench),
            _ => IsIn(path, Links.Shopping),
        };

    /// <summary>Where a device begins.</summary>
    public static string Home(AccessRole role) =>
        role switch
        {
            AccessRole.Owner => Links.Home,
            AccessRole.Bench => Links.Bench,
            _ => Links.Shopping,
        };

    private static bool IsDrawingSheet(PathString path) => path.Value!.StartsWith(DrawingSheet, StringComparison.Ordinal);

    private static bool IsIn(PathString path, params ReadOnlySpan<string> places)
    {
        foreach (var place in places)
            if (path.StartsWithSegments(place, StringComparison.OrdinalIgnoreCase))
                return true;
        return false;
    }
}

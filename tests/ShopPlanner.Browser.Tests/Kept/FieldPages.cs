using System.Reflection;
using Microsoft.AspNetCore.Components;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>Every page that has an address, from the program itself, so that a new one cannot be forgotten.</summary>
internal static class FieldPages
{
    /// <summary>The addresses of all pages, with their parameters open.</summary>
    public static IReadOnlyList<string> Routes { get; } =
    [
        .. typeof(ShopPlanner.Web.Shared.Links)
            .Assembly.GetTypes()
            .SelectMany(page => page.GetCustomAttributes<RouteAttribute>())
            .Select(route => route.Template)
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>Pages without a live connection: plain forms, tried by tests of their own.</summary>
    public static bool IsPlain(string route) =>
        route.StartsWith("/bench", StringComparison.Ordinal)
        || route.StartsWith("/shopping", StringComparison.Ordinal)
        || route.StartsWith("/paper", StringComparison.Ordinal)
        || route is "/not-found" or "/error" or "/owner" or "/pair" or "/sign-in" or "/shop/access" or "/shop/condition"
        || route.StartsWith("/failed", StringComparison.Ordinal);
}

using ShopPlanner.Core.Workings;

namespace ShopPlanner.Web.Features.Workings;

/// <summary>The severity of a verdict, as a word and an icon.</summary>
internal static class SeverityWords
{
    /// <summary>The word.</summary>
    public static string Of(Severity severity) =>
        severity switch
        {
            Severity.Fine => "Holds",
            Severity.Watch => "Watch",
            _ => "Will not do",
        };

    /// <summary>The icon, and the style class that colours it.</summary>
    public static string Icon(Severity severity) =>
        severity switch
        {
            Severity.Fine => "fine",
            Severity.Watch => "watch",
            _ => "fails",
        };
}

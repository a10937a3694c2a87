using ShopPlanner.Core.Workings;

namespace ShopPlanner.Web.Features.Workings;

/// <summary>The icon of a severity, and the style class that colors it.</summary>
internal static class SeverityIcons
{
    /// <summary>Returns the icon's name.</summary>
    public static string Of(Severity severity) =>
        severity switch
        {
            Severity.Tip => "tip",
            Severity.Fine => "fine",
            Severity.Watch => "watch",
            Severity.Safety or Severity.Anchor => "safety",
            _ => "fails",
        };
}

using ShopPlanner.Core.Workings;

namespace ShopPlanner.Web.Features.Workings;

/// <summary>How grave a verdict is, as a word and an icon.</summary>
internal static class GravityWords
{
    /// <summary>The word.</summary>
    public static string Of(Gravity gravity) =>
        gravity switch
        {
            Gravity.Fine => "Holds",
            Gravity.Watch => "Watch",
            _ => "Will not do",
        };

    /// <summary>The icon, and the style class that colours it.</summary>
    public static string Icon(Gravity gravity) =>
        gravity switch
        {
            Gravity.Fine => "fine",
            Gravity.Watch => "watch",
            _ => "fails",
        };
}

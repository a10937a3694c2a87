namespace ShopPlanner.Web.Features.Idea;

/// <summary>Choices of a design's members as people read them.</summary>
internal static class ChoiceWords
{
    private static readonly Dictionary<string, string> Words = new(StringComparer.Ordinal)
    {
        ["planted"] = "on the back",
        ["let-in"] = "in a groove",
        ["panel"] = "full panel",
        ["pocket"] = "pocket screws",
        ["mortise"] = "mortise and tenon",
        ["dowel"] = "dowels",
        ["all"] = "on all sides",
        ["ends"] = "at the ends",
        ["lengthways"] = "lengthwise",
        ["graded"] = "taller toward the bottom",
        ["frame"] = "frame and panel",
        ["both"] = "above and below",
        ["top"] = "above",
        ["bottom"] = "below",
        ["slots"] = "one in each end",
        ["band"] = "edge band",
        ["lipping"] = "solid lipping",
        ["strip"] = "edge strip that stiffens",
        ["round"] = "rounded over",
    };

    /// <summary>Returns the words; the choice's own where it reads well as it is.</summary>
    public static string Of(string choice) => Words.GetValueOrDefault(choice) ?? choice.Replace('-', ' ');
}

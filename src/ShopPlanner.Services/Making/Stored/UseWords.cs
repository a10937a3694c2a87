using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Services.Making.Stored;

/// <summary>Words by which what a finish will meet is stored and chosen.</summary>
internal static class UseWords
{
    /// <summary>Returns the word of a use.</summary>
    public static string Of(FinishUse use) =>
        use switch
        {
            FinishUse.Outdoors => "outdoors",
            FinishUse.Children => "children",
            FinishUse.Food => "food",
            _ => throw new ArgumentOutOfRangeException(nameof(use), use, "is no use of a finish"),
        };

    /// <summary>Returns the use of a word; null where it is none.</summary>
    public static FinishUse? Read(string word) =>
        Enum.GetValues<FinishUse>().Where(use => Of(use) == word).Select(use => (FinishUse?)use).FirstOrDefault();
}

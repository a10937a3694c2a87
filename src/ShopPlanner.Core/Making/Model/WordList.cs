namespace ShopPlanner.Core.Making.Model;

/// <summary>Words in a row, as a sentence has them.</summary>
internal static class WordList
{
    /// <summary>Returns the words, each once: <c>a</c>, <c>a and b</c>, <c>a, b and c</c>.</summary>
    /// <param name="words">In their order.</param>
    /// <param name="last">Before the last one.</param>
    public static string Of(IEnumerable<string> words, string last = "and")
    {
        var all = words.Distinct(StringComparer.Ordinal).ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.SkipLast(1))} {last} {all[^1]}";
    }
}

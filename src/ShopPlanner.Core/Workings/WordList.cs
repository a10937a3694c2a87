namespace ShopPlanner.Core.Workings;

/// <summary>Words in a row, as a sentence has them.</summary>
public static class WordList
{
    /// <summary>Returns the words, each once: <c>a</c>, <c>a and b</c>, <c>a, b and c</c>.</summary>
    /// <param name="words">In their order.</param>
    /// <param name="last">Before the last one.</param>
    public static string Of(IEnumerable<string> words, string last = "and") =>
        AsGiven(words.Distinct(StringComparer.Ordinal), last);

    /// <summary>Returns the words as they are, even where two are equal.</summary>
    /// <inheritdoc cref="Of" path="/param" />
    public static string AsGiven(IEnumerable<string> words, string last = "and")
    {
        var all = words.ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.SkipLast(1))} {last} {all[^1]}";
    }
}

namespace ShopPlanner.Cutting.Formats;

/// <summary>The words a member may have, and what they mean; read and written by the same table.</summary>
internal sealed class WordTable<T>(params (string Word, T Meaning)[] words)
    where T : struct
{
    /// <summary>For faults: <c>"in" or "mm"</c>.</summary>
    public string Listed => string.Join(" or ", words.Select(word => $"\"{word.Word}\""));

    public T? Find(string word)
    {
        foreach (var (known, meaning) in words)
            if (known == word) return meaning;
        return null;
    }

    public string Word(T meaning) => words.First(word => word.Meaning.Equals(meaning)).Word;
}

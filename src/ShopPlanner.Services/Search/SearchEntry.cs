using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Materials;

namespace ShopPlanner.Services.Search;

/// <summary>One thing that can be found, with what it is found by.</summary>
internal sealed class SearchEntry
{
    // What a tape tells apart at most.
    private static readonly Length Near = Length.FromTicks(Length.TicksPerInch / 64);

    private readonly string[] words;
    private readonly string folded;
    private readonly string title;
    private readonly HashSet<string> keys;

    /// <param name="hit">What is shown.</param>
    /// <param name="keys">Short names that name it alone: a tag, a mark, a code.</param>
    /// <param name="texts">More words that it is found by.</param>
    public SearchEntry(SearchHit hit, IEnumerable<string> keys, params IEnumerable<string> texts)
    {
        Hit = hit;
        title = SearchText.Fold(hit.Title);
        this.keys = [.. keys.Select(SearchText.Fold), title];
        folded = string.Join('\n', this.keys.Concat(texts.Select(SearchText.Fold)));
        words = SearchText.Words(folded);
    }

    /// <summary>What is shown.</summary>
    public SearchHit Hit { get; }

    /// <summary>The material that it is, or is made of.</summary>
    public MaterialWords? Material { get; init; }

    /// <summary>Its sizes, each alone.</summary>
    public IReadOnlyList<Length> Lengths { get; init; } = [];

    /// <summary>Its sizes in pairs.</summary>
    public IReadOnlyList<(Length A, Length B)> Pairs { get; init; } = [];

    /// <summary>A part's mark.</summary>
    public string Mark { get; init; } = "";

    /// <summary>How many pieces a part has.</summary>
    public int Pieces { get; init; }

    /// <summary>Returns how well it fits, less being better; null where something is missing.</summary>
    public int? Rank(SearchQuery query)
    {
        if (!query.Readings.Any(reading => reading.All(Has)))
            return null;
        return keys.Contains(query.Folded) ? 0
            : query.Readings[0].Any(token => keys.Contains(token.Text)) ? 1
            : title.StartsWith(query.Folded, StringComparison.Ordinal) ? 2
            : 3;
    }

    private bool Has(SearchToken token) =>
        HasText(token.Text)
        || (Material is { } material && (material.Have(token.Material) || token.Material.IsIdle))
        || token.Lengths.Any(size => Lengths.Any(one => IsNear(one, size)))
        || token.Pairs.Any(pair => Pairs.Any(one => IsNear(one, pair)))
        || (Mark == token.MarkLetters && token.MarkNumber >= 1 && token.MarkNumber <= Pieces);

    private bool HasText(string text) =>
        words.Any(word => word.StartsWith(text, StringComparison.Ordinal))
        || (text.Length > 2 && folded.Contains(text, StringComparison.Ordinal));

    private static bool IsNear((Length A, Length B) one, (Length A, Length B) other) =>
        (IsNear(one.A, other.A) && IsNear(one.B, other.B)) || (IsNear(one.A, other.B) && IsNear(one.B, other.A));

    private static bool IsNear(Length one, Length other) => Math.Abs(one.Ticks - other.Ticks) <= Near.Ticks;
}

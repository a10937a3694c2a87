using System.Text.RegularExpressions;

namespace ShopPlanner.Services.Search;

/// <summary>What a text asks for. <c>8 3/4</c> is one size, or two: both ways of reading are tried.</summary>
internal sealed partial class SearchQuery
{
    private const string Unit = """(?<u{0}>"|''|'|in(?:ch(?:es)?)?\.?|ft\.?|feet|foot|mm|cm|m)""";
    private const string Plain = @"(?<n{0}>\d+/\d+|\d*\.\d+|\d+)";
    private const string Mixed = @"(?<n{0}>\d+(?:\s+|-)\d+/\d+|\d+/\d+|\d*\.\d+|\d+)";

    private static readonly Regex[] Sizes = [Pattern(Mixed), Pattern(Plain)];

    private SearchQuery(string folded, IReadOnlyList<IReadOnlyList<SearchToken>> readings) =>
        (Folded, Readings) = (folded, readings);

    /// <summary>The whole text, folded.</summary>
    public string Folded { get; }

    /// <summary>What must be found, in each way of reading.</summary>
    public IReadOnlyList<IReadOnlyList<SearchToken>> Readings { get; }

    /// <summary>Reads a text; null where it is blank.</summary>
    public static SearchQuery? Read(string text)
    {
        var cut = text.Length <= ISearchService.MostCharacters ? text : text[..ISearchService.MostCharacters];
        var folded = string.Join(' ', SearchText.Fold(cut).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return folded.Length == 0 ? null : new(folded, [.. Sizes.Select(sizes => Tokens(folded, sizes))]);
    }

    private static List<SearchToken> Tokens(string folded, Regex sizes)
    {
        var tokens = new List<SearchToken>();
        var at = 0;
        foreach (Match match in sizes.Matches(folded))
        {
            tokens.AddRange(Words(folded[at..match.Index]));
            tokens.Add(Token(match));
            at = match.Index + match.Length;
        }

        tokens.AddRange(Words(folded[at..]));
        return tokens;
    }

    private static SearchToken Token(Match match)
    {
        string Group(string name) => match.Groups[name].Value.TrimEnd('.');
        return match.Groups["n2"].Success
            ? SearchToken.Pair(Group("n1"), Group("u1"), Group("n2"), Group("u2"))
            : SearchToken.Size(Group("n1"), Group("u1"));
    }

    private static IEnumerable<SearchToken> Words(string text) =>
        text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(SearchToken.Word);

    private static Regex Pattern(string number)
    {
        string One(string n) => (number + @"\s*" + Unit + "?").Replace("{0}", n, StringComparison.Ordinal);
        return new Regex(
            $@"(?<!\S){One("1")}(?:\s*(?:x|by)\s*{One("2")})?(?!\S)",
            RegexOptions.CultureInvariant,
            TimeSpan.FromSeconds(1)
        );
    }
}

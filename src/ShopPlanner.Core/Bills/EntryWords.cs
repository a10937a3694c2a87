namespace ShopPlanner.Core.Bills;

/// <summary>A count in the words around a size.</summary>
/// <param name="Value">How many.</param>
/// <param name="At">The token.</param>
/// <param name="IsAdded">Whether "and" stands before it: 1 top and 1 bottom.</param>
/// <param name="IsBare">Whether a word follows that says no more than that it counts: 2 pieces.</param>
internal sealed record FoundCount(int Value, int At, bool IsAdded, bool IsBare)
{
    /// <summary>Whether a colon ends its phrase, so that it counts what the parts are for: 2 drawers: 4 sides.</summary>
    public bool IsOfGroup { get; init; }
}

/// <summary>The words before a size, or after it, sorted: counts, names, wood, surfacing, and the rest.</summary>
internal sealed class EntryWords
{
    private const int LongestName = 6;

    private readonly BillToken[] tokens;
    private readonly string text;
    private readonly bool isAfter;
    private List<BillToken> segment = [];
    private int namedFrom;

    private EntryWords(BillToken[] tokens, string text, bool isAfter) =>
        (this.tokens, this.text, this.isAfter) = (tokens, text, isAfter);

    /// <summary>The counts, in order.</summary>
    public List<FoundCount> Counts { get; } = [];

    /// <summary>Phrases between commas, without counts, wood and surfacing.</summary>
    public List<string> Phrases { get; } = [];

    /// <summary>What stands in parentheses.</summary>
    public List<string> Asides { get; } = [];

    /// <summary>The wood named.</summary>
    public string? Material { get; private set; }

    /// <summary>Which faces are planed.</summary>
    public string? Surfacing { get; private set; }

    /// <summary>A word for any piece of wood, where there is no better name: <c>pieces</c>.</summary>
    public string? Generic { get; private set; }

    /// <summary>Whether a word says that the size is as bought.</summary>
    public bool IsBought { get; private set; }

    /// <summary>Whether a word says that the size is finished.</summary>
    public bool IsFinished { get; private set; }

    /// <summary>Whether marks say: as above.</summary>
    public bool IsDitto { get; private set; }

    /// <summary>Whether a word says that the size isn't exact.</summary>
    public bool IsAbout { get; private set; }

    /// <summary>Whether it begins with "a", "an" or "the".</summary>
    public bool HasArticle { get; private set; }

    /// <summary>Whether a letter that looks like a digit was taken for the count.</summary>
    public bool IsCorrected { get; private set; }

    /// <summary>Whether the wood stands before a colon, and so is that of all that follows.</summary>
    public bool SetsMaterial { get; private set; }

    /// <summary>Whether it is multiplied: 2 pairs.</summary>
    public bool HasPair { get; private set; }

    /// <summary>Sorts the words of some tokens.</summary>
    /// <param name="tokens">Of a line.</param>
    /// <param name="text">The line.</param>
    /// <param name="start">The first token.</param>
    /// <param name="end">The token after the last.</param>
    /// <param name="isAfter">Whether they stand after the size.</param>
    public static EntryWords Of(BillToken[] tokens, string text, int start, int end, bool isAfter)
    {
        var words = new EntryWords(tokens, text, isAfter);
        for (var at = start; at < end; )
            at = words.Take(at, end);
        words.EndSegment();
        return words;
    }

    private int Take(int at, int end)
    {
        var wood = WoodWords.End(tokens, at, end);
        if (wood > at)
        {
            Material ??= BillNames.Join(text, tokens[at..wood]);
            return wood;
        }

        switch (tokens[at].Kind)
        {
            case TokenKind.Surfacing:
                Surfacing ??= tokens[at].Text;
                return at + 1;
            case TokenKind.Ditto:
                IsDitto = true;
                return at + 1;
            case TokenKind.Open:
                return Aside(at, end);
            case TokenKind.Colon:
                SetsMaterial |= Material is not null && Counts.Count == 0;
                if (Counts is [.., { IsBare: false } last] && segment.Count > 0)
                    Counts[^1] = last with { IsOfGroup = true };
                EndSegment();
                return at + 1;
            case TokenKind.Comma or TokenKind.Semicolon or TokenKind.Bar or TokenKind.Period:
                EndSegment();
                return at + 1;
            case TokenKind.Dash when tokens[at].Gap > 0 || tokens[at].Text is "—" or "--":
                EndSegment();
                return at + 1;
            default:
                Word(at, end);
                return at + 1;
        }
    }

    private void Word(int at, int end)
    {
        var token = tokens[at];
        var isFirst = segment.Count == 0 && Phrases.Count == 0 && Counts.Count == 0;
        if (token.Kind is TokenKind.Dash or TokenKind.Other && segment.Count == 0)
            return;
        if (IsCount(at, end) is { } count)
            Add(count, at);
        else if (isFirst && !isAfter && token.Text is "l" or "i")
        {
            IsCorrected = true;
            Add(1, at);
        }
        else if (token.Text is "pair" or "pairs" or "pr" or "prs")
            HasPair = true;
        else if (BillWords.IsBought(tokens, at))
            IsBought = true;
        else if (token.IsIn(BillWords.Finished))
            IsFinished = true;
        else if (token.IsIn(BillWords.About))
            IsAbout = true;
        else if (!token.IsIn(BillWords.Verbs) && !(token.Is("size") && (IsBought || IsFinished)))
        {
            HasArticle |= !isAfter && token.Text is "a" or "an" or "the";
            segment.Add(token);
        }
    }

    // After the size only what says that it counts: "4 pieces", "2 required", a figure alone.
    private int? IsCount(int at, int end)
    {
        if (BillCounts.Read(tokens, at) is not { } count)
            return null;
        if (!isAfter)
            return count;
        var isAlone = (at + 1 == end || tokens[at + 1].Kind is TokenKind.Comma or TokenKind.Period) && segment.Count == 0;
        return isAlone || (at + 1 < end && tokens[at + 1].IsIn(BillWords.Bare)) ? count : null;
    }

    private void Add(int count, int at)
    {
        var before = at > 0 ? tokens[at - 1] : null;
        if (tokens[at].Text is "dozen" or "doz")
        {
            count = before?.Text == "half" ? 6 : 12;
            if (Counts is [.., { } last] && last.At == at - 1)
            {
                Counts[^1] = last with { Value = last.Value * 12 };
                return;
            }
        }

        var isBare = at + 1 < tokens.Length && tokens[at + 1].IsIn(BillWords.Bare);
        Counts.Add(new(count, at, before?.Text == "and", isBare));
        namedFrom = segment.Count;
    }

    // "(4)" counts; anything longer is a remark.
    private int Aside(int at, int end)
    {
        var close = at + 1;
        while (close < end && tokens[close].Kind != TokenKind.Close)
            close++;
        var place = close > at + 2 && tokens[at + 1].IsIn(BillWords.Verbs) ? at + 2 : at + 1;
        var isCount = close == place + 1 || (close == place + 2 && tokens[place + 1].IsIn(BillWords.Bare));
        if (isCount && BillCounts.Read(tokens, place) is { } count)
            Add(count, place);
        else if (close > at + 1)
            Asides.Add(BillNames.Join(text, tokens[(at + 1)..close]));
        return Math.Min(close + 1, end);
    }

    private void EndSegment()
    {
        var (words, from) = (segment, namedFrom);
        segment = [];
        namedFrom = 0;
        if (from > 0 && words.Count > from && words[from..].TrueForAll(word => word.IsIn(BillWords.Bare)))
            words = words[..from];
        if (from == 1 && words.Count > 1 && words[0] is { IsCapital: true, Text.Length: 1 })
        {
            Asides.Add(BillNames.Join(text, words[..1]));
            words = words[1..];
        }

        if (words.Count > LongestName && !isAfter)
            words = Core(words, from);
        words = Trimmed(words);
        while (words.Count > 1 && words[0].Text is "pc" or "pcs" or "pce" or "ea")
            words = words[1..];
        if (!words.Exists(word => word.Kind == TokenKind.Word))
            return;
        if (words.Exists(word => word.Is("several")))
            Asides.Add("of " + BillNames.Join(text, words));
        else if (words.Exists(word => word.Text is "which" or "whose" or "where"))
            Asides.Add(BillNames.Join(text, words));
        else if (words.TrueForAll(word => word.IsIn(BillWords.Bare)))
            Generic ??= words.Find(word => word.IsIn(BillWords.Pieces))?.Text;
        else
            Phrases.Add(BillNames.Join(text, words));
    }

    // In a sentence the name follows the count, or "for".
    private static List<BillToken> Core(List<BillToken> words, int from)
    {
        var counted = Trimmed(words[Math.Min(from, words.Count)..]);
        if (from > 0 && counted.Count is > 0 and <= LongestName && !counted.TrueForAll(word => word.IsIn(BillWords.Pieces)))
            return counted;
        var purpose = words.FindLastIndex(word => word.Is("for"));
        return purpose < 0 ? words[^3..] : words[(purpose + 1)..Math.Min(words.Count, purpose + 1 + LongestName)];
    }

    private static List<BillToken> Trimmed(List<BillToken> words)
    {
        var (start, end) = (0, words.Count);
        while (start < end && IsEdge(words[start]))
            start++;
        while (end > start && IsEdge(words[end - 1]))
            end--;
        return words[start..end];
    }

    private static bool IsEdge(BillToken token) =>
        token.IsIn(BillWords.Edges) || token.Kind is not (TokenKind.Word or TokenKind.Number);
}

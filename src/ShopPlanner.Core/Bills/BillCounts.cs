using System.Collections.Frozen;

namespace ShopPlanner.Core.Bills;

/// <summary>How many pieces: which figures and number words are counts.</summary>
internal static class BillCounts
{
    private const int FarthestName = 8;

    private static readonly FrozenSet<string> Faces = new[]
    {
        "sides",
        "side",
        "faces",
        "face",
        "edges",
        "edge",
        "surfaces",
        "surface",
    }.ToFrozenSet();

    private static readonly FrozenSet<string> Planed = new[]
    {
        "on",
        "planed",
        "surfaced",
        "dressed",
        "smoothed",
        "with",
    }.ToFrozenSet();

    /// <summary>Whether a line begins with a count.</summary>
    public static bool Begins(BillToken[] tokens)
    {
        var at = 0;
        while (at < tokens.Length && tokens[at].Kind is TokenKind.Dash or TokenKind.Other or TokenKind.Open)
            at++;
        if (at + 1 >= tokens.Length)
            return false;
        if (tokens[at].Text is "l" or "i" && tokens[at + 1].Kind == TokenKind.Word)
            return tokens.Any(token => token.Kind == TokenKind.By);
        if (Read(tokens, at) is null)
            return false;
        var next = tokens[at + 1];
        return next.Kind is TokenKind.Word
                ? !BillWords.SideWords.Contains(next.Text) || next.Text is "square" or "round" or "long"
            : next.Kind is TokenKind.Number ? at + 2 < tokens.Length && tokens[at + 2].Kind is TokenKind.By or TokenKind.Unit
            : next.Kind is TokenKind.Ditto or TokenKind.Close or TokenKind.Surfacing or TokenKind.Dash;
    }

    /// <summary>Whether a name and then a count begin a line: <c>Rails, 2 pieces</c>, <c>Posts (4)</c>.</summary>
    public static bool FollowsName(BillToken[] tokens)
    {
        for (var at = 1; at < Math.Min(tokens.Length - 1, FarthestName); at++)
            if (Read(tokens, at) is not null && tokens[0].Kind == TokenKind.Word)
                return tokens[at + 1].IsIn(BillWords.Bare)
                    || (
                        tokens[at - 1].Kind is TokenKind.Comma or TokenKind.Colon or TokenKind.Open or TokenKind.Dash
                        && tokens[at + 1].Kind is TokenKind.Comma or TokenKind.Close or TokenKind.Dash or TokenKind.Word
                    );
        return false;
    }

    /// <summary>Whether a count after a size begins another part, whose size isn't on the line; null where it may be that of
    /// the size, as in <c>Legs, 2 x 2 x 30 in., 4 pieces</c>.</summary>
    /// <param name="tokens">Of the line.</param>
    /// <param name="start">The token after its last size.</param>
    public static bool? IsOpen(BillToken[] tokens, int start)
    {
        if (tokens[^1].Kind is TokenKind.Period or TokenKind.Semicolon)
            return false;
        for (var at = Math.Max(start, 1); at < tokens.Length; at++)
            if (Read(tokens, at) is not null && IsBoundary(tokens[at - 1], at == start))
                return at + 1 == tokens.Length || !tokens[at + 1].IsIn(BillWords.Bare) || HasCount(tokens, start) ? true : null;
        return false;
    }

    private static bool HasCount(BillToken[] tokens, int end)
    {
        for (var at = 0; at < end; at++)
            if (Read(tokens, at) is not null && at + 1 < end && tokens[at + 1].Kind == TokenKind.Word)
                return true;
        return false;
    }

    private static bool IsBoundary(BillToken before, bool isAfterSize) =>
        isAfterSize || before.Is("and") || before.Kind is TokenKind.Comma or TokenKind.Semicolon or TokenKind.Period;

    /// <summary>Returns the count that a token is, by itself; null where it is none.</summary>
    public static int? Read(BillToken[] tokens, int at)
    {
        if (at < 0 || at >= tokens.Length || IsFaces(tokens, at))
            return null;
        var token = tokens[at];
        if (at > 0 && tokens[at - 1].IsIn(BillWords.NotCounts))
            return null;
        if (token.Kind == TokenKind.Word)
            return BillWords.Numbers.TryGetValue(token.Text, out var number) ? number : null;
        return token.Number is { Whole: { } whole, Flaw: null } && !IsTight(tokens, at) ? whole : null;
    }

    // "6d", "4th", "8 ft.": but "2pcs." is a count.
    private static bool IsTight(BillToken[] tokens, int at) =>
        at + 1 < tokens.Length
        && tokens[at + 1] is var next
        && (
            next.Kind is TokenKind.Unit or TokenKind.By
            || (next is { Gap: 0, Kind: TokenKind.Word } && !next.IsIn(BillWords.Pieces))
        );

    // "surfaced on two sides", "with two surfaces planed".
    private static bool IsFaces(BillToken[] tokens, int at) =>
        at > 0 && at + 1 < tokens.Length && tokens[at + 1].IsIn(Faces) && tokens[at - 1].IsIn(Planed);
}

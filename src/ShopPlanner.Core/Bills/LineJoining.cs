using System.Collections.Frozen;

namespace ShopPlanner.Core.Bills;

/// <summary>Whether a line goes on where the one before ended.</summary>
internal static class LineJoining
{
    private const int LongLine = 40;

    private static readonly FrozenSet<string> Links = new[]
    {
        "and",
        "or",
        "of",
        "by",
        "with",
        "each",
        "to",
        "for",
        "in",
        "the",
        "x",
    }.ToFrozenSet();

    /// <summary>Whether a line belongs to those before it.</summary>
    /// <param name="before">At least one line.</param>
    /// <param name="line">The next one.</param>
    public static bool GoesOn(List<BillLine> before, BillLine line)
    {
        var (last, first) = (before[^1].Tokens[^1], line.Tokens[0]);
        if (last.Kind == TokenKind.By || (last.Kind == TokenKind.Dash && last.Gap == 0) || last.IsIn(Links))
            return true;
        if (first.Kind is TokenKind.By or TokenKind.Surfacing or TokenKind.Close || IsSideEnd(last, first))
            return true;
        if (line.HasCountFirst || line.HasCountAfterName || IsHardware(before))
            return false;
        if (IsOpen(before) && (first.Kind == TokenKind.Word ? !first.IsCapital : last.Kind != TokenKind.Number))
            return true;
        if (!first.IsCapital && first.IsIn(Links))
            return true;
        if (line.Indent > before[0].Indent && !line.HasSize && before.Exists(one => one.HasSize))
            return true;
        return !before.Exists(one => one.HasWholeSize) && (Completes(before, line) || IsSentence(before[^1], line));
    }

    // "30" and, in the next line, "in."; "17 in." and "wide".
    private static bool IsSideEnd(BillToken last, BillToken first) =>
        first.Kind == TokenKind.Word
        && (
            (last.Kind == TokenKind.Number && BillWords.UnitOf(first.Text) != SizeUnit.None && !first.IsCapital)
            || (last.Kind is TokenKind.Number or TokenKind.Unit && BillWords.SideWords.Contains(first.Text) && !first.IsCapital)
        );

    private static bool IsHardware(List<BillLine> before) =>
        !before.Exists(line => line.HasSize) && before[^1].Tokens.Any(token => token.IsIn(BillWords.Hardware));

    // A second count is that of the next part.
    private static bool IsOpen(List<BillLine> before) =>
        before[^1].HasOpenEnd ?? before.Exists(line => line.HasCountFirst || line.HasOpenEnd == true);

    // A sentence above a list.
    private static bool IsSentence(BillLine before, BillLine line) =>
        before.Text.Length >= LongLine
        && line.Tokens[0] is { Kind: TokenKind.Word, IsCapital: false }
        && !line.HasSize
        && before.Tokens[^1].Kind is not (TokenKind.Period or TokenKind.Colon or TokenKind.Semicolon);

    // A count still waits for its size: a name goes on, or the figures come.
    private static bool Completes(List<BillLine> before, BillLine line)
    {
        var first = line.Tokens[0];
        var hasCount = before[0].HasCountFirst || before[0].HasCountAfterName;
        if (line.HasWholeSize && before.Exists(one => one.HasSize))
            return false;
        if (!hasCount && !before.Exists(one => one.HasSize) && before[^1].Tokens[^1].Kind != TokenKind.Comma)
            return false;
        return first.Kind == TokenKind.Word ? !first.IsCapital : first.Kind == TokenKind.Number;
    }
}

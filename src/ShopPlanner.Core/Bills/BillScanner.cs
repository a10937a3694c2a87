using System.Globalization;

namespace ShopPlanner.Core.Bills;

/// <summary>Turns a line of a bill into tokens, in one pass.</summary>
internal sealed class BillScanner
{
    private const int Tab = 8;
    private const string InchMarks = "\"″”“„‟";
    private const string FootMarks = "'′’‘";
    private const string Dashes = "-–—‑−";
    private const string Crosses = "×✕✖╳";

    private readonly string text;
    private readonly List<BillToken> tokens = [];
    private int at;
    private int gap;

    private BillScanner(string text) => this.text = text;

    /// <summary>Returns the tokens of a text.</summary>
    public static BillToken[] Scan(string text)
    {
        var scanner = new BillScanner(text);
        while (scanner.at < text.Length)
            scanner.Step();
        return [.. scanner.tokens];
    }

    private BillToken? Last => tokens.Count > 0 ? tokens[^1] : null;

    private char Now => text[at];

    private void Step()
    {
        if (char.IsWhiteSpace(Now) || char.IsControl(Now) || char.GetUnicodeCategory(Now) == UnicodeCategory.Format)
        {
            gap += Now == '\t' ? Tab : Width(Now);
            at++;
            return;
        }

        var start = at;
        if (!Surfacing() && !Number() && !Letters() && !Mark())
            Add(TokenKind.Other, at + (char.IsSurrogatePair(text, at) ? 2 : 1));
        if (at > start)
            gap = 0;
    }

    private static int Width(char c) => char.IsWhiteSpace(c) ? 1 : 0;

    private void Add(TokenKind kind, int end, string? word = null)
    {
        tokens.Add(new(kind, word ?? text[at..end], at, end, gap) { IsCapital = char.IsUpper(Now) });
        at = end;
    }

    private bool Surfacing()
    {
        if (SurfacingScan.Read(text, at) is not { } found)
            return false;
        Add(TokenKind.Surfacing, found.End, found.Text);
        return true;
    }

    private bool Number()
    {
        if (!char.IsAsciiDigit(Now) && char.IsAsciiLetter(Now) && Now is not ('l' or 'I' or 'O' or 'o'))
            return false;
        if (NumberScan.Read(text, at, out var end) is not { } number)
            return false;
        tokens.Add(new(TokenKind.Number, text[at..end], at, end, gap) { Number = number });
        at = end;
        return true;
    }

    private bool Mark()
    {
        if (InchMarks.Contains(Now, StringComparison.Ordinal))
            return InchMark(1);
        if (FootMarks.Contains(Now, StringComparison.Ordinal))
            return FootMark();
        if (Dashes.Contains(Now, StringComparison.Ordinal))
            return Dash();
        if (Crosses.Contains(Now, StringComparison.Ordinal) || (Now == '*' && IsBetweenSides(at + 1)))
            return Take(TokenKind.By, 1);
        return Now switch
        {
            ',' => Next == ',' && (gap > 0 || Last is null) ? Take(TokenKind.Ditto, 2) : Take(TokenKind.Comma, 1),
            '.' => Take(TokenKind.Period, 1),
            ':' => Take(TokenKind.Colon, 1),
            ';' => Take(TokenKind.Semicolon, 1),
            '(' or '[' => Take(TokenKind.Open, 1),
            ')' or ']' => Take(TokenKind.Close, 1),
            '|' => Take(TokenKind.Bar, 1),
            '&' => Take(TokenKind.Word, 1, "and"),
            '#' => Take(TokenKind.Word, 1, "no"),
            _ => false,
        };
    }

    private char Next => at + 1 < text.Length ? text[at + 1] : ' ';

    private bool Take(TokenKind kind, int length, string? word = null)
    {
        Add(kind, at + length, word);
        return true;
    }

    private bool Dash()
    {
        var end = at + 1;
        while (end < text.Length && Dashes.Contains(text[end], StringComparison.Ordinal))
            end++;
        Add(TokenKind.Dash, end);
        return true;
    }

    // At a figure it means inches; with room around it, what stands above; beside a word it is a quotation mark.
    private bool InchMark(int length)
    {
        if (Last is { Kind: TokenKind.Number } && (gap == 0 || (gap == 1 && tokens.Count > 1)))
            return Unit(SizeUnit.Inch, at + length);
        var isQuote = (gap == 0 && Last is not null) || (at + length < text.Length && char.IsLetter(text[at + length]));
        return Take(isQuote ? TokenKind.Other : TokenKind.Ditto, length);
    }

    private bool FootMark()
    {
        if (FootMarks.Contains(Next, StringComparison.Ordinal))
            return InchMark(2);
        return Last is { Kind: TokenKind.Number } && gap == 0 ? Unit(SizeUnit.Foot, at + 1) : Take(TokenKind.Other, 1);
    }

    private bool Unit(SizeUnit unit, int end)
    {
        if (Last is { Kind: TokenKind.Dash })
            tokens.RemoveAt(tokens.Count - 1);
        tokens.Add(new(TokenKind.Unit, text[at..end], at, end, gap) { Unit = unit });
        at = end;
        return true;
    }

    private bool Letters()
    {
        if (!char.IsLetter(Now))
            return false;
        if (Now is 'x' or 'X' && IsBetweenSides(at + 1))
            return Take(TokenKind.By, 1);
        var end = WordEnd();
        var word = text[at..end].ToLowerInvariant();
        if (word == "by" && IsBy(end))
            Add(TokenKind.By, end);
        else if (
            BillWords.UnitOf(word) is not SizeUnit.None and var unit
            && IsAfterFigure()
            && !IsPreposition(word, end)
            && !IsName(word, end)
        )
            Unit(unit, Period(end));
        else if (word == "ditto" || (word == "do" && IsPeriod(end)))
            Add(TokenKind.Ditto, Period(end));
        else
            Add(TokenKind.Word, word.Length == 1 || BillWords.Abbreviations.Contains(word) ? Period(end) : end, word);
        return true;
    }

    private int WordEnd()
    {
        var end = at + 1;
        while (end < text.Length && (char.IsLetterOrDigit(text[end]) || IsApostrophe(end)))
            end++;
        return end;
    }

    private bool IsApostrophe(int place) =>
        text[place] is '\'' or '’' && place + 1 < text.Length && char.IsLetter(text[place + 1]);

    private bool IsPeriod(int place) => place < text.Length && text[place] == '.';

    private int Period(int end) => IsPeriod(end) ? end + 1 : end;

    private bool IsBy(int end) =>
        NumberScan.Begins(text, end)
        || (string.IsNullOrWhiteSpace(Rest(end)) && Last?.Kind is TokenKind.Number or TokenKind.Unit);

    // A few characters are enough: a line that ends in "by" goes on in the next.
    private string Rest(int end) => text[end..Math.Min(text.Length, end + 8)];

    private bool IsBetweenSides(int next) =>
        Last is { } last
        && (last.Kind is TokenKind.Number or TokenKind.Unit || last.IsIn(BillWords.SideWords) || last.Kind == TokenKind.Close)
        && (NumberScan.Begins(text, next) || string.IsNullOrWhiteSpace(Rest(next)));

    private bool IsAfterFigure() =>
        Last switch
        {
            { Kind: TokenKind.Number } => true,
            { Kind: TokenKind.Dash } dash => tokens.Count > 1 && dash.Gap == 0 && gap == 0 && IsFigure(tokens[^2]),
            { Kind: TokenKind.Word } => IsFigure(Last),
            _ => false,
        };

    private static bool IsFigure(BillToken token) => token.Kind == TokenKind.Number || token.IsIn(BillWords.FigureWords);

    // "4 feet, 2 by 2 by 3 in.": what a chest stands on.
    private bool IsName(string word, int end) =>
        word == "feet" && tokens.Count == 1 && end < text.Length && text[end] is ',' or ':';

    // "4 in number", "2 in the back".
    private bool IsPreposition(string word, int end)
    {
        if (word != "in" || IsPeriod(end))
            return false;
        var next = text[end..Math.Min(text.Length, end + 12)].TrimStart();
        return BillWords.AfterIn.Any(one => next.StartsWith(one, StringComparison.OrdinalIgnoreCase));
    }
}

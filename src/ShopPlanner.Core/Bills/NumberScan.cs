using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Bills;

/// <summary>Reads one figure of a bill: <c>30</c>, <c>3/4</c>, <c>1-3/4</c>, <c>1 3/4</c>, <c>22½</c>, <c>¹⁵⁄₁₆</c>, <c>.75</c>,
/// and figures in which a scanned page has a letter for a digit.</summary>
internal sealed class NumberScan
{
    private const string LookAlikes = "lIOo";
    private const string Dashes = "-–‑−";
    private const string Blots = "%^°£$?§~¢";
    private const int MostDigits = 9;

    private readonly string text;
    private int at;
    private bool isCorrected;

    private NumberScan(string text, int at) => (this.text, this.at) = (text, at);

    private sealed record Fraction(long Numerator, long Denominator, int End);

    /// <summary>Reads the figure at a place.</summary>
    /// <param name="text">A line.</param>
    /// <param name="start">Where the figure begins.</param>
    /// <param name="end">Where it ended.</param>
    /// <returns>The figure; null where there is none.</returns>
    public static BillNumber? Read(string text, int start, out int end)
    {
        var scan = new NumberScan(text, start);
        var number = scan.Read();
        if (number is not null)
            number = scan.Ended(number, start);
        end = scan.at;
        return number;
    }

    /// <summary>Whether a figure begins at a place, after spaces.</summary>
    public static bool Begins(string text, int start)
    {
        while (start < text.Length && text[start] == ' ')
            start++;
        return start < text.Length
            && (
                char.IsAsciiDigit(text[start])
                || (text[start] == '.' && IsDigit(text, start + 1))
                || new NumberScan(text, start).Read() is not null
            );
    }

    private BillNumber? Read()
    {
        if (Glyph(at) is { } alone)
            return Alone(alone);
        if (text[at] == '.')
            return IsDigit(text, at + 1) ? Decimal("0") : null;
        if (Digits(ref at) is not { } whole)
            return null;
        if (whole.Length > MostDigits)
            return new BillNumber(whole[..MostDigits]) { Flaw = "has too many digits" };
        if (SlashAt(at) && Peek(at + 1) is { } below)
            return Alone(new(Whole(whole), Whole(below.Digits), below.End));
        if (At(at) == '.' && IsDigit(text, at + 1))
            return Decimal(whole);
        return HasComma() ? Comma(whole) : Mixed(whole);
    }

    private BillNumber Alone(Fraction fraction)
    {
        at = fraction.End;
        var plain = string.Create(CultureInfo.InvariantCulture, $"{fraction.Numerator}/{fraction.Denominator}");
        return new BillNumber(plain) { Numerator = fraction.Numerator, Denominator = fraction.Denominator };
    }

    private BillNumber Decimal(string whole)
    {
        var start = ++at;
        while (IsDigit(text, at))
            at++;
        var places = text[start..Math.Min(at, start + MostDigits)];
        return new BillNumber(whole + "." + places)
        {
            Flaw = (At(at) == '.' && IsDigit(text, at + 1)) || SlashAt(at) ? "isn't one number" : null,
        };
    }

    // One comma between digits may part thousands or be a decimal point; a list of figures has several.
    private bool HasComma()
    {
        if (At(at) != ',' || !IsDigit(text, at + 1) || LastBefore() == ',')
            return false;
        var end = at + 1;
        while (IsDigit(text, end))
            end++;
        return At(end) is not (',' or '/');
    }

    private char LastBefore()
    {
        var start = at - 1;
        while (start >= 0 && char.IsAsciiDigit(text[start]))
            start--;
        return start >= 0 ? text[start] : ' ';
    }

    private BillNumber Comma(string whole)
    {
        at++;
        while (IsDigit(text, at))
            at++;
        return new BillNumber(whole) { Flaw = "has a comma: it may be a decimal point" };
    }

    private BillNumber Mixed(string whole)
    {
        var (next, isSpaced) = AfterGap();
        if (next >= 0 && FractionAt(next) is { } part && part.Numerator < part.Denominator && !SlashAt(part.End))
        {
            at = part.End;
            var plain = string.Create(CultureInfo.InvariantCulture, $"{Whole(whole)} {part.Numerator}/{part.Denominator}");
            return new BillNumber(plain)
            {
                Numerator = part.Numerator,
                Denominator = part.Denominator,
                Before = (int)Whole(whole),
                IsSpaced = isSpaced,
            };
        }

        return new BillNumber(whole) { Whole = (int)Whole(whole) };
    }

    // A glyph may follow at once; else one space, or a dash with at most one space on each side.
    private (int Next, bool IsSpaced) AfterGap()
    {
        var next = at;
        var before = At(next) is ' ' or '\u00a0';
        if (before)
            next++;
        if (!Dashes.Contains(At(next), StringComparison.Ordinal))
            return (At(next) == ' ' ? -1 : next, before);
        next++;
        return (At(next) == ' ' ? next + 1 : next, before);
    }

    private Fraction? FractionAt(int start)
    {
        if (Glyph(start) is { } glyph)
            return glyph;
        return Peek(start) is { } above && SlashAt(above.End) && Peek(above.End + 1) is { } below
            ? new(Whole(above.Digits), Whole(below.Digits), below.End)
            : null;
    }

    private (string Digits, int End)? Peek(int start)
    {
        var end = start;
        return start < text.Length && Digits(ref end) is { Length: <= 4 } digits ? (digits, end) : null;
    }

    // A fraction in one character, or raised figures over others.
    private Fraction? Glyph(int start)
    {
        if (At(start) <= '\u007f')
            return null;
        if (LengthText.Spelled(text[start].ToString()).Split('/') is [{ Length: > 0 } above, { Length: > 0 } below])
            return new(Whole(above), Whole(below), start + 1);
        var (top, slash) = Shifted(start);
        if (top.Length == 0 || !SlashAt(slash))
            return null;
        var (bottom, end) = Shifted(slash + 1);
        return bottom.Length == 0 ? null : new(Whole(top), Whole(bottom), end);
    }

    private (string Digits, int End) Shifted(int start)
    {
        var digits = "";
        while (start < text.Length && digits.Length < 4 && Plain(text[start]) is { } digit)
        {
            digits += digit;
            start++;
        }

        return (digits, start);
    }

    private static char? Plain(char c) =>
        char.IsAsciiDigit(c) ? c
        : c > '\u007f' && LengthText.Spelled(c.ToString()) is [var digit] && char.IsAsciiDigit(digit) ? digit
        : null;

    // Digits, or a run in which letters stand for some of them.
    private string? Digits(ref int place)
    {
        var end = place;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || LookAlikes.Contains(text[end], StringComparison.Ordinal)))
            end++;
        var pure = place;
        while (pure < end && char.IsAsciiDigit(text[pure]))
            pure++;
        if (pure < end && IsLikeNumber(place, end))
        {
            isCorrected = true;
            var digits = text[place..end].Replace('l', '1').Replace('I', '1').Replace('O', '0').Replace('o', '0');
            place = end;
            return digits;
        }

        var found = pure == place ? null : text[place..pure];
        place = pure;
        return found;
    }

    private bool IsLikeNumber(int start, int end)
    {
        if (end - start > MostDigits || char.IsLetter(At(end)) || (start > 0 && char.IsLetter(text[start - 1])))
            return false;
        return text.AsSpan(start, end - start).IndexOfAnyInRange('0', '9') >= 0 || (end - start <= 2 && IsBeforeSize(end));
    }

    // "l/2", "l-3/4", "l 3/4" and "l by 4": a letter alone is a figure only where a size goes on.
    private bool IsBeforeSize(int end)
    {
        if (SlashAt(end))
            return IsDigit(text, end + 1);
        var rest = text.AsSpan(end, Math.Min(8, text.Length - end));
        if (rest is [' ' or '-', >= '0' and <= '9', ..] && rest[2..].IndexOf('/') is >= 0 and <= 1)
            return true;
        var by = rest.TrimStart(' ');
        return rest.Length > by.Length
            && (by.StartsWith("by ", StringComparison.OrdinalIgnoreCase) || by is ['x' or 'X' or '×', ' ', ..])
            && by.IndexOfAnyInRange('0', '9') >= 0;
    }

    private BillNumber Ended(BillNumber number, int start)
    {
        var flaw = number.Flaw;
        if (at < text.Length && Blots.Contains(text[at], StringComparison.Ordinal))
        {
            at++;
            flaw ??= "can't be read";
        }

        if (SlashAt(at) && IsDigit(text, at + 1))
        {
            flaw ??= "isn't one number";
            while (SlashAt(at) || IsDigit(text, at))
                at++;
        }

        if (number.HasFraction && number.Numerator >= number.Denominator && !IsQuarters(number))
            flaw ??= "is more than a whole: a mark between whole number and fraction may be missing";
        if (number.Denominator == 0 && text[start..at].Contains('/', StringComparison.Ordinal))
            flaw ??= "can't be read";
        return number with { Flaw = flaw, IsCorrected = isCorrected };
    }

    // Rough lumber is sold by its thickness in quarters of an inch.
    private static bool IsQuarters(BillNumber number) =>
        number is { Denominator: 4, Before: null, Numerator: 4 or 5 or 6 or 8 or 10 or 12 or 16 };

    private bool SlashAt(int place) => At(place) is '/' or '⁄';

    private char At(int place) => place < text.Length ? text[place] : '\0';

    private static bool IsDigit(string text, int place) => place < text.Length && char.IsAsciiDigit(text[place]);

    private static long Whole(string digits) => long.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);
}

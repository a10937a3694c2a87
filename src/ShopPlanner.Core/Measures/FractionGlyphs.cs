using System.Globalization;
using System.Text;

namespace ShopPlanner.Core.Measures;

/// <summary>Fractions as one glyph or as raised and lowered figures, and back to plain digits.</summary>
internal static class FractionGlyphs
{
    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private const string Lowered = "₀₁₂₃₄₅₆₇₈₉";

    private static readonly Dictionary<(long, long), char> Single = new()
    {
        [(1, 2)] = '½',
        [(1, 4)] = '¼',
        [(3, 4)] = '¾',
        [(1, 8)] = '⅛',
        [(3, 8)] = '⅜',
        [(5, 8)] = '⅝',
        [(7, 8)] = '⅞',
        [(1, 3)] = '⅓',
        [(2, 3)] = '⅔',
    };

    /// <summary>The fraction set as a builder reads it on a rule: ½, ¹⁵⁄₁₆.</summary>
    public static string Set(long numerator, long denominator) =>
        Single.TryGetValue((numerator, denominator), out var glyph)
            ? glyph.ToString()
            : Shift(numerator, Raised) + "⁄" + Shift(denominator, Lowered);

    /// <summary>Writes set fractions with plain digits: <c>34½</c> becomes <c>34 1/2</c>.</summary>
    public static string Spell(string text)
    {
        if (text.All(char.IsAscii))
            return text;
        var spelled = new StringBuilder();
        var inNumerator = false;
        foreach (var c in text)
        {
            var raised = Raised.IndexOf(c, StringComparison.Ordinal);
            if (raised >= 0 && !inNumerator)
                spelled.Append(Gap(spelled));
            spelled.Append(raised >= 0 ? (char)('0' + raised) : Plain(c, spelled));
            inNumerator = raised >= 0;
        }

        return spelled.ToString();
    }

    private static string Plain(char c, StringBuilder before)
    {
        var lowered = Lowered.IndexOf(c, StringComparison.Ordinal);
        if (lowered >= 0)
            return ((char)('0' + lowered)).ToString();
        foreach (var ((numerator, denominator), glyph) in Single)
            if (glyph == c)
                return Gap(before)
                    + numerator.ToString(CultureInfo.InvariantCulture)
                    + "/"
                    + denominator.ToString(CultureInfo.InvariantCulture);
        return c == '⁄' ? "/" : c.ToString();
    }

    private static string Gap(StringBuilder spelled) => spelled.Length > 0 && char.IsAsciiDigit(spelled[^1]) ? " " : "";

    private static string Shift(long number, string figures) =>
        string.Concat(number.ToString(CultureInfo.InvariantCulture).Select(digit => figures[digit - '0']));
}

using System.Globalization;
using System.Text;

namespace ShopPlanner.Drawing.Lettering;

/// <summary>Makes text fit where it must stand.</summary>
public static class TextFit
{
    private const string Ellipsis = "…";

    /// <summary>Printable text on one line: line ends, tabs and runs of blanks become one blank, control characters and marks
    /// that
    /// turn the writing direction go, pictures such as emoji go too, and characters that no font has become <c>□</c>.</summary>
    public static string Clean(string text, Weight weight = Weight.Regular)
    {
        var font = Typeface.Of(weight);
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.IsWhiteSpace(rune))
                AppendBlank(clean);
            else if (Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Format))
                clean.Append(Shown(font, rune));
        }

        return clean.ToString().TrimEnd();
    }

    /// <summary>Whether paper leaves something of a text out: a picture, or a letter that no font has.</summary>
    public static bool LeavesOut(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var font = Typeface.Of(Weight.Regular);
        return text.EnumerateRunes()
            .Any(rune =>
                !Rune.IsWhiteSpace(rune)
                && Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Format)
                && Shown(font, rune) != rune.ToString()
            );
    }

    private static string Shown(TrueTypeFont font, Rune rune) =>
        font.Has(rune) || OtherFonts.For(rune) is not null ? rune.ToString()
        : OtherFonts.IsPicture(rune) ? ""
        : "□";

    /// <summary>The text, cut off with … where it is wider than allowed; empty when not even that fits.</summary>
    public static string Shorten(string text, Weight weight, double size, double width)
    {
        return Typeface.Width(text, weight, size) <= width ? text : CutOff(text, weight, size, width);
    }

    /// <summary>The text broken into at most so many lines; the last ends with … where more was to come.</summary>
    public static IReadOnlyList<string> Wrap(string text, Weight weight, double size, double width, int mostLines)
    {
        var lines = Wrap(text, weight, size, width);
        return lines.Count <= mostLines
            ? lines
            : [.. lines.Take(mostLines - 1), CutOff(lines[mostLines - 1], weight, size, width)];
    }

    private static string CutOff(string text, Weight weight, double size, double width)
    {
        var room = width - Typeface.Width(Ellipsis, weight, size);
        var kept = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            room -= Typeface.Width(rune.ToString(), weight, size);
            if (room < 0)
                break;
            kept.Append(rune.ToString());
        }

        return kept.Length == 0 ? "" : kept.ToString().TrimEnd() + Ellipsis;
    }

    /// <summary>The text broken into lines no wider than allowed: at blanks, and within a word that is wider by itself.</summary>
    public static IReadOnlyList<string> Wrap(string text, Weight weight, double size, double width)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            AddWord(word, line, lines, t => Typeface.Width(t, weight, size) <= width);
        if (line.Length > 0 || lines.Count == 0)
            lines.Add(line.ToString());
        return lines;
    }

    private static void AddWord(string word, StringBuilder line, List<string> lines, Func<string, bool> fits)
    {
        if (line.Length > 0 && !fits(line + " " + word))
        {
            lines.Add(line.ToString());
            line.Clear();
        }

        if (line.Length > 0)
            line.Append(' ');
        foreach (var rune in word.EnumerateRunes())
        {
            if (line.Length > 0 && !fits(line + rune.ToString()))
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            line.Append(rune.ToString());
        }
    }

    private static void AppendBlank(StringBuilder clean)
    {
        if (clean.Length > 0 && clean[^1] != ' ')
            clean.Append(' ');
    }
}

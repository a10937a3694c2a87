using System.Globalization;
using System.Text;

namespace ShopPlanner.Drawing.Lettering;

/// <summary>Makes text fit where it must stand.</summary>
public static class TextFit
{
    private const string Ellipsis = "…";

    /// <summary>Printable text on one line: line ends, tabs and runs of blanks become one blank, control characters and marks
    /// that
    /// turn the writing direction go, and characters the font lacks become <c>□</c>.</summary>
    public static string Clean(string text, Weight weight = Weight.Regular)
    {
        var font = Typeface.Of(weight);
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.IsWhiteSpace(rune))
                AppendBlank(clean);
            else if (Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Format))
                clean.Append(font.Has(rune) ? rune.ToString() : "□");
        }

        return clean.ToString().TrimEnd();
    }

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
            room -= Typeface.Of(weight).Advance(rune) * size;
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

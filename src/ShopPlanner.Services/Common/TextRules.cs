using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Common;

/// <summary>What a text may hold before it is stored. Any script, emoji and writing direction is welcome.</summary>
internal static partial class TextRules
{
    public const int NameCharacters = 120,
        NoteCharacters = 2_000,
        CellCharacters = 300;

    /// <summary>A name: not empty, one line.</summary>
    public static Fault? Name(string field, string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
            return Fault.Of(field, text, "is empty: write a name");
        return Line(field, text, NameCharacters);
    }

    /// <summary>A text of one line that may be empty.</summary>
    public static Fault? Line(string field, string? text, int most) =>
        Breaks().IsMatch(text ?? "") ? Fault.Of(field, text, "has several lines: write it on one") : Free(field, text, most);

    /// <summary>A text of any lines that may be empty.</summary>
    public static Fault? Free(string field, string? text, int most)
    {
        if (text is null)
            return Fault.Of(field, text, "is missing");
        if (text.Length > most)
            return Fault.Of(field, text, $"is too long: at most {most} characters");
        return Unwritable().IsMatch(text) || HasLoneSurrogate(text)
            ? Fault.Of(field, Visible(text), "has a character that can't be saved")
            : null;
    }

    /// <summary>A name as stored: without blanks around it, single ones inside.</summary>
    public static string Tidy(string text) => Blanks().Replace(text.Trim(), " ");

    /// <summary>A name folded for comparing: <c>Pine 1×3</c> and <c>pine 1x3</c> are the same.</summary>
    public static string Key(string text) => Tidy(text).Replace('×', 'x').ToUpperInvariant();

    private static string Visible(string text) => Unwritable().Replace(text, "□");

    // Half of a character pair has no form in UTF-8 and would be stored as something else.
    private static bool HasLoneSurrogate(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (!char.IsSurrogate(text[i]))
                continue;
            if (i + 1 == text.Length || !char.IsSurrogatePair(text[i], text[i + 1]))
                return true;
            i++;
        }

        return false;
    }

    // Control characters other than tab and line ends.
    [GeneratedRegex(@"[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F]")]
    private static partial Regex Unwritable();

    [GeneratedRegex(@"[\r\n\u2028\u2029]")]
    private static partial Regex Breaks();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}

using System.Globalization;
using System.Text;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Search;

/// <summary>Texts folded for finding: small letters without accents, fractions spelled out, <c>×</c> as <c>x</c>.</summary>
internal static class SearchText
{
    // The program knows no language, so the runtime takes no letters apart: these are the accented ones of western Europe.
    private const string Accented = "àáâãäåçèéêëìíîïñòóôõöøùúûüýÿšž";
    private const string Plain = "aaaaaaceeeeiiiinoooooouuuuyysz";

    /// <summary>Returns a text folded.</summary>
    public static string Fold(string text)
    {
        var folded = new StringBuilder(text.Length);
        foreach (var c in LengthText.Spelled(text))
            if (CharUnicodeInfo.GetUnicodeCategory(c) is not (UnicodeCategory.NonSpacingMark or UnicodeCategory.Format))
                folded.Append(Fold(char.ToLowerInvariant(c)));
        return folded.ToString();
    }

    /// <summary>Returns the words of a folded text; a fraction is one.</summary>
    public static string[] Words(string folded) =>
        new string([.. folded.Select(c => char.IsLetterOrDigit(c) || c is '/' or '#' ? c : ' ')]).Split(
            ' ',
            StringSplitOptions.RemoveEmptyEntries
        );

    private static char Fold(char c) =>
        char.IsAscii(c) ? c
        : c == '×' ? 'x'
        : Accented.IndexOf(c) is >= 0 and var at ? Plain[at]
        : c;
}

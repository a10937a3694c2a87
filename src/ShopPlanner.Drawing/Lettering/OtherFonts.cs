using System.Collections.Concurrent;
using System.Globalization;
using System.Text;

namespace ShopPlanner.Drawing.Lettering;

/// <summary>A font of the machine that has letters which the typeface lacks.</summary>
/// <param name="File">Its file.</param>
/// <param name="Font">The font.</param>
public sealed record OtherFont(string File, TrueTypeFont Font);

/// <summary>
/// Letters of scripts that the typeface lacks (Hebrew, Arabic, Chinese, Japanese, Korean) are taken from freely licensed
/// fonts, where the machine has one: the first of the list that has the letter. Only TrueType outlines can be embedded in a
/// packet. Nothing is looked for until such a letter comes.
/// </summary>
public static class OtherFonts
{
    // DejaVu, Noto, Droid and GNU FreeFont: all under licences that allow embedding.
    private static readonly string[] Files =
    [
        "DejaVuSans.ttf",
        "NotoSans-Regular.ttf",
        "NotoSansHebrew-Regular.ttf",
        "NotoSansArabic-Regular.ttf",
        "NotoNaskhArabic-Regular.ttf",
        "NotoSansSC-Regular.ttf",
        "NotoSansJP-Regular.ttf",
        "NotoSansKR-Regular.ttf",
        "DroidSansFallbackFull.ttf",
        "DroidSansFallback.ttf",
        "FreeSans.ttf",
    ];

    private static readonly Lazy<List<OtherFont>> Found = new(() => [.. Look()]);
    private static readonly ConcurrentDictionary<int, OtherFont?> Known = new();

    /// <summary>The font for a character that the typeface lacks; null where there is none. Pictures such as emoji have none:
    /// what they look like differs from font to font, and few are black on white.</summary>
    public static OtherFont? For(Rune character) =>
        Known.GetOrAdd(
            character.Value,
            _ => IsLetter(character) ? Found.Value.FirstOrDefault(one => one.Font.Has(character)) : null
        );

    /// <summary>Whether a character is a picture that is left out on paper.</summary>
    public static bool IsPicture(Rune character) =>
        Rune.GetUnicodeCategory(character) is UnicodeCategory.OtherSymbol or UnicodeCategory.ModifierSymbol
        && character.Value > 0x2000;

    private static bool IsLetter(Rune character) =>
        Rune.GetUnicodeCategory(character)
            is UnicodeCategory.OtherLetter
                or UnicodeCategory.ModifierLetter
                or UnicodeCategory.UppercaseLetter
                or UnicodeCategory.LowercaseLetter
                or UnicodeCategory.NonSpacingMark
                or UnicodeCategory.DecimalDigitNumber
                or UnicodeCategory.OtherPunctuation
                or UnicodeCategory.OpenPunctuation
                or UnicodeCategory.ClosePunctuation
                or UnicodeCategory.DashPunctuation;

    private static IEnumerable<OtherFont> Look()
    {
        var files = Folders()
            .Where(Directory.Exists)
            .SelectMany(folder =>
                Directory.EnumerateFiles(
                    folder,
                    "*.ttf",
                    new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true }
                )
            )
            .GroupBy(Path.GetFileName)
            .ToDictionary(same => same.Key!, same => same.First(), StringComparer.OrdinalIgnoreCase);
        foreach (var name in Files)
            if (
                files.TryGetValue(name, out var file)
                && new TrueTypeFont(File.ReadAllBytes(file)) is { HasTrueTypeOutlines: true } font
            )
                yield return new(file, font);
    }

    private static IEnumerable<string> Folders()
    {
        yield return Path.Combine(AppContext.BaseDirectory, "fonts");
        yield return "/usr/share/fonts";
        yield return "/usr/local/share/fonts";
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        if (home.Length > 0)
            yield return Path.Combine(home, ".local/share/fonts");
        if (Environment.GetFolderPath(Environment.SpecialFolder.Fonts) is { Length: > 0 } system)
            yield return system;
    }
}

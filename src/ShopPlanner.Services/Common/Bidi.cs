using System.Text;

namespace ShopPlanner.Services.Common;

/// <summary>Keeps the writing direction of a name to itself, so that it cannot turn the figures beside it round.</summary>
internal static class Bidi
{
    private const char FirstStrongIsolate = '\u2068',
        PopIsolate = '\u2069';

    /// <summary>The name between isolates (Unicode Standard Annex #9) where it holds anything written from right to left or a
    /// sign that sets the direction; else the name alone.</summary>
    public static string Isolate(string name) =>
        name.EnumerateRunes().Any(SetsDirection) ? $"{FirstStrongIsolate}{Without(name)}{PopIsolate}" : name;

    // An isolate of its own in the name could close ours too early.
    private static string Without(string name) => string.Concat(name.Where(sign => sign is not (>= '\u2066' and <= '\u2069')));

    // Hebrew to Arabic Extended, their presentation forms, right-to-left scripts beyond the first plane, marks and overrides.
    private static bool SetsDirection(Rune rune) =>
        rune.Value
            is (>= 0x0590 and <= 0x08FF)
                or (>= 0xFB1D and <= 0xFDFF)
                or (>= 0xFE70 and <= 0xFEFF)
                or (>= 0x10800 and <= 0x10FFF)
                or (>= 0x1E800 and <= 0x1EFFF)
                or 0x200E
                or 0x200F
                or (>= 0x202A and <= 0x202E)
                or (>= 0x2066 and <= 0x2069);
}

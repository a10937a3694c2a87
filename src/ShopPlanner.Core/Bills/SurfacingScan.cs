using System.Text;

namespace ShopPlanner.Core.Bills;

/// <summary>Reads which faces are planed, as lumber dealers write it: <c>S-4-S</c>, <c>S. 2 S.</c>, <c>S4S</c>,
/// <c>S1S2E</c>.</summary>
internal static class SurfacingScan
{
    private const int MostPairs = 3;
    private const string Between = "-.–· ";

    /// <summary>Where it ends, and how we write it.</summary>
    public readonly record struct Found(int End, string Text);

    /// <summary>Reads it at a place.</summary>
    /// <param name="text">A line.</param>
    /// <param name="at">Where it may begin.</param>
    public static Found? Read(string text, int at)
    {
        if (!IsFirst(text, at))
            return null;
        var written = new StringBuilder("S");
        var end = at + 1;
        var pairs = 0;
        while (pairs < MostPairs && Pair(text, end, pairs) is { } pair)
        {
            written.Append('-').Append(pair.Count).Append('-').Append(pair.Face);
            end = pair.End;
            pairs++;
        }

        if (pairs == 0 || (end < text.Length && char.IsLetterOrDigit(text[end])))
            return null;
        var isDotted = text[at + 1] == '.' && end < text.Length && text[end] == '.';
        return new(isDotted ? end + 1 : end, written.ToString());
    }

    // A scanned page may have 5 or 8 for S; then the hyphens must be there.
    private static bool IsFirst(string text, int at) =>
        text[at] is 'S' or 's' || (text[at] is '5' or '8' && text.AsSpan(at + 1) is ['-', >= '1' and <= '4', '-', 'S', ..]);

    private static (char Count, char Face, int End)? Pair(string text, int at, int pairs)
    {
        var count = Skip(text, at);
        if (count >= text.Length || text[count] is < '1' or > '4')
            return null;
        var face = Skip(text, count + 1);
        if (face >= text.Length || char.ToUpperInvariant(text[face]) is not ('S' or 'E'))
            return null;
        if (pairs == 0 && char.ToUpperInvariant(text[face]) == 'E' && face > count + 1 && text[face - 1] == ' ')
            return null;
        return face + 1 < text.Length && char.IsLetter(text[face + 1])
            ? null
            : (text[count], char.ToUpperInvariant(text[face]), face + 1);
    }

    private static int Skip(string text, int at)
    {
        var end = at;
        while (end < text.Length && end < at + 3 && Between.Contains(text[end], StringComparison.Ordinal))
            end++;
        return end;
    }
}

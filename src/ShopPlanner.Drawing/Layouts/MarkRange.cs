using System.Globalization;
using ShopPlanner.Drawing.Lettering;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>Several marks in a few characters: <c>C1–C6</c>, <c>C1, C4</c>.</summary>
public static class MarkRange
{
    private const int Listed = 4,
        Shown = 10;

    /// <summary>One mark: printable, and cut off where it is no mark but a story.</summary>
    public static string Short(string mark)
    {
        var clean = TextFit.Clean(mark.Length > 100 ? mark[..100] : mark, Weight.Bold);
        return clean.Length <= Shown ? clean : clean[..Shown].TrimEnd() + "…";
    }

    /// <summary>The marks, runs of one letter's numbers drawn together.</summary>
    public static string Of(IReadOnlyList<string> marks)
    {
        var ranges = new List<(string First, string Last)>();
        foreach (var mark in marks)
        {
            if (ranges.Count > 0 && Follows(ranges[^1].Last, mark))
                ranges[^1] = (ranges[^1].First, mark);
            else
                ranges.Add((mark, mark));
        }

        var texts = ranges.Take(Listed).Select(r => r.First == r.Last ? Short(r.First) : $"{Short(r.First)}–{Short(r.Last)}");
        return string.Join(", ", texts) + (ranges.Count > Listed ? " …" : "");
    }

    private static bool Follows(string before, string mark) =>
        Split(before) is var (letters, number)
        && Split(mark) is var (nextLetters, nextNumber)
        && letters.Length > 0
        && letters == nextLetters
        && nextNumber == number + 1;

    private static (string Letters, long Number) Split(string mark)
    {
        var letters = mark.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        return long.TryParse(mark.AsSpan(letters.Length), CultureInfo.InvariantCulture, out var number)
            ? (letters, number)
            : (mark, -2);
    }
}

using System.Globalization;
using ShopPlanner.Drawing.Lettering;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>Several marks in a few characters: <c>C1–C6</c>, <c>C1, C4</c>; letters of a project before them are said once,
/// <c>PC C1–C6</c>.</summary>
public static class MarkRange
{
    private const int Listed = 4,
        Shown = 16;

    /// <summary>One mark: printable, and cut off where it is no mark but a story.</summary>
    public static string Short(string mark)
    {
        var clean = TextFit.Clean(mark.Length > 100 ? mark[..100] : mark, Weight.Bold);
        return clean.Length <= Shown ? clean : clean[..Shown].TrimEnd() + "…";
    }

    /// <summary>The marks, runs of one letter's numbers drawn together; of very many the first few.</summary>
    public static string Of(IReadOnlyList<string> marks)
    {
        var texts = Texts(marks);
        return string.Join(", ", texts.Take(Listed)) + (texts.Count > Listed ? " …" : "");
    }

    /// <summary>All of the marks, where none may be missing.</summary>
    public static string All(IReadOnlyList<string> marks) => string.Join(", ", Texts(marks));

    private static List<string> Texts(IReadOnlyList<string> marks)
    {
        var ranges = new List<(string First, string Last)>();
        foreach (var mark in marks)
        {
            if (ranges.Count > 0 && Follows(ranges[^1].Last, mark))
                ranges[^1] = (ranges[^1].First, mark);
            else
                ranges.Add((mark, mark));
        }

        return [.. ranges.Select(r => r.First == r.Last ? Short(r.First) : $"{Short(r.First)}–{Short(AfterProject(r.Last))}")];
    }

    private static string AfterProject(string mark) => mark[(mark.IndexOf(' ', StringComparison.Ordinal) + 1)..];

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

namespace ShopPlanner.Services.Csv;

/// <summary>Finds out what stands between the cells of a table.</summary>
internal static class Separators
{
    private const string Mark = "sep=";

    private static readonly char[] All = ['\t', ';', ','];

    /// <summary>Takes the line off that some spreadsheets write before a table to name its separator: <c>sep=;</c>. It stays as a
    /// blank one, so that the others keep their numbers.</summary>
    public static (char? Separator, string Text) Hint(string text) =>
        text.StartsWith(Mark, StringComparison.OrdinalIgnoreCase)
        && text.Length > Mark.Length + 1
        && All.Contains(text[Mark.Length])
        && text[Mark.Length + 1] is '\r' or '\n'
            ? (text[Mark.Length], text[(Mark.Length + 1)..])
            : (null, text);

    /// <summary>Returns the separator under which most cells of the first line are known; without any that is known, a tab
    /// where there is one, else what the first line has most of.</summary>
    /// <param name="text">The table.</param>
    /// <param name="known">Returns how many cells are headings that are known.</param>
    public static char Choose(string text, Func<string[], int> known)
    {
        var first = FirstLine(text);
        var best = All.Select(one => (Separator: one, Known: known(Cells(first, one)))).MaxBy(one => one.Known);
        return best.Known > 1 ? best.Separator
            : text.Contains('\t') ? '\t'
            : first.Count(c => c == ';') > first.Count(c => c == ',') ? ';'
            : ',';
    }

    private static string FirstLine(string text) =>
        text.Split(['\r', '\n'], StringSplitOptions.RemoveEmptyEntries).FirstOrDefault(line => line.Trim().Length > 0) ?? "";

    // A heading has neither quoted separators nor line ends in it, as good as always: this only chooses, it does not read.
    private static string[] Cells(string line, char separator) =>
        [.. line.Split(separator).Select(cell => cell.Trim().Trim('"'))];
}

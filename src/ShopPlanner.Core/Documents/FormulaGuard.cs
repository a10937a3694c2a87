namespace ShopPlanner.Core.Documents;

/// <summary>Keeps a spreadsheet from taking a text cell for a formula, by a <c>'</c> before it (OWASP, "CSV
/// Injection").</summary>
public static class FormulaGuard
{
    private const char Mark = '\'';
    private const string Starts = "=+-@\t\r";

    /// <summary>Returns the cell as it is written out: with a <c>'</c> where it looks like a formula, or like one that has a
    /// <c>'</c> already.</summary>
    public static string Quote(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return Looks(cell.TrimStart(Mark)) ? Mark + cell : cell;
    }

    /// <summary>Returns the cell without that <c>'</c>, so that a table that was written out reads back the same.</summary>
    public static string Unquote(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return cell.Length > 1 && cell[0] == Mark && Looks(cell.TrimStart(Mark)) ? cell[1..] : cell;
    }

    private static bool Looks(string cell) => cell.Length > 0 && Starts.Contains(cell[0], StringComparison.Ordinal);
}

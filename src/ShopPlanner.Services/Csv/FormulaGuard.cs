namespace ShopPlanner.Services.Csv;

/// <summary>Takes off the <c>'</c> that keeps a spreadsheet from taking a text cell for a formula, so that a table that was
/// written out reads back the same.</summary>
internal static class FormulaGuard
{
    private const string Starts = "=+-@\t\r";

    public static string Unquote(string cell) => cell.Length > 1 && cell[0] == '\'' && Looks(cell[1..]) ? cell[1..] : cell;

    private static bool Looks(string cell) => cell.Length > 0 && Starts.Contains(cell[0]);
}

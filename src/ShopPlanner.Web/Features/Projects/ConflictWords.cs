namespace ShopPlanner.Web.Features.Projects;

/// <summary>Says what two devices typed into one row.</summary>
internal static class ConflictWords
{
    /// <summary>Every cell that differs, with both values.</summary>
    public static string Of(SheetRow row)
    {
        if (row.Theirs is not { } theirs)
            return "Another device deleted this row while you were typing.";
        var cells = PartColumn
            .All.Select(column => (column.Heading, Mine: column.Get(row.Texts), Theirs: column.Get(theirs.Texts)))
            .Where(cell => cell.Mine != cell.Theirs)
            .Select(cell => $"{cell.Heading}: you typed {Quoted(cell.Mine)}; it is now {Quoted(cell.Theirs)}.");
        return "Another device changed this row while you were typing. " + string.Join(' ', cells);
    }

    private static string Quoted(string text) => text.Length == 0 ? "nothing" : $"‘{text}’";
}

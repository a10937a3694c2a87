using ShopPlanner.Services.Projects;

namespace ShopPlanner.Web.Features.Projects;

/// <summary>A few columns copied from a spreadsheet, to be filled in from a cell.</summary>
internal sealed class PastedCells
{
    // In the first column a row of more cells is a whole part, from its mark on; so is a row of as many as all usual columns.
    private const int MostFromMark = 3;

    private readonly string[][] lines;
    private readonly IReadOnlyList<PartColumn> columns;

    private PastedCells(string[][] lines, IReadOnlyList<PartColumn> columns) => (this.lines, this.columns) = (lines, columns);

    /// <summary>How many rows are filled.</summary>
    public int Rows => lines.Length;

    /// <summary>The cells; null where the text holds whole rows, headed columns, or goes beyond the last column.</summary>
    public static PastedCells? Read(string text, string? column, IReadOnlyList<PartColumn> columns)
    {
        var from = columns.ToList().FindIndex(one => one.Name == column);
        if (from < 0)
            return null;
        var lines = text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').Select(line => line.Split('\t')).ToArray();
        var wide = lines.Max(line => line.Length);
        if (wide > MostFrom(from) || from + wide > columns.Count || IsHeading(lines[0]))
            return null;
        return new(lines, [.. columns.Skip(from).Take(wide)]);
    }

    /// <summary>A row with the cells of one line put in.</summary>
    public PartTexts Into(PartTexts row, int line) =>
        lines[line].Zip(columns).Aggregate(row, (texts, cell) => cell.Second.Set(texts, Plain(cell.First)));

    private static int MostFrom(int column) => column == 0 ? MostFromMark : PartColumn.Usual.Count - 1;

    private static bool IsHeading(string[] cells) =>
        cells.Length > 1
        && cells.All(cell =>
            PartColumn.All.Any(column =>
                cell.Trim().Equals(column.Heading, StringComparison.OrdinalIgnoreCase)
                || cell.Trim().Equals(column.Name, StringComparison.OrdinalIgnoreCase)
            )
        );

    // A spreadsheet puts quotes around a cell that holds one: "34 1/2""".
    private static string Plain(string cell)
    {
        var text = cell.Trim();
        return text.Length > 1 && text[0] == '"' && text[^1] == '"'
            ? text[1..^1].Replace("\"\"", "\"", StringComparison.Ordinal)
            : text;
    }
}

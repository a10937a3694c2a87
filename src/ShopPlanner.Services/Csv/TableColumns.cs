using System.Collections.Immutable;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Csv;

/// <summary>A table with a heading, read with its columns found by their names.</summary>
/// <typeparam name="TCell">What a column can say.</typeparam>
internal sealed class TableColumns<TCell>
    where TCell : struct, Enum
{
    private readonly Dictionary<TCell, (int At, string? Unit)> columns = [];
    private readonly List<string> unused = [];

    private TableColumns(char separator, IReadOnlyList<TableLine> lines, int count) =>
        (Separator, Lines, Count) = (separator, lines, count);

    /// <summary>What stands between cells.</summary>
    public char Separator { get; }

    /// <summary>The lines below the heading.</summary>
    public IReadOnlyList<TableLine> Lines { get; }

    /// <summary>How many columns there are.</summary>
    public int Count { get; }

    /// <summary>Headings of columns that are not used.</summary>
    public ImmutableArray<string> Unused => [.. unused];

    /// <summary>Whether there is such a column.</summary>
    public bool Has(TCell cell) => columns.ContainsKey(cell);

    /// <summary>Returns a cell; empty where there is no such column or cell.</summary>
    public string Cell(TCell cell, TableLine line) =>
        columns.TryGetValue(cell, out var column) && column.At < line.Cells.Length
            ? FormulaGuard.Unquote(line.Cells[column.At].Trim())
            : "";

    /// <summary>Returns the unit that a heading names, as a suffix; null where it names none.</summary>
    public string? UnitOf(TCell cell) => columns.GetValueOrDefault(cell).Unit;

    /// <summary>Reads a table; its fault refuses it whole.</summary>
    /// <param name="text">The table.</param>
    /// <param name="separator">What stands between its cells, where a person says so.</param>
    /// <param name="mostLines">The most lines below the heading.</param>
    /// <param name="names">What headings are called.</param>
    /// <param name="wanted">Columns that must be there, with the heading that a fault shows.</param>
    public static (TableColumns<TCell>? Table, Fault? Fault) Read(
        string text,
        char? separator,
        int mostLines,
        IReadOnlyDictionary<string, TCell> names,
        (ImmutableArray<TCell> Cells, string Heading) wanted
    )
    {
        var (hint, plain) = Separators.Hint(text.TrimStart('\uFEFF'));
        var used =
            separator ?? hint ?? Separators.Choose(plain, cells => cells.Count(cell => Find(cell, names).Cell is not null));
        using var reader = new StringReader(plain);
        var (lines, fault) = TableReader.Read(reader, used, mostLines + 1);
        if (fault is not null)
            return (null, fault);
        if (lines.Count == 0)
            return (null, new Fault("line 1", "", $"is empty: start with the heading {wanted.Heading}"));
        var table = new TableColumns<TCell>(used, [.. lines.Skip(1)], lines[0].Cells.Length);
        return table.TakeHeading(lines[0], names) is { } twice ? (null, twice)
            : table.FindMissing(lines[0], wanted) is { } missing ? (null, missing)
            : (table, null);
    }

    /// <summary>Returns what is wrong with a line that has more cells than the heading.</summary>
    public Fault? CheckEnd(TableLine line) =>
        line.Cells.Length > Count && line.Cells.Skip(Count).Any(cell => cell.Trim().Length > 0)
            ? Fault.Of(
                "end",
                line.Cells[^1].Trim(),
                "is one cell too many: a comma splits a cell. Write prices "
                    + "without commas, like 1038.98, and quote names with one"
            )
            : null;

    private Fault? TakeHeading(TableLine heading, IReadOnlyDictionary<string, TCell> names)
    {
        foreach (var (at, text) in heading.Cells.Index())
            if (Find(text, names) is not ({ } cell, var unit))
                unused.AddRange(new[] { text.Trim() }.Where(one => one.Length > 0));
            else if (!columns.TryAdd(cell, (at, unit)))
                return Fault.Of($"line {heading.Number}", text.Trim(), "is the heading of two columns: keep one");
        return null;
    }

    private Fault? FindMissing(TableLine heading, (ImmutableArray<TCell> Cells, string Heading) wanted)
    {
        var missing = wanted.Cells.Where(cell => !columns.ContainsKey(cell)).ToList();
        return missing.Count == 0
            ? null
            : Fault.Of(
                $"line {heading.Number}",
                string.Join(',', heading.Cells),
                $"has no column '{missing[0].ToString().ToLowerInvariant()}': the heading is {wanted.Heading}"
            );
    }

    private static (TCell? Cell, string? Unit) Find(string heading, IReadOnlyDictionary<string, TCell> names)
    {
        if (names.TryGetValue(Key(heading), out var plain))
            return (plain, null);
        var (name, unit) = UnitWords.Split(heading);
        return unit is not null && names.TryGetValue(Key(name), out var cell) ? (cell, unit) : (null, null);
    }

    private static string Key(string heading) =>
        string.Join(
            ' ',
            heading.ToLowerInvariant().Split([' ', '\t', '_', '-', '.', ':'], StringSplitOptions.RemoveEmptyEntries)
        );
}

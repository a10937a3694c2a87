using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Csv;

namespace ShopPlanner.Services.Projects;

/// <summary>Where the columns of a table of parts stand, and which unit a heading names.</summary>
internal sealed class PartHeading
{
    private const int LeastKnown = 2;

    private readonly Dictionary<PartCell, (int At, string Heading, string? Unit)> columns = [];
    private readonly List<string> unused = [];

    private PartHeading(int count) => Count = count;

    /// <summary>How many columns there are.</summary>
    public int Count { get; }

    /// <summary>Headings of columns that are not used.</summary>
    public ImmutableArray<string> Unused => [.. unused];

    /// <summary>Returns how many cells of a line are known for certain as headings.</summary>
    public static int Known(string[] cells) => cells.Count(cell => Certain(cell).Cell is not null);

    /// <summary>Returns the heading; null where the line is none, with a fault where it is one that names a column
    /// twice.</summary>
    public static PartHeading? Read(TableLine line, out Fault? fault)
    {
        var cells = line.Cells;
        fault = null;
        if (Known(cells) < LeastKnown)
            return null;
        var heading = new PartHeading(cells.Length);
        foreach (var (at, cell) in cells.Index())
            if (Certain(cell) is (PartCell known, var unit) && !heading.columns.TryAdd(known, (at, cell.Trim(), unit)))
                fault ??= Fault.Of(
                    $"line {line.Number}",
                    $"{heading.columns[known].Heading}, {cell.Trim()}",
                    "are headings of the same column: keep one"
                );
        foreach (var (at, cell) in cells.Index())
            heading.TakeOpen(at, cell);
        return heading;
    }

    /// <summary>Returns the heading of a table that has none.</summary>
    public static PartHeading Usual(params PartCell[] order)
    {
        var heading = new PartHeading(order.Length);
        foreach (var (at, cell) in order.Index())
            heading.columns.Add(cell, (at, "", null));
        return heading;
    }

    /// <summary>Returns the cell of a line; empty where there is no such column or cell.</summary>
    public string Cell(PartCell cell, string[] line) =>
        columns.TryGetValue(cell, out var column) && column.At < line.Length ? line[column.At].Trim() : "";

    /// <summary>Returns the unit that the heading of a column names, as a suffix; null where it names none.</summary>
    public string? UnitOf(PartCell cell) => columns.GetValueOrDefault(cell).Unit;

    private void TakeOpen(int at, string cell)
    {
        if (Certain(cell).Cell is not null || cell.Trim().Length == 0)
            return;
        var (name, unit) = UnitWords.Split(cell);
        if (PartCellNames.FindOpen(name, columns.Keys) is { } open)
            columns.Add(open, (at, cell.Trim(), unit));
        else
            unused.Add(cell.Trim());
    }

    private static (PartCell? Cell, string? Unit) Certain(string heading)
    {
        if (PartCellNames.Find(heading) is { } plain)
            return (plain, null);
        var (name, unit) = UnitWords.Split(heading);
        return (unit is null ? null : PartCellNames.Find(name), unit);
    }
}

using System.Collections.Immutable;

namespace ShopPlanner.Core.Bills;

/// <summary>Reads the rows of a table whose heading names its columns.</summary>
/// <param name="columns">From the heading.</param>
internal sealed class RowParser(BillColumns columns)
{
    private string[]? above;

    /// <summary>Reads a row.</summary>
    /// <param name="row">A line below the heading.</param>
    /// <returns>The part; null where the cells don't follow the columns.</returns>
    public BillEntry? Read(BillStatement row)
    {
        var cells = Separated(row) ?? Counted(row);
        if (cells is null)
            return null;
        for (var at = 0; at < cells.Length; at++)
            if (IsDitto(cells[at]) && above is not null)
                cells[at] = above[at];
        above = cells;
        return Entry(row, cells);
    }

    private static bool IsDitto(string cell) => cell is "\"" or "”" or "″" or ",," or "do." or "do" or "ditto" or "Do.";

    // By the marks between the columns, or by the room.
    private string[]? Separated(BillStatement row)
    {
        var cells = columns.Separator == ' ' ? Roomy(row) : row.Text.Trim('|').Split(columns.Separator);
        var first = columns.Separator == '|' && cells.Length > columns.All.Length ? cells[..columns.All.Length] : cells;
        return first.Length == columns.All.Length ? [.. first.Select(cell => cell.Trim())] : null;
    }

    private static string[] Roomy(BillStatement row)
    {
        var cells = new List<string>();
        var start = 0;
        foreach (var token in row.Tokens)
            if (token.Gap >= BillToken.ColumnGap && token.Start > 0)
            {
                cells.Add(row.Text[start..token.Start]);
                start = token.Start;
            }

        return [.. cells, row.Text[start..]];
    }

    // By the figures alone: as many as there are columns of figures, with the words around them.
    private string[]? Counted(BillStatement row)
    {
        var tokens = row.Tokens;
        var figures = columns.Figures.Count();
        if (tokens.Any(token => token.Kind == TokenKind.By) || figures < 2)
            return null;
        var found = Figures(row, isSplit: false);
        if (found.Count != figures)
            found = Figures(row, isSplit: true);
        return found.Count == figures ? Placed(row, found) : null;
    }

    // Each figure with its unit. Split, what a space parts from its fraction counts as two.
    private static List<(int Start, int End)> Figures(BillStatement row, bool isSplit)
    {
        var found = new List<(int, int)>();
        for (var at = 0; at < row.Tokens.Length; at++)
        {
            var token = row.Tokens[at];
            if (token.Kind != TokenKind.Number)
                continue;
            var end =
                at + 1 < row.Tokens.Length && row.Tokens[at + 1].Kind == TokenKind.Unit ? row.Tokens[at + 1].End : token.End;
            var space = isSplit && token.Number is { IsSpaced: true } ? token.Text.IndexOf(' ', StringComparison.Ordinal) : -1;
            if (space > 0)
                found.Add((token.Start, token.Start + space));
            found.Add((token.Start + Math.Max(space, 0), end));
        }

        return found;
    }

    private string[] Placed(BillStatement row, List<(int Start, int End)> figures)
    {
        var cells = new string[columns.All.Length];
        var next = 0;
        for (var at = 0; at < cells.Length; at++)
            cells[at] = columns.All[at].IsFigure ? row.Text[figures[next].Start..figures[next++].End].Trim() : "";
        string[] words = [row.Text[..figures[0].Start], .. Between(row, figures), row.Text[figures[^1].End..]];
        var texts = words.Select(word => word.Trim(' ', ',', '.', '-')).Where(word => word.Any(char.IsLetter));
        var open = Enumerable.Range(0, cells.Length).Where(at => !columns.All[at].IsFigure);
        foreach (var (at, text) in open.Zip(texts))
            cells[at] = text;
        return cells;
    }

    private static IEnumerable<string> Between(BillStatement row, List<(int Start, int End)> figures) =>
        figures.Zip(figures.Skip(1), (a, b) => row.Text[a.End..b.Start]);

    private BillEntry Entry(BillStatement row, string[] cells)
    {
        var entry = new BillEntry(row.Lines[0].Line, row.Text) { Order = columns.Order };
        for (var at = 0; at < cells.Length; at++)
            entry = With(entry, columns.All[at], cells[at]);
        return entry;
    }

    private BillEntry With(BillEntry entry, BillColumn column, string cell)
    {
        if (cell.Length == 0)
            return entry;
        return column.Kind switch
        {
            ColumnKind.Count => CountOf(entry, cell),
            ColumnKind.Name => Named(entry, cell),
            ColumnKind.Material => entry with { Material = BillNames.Short(cell) },
            ColumnKind.Note => entry with { Notes = entry.Notes.Add(BillNames.Short(cell)) },
            _ => Sized(entry, column, cell),
        };
    }

    private static BillEntry CountOf(BillEntry entry, string cell)
    {
        var tokens = BillScanner.Scan(cell);
        if (
            tokens.Length > 0
            && BillCounts.Read(tokens, 0) is { } count
            && tokens.All(one => one == tokens[0] || one.IsIn(BillWords.Bare))
        )
            return entry with { Count = count };
        return entry.Doubt($"‘{BillNames.Short(cell)}’ isn't read as a count.");
    }

    private static BillEntry Named(BillEntry entry, string cell)
    {
        var tokens = BillScanner.Scan(cell);
        var words = EntryWords.Of(tokens, cell, 0, tokens.Length, isAfter: true);
        var name = words.Phrases.Count > 0 ? string.Join(", ", words.Phrases.Take(3)) : words.Generic ?? "";
        return entry with
        {
            Name = BillNames.Short(name),
            Material = entry.Material ?? words.Material,
            Surfacing = entry.Surfacing ?? words.Surfacing,
            Notes = [.. entry.Notes, .. words.Asides],
        };
    }

    private BillEntry Sized(BillEntry entry, BillColumn column, string cell)
    {
        var tokens = BillScanner.Scan(cell);
        if (column.Kind == ColumnKind.Size)
            return Whole(entry, column, SizeParser.FindAll(tokens, cell), cell);
        var side = new SideParser(tokens, cell).Read(0, out var next);
        if (side is null || next < tokens.Length)
            return entry.Doubt($"‘{BillNames.Short(cell)}’ isn't read as a size.");
        if (side.Unit == SizeUnit.None && column.Unit != SizeUnit.None)
            side = side with { Unit = column.Unit, Plain = side.In(column.Unit) };
        return Add(entry, column, [side with { Role = BillColumns.RoleOf(column.Kind) }]);
    }

    private BillEntry Whole(BillEntry entry, BillColumn column, List<WrittenSize> sizes, string cell) =>
        sizes is [var size, ..]
            ? Add(entry, column, size.Sides)
            : entry.Doubt($"‘{BillNames.Short(cell)}’ isn't read as a size.");

    private BillEntry Add(BillEntry entry, BillColumn column, ImmutableArray<WrittenSide> sides)
    {
        var doubted = entry with { Doubts = [.. entry.Doubts, .. sides.SelectMany(side => side.Doubts)] };
        if (
            column.IsBought
            && columns.All.Any(one => !one.IsBought && one.Kind >= ColumnKind.Thickness && one.Kind <= ColumnKind.Size)
        )
            return doubted with { Bought = [.. doubted.Bought, .. sides] };
        return doubted with { Sides = [.. doubted.Sides, .. sides], IsBoughtOnly = column.IsBought };
    }
}

namespace ShopPlanner.Services.Projects;

/// <summary>What a column of a table of parts can say.</summary>
internal enum PartCell
{
    Mark,
    Name,
    Material,
    Thickness,
    Length,
    Width,
    Quantity,
    Note,
    Grain,
    Turn,
    LongBy,
    WideBy,
    Practice,
    Unit,
}

/// <summary>What people call the columns of a table of parts (common practice).</summary>
internal static class PartCellNames
{
    private static readonly Dictionary<string, PartCell> Names = Of(
        (PartCell.Mark, "mark, letter, part mark, id, part id, ref"),
        (PartCell.Name, "name, part, part name, description, component, label, piece"),
        (PartCell.Material, "material, stock, wood, species, board, sheet, lumber, timber"),
        (PartCell.Thickness, "thickness, thick, t, th, thk"),
        (PartCell.Length, "length, l, len, finished length"),
        (PartCell.Width, "width, w, breadth, finished width"),
        (PartCell.Quantity, "quantity, qty, pcs, pieces, count, copies, how many, amount"),
        (PartCell.Note, "note, notes, comment, comments, remark, remarks"),
        (PartCell.Grain, "grain, grain direction"),
        (PartCell.Turn, "can rotate, rotate, can turn"),
        (PartCell.LongBy, "cut long by, cut long, extra length"),
        (PartCell.WideBy, "cut wide by, cut wide, extra width"),
        (PartCell.Practice, "test pieces, practice pieces, practice"),
        (PartCell.Unit, "unit, units")
    );

    // Said of more than one thing: meant only where no other column of the table says it, the first of them first.
    private static readonly (string Name, PartCell Cell)[] Open =
    [
        ("long", PartCell.Length),
        ("long", PartCell.LongBy),
        ("wide", PartCell.Width),
        ("wide", PartCell.WideBy),
        ("#", PartCell.Quantity),
        ("no", PartCell.Quantity),
        ("number", PartCell.Quantity),
        ("item", PartCell.Name),
        ("type", PartCell.Material),
    ];

    /// <summary>Returns what a heading says for certain; null where it is not known.</summary>
    public static PartCell? Find(string heading) => Names.TryGetValue(Key(heading), out var cell) ? cell : null;

    /// <summary>Returns what a heading may say beside those that are known for certain; null where nothing is left.</summary>
    public static PartCell? FindOpen(string heading, ICollection<PartCell> taken) =>
        Open.Where(one => one.Name == Key(heading) && !taken.Contains(one.Cell))
            .Select(one => (PartCell?)one.Cell)
            .FirstOrDefault();

    private static string Key(string heading) =>
        string.Join(
            ' ',
            heading.ToLowerInvariant().Split([' ', '\t', '_', '-', '.', ':'], StringSplitOptions.RemoveEmptyEntries)
        );

    private static Dictionary<string, PartCell> Of(params (PartCell Cell, string Names)[] all) =>
        all.SelectMany(one => one.Names.Split(", ").Select(name => (name, one.Cell)))
            .ToDictionary(one => one.name, one => one.Cell);
}

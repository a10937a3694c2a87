using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Csv;

namespace ShopPlanner.Services.Projects;

/// <summary>Reads rows copied from a spreadsheet into rows as typed.</summary>
internal static class PartPaste
{
    private const int MostCharacters = 5_000_000;

    // As the columns stand on the page.
    private static readonly string[] Order =
    [
        "mark",
        "name",
        "material",
        "length",
        "width",
        "quantity",
        "note",
        "grain",
        "long",
        "wide",
        "practice",
    ];

    private const int GrainOrNote = 6;

    // Many lists have the grain before the note; it is told from a note by its words.
    private static readonly string[] GrainFirst = [.. Order[..GrainOrNote], "grain", "note", .. Order[(GrainOrNote + 2)..]];

    private static readonly HashSet<string> Along = new(StringComparer.OrdinalIgnoreCase) { "length", "along", "with", "yes" };

    private static readonly Dictionary<string, string> Synonyms = new(StringComparer.OrdinalIgnoreCase)
    {
        ["part"] = "name",
        ["qty"] = "quantity",
        ["pieces"] = "quantity",
        ["notes"] = "note",
        ["stock"] = "material",
        ["cut long by"] = "long",
        ["cut long"] = "long",
        ["cut wide by"] = "wide",
        ["cut wide"] = "wide",
        ["practice pieces"] = "practice",
        ["test pieces"] = "practice",
    };

    // What says that a part may be turned: without one of these the grain is kept, which is the safe side.
    private static readonly HashSet<string> MayTurn = new(StringComparer.OrdinalIgnoreCase)
    {
        "any",
        "none",
        "no",
        "free",
        "turn",
        "either",
    };

    public static (IReadOnlyList<PartTexts> Rows, Fault? Fault) Read(string text)
    {
        if (text.Length > MostCharacters)
            return ([], new Fault("paste", "", "is more than 5 MB: paste fewer rows at a time"));
        using var reader = new StringReader(text.TrimStart('\uFEFF'));
        var table = TableReader.Read(reader, text.Contains('\t') ? '\t' : ',', IPartService.MaxRows + 1);
        if (table.Fault is { Field: "table" })
            return ([], TooMany(text.AsSpan().Count('\n') + 1));
        if (table.Fault is not null)
            return ([], table.Fault);
        var columns = table.Lines.Count > 0 ? Heading(table.Lines[0].Cells) : null;
        var lines = columns is null ? table.Lines : table.Lines.Skip(1);
        columns ??= table.Lines.All(line => SaysGrain(line.Cells)) ? GrainFirst : Order;
        return ([.. lines.Select(line => Row(line.Cells, columns))], null);
    }

    private static bool SaysGrain(string[] cells) =>
        cells.Length > GrainOrNote && cells[GrainOrNote].Trim() is var word && (Along.Contains(word) || MayTurn.Contains(word));

    public static Fault TooMany(int rows) =>
        Fault.Of("paste", $"{rows} rows", $"are too many: a parts list holds at most {IPartService.MaxRows}; nothing was added");

    // A first line is a heading when at least two cells are column names and they differ.
    private static string[]? Heading(string[] cells)
    {
        var names = cells
            .Select(cell => cell.Trim())
            .Select(cell => Synonyms.GetValueOrDefault(cell, cell.ToLowerInvariant()))
            .ToArray();
        var known = names.Where(name => Order.Contains(name)).ToList();
        return known.Count >= 2 && known.Distinct().Count() == known.Count ? names : null;
    }

    private static PartTexts Row(string[] cells, string[] columns)
    {
        string Cell(string name)
        {
            var at = Array.IndexOf(columns, name);
            return at >= 0 && at < cells.Length ? cells[at].Trim() : "";
        }

        return new PartTexts(
            Guid.CreateVersion7(),
            Cell("mark"),
            Cell("name"),
            Cell("material"),
            Cell("length"),
            Cell("width"),
            Cell("quantity"),
            MayTurn.Contains(Cell("grain")),
            Cell("note")
        )
        {
            LongBy = Cell("long"),
            WideBy = Cell("wide"),
            Practice = Cell("practice"),
        };
    }
}

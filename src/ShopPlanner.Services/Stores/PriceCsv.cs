using System.Text;
using CsvHelper;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Materials;

namespace ShopPlanner.Services.Stores;

/// <summary>A price list as CSV (RFC 4180).</summary>
internal static class PriceCsv
{
    public const int MostBytes = 5_000_000,
        MostLines = 20_000,
        MostFaults = 100;

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private static readonly string[] Columns = ["material", "length", "width", "price", "in stock"];

    // A cell that a spreadsheet would take for a formula goes out with a leading ' (OWASP, "CSV Injection").
    private static readonly CsvWriterOptions Writing = new() { Injection = CsvInjection.Escape };

    public static string Write(StoreView store)
    {
        using var text = new StringWriter();
        using (var csv = CsvWriter.Create(text, Writing, leaveOpen: true))
        {
            csv.WriteRecord(Columns);
            foreach (var row in store.Prices)
                csv.WriteRecord(Cells(row, store.Unit));
        }

        return text.ToString();
    }

    /// <summary>Reads all lines, or says what is wrong with each cell.</summary>
    public static (IReadOnlyList<PriceRead> Lines, IReadOnlyList<Fault> Faults) Read(
        Stream csv,
        LengthUnit unit,
        MaterialIndex materials
    )
    {
        using var text = new StreamReader(csv, Utf8, detectEncodingFromByteOrderMarks: true, leaveOpen: true);
        TableText table;
        try
        {
            table = TableReader.Read(text, ',', MostLines + 1);
        }
        catch (DecoderFallbackException)
        {
            return ([], [new Fault("file", "", "isn't UTF-8 text: save it as “CSV UTF-8”")]);
        }

        if (table.Fault is { } fault)
            return ([], [fault]);
        if (table.Lines.Count == 0)
            return ([], [new Fault("line 1", "", "is empty: start with the heading material, length, width, price, in stock")]);
        var columns = table.Lines[0].Cells.Select(cell => cell.Trim().ToLowerInvariant()).ToArray();
        return CheckHeading(columns) is { } wrong
            ? ([], [wrong])
            : ReadLines(table.Lines.Skip(1), columns, new PriceReader(unit, materials));
    }

    private static string[] Cells(PriceRow row, LengthUnit unit) =>
        [
            row.MaterialName,
            LengthFormat.Exact(row.Length, unit),
            LengthFormat.Exact(row.Width, unit),
            row.Price.ToString(),
            row.InStock ? "yes" : "no",
        ];

    private static Fault? CheckHeading(string[] columns)
    {
        if (columns is [var all] && all.Contains(';', StringComparison.Ordinal))
            return Fault.Of("line 1", all, "has semicolons between its cells: save the table with commas instead");
        var missing = Columns.FirstOrDefault(name => name is not ("width" or "in stock") && !columns.Contains(name));
        if (missing is not null)
            return Fault.Of(
                "line 1",
                string.Join(',', columns),
                $"has no column '{missing}': the heading is {string.Join(", ", Columns)}"
            );
        var twice = Columns.FirstOrDefault(name => columns.Count(column => column == name) > 1);
        return twice is null ? null : Fault.Of("line 1", twice, "is the heading of two columns: keep one");
    }

    private static (IReadOnlyList<PriceRead> Lines, IReadOnlyList<Fault> Faults) ReadLines(
        IEnumerable<TableLine> lines,
        string[] columns,
        PriceReader reader
    )
    {
        var read = new Dictionary<(string, Length, Length), PriceRead>();
        var faults = new List<Fault>();
        foreach (var line in lines)
        {
            var found = new List<Fault>();
            if (
                ReadLine(line.Cells, columns, reader, found) is { } price
                && !read.TryAdd((price.Material.Id, price.Length, price.Width), price)
            )
                found.Add(Fault.Of("length", price.Material.Name, "is in this file twice with the same size: keep one line"));
            faults.AddRange(found.Select(fault => fault.At($"line {line.Number}, {fault.Field.ToLowerInvariant()}")));
            if (faults.Count >= MostFaults)
                break;
        }

        return ([.. read.Values], [.. faults.Take(MostFaults)]);
    }

    private static PriceRead? ReadLine(string[] cells, string[] columns, PriceReader reader, List<Fault> faults)
    {
        string Cell(string name)
        {
            var at = Array.IndexOf(columns, name);
            return at >= 0 && at < cells.Length ? FormulaGuard.Unquote(cells[at].Trim()) : "";
        }

        if (cells.Length > columns.Length)
            faults.Add(
                Fault.Of(
                    "end",
                    cells[^1],
                    "is one cell too many: a comma splits a cell. Write prices "
                        + "without commas, like 1038.98, and quote names with one"
                )
            );
        var stock = ReadInStock(Cell("in stock"));
        if (stock is null)
            faults.Add(Fault.Of("in stock", Cell("in stock"), "isn't yes or no: write one of them"));
        if (TextRules.Line("material", Cell("material"), TextRules.NameCharacters) is { } fault)
            faults.Add(fault);
        var read = reader.Read(
            new PriceEdit(null, Cell("material"), Cell("length"), Cell("width"), Cell("price"), stock ?? true, null),
            faults
        );
        return faults.Count > 0 ? null : read;
    }

    private static bool? ReadInStock(string text) =>
        text.ToLowerInvariant() switch
        {
            "" or "yes" or "y" or "true" or "1" => true,
            "no" or "n" or "false" or "0" => false,
            _ => null,
        };
}

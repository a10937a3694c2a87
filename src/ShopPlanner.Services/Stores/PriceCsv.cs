using System.Collections.Immutable;
using System.Globalization;
using CsvHelper;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Materials;

namespace ShopPlanner.Services.Stores;

/// <summary>What a column of a price list can say.</summary>
internal enum PriceCell
{
    Material,
    Length,
    Width,
    Price,
    InStock,
    Seen,
}

/// <summary>A line of a price list that was understood, with its number in the file.</summary>
internal sealed record PriceLineRead(long Line, PriceRead Read);

/// <summary>A price list that was read.</summary>
internal sealed record PriceTable(
    IReadOnlyList<PriceLineRead> Lines,
    IReadOnlyList<Fault> Faults,
    TableFormat Format,
    ImmutableArray<string> Unused
);

/// <summary>A price list as CSV (RFC 4180).</summary>
internal static class PriceCsv
{
    public const int MostBytes = 5_000_000,
        MostLines = 20_000,
        MostFaults = 100;

    private const string Heading = "material, length, width, price, in stock",
        DayFormat = "yyyy-MM-dd";

    private static readonly Dictionary<string, PriceCell> Names = new()
    {
        ["material"] = PriceCell.Material,
        ["item"] = PriceCell.Material,
        ["length"] = PriceCell.Length,
        ["width"] = PriceCell.Width,
        ["price"] = PriceCell.Price,
        ["cost"] = PriceCell.Price,
        ["each"] = PriceCell.Price,
        ["in stock"] = PriceCell.InStock,
        ["price checked"] = PriceCell.Seen,
        ["checked"] = PriceCell.Seen,
    };

    private static readonly PriceCell[] Measures = [PriceCell.Length, PriceCell.Width];

    public static string Write(StoreView store)
    {
        using var text = new StringWriter();
        using (var csv = CsvWriter.Create(text, CsvWriterOptions.Default, leaveOpen: true))
        {
            var sign = store.Unit == LengthUnit.Inch ? "in" : "mm";
            csv.WriteRecord(["material", $"length ({sign})", $"width ({sign})", "price", "in stock", "price checked"]);
            foreach (var row in store.Prices)
                csv.WriteRecord(Cells(row, store.Unit));
        }

        return text.ToString();
    }

    /// <summary>Reads all lines, or says what is wrong with each cell.</summary>
    public static PriceTable Read(TableFile file, LengthUnit usual, MaterialIndex materials)
    {
        var format = new TableFormat(',', false, usual);
        var (text, undecoded) = TableDecoding.Read(file.Bytes);
        if (text is null)
            return new([], [undecoded!], format, []);
        var wanted = (ImmutableArray.Create(PriceCell.Material, PriceCell.Length, PriceCell.Price), Heading);
        var (table, fault) = TableColumns<PriceCell>.Read(text, file.Choices.Separator, MostLines, Names, wanted);
        if (table is null)
            return new([], [fault!], format, []);
        var sizes = table.Lines.SelectMany(line => Measures.Select(cell => table.Cell(cell, line))).Where(one => one.Length > 0);
        var prices = table.Lines.Select(line => table.Cell(PriceCell.Price, line));
        // Beside commas a comma in a price parts thousands, or nobody knows what it is: there only sizes tell.
        var numbers = TableNumbers.Of(
            table.Separator,
            [.. table.Separator == ',' ? sizes : sizes.Concat(prices)],
            file.Choices.CommaIsDecimal
        );
        var unitless = Measures.Where(cell => table.UnitOf(cell) is null);
        var told = table.Lines.SelectMany(line => unitless.Select(cell => numbers.Plain(table.Cell(cell, line))));
        format = new(table.Separator, numbers.CommaIsDecimal, file.Choices.Unit ?? TableSizes.Unit([.. told], usual));
        return ReadLines(table, numbers, format, new PriceReader(format.Unit, materials));
    }

    private static string[] Cells(PriceRow row, LengthUnit unit) =>
        [
            FormulaGuard.Quote(row.MaterialName),
            TableSizes.Spread(LengthFormat.Exact(row.Length, unit)),
            TableSizes.Spread(LengthFormat.Exact(row.Width, unit)),
            row.Price.ToString(),
            row.InStock ? "yes" : "no",
            row.Seen.ToString(DayFormat, CultureInfo.InvariantCulture),
        ];

    private static PriceTable ReadLines(
        TableColumns<PriceCell> table,
        TableNumbers numbers,
        TableFormat format,
        PriceReader reader
    )
    {
        var read = new Dictionary<(string, Length, Length), PriceLineRead>();
        var faults = new List<Fault>();
        foreach (var line in table.Lines)
        {
            var found = new List<Fault>();
            if (
                ReadLine(table, line, numbers, reader, found) is { } price
                && !read.TryAdd((price.Material.Id, price.Length, price.Width), new(line.Number, price))
            )
                found.Add(Fault.Of("length", price.Material.Name, "is in this file twice with the same size: keep one line"));
            faults.AddRange(found.Select(fault => fault.At($"line {line.Number}, {fault.Field.ToLowerInvariant()}")));
            if (faults.Count >= MostFaults)
                break;
        }

        return new([.. read.Values], [.. faults.Take(MostFaults)], format, table.Unused);
    }

    private static PriceRead? ReadLine(
        TableColumns<PriceCell> table,
        TableLine line,
        TableNumbers numbers,
        PriceReader reader,
        List<Fault> faults
    )
    {
        string Cell(PriceCell cell) => table.Cell(cell, line);
        string Size(PriceCell cell) => Sized(TableSizes.Typed(numbers.Plain(Cell(cell))), table.UnitOf(cell));
        if (table.CheckEnd(line) is { } end)
            faults.Add(end);
        var stock = ReadInStock(Cell(PriceCell.InStock));
        if (stock is null)
            faults.Add(Fault.Of("in stock", Cell(PriceCell.InStock), "isn't yes or no: write one of them"));
        var (seen, fault) = ReadSeen(Cell(PriceCell.Seen));
        if (fault is not null)
            faults.Add(fault);
        if (TextRules.Line("material", Cell(PriceCell.Material), TextRules.NameCharacters) is { } wrong)
            faults.Add(wrong);
        var price = numbers.Plain(Cell(PriceCell.Price));
        var edit = new PriceEdit(
            null,
            Cell(PriceCell.Material),
            Size(PriceCell.Length),
            Size(PriceCell.Width),
            price,
            stock ?? true,
            null
        );
        var read = reader.Read(edit, faults);
        return faults.Count > 0 ? null : read! with { Seen = seen };
    }

    // A size that names its own unit keeps it.
    private static string Sized(string size, string? unit) =>
        unit is null || size.Length == 0 || size.Any(c => char.IsLetter(c) || c is '"' or '″' or '\'' or '′')
            ? size
            : $"{size} {unit}";

    private static (DateOnly? Seen, Fault? Fault) ReadSeen(string text) =>
        text.Length == 0 ? (null, null)
        : DateOnly.TryParseExact(text, DayFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? (day, null)
        : (null, Fault.Of("price checked", text, "isn't a day: write it like 2026-05-02, or leave it blank for today"));

    private static bool? ReadInStock(string text) =>
        text.ToLowerInvariant() switch
        {
            "" or "yes" or "y" or "true" or "1" => true,
            "no" or "n" or "false" or "0" => false,
            _ => null,
        };
}
